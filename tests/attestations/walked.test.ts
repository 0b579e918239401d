import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { fileURLToPath } from 'node:url';
import { parse } from 'parse5';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bs7671 } from '../../src/codes/bs7671/index.js';
import type { Attestation } from '../../src/core/attested.js';
import { inGreatBritain } from '../../src/great-britain.js';
import {
  type Attestations,
  assess,
  hasCode,
  known,
  recorder,
  type SheetDocument,
  type SheetLine,
  squareMillimetres,
  unknown,
  writeSheet,
} from '../../src/index.js';
import { readSurvey, readTicks } from '../../src/io/index.js';
import { planBlocks, renderText, sheetBlocks, type Ticks } from '../../src/report/index.js';
import { planOf } from '../../src/site/index.js';
import { definitions } from '../../src/verify/definitions.js';
import { verifySheet } from '../../src/verify/index.js';
import { circuit, house } from '../support/house.js';
import { surveyDocument } from '../support/surveys.js';

const root = fileURLToPath(new URL('../..', import.meta.url));
const edition = '2018+A2:2022';
let folder = '';
let ticks: Ticks;

// the pages and the tick document as the command writes them
beforeAll(() => {
  folder = mkdtempSync(`${tmpdir()}/proof-sheets-`);
  execFileSync('node', ['tests/tables/proof-sheets.mjs', folder], { cwd: root });
  ticks = JSON.parse(readFileSync(`${folder}/ticks.json`, 'utf8')) as Ticks;
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true }));

type Tick = Ticks['tables'][number];
/** The tick document as an invented person fills it in. */
const filled = (change: (t: Tick) => Partial<Tick>): Ticks => ({
  ...ticks,
  by: 'J. Example',
  on: '2026-11-30',
  copies: { ...ticks.copies, 'BS 7671': edition },
  tables: ticks.tables.map((t) => ({ ...t, ...change(t) })),
});
const flat = 'bs7671/4d5';
/** Table 4D5 compared, with what an invented copy has otherwise. */
const compared = (corrections: Tick['corrections'] = []): Attestations =>
  readTicks(filled((t) => (t.table === flat ? { compared: true, corrections } : {})));

const looks = (sheet: SheetDocument): readonly Extract<SheetLine, { kind: 'look' }>[] =>
  sheet.lines.flatMap((l) => (l.kind === 'part' ? looks(l.part) : l.kind === 'look' ? [l] : []));
const circuitSheet = (attestations: readonly Attestations[]) => {
  const sheet = recorder('A circuit');
  const code = bs7671(edition, { attestations });
  const assessment = assess(code, house([circuit()]), 'ev', {}, sheet);
  return { assessment, code, sheet: writeSheet(sheet) };
};
const capacity = (attestations: readonly Attestations[]) =>
  looks(circuitSheet(attestations).sheet).find((l) => l.table === flat);

describe('pages', () => {
  it('there is one for every table, with every figure in its place', () => {
    expect(ticks.tables.map((t) => t.table).sort()).toEqual(definitions.tables.map((t) => t.id).sort());
    const pages = readdirSync(folder).filter((f) => /^\d{3}-/.test(f));
    expect(pages.length).toBe(definitions.tables.length);
    for (const t of definitions.tables) {
      const page = pages.find((f) => f.slice(4) === `${t.id.replaceAll('/', '-')}.html`) as string;
      const html = readFileSync(`${folder}/${page}`, 'utf8');
      expect(parse(html).childNodes.length).toBeGreaterThan(1);
      const rows = [...html.matchAll(/<tr><th scope="row">([^<]*)<\/th>((?:<td[^>]*>[^<]*<\/td>)+)<\/tr>/g)];
      const cells = rows.map(([, , tds]) => [...(tds as string).matchAll(/<td[^>]*>([^<]*)<\/td>/g)].map((m) => m[1]));
      expect(cells.map((row) => row.slice(0, -1))).toEqual(
        t.rows.map((row) => row.slice(1).map((v) => (v === null ? '–' : String(v)))),
      );
    }
  });

  it('the sums are those of the figures', () => {
    const html = readFileSync(`${folder}/${readdirSync(folder).find((f) => f.endsWith('-bs7671-4d5.html'))}`, 'utf8');
    // 8 + 10 + 13.5 + 17.5 + 23.5 + 32 + 42.5, column 103 of Table 4D5
    expect(html).toContain('<td class="s">147.0</td>');
  });
});

describe('what was ticked', () => {
  it('raises what the figures are known as, by name and day, on the sheet and in its print', () => {
    expect(capacity([])).toMatchObject({ provenance: 'memory', gives: { value: 47 } });
    const line = capacity([compared()]);
    expect(line).toMatchObject({
      provenance: 'attested',
      attested: 'J. Example, 2026-11-30, copy of 2018+A2:2022',
      gives: { value: 47 },
    });
    const { sheet } = circuitSheet([compared()]);
    expect(renderText(sheetBlocks(sheet))).toContain('attested by J. Example, 2026-11-30');
  });

  it('changes figures where the copy has others, and what rests on them', () => {
    const otherwise = [compared([{ column: 'C', row: 6, printed: 46 }])];
    expect(capacity(otherwise)).toMatchObject({ provenance: 'attested', gives: { value: 46 } });
    const { assessment } = circuitSheet(otherwise);
    expect(assessment.figures.capacity).toBe(46);
    expect(circuitSheet([]).assessment.figures.capacity).toBe(47);
    // the code that another firm made is as it was
    expect(assess(bs7671(edition), house([circuit()]), 'ev', {}).figures.capacity).toBe(47);
  });

  it('count for a bonding conductor too where nobody knows what is asked', () => {
    // the neutral of the supply is not known: the least that is ever asked decides, 10 mm² by the table, here 12 mm²
    const open = house([circuit()], {
      system: known('TN-C-S'),
      supplyNeutral: unknown('ask the distributor'),
      bonding: [{ what: 'water', area: known(squareMillimetres(10)) }],
    });
    const asked = readTicks(
      filled((t) =>
        t.table === 'bs7671/54.8' ? { compared: true, corrections: [{ column: 'copper', row: 35, printed: 12 }] } : {},
      ),
    );
    const verdict = (attestations: readonly Attestations[]) =>
      assess(bs7671(edition, { attestations }), open, 'ev', {}).results.find(
        (r) => r.check === 'main-bonding-conductor',
      )?.verdict;
    expect([verdict([]), verdict([asked])]).toEqual(['not-determined', 'fail']);
  });

  it('a sheet is verified with the tables that it was worked out by, and objected to without them', () => {
    const { sheet, code } = circuitSheet([compared([{ column: 'C', row: 6, printed: 46 }])]);
    expect(verifySheet(sheet, [...(code.attested?.tables.values() ?? [])]).problems).toEqual([]);
    expect(verifySheet(sheet).problems.map((p) => p.message)).toContain('tabulatedCapacity is 46; it should be 47');
  });

  it('is carried to the plan and its report', () => {
    const survey = readSurvey(surveyDocument('easy-home'));
    const all = readTicks(filled((t) => ({ compared: t.document === 'BS 7671' })));
    const plan = (attestations: readonly Attestations[]) => planOf(survey, inGreatBritain(edition, { attestations }));
    const [before, after] = [plan([]), plan([all])];
    const cautions = (p: typeof before) => p.options[0]?.cautions ?? [];
    const recalled = (p: typeof before) => cautions(p).find((c) => c.startsWith('Rests on figures and rules'));
    expect(recalled(before)).toContain('Table 4D5');
    expect(recalled(after) ?? '').not.toContain('Table 4D5');
    expect(cautions(after).join('\n')).toMatch(
      /compared with the print, .*Table 4D5.*attested by J\. Example, 2026-11-30/,
    );
    const printed = (p: typeof before) => renderText(planBlocks(p)).replace(/\s+/g, ' ');
    expect(printed(after)).toContain('attested by J. Example, 2026-11-30');
    expect(printed(before)).not.toContain('attested by');
    expect(looks(after.options[0]?.sheet as SheetDocument).some((l) => l.provenance === 'attested')).toBe(true);
  });
});

const thrown = (make: () => unknown): unknown => {
  try {
    make();
  } catch (error) {
    return error;
  }
  throw new Error('nothing was thrown');
};
const made = (...attestations: readonly Attestations[]) => bs7671(edition, { attestations });

describe('what is objected to', () => {
  it('a correction that breaks a law: the law and the cell are named', () => {
    const wrong = compared([{ column: 'C', row: 6, printed: 74 }]);
    const error = thrown(() => made(wrong));
    expect(hasCode(error, 'correction-breaks-law') && error.detail).toMatchObject({
      table: flat,
      laws: expect.arrayContaining(['smooth: C, 6', 'rises: C, 10']),
      corrections: [{ cell: 'C, 6', was: 47, printed: 74 }],
    });
  });

  it('loop impedances of circuit-breakers and k, which follow from their own law', () => {
    for (const [table, column, row, printed, law] of [
      ['bs7671/41.3', '2015 B', 32, 1.57, 'C_min U_0 over m I_n: 2015 B, 32'],
      ['bs7671/43.1-final', 'copper', '70 °C thermoplastic, up to 300 mm²', 190, 'k of its temperatures: copper'],
    ] as const) {
      const wrong = readTicks(
        filled((t) => (t.table === table ? { compared: true, corrections: [{ column, row, printed }] } : {})),
      );
      const error = thrown(() => made(wrong));
      const laws = hasCode(error, 'correction-breaks-law') ? error.detail.laws : [];
      expect(laws.some((l) => l.startsWith(law))).toBe(true);
    }
  });

  it('not one that stands although it breaks a law, when somebody says why: that is remarked on', () => {
    const { assessment } = circuitSheet([
      compared([{ column: 'C', row: 6, printed: 53, despite: 'looked at twice, by two people' }]),
    ]);
    expect(assessment.figures.capacity).toBe(53);
    expect(assessment.cautions.join('\n')).toMatch(/breaks a law, smooth: C, 6.*looked at twice/);
  });

  it('two attestations that say otherwise of one cell, by the names of both', () => {
    const other = compared([{ column: 'C', row: 6, printed: 46 }]);
    const error = thrown(() => made(compared(), other));
    expect(hasCode(error, 'contradicting-attestations') && error.detail).toMatchObject({
      table: flat,
      cell: 'C, 6',
      attested: [
        { by: 'J. Example', printed: 47 },
        { by: 'J. Example', printed: 46 },
      ],
    });
    expect(made(compared(), compared()).attested?.tables.size).toBe(1);
  });

  it('figures that have changed since, tables, columns and rows that are not there', () => {
    const one = compared().attestations[0] as Attestation;
    const problems = (change: Partial<Attestation>) => {
      const error = thrown(() => made({ format: 'attestations/1', attestations: [{ ...one, ...change }] }));
      return hasCode(error, 'invalid-input') ? error.detail.problems.map((p) => p.message).join('\n') : '';
    };
    expect(problems({ figures: '00000000' })).toContain('write the proof sheet again');
    expect(problems({ table: 'bs7671/4d9', corrections: [{ column: 'C', row: 6, printed: 46 }] })).toContain(
      'corrected, but not read here',
    );
    const elsewhere = made({ format: 'attestations/1', attestations: [{ ...one, table: 'bs7671/64-voltage' }] });
    expect(elsewhere.attested).toMatchObject({ aside: ['bs7671/64-voltage'], remarks: [] });
    expect(problems({ cells: [{ column: 'Z', rows: [7] }] })).toMatch(/no column Z[\s\S]*no row 7/);
  });

  it('a copy of another edition takes no part, and that is said', () => {
    const one = compared([{ column: 'C', row: 6, printed: 46 }]).attestations[0] as Attestation;
    const { assessment } = circuitSheet([{ format: 'attestations/1', attestations: [{ ...one, edition: '2001' }] }]);
    expect(assessment.figures.capacity).toBe(47);
    expect(assessment.cautions.join('\n')).toContain('takes no part');
  });

  it('some cells alone are attested where some alone were compared', () => {
    const one = compared().attestations[0] as Attestation;
    const part = (rows: readonly number[]): Attestations => ({
      format: 'attestations/1',
      attestations: [{ ...one, cells: [{ column: 'C', rows }] }],
    });
    expect(capacity([part([6])])?.provenance).toBe('attested');
    expect(capacity([part([4, 10])])?.provenance).toBe('memory');
  });

  it('ticks without name, day or edition, and corrections of what was not compared', () => {
    const paths = (document: Ticks) => {
      const error = thrown(() => readTicks(document));
      return hasCode(error, 'invalid-input') ? error.detail.problems.map((p) => p.path.join('/')) : [];
    };
    const all = filled((t) => ({ compared: t.table === flat }));
    expect(paths({ ...all, by: '', on: '', copies: {} })).toEqual(['by', 'on', 'copies/BS 7671']);
    expect(paths({ ...all, on: 'today' })).toEqual(['on']);
    const stray = filled(() => ({ corrections: [{ column: 'C', row: 6, printed: 46 }] }));
    expect(paths(stray).length).toBe(ticks.tables.length);
  });
});

/** Brief surveys: ten answers, or a row of a spreadsheet, become a full survey that says no more than was answered. */
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bs7671 } from '../../src/codes/bs7671/index.js';
import { assess, hasCode, type Problem } from '../../src/index.js';
import {
  blankSurvey,
  briefColumns,
  briefJsonSchema,
  csvText,
  parseCsv,
  questionnaire,
  readBrief,
  readBriefRows,
  readDefaults,
  readSurvey,
  usualDefaults,
} from '../../src/io/index.js';
import { surveyDocument } from '../support/surveys.js';

const start = { format: 'brief/1', date: '2026-09-21', edition: '2018+A2:2022' };
const read = (answers: object) => readBrief({ ...start, ...answers }, usualDefaults);
function problemsOf(answers: object): readonly Problem[] {
  try {
    read(answers);
    return [];
  } catch (error) {
    if (hasCode(error, 'invalid-input')) return error.detail.problems;
    throw error;
  }
}

type Found = { readonly path: string; readonly fact: Record<string, unknown> };
function factsOf(at: unknown, path = ''): Found[] {
  if (typeof at !== 'object' || at === null) return [];
  if (['known', 'between', 'unknown'].some((k) => k in at)) return [{ path, fact: at as Record<string, unknown> }];
  return Object.entries(at).flatMap(([key, inner]) => factsOf(inner, path ? `${path}.${key}` : key));
}

/** An answer of the kind that a question asks for, as somebody might write it. */
const exampleOf = (id: string): unknown => {
  const q = questionnaire().find((it) => it.id === id);
  if (q?.answer === 'yes') return 'yes';
  return q?.choices?.[0]?.value ?? (q?.answer === 'count' ? 2 : (q?.example?.replace(/^0 /, '3 ') ?? 'text'));
};

describe('a brief survey', () => {
  it('says of the full one what was answered, and who says so', () => {
    const { survey } = read({ earthing: 'PME', mainFuse: 80, tails: '25 sq mm', looped: 'no', ze: '0.2 to 0.3 ohms' });
    const { supply } = survey.installation;
    expect(supply.system).toEqual({ state: 'known', value: 'TN-C-S', by: 'brief survey' });
    expect(supply.cutOut.rating).toMatchObject({ value: 80 });
    expect(supply.tails).toMatchObject({ value: 25 });
    expect(supply.looped).toMatchObject({ value: false });
    expect(supply.externalImpedance).toMatchObject({ state: 'between', least: 0.2, most: 0.3 });
  });

  it('knows nothing that nobody answered: what is known without an answer is what the firm fits', () => {
    const facts = factsOf(blankSurvey('2026-09-21', '2018+A2:2022', usualDefaults));
    expect(facts.length).toBeGreaterThan(25);
    expect(facts.filter((f) => 'known' in f.fact && f.fact.by !== usualDefaults.name)).toEqual([]);
    for (const { path, fact } of facts)
      if ('unknown' in fact) expect(String(fact.unknown).length, path).toBeGreaterThan(5);
  });

  it.each(['', '?', 'unknown', "don't know", null, { unknown: 'ask' }])('%j is not known', (said) => {
    expect(read({ earthing: said }).survey.installation.supply.system.state).toBe('unknown');
  });

  it('lets every answer count', () => {
    const companions: Readonly<Record<string, object>> = {
      measuredOver: { measuredDemand: '30 A' },
      cookerSocket: { cooker: '7.2 kW' },
      solarDevice: { solar: '3.68 kW' },
      depth: { buried: '5 m' },
      insulated: { loft: '5 m' },
      otherBond: { waterBond: 'none', gasBond: 'none' },
    };
    const night = { energy: '30 kWh', arrives: '18:30', leaves: '07:00' };
    for (const { id, section } of questionnaire()) {
      const more = { ...(section === 'Vehicle' ? night : {}), ...companions[id] };
      const without = Object.fromEntries(Object.entries(more).filter(([key]) => key !== id));
      // a socket at the cooker counts unless somebody says that there is none
      const answer = id === 'cookerSocket' ? 'no' : exampleOf(id);
      const changed = JSON.stringify(read({ ...more, [id]: answer }).document);
      const same = JSON.stringify(read(without).document);
      const alike = {
        premises: 'dwelling',
        chargePhases: 1,
        mounting: 'wall',
        date: start.date,
        edition: start.edition,
      };
      if (!(id in alike)) expect([id, changed === same]).toEqual([id, false]);
    }
  });

  it('is refused with every problem at once, each with the id of its question and what to write', () => {
    const found = problemsOf({
      earthing: 'PMX',
      mainFuse: '80 V',
      indoors: '12,5 m',
      looped: 'perhaps',
      mainFuze: '80 A',
      arrives: '25:00',
    });
    expect(found.map((p) => [p.path.join('.'), p.id])).toEqual([
      ['earthing', 'not-allowed'],
      ['mainFuse', 'wrong-unit'],
      ['indoors', 'decimal-comma'],
      ['looped', 'not-allowed'],
      ['', 'unknown-key'],
      ['arrives', 'not-a-time'],
    ]);
    expect(found[2]?.write).toBe('12.5 m');
    expect(found[4]?.message).toContain("'mainFuze' (write 'mainFuse')");
  });

  it('asks again where an answer is outside what is usual', () => {
    expect(read({ indoors: '2500 m' }).questions).toEqual([
      'Route indoors, clipped: is 2500 m right? Usual is 0 to 40 m.',
    ]);
    expect(read({ indoors: '12 m', mainFuse: '80 A' }).questions).toEqual([]);
  });

  it('names the question of a count that cannot be', () => {
    expect(problemsOf({ circuitsBeside: '0' }).map((p) => p.path)).toEqual([['circuitsBeside']]);
  });

  it('refuses an answer that cannot be made a text at its question', () => {
    expect(problemsOf({ demandMargin: { toString: null } }).map((p) => [p.path.join('.'), p.id])).toEqual([
      ['demandMargin', 'wrong-kind'],
    ]);
  });

  it('ends in a survey, or in problems of its questions, whatever is answered', () => {
    const ids = questionnaire().map((q) => q.id);
    const answer = fc.oneof(
      fc.constantFrom(
        'PME',
        'yes',
        'no',
        '80 A',
        '12 m',
        '?',
        '',
        'none',
        'missing',
        '10 mm²',
        '3-5 m',
        '1e9 m',
        '-3 m',
        '0',
      ),
      fc.double(),
      fc.integer(),
      fc.boolean(),
      fc.jsonValue(),
    );
    fc.assert(
      fc.property(fc.dictionary(fc.constantFrom(...ids), answer, { maxKeys: 12 }), (answers) => {
        for (const { path } of problemsOf(answers)) expect([...ids, 'format', '']).toContain(String(path[0] ?? ''));
      }),
      { numRuns: 300 },
    );
  });
});

describe('an existing circuit', () => {
  const cooker = () => {
    const { installation } = read({ cooker: '7.2 kW', earthing: 'TN-S', ze: '0.2 Ω', ipf: '1 kA' }).survey;
    return { installation, results: assess(bs7671('2018+A2:2022'), installation, 'cooker').results };
  };

  it('needs neither cable nor route, and nothing passes by what stands in their place', () => {
    const { results } = cooker();
    const passed = results.filter((r) => r.verdict === 'pass').map((r) => r.check);
    expect(passed.filter((id) => /capacity|drop|disconnect|adiabatic|size|protective|conceal/.test(id))).toEqual([]);
    expect(results.filter((r) => r.verdict === 'not-determined').length).toBeGreaterThan(5);
  });

  it('has to say them where it feeds a board', () => {
    const document = surveyDocument('easy-home') as { board: { runs: Record<string, unknown>[] } };
    const [run] = document.board.runs;
    if (!run) throw new Error('a run is due');
    delete run.cable;
    delete run.stretches;
    expect(readSurvey(document).installation.board.runs[0]?.cable.area.state).toBe('unknown');
    run.feeds = [{ kind: 'board', id: 'garage', runs: [] }];
    expect(() => readSurvey(document)).toThrow(/cable: is missing/);
  });
});

describe('the defaults of a firm', () => {
  it('answer what the survey leaves open, under the name of the firm, and nothing that it answers', () => {
    const firm = readDefaults({
      format: 'defaults/1',
      name: 'Firm (invented)',
      answers: { ambient: '30 °C', indoors: '9 m' },
    });
    const { run } = readBrief({ ...start, indoors: '4 m' }, firm).survey.wanted[0] ?? {};
    expect(run?.stretches[0]?.length).toMatchObject({ value: 4, by: 'brief survey' });
    expect(run?.stretches[0]?.ambient).toMatchObject({ value: 30, by: 'Firm (invented)' });
  });

  it('are refused with every problem', () => {
    const wrong = { format: 'defaults/2', answers: { mainFuse: '80 V', colour: 'red' }, fits: { cable: [] }, more: 1 };
    try {
      readDefaults(wrong);
      expect.unreachable();
    } catch (error) {
      if (!hasCode(error, 'invalid-input')) throw error;
      expect(error.detail.problems.map((p) => p.path.join('.')).sort()).toEqual(
        ['', 'answers', 'answers.mainFuse', 'fits', 'format', 'name'].sort(),
      );
    }
  });
});

describe('a spreadsheet', () => {
  it('is read under titles or ids, with units in the heading, rows apart', () => {
    const text = csvText([
      ['Reference', 'Day of the survey', 'Earthing arrangement', 'Main fuse (A)', 'indoors (m)', 'Remarks'],
      ['A-1', '21/09/2026', 'pme', 80, 12, 'a, b'],
      ['A-2', '2026-09-21', 'PMX', 80, 12, ''],
      ['', '2026-09-21', 'TT', '', 2500, ''],
    ]);
    const { rows, ignored } = readBriefRows(text, usualDefaults, { edition: '2018+A2:2022' });
    expect(ignored).toEqual(['Remarks']);
    expect(rows.map((r) => [r.row, r.reference, r.problems.length, r.brief?.questions.length])).toEqual([
      [2, 'A-1', 0, 0],
      [3, 'A-2', 1, undefined],
      [4, 'row 4', 0, 1],
    ]);
    expect(rows[0]?.brief?.survey.about).toMatchObject({ date: '2026-09-21', reference: 'A-1' });
  });

  it('has an example row that reads', () => {
    for (const which of ['first', 'all'] as const) {
      const [row] = readBriefRows(csvText(briefColumns(which)), usualDefaults, { edition: '2018+A2:2022' }).rows;
      expect(row?.problems).toEqual([]);
      expect(row?.brief?.questions).toEqual([]);
    }
  });

  it('of which no column is known is refused, with what was probably meant', () => {
    expect(() => readBriefRows('fuse,erthing\n1,2', usualDefaults)).toThrow(
      "erthing: is no question of the questionnaire; write 'earthing'",
    );
  });

  it('comes back as it was written', () => {
    const cell = fc.stringMatching(/^[a-z0-9 ,;"²'é.=+-]{0,12}$/).map((s) => s.trim());
    fc.assert(
      fc.property(fc.array(fc.array(cell, { minLength: 3, maxLength: 3 }), { minLength: 1, maxLength: 5 }), (rows) => {
        const text = csvText([['a', 'b', 'c'], ...rows]);
        expect(text.startsWith('\uFEFF')).toBe(true);
        const meant = rows.map((r) => r.map((c) => (/^[=+-]/.test(c) && !/^-?\d+(\.\d+)?$/.test(c) ? `'${c}` : c)));
        expect(parseCsv(text).slice(1)).toEqual(meant.filter((r) => r.some((c) => c !== '')));
      }),
    );
    expect(csvText([['one\r\ntwo']]).slice(1)).toBe('"one; two"\r\n');
    expect(parseCsv('a;b\n1;2')).toEqual([
      ['a', 'b'],
      ['1', '2'],
    ]);
  });
});

describe('the schema of a brief survey', () => {
  const schema = briefJsonSchema();
  const validate = new Ajv2020({ strict: false, validateFormats: false }).compile(schema);
  const properties = schema.properties as Readonly<Record<string, { title: string; examples?: unknown[] }>>;

  it('makes a form by itself: title, question, example, words for each choice', () => {
    expect(Object.keys(properties).length).toBe(questionnaire().length + 1);
    const examples = Object.fromEntries(
      Object.entries(properties).flatMap(([id, p]) => (p.examples ? [[id, p.examples[0]]] : [])),
    );
    expect(Object.keys(examples).length).toBeGreaterThan(60);
    const document = { ...examples, ...start };
    expect(validate(document), JSON.stringify(validate.errors)).toBe(true);
    expect(readBrief(document, usualDefaults).survey.wanted).toHaveLength(1);
  });

  it('accepts that something is not known, and refuses a key that is no question', () => {
    expect(validate({ ...start, ze: null, ipf: { unknown: 'measure it' } })).toBe(true);
    expect(validate({ ...start, colour: 'red' })).toBe(false);
  });
});

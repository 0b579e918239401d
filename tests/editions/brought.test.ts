import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { table4D5 } from '../../src/codes/bs7671/definitions.js';
import { bs7671, type EditionDifferences } from '../../src/codes/bs7671/index.js';
import type { EditionChange } from '../../src/codes/edition-differences.js';
import { aspects, type WiringCode } from '../../src/codes/wiring-code.js';
import { fingerprintOf } from '../../src/core/attested.js';
import { inGreatBritain } from '../../src/great-britain.js';
import { assess, celsius, hasCode, known, metres, recorder, squareMillimetres, writeSheet } from '../../src/index.js';
import { readEdition, readSurvey } from '../../src/io/index.js';
import { planBlocks, renderText } from '../../src/report/index.js';
import { planOf } from '../../src/site/index.js';
import { verifySheet } from '../../src/verify/index.js';
import { chargePoint, circuit, house, stretch } from '../support/house.js';
import { surveyDocument } from '../support/surveys.js';

const file = new URL('../../docs/examples/invented-edition.json', import.meta.url);
const text = readFileSync(file, 'utf8');
const document = () => JSON.parse(text) as EditionDifferences;
const a4 = '2018+A4:2026';
const invented = () => bs7671(a4, { editions: [readEdition(document())] });
const judged = (code: WiringCode, run = circuit()) => assess(code, house([run]), 'ev', {});
const base = () => bs7671('2018+A3:2024');
const of = (code: WiringCode, check: string, run = circuit()) =>
  judged(code, run).results.find((r) => r.check === check);

describe('an edition that somebody brought', () => {
  it('says of itself that it is invented', () => {
    expect(text).toContain('This is not the text of BS 7671:2018+A4:2026');
    expect(invented().standing).toContain('INVENTED EXAMPLE');
  });

  it('is judged by its own rules in what was entered, and open in all the rest', () => {
    const entered = Object.keys(document().aspects);
    const verdicts = new Map(judged(invented()).aspects.map((a) => [a.aspect, a.verdict]));
    for (const aspect of aspects) {
      const own = judged(invented()).results.filter((r) => r.check === `${aspect}-by-edition`);
      if (entered.includes(aspect)) expect([aspect, own]).toEqual([aspect, []]);
      else {
        expect([aspect, verdicts.get(aspect)]).toEqual([aspect, 'not-determined']);
        expect(own[0]?.gaps).toMatchObject([{ kind: 'edition', edition: 'BS 7671:2018+A4:2026' }]);
      }
    }
    expect(verdicts.get('coordination')).toBe('pass');
    expect(judged(invented()).overall.verdict).toBe('not-determined');
  });

  it('without such a document everything is open, as before', () => {
    expect(new Set(judged(bs7671(a4)).aspects.map((a) => a.verdict))).toEqual(new Set(['not-determined']));
  });

  it('a changed figure counts, and is known by who entered it', () => {
    const sheet = recorder('A circuit');
    const code = invented();
    const assessment = assess(code, house([circuit()]), 'ev', {}, sheet);
    expect(assessment.figures.capacity).toBe(46);
    expect(judged(base()).figures.capacity).toBe(47);
    const written = writeSheet(sheet);
    expect(JSON.stringify(written)).toContain('"attested":"J. Example, 2026-11-30, copy of 2018+A4:2026"');
    const tables = [...(code.attested?.tables.values() ?? [])];
    const checks = ['invented-loop-limit', 'invented-marking'].flatMap((id) => {
      const all = code.calculator.contents.checks as Readonly<Record<string, unknown>>;
      const how = Object.values(all)
        .filter(Array.isArray)
        .flat()
        .map((j) => (j as { how: { check?: { id: string } } }).how.check);
      return how.filter((c) => c?.id === id);
    });
    expect(verifySheet(written, [...tables, ...(checks as never[])], [code.calculator]).problems).toEqual([]);
  });

  // 4.5 % at 71 m: within 5 %, not within the invented 4 %; 60 m is within both
  const long = (length: number) => circuit({ stretches: [stretch({ length: known(metres(length)) })] });
  it('a changed limit: what it forbids fails, and its sound twin passes', () => {
    expect(of(base(), 'voltage-drop', long(44))?.verdict).toBe('pass');
    expect(of(invented(), 'voltage-drop', long(44))).toMatchObject({ verdict: 'fail', limit: { value: 0.04 } });
    expect(of(invented(), 'voltage-drop', long(38))).toMatchObject({ verdict: 'pass', limit: { value: 0.04 } });
  });

  it('a limit of the user is weighed against the changed one', () => {
    const withLimit = (dropLimit: number) =>
      assess(invented(), house([long(20)]), 'ev', { dropLimit }).results.find((r) => r.check === 'voltage-drop');
    expect(withLimit(0.045)?.limit?.value).toBe(0.04);
    expect(withLimit(0.03)?.limit?.value).toBe(0.03);
  });

  it('a new limit is judged, each way', () => {
    const source = { edition: a4, clause: 'X.3', note: 'entered by J. Example, 2026-11-30' };
    expect(of(invented(), 'invented-loop-limit')).toMatchObject({ verdict: 'pass', source });
    expect(of(invented(), 'invented-loop-limit', long(60))?.verdict).toBe('fail');
  });

  it('a new requirement that no figure decides stays open and says what to do', () => {
    expect(of(invented(), 'invented-marking')).toMatchObject({
      verdict: 'not-determined',
      gaps: [{ kind: 'fact', obtain: 'look at the board' }],
    });
  });

  it('a check that falls away is no longer required, and nothing else goes with it', () => {
    const hot = circuit({ terminalTemperature: known(celsius(40)) });
    expect(of(base(), 'terminal-temperature', hot)?.verdict).toBe('fail');
    expect(of(invented(), 'terminal-temperature', hot)).toMatchObject({
      verdict: 'not-required',
      because: expect.stringContaining('X.5'),
    });
    expect(of(invented(), 'load-within-capacity', hot)?.verdict).toBe('pass');
  });

  it('what is not sound by its own rules fails, though the rest is open', () => {
    const thin = circuit({ cable: { ...circuit().cable, area: known(squareMillimetres(2.5)) } });
    expect(judged(invented(), thin).overall.verdict).toBe('fail');
  });

  it('figures of aspects that were not entered are open, tests and remedies too', () => {
    const { figures } = judged(invented());
    expect(figures.protectiveArea).toMatchObject({ missing: [{ kind: 'edition' }] });
    expect(figures.loopImpedance).toEqual(expect.any(Number));
    expect(invented().tests).toMatchObject({ notEntered: { kind: 'edition' } });
    expect(invented().earthingOptions({} as never, chargePoint)).toEqual([]);
  });

  it('changes figures that were compared with a copy of its base, without a contradiction', () => {
    const { id: table } = table4D5;
    const compared = {
      table,
      figures: fingerprintOf(table4D5),
      by: 'K. Example',
      on: '2026-11-01',
      edition: '2018+A2:2022',
    };
    const attestations = [{ format: 'attestations/1', attestations: [compared] }] as const;
    const cells = bs7671(a4, { editions: [readEdition(document())], attestations }).attested?.tables.get(
      table,
    )?.attested;
    expect([cells?.get('C, 6')?.by, cells?.get('C, 4')?.by]).toEqual(['J. Example', 'K. Example']);
  });

  it('plans by it, and prints what it is', () => {
    const asked = surveyDocument('easy-home');
    const survey = readSurvey({ ...asked, code: { id: 'BS 7671', edition: a4 } });
    const plan = planOf(survey, inGreatBritain(a4, { editions: [readEdition(document())] }));
    const [first] = plan.options;
    expect(first?.overall.verdict).not.toBe('pass');
    const printed = renderText(planBlocks(plan)).replace(/\s+/g, ' ');
    expect(printed).toContain('INVENTED EXAMPLE');
    expect(printed).toContain('J. Example, 2026-11-30');
  });
});

const problemsOf = (make: () => unknown): string => {
  try {
    make();
  } catch (error) {
    if (hasCode(error, 'invalid-input')) return error.detail.problems.map((p) => p.message).join('\n');
    throw error;
  }
  return '';
};

describe('what is refused', () => {
  const withChange = (change: EditionChange, aspect: 'coordination' | 'voltage-drop' = 'coordination') => {
    const d = document();
    const entered = { read: 'x', by: 'J. Example', on: '2026-11-30', changes: [change] };
    return () => bs7671(a4, { editions: [readEdition({ ...d, aspects: { ...d.aspects, [aspect]: entered } })] });
  };
  const clause = 'X.9';

  it.each([
    [{ kind: 'limit', clause, entry: 'dropLimit', was: 0.06, is: 0.04 }, 'the base states no dropLimit of 0.06'],
    [{ kind: 'falls-away', clause, check: 'no-such-check' }, 'the base has no check no-such-check'],
    [{ kind: 'figure', clause, table: 'bs7671/4d9', column: 'C', row: 6, printed: 46 }, 'not read here'],
    [{ kind: 'figure', clause, table: 'bs7671/4d5', column: 'Z', row: 6, printed: 46 }, 'no column Z'],
    [
      { kind: 'figure', clause, table: 'iec60228/conductor-resistance', column: 'copper 2', row: 6, printed: 3.1 },
      'is a table of IEC 60228',
    ],
    [
      { kind: 'at-most', clause, check: 'a', title: 'A', value: 'capacity', limit: 'length', is: 1, weight: 'rule' },
      'is in another unit',
    ],
    [
      {
        kind: 'at-most',
        clause,
        check: 'load-within-capacity',
        title: 'A',
        value: 'capacity',
        limit: 'deviceRating',
        is: 1,
        weight: 'rule',
      },
      'there is a check load-within-capacity already',
    ],
  ] as const)('%j', (change, message) => {
    expect(problemsOf(withChange(change as EditionChange))).toContain(message);
  });

  it('a check of a figure that each cable of a circuit has', () => {
    const code = withChange({
      kind: 'at-least',
      clause,
      check: 'invented-size',
      title: 'A cable is not smaller than 10 mm²',
      value: 'conductorArea',
      limit: 'minimumArea',
      is: 10,
      weight: 'rule',
    } as EditionChange)();
    expect(of(code, 'invented-size')?.verdict).toBe('fail');
    const thicker = circuit({ cable: { ...circuit().cable, area: known(squareMillimetres(10)) } });
    expect(of(code, 'invented-size', thicker)?.verdict).toBe('pass');
    // one of two cables that is too small is enough
    const joined = circuit({
      ...thicker,
      stretches: [stretch({ name: 'a' }), stretch({ name: 'b', cable: circuit().cable, jointAccessible: known(true) })],
    });
    expect(
      judged(code, joined)
        .results.filter((r) => r.check === 'invented-size')
        .map((r) => r.verdict),
    ).toEqual(['pass', 'fail']);
  });

  it('a figure that breaks the law of its table', () => {
    const make = withChange({ kind: 'figure', clause, table: 'bs7671/4d5', column: 'C', row: 6, printed: 74 });
    expect(make).toThrow(/bs7671\/4d5.*breaks/);
  });

  it('differences of an edition that is entered, from one that is not, and two of one edition', () => {
    const d = document();
    const make = (...editions: EditionDifferences[]) =>
      problemsOf(() => bs7671(editions[0]?.edition ?? '', { editions }));
    expect(make({ ...d, edition: '2018+A2:2022' })).toContain('is entered');
    expect(make({ ...d, base: '2015' })).toContain('2015 is not entered');
    expect(make(d, d)).toContain('brought 2 times');
  });

  it('documents of another form, with the place', () => {
    expect(() => readEdition({ ...document(), aspects: { 'coffee-making': {} } })).toThrow(/aspects/);
    expect(() => readEdition({ ...document(), notice: '' })).toThrow(/notice/);
  });
});

import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { editions } from '../../src/codes/bs7671/editions.js';
import { hasCode, type Problem } from '../../src/index.js';
import { parseSurvey, readSurvey, surveyJsonSchema } from '../../src/io/index.js';
import { type Json, surveyDocument, surveyDocuments } from '../support/surveys.js';

/** The problems that reading a document ends in; empty when it reads. */
function problemsOf(document: unknown): readonly Problem[] {
  try {
    readSurvey(document);
    return [];
  } catch (error) {
    if (hasCode(error, 'invalid-input')) return error.detail.problems;
    throw error;
  }
}
const paths = (document: unknown) => problemsOf(document).map((p) => p.path.join('.'));

/** Sets a value deep in a document. */
function put(document: Json, path: readonly (string | number)[], value: Json | undefined): Json {
  let at = document as Record<string | number, Json>;
  for (const key of path.slice(0, -1)) at = at[key] as Record<string | number, Json>;
  const last = path.at(-1) as string | number;
  if (value === undefined) delete at[last];
  else at[last] = value;
  return document;
}
const changed = (path: readonly (string | number)[], value: Json | undefined) =>
  put(surveyDocument('easy-home'), path, value);

const validate = new Ajv2020({ strict: false, validateFormats: false }).compile(surveyJsonSchema());

describe('a survey document', () => {
  it.each(Object.keys(surveyDocuments))('%s reads, and fits the JSON Schema', (name) => {
    const document = surveyDocuments[name];
    expect(readSurvey(document).wanted.length).toBeGreaterThan(0);
    expect(validate(document), JSON.stringify(validate.errors?.slice(0, 3))).toBe(true);
  });

  it('reads quantities in text and under keys that name the unit alike', () => {
    const route = ['wanted', 0, 'route', 1];
    const text = readSurvey(surveyDocument('easy-home')).wanted[0]?.run.stretches[1]?.length;
    const keyed = changed([...route, 'length'], undefined);
    put(keyed, [...route, 'length_m'], { known: 11, by: 'floor plan' });
    expect(readSurvey(keyed).wanted[0]?.run.stretches[1]?.length).toEqual(text);
    expect(text).toEqual({ state: 'known', value: 11, by: 'floor plan' });
  });

  it('knows the editions, and says so of one that is not among them', () => {
    const [problem] = problemsOf(changed(['code', 'edition'], '2031'));
    expect(problem?.path).toEqual(['code', 'edition']);
    for (const { edition } of editions) expect(problem?.message).toContain(edition);
  });

  it('tells every problem at once, each with its path', () => {
    const document = surveyDocument('easy-home');
    put(document, ['wanted', 0, 'route', 0, 'length'], '-3 m');
    put(document, ['supply', 'cutOut', 'rating'], '80 V');
    put(document, ['board', 'runs', 0, 'cable', 'construction'], 'rope');
    put(document, ['supply', 'looped'], undefined);
    put(document, ['supply', 'tails'], { between: ['35 mm²', '16 mm²'] });
    put(document, ['spare'], 1);
    expect(paths(document).sort()).toEqual(
      [
        '',
        'board.runs.0.cable.construction',
        'supply.cutOut.rating',
        'supply.looped',
        'supply.tails',
        'wanted.0.route.0.length',
      ].sort(),
    );
  });

  it.each([
    ['a wrong unit', ['supply', 'externalImpedance'], '0.28 A', 'supply.externalImpedance'],
    ['a bare number without a unit', ['supply', 'externalImpedance'], 0.28, 'supply.externalImpedance'],
    ['a negative length', ['wanted', 0, 'route', 0, 'length'], '-1 m', 'wanted.0.route.0.length'],
    ['an unknown cable', ['wanted', 0, 'cables', 0, 'construction'], 'string', 'wanted.0.cables.0.construction'],
    ['a figure that would overflow', ['supply', 'externalImpedance'], '1e300 Ω', 'supply.externalImpedance'],
    ['a figure that would underflow', ['wanted', 0, 'vehicle', 'efficiency'], 1e-300, 'wanted.0.vehicle.efficiency'],
    [
      'a cable without a core for its protective conductor',
      ['wanted', 0, 'cables', 1, 'cores'],
      2,
      'wanted.0.cables.1.cores',
    ],
    ['a setting that no point can offer', ['wanted', 0, 'point', 'setting'], '5 A', 'wanted.0.point.setting'],
    ['an extra key', ['supply', 'colour'], 'red', 'supply'],
    ['an unknown board', ['wanted', 0, 'from'], 'attic', 'wanted.0.from'],
    ['a line that the supply has not', ['wanted', 0, 'lines'], ['L2'], 'wanted.0.lines.0'],
    [
      'a range the wrong way round',
      ['supply', 'externalImpedance'],
      { between: ['0.4 Ω', '0.3 Ω'] },
      'supply.externalImpedance',
    ],
    ['a fact of two kinds', ['supply', 'looped'], { known: true, unknown: 'ask' }, 'supply.looped'],
    ['a day that is none', ['about', 'date'], '2026-02-30', 'about.date'],
  ] as const)('refuses %s', (_, path, value, where) => {
    expect(paths(changed(path, value as Json))).toContain(where);
  });

  it('refuses numbers that JSON does not know, whatever holds them', () => {
    expect(paths(changed(['work', 'travelMinutes'], Number.NaN))).toEqual(['work.travelMinutes']);
    expect(paths(changed(['work', 'travelMinutes'], Number.POSITIVE_INFINITY))).toEqual(['work.travelMinutes']);
  });

  it('refuses keys that reach a prototype', () => {
    const text = JSON.stringify(surveyDocument('easy-home')).replace(
      '"supply":',
      '"__proto__":{"polluted":1},"supply":',
    );
    expect(paths(JSON.parse(text))).toEqual(['__proto__']);
    expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
    expect(paths(changed(['supply', 'constructor'], { name: 'x' }))).toEqual(['supply.constructor']);
  });

  it('refuses nesting 200 deep without a crash', () => {
    let deep: Json = 'bottom';
    for (let i = 0; i < 200; i++) deep = { board: deep };
    expect(problemsOf(changed(['board'], deep))[0]?.message).toContain('nested deeper');
    let endless: Json = 1;
    for (let i = 0; i < 100_000; i++) endless = [endless];
    expect(problemsOf(endless)[0]?.message).toContain('nested deeper');
  });

  it.each([
    ['supply', 'operation', 'island', 'island'],
    ['supply', 'currentKind', 'dc', 'direct current'],
    ['supply', 'system', 'IT', 'IT systems'],
    ['supply', 'nominalVoltage', '110 V', '110 V line to earth'],
    ['supply', 'nominalVoltage', '400 V', '400 V line to earth'],
    ['supply', 'frequency', '60 Hz', '60 Hz'],
  ] as const)('refuses what is not covered by name: %s %s %s', (where, key, value, what) => {
    const path = [where, key];
    try {
      readSurvey(changed(path, value as Json));
      expect.unreachable();
    } catch (error) {
      if (!hasCode(error, 'not-covered')) throw error;
      expect(error.detail.what).toContain(what);
    }
  });

  it('refuses a format that never was, and text that is not JSON', () => {
    expect(() => readSurvey(changed(['format'], 'survey/99'))).toThrow("there is no survey format 'survey/99'");
    expect(() => parseSurvey('{')).toThrow('is not JSON');
    for (const nothing of [null, undefined, 1, 'x', [], true]) expect(problemsOf(nothing).length).toBeGreaterThan(0);
  });

  it('never ends in anything but a survey or a typed error, whatever is put in its place', () => {
    const all: (string | number)[][] = [];
    const walk = (value: Json, path: (string | number)[]): void => {
      all.push(path);
      if (Array.isArray(value)) for (const [i, v] of value.entries()) walk(v, [...path, i]);
      else if (value !== null && typeof value === 'object')
        for (const [k, v] of Object.entries(value)) walk(v, [...path, k]);
    };
    walk(surveyDocument('easy-home'), []);
    const places = all.filter((p) => p.length > 0);
    fc.assert(
      fc.property(fc.nat(places.length - 1), fc.jsonValue(), (i, value) => {
        try {
          readSurvey(changed(places[i] as (string | number)[], value as Json));
        } catch (error) {
          expect(
            hasCode(error, 'invalid-input') || hasCode(error, 'not-covered') || hasCode(error, 'unknown-definition'),
            String(error),
          ).toBe(true);
        }
      }),
      { numRuns: 500 },
    );
  });
});

it('tells whoever wrote yes in quotation marks what to write', () => {
  expect(problemsOf(changed(['supply', 'metered'], 'yes'))).toMatchObject([
    { path: ['supply', 'metered'], message: 'has to be true or false, without quotation marks' },
  ]);
});

describe('a slip that is often made', () => {
  it.each([
    [['supply', 'system'], 'PME', 'not-allowed', 'TN-C-S'],
    [['supply', 'system'], 'tncs', 'not-allowed', 'TN-C-S'],
    [['supply', 'phases'], '3', 'not-allowed', 3],
    [['supply', 'looped'], 'no', 'wrong-kind', false],
    [['supply', 'cutOut', 'rating'], '80 amp', 'unit-spelling', '80 A'],
    [['supply', 'cutOut', 'rating'], 80, 'no-unit', '80 A'],
    [['supply', 'externalImpedance'], '0,35 Ω', 'decimal-comma', '0.35 Ω'],
    [['supply', 'externalImpedance'], '0.35 ohms', 'unit-spelling', '0.35 ohm'],
    [['supply', 'externalImpedance'], { known: '0.35', by: 'x' }, 'no-unit', '0.35 Ω'],
    [['supply', 'tails'], '25 sq mm', 'unit-spelling', '25 mm²'],
    [['supply', 'tails'], { between: ['16 sqmm', '25 mm²'] }, 'unit-spelling', '16 mm²'],
    [['wanted', 0, 'route', 0, 'length'], '6 metres', 'unit-spelling', '6 m'],
    [['wanted', 0, 'cables', 0, 'construction'], 'twin and earth', 'not-allowed', 'flat-twin-and-earth'],
    [['wanted', 0, 'cables', 0, 'insulation'], 'XLPE', 'not-allowed', 'thermosetting-90'],
    [['wanted', 0, 'cables', 0, 'material'], 'coper', 'not-allowed', 'copper'],
    [['board', 'runs', 3, 'feeds', 0, 'purpose'], 'cooker', 'not-allowed', 'cooking'],
  ] as const)('%j %j: %s, write %j', (path, value, id, write) => {
    const [problem, ...more] = problemsOf(changed(path, value as Json));
    expect(more).toEqual([]);
    expect(problem).toMatchObject({ id, write });
    expect(path).toEqual(problem?.path.slice(0, path.length));
  });

  it('is told in the words of the trade: a power where a current is due, a key that is near', () => {
    expect(problemsOf(changed(['wanted', 0, 'point', 'setting'], '7 kW'))[0]?.message).toMatch(/that power is 30\.4 A/);
    const found = problemsOf(put(changed(['supply', 'loopd'], false), ['supply', 'looped'], undefined));
    expect(found.map((p) => p.id).sort()).toEqual(['missing', 'unknown-key']);
    expect(found.find((p) => p.id === 'unknown-key')?.message).toContain("'loopd' (write 'looped')");
  });

  it('is told without the words of the validator', () => {
    for (const value of [null, 7, 'x', [], {}, ['L9'], true, { known: [] }]) {
      for (const path of [
        ['supply'],
        ['board', 'runs'],
        ['wanted', 0, 'lines'],
        ['wanted', 0, 'device', 'kind'],
        ['about'],
      ])
        for (const { message, id } of problemsOf(changed(path, value as Json))) {
          expect(message).not.toMatch(/invalid input|too small|too big|expected|received|union|unrecogni/i);
          expect(id, message).toBeDefined();
        }
    }
  });
});

it('tells what stands in different layers of a document at once', () => {
  const document = surveyDocument('easy-home');
  put(document, ['supply', 'looped'], undefined); // a key that is missing
  put(document, ['supply', 'externalImpedance'], undefined); // one that may be written in two ways
  put(document, ['supply', 'system'], 'PME'); // a word
  put(document, ['wanted', 0, 'from'], 'attic'); // a name that does not exist
  put(document, ['wanted', 0, 'lines'], ['L2']); // a line that the supply has not
  expect(paths(document).sort()).toEqual(
    ['supply.externalImpedance', 'supply.looped', 'supply.system', 'wanted.0.from', 'wanted.0.lines.0'].sort(),
  );
});

it('shows examples that may be written', () => {
  const walk = (at: unknown, found: [unknown, unknown][] = []): [unknown, unknown][] => {
    if (typeof at !== 'object' || at === null) return found;
    const { examples } = at as { examples?: unknown[] };
    if (Array.isArray(examples)) for (const example of examples) found.push([at, example]);
    for (const inner of Object.values(at)) walk(inner, found);
    return found;
  };
  const schema = surveyJsonSchema();
  const examples = walk(schema);
  expect(examples.length).toBeGreaterThan(150);
  const ajv = new Ajv2020({ strict: false, validateFormats: false });
  for (const [property, example] of examples) {
    const fits = ajv.compile({ ...(property as object), $defs: schema.$defs as object })(example);
    expect([(property as { title: string }).title, example, fits]).toEqual([expect.anything(), example, true]);
  }
});

it.each([
  ['openPenDevice', 'line-neutral-window-device', 'open-pen-detection-window'],
  ['openPenDevice', 'touch-voltage-device', 'open-pen-detection-touch-voltage'],
  ['earthing', 'equal-device', 'open-pen-detection-other'],
  ['earthing', 'tt-island', 'tt-earthing'],
])('tells what %s: %s is called now', (key, former, now) => {
  expect(problemsOf(changed(['wanted', 0, 'point', key], former))).toMatchObject([
    { path: ['wanted', 0, 'point', key], id: 'not-allowed', write: now },
  ]);
});

it('reads what decides the hours of a trench and of a load limiter', () => {
  const work = {
    digging: 'machine',
    surface: { known: 'paving', by: 'photograph' },
    sensorCable: '12 m',
    supplyChange: 'larger-fuse',
  };
  expect(readSurvey(changed(['work'], work)).work).toMatchObject({
    digging: { state: 'known', value: 'machine' },
    surface: { state: 'known', value: 'paving' },
    sensorCable: { state: 'known', value: 12 },
    supplyChange: 'larger-fuse',
  });
  expect(paths(changed(['work', 'surface'], 'marble'))).toEqual(['work.surface']);
});

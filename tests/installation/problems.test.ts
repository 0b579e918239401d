import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bs7671Demand } from '../../src/codes/bs7671/demand.js';
import { bs7671 } from '../../src/codes/bs7671/index.js';
import { termOf } from '../../src/core/index.js';
import { demandOf } from '../../src/demand/index.js';
import { inGreatBritain } from '../../src/great-britain.js';
import {
  amperes,
  assess,
  type Board,
  design,
  hasCode,
  hertz,
  type Installation,
  known,
  type Line,
  metres,
  pathsOf,
  pathTo,
  permitted,
  volts,
  watts,
} from '../../src/index.js';
import { counts, labels, outletsBelow, refuseUnsound, shapes } from '../../src/installation/index.js';
import { valueProblem } from '../../src/installation/values.js';
import { readSurvey, surveyJsonSchema } from '../../src/io/index.js';
import { planOf } from '../../src/site/index.js';
import { arbitraryInstallation } from '../../src/testing/index.js';
import { pathText } from '../../src/units/error.js';
import { chargePoint, circuit, house, load, stretch } from '../support/house.js';
import { seedOf } from '../support/seed.js';
import { surveyDocument } from '../support/surveys.js';

const code = bs7671('2018+A2:2022');
const lines: readonly Line[] = ['L1', 'L2', 'L3'];

/** The problems that a call ends in, as paths; nothing where it ends well. */
function refusedAt(call: () => unknown): readonly string[] {
  try {
    call();
  } catch (error) {
    if (hasCode(error, 'invalid-input')) return error.detail.problems.map((p) => pathText(p.path));
    throw error;
  }
  return [];
}

/** Every way in that takes an installation. */
const waysIn: Readonly<Record<string, (installation: Installation) => unknown>> = {
  assess: (i) => assess(code, i, 'ev'),
  design: (i) => design(code, i, 'ev', {}, { lengths: false }),
  permitted: (i) => permitted(code, i, 'ev', { vary: 'rating' }),
  demandOf: (i) => demandOf(bs7671Demand, i, { premises: 'dwelling' }),
};

const run = (change: object, feeds?: object): Installation =>
  house([circuit({ ...change, ...(feeds ? { feeds: [{ ...chargePoint, ...feeds }] } : {}) } as never)]);
const supplied = (change: object): Installation => house([circuit()], change as never);

const bad: readonly (readonly [what: string, installation: Installation, at: readonly string[]])[] = [
  ['the earthing system in small letters', supplied({ system: known('tt') }), ['supply.system.value']],
  ['a supply of two lines', supplied({ phases: known(2) }), ['supply.phases.value']],
  ['a bare true where a fact is due', supplied({ looped: true }), ['supply.looped']],
  ['a bare number where a fact is due', supplied({ externalImpedance: 0.35 }), ['supply.externalImpedance']],
  ['60 Hz', supplied({ frequency: hertz(60) }), ['supply.frequency']],
  ['120 V to earth', supplied({ nominalVoltage: volts(120) }), ['supply.nominalVoltage']],
  ['an IT system', supplied({ system: known('IT') }), ['supply.system']],
  ['operation as an island', supplied({ operation: 'island' }), ['supply.operation']],
  ['what mode 4 alone has', run({}, { directPower: known(watts(50_000)) }), ['board.runs[0].feeds[0].directPower']],
  ['a setting of 0 A', run({}, { setting: known(amperes(0)) }), ['board.runs[0].feeds[0].setting.value']],
  ['a kind of outlet that is none', run({}, { kind: 'charge_point' }), ['board.runs[0].feeds[0].kind']],
  [
    'a residual current type in small letters',
    run({ residual: [{ position: 'origin-of-circuit', type: known('ac'), rating: known(amperes(0.03)) }] }),
    ['board.runs[0].residual[0].type.value'],
  ],
  [
    'a purpose that is none',
    house([circuit({ feeds: [load(10, { purpose: 'socket' as never })] })]),
    ['board.runs[0].feeds[0].purpose'],
  ],
  [
    'a stretch of -90 m beside one of 100 m',
    run({ stretches: [stretch({ length: known(metres(100)) }), stretch({ length: known(-90 as never) })] }),
    ['board.runs[0].stretches[1].length.value'],
  ],
  [
    'a load on L2 of a circuit on L1',
    house([circuit({ feeds: [load(60, { lines: ['L2'] })] })], { phases: known(3) }),
    ['board.runs[0].feeds[0].lines[0]'],
  ],
  [
    'a load between two lines',
    house([circuit({ lines: ['L1', 'L2'], feeds: [load(30, { lines: ['L1', 'L2'] })] })], { phases: known(3) }),
    ['board.runs[0].lines', 'board.runs[0].feeds[0].lines'],
  ],
  [
    'three lines on a two-core cable',
    house([circuit({ lines, feeds: [{ ...chargePoint, lines }] })], { phases: known(3) }),
    ['board.runs[0].cable.cores'],
  ],
  [
    'three lines on a single-phase supply',
    run({ lines, cable: { ...circuit().cable, cores: 4 } }, { lines }),
    [
      'board.runs[0].lines[1]',
      'board.runs[0].lines[2]',
      'board.runs[0].feeds[0].lines[1]',
      'board.runs[0].feeds[0].lines[2]',
    ],
  ],
  ['a name that is used twice', house([circuit(), circuit()]), ['board.runs[1].id', 'board.runs[1].feeds[0].id']],
  [
    'a range the wrong way round',
    run({}, { setting: { state: 'between', least: 32, most: 16 } }),
    ['board.runs[0].feeds[0].setting'],
  ],
  ['a range of labels', supplied({ system: { state: 'between', least: 'TN-S', most: 'TT' } }), ['supply.system']],
  ['NaN', run({}, { setting: known(Number.NaN) }), ['board.runs[0].feeds[0].setting.value']],
  ['text where a number is due', run({}, { setting: known('32') }), ['board.runs[0].feeds[0].setting.value']],
  [
    'a fuse with a type',
    supplied({ cutOut: { kind: known({ standard: 'BS 88-3', type: 'B' }), rating: known(80) } }),
    ['supply.cutOut.kind.value'],
  ],
];

describe.each(Object.entries(waysIn))('%s', (_, enter) => {
  test.each(bad)('refuses %s', (_what, installation, at) => {
    expect(refusedAt(() => enter(installation))).toEqual(at);
  });
  test('refuses what is no installation', () => {
    for (const none of [null, undefined, 1, 'house', [], {}, { supply: null, board: null }])
      expect(refusedAt(() => enter(none as never)).length).toBeGreaterThan(0);
  });
  test('says everything at once', () => {
    const installation = house([circuit({ id: '', ring: 'yes' as never })], {
      looped: true as never,
      frequency: hertz(60),
    });
    expect(refusedAt(() => enter(installation))).toEqual([
      'supply.looped',
      'supply.frequency',
      'board.runs[0].id',
      'board.runs[0].ring',
    ]);
  });
});

test('what is sound is let in: three single cores on three lines, a motor on three lines without a neutral', () => {
  const cable = { ...circuit().cable, construction: 'single-core', cores: 3, protective: 'separate' } as const;
  const three = { phases: known(3) } as const;
  expect(() =>
    refuseUnsound(house([circuit({ lines, cable, feeds: [{ ...chargePoint, lines }] })], three)),
  ).not.toThrow();
  const armoured = { ...circuit().cable, construction: 'armoured', cores: 3, protective: 'armour' } as const;
  const motor = load(16, { purpose: 'motor', lines });
  expect(() => refuseUnsound(house([circuit({ lines, cable: armoured, feeds: [motor] })], three))).not.toThrow();
  expect(
    refusedAt(() =>
      refuseUnsound(house([circuit({ lines, cable: armoured, feeds: [motor, load(6, { id: 'lamp' })] })], three)),
    ),
  ).toEqual(['board.runs[0].cable.cores']);
});

test('a plan refuses a survey that was changed by hand, with its paths', () => {
  const survey = readSurvey(surveyDocument('easy-home'));
  const plan = (change: object) =>
    refusedAt(() => planOf({ ...survey, ...change } as never, inGreatBritain('2018+A2:2022')));
  const { installation, wanted } = survey;
  expect(plan({ installation: { ...installation, supply: { ...installation.supply, looped: true } } })).toEqual([
    'installation.supply.looped',
  ]);
  const [first] = wanted;
  expect(plan({ wanted: [{ ...first, from: 'attic' }] })).toEqual(['wanted[0].from']);
  expect(plan({ wanted: [{ ...first, run: { ...first?.run, lines: ['L2'] } }] })).toEqual(['wanted[0].run.lines[0]']);
  expect(plan({ wanted: 'two' })).toEqual(['wanted']);
  expect(refusedAt(() => planOf(null as never, inGreatBritain('2018+A2:2022')))).toEqual(['']);
});

/** Boards below boards, this many; the circuit `ev` hangs on the last. */
function nested(depth: number): Installation {
  let board: Board = { kind: 'board', id: `board ${depth}`, runs: [circuit()] };
  for (let i = depth - 1; i > 0; i--)
    board = { kind: 'board', id: `board ${i}`, runs: [circuit({ id: `feeder ${i}`, feeds: [board] })] };
  return { ...house([]), board };
}

test('3,000 boards below one another are walked without overflowing the stack', () => {
  const deep = nested(3000);
  expect(() => refuseUnsound(deep)).not.toThrow();
  expect(pathTo(deep, 'ev')?.boards).toHaveLength(3000);
  expect(pathsOf(deep)).toHaveLength(3000);
  expect(outletsBelow(deep.board)).toHaveLength(1);
  expect(() => demandOf(bs7671Demand, deep, { premises: 'dwelling' })).not.toThrow();
  const wrong = nested(3000);
  (wrong.board.runs[0] as { ring?: unknown }).ring = 'no';
  expect(refusedAt(() => refuseUnsound(wrong))).toEqual(['board.runs[0].ring']);
});

test('a board that holds itself is refused', () => {
  const board = { kind: 'board', id: 'db', runs: [] as unknown[] };
  board.runs.push({ ...circuit(), feeds: [board] });
  for (const enter of Object.values(waysIn))
    expect(refusedAt(() => enter({ ...house([]), board: board as never })).length).toBeGreaterThan(0);
});

test('an installation is looked through once, and its paths are found once', () => {
  let read = 0;
  const installation = house([circuit()]);
  const watched = {
    ...installation.board,
    get runs() {
      read++;
      return installation.board.runs;
    },
  };
  const seen = { ...installation, board: watched };
  refuseUnsound(seen);
  pathTo(seen, 'ev');
  const once = read;
  for (let i = 0; i < 100; i++) {
    refuseUnsound(seen);
    pathTo(seen, 'ev');
  }
  expect(read).toBe(once);
});

test('every field says what it is: a label, a count, a record, or a role of the vocabulary', () => {
  const plain = [
    'yes',
    'text',
    'overcurrentKind',
    ...Object.keys(labels),
    ...Object.keys(counts),
    ...Object.keys(shapes),
  ];
  expect(new Set(plain).size).toBe(plain.length);
  for (const shape of Object.values(shapes))
    for (const [, what] of Object.values(shape))
      expect(plain.includes(what) !== (termOf(what) !== undefined), what).toBe(true);
});

test('the gate knows every field that a document may hold', () => {
  const { $defs } = surveyJsonSchema() as {
    $defs: Record<string, { properties?: object; oneOf?: { properties: object }[] }>;
  };
  const apart = ['kind', 'lines', 'feeds', 'runs'];
  const known = new Set([...Object.values(shapes).flatMap((s) => Object.keys(s)), ...apart]);
  const units = /_(A|mA|kA|V|ohm|mohm|m|mm|mm2|C|W|kW|VA|kVA|kWh|s|ms|Km_per_W|ohm_m|ratio|percent|Hz)$/;
  for (const name of ['device', 'residual', 'cable', 'stretch', 'run', 'load', 'chargePoint'] as const) {
    const own = new Set([...Object.keys(shapes[name]), ...apart]);
    const keys = Object.keys($defs[name]?.properties ?? {}).map((k) => k.replace(units, ''));
    expect(
      keys.filter((k) => !own.has(k)),
      `fields of ${name} that src/installation/shapes.ts does not have`,
    ).toEqual([]);
  }
  const supply = (surveyJsonSchema() as { properties: { supply: { properties: object } } }).properties.supply
    .properties;
  expect(
    Object.keys(supply)
      .map((k) => k.replace(units, ''))
      .filter((k) => !known.has(k) && k !== 'operation' && k !== 'currentKind'),
  ).toEqual([]);
});

test('whatever is put in the place of a part, every way in ends well or in a typed error', () => {
  const odd = fc.oneof(
    fc.constantFrom<unknown>(null, true, false, 'tt', '', 'L4', -1, 0, 1e300, Number.NaN, [], {}, [null], {
      state: 'known',
    }),
    fc.jsonValue(),
  );
  const places = (tree: unknown, path: readonly (string | number)[] = []): (readonly (string | number)[])[] =>
    typeof tree !== 'object' || tree === null
      ? []
      : Object.entries(tree).flatMap(([k, v]) => [[...path, k], ...places(v, [...path, k])]);
  const put = (tree: unknown, [key, ...rest]: readonly (string | number)[], value: unknown): unknown => {
    if (key === undefined) return value;
    const copy = (Array.isArray(tree) ? [...tree] : { ...(tree as object) }) as Record<string | number, unknown>;
    copy[key] = put(copy[key], rest, value);
    return copy;
  };
  fc.assert(
    fc.property(arbitraryInstallation({ open: true }), fc.nat(), odd, (installation, n, value) => {
      const all = places(installation);
      const changed = put(installation, all[n % all.length] as readonly (string | number)[], value) as Installation;
      const ends = Object.values({ assess: waysIn.assess, demandOf: waysIn.demandOf }).map((enter) => {
        try {
          enter?.(changed);
          return 'well';
        } catch (error) {
          expect(hasCode(error, 'invalid-input') || hasCode(error, 'unknown-definition'), String(error)).toBe(true);
          return 'refused';
        }
      });
      // what is let in by one is let in by the other, but for the circuit that assess looks for
      if (ends[0] === 'well') expect(ends[1]).toBe('well');
    }),
    { numRuns: 300, seed: seedOf(11) },
  );
});

test('every drawn installation is let in', () => {
  fc.assert(
    fc.property(arbitraryInstallation({ open: true }), (installation) => refuseUnsound(installation)),
    { numRuns: 300, seed: seedOf(12) },
  );
});

test('a value is told from its like', () => {
  expect(valueProblem('mode', '3')).toContain('known are 2, 3, 4');
  expect(valueProblem('parallel', 1.5)).toContain('whole number');
  expect(valueProblem('groupingFactor', 0.8)).toBeUndefined();
  expect(valueProblem('length', 1e12)).toContain('no survey finds such a figure');
  expect(valueProblem('overcurrentKind', { standard: 'EN 60898' })).toContain('has B, C, D');
});

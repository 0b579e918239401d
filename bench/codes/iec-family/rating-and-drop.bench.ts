import {
  capacitySuffices,
  deviceCarriesLoad,
  dropRatioOf,
  dropWithinLimit,
  loadWithinCapacity,
  requiredForOverload,
  table4B1,
  table4C1,
  table4D5,
  table4D5Drop,
} from '../../../src/codes/bs7671/definitions.js';
import { bs7671, capacityAsInstalled, voltageDropTabulated } from '../../../src/codes/bs7671/index.js';
import type { CircuitCase } from '../../../src/codes/wiring-code.js';
import { celsius, isMissing, known, metres, silent, squareMillimetres } from '../../../src/index.js';
import type { Board, Installation, Run } from '../../../src/installation/index.js';
import { conductorResistance } from '../../../src/products/iec60228/conductor-resistance.js';
import { amperes, hertz, ohms, type Ratio, ratio, volts } from '../../../src/units/index.js';
import { compare } from '../../compare.js';

// Ten thousand invented charger circuits, fifteen turns of them in flat twin and earth: size, method, length, ambient and group in turn.
const COUNT = 10_000;
const methods = ['C', 'C', '100', 'A', '102'] as const;
const areas = [4, 6, 10, 16] as const;
const ambients = [25, 30, 35, 40] as const;
const groups = [1, 2, 3, 4, 6] as const;
const RATING = 32;
/** Factor of the maker for devices beside one another. */
const GROUPED = 1;

interface Row {
  readonly area: (typeof areas)[number];
  readonly method: (typeof methods)[number];
  readonly ambient: (typeof ambients)[number];
  readonly circuits: (typeof groups)[number];
  readonly length: number;
  readonly current: number;
}
const rows: readonly Row[] = Array.from({ length: COUNT }, (_, i) => ({
  area: areas[i % areas.length]!,
  method: methods[i % methods.length]!,
  ambient: ambients[(i >> 2) % ambients.length]!,
  circuits: groups[(i >> 4) % groups.length]!,
  length: 5 + (i % 61),
  current: 16 + (i % 17),
}));

const caseOf = (row: Row): CircuitCase => {
  const run: Run = {
    id: 'ev',
    lines: ['L1'],
    device: {
      kind: known({ standard: 'EN 61009', type: 'B' }),
      rating: known(amperes(RATING)),
      groupingFactor: known(ratio(GROUPED)),
    },
    cable: {
      construction: 'flat-twin-and-earth',
      material: 'copper',
      insulation: 'thermoplastic-70',
      cores: 2,
      area: known(squareMillimetres(row.area)),
      protective: 'bare-core',
    },
    stretches: [
      {
        name: 'route',
        length: known(metres(row.length)),
        method: known(row.method),
        ambient: known(celsius(row.ambient)),
        insulated: known(metres(0)),
        group: { arrangement: 'bunched', circuits: known(row.circuits), unequal: known(false) },
      },
    ],
    feeds: [
      {
        kind: 'charge-point',
        id: 'point',
        lines: ['L1'],
        setting: known(amperes(row.current)),
        outdoors: known(true),
        mode: 3,
      },
    ],
  };
  const board: Board = { kind: 'board', id: 'db', runs: [run] };
  const installation: Installation = {
    supply: {
      system: known('TN-C-S'),
      phases: known(1),
      nominalVoltage: volts(230),
      frequency: hertz(50),
      externalImpedance: known(ohms(0.35)),
      prospectiveCurrent: known(amperes(1200)),
      cutOut: { kind: known({ standard: 'BS 88-3' }), rating: known(amperes(100)) },
      looped: known(false),
    } as Installation['supply'],
    board,
  };
  return {
    installation,
    path: { boards: [board], feeders: [], run },
    run,
    board,
    phases: 1,
    designCurrent: amperes(row.current),
    nominalVoltage: volts(230),
    feedsChargePoint: true,
    options: {},
  };
};
const cases = rows.map(caseOf);

// the same cells, in maps by hand
const byHand = {
  capacity: new Map(
    methods.map((method) => [
      method,
      new Map(areas.map((a) => [a, table4D5.get({ method, conductorArea: squareMillimetres(a) }) as number])),
    ]),
  ),
  ambient: new Map(
    ambients.map((t) => [
      t,
      table4B1.get({ insulation: 'thermoplastic-70', ambientTemperature: celsius(t) }) as number,
    ]),
  ),
  group: new Map(groups.map((n) => [n, table4C1.get({ arrangement: 'bunched', circuitsInGroup: ratio(n) }) as number])),
  drop: new Map(
    areas.map((a) => [
      a,
      table4D5Drop.get({ system: 'single-phase', component: 'z', conductorArea: squareMillimetres(a) }) as number,
    ]),
  ),
  resistance: new Map(
    areas.map((a) => [
      a,
      conductorResistance.get({
        metal: 'copper',
        conductorClass: '2',
        conductorArea: squareMillimetres(a),
      }) as number,
    ]),
  ),
};

const FIGURES = 5;
const kept = new Float64Array(COUNT * FIGURES);

/** Rating, six comparisons, temperature at the load, tabulated drop, and the voltage at the point at both ends of the supply. */
function straight(): Float64Array {
  for (let i = 0; i < COUNT; i++) {
    const row = rows[i]!;
    const tabulated = byHand.capacity.get(row.method)!.get(row.area)!;
    const factors = byHand.ambient.get(row.ambient)! * byHand.group.get(row.circuits)!;
    const capacity = tabulated * factors;
    const required = RATING / factors;
    const passes =
      RATING >= row.current &&
      RATING * GROUPED >= row.current &&
      tabulated >= required &&
      row.current <= capacity &&
      1.45 * RATING <= 1.45 * capacity;
    const temperature = row.ambient + (row.current / capacity) ** 2 * (70 - row.ambient);
    const drop = byHand.drop.get(row.area)! * row.current * row.length;
    const within = drop / 230 <= 0.05;
    const r = byHand.resistance.get(row.area)! * (1 + 0.004 * (temperature - 20)) * row.length;
    const x = 0.08e-3 * row.length;
    const at = (supply: number) => Math.sqrt(supply ** 2 - (row.current * 2 * x) ** 2) - row.current * 2 * r;
    const k = i * FIGURES;
    kept[k] = capacity;
    kept[k + 1] = drop;
    kept[k + 2] = at(216.2);
    kept[k + 3] = at(253);
    kept[k + 4] = passes && within ? 1 : 0;
  }
  return kept;
}

/** The definitions called as functions: what a caller writes who wants figures, not verdicts. */
function definitions(): Float64Array {
  const one = ratio(1);
  for (let i = 0; i < COUNT; i++) {
    const row = rows[i]!;
    const conductorArea = squareMillimetres(row.area);
    const tabulatedCapacity = table4D5.get({ method: row.method, conductorArea });
    const ambientFactor = table4B1.get({ insulation: 'thermoplastic-70', ambientTemperature: celsius(row.ambient) });
    const groupFactor = table4C1.get({ arrangement: 'bunched', circuitsInGroup: row.circuits as number as Ratio });
    const factors = { ambientFactor, groupFactor, insulationFactor: one, soilFactor: one };
    const capacity = capacityAsInstalled({ tabulatedCapacity, ...factors });
    const required = requiredForOverload({
      deviceRating: amperes(RATING),
      ...factors,
      fuseFactor: one,
      deviceFactor: one,
    });
    const dropRate = table4D5Drop.get({ system: 'single-phase', component: 'z', conductorArea });
    const drop = voltageDropTabulated({ dropRate, designCurrent: amperes(row.current), length: metres(row.length) });
    const k = i * FIGURES;
    kept[k] = capacity;
    kept[k + 1] = drop;
    kept[k + 4] = tabulatedCapacity >= required && drop / 230 <= 0.05 ? 1 : 0;
  }
  return kept;
}

/** The same on a silent sheet, with verdicts: what a rule does. */
function silentSheet(): Float64Array {
  for (let i = 0; i < COUNT; i++) {
    const row = rows[i]!;
    const sheet = silent();
    const designCurrent = sheet.given('designCurrent', amperes(row.current));
    const deviceRating = sheet.given('deviceRating', amperes(RATING));
    const first = sheet.check(deviceCarriesLoad, { deviceRating, designCurrent });
    const conductorArea = sheet.given('conductorArea', squareMillimetres(row.area));
    const tabulatedCapacity = sheet.look(table4D5, { method: sheet.label('method', row.method), conductorArea });
    const ambientFactor = sheet.look(table4B1, {
      insulation: sheet.label('insulation', 'thermoplastic-70'),
      ambientTemperature: sheet.given('ambientTemperature', celsius(row.ambient)),
    });
    const groupFactor = sheet.look(table4C1, {
      arrangement: sheet.label('arrangement', 'bunched'),
      circuitsInGroup: sheet.given('circuitsInGroup', ratio(row.circuits)),
    });
    const insulationFactor = sheet.given('insulationFactor', ratio(1));
    const soilFactor = sheet.given('soilFactor', ratio(1));
    const fuseFactor = sheet.given('fuseFactor', ratio(1));
    const deviceFactor = sheet.given('deviceFactor', ratio(1));
    const factors = { ambientFactor, groupFactor, insulationFactor, soilFactor };
    const capacity = sheet.step(capacityAsInstalled, { tabulatedCapacity, ...factors });
    const requiredCapacity = sheet.step(requiredForOverload, { deviceRating, ...factors, fuseFactor, deviceFactor });
    const second = sheet.check(capacitySuffices, { tabulatedCapacity, requiredCapacity });
    const third = sheet.check(loadWithinCapacity, { designCurrent, capacity });
    const dropRate = sheet.look(table4D5Drop, {
      system: sheet.label('system', 'single-phase'),
      component: sheet.label('component', 'z'),
      conductorArea,
    });
    const length = sheet.given('length', metres(row.length));
    const totalDrop = sheet.step(voltageDropTabulated, { dropRate, designCurrent, length });
    const dropRatio = sheet.step(dropRatioOf, {
      totalDrop,
      nominalVoltage: sheet.given('nominalVoltage', volts(230)),
    });
    const fourth = sheet.check(dropWithinLimit, { dropRatio, dropLimit: sheet.given('dropLimit', ratio(0.05)) });
    const k = i * FIGURES;
    kept[k] = isMissing(capacity) ? 0 : capacity;
    kept[k + 1] = isMissing(totalDrop) ? 0 : totalDrop;
    kept[k + 4] = [first, second, third, fourth].every((r) => r.verdict === 'pass') ? 1 : 0;
  }
  return kept;
}

const code = bs7671('2018+A2:2022');
/** The groups of checks of the code on a silent sheet: every check, the temperature, and both exact voltages. */
function rules(): Float64Array {
  for (let i = 0; i < COUNT; i++) {
    const calculation = code.calculator.of(cases[i]!);
    const results = [...calculation.results('coordination'), ...calculation.results('voltage-drop')];
    const k = i * FIGURES;
    kept[k] = calculation.figure('capacity') as number;
    kept[k + 1] = calculation.figure('totalDrop') as number;
    kept[k + 2] = calculation.figure('voltageAtLowestSupply') as number;
    kept[k + 3] = calculation.figure('voltageAtHighestSupply') as number;
    kept[k + 4] = results.every((r) => r.verdict === 'pass') ? 1 : 0;
  }
  return kept;
}

// they agree before they are measured
const hand = straight().slice();
for (const [name, way, figures] of [
  ['definitions', definitions, [0, 1]],
  ['silent sheet', silentSheet, [0, 1]],
  ['rules', rules, [0, 1, 2, 3, 4]],
] as const) {
  const theirs = way();
  for (let i = 0; i < COUNT; i++)
    for (const f of figures) {
      const [a, b] = [hand[i * FIGURES + f]!, theirs[i * FIGURES + f]!];
      if (!(Math.abs(a - b) <= 1e-9 * Math.abs(a))) throw new Error(`${name}: circuit ${i}, figure ${f}: ${a}, ${b}`);
    }
}

export default [
  compare('rating and drop of 150,000 circuits, 10,000 a turn', {
    anchor: 'straight code by hand',
    per: COUNT,
    ways: {
      'straight code by hand': straight,
      'formulas and tables as functions': definitions,
      'formulas, tables and checks on a silent sheet': silentSheet,
      'the rules of the code on a silent sheet, with exact voltages': rules,
    },
  }),
];

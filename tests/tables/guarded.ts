import { cableTables } from '../../src/codes/bs7671/cable-tables.js';
import * as bs from '../../src/codes/bs7671/definitions.js';
import { orderOfMethods } from '../../src/codes/iec-family/table-laws.js';
import { lawAtSize } from '../../src/codes/iec60364/annex-d.js';
import * as iec from '../../src/codes/iec60364/definitions.js';
import { squareMillimetres } from '../../src/units/index.js';
import { guardedFactors } from './guarded-factors.js';
import {
  columnName,
  equals,
  type Guard,
  grain,
  halfAmpere,
  halfDrop,
  near,
  oneWay,
  ordered,
  type Printed,
  phases,
  positive,
  printedCell,
  proportional,
  smooth,
  triangle,
  within,
} from './guards.js';
import { dropOfResistance, temperatureOf } from './laws.js';

/** A table with its guards. */
export interface Guarded {
  readonly table: Printed;
  readonly guards: readonly Guard[];
  /** What it lists. */
  readonly sort: 'capacity' | 'drop' | 'factor';
}

/** The power law of IEC 60364-5-52 Annex D for a column, rounded as the tables are. */
const annexD = (tableNumber: string, column: string, size: number): number | undefined => {
  const key = `${tableNumber} ${column} ${size}`;
  if (!laws.has(key)) laws.set(key, lawAtSize(`${tableNumber} ${column}`, squareMillimetres(size))?.printed);
  return laws.get(key);
};

const laws = new Map<string, number | undefined>();

const airColumn: Readonly<Record<string, string>> = {
  'E 2 multicore': 'E_2core',
  'E 3 multicore': 'E_3core',
  'F 2 flat-touching': 'F_2c_touching',
  'F 3 trefoil': 'F_3c_trefoil',
  'F 3 flat-touching': 'F_3c_flat_touching',
  'G 3 spaced-horizontal': 'G_3c_flat_spaced_horizontal',
  'G 3 spaced-vertical': 'G_3c_flat_spaced_vertical',
};

/** Where a column of BS 7671 has its counterpart in IEC: enclosed methods by number of loaded conductors, and air. */
interface Counterpart {
  readonly two: Printed;
  readonly three: Printed;
  readonly air?: Printed;
  readonly metal: 'copper' | 'aluminium';
  readonly single?: boolean;
}

/** Table and column of IEC for a column of BS 7671. */
function counterpart(of: Counterpart, column: string): readonly [Printed, string] | undefined {
  const [method = '', loaded = '', formation = ''] = column.split(' ');
  const sheet = loaded === '2' ? of.two : of.three;
  if (method === 'A' || method === 'B') return [sheet, `${of.metal} ${method}${of.single ? 1 : 2}`];
  if (method === 'C') return of.single || of.air === undefined ? undefined : [sheet, `${of.metal} C`];
  if (method === 'D') return [sheet, `${of.metal} D1`];
  return of.air && [of.air, `${method} ${loaded} ${formation || 'multicore'}`];
}

const number = (table: Printed) => table.id.replace('iec60364/b.', 'B.');

/** Which law of Annex D a column follows. */
const lawOf =
  (of: Counterpart) =>
  (column: string, size: number): number | undefined => {
    const [sheet, name] = counterpart(of, column) ?? [];
    if (!sheet || !name) return undefined;
    const air = airColumn[name];
    return annexD(number(sheet), air === undefined ? name : `${of.metal} ${air}`, size);
  };

const sameAsIec = (of: Counterpart): Guard =>
  equals('IEC', (column, size) => {
    const [sheet, name] = counterpart(of, column) ?? [];
    return sheet && name ? printedCell(sheet, name, size) : undefined;
  });

const capacity = (table: Printed, ...more: readonly Guard[]): Guarded => ({
  table,
  sort: 'capacity',
  guards: [positive, oneWay('rises'), orderOfMethods(table), smooth(0.03), grain(halfAmpere), ...more],
});

const withLaw = (of: Counterpart): readonly Guard[] => [equals('power law', lawOf(of)), sameAsIec(of)];

/** Beyond rounding, ratios of columns wander less than this. */
const wander = 0.004;

/** The ratio of a column to one of another table with the same name, or as `name` says. */
const besides = (
  label: string,
  other: Printed,
  name: (column: string) => string | undefined = (column) => column,
): Guard =>
  proportional(
    label,
    (_, column, size) => {
      const theirs = name(column);
      return theirs === undefined ? undefined : printedCell(other, theirs, size);
    },
    halfAmpere,
    wander,
  );

/** The ratio of a column to another one of its own table. */
const beside = (label: string, name: (column: string) => string | undefined): Guard =>
  proportional(
    label,
    (table, column, size) => {
      const theirs = name(column);
      return theirs === undefined || theirs === column ? undefined : printedCell(table, theirs, size);
    },
    halfAmpere,
    wander,
  );

/** Three loaded conductors beside two, and method E beside C, of a multicore table. */
const multicoreRatios: readonly Guard[] = [
  beside('three to two', (c) => (c.endsWith(' 3') ? c.replace(/3$/, '2') : undefined)),
  beside('E to C', (c) => (c.startsWith('E ') ? c.replace('E', 'C') : undefined)),
];

const singleRatios = (other: Printed): readonly Guard[] => [
  besides('C to the other insulation', other, (c) => (c.startsWith('C ') ? c : undefined)),
  beside('C: three to two', (c) => (c === 'C 3 flat-or-trefoil' ? 'C 2 flat-touching' : undefined)),
  beside('C to F', (c) => (c === 'C 2 flat-touching' ? 'F 2 flat-touching' : undefined)),
];

const pvc: Counterpart = { two: iec.tableB522, three: iec.tableB524, air: iec.tableB5210, metal: 'copper' };
const xlpe: Counterpart = { two: iec.tableB523, three: iec.tableB525, air: iec.tableB5212, metal: 'copper' };
const pvcGround: Counterpart = { two: iec.tableB522, three: iec.tableB524, metal: 'copper' };
const xlpeGround: Counterpart = { two: iec.tableB523, three: iec.tableB525, metal: 'copper' };
const aluminiumGround: Counterpart = { ...xlpeGround, metal: 'aluminium' };

/** The columns of BS 7671 that repeat a column of IEC. */
function sameAsBs(number: '2' | '3' | '4' | '5'): Guard {
  const loaded = number === '2' || number === '3' ? '2' : '3';
  const cool = number === '2' || number === '4';
  const [single, multi, ground] = cool
    ? [bs.table4D1A, bs.table4D2A, bs.table4D4A]
    : [bs.table4E1A, bs.table4E2A, bs.table4E4A];
  return equals('BS 7671', (column, size) => {
    const [metal, method = ''] = column.split(' ');
    if (metal === 'aluminium')
      return cool || method !== 'D1' ? undefined : printedCell(bs.table4J4A, `D ${loaded}`, size);
    if (method === 'D1') return printedCell(ground, `D ${loaded}`, size);
    if (method === 'A1' || method === 'B1') return printedCell(single, `${method[0]} ${loaded} enclosed`, size);
    if (method === 'D2') return undefined;
    return printedCell(multi, `${method[0]} ${loaded}`, size);
  });
}

const iecEnclosed = (table: Printed, digit: '2' | '3' | '4' | '5', hotter: Printed): Guarded => {
  const rank = [
    ['A2', 'A1'],
    ['A1', 'B1'],
    ['A2', 'B2'],
    ['B2', 'B1'],
    ['B1', 'C'],
    ['D1', 'D2'],
  ];
  const pairs = ['copper', 'aluminium'].flatMap((m) => rank.map(([a, b]) => [`${m} ${a}`, `${m} ${b}`] as const));
  const metals = ['A1', 'A2', 'B1', 'B2', 'C', 'D1', 'D2'].map((x) => [`aluminium ${x}`, `copper ${x}`] as const);
  const withoutLaw = (c: string) => / (B1|B2|D2)$/.test(c);
  return {
    table,
    sort: 'capacity',
    guards: [
      positive,
      oneWay('rises'),
      ordered([...pairs, ...metals]),
      smooth(0.03),
      grain(halfAmpere),
      equals('power law', (column, size) => annexD(number(table), column, size)),
      sameAsBs(digit),
      beside('D2 to D1', (c) => (c.endsWith(' D2') ? c.replace('D2', 'D1') : undefined)),
      beside('B1 to B2', (c) => (c.endsWith(' B1') ? c.replace('B1', 'B2') : undefined)),
      beside('aluminium to copper', (c) => (withoutLaw(c) ? c.replace('aluminium', 'copper') : undefined)),
      besides('to the other insulation', hotter, (c) => (withoutLaw(c) ? c : undefined)),
    ],
  };
};

const iecAir = (table: Printed, metal: string): Guarded =>
  capacity(
    table,
    equals('power law', (column, size) => annexD(number(table), `${metal} ${airColumn[column] ?? column}`, size)),
  );

const isReactance = (column: string): boolean => column.endsWith(' x');

const drop = (table: Printed, law: ReturnType<typeof dropOfResistance>, ...more: readonly Guard[]): Guarded => ({
  table,
  sort: 'drop',
  guards: [
    positive,
    oneWay('falls', isReactance),
    smooth(0.06, (c) => !isReactance(c)),
    grain(halfDrop),
    near('resistance', law, 0.96, 1.04),
    within('resistance, rounded', law, halfDrop, 0.01),
    triangle(halfDrop),
    phases(0.03),
    oneFigure,
    ...more,
  ],
});

/** The same figures in another table. */
const twin = (other: Printed, name: (column: string, size: number) => string | undefined = (column) => column): Guard =>
  equals(`as ${other.id}`, (column, size) => {
    const theirs = name(column, size);
    return theirs === undefined ? undefined : printedCell(other, theirs, size);
  });

/** The other insulation: r as the resistances at 70 °C and 90 °C, x alike. */
const otherInsulation = (other: Printed, factor: number): readonly Guard[] => [
  within(
    'resistance at the other temperature',
    (column, size) => {
      const theirs = printedCell(other, column, size);
      return theirs === undefined || column.endsWith(' x') || (column.endsWith(' z') && size > 16)
        ? undefined
        : theirs * factor;
    },
    halfDrop,
    0.01,
  ),
  within(
    'reactance of the other insulation',
    (column, size) => (isReactance(column) ? printedCell(other, column, size) : undefined),
    halfDrop,
    0.02,
  ),
];

const hot = (230 + 90) / (230 + 70);

/** Up to 16 mm² there is one figure for every way of laying, and direct current has it too. */
const oneFigure: Guard = (table) =>
  equals('one figure up to 16 mm²', (column, size) => {
    if (size > 16 || column.endsWith(' x')) return undefined;
    const own = table.columns.map(columnName);
    const system = column.startsWith('three') ? 'three-phase' : 'single-phase';
    const first = own.find((c) => c.startsWith(system) && c.endsWith(' z') && !c.includes('single-core'));
    return first === undefined ? undefined : printedCell(table, first, size);
  })(table);

const enclosedTwin = (other: Printed): Guard =>
  twin(other, (c, s) => (s <= 16 && c.includes('enclosed') ? c.replace('enclosed ', '') : undefined));

/** What guards some cable tables of BS 7671 besides what guards them all. */
const besidesAll: ReadonlyMap<Printed, readonly Guard[]> = new Map<Printed, readonly Guard[]>([
  [
    bs.table4D5,
    [
      equals('103 is half of C', (c, s) => {
        const whole = c === '103' ? printedCell(bs.table4D5, 'C', s) : undefined;
        return whole === undefined ? undefined : Math.round(whole) / 2;
      }),
      equals('C is twice 103', (c, s) => {
        const half = c === 'C' ? printedCell(bs.table4D5, '103', s) : undefined;
        return half === undefined ? undefined : 2 * half;
      }),
      beside('101 to 100', (c) => (c === '101' ? '100' : undefined)),
      beside('102 to 100', (c) => (c === '102' ? '100' : undefined)),
      besides('C to 4D2A', bs.table4D2A, (c) => (c === 'C' || c === 'A' ? `${c} 2` : undefined)),
    ],
  ],
  [bs.table4D1A, [...withLaw({ ...pvc, single: true }), ...singleRatios(bs.table4E1A)]],
  [bs.table4D2A, withLaw(pvc)],
  [bs.table4D4A, [...withLaw(pvcGround), besides('to 4E4A', bs.table4E4A), ...multicoreRatios]],
  [bs.table4E1A, [...withLaw({ ...xlpe, single: true }), ...singleRatios(bs.table4D1A)]],
  [bs.table4E2A, withLaw(xlpe)],
  [
    bs.table4E4A,
    [...withLaw(xlpeGround), besides('to 4D4A', bs.table4D4A), besides('to 4E2A', bs.table4E2A), ...multicoreRatios],
  ],
  [bs.table4J4A, [...withLaw(aluminiumGround), besides('to 4E4A', bs.table4E4A), ...multicoreRatios]],
  [
    bs.table4F1A,
    [
      besides('to 4F2A', bs.table4F2A),
      beside('three to two', (c) => (c === 'multicore 3' ? 'multicore 2' : undefined)),
    ],
  ],
  [
    bs.table4F2A,
    [
      besides('to 4F1A', bs.table4F1A),
      beside('three to two', (c) => (c === 'multicore 3' ? 'multicore 2' : undefined)),
      besides('to 4E2A', bs.table4E2A, (c) => (c.startsWith('multicore') ? c.replace('multicore', 'E') : undefined)),
      besides('to 4E1A', bs.table4E1A, (c) => (c === 'single-core 2' ? 'F 2 flat-touching' : undefined)),
    ],
  ],
  [bs.table4D5Drop, [twin(bs.table4D2B)]],
  [bs.table4D1B, [...otherInsulation(bs.table4E1B, 1 / hot), enclosedTwin(bs.table4D2B)]],
  [bs.table4D2B, [twin(bs.table4D4B), ...otherInsulation(bs.table4E2B, 1 / hot)]],
  [bs.table4D4B, [twin(bs.table4D2B), ...otherInsulation(bs.table4E4B, 1 / hot)]],
  [bs.table4E1B, [...otherInsulation(bs.table4D1B, hot), enclosedTwin(bs.table4E2B)]],
  [bs.table4E2B, [twin(bs.table4E4B), ...otherInsulation(bs.table4D2B, hot)]],
  [bs.table4E4B, [twin(bs.table4E2B), ...otherInsulation(bs.table4D4B, hot)]],
]);

/** The cable tables of BS 7671, each once, by the rows that say what they are for. */
const british = new Map(
  cableTables.flatMap(({ construction, material, insulation, capacity: table, drop: drops, dropFactor }) => {
    const law = dropOfResistance(
      { material, temperature: temperatureOf[insulation] },
      construction === 'flexible' ? '5' : '2',
    );
    return [
      [table.id, capacity(table, ...(besidesAll.get(table) ?? []))] as const,
      ...(drops && !dropFactor ? [[drops.id, drop(drops, law, ...(besidesAll.get(drops) ?? []))] as const] : []),
    ];
  }),
);

/** Every table of capacities, drops and factors, with its guards. */
export const guarded: readonly Guarded[] = [
  ...british.values(),
  iecEnclosed(iec.tableB522, '2', iec.tableB523),
  iecEnclosed(iec.tableB523, '3', iec.tableB522),
  iecEnclosed(iec.tableB524, '4', iec.tableB525),
  iecEnclosed(iec.tableB525, '5', iec.tableB524),
  iecAir(iec.tableB5210, 'copper'),
  iecAir(iec.tableB5211, 'aluminium'),
  iecAir(iec.tableB5212, 'copper'),
  iecAir(iec.tableB5213, 'aluminium'),
  ...guardedFactors,
];

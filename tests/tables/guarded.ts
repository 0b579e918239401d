import * as bs from '../../src/standards/bs7671/index.js';
import { lawAtSize } from '../../src/standards/iec60364/annex-d.js';
import * as iec from '../../src/standards/iec60364/index.js';
import { squareMillimetres } from '../../src/units/index.js';
import {
  columnName,
  equals,
  type Guard,
  near,
  oneWay,
  ordered,
  type Printed,
  phases,
  positive,
  smooth,
  triangle,
} from './guards.js';

/** A table with its guards. */
export interface Guarded {
  readonly table: Printed;
  readonly guards: readonly Guard[];
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

/** Which law of Annex D a column of a table of BS 7671 or IEC follows. */
function lawOf(two: string, three: string, air: string, metal: string, single: boolean) {
  return (column: string, size: number): number | undefined => {
    const [method = '', loaded = '', formation = ''] = column.split(' ');
    const sheet = loaded === '2' ? two : three;
    if (method === 'A' || method === 'B') return annexD(sheet, `${metal} ${method}${single ? 1 : 2}`, size);
    if (method === 'C' && !single) return annexD(sheet, `${metal} C`, size);
    if (method === 'D') return annexD(sheet, `${metal} D1`, size);
    const name = airColumn[`${method} ${loaded} ${formation || 'multicore'}`];
    return name === undefined ? undefined : annexD(air, `${metal} ${name}`, size);
  };
}

/** The order of methods in one table: more shut in is not above more open, three loaded not above two. */
function orderOf(table: Printed): Guard {
  const rank = ['A', 'B', 'C', 'E', 'F', 'G'];
  const keys = table.columns.map((k) => ({
    name: columnName(k),
    method: String(k[0]),
    loaded: String(k[1]),
    rest: k.slice(2).join(' '),
  }));
  const pairs: [string, string][] = [];
  for (const a of keys)
    for (const b of keys) {
      if (a.method === b.method && a.loaded === '3' && b.loaded === '2') pairs.push([a.name, b.name]);
      if (a.loaded !== b.loaded || !rank.includes(a.method) || !rank.includes(b.method)) continue;
      if (rank.indexOf(a.method) < rank.indexOf(b.method)) pairs.push([a.name, b.name]);
    }
  return ordered(pairs);
}

const capacity = (table: Printed, ...more: Guard[]): Guarded => ({
  table,
  guards: [positive, oneWay('rises'), orderOf(table), smooth(0.03), ...more],
});

const withLaw = (table: Printed, two: string, three: string, air: string, metal: string, single: boolean): Guarded =>
  capacity(table, equals('power law', lawOf(two, three, air, metal, single)));

const iecEnclosed = (table: Printed, number: string): Guarded => {
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
  return {
    table,
    guards: [
      positive,
      oneWay('rises'),
      ordered([...pairs, ...metals]),
      smooth(0.03),
      equals('power law', (column, size) => annexD(number, column, size)),
    ],
  };
};

const iecAir = (table: Printed, number: string, metal: string): Guarded =>
  capacity(
    table,
    equals('power law', (column, size) => annexD(number, `${metal} ${airColumn[column] ?? column}`, size)),
  );

/** mV/A/m due to resistance alone at operating temperature: 2 R and sqrt(3) R. */
const loopDrop =
  (temperature: number, metal: 'copper' | 'aluminium', kind: '2' | '5') =>
  (column: string, size: number): number | undefined => {
    const dc = column.startsWith('dc');
    if (!dc && !column.endsWith(' r') && !(column.endsWith(' z') && size <= 16)) return undefined;
    const at = bs.conductorResistance.columns.findIndex(([m, k]) => m === metal && k === kind);
    const r20 = bs.conductorResistance.rows.find((r) => r[0] === size)?.[at + 1];
    if (typeof r20 !== 'number') return undefined;
    const alpha = metal === 'copper' ? 0.00393 : 0.00403;
    return (column.startsWith('three') ? Math.sqrt(3) : 2) * r20 * (1 + alpha * (temperature - 20));
  };

const isReactance = (column: string): boolean => column.endsWith(' x');

const drop = (table: Printed, temperature: number, metal: 'copper' | 'aluminium', kind: '2' | '5'): Guarded => ({
  table,
  guards: [
    positive,
    oneWay('falls', isReactance),
    smooth(0.06, (c) => !isReactance(c)),
    near('resistance', loopDrop(temperature, metal, kind), 0.96, 1.04),
    triangle(0.03),
    phases(0.03),
  ],
});

/** Every capacity and drop table, with its guards. */
export const guarded: readonly Guarded[] = [
  capacity(bs.table4D5),
  withLaw(bs.table4D1A, 'B.52.2', 'B.52.4', 'B.52.10', 'copper', true),
  withLaw(bs.table4D2A, 'B.52.2', 'B.52.4', 'B.52.10', 'copper', false),
  capacity(
    bs.table4D4A,
    equals('power law', (c, s) =>
      c.startsWith('D') ? lawOf('B.52.2', 'B.52.4', '', 'copper', false)(c, s) : undefined,
    ),
  ),
  withLaw(bs.table4E1A, 'B.52.3', 'B.52.5', 'B.52.12', 'copper', true),
  withLaw(bs.table4E2A, 'B.52.3', 'B.52.5', 'B.52.12', 'copper', false),
  capacity(
    bs.table4E4A,
    equals('power law', (c, s) =>
      c.startsWith('D') ? lawOf('B.52.3', 'B.52.5', '', 'copper', false)(c, s) : undefined,
    ),
  ),
  capacity(bs.table4J4A),
  capacity(bs.table4F1A),
  capacity(bs.table4F2A),
  iecEnclosed(iec.tableB522, 'B.52.2'),
  iecEnclosed(iec.tableB523, 'B.52.3'),
  iecEnclosed(iec.tableB524, 'B.52.4'),
  iecEnclosed(iec.tableB525, 'B.52.5'),
  iecAir(iec.tableB5210, 'B.52.10', 'copper'),
  iecAir(iec.tableB5211, 'B.52.11', 'aluminium'),
  iecAir(iec.tableB5212, 'B.52.12', 'copper'),
  iecAir(iec.tableB5213, 'B.52.13', 'aluminium'),
  drop(bs.table4D5Drop, 70, 'copper', '2'),
  drop(bs.table4D1B, 70, 'copper', '2'),
  drop(bs.table4D2B, 70, 'copper', '2'),
  drop(bs.table4D4B, 70, 'copper', '2'),
  drop(bs.table4E1B, 90, 'copper', '2'),
  drop(bs.table4E2B, 90, 'copper', '2'),
  drop(bs.table4E4B, 90, 'copper', '2'),
  drop(bs.table4J4B, 90, 'aluminium', '2'),
  drop(bs.table4F2B, 90, 'copper', '5'),
  drop(bs.table4F3B, 60, 'copper', '5'),
];

import { heatCapacities } from '../../src/products/iec60949/material-constants.js';
import { classALimits, largerEquipmentLimits } from '../../src/products/iec61000/harmonic-limits.js';
import { columnName, equals, type Guard, printedCell } from './guards.js';

/** From a row on, no column goes against a way down the rows. */
const notAgainst =
  (way: 'rises' | 'falls', from = 0): Guard =>
  (table) =>
    table.columns.flatMap((key, c) => {
      const rows = table.rows.filter((r) => typeof r[c + 1] === 'number' && (from === 0 || Number(r[0]) >= from));
      return rows.flatMap((row, i) => {
        const [before, v] = [rows[i - 1]?.[c + 1] as number | undefined, row[c + 1] as number];
        const off = before !== undefined && (way === 'rises' ? v < before : v > before);
        return off ? [`${way}: ${columnName(key)}, ${row[0]}`] : [];
      });
    });

/** Along every row, no figure goes against a way from column to column. */
const along =
  (way: 'rises' | 'falls'): Guard =>
  (table) =>
    table.rows.flatMap((row) =>
      row.slice(2).flatMap((v, c) => {
        const before = row[c + 1];
        if (typeof v !== 'number' || typeof before !== 'number') return [];
        return (way === 'rises' ? v < before : v > before) ? [`${way} along: ${row[0]}, ${c + 1}`] : [];
      }),
    );

/** Each cell is one of what a law allows for its column and row. */
const oneOf =
  (name: string, law: (column: string, row: string | number) => readonly number[] | undefined): Guard =>
  (table) =>
    table.columns.flatMap((key, c) =>
      table.rows.flatMap((row) => {
        const [v, due] = [row[c + 1], law(columnName(key), row[0] as string | number)];
        if (typeof v !== 'number' || due === undefined) return [];
        return due.some((d) => Math.abs(v - d) < 1e-9) ? [] : [`${name}: ${columnName(key)}, ${row[0]}`];
      }),
    );

// preferred numbers of ISO 3, series R20, from 3.15 on
const preferred = [3.15, 3.55, 4, 4.5, 5, 5.6, 6.3, 7.1, 8, 9, 10, 11.2, 12.5, 14, 16, 18, 20, 22.4];
/** The band of a letter ends a hundredth below the preferred number with which the next begins. */
const belowPreferred: Guard = oneOf('below a preferred number', (_, letter) => {
  const next = preferred['ABCDEFGHJKLMNPRSTU'.indexOf(String(letter))];
  return next === undefined ? undefined : [Math.round(100 * next - 1) / 100];
});

// class B is 1.5 times class A, and larger equipment at the smallest ratio begins where class B ends, at 16 A
const smallestRatio = 33;
const inPercent = (classA: number): number => (100 * 1.5 * classA) / 16;
const joinsLarger: Guard = oneOf('class B at 16 A', (_, order) => {
  const larger = printedCell(largerEquipmentLimits, String(order), smallestRatio);
  // 0.01 A of class A is less than 0.1 % of 16 A: the print of the larger leaves one hundredth open
  return larger === undefined
    ? undefined
    : Array.from({ length: 400 }, (_x, i) => (i + 1) / 100).filter((a) => Math.abs(inPercent(a) - larger) <= 0.0501);
});
const joinsClassA: Guard = oneOf('class B at 16 A', (order, ratio) => {
  const classA = printedCell(classALimits, 'A', Number(order));
  return ratio === smallestRatio && classA !== undefined ? [Math.round(10 * inPercent(classA)) / 10] : undefined;
});
/** The rest of class A: 0.15 A times 15 over odd orders, 0.23 A times 8 over even ones, as the standard has it. */
const tailOfClassA: Guard = oneOf('tail of class A', (_, order) =>
  order === 15 ? [0.15] : order === 8 ? [0.23] : undefined,
);

// a over (b + x), x being the length in metres, doubled by every bend
const conduits: Readonly<Record<string, readonly [a: number, b: number]>> = {
  '16': [6000, 30],
  '20': [10_000, 31],
  '25': [19_000, 33],
  '32': [36_000, 36],
};
/** The hyperbola of every diameter. */
const hyperbola: Guard = oneOf('a over b + x', (column, length) => {
  const [bends, diameter = ''] = column.split(' ');
  const [a, b] = conduits[diameter] ?? [];
  const x = Number(length) * 2 ** Number(bends);
  if (a === undefined || b === undefined) return undefined;
  // in all three places that come to x = 4 the print has 177 for 176.5
  return [diameter === '16' && x === 4 ? 177 : Math.round(a / (b + x))];
});

/** The term of a cable is the area of a circle whose diameter is a whole number of tenths of a millimetre. */
const circles: Guard = oneOf('a circle of whole tenths', () =>
  Array.from({ length: 120 }, (_, i) => Math.PI * ((i + 1) / 20) ** 2).flatMap((area) => [
    Math.round(10 * area) / 10,
    Math.floor(10 * area) / 10,
  ]),
);

// walls of sheet steel by the longer side, BS 4678-1, from memory: 100 mm by 100 mm is made of 1.4 mm
const wall = (long: number, short: number): number =>
  long <= 50 ? 1 : long <= 75 ? 1.2 : long <= 100 ? (short === 100 ? 1.4 : 1.2) : 1.6;
/** The term of trunking is 45 % of the space within its walls; 38 mm are 37.5 mm. The print rounds some and cuts others. */
const spaceWithin: Guard = oneOf('45 % of the space', (_, size) => {
  const [long = 0, short = 0] = String(size).split('x').map(Number);
  const t = wall(long, short);
  const space = 0.45 * (long - 2 * t) * ((short === 38 ? 37.5 : short) - 2 * t);
  return [Math.round(space), Math.floor(space)];
});

/** Metals as the table of the adiabatic equation has them. */
const asConductors: Guard = equals('as iec60949/heat-capacity', (_, __, material) =>
  printedCell(heatCapacities, 'value', String(material)),
);

/** Guards of tables that list neither capacities nor drops nor factors. */
export const guardedOthers: Readonly<Record<string, readonly Guard[]>> = {
  'charging/alternating-current-taper': [along('falls')],
  'charging/direct-current-taper': [along('rises'), notAgainst('falls', 0.3)],
  'iec60853/volume-heat-capacity': [asConductors],
  'iec61000-3-12/unbalanced': [joinsClassA, along('falls'), notAgainst('rises')],
  'iec61000-3-2/class-a': [joinsLarger, tailOfClassA],
  'nema-mg1/code-letters': [belowPreferred],
  'on-site-guide/conduit-cable-terms': [notAgainst('rises')],
  'on-site-guide/conduit-terms-straight': [notAgainst('rises')],
  'on-site-guide/conduit-terms-long': [hyperbola],
  'on-site-guide/trunking-cable-terms': [circles, notAgainst('rises')],
  'on-site-guide/trunking-terms': [spaceWithin],
};

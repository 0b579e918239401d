import * as bs from '../../src/codes/bs7671/definitions.js';
import * as iec from '../../src/codes/iec60364/definitions.js';
import { manyCoresFactors } from '../../src/products/definitions.js';
import { columnName, equals, type Guard, type Printed, positive, printedCell, within } from './guards.js';

const cells = (table: Printed) =>
  table.columns.flatMap((key, c) =>
    table.rows.flatMap((row) => {
      const value = row[c + 1];
      return typeof value === 'number' ? [{ column: columnName(key), row: row[0] as string | number, value }] : [];
    }),
  );

/** Down every column the factor does not rise: hotter, drier, longer, more of them. */
const fallsDown: Guard = (table) =>
  table.columns.flatMap((key, c) => {
    const values = table.rows.map((row) => row[c + 1]).filter((v): v is number => typeof v === 'number');
    return values.flatMap((v, i) =>
      i > 0 && v > (values[i - 1] as number) ? [`falls: ${columnName(key)}, ${i}`] : [],
    );
  });

/** Along every row the factor does not rise. */
const fallsAlong: Guard = (table) =>
  table.rows.flatMap((row) => {
    const values = row.slice(1).filter((v): v is number => typeof v === 'number');
    return values.flatMap((v, i) => (i > 0 && v > (values[i - 1] as number) ? [`falls: ${row[0]}, ${i}`] : []));
  });

/** Each step is not larger than the one before it: more of the same does less. */
const slows =
  (along: 'row' | 'column'): Guard =>
  (table) => {
    const lists =
      along === 'row'
        ? table.rows.map((row) => ({
            name: String(row[0]),
            at: table.columns.map((k) => Number(k[0])),
            of: row.slice(1),
          }))
        : table.columns.map((key, c) => ({
            name: columnName(key),
            at: table.rows.map((row) => Number(row[0])),
            of: table.rows.map((row) => row[c + 1] ?? null),
          }));
    return lists.flatMap(({ name, at, of }) => {
      const points = of.flatMap((v, i) => (typeof v === 'number' ? [{ x: at[i] as number, v }] : []));
      return points.flatMap((p, i) => {
        const [a, b] = [points[i - 1], points[i + 1]];
        if (!a || !b) return [];
        const [before, after] = [(a.v - p.v) / (p.x - a.x), (p.v - b.v) / (b.x - p.x)];
        // half a hundredth of rounding in each of the three
        return after > before + 0.01 / (p.x - a.x) + 0.01 / (b.x - p.x) ? [`slows: ${name}, ${p.x}`] : [];
      });
    });
  };

/** Two decimals. */
const hundredths: Guard = (table) =>
  cells(table).flatMap(({ column, row, value }) =>
    Math.abs(100 * value - Math.round(100 * value)) > 1e-6 ? [`hundredths: ${column}, ${row}`] : [],
  );

/** In every row, one column is not above the next. */
const rises =
  (...names: readonly string[]): Guard =>
  (table) =>
    names.slice(1).flatMap((name, i) =>
      table.rows.flatMap((row) => {
        const at = row[0] as string | number;
        const [low, high] = [printedCell(table, names[i] as string, at), printedCell(table, name, at)];
        return low !== undefined && high !== undefined && low > high ? [`order below ${name}: ${names[i]}, ${at}`] : [];
      }),
    );

/** The heat balance: sqrt((t_c - t) / (t_c - t_ref)), to two decimals. */
const heatBalance = (reference: number): Guard =>
  equals('heat balance', (column, t) => {
    const most = column === 'thermoplastic-70' ? 70 : column === 'thermosetting-90' || column === '' ? 90 : undefined;
    return most === undefined ? undefined : Math.round(100 * Math.sqrt((most - t) / (most - reference))) / 100;
  });

const same = (other: Printed, but: (row: string | number | null) => boolean = () => false): Guard =>
  equals(`as ${other.id}`, (column, _, row) =>
    row === null || but(row) ? undefined : printedCell(other, column, row),
  );

const factor = (table: Printed, ...guards: Guard[]) => ({
  table,
  sort: 'factor' as const,
  guards: [positive, hundredths, ...guards],
});

const ducts = ['touching', '0.25 m', '0.5 m', '1 m'];
const buried = ['touching', 'one-diameter', '0.125 m', '0.25 m', '0.5 m'];

/** One tray of Table 4C4 against the row of Table 4C1 for the same lie; the print differs at four and six. */
const oneTray: Guard = (table) =>
  (
    [
      ['perforated tray touching 1', 'single-layer-tray'],
      ['ladder, cleats touching 1', 'single-layer-ladder'],
    ] as const
  ).flatMap(([column, row]) =>
    [2, 3, 4, 6, 9].flatMap((n) => {
      const [a, b] = [printedCell(table, column, n), printedCell(bs.table4C1, String(n), row)];
      return a !== undefined && b !== undefined && a !== b ? [`as 4C1: ${column}, ${n}`] : [];
    }),
  );

/** More trays one above the other are not cooler, and space between cables does not warm them. */
const trays: Guard = (table) => {
  const names = table.columns.map(columnName);
  return names.flatMap((name) => {
    const next = name.replace(/\d$/, (n) => String({ '1': 2, '2': 3, '3': 6 }[n] ?? 0));
    const spaced = name.replace('touching', 'spaced');
    return table.rows.flatMap((row) => {
      const at = row[0] as string | number;
      const [v, more, wide] = [name, next, spaced].map((n) => printedCell(table, n, at));
      return [
        ...(v !== undefined && more !== undefined && more > v ? [`trays: ${name}, ${at}`] : []),
        ...(v !== undefined && wide !== undefined && wide < v ? [`spacing: ${name}, ${at}`] : []),
      ];
    });
  });
};

/** Every factor table, with its guards. */
export const guardedFactors = [
  factor(bs.table4B1, fallsDown, heatBalance(30), same(iec.tableB5214)),
  factor(iec.tableB5214, fallsDown, heatBalance(30), same(bs.table4B1)),
  factor(
    bs.table4FAmbient,
    fallsDown,
    heatBalance(30),
    within(
      'heat balance, nearly',
      (_, t) => Math.sqrt((90 - t) / 60),
      () => 0.005,
      0.005,
    ),
  ),
  factor(bs.table4B2, fallsDown, heatBalance(20), same(iec.tableB5215)),
  factor(iec.tableB5215, fallsDown, heatBalance(20), same(bs.table4B2)),
  factor(bs.table4B3, fallsDown, slows('column'), same(iec.tableB5216)),
  factor(iec.tableB5216, fallsDown, slows('column'), same(bs.table4B3)),
  factor(bs.table4C1, fallsAlong, slows('row'), same(iec.tableB5217)),
  factor(
    iec.tableB5217,
    fallsAlong,
    slows('row'),
    same(bs.table4C1, (row) => row === 'single-layer-ceiling'),
  ),
  factor(bs.table4C2, fallsDown, slows('column'), rises(...buried), same(iec.tableB5218)),
  factor(iec.tableB5218, fallsDown, slows('column'), rises(...buried), same(bs.table4C2)),
  factor(bs.table4C3Multicore, fallsDown, slows('column'), rises(...ducts), same(iec.tableB5219Multicore)),
  factor(iec.tableB5219Multicore, fallsDown, slows('column'), rises(...ducts), same(bs.table4C3Multicore)),
  factor(bs.table4C3SingleCore, fallsDown, slows('column'), rises(...ducts), same(iec.tableB5219SingleCore)),
  factor(iec.tableB5219SingleCore, fallsDown, slows('column'), rises(...ducts), same(bs.table4C3SingleCore)),
  factor(bs.table4C4, fallsDown, slows('column'), trays, oneTray, same(iec.tableB5220)),
  factor(iec.tableB5220, fallsDown, slows('column'), trays, same(bs.table4C4)),
  factor(bs.table4C5, fallsDown, trays, same(iec.tableB5221)),
  factor(iec.tableB5221, fallsDown, trays, same(bs.table4C5)),
  factor(bs.table52_2, fallsDown, slows('column')),
  factor(manyCoresFactors, fallsDown, slows('column')),
] as const;

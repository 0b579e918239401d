/** Laws that printed figures obey, as pure functions over the cells of a table: apart from whatever computes with them. */
import type { Provenance } from './source.js';

/** What a guard needs of a table; any table of the library fits. */
export interface Printed {
  readonly id: string;
  readonly columns: readonly (readonly (string | number)[])[];
  readonly rows: readonly (readonly (string | number | null)[])[];
  readonly per?: number;
  readonly source: { readonly provenance: Provenance };
  readonly provenanceOf?: Readonly<Record<string, Provenance>>;
}

/** Where a guard objects: the guard, the column and the row. */
export type Objection = string;

/** A guard: a pure function over the printed cells. */
export type Guard = (table: Printed) => Objection[];

type Cell = number | undefined;

export const columnName = (key: readonly (string | number)[]): string => key.join(' ');

const cell = (table: Printed, row: number, column: number): Cell => {
  if (column < 0) return undefined;
  const value = table.rows[row]?.[column + 1];
  return typeof value === 'number' ? value : undefined;
};

/** The printed cell of a column by its name and of a row by its key. */
export function printedCell(table: Printed, column: string, row: string | number): number | undefined {
  const r = table.rows.findIndex((cells) => cells[0] === row);
  return r < 0
    ? undefined
    : cell(
        table,
        r,
        table.columns.findIndex((k) => columnName(k) === column),
      );
}

// a conductor of nominal 50 mm² is made with 47.5 mm²
const size = (nominal: number): number => (nominal === 50 ? 47.5 : nominal);

const object = (guard: string, table: Printed, row: number, column: number): Objection =>
  `${guard}: ${columnName(table.columns[column] ?? [])}, ${String(table.rows[row]?.[0])}`;

/** Every cell is a number above zero. */
export const positive: Guard = (table) =>
  table.rows.flatMap((row, r) =>
    row
      .slice(1)
      .flatMap((v, c) => (v === null || (typeof v === 'number' && v > 0) ? [] : [object('positive', table, r, c)])),
  );

/** Every column moves one way from row to row. */
export const oneWay =
  (way: 'rises' | 'falls', but: (column: string) => boolean = () => false): Guard =>
  (table) =>
    table.columns.flatMap((key, c) => {
      if (but(columnName(key))) return [];
      const out: Objection[] = [];
      let before: Cell;
      for (let r = 0; r < table.rows.length; r++) {
        const now = cell(table, r, c);
        if (now === undefined) continue;
        if (before !== undefined && (way === 'rises' ? now <= before : now >= before))
          out.push(object(way, table, r, c));
        before = now;
      }
      return out;
    });

/** Within a row, the first column of a pair is not above the second. */
export const ordered =
  (pairs: readonly (readonly [string, string])[]): Guard =>
  (table) => {
    const names = table.columns.map(columnName);
    return pairs.flatMap(([low, high]) => {
      const [a, b] = [names.indexOf(low), names.indexOf(high)];
      return table.rows.flatMap((_, r) => {
        const [x, y] = [cell(table, r, a), cell(table, r, b)];
        return x !== undefined && y !== undefined && x > y ? [object(`order below ${high}`, table, r, a)] : [];
      });
    });
  };

/** Each cell lies within `band` of the curve through its neighbours, straight in logarithms. */
export const smooth =
  (band: number, but: (column: string) => boolean = () => false): Guard =>
  (table) =>
    table.columns.flatMap((key, c) => {
      if (but(columnName(key))) return [];
      const points = table.rows.flatMap((row, r) => {
        const v = cell(table, r, c);
        return v === undefined ? [] : [{ r, x: Math.log(size(Number(row[0]))), y: Math.log(v) }];
      });
      return points.flatMap((p, i) => {
        const [a, b] = [points[i - 1], points[i + 1]];
        if (!a || !b) return [];
        const line = a.y + ((b.y - a.y) * (p.x - a.x)) / (b.x - a.x);
        return Math.abs(p.y - line) > band ? [object('smooth', table, p.r, c)] : [];
      });
    });

/** Each cell lies between `least` and `most` times what a law gives for its column and row. */
export const near =
  (name: string, law: (column: string, row: number) => Cell, least: number, most: number): Guard =>
  (table) =>
    table.columns.flatMap((key, c) =>
      table.rows.flatMap((row, r) => {
        const [v, due] = [cell(table, r, c), law(columnName(key), Number(row[0]))];
        if (v === undefined || due === undefined) return [];
        return v < due * least || v > due * most ? [object(name, table, r, c)] : [];
      }),
    );

/** Each cell equals what a law or another table gives, as printed. */
export const equals =
  (name: string, law: (column: string, row: number, key: string | number | null) => Cell): Guard =>
  (table) =>
    table.columns.flatMap((key, c) =>
      table.rows.flatMap((row, r) => {
        const [v, due] = [cell(table, r, c), law(columnName(key), Number(row[0]), row[0] ?? null)];
        return v === undefined || due === undefined || Math.abs(v - due) < 1e-9 ? [] : [object(name, table, r, c)];
      }),
    );

/** Half of the last place in which a capacity is printed: 0.5 A up to 20 A, 1 A above. IEC 60364-5-52 Annex D. */
export const halfAmpere = (value: number): number => (value <= 20 ? 0.25 : 0.5);

/** Half of the last place in which a drop is printed in mV/A/m, by its size. */
export const halfDrop = (value: number): number =>
  value >= 10 ? 0.5 : value >= 2 ? 0.05 : value >= 1 ? 0.025 : value >= 0.2 ? 0.005 : 0.0025;

/** The print has no finer steps than its last place. */
export const grain =
  (half: (value: number) => number): Guard =>
  (table) =>
    table.columns.flatMap((_, c) =>
      table.rows.flatMap((_row, r) => {
        const v = cell(table, r, c);
        if (v === undefined) return [];
        const steps = v / (2 * half(v));
        return Math.abs(steps - Math.round(steps)) > 1e-6 ? [object('grain', table, r, c)] : [];
      }),
    );

/** Each cell is what a law or another table gives, within half a last place of either and `band`. */
export const within =
  (name: string, law: (column: string, row: number) => Cell, half: (value: number) => number, band: number): Guard =>
  (table) =>
    table.columns.flatMap((key, c) =>
      table.rows.flatMap((row, r) => {
        const [v, due] = [cell(table, r, c), law(columnName(key), Number(row[0]))];
        if (v === undefined || due === undefined) return [];
        return Math.abs(v - due) > half(v) + half(due) + band * due + 1e-9 ? [object(name, table, r, c)] : [];
      }),
    );

/**
 * The ratio to another column, of this table or another, runs straight in the logarithm of the size, within what the
 * rounding of the six figures explains (their half places as independent errors) and `band`.
 */
export const proportional =
  (
    name: string,
    other: (table: Printed, column: string, row: number) => Cell,
    half: (value: number) => number,
    band: number,
  ): Guard =>
  (table) =>
    table.columns.flatMap((key, c) => {
      const points = table.rows.flatMap((row, r) => {
        const [v, o] = [cell(table, r, c), other(table, columnName(key), Number(row[0]))];
        if (v === undefined || o === undefined) return [];
        return [
          { r, x: Math.log(size(Number(row[0]))), y: Math.log(v / o), error: Math.hypot(half(v) / v, half(o) / o) },
        ];
      });
      return points.flatMap((p, i) => {
        const [a, b] = [points[i - 1], points[i + 1]];
        if (!a || !b) return [];
        const share = (p.x - a.x) / (b.x - a.x);
        const off = Math.abs(p.y - a.y - (b.y - a.y) * share);
        const rounding = Math.hypot(p.error, (1 - share) * a.error, share * b.error);
        return off > rounding + band ? [object(name, table, p.r, c)] : [];
      });
    });

/** z is the length of r and x, within half of the last place of each. */
export const triangle =
  (half: (value: number) => number): Guard =>
  (table) => {
    const names = table.columns.map(columnName);
    return names.flatMap((name, c) => {
      if (!name.endsWith(' z')) return [];
      const stem = name.slice(0, -1);
      const [r, x] = [names.indexOf(`${stem}r`), names.indexOf(`${stem}x`)];
      return table.rows.flatMap((_, i) => {
        const [z, re, im] = [cell(table, i, c), cell(table, i, r), cell(table, i, x)];
        if (z === undefined || re === undefined) return [];
        if (im === undefined) return z === re ? [] : [object('z is r', table, i, c)];
        const least = Math.hypot(re - half(re), im - half(im)) - half(z);
        const most = Math.hypot(re + half(re), im + half(im)) + half(z);
        return z < least - 1e-9 || z > most + 1e-9 ? [object('triangle', table, i, c)] : [];
      });
    });
  };

/** A three-phase figure is sqrt(3)/2 of its single-phase one, within `band`. */
export const phases =
  (band: number): Guard =>
  (table) => {
    const names = table.columns.map(columnName);
    return names.flatMap((name, c) => {
      if (!name.startsWith('three-phase')) return [];
      const other = names.indexOf(name.replace('three-phase', 'single-phase').replace('trefoil', 'flat-touching'));
      return table.rows.flatMap((_, i) => {
        const [three, one] = [cell(table, i, c), cell(table, i, other)];
        if (three === undefined || one === undefined) return [];
        return Math.abs((2 * three) / (Math.sqrt(3) * one) - 1) > band ? [object('phases', table, i, c)] : [];
      });
    });
  };

/** All that a table's guards say. */
export const objections = (table: Printed, guards: readonly Guard[]): Set<Objection> =>
  new Set(guards.flatMap((guard) => guard(table)));

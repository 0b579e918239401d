import { readFileSync } from 'node:fs';
import { lawsOfTable } from '../../src/codes/iec-family/table-laws.js';
import type { Table } from '../../src/index.js';
import { definitions } from '../../src/verify/definitions.js';
import { type Guarded, guarded } from './guarded.js';
import { guardedOthers } from './guarded-others.js';
import { columnName, type Guard, positive } from './guards.js';

const read = <T>(file: string): T => JSON.parse(readFileSync(new URL(file, import.meta.url), 'utf8')) as T;
type Cell = number | string | null;

/** What prints have, by table, column and row: seen-in-print.json. */
const prints =
  read<readonly { table: string; columns: Record<string, [row: Cell, printed: number][]> }[]>('./seen-in-print.json');
/** Figures of small tables without a law, written down a second time from the text that they were taken from. */
const second = read<Readonly<Record<string, readonly (readonly Cell[])[]>>>('./second-copy.json');

/** Cells that a print has otherwise are known, and stay visible as objections. */
const asPrinted =
  (columns: Readonly<Record<string, [row: Cell, printed: number][]>>): Guard =>
  (table) =>
    table.columns.flatMap((key, c) =>
      (columns[columnName(key)] ?? []).flatMap(([row, printed]) => {
        const own = table.rows.find((cells) => cells[0] === row)?.[c + 1];
        return own === printed ? [] : [`as a print: ${columnName(key)}, ${row}`];
      }),
    );
const asCopied =
  (rows: readonly (readonly Cell[])[]): Guard =>
  (table) =>
    table.rows.flatMap((row, r) =>
      row.flatMap((v, c) => (v === rows[r]?.[c] ? [] : [`as the second copy: ${c}, ${row[0]}`])),
    );

/** Tables that nothing guards, each with the reason. */
export const excused: Readonly<Record<string, string>> = {
  'site/labour': 'hours of the trade from memory: nothing prints them, and firms set their own',
};

const byId = new Map(definitions.tables.map((t) => [t.id, t]));
const finer = new Map(guarded.map((g) => [g.table.id, g]));

/** Every guard of a table: laws of its role, finer ones, prints and second copies. */
function guardsOf(t: Table): readonly Guard[] {
  const copied = second[t.id];
  return [
    ...lawsOfTable(t, byId),
    ...(finer.get(t.id)?.guards ?? []),
    ...(guardedOthers[t.id] ?? []),
    ...prints.filter((p) => p.table === t.id).map((p) => asPrinted(p.columns)),
    ...(copied ? [asCopied(copied)] : []),
  ];
}

/** Every table of the library with its guards. */
export const everyTable: readonly (Omit<Guarded, 'sort'> & { readonly sort: Guarded['sort'] | 'other' })[] =
  definitions.tables.map((table) => ({
    table,
    guards: guardsOf(table),
    sort: finer.get(table.id)?.sort ?? 'other',
  }));

/** Tables that have no guard but that their cells are above zero. */
export const unguarded: readonly string[] = everyTable
  .filter(({ guards }) => guards.every((g) => g === positive))
  .map(({ table }) => table.id);

import { isLabels, placeOn } from './axis.js';
import type { Provenance } from './source.js';
import type { Table } from './table.js';

/** From the weakest: recalled, customary, computed from others, seen once, seen twice, compared with the print, true by definition. */
const order: readonly Provenance[] = [
  'memory',
  'common-practice',
  'derived',
  'one-source',
  'two-sources',
  'attested',
  'definition',
];

/**
 * The weakest of several provenances, or undefined of none: `memory`, `common-practice`, `derived`, `one-source`,
 * `two-sources`, `attested`, `definition`.
 */
export function weakestOf(all: Iterable<Provenance>): Provenance | undefined {
  const found = new Set(all);
  return order.find((p) => found.has(p));
}

/** What is asked of a table to say how well its cells are known. */
type Known = Pick<Table, 'axes' | 'source' | 'provenanceOf' | 'attested' | 'find' | 'offers'>;

/** Whether an entry such as `25 to 95` or `C 2, 25 to 95` is of this cell. */
function spans(name: string, column: string, row: string): boolean {
  const [, of = column, least, most] = /^(?:(.+), )?([\d.]+) to ([\d.]+)$/.exec(name) ?? [];
  return most !== undefined && of === column && Number(row) >= Number(least) && Number(row) <= Number(most);
}

/** What is said of one printed cell: the last entry that names its row, its column, a label of it or both counts. */
function ofPrinted(
  t: Pick<Known, 'source' | 'provenanceOf' | 'attested'>,
  at: readonly (string | number)[],
): Provenance {
  const keys = at.map(String);
  const row = keys.at(-1) as string;
  const column = keys.slice(0, -1).join(' ');
  if (t.attested?.has(`${column}, ${row}`)) return 'attested';
  const names = [...keys, column, `${column}, ${row}`];
  let found = t.source.provenance;
  for (const [name, provenance] of Object.entries(t.provenanceOf ?? {}))
    if (names.includes(name) || spans(name, column, row)) found = provenance;
  return found;
}

/** The cells that a look-up draws on, each by its keys; undefined where the table has none for these keys. */
function drawnOn(t: Known, keys: Readonly<Record<string, string | number>>) {
  if (t.find(keys as never) === undefined) return undefined;
  // between two numbers of an axis both ends count
  let ends: (string | number)[][] = [[]];
  for (const axis of t.axes) {
    const key = keys[axis.name] as string | number;
    const offers = t.offers(axis.name);
    const spot = isLabels(axis) ? undefined : placeOn(axis, key, offers, new Map(offers.map((k, i) => [k, i])));
    const drawn = spot ? [...new Set([offers[spot.low], offers[spot.high]])] : [key];
    ends = ends.flatMap((end) => drawn.map((k) => [...end, k as string | number]));
  }
  return ends;
}

/**
 * How well the figure is known that a look-up gives: the weakest provenance among the cells that it draws on. Undefined
 * where the table has no cell for these keys.
 * @param keys its keys, labels or numbers in their canonical units
 */
export function cellProvenance(t: Known, keys: Readonly<Record<string, string | number>>): Provenance | undefined {
  return weakestOf((drawnOn(t, keys) ?? []).map((at) => ofPrinted(t, at)));
}

/** @internal Who compared a cell and when, in words. */
export const attestorWords = (who: { readonly by: string; readonly on: string; readonly edition: string }): string =>
  `${who.by}, ${who.on}, copy of ${who.edition}`;

/** Who compared the cells that a look-up draws on, in words; undefined where one of them was not compared. */
export function cellAttestors(t: Known, keys: Readonly<Record<string, string | number>>): string | undefined {
  if (!t.attested) return undefined;
  const found = (drawnOn(t, keys) ?? []).map((at) => t.attested?.get(`${at.slice(0, -1).join(' ')}, ${at.at(-1)}`));
  if (found.length === 0 || found.some((who) => who === undefined)) return undefined;
  return [...new Set(found.flatMap((who) => (who ? attestorWords(who) : [])))].join('; ');
}

/** @internal Printed cells that were recalled, `row column` by their places from 0. */
export function recalledCells(
  t: Pick<Table, 'columns' | 'rows' | 'source' | 'provenanceOf' | 'attested'>,
): ReadonlySet<string> {
  const found = new Set<string>();
  for (const [r, [row, ...cells]] of t.rows.entries())
    for (const [c, cell] of cells.entries())
      if (cell !== null && ofPrinted(t, [...(t.columns[c] ?? []), row as string | number]) === 'memory')
        found.add(`${r} ${c}`);
  return found;
}

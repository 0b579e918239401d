import { isLabels, placeOn } from './axis.js';
import type { Provenance } from './source.js';
import type { Table } from './table.js';

/** From the weakest: recalled, customary, computed from others, seen once, seen twice, true by definition. */
const order: readonly Provenance[] = [
  'memory',
  'common-practice',
  'derived',
  'one-source',
  'two-sources',
  'definition',
];

/**
 * The weakest of several provenances, or undefined of none: `memory`, `common-practice`, `derived`, `one-source`,
 * `two-sources`, `definition`.
 */
export function weakestOf(all: Iterable<Provenance>): Provenance | undefined {
  const found = new Set(all);
  return order.find((p) => found.has(p));
}

/** Whether an entry such as `25 to 95` or `C 2, 25 to 95` is of this cell. */
function spans(name: string, column: string, row: string): boolean {
  const [, of = column, least, most] = /^(?:(.+), )?([\d.]+) to ([\d.]+)$/.exec(name) ?? [];
  return most !== undefined && of === column && Number(row) >= Number(least) && Number(row) <= Number(most);
}

/** What is said of one printed cell: the last entry that names its row, its column, a label of it or both counts. */
function ofPrinted(t: Pick<Table, 'source' | 'provenanceOf'>, at: readonly (string | number)[]): Provenance {
  const keys = at.map(String);
  const row = keys.at(-1) as string;
  const column = keys.slice(0, -1).join(' ');
  const names = [...keys, column, `${column}, ${row}`];
  let found = t.source.provenance;
  for (const [name, provenance] of Object.entries(t.provenanceOf ?? {}))
    if (names.includes(name) || spans(name, column, row)) found = provenance;
  return found;
}

/**
 * How well the figure is known that a look-up gives: the weakest provenance among the cells that it draws on. Undefined
 * where the table has no cell for these keys.
 * @param keys its keys, labels or numbers in their canonical units
 */
export function cellProvenance(
  t: Pick<Table, 'axes' | 'source' | 'provenanceOf' | 'find' | 'offers'>,
  keys: Readonly<Record<string, string | number>>,
): Provenance | undefined {
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
  return weakestOf(ends.map((at) => ofPrinted(t, at)));
}

import { type Axis, isLabels } from './axis.js';

type Key = string | number;

/** What a word stands for on an axis; what is no number where one is due becomes NaN, which no table accepts. */
const keyOn = (axis: Axis | undefined, word = ''): Key => (axis && isLabels(axis) ? word : Number(word || Number.NaN));

/** Every combination of the labels of some axes, the first axis slowest. */
export const everyColumn = (axes: readonly Axis[]): Key[][] =>
  axes.reduce<Key[][]>(
    (columns, axis) =>
      columns.flatMap((column) => (isLabels(axis) ? axis.labels.map((label) => [...column, label]) : [])),
    [[]],
  );

/**
 * Columns and rows of a table as it is written down. A text has head lines, where the columns are not known otherwise:
 * the name of an axis and its key over every column, in the order of the axes. Then it has a line for each row: its
 * key, then a cell for every column.
 * @param rows rows, or the lines of a text; `-` where the print has no cell
 * @param axes the axes, that of the rows last
 * @param known the columns, where the text has no head lines for them
 */
export function readPrint(
  rows: string | readonly (readonly (Key | null)[])[],
  axes: readonly Axis[],
  known: readonly (readonly Key[])[],
): { readonly columns: readonly (readonly Key[])[]; readonly rows: readonly (readonly (Key | null)[])[] } {
  if (typeof rows !== 'string') return { columns: known, rows };
  const lines = rows
    .trim()
    .split('\n')
    .map((line) => line.trim().split(/\s+/));
  const heads = axes.slice(0, -1).filter((axis, i) => lines[i]?.[0] === axis.name);
  const width = Math.max(...lines.slice(0, heads.length).map((head) => head.length)) - 1;
  const columns =
    heads.length === 0
      ? known
      : Array.from({ length: width }, (_, c) => heads.map((axis, i) => keyOn(axis, lines[i]?.[c + 1])));
  return {
    columns,
    rows: lines.slice(heads.length).map((words) => {
      const key = words.slice(0, -columns.length).join(' ');
      const cells = words.slice(-columns.length).map((word) => (word === '-' ? null : Number(word)));
      return [keyOn(axes.at(-1), key), ...cells];
    }),
  };
}

import { invalidInput, shown } from '../units/index.js';

/** What a spreadsheet may hold in a cell; nothing is an empty cell. @inline */
export type Cell = string | number | undefined;

const separators = [',', ';', '\t'] as const;

/** The separator of a text: whichever its first line has most of, outside quotation marks. */
function separatorOf(text: string): string {
  const first = (/^(?:"(?:[^"]|"")*"|[^"\r\n])*/.exec(text)?.[0] ?? '').replace(/"(?:[^"]|"")*"/g, '');
  const count = (s: string) => first.split(s).length;
  return separators.reduce<string>((best, s) => (count(s) > count(best) ? s : best), ',');
}

/**
 * Rows and cells of a text with comma-separated values (RFC 4180), as spreadsheets write it: with a byte-order mark or
 * without, separated by commas, semicolons or tabs.
 * @param text the text of the file
 * @returns its rows, without those that are empty; cells without the spaces around them
 * @throws CalculationError `invalid-input` for what is no text
 * @example
 * ```ts
 * import { parseCsv } from 'ohmwright/io';
 *
 * parseCsv('fuse,route\r\n80 A,"12 m, outdoors"\r\n'); // => [['fuse', 'route'], ['80 A', '12 m, outdoors']]
 * ```
 */
export function parseCsv(text: string): readonly (readonly string[])[] {
  if (typeof text !== 'string')
    throw invalidInput('the table', [{ path: [], message: `is ${shown(text)}; a text is due` }]);
  const body = text.replace(/^\uFEFF/, '');
  const separator = separatorOf(body);
  const rows: string[][] = [];
  let row: string[] = [];
  let cell = '';
  let quoted = false;
  const endCell = () => {
    row.push(cell.trim());
    cell = '';
  };
  const endRow = () => {
    endCell();
    if (row.some((c) => c !== '')) rows.push(row);
    row = [];
  };
  for (let i = 0; i < body.length; i++) {
    const c = body[i] as string;
    if (quoted) {
      if (c !== '"') cell += c;
      else if (body[i + 1] === '"') cell += body[++i];
      else quoted = false;
    } else if (c === '"' && cell.trim() === '') {
      quoted = true;
      cell = '';
    } else if (c === separator) endCell();
    else if (c === '\n' || (c === '\r' && body[i + 1] !== '\n')) endRow();
    else if (c !== '\r') cell += c;
  }
  endRow();
  return rows;
}

/** A text that begins like a formula is none: spreadsheets run what they take for one. */
const harmless = (text: string): string =>
  /^[=+\-@\t\r]/.test(text) && !/^-?\d+(\.\d+)?$/.test(text) ? `'${text}` : text;

/**
 * Rows as a text with comma-separated values that a spreadsheet opens as it is meant: with a byte-order mark, so that
 * `mm²` stays `mm²`, without line breaks in cells, and with no cell that would be run as a formula.
 * @param rows rows of cells
 * @returns the text of the file
 * @example
 * ```ts
 * import { csvText } from 'ohmwright/io';
 *
 * csvText([['cable', 'net, GBP'], ['6 mm²', '986.04']]).slice(1); // => 'cable,"net, GBP"\r\n6 mm²,986.04\r\n'
 * ```
 */
export function csvText(rows: readonly (readonly Cell[])[]): string {
  const cell = (value: Cell): string => {
    const text = harmless(String(value ?? '').replace(/\s*[\r\n]+\s*/g, '; '));
    return /[",;]|^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
  };
  return `\uFEFF${rows.map((row) => `${row.map(cell).join(',')}\r\n`).join('')}`;
}

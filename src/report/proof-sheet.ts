import { citation, fingerprintOf, recalledCells, type Table } from '../core/index.js';
import { escapeHtml } from './render-html.js';

/** What a page of a proof sheet needs to know besides its table. @inline */
export interface ProofSheetOptions {
  /** Number of the page, as the tick document has it. */
  readonly page?: number;
  /** Language of the page as a code, `en` when absent. */
  readonly language?: string;
}

/** A tick document: what a person fills in while comparing proof sheets with the print. */
export interface Ticks {
  readonly format: 'ticks/1';
  /** Name of the person who compares. */
  readonly by: string;
  /** Day of the comparison, ISO. */
  readonly on: string;
  /** Edition of the copy that lies beside, by document. */
  readonly copies: Readonly<Record<string, string>>;
  readonly tables: readonly Tick[];
}

/** One table of a tick document. @inline */
export interface Tick {
  readonly table: string;
  readonly title: string;
  readonly document: string;
  readonly page: number;
  /** Fingerprint of the figures on the page. */
  readonly figures: string;
  /** How many cells it has, and how many of them are recalled. */
  readonly cells: number;
  readonly recalled: number;
  /** Set to true when every cell was compared. */
  readonly compared: boolean;
  /** Cells that the print has otherwise. */
  readonly corrections: readonly {
    readonly column: string;
    readonly row: string | number;
    readonly printed: number | null;
    readonly despite?: string;
  }[];
}

const places = (values: readonly number[]): number =>
  Math.max(0, ...values.map((v) => String(v).split('.')[1]?.length ?? 0));
/** The sum of printed figures, in their own decimals. */
const total = (values: readonly (string | number | null)[]): string => {
  const numbers = values.filter((v): v is number => typeof v === 'number');
  return numbers.length === 0 ? '' : numbers.reduce((a, b) => a + b, 0).toFixed(places(numbers));
};

const style = `
body { font: 13px/1.35 system-ui, sans-serif; margin: 1rem; }
table { border-collapse: collapse; font-variant-numeric: tabular-nums; margin: .6rem 0; }
th, td { border: 1px solid #777; padding: .12rem .4rem; text-align: right; }
th { font-weight: 600; } thead th { text-align: center; } tbody th { text-align: left; }
.m { background: #fde9a9; font-weight: 600; } .s { color: #666; font-style: italic; border-style: dotted; }
@media print { body { margin: 0; } .m { background: none; text-decoration: underline; } }
`;

/** Head cells of an axis: a key that several columns side by side have in common stands once over them. */
function headOf(columns: Table['columns'], axis: number): string {
  const cells: { key: string; width: number; above: string }[] = [];
  for (const column of columns) {
    const [key, above] = [String(column[axis]), column.slice(0, axis).join(' ')];
    const last = cells.at(-1);
    if (last?.key === key && last.above === above) last.width++;
    else cells.push({ key, width: 1, above });
  }
  return cells.map(({ key, width }) => `<th colspan="${width}" scope="colgroup">${escapeHtml(key)}</th>`).join('');
}

/**
 * A table as a page to compare with the print: rows and columns in the order of the print, recalled cells marked, the
 * sum of every row and column beside it, and the fingerprint that an attestation names.
 * @param t the table
 * @param options number of the page and its language
 * @returns a whole HTML page
 * @example
 * ```ts
 * import { bs7671Tables } from 'ohmwright/bs7671';
 * import { proofSheet } from 'ohmwright/report';
 *
 * proofSheet(bs7671Tables['4D5']).includes('Table 4D5'); // => true
 * ```
 */
export function proofSheet(t: Table, { page, language = 'en' }: ProofSheetOptions = {}): string {
  const recalled = recalledCells(t);
  const axes = t.axes.slice(0, -1).map((axis, i) => [axis.name, headOf(t.columns, i)] as const);
  const rowAxis = t.axes.at(-1)?.name ?? '';
  const head = axes
    .map(([name, cells]) => `<tr><th scope="row">${escapeHtml(name)}</th>${cells}<th class="s">sum</th></tr>`)
    .join('\n');
  const body = t.rows
    .map(([key, ...cells], r) => {
      const own = cells.map((v, c) => {
        const mark = v !== null && recalled.has(`${r} ${c}`) ? ' class="m"' : '';
        return `<td${mark}>${v === null ? '–' : escapeHtml(String(v))}</td>`;
      });
      return `<tr><th scope="row">${escapeHtml(String(key))}</th>${own.join('')}<td class="s">${total(cells)}</td></tr>`;
    })
    .join('\n');
  const sums = t.columns.map((_, c) => `<td class="s">${total(t.rows.map((row) => row[c + 1] ?? null))}</td>`).join('');
  const rowHead = `<tr><th scope="row">${escapeHtml(rowAxis)}</th>${t.columns.map(() => '<th></th>').join('')}<th class="s"></th></tr>`;
  const title = `${citation(t.source)}: ${t.title}`;
  const heading = page === undefined ? title : `${page}. ${title}`;
  const notes = [...(t.source.note ? [`Seen: ${t.source.note}.`] : []), ...(t.notes ?? [])];
  return `<!doctype html>
<html lang="${escapeHtml(language)}">
<head><meta charset="utf-8"><title>${escapeHtml(title)}</title><style>${style}</style></head>
<body>
<h1>${escapeHtml(heading)}</h1>
<p>In ${escapeHtml(t.printed ?? (t.unit === '1' ? 'plain numbers' : t.unit))}. <span class="m">Marked</span>: recalled, not seen in print (${recalled.size} cells). Figures ${fingerprintOf(t)}, table <code>${escapeHtml(t.id)}</code>.</p>
<table>
<thead>
${head}
${rowHead}
</thead>
<tbody>
${body}
<tr><th class="s" scope="row">sum</th>${sums}<td class="s">${total(t.rows.flatMap((row) => row.slice(1)))}</td></tr>
</tbody>
</table>
<p>&#9744; Every cell is as printed. &#9744; Other than printed: column, row, print: ……………………………………</p>
<p>Edition of the copy ……………… compared by ………………………… on ………………</p>
${notes.map((n) => `<p>${escapeHtml(n)}</p>`).join('\n')}
</body>
</html>
`;
}

/**
 * The tick document for tables, to be filled in: who, when, editions of the copies, and which tables were compared.
 * `readTicks` of `ohmwright/io` makes attestations of it.
 * @param tables the tables, in the order of their pages
 * @returns plain data
 * @example
 * ```ts
 * import { bs7671Tables } from 'ohmwright/bs7671';
 * import { ticksFor } from 'ohmwright/report';
 *
 * ticksFor([bs7671Tables['4D5']]).tables[0]?.compared; // => false
 * ```
 */
export function ticksFor(tables: readonly Table[]): Ticks {
  const documents = [...new Set(tables.map((t) => t.source.document))].sort();
  return {
    format: 'ticks/1',
    by: '',
    on: '',
    copies: Object.fromEntries(documents.map((d) => [d, ''])),
    tables: tables.map((t, i) => ({
      table: t.id,
      title: t.title,
      document: t.source.document,
      page: i + 1,
      figures: fingerprintOf(t),
      cells: t.rows.flatMap((row) => row.slice(1)).filter((v) => v !== null).length,
      recalled: recalledCells(t).size,
      compared: false,
      corrections: [],
    })),
  };
}

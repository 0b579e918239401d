import { type Block, type Cell, chaptersOf, printable, verdictOf } from './block.js';
import { pageStyle, REPORT_STYLE } from './style.js';
import { englishWords } from './words/pages.js';

/** Text made harmless inside HTML and SVG, attributes included. */
export const escapeHtml = (text: string): string => printable(text).replace(/[&<>"']/g, (c) => `&#${c.charCodeAt(0)};`);

/** A text with its symbols as the trade sets them: Z_s, R_1, I_Δn with the index lowered. */
const textHtml = (text: string): string =>
  escapeHtml(text).replace(/(?<![\p{L}\p{N}_])(\p{L})_(\p{L}{1,4}|\d)(?![\p{L}\p{N}_])/gu, '$1<sub>$2</sub>');

const verdict = (v: Exclude<Cell, string>): string =>
  `<span class="v v-${escapeHtml(v.verdict)}">${escapeHtml(verdictOf(v))}</span>`;
const cell = (c: Cell): string => (typeof c === 'string' ? textHtml(c) : verdict(c));

/** Tables that a narrow screen shows row by row, with the heading of each cell before it. */
const WIDE = 3;
/** Tables of so many columns that they are set smaller. */
const DENSE = 9;

function tableHtml({ caption, head, rows, numeric = [], boxes = [] }: Extract<Block, { kind: 'table' }>): string {
  const wide = head.length >= WIDE;
  const classes = (c: number, empty = false) => {
    const of = [
      ...(numeric.includes(c) ? ['n'] : []),
      ...(boxes.includes(c) ? ['b'] : empty && wide ? ['e'] : []),
    ].join(' ');
    return of ? ` class="${of}"` : '';
  };
  const label = (c: number) => (wide && head[c] ? `<span class="l">${textHtml(head[c])}: </span>` : '');
  const heads = head.map((h, c) => `<th scope="col"${classes(c)}>${textHtml(h)}</th>`).join('');
  const lines = rows
    .map((r) => `<tr>${r.map((x, c) => `<td${classes(c, x === '')}>${label(c)}${cell(x)}</td>`).join('')}</tr>`)
    .join('\n');
  return `<table${wide ? ` class="wide${head.length >= DENSE ? ' dense' : ''}"` : ''}>${caption ? `<caption>${textHtml(caption)}</caption>` : ''}<thead><tr>${heads}</tr></thead><tbody>\n${lines}\n</tbody></table>`;
}

const itemsHtml = (items: readonly string[]): string => items.map((item) => `<li>${textHtml(item)}</li>`).join('');

function blockHtml(block: Block, chapters: readonly string[], chapter: number): string {
  switch (block.kind) {
    case 'heading':
      return `<h${block.level}${block.level === 2 && chapters.length > 0 ? ` id="chapter-${chapter}"` : ''}>${textHtml(block.text)}</h${block.level}>`;
    case 'paragraph':
      return `<p>${textHtml(block.text)}</p>`;
    case 'caution':
      return `<p class="caution"><strong>${textHtml(block.label ?? englishWords.caution)}</strong> ${textHtml(block.text)}</p>`;
    case 'list':
      return block.ordered ? `<ol>${itemsHtml(block.items)}</ol>` : `<ul>${itemsHtml(block.items)}</ul>`;
    case 'verdict':
      return `<p>${verdict(block)}: ${textHtml(block.text)}</p>`;
    case 'answer':
      return `<p class="answer answer-${escapeHtml(block.verdict)}"><strong>${textHtml(block.words)}</strong> ${textHtml(block.text)}</p>`;
    case 'contents':
      return `<nav><p><strong>${textHtml(block.title)}</strong></p>${chapters.map((title, i) => `<p><a href="#chapter-${i + 1}">${textHtml(title)}</a></p>`).join('')}</nav>`;
    case 'table':
      return tableHtml(block);
    case 'lines':
      return `<pre>${block.lines.map(escapeHtml).join('\n')}</pre>`;
    case 'figure':
      return `<figure>${block.svg}<figcaption>${textHtml(block.caption)}</figcaption></figure>`;
    default: {
      const never: never = block;
      return never;
    }
  }
}

/** The report without its style. */
function articleHtml(blocks: readonly Block[]): string {
  const chapters = blocks.some((b) => b.kind === 'contents') ? chaptersOf(blocks) : [];
  let chapter = 0;
  const inside = blocks.map((b) => {
    if (b.kind === 'heading' && b.level === 2) chapter++;
    return blockHtml(b, chapters, chapter);
  });
  return `<article class="ow-report">\n${inside.join('\n')}\n</article>`;
}

/**
 * Prints blocks as a fragment of HTML that brings its style: for a page that is there already, whose own style it leaves
 * alone.
 * @param blocks the report; the pictures in it must come from this library's own drawing functions
 * @returns a style and an article as text; every text of the report is escaped
 * @example
 * ```ts
 * import { renderFragment } from 'ohmwright/report';
 *
 * renderFragment([{ kind: 'paragraph', text: 'I_b < I_z' }]).startsWith('<style>'); // => true
 * ```
 */
export function renderFragment(blocks: readonly Block[]): string {
  return `<style>${REPORT_STYLE}</style>\n${articleHtml(blocks)}\n`;
}

/**
 * Prints blocks as a self-contained HTML page with a style for screen and paper; every text is escaped. On paper every
 * sheet bears a running line and its number.
 * @param blocks the report; the pictures in it must come from this library's own drawing functions
 * @param title title of the page
 * @param running running line of every sheet of paper, such as the reference of the job; the title when absent
 * @param language language of the report as a code, `en` when absent
 * @returns the page as text
 * @example
 * ```ts
 * import { renderHtml } from 'ohmwright/report';
 *
 * renderHtml([{ kind: 'paragraph', text: 'I_b < I_z' }], 'A note').includes('I<sub>b</sub> &#60; I<sub>z</sub>'); // => true
 * ```
 */
export function renderHtml(blocks: readonly Block[], title: string, running = title, language = 'en'): string {
  return `<!doctype html>
<html lang="${escapeHtml(language)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escapeHtml(title)}</title>
<style>${REPORT_STYLE}${pageStyle(printable(running))}</style>
</head>
<body>
${articleHtml(blocks)}
</body>
</html>
`;
}

import { type Block, type Cell, printable, verdictWords } from './block.js';

/** Text made harmless inside HTML and SVG, attributes included. */
export const escapeHtml = (text: string): string => printable(text).replace(/[&<>"']/g, (c) => `&#${c.charCodeAt(0)};`);

const STYLE = `
:root { color-scheme: light dark; --ink: #1b1b1b; --paper: #fff; --soft: #666; --rule: #bbb; --shade: #f2f2f2; }
@media (prefers-color-scheme: dark) { :root { --ink: #e6e6e6; --paper: #161616; --soft: #a5a5a5; --rule: #555; --shade: #242424; } }
body { font: 15px/1.45 system-ui, sans-serif; color: var(--ink); background: var(--paper); max-width: 62rem; margin: 2rem auto; padding: 0 1rem; }
h1, h2, h3 { line-height: 1.2; } h2 { border-bottom: 1px solid var(--rule); padding-bottom: .2rem; margin-top: 2.2rem; }
table { border-collapse: collapse; width: 100%; margin: .8rem 0 1.2rem; font-variant-numeric: tabular-nums; }
caption { text-align: left; color: var(--soft); padding-bottom: .3rem; }
th, td { text-align: left; vertical-align: top; padding: .25rem .6rem .25rem 0; border-bottom: 1px solid var(--rule); }
th { font-weight: 600; } .n { text-align: right; }
.v { font-weight: 600; white-space: nowrap; } .v-fail { text-decoration: underline; text-decoration-thickness: 2px; } .v-not-determined { font-style: italic; }
.caution { border-left: 4px solid var(--ink); background: var(--shade); padding: .5rem .8rem; margin: .8rem 0; }
pre { background: var(--shade); padding: .6rem .8rem; overflow-x: auto; font-size: 13px; }
figure { margin: 1rem 0; } figure svg { max-width: 100%; height: auto; } figcaption { color: var(--soft); }
@media print { body { margin: 0; max-width: none; font-size: 10.5pt; color: #000; background: #fff; } h2, h3, caption { break-after: avoid; } tr, figure, .caution { break-inside: avoid; } pre { white-space: pre-wrap; } }
`;

const verdict = (v: string): string => `<span class="v v-${escapeHtml(v)}">${escapeHtml(verdictWords(v))}</span>`;
const cell = (c: Cell): string => (typeof c === 'string' ? escapeHtml(c) : verdict(c.verdict));

function blockHtml(block: Block): string {
  switch (block.kind) {
    case 'heading':
      return `<h${block.level}>${escapeHtml(block.text)}</h${block.level}>`;
    case 'paragraph':
      return `<p>${escapeHtml(block.text)}</p>`;
    case 'caution':
      return `<p class="caution"><strong>Caution.</strong> ${escapeHtml(block.text)}</p>`;
    case 'list':
      return `<ul>${block.items.map((item) => `<li>${escapeHtml(item)}</li>`).join('')}</ul>`;
    case 'verdict':
      return `<p>${verdict(block.verdict)} ${escapeHtml(block.text)}</p>`;
    case 'table': {
      const side = (c: number) => (block.numeric?.includes(c) ? ' class="n"' : '');
      const head = block.head.map((h, c) => `<th scope="col"${side(c)}>${escapeHtml(h)}</th>`).join('');
      const rows = block.rows
        .map((r) => `<tr>${r.map((x, c) => `<td${side(c)}>${cell(x)}</td>`).join('')}</tr>`)
        .join('\n');
      const caption = block.caption ? `<caption>${escapeHtml(block.caption)}</caption>` : '';
      return `<table>${caption}<thead><tr>${head}</tr></thead><tbody>\n${rows}\n</tbody></table>`;
    }
    case 'lines':
      return `<pre>${block.lines.map(escapeHtml).join('\n')}</pre>`;
    case 'figure':
      return `<figure>${block.svg}<figcaption>${escapeHtml(block.caption)}</figcaption></figure>`;
    default: {
      const never: never = block;
      return never;
    }
  }
}

/**
 * Prints blocks as a self-contained HTML page with a style for screen and paper; every text is escaped.
 * @param blocks the report; the pictures in it must come from this library's own drawing functions
 * @param title title of the page
 * @returns the page as text
 * @example
 * ```ts
 * import { renderHtml } from 'ohmwright/report';
 *
 * renderHtml([{ kind: 'paragraph', text: 'I_b < I_z' }], 'A note').includes('I_b &#60; I_z'); // => true
 * ```
 */
export function renderHtml(blocks: readonly Block[], title: string): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escapeHtml(title)}</title>
<style>${STYLE}</style>
</head>
<body>
${blocks.map(blockHtml).join('\n')}
</body>
</html>
`;
}

import { type Block, cellText, chaptersOf, printable, verdictOf } from './block.js';
import { englishWords } from './words/pages.js';

const WIDTH = 100;

/** Breaks text at spaces; the following lines are indented. */
function wrap(text: string, width: number, indent = ''): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of printable(text).split(/\s+/)) {
    if (line && line.length + 1 + word.length > width) {
      lines.push(line);
      line = indent + word;
    } else line = line ? `${line} ${word}` : word;
  }
  return line ? [...lines, line] : lines;
}

/** A table with columns as wide as their contents; the widest column gives way when the whole is too wide. */
function tableLines(
  head: readonly string[],
  rows: readonly (readonly string[])[],
  numeric: readonly number[],
): string[] {
  const widths = head.map((h, c) => Math.max(h.length, ...rows.map((r) => (r[c] ?? '').length)));
  const spare = WIDTH - 2 * (head.length - 1);
  while (widths.reduce((a, b) => a + b, 0) > spare) {
    const widest = widths.indexOf(Math.max(...widths));
    if ((widths[widest] ?? 0) <= 12) break;
    widths[widest] = (widths[widest] ?? 0) - 1;
  }
  const print = (cells: readonly string[]): string[] => {
    const wrapped = cells.map((cell, c) => wrap(cell, widths[c] ?? 12));
    const height = Math.max(1, ...wrapped.map((w) => w.length));
    return Array.from({ length: height }, (_, i) =>
      wrapped
        .map((w, c) =>
          numeric.includes(c) ? (w[i] ?? '').padStart(widths[c] ?? 0) : (w[i] ?? '').padEnd(widths[c] ?? 0),
        )
        .join('  ')
        .trimEnd(),
    );
  };
  return [...print(head), widths.map((w) => '-'.repeat(w)).join('  '), ...rows.flatMap(print)];
}

/** Where a person writes. */
const BOX = '[        ]';

function blockLines(block: Block, blocks: readonly Block[]): string[] {
  switch (block.kind) {
    case 'heading': {
      const mark = { 1: '=', 2: '-', 3: '', 4: '' }[block.level];
      const text = printable(block.text);
      return ['', text, ...(mark ? [mark.repeat(Math.min(WIDTH, text.length))] : []), ''];
    }
    case 'paragraph':
      return [...wrap(block.text, WIDTH), ''];
    case 'caution':
      return [...wrap(`! ${block.text}`, WIDTH, '  '), ''];
    case 'list':
      return [
        ...block.items.flatMap((item, i) =>
          wrap(`${block.ordered ? `${i + 1}.` : '-'} ${item}`, WIDTH - 2, '  ').map((l) => `  ${l}`),
        ),
        '',
      ];
    case 'verdict':
      return [...wrap(`[${verdictOf(block)}] ${block.text}`, WIDTH, '  '), ''];
    case 'answer': {
      const answer = printable(block.words).toUpperCase();
      const rule = '#'.repeat(Math.min(WIDTH, answer.length + 8));
      return [rule, `##  ${answer}`, rule, ...wrap(block.text, WIDTH), ''];
    }
    case 'contents':
      return [
        ...wrap(block.title, WIDTH),
        ...chaptersOf(blocks).flatMap((t) => wrap(t, WIDTH - 2, '  ').map((l) => `  ${l}`)),
        '',
      ];
    case 'table':
      return [
        ...wrap(block.caption, WIDTH),
        ...tableLines(
          block.head,
          block.rows.map((r) => r.map((c, i) => (block.boxes?.includes(i) && c === '' ? BOX : cellText(c)))),
          block.numeric ?? [],
        ),
        '',
      ];
    case 'lines':
      return [...block.lines.map(printable), ''];
    case 'figure':
      return [`(${printable(block.label ?? englishWords.picture)}: ${printable(block.caption)})`, ''];
    default: {
      const never: never = block;
      return never;
    }
  }
}

/**
 * Prints blocks as plain text, at most 100 columns wide where words allow it.
 * @param blocks the report
 * @returns plain text
 * @example
 * ```ts
 * import { renderText } from 'ohmwright/report';
 *
 * renderText([{ kind: 'paragraph', text: 'The circuit passes.' }]); // => 'The circuit passes.\n'
 * ```
 */
export function renderText(blocks: readonly Block[]): string {
  return `${blocks
    .flatMap((block) => blockLines(block, blocks))
    .join('\n')
    .replace(/\n{3,}/g, '\n\n')
    .trim()}\n`;
}

import { type Block, cellText, chaptersOf, printable, verdictOf } from './block.js';
import { englishWords } from './words/pages.js';

/** Characters that Markdown or the HTML inside it would take for markup. */
const safe = (text: string): string =>
  printable(text)
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/([\\`*_{}[\]|~#])/g, '\\$1')
    .trim()
    // at its beginning a text could start a list, a rule or an underlined heading
    .replace(/^(\d+(?=[.)](?:\s|$))|(?=[-+=]))/, '$1\\');
const cell = (text: string): string => safe(text) || ' ';

function blockText(block: Block, blocks: readonly Block[]): string {
  switch (block.kind) {
    case 'heading':
      return `${'#'.repeat(block.level)} ${safe(block.text)}`;
    case 'paragraph':
      return safe(block.text);
    case 'caution':
      return `> **${safe(block.label ?? englishWords.caution)}** ${safe(block.text)}`;
    case 'list':
      return block.items.map((item, i) => `${block.ordered ? `${i + 1}.` : '-'} ${safe(item)}`).join('\n');
    case 'verdict':
      return `**${safe(verdictOf(block))}**: ${safe(block.text)}`;
    case 'answer':
      return `**${safe(block.words.toUpperCase())}**\n\n${safe(block.text)}`;
    case 'contents':
      return `${safe(block.title)}\n\n${chaptersOf(blocks)
        .map((title) => `- ${safe(title)}`)
        .join('\n')}`;
    case 'table': {
      const numeric = block.numeric ?? [];
      const rows = [
        `| ${block.head.map(cell).join(' | ')} |`,
        `| ${block.head.map((_, c) => (numeric.includes(c) ? '---:' : '---')).join(' | ')} |`,
        ...block.rows.map((r) => `| ${r.map((c) => cell(cellText(c))).join(' | ')} |`),
      ];
      return `${block.caption ? `*${safe(block.caption)}*\n\n` : ''}${rows.join('\n')}`;
    }
    case 'lines': {
      const lines = block.lines.map(printable);
      const longest = Math.max(2, ...lines.flatMap((l) => (l.match(/`+/g) ?? []).map((run) => run.length)));
      const fence = '`'.repeat(longest + 1);
      return [fence, ...lines, fence].join('\n');
    }
    case 'figure':
      return `*(${safe(block.label ?? englishWords.picture)}: ${safe(block.caption)})*`;
    default: {
      const never: never = block;
      return never;
    }
  }
}

/**
 * Prints blocks as Markdown; every text is escaped.
 * @param blocks the report
 * @returns Markdown as text
 * @example
 * ```ts
 * import { renderMarkdown } from 'ohmwright/report';
 *
 * renderMarkdown([{ kind: 'heading', level: 2, text: 'Circuit' }]); // => '## Circuit\n'
 * ```
 */
export function renderMarkdown(blocks: readonly Block[]): string {
  return `${blocks.map((block) => blockText(block, blocks)).join('\n\n')}\n`;
}

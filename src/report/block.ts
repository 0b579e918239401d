/** A cell of a table: text, or a verdict that renderers may mark. */
export type Cell = string | { readonly verdict: string };

/**
 * A piece of a report. Reports are composed of blocks once; text, Markdown and HTML are three ways to print them.
 */
export type Block =
  | { readonly kind: 'heading'; readonly level: 1 | 2 | 3 | 4; readonly text: string }
  | { readonly kind: 'paragraph'; readonly text: string }
  | { readonly kind: 'caution'; readonly text: string }
  | { readonly kind: 'list'; readonly items: readonly string[]; readonly ordered?: true }
  | { readonly kind: 'verdict'; readonly verdict: string; readonly text: string }
  /** What the whole report comes to: the strongest thing on its page. */
  | { readonly kind: 'answer'; readonly verdict: string; readonly words: string; readonly text: string }
  /** The headings of the second level, each a way to its chapter where a form of printing has such ways. */
  | { readonly kind: 'contents'; readonly title: string }
  | {
      readonly kind: 'table';
      readonly caption: string;
      readonly head: readonly string[];
      readonly rows: readonly (readonly Cell[])[];
      readonly numeric?: readonly number[];
      /** Columns that a person fills in. */
      readonly boxes?: readonly number[];
    }
  | { readonly kind: 'lines'; readonly lines: readonly string[] }
  | { readonly kind: 'figure'; readonly svg: string; readonly caption: string };

/** A heading. */
export const heading = (level: 1 | 2 | 3 | 4, text: string): Block => ({ kind: 'heading', level, text });
/** A paragraph. */
export const paragraph = (text: string): Block => ({ kind: 'paragraph', text });
/** A caution, printed where it matters. */
export const caution = (text: string): Block => ({ kind: 'caution', text });
/** A list; nothing where it is empty. */
export const list = (items: readonly string[]): readonly Block[] => (items.length > 0 ? [{ kind: 'list', items }] : []);
/** Steps one after the other, numbered; nothing where there are none. */
export const steps = (items: readonly string[]): readonly Block[] =>
  items.length > 0 ? [{ kind: 'list', items, ordered: true }] : [];
/** A table; nothing where it has no rows. */
export const grid = (
  caption: string,
  head: readonly string[],
  rows: readonly (readonly Cell[])[],
  numeric: readonly number[] = [],
  boxes: readonly number[] = [],
): readonly Block[] =>
  rows.length > 0 ? [{ kind: 'table', caption, head, rows, numeric, ...(boxes.length > 0 ? { boxes } : {}) }] : [];

/** Titles of the chapters of a report. */
export const chaptersOf = (blocks: readonly Block[]): readonly string[] =>
  blocks.flatMap((b) => (b.kind === 'heading' && b.level === 2 ? [b.text] : []));

/** The text of a cell. */
export const cellText = (cell: Cell): string => (typeof cell === 'string' ? cell : verdictWords(cell.verdict));

const spoken: ReadonlyMap<string, string> = /* @__PURE__ */ new Map([
  ['pass', 'pass'],
  ['conditional', 'pass on conditions'],
  ['fail', 'FAIL'],
  ['not-determined', 'not determined'],
  ['not-required', 'not required'],
]);

/** A verdict as a person reads it. */
export const verdictWords = (verdict: string): string => spoken.get(verdict) ?? verdict;

/**
 * What no printed form may carry: control characters, which command terminals; halves of surrogate pairs and characters
 * that XML forbids; separators of lines; and marks that turn the direction of writing, which can make 80 read as 08.
 */
const UNPRINTABLE = /[\p{Cc}\p{Cs}\u2028\u2029\u200e\u200f\u061c\u202a-\u202e\u2066-\u2069\ufffe\uffff]/gu;

/** Text without what no printed form may carry. */
export const printable = (text: string): string => text.replace(UNPRINTABLE, ' ');

/**
 * The same blocks with each caution once, in full, at the first place where it matters. Of a caution that holds an earlier
 * one only what is new is said.
 */
export function cautionsOnce(blocks: readonly Block[]): readonly Block[] {
  const said: string[] = [];
  return blocks.flatMap((block): readonly Block[] => {
    if (block.kind !== 'caution') return [block];
    if (said.some((s) => s.includes(block.text))) return [];
    const rest = said.reduce((text, s) => text.replace(s, ''), block.text).trim();
    said.push(block.text);
    return rest === '' ? [] : [{ ...block, text: rest }];
  });
}

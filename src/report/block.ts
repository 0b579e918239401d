import { englishWords, type ReportWords } from './words/pages.js';

/** A cell of a table: text, or a verdict that renderers may mark. */
export type Cell = string | { readonly verdict: string; readonly words?: string };

/**
 * A piece of a report. Reports are composed of blocks once; text, Markdown and HTML are three ways to print them.
 */
export type Block =
  | { readonly kind: 'heading'; readonly level: 1 | 2 | 3 | 4; readonly text: string }
  | { readonly kind: 'paragraph'; readonly text: string }
  | { readonly kind: 'caution'; readonly text: string; readonly label?: string }
  | { readonly kind: 'list'; readonly items: readonly string[]; readonly ordered?: true }
  | { readonly kind: 'verdict'; readonly verdict: string; readonly text: string; readonly words?: string }
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
  | { readonly kind: 'figure'; readonly svg: string; readonly caption: string; readonly label?: string };

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
/** A table; nothing where it has no rows. Columns in which nothing stands are left out, but for those that a person fills in. */
export const grid = (
  caption: string,
  head: readonly string[],
  rows: readonly (readonly Cell[])[],
  numeric: readonly number[] = [],
  boxes: readonly number[] = [],
): readonly Block[] => {
  const kept = [...head.keys()].filter((c) => boxes.includes(c) || rows.some((r) => r[c] !== ''));
  const only = <T>(row: readonly T[]): readonly T[] => kept.map((c) => row[c] as T);
  const at = (columns: readonly number[]) => columns.flatMap((c) => (kept.includes(c) ? [kept.indexOf(c)] : []));
  const table = { caption, head: only(head), rows: rows.map(only), numeric: at(numeric) };
  return rows.length > 0 ? [{ kind: 'table', ...table, ...(boxes.length > 0 ? { boxes: at(boxes) } : {}) }] : [];
};

/** A day of the calendar, `2026-09-21`, in the words of the report. */
export const dayWords = (date: string, words: ReportWords): string => {
  const [year = 0, month = 0, day = 0] = date.split('-').map(Number);
  return words.day(year, month, day);
};

/** Titles of the chapters of a report. */
export const chaptersOf = (blocks: readonly Block[]): readonly string[] =>
  blocks.flatMap((b) => (b.kind === 'heading' && b.level === 2 ? [b.text] : []));

/** The text of a cell. */
export const cellText = (cell: Cell): string => (typeof cell === 'string' ? cell : verdictOf(cell));

/** A verdict as a person reads it: by the words that it bears, or in English. */
export const verdictOf = ({ verdict, words }: { readonly verdict: string; readonly words?: string }): string =>
  words ?? verdictWords(verdict, englishWords);

/** A verdict in the words of a catalogue; what is none stands as it is. */
export const verdictWords = (verdict: string, { verdicts }: ReportWords): string =>
  Object.hasOwn(verdicts, verdict) ? (verdicts[verdict] ?? verdict) : verdict;

/** The same blocks with the words of a catalogue where the printer has its own. */
export const worded = (blocks: readonly Block[], words: ReportWords): readonly Block[] =>
  words.verdicts === englishWords.verdicts && words.caution === englishWords.caution
    ? blocks
    : blocks.map((block): Block => {
        switch (block.kind) {
          case 'caution':
            return { ...block, label: words.caution };
          case 'figure':
            return { ...block, label: words.picture };
          case 'verdict':
            return { ...block, words: verdictWords(block.verdict, words) };
          case 'table': {
            const cell = (c: Cell): Cell =>
              typeof c === 'string' ? c : { ...c, words: verdictWords(c.verdict, words) };
            return { ...block, rows: block.rows.map((row) => row.map(cell)) };
          }
          default:
            return block;
        }
      });

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

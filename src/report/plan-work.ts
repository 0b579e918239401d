import type { Hours } from '../site/hours.js';
import type { Item } from '../site/item.js';
import type { Estimate } from '../site/work-rules.js';
import { type Block, grid, heading } from './block.js';
import type { ReportWords } from './words/pages.js';

/** Minutes below an hour, then as coarse as anybody knows it: half hours, hours, fives and tens of them. */
const stepOf = (hours: number): number => (hours < 4 ? 0.5 : hours < 20 ? 1 : hours < 100 ? 5 : 10);
const rounded = (value: number, step: number): string =>
  value === 0 ? '0' : `${Math.max(step, Math.round(value / step) * step)}`;

/** Hours as people know them, the likely value first: 7 h (4 to 12). */
export function hoursWords({ low, typical, high }: Estimate, w: ReportWords): string {
  const inMinutes = typical < 1;
  const words = (hours: number): string => (inMinutes ? rounded(hours * 60, 5) : rounded(hours, stepOf(hours)));
  const likely = w.long.work.likely(words(typical), inMinutes ? 'min' : 'h');
  return words(low) === words(high) ? likely : w.long.work.estimate(likely, words(low), words(high));
}

/** How much of an item, with its unit. */
export const quantityOf = ({ quantity, unit }: Item, w: ReportWords): string =>
  quantity === undefined ? w.long.work.open : w.long.work.quantity(Number(quantity.toFixed(3)), unit);

/** An item of material in words. */
export const itemWords = ({ key, words }: Item, w: ReportWords): string => w.said(words, `item:${key}`);

/** Hours by task, and in all. */
export function hoursTable(
  { tasks, complete, ...all }: Hours,
  w: ReportWords,
  head: readonly string[],
  rest: (rule: string | undefined) => readonly string[],
): readonly Block[] {
  const { work } = w.long;
  return grid(
    work.hoursNote,
    head,
    [
      ...tasks.map((t) => [w.said(t.task, `task:${t.task}`), t.gaps ? work.open : hoursWords(t, w), ...rest(t.rule)]),
      [complete ? work.inAll : work.inAllOpen, hoursWords(all, w), ...rest(undefined)],
    ],
    [1],
  );
}

/** Material and hours. */
export function workBlocks(items: readonly Item[], hours: Hours, w: ReportWords): readonly Block[] {
  const { work } = w.long;
  return [
    heading(3, work.material),
    ...grid(
      '',
      work.materialHead,
      items.map((i) => [quantityOf(i, w), itemWords(i, w), w.said(i.rule, 'rule')]),
      [0],
    ),
    heading(3, work.hours),
    ...hoursTable(hours, w, work.hoursHead, (rule) => [rule === undefined ? '' : w.said(rule, 'rule')]),
  ];
}

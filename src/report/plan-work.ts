import type { Hours } from '../site/hours.js';
import type { Item } from '../site/item.js';
import type { Estimate } from '../site/work-rules.js';
import { type Block, grid, heading } from './block.js';

/** Minutes below an hour, then as coarse as anybody knows it: half hours, hours, fives and tens of them. */
const stepOf = (hours: number): number => (hours < 4 ? 0.5 : hours < 20 ? 1 : hours < 100 ? 5 : 10);
const rounded = (value: number, step: number): string =>
  value === 0 ? '0' : `${Math.max(step, Math.round(value / step) * step)}`;

/** Hours as people know them, the likely value first: 7 h (4 to 12). */
export function hoursWords({ low, typical, high }: Estimate): string {
  const inMinutes = typical < 1;
  const words = (hours: number): string => (inMinutes ? rounded(hours * 60, 5) : rounded(hours, stepOf(hours)));
  const likely = `${words(typical)} ${inMinutes ? 'min' : 'h'}`;
  return words(low) === words(high) ? likely : `${likely} (${words(low)} to ${words(high)})`;
}

/** How much of an item, with its unit. */
export const quantityOf = ({ quantity, unit }: Item, open = 'open'): string =>
  quantity === undefined ? open : unit === 'each' ? `${quantity}` : `${Number(quantity.toFixed(3))} ${unit}`;

/** Material and hours. */
export const workBlocks = (items: readonly Item[], work: Hours): readonly Block[] => [
  heading(3, 'Material'),
  ...grid(
    '',
    ['quantity', 'item', 'rule'],
    items.map((i) => [quantityOf(i), i.words, i.rule]),
    [0],
  ),
  heading(3, 'Hours'),
  ...grid(
    'Likely, and least to most. Common practice, no source; a firm replaces it with its own',
    ['task', 'hours', 'rule'],
    [
      ...work.tasks.map((t) => [t.task, t.gaps ? 'open' : hoursWords(t), t.rule]),
      [work.complete ? 'in all' : 'in all, what is open left out', hoursWords(work), ''],
    ],
    [1],
  ),
];

import type { Hours } from '../site/hours.js';
import type { Item } from '../site/quantities.js';
import { type Block, grid, heading } from './block.js';

/** Hours to the hundredth. */
export const hours = (h: number): string => `${(Math.round(h * 100) / 100).toString()} h`;

/** Material and hours. */
export const workBlocks = (items: readonly Item[], work: Hours): readonly Block[] => [
  heading(3, 'Material'),
  ...grid(
    '',
    ['quantity', 'item', 'rule'],
    items.map((i) => [
      i.quantity === undefined ? 'open' : i.unit === 'each' ? `${i.quantity}` : `${i.quantity} ${i.unit}`,
      i.words,
      i.rule,
    ]),
    [0],
  ),
  heading(3, 'Hours'),
  ...grid(
    'Common practice, no source; a firm replaces it with its own',
    ['task', 'low', 'typical', 'high', 'rule'],
    [
      ...work.tasks.map((t) => [t.task, hours(t.low), hours(t.typical), hours(t.high), t.rule]),
      ['in all', hours(work.low), hours(work.typical), hours(work.high), ''],
    ],
    [1, 2, 3],
  ),
];

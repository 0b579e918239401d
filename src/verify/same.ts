import type { Gap } from '../core/index.js';
import { same } from '../core/same.js';

/** Whether two lists hold the same gaps, in any order, each once. */
export function sameGaps(a: readonly Gap[], b: readonly Gap[]): boolean {
  const within = (x: readonly Gap[], y: readonly Gap[]) => x.every((g) => y.some((h) => same(g, h)));
  return within(a, b) && within(b, a);
}

/**
 * Whether two numbers agree to within the noise of a second calculation.
 * @param scale largest of the numbers that were added or subtracted on the way
 */
export const close = (a: number, b: number, scale = 0): boolean =>
  Math.abs(a - b) <= Math.max(1e-9 * Math.max(Math.abs(a), Math.abs(b)), 1e-12 * scale);

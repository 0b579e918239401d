import type { Gap } from '../core/index.js';

/**
 * Whether two plain values are equal as JSON, whatever the order of their keys; absent and undefined are the same.
 */
export function same(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return a === b;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const [x, y] = [a, b] as Readonly<Record<string, unknown>>[] as [Record<string, unknown>, Record<string, unknown>];
  const keys = new Set([...Object.keys(x), ...Object.keys(y)]);
  for (const key of keys) if (!same(x[key], y[key])) return false;
  return true;
}

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

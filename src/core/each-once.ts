import type { Gap } from './fact.js';

/** Each gap once, in the order in which they were met: one unknown fact may block a step through several of its inputs. */
export function eachOnce(gaps: readonly Gap[]): readonly Gap[] {
  if (gaps.length < 2) return gaps;
  return [...new Map(gaps.map((g) => [JSON.stringify(g), g] as const)).values()];
}

import { tried } from './cases.js';

/**
 * Draws some installations with ranges and compares what is said of them with values inside.
 * @param seed seed of the whole
 * @param from number of the first case
 * @param to number of the case after the last
 */
export function runSlice(seed: number, from: number, to: number) {
  const { found, ...counts } = tried(to - from, seed * 1_000_003 + from);
  return { counts, found };
}

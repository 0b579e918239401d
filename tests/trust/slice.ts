import { type Kind, tried } from './cases.js';

/** Of ten slices, those of each kind. */
const turns: readonly Kind[] = [
  'one fact',
  'two facts',
  'one fact',
  'one fact',
  'a worse value',
  'one fact',
  'two facts',
  'one fact',
  'one fact',
  'a worse value',
];

/**
 * Draws some cases and compares what is said of them.
 * @param seed seed of the whole
 * @param from number of the first case
 * @param to number of the case after the last
 */
export function runSlice(seed: number, from: number, to: number) {
  const slice = Math.floor(from / (to - from));
  const kind = turns[slice % turns.length] as Kind;
  const { compared, violations } = tried(kind, to - from, seed * 1_000_003 + from);
  return {
    counts: { [`${kind}: drawn`]: to - from, [`${kind}: compared`]: compared },
    found: violations,
  };
}

import fc from 'fast-check';
import { inFaults, inRamps } from './control-promise.js';
import { worlds } from './control-worlds.js';

/** Kinds of network in turn: faults where every point says what it draws, where some do not, and loads that rise. */
const kinds = [
  ['faults, every point says what it draws', worlds({ unread: false }), inFaults],
  ['faults, some points do not say what they draw', worlds({ unread: true }), inFaults],
  ['loads that rise', worlds({ unread: false, calm: true }), inRamps],
] as const;

/**
 * Draws networks and looks whether their control kept what it promises.
 * @param seed seed of the whole
 * @param from number of the first network
 * @param to number of the network after the last
 */
export function runSlice(seed: number, from: number, to: number) {
  const counts: Record<string, number> = {};
  const found: string[] = [];
  for (let n = from; n < to; n++) {
    const [name, drawn, run] = kinds[n % kinds.length] as (typeof kinds)[number];
    const [world] = fc.sample(drawn, { numRuns: 1, seed: seed * 1_000_003 + n });
    const kept = run(world as never);
    const count = (what: string) => {
      counts[`${name}: ${what}`] = (counts[`${name}: ${what}`] ?? 0) + 1;
    };
    count('drawn');
    if (kept.excess) count('excess');
    if (kept.safe) count('safe');
    if (kept.broken !== undefined) found.push(`network ${n}, ${name}: ${kept.broken}`);
  }
  return { counts, found };
}

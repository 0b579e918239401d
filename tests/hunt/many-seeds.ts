/**
 * Stands for fast-check where seeds are hunted with: a property is asserted under one seed after the other, as long as there is time,
 * and which it has seen is noted. `tests/hunt/run.mjs` puts it in place.
 */
import { appendFileSync, readFileSync } from 'node:fs';
import { expect } from 'vitest';
// by its path, so that it is not this module again
import * as real from '../../node_modules/fast-check/lib/fast-check.js';

type Property = Parameters<typeof real.assert>[0];

const { log, state, most, milliseconds } = JSON.parse(process.env.OHMWRIGHT_HUNT ?? '{}');
/** How many seeds each property has seen, and how many all of them had before. */
const { seen, from }: { readonly seen: Readonly<Record<string, number>>; readonly from: number } = JSON.parse(
  readFileSync(state, 'utf8'),
);
/** How many properties a test has asserted, by its name. */
const asserted = new Map<string, number>();

/** The test that runs, by file, name and the number of the property in it. */
function place(): string | undefined {
  const { testPath, currentTestName } = expect.getState();
  if (!testPath || !currentTestName) return undefined;
  const test = `${testPath.slice(testPath.lastIndexOf('/tests/') + 1)}: ${currentTestName}`;
  const number = (asserted.get(test) ?? 0) + 1;
  asserted.set(test, number);
  return number === 1 ? test : `${test} (property ${number})`;
}

const assert = (property: Property, parameters: { readonly seed?: number } = {}): unknown => {
  const at = place();
  if (!at) return real.assert(property, parameters);
  const until = performance.now() + milliseconds;
  const start = seen[at] ?? from;
  let next = start;
  const seeded = () => {
    next++;
    return { ...parameters, seed: ((parameters.seed ?? 0) * 7919 + next * 104_729) % 2_147_483_647 };
  };
  const more = () => next < most && (next === start || performance.now() < until);
  const note = () => appendFileSync(log, `${JSON.stringify({ at, seeds: next })}\n`);
  const first: unknown = more() ? real.assert(property, seeded()) : undefined;
  if (first instanceof Promise)
    return (async () => {
      await first;
      while (more()) await real.assert(property, seeded());
      note();
    })();
  while (more()) real.assert(property, seeded());
  return note();
};

export * from '../../node_modules/fast-check/lib/fast-check.js';
export default { ...real.default, assert };

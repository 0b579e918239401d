/**
 * Stands for fast-check where seeds are hunted with: a property is asserted under one seed after the other, and what it has seen is
 * noted. `tests/hunt/run.mjs` puts it in place.
 */
import { appendFileSync } from 'node:fs';
import { expect } from 'vitest';
// by its path, so that it is not this module again
import * as real from '../../node_modules/fast-check/lib/fast-check.js';

type Property = Parameters<typeof real.check>[0];
type Details = Awaited<ReturnType<typeof real.check>>;

const given = JSON.parse(process.env.OHMWRIGHT_HUNT ?? '{}');
const { log, most, until }: { readonly log: string; readonly most: number; readonly until: number } = given;
/** What each property of the file has seen before. */
const before: { readonly seeds: number; readonly cases: number } = given.before;
/** Seconds of the processor that all seeds of a property may cost: the first seed draws all its cases, the others what is left for them. */
const budget: number = given.budget;
/** Fewer cases a seed is not worth. */
const fewest = 5;
/** How many properties a test has asserted, by its name. */
const asserted = new Map<string, number>();

/** The test that runs, by its name and the number of the property in it. */
function place(): string | undefined {
  const { testPath, currentTestName } = expect.getState();
  if (!testPath || !currentTestName) return undefined;
  const number = (asserted.get(currentTestName) ?? 0) + 1;
  asserted.set(currentTestName, number);
  return number === 1 ? currentTestName : `${currentTestName} (property ${number})`;
}

const assert = (
  property: Property,
  parameters: { readonly seed?: number; readonly numRuns?: number } = {},
): unknown => {
  const at = place();
  if (!at) return real.assert(property, parameters);
  const all = parameters.numRuns ?? real.readConfigureGlobal().numRuns ?? 100;
  const failures: { readonly seed: number; readonly path: string | null; readonly why: string }[] = [];
  let { seeds, cases } = before;
  let numRuns = all;
  let begun = 0;
  const more = () => seeds < most && (seeds === before.seeds || Date.now() < until);
  const seeded = () => {
    begun = process.cpuUsage().user;
    const seed = ((parameters.seed ?? 0) * 7919 + (seeds + 1) * 104_729) % 2_147_483_647;
    // no shrinking: seed and path lead the test itself to the case
    return real.check(property, { ...parameters, numRuns, seed, endOnFailure: true });
  };
  const count = (details: Details) => {
    if (seeds === before.seeds) {
      const affordable = (all * budget) / (most * ((process.cpuUsage().user - begun) / 1e6));
      numRuns = Math.min(all, Math.max(fewest, Math.floor(affordable)));
    }
    seeds++;
    cases += details.numRuns;
    if (details.failed)
      failures.push({
        seed: details.seed,
        path: details.counterexamplePath,
        why: `${details.errorInstance instanceof Error ? details.errorInstance.message : ''}\n${real.defaultReportMessage(details)}`,
      });
  };
  const note = () => {
    appendFileSync(log, `${JSON.stringify({ at, seeds, cases, failures })}\n`);
    if (failures[0]) throw new Error(failures[0].why);
  };
  const first = more() ? seeded() : undefined;
  if (first instanceof Promise)
    return (async () => {
      count(await first);
      while (more()) count(await seeded());
      note();
    })();
  if (first) count(first as Details);
  while (more()) count(seeded() as Details);
  return note();
};

export * from '../../node_modules/fast-check/lib/fast-check.js';
export default { ...real.default, assert };

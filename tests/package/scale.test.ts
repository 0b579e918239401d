/** The planner's batch of docs/scale.md gives the same counts in one thread and over a pool. */
import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const planner = fileURLToPath(new URL('../../docs/examples/scale/planner.mjs', import.meta.url));
const run = (threads: number) =>
  JSON.parse(execFileSync(process.execPath, [planner, '11000', String(threads)], { encoding: 'utf8' })) as {
    total: Record<string, number>;
  };

test('one thread and a pool of two agree', () => {
  const one = run(0);
  expect(run(2).total).toEqual(one.total);
  const { pass = 0, fail = 0, 'not-determined': open = 0 } = one.total;
  expect(pass + fail + open).toBe(11000);
  expect(Math.min(pass, fail, open)).toBeGreaterThan(0);
}, 120_000);

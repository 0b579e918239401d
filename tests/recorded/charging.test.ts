/** What sharing, control over time and schedules give in drawn networks. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { allocate, relaxationsOf, type ScheduleInput, schedule, simulate } from '../../src/charging/index.js';
import type { SchedulePolicy } from '../../src/charging/schedule/input.js';
import { ratio } from '../../src/index.js';
import { networks } from '../charging/networks.js';
import { inputs } from '../charging/schedule/inputs.js';
import { controlled, policies, simulations } from '../charging/simulations.js';
import { recordOf } from '../support/recorded.js';

// work is done inside the tests, so that a tool that follows which test reaches what sees it
test('an allocation gives what it gave', async () => {
  const drawn = [
    ...fc.sample(networks({ unbalance: true, weights: true, overload: true }), { numRuns: 300, seed: 51 }),
    ...fc.sample(networks({ nodes: 12, points: 30, weights: true }), { numRuns: 150, seed: 52 }),
  ];
  const said = drawn.map((network, i) => {
    const policy = policies[i % policies.length]!;
    const all = allocate(network, policy);
    const currents = all.points.map((p) => Number(p.current.toPrecision(5))).join(' ');
    return { summary: `${policy.rule} ${policy.stage}: ${currents}`, all };
  });
  await expect(recordOf('allocation', said)).toMatchFileSnapshot('allocation.txt');
});

test('a simulation runs as it ran', async () => {
  const drawn = [
    ...fc.sample(simulations({ nodes: 3, points: 5, overload: true }), { numRuns: 150, seed: 53 }),
    ...fc.sample(simulations({ nodes: 5, points: 8, unbalance: true }), { numRuns: 150, seed: 54 }),
    ...fc.sample(controlled, { numRuns: 60, seed: 56 }),
  ];
  const said = drawn.map((input) => {
    const all = simulate(input);
    return { summary: `${Math.round(all.delivered)} Wh, ${Math.round(all.missing)} Wh missing`, all };
  });
  await expect(recordOf('simulation', said)).toMatchFileSnapshot('simulation.txt');
});

test('a schedule gives what it gave, and offers the same cures', async () => {
  const rules: readonly SchedulePolicy[] = ['earliest-deadline', 'least-laxity', 'minimum-cost', 'valley-filling'];
  const drawn = fc.sample(inputs({ nodes: 3, points: 4, steps: 6, between: true, profiles: true, hours: true }), {
    numRuns: 240,
    seed: 55,
  });
  const said = drawn.map((input, i) => {
    const policy = rules[i % rules.length]!;
    const full: ScheduleInput = {
      ...input,
      policy,
      stage: i % 8 < 4 ? 'continuous' : 'zero-or-least',
      bound: true,
      prices: { values: [0.31, 0.27, 0.09, 0.12, 0.4].map((p) => ratio(p)), every: input.step },
    };
    const all = schedule(full);
    return {
      summary: `${policy}: ${Math.round(all.shortfall)} Wh short`,
      all: [all, i % 4 === 0 ? relaxationsOf(full) : []],
    };
  });
  await expect(recordOf('schedule', said)).toMatchFileSnapshot('schedule.txt');
});

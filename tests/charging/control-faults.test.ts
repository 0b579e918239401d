import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { excessHeatOf } from '../../src/charging/definitions.js';
import { controllerOf } from '../../src/charging/index.js';
import { amperes, seconds } from '../../src/index.js';
import { seedOf } from '../support/seed.js';
import { END, RECOVER, run, type World, worlds } from './control-worlds.js';

/** How many networks are drawn: 1,000 take minutes. */
const runs = Number(process.env.OHMWRIGHT_CONTROL_NETWORKS ?? 60);

/** How much more there is than there was at the least within a time; export counts as nothing. */
const riseOf = (values: readonly number[], t: number, window: number): number =>
  Math.max(0, values[t]! - Math.max(0, Math.min(...values.slice(Math.max(0, t - window), t + 1))));

/** What is promised whatever happens: above limit and other load no more than other load rose in the time of a silent meter. */
function broken({ network, settings }: World, { traces, steps }: ReturnType<typeof run>): string | undefined {
  const { excessTimeSilent } = controllerOf(network, settings);
  const window = excessTimeSilent;
  const safeAt = steps.filter((s) => s.mode === 'safe').map((s) => s.at);
  for (const { limit, total, load, stray, ignoring } of traces)
    for (let t = 0; t < total.length; t++) {
      const rise = riseOf(load, t, window) + riseOf(stray, t, window);
      // nobody sees a vehicle that ignores its command while the meter is silent
      const unseen = safeAt.some((at) => at <= t && at > t - window)
        ? Math.max(...ignoring.slice(Math.max(0, t - window), t + 1))
        : 0;
      const most = Math.max(limit, load[t]! + stray[t]!) + rise + unseen;
      if (total[t]! > most + 1e-6) return `${total[t]} A at ${t} s where ${most} A is promised, limit ${limit} A`;
    }
  return undefined;
}

describe('meter faults, clocks that jump, points without link, vehicles that ignore their commands, ramps', () => {
  test.each([
    ['every point says what it draws', false],
    ['some do not', true],
  ])(
    'the excess is never above what is promised, and sharing comes back in the time that is promised: %s',
    (_, unread) => {
      let excess = 0;
      let safe = 0;
      fc.assert(
        fc.property(worlds({ unread }), (world) => {
          const { meterPeriod, controllerPeriod, resumeAfter } = world.settings;
          const back = END + RECOVER + 2 * (meterPeriod + controllerPeriod);
          const until = back + 2 * resumeAfter + 120;
          const result = run(world, until);
          expect(broken(world, result)).toBeUndefined();
          for (const { limit, total, load } of result.traces)
            if (total.some((a, t) => a > Math.max(limit, load[t]!) + 1e-6)) excess++;
          if (result.steps.some((s) => s.mode === 'safe' && s.at > 20)) safe++;
          // in each meter period there is a step that shares
          const shared = result.steps.filter(
            (s) => s.mode === 'sharing' && s.at >= back - meterPeriod - controllerPeriod,
          );
          let last = back;
          for (const s of shared) {
            expect(s.at - last).toBeLessThanOrEqual(meterPeriod + controllerPeriod);
            last = s.at;
          }
          expect(until - last).toBeLessThanOrEqual(meterPeriod + controllerPeriod);
          // and with loads at rest the commands come to rest
          const rest = result.steps.filter((s) => s.at > until - 40).map((s) => JSON.stringify(s.commands));
          expect(new Set(rest).size).toBe(1);
        }),
        { numRuns: runs, seed: seedOf(21) },
      );
      // it is looked at where something goes wrong, not where nothing ever does
      expect(excess).toBeGreaterThan(runs / 20);
      expect(safe).toBeGreaterThan(runs / 20);
    },
    Math.max(60_000, 1000 * runs),
  );
});

test(
  'a load that rises: excess, its time at each height, and its heat are bounded by the rises and the time',
  () => {
    let seen = 0;
    fc.assert(
      fc.property(worlds({ unread: false, calm: true }), (world) => {
        const { excessTime } = controllerOf(world.network, world.settings);
        const { traces } = run(world, END);
        for (const { limit, total, load: drawn } of traces) {
          const load = drawn.map((a) => Math.max(0, a));
          const excess = total.map((a, t) => Math.max(0, a - Math.max(limit, load[t]!)));
          const rises = load.reduce((sum, a, t) => sum + Math.max(0, a - (load[t - 1] ?? a)), 0);
          const most = Math.max(...excess);
          if (most > 1e-6) seen++;
          expect(excess.reduce((a, b) => a + b, 0)).toBeLessThanOrEqual(rises * excessTime + 1e-6);
          for (const height of [1, 2, 5, 10, 20, 40])
            expect(excess.filter((e) => e >= height).length).toBeLessThanOrEqual((rises * excessTime) / height + 1e-6);
          if (load.some((a) => a > limit)) continue;
          const heat = total.reduce((sum, a) => sum + Math.max(0, Math.max(0, a) ** 2 - limit ** 2), 0);
          const promised = {
            controlLimit: amperes(limit),
            loadRise: amperes(rises),
            excessTime,
            gateTime: seconds(1e-9),
          };
          expect(heat).toBeLessThanOrEqual(excessHeatOf(promised) + 1e-6);
        }
      }),
      { numRuns: runs, seed: seedOf(22) },
    );
    expect(seen).toBeGreaterThan(runs / 20);
  },
  Math.max(60_000, 1000 * runs),
);

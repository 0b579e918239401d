/** What a load control promises on networks in which something goes wrong, and whether it kept it. */
import { excessHeatOf } from '../../src/charging/definitions.js';
import { controllerOf } from '../../src/charging/index.js';
import { amperes, seconds } from '../../src/index.js';
import { END, RECOVER, run, type World } from './control-worlds.js';

/** What a world came to. */
export interface Kept {
  /** What was broken, in words. */
  readonly broken?: string;
  /** Whether more flowed for a while than limit and other load. */
  readonly excess: boolean;
  /** Whether the control went into safe mode. */
  readonly safe: boolean;
}

/** How much more there is than there was at the least within a time; export counts as nothing. */
const riseOf = (values: readonly number[], t: number, window: number): number =>
  Math.max(0, values[t]! - Math.max(0, Math.min(...values.slice(Math.max(0, t - window), t + 1))));

/** What is promised whatever happens: above limit and other load no more than other load rose in the time of a silent meter. */
function beyond({ network, settings }: World, { traces, steps }: ReturnType<typeof run>): string | undefined {
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

/** Sharing comes back in the time that is promised, in each meter period there is a step that shares, and commands come to rest. */
function lateBack(
  { steps }: ReturnType<typeof run>,
  back: number,
  until: number,
  meterPeriod: number,
  period: number,
): string | undefined {
  const within = meterPeriod + period;
  let last = back;
  for (const { at } of steps.filter((s) => s.mode === 'sharing' && s.at >= back - within)) {
    if (at - last > within) return `no sharing from ${last} to ${at} s`;
    last = at;
  }
  if (until - last > within) return `no sharing from ${last} to ${until} s`;
  const rest = new Set(steps.filter((s) => s.at > until - 40).map((s) => JSON.stringify(s.commands)));
  return rest.size === 1 ? undefined : `${rest.size} different commands at constant load`;
}

/**
 * Runs a world in which meters, clocks, links and vehicles fail.
 * @param world the network and what happens to it
 */
export function inFaults(world: World): Kept {
  const { meterPeriod, controllerPeriod, resumeAfter } = world.settings;
  const back = END + RECOVER + 2 * (meterPeriod + controllerPeriod);
  const until = back + 2 * resumeAfter + 120;
  const result = run(world, until);
  const broken = beyond(world, result) ?? lateBack(result, back, until, meterPeriod, controllerPeriod);
  return {
    ...(broken === undefined ? {} : { broken }),
    excess: result.traces.some(({ limit, total, load }) => total.some((a, t) => a > Math.max(limit, load[t]!) + 1e-6)),
    safe: result.steps.some((s) => s.mode === 'safe' && s.at > 20),
  };
}

/**
 * Runs a world in which loads rise and nothing else happens: the excess, its time at each height, and its heat are bounded by the
 * rises and the time.
 * @param world the network and its loads
 */
export function inRamps(world: World): Kept {
  const { excessTime } = controllerOf(world.network, world.settings);
  let excess = false;
  for (const { limit, total, load: drawn } of run(world, END).traces) {
    const load = drawn.map((a) => Math.max(0, a));
    const over = total.map((a, t) => Math.max(0, a - Math.max(limit, load[t]!)));
    const rises = load.reduce((sum, a, t) => sum + Math.max(0, a - (load[t - 1] ?? a)), 0);
    if (Math.max(...over) > 1e-6) excess = true;
    const sum = over.reduce((a, b) => a + b, 0);
    if (sum > rises * excessTime + 1e-6)
      return { broken: `${sum} A·s of excess where ${rises * excessTime} is promised`, excess, safe: false };
    for (const height of [1, 2, 5, 10, 20, 40]) {
      const time = over.filter((e) => e >= height).length;
      if (time > (rises * excessTime) / height + 1e-6)
        return { broken: `${time} s at ${height} A`, excess, safe: false };
    }
    if (load.some((a) => a > limit)) continue;
    const heat = total.reduce((all, a) => all + Math.max(0, Math.max(0, a) ** 2 - limit ** 2), 0);
    const most = excessHeatOf({
      controlLimit: amperes(limit),
      loadRise: amperes(rises),
      excessTime,
      gateTime: seconds(1e-9),
    });
    if (heat > most + 1e-6) return { broken: `${heat} A²s where ${most} is promised`, excess, safe: false };
  }
  return { excess, safe: false };
}

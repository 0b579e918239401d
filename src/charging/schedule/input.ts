import { LEAST_CURRENT } from '../network/network.js';
import { type Inspection, inspection, inspectNetwork, isObject } from '../network/refuse.js';
import { type ChargingPeriod, inspectPeriod } from '../time/period.js';
import { inspectProfiles, inspectTimes, type RepeatingProfile } from '../time/profiles.js';
import { inspectSessions } from '../time/sessions.js';
import { inspectHours } from '../time/windows.js';

/**
 * By what a schedule is made.
 *
 * - `earliest-deadline`: who leaves first is served first, as far as limits allow;
 * - `least-laxity`: who has the least time to spare is served first, looked at anew with each step;
 * - `minimum-cost`: the least cost of energy at the prices given;
 * - `valley-filling`: the power of the whole site, other load included, is as low as possible at its peak, then at the
 *   next lower level that can still be lowered, and so on.
 *
 * The first two look at what is there now, as a controller does: they may miss a departure that another order would have
 * met. The last two deliver as much energy as limits allow before anything else.
 * @inline
 */
export type SchedulePolicy = 'earliest-deadline' | 'least-laxity' | 'minimum-cost' | 'valley-filling';

/** Prices of energy that change with time, in any currency per kWh; below 0 where one is paid for using energy. @inline */
export interface PriceProfile extends RepeatingProfile<number> {}

/** What is scheduled. Clock values are s since midnight of the first day. */
export interface ScheduleInput extends ChargingPeriod {
  /** By what the schedule is made. */
  readonly policy: SchedulePolicy;
  /** `continuous`: any current; `zero-or-least`: nothing, or at least the smallest current of the point. */
  readonly stage: 'continuous' | 'zero-or-least';
  /** Prices; needed for `minimum-cost`, and for the cost of any other schedule. */
  readonly prices?: PriceProfile;
  /**
   * Whether an order of service that leaves some short also finds the smallest shortfall of any schedule, which takes
   * longer than the schedule itself. The optima find it anyway.
   */
  readonly bound?: boolean;
}

/** Largest number of steps. */
const MOST_STEPS = 100_000;
const POLICIES: readonly SchedulePolicy[] = ['earliest-deadline', 'least-laxity', 'minimum-cost', 'valley-filling'];

/** Refuses an input with everything that is wrong with it. */
export function inspectSchedule(input: ScheduleInput): void {
  const found = inspection();
  found.when(!isObject(input), [], 'must be what is to be scheduled');
  found.refuse('The schedule');
  const { from, step, policy, stage } = input;
  const sound = inspectNetwork(input.network, found, ['network']);
  inspectPeriod(input, MOST_STEPS, `must be after the begin, ${from} s`, found);
  found.when(!POLICIES.includes(policy), ['policy'], `there is no policy '${policy}'`);
  found.when(stage !== 'continuous' && stage !== 'zero-or-least', ['stage'], `there is no stage '${stage}'`);
  found.when(input.bound !== undefined && typeof input.bound !== 'boolean', ['bound'], 'must be true or false');
  if (sound) {
    inspectSessions(input.network, input.sessions, found);
    if (Array.isArray(input.sessions))
      for (const [k, session] of input.sessions.entries())
        found.when(
          session?.battery !== undefined,
          ['sessions', k, 'battery'],
          'is not looked at by a schedule, which plans constant currents; a simulation follows it',
        );
    if (stage === 'zero-or-least' && Array.isArray(input.sessions)) inspectLeast(input, found);
  }
  inspectHours(input.hours, found);
  const clock = { from, step };
  if (sound) {
    inspectProfiles(input.network, input.load ?? [], clock, found, 'load');
    inspectProfiles(input.network, input.limits ?? [], clock, found, 'limits');
  }
  inspectPrices(input, found);
  found.refuse('The schedule');
}

/** A vehicle that takes less than the smallest current of its point never charges. */
function inspectLeast({ network, sessions }: ScheduleInput, found: Inspection): void {
  const points = new Map(network.points.map((p) => [p.id, p]));
  sessions.forEach(({ point, most }, k) => {
    const least = points.get(point)?.least ?? LEAST_CURRENT;
    found.when(
      most !== undefined && most < least,
      ['sessions', k, 'most'],
      `${most} A is below the smallest current of '${point}', ${least} A`,
    );
  });
}

function inspectPrices({ prices, policy, from, step }: ScheduleInput, found: Inspection): void {
  found.when(!prices && policy === 'minimum-cost', ['prices'], 'must be given for a minimum of cost');
  if (!prices) return;
  if (!isObject(prices) || !Array.isArray(prices.values)) {
    found.when(true, ['prices', 'values'], 'must be a list of prices');
    return;
  }
  found.when(prices.values.length === 0, ['prices', 'values'], 'must have at least one value');
  prices.values.forEach((value, k) => {
    found.number(value, ['prices', 'values', k], {});
  });
  inspectTimes(prices, ['prices'], { from, step }, found);
}

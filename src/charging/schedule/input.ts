import type { Seconds, Volts } from '../../units/index.js';
import { type ChargingNetwork, LEAST_CURRENT } from '../network/network.js';
import { type Inspection, inspection, inspectNetwork } from '../network/refuse.js';
import { type CurrentProfile, inspectProfiles } from '../time/profiles.js';
import { type ChargingSession, inspectSessions } from '../time/sessions.js';
import { type ChargingHours, inspectHours } from '../time/windows.js';

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
 */
export type SchedulePolicy = 'earliest-deadline' | 'least-laxity' | 'minimum-cost' | 'valley-filling';

/** A price of energy that changes with time; after the last value the first one comes again. */
export interface PriceProfile {
  /** Prices in order, in any currency per kWh; below 0 where one is paid for using energy. */
  readonly values: readonly number[];
  /** For how long each value holds, s: a whole number of steps; one step when absent. */
  readonly every?: Seconds;
  /** Clock value at which the first value begins, s: a whole number of steps from the begin; the begin when absent. */
  readonly from?: Seconds;
}

/** What is scheduled. Clock values are s since midnight of the first day. */
export interface ScheduleInput {
  /** Limits and points; whether a vehicle is there is said by the sessions. */
  readonly network: ChargingNetwork;
  /** Vehicles. */
  readonly sessions: readonly ChargingSession[];
  /** Begin, s. */
  readonly from: Seconds;
  /** End, s, after the begin. */
  readonly to: Seconds;
  /** Length of a step, s, above 0. */
  readonly step: Seconds;
  /** Voltage of a line to neutral, V, above 0. */
  readonly voltage: Volts;
  /** By what the schedule is made. */
  readonly policy: SchedulePolicy;
  /** `continuous`: any current; `zero-or-least`: nothing, or at least the smallest current of the point. */
  readonly stage: 'continuous' | 'zero-or-least';
  /** Prices; needed for `minimum-cost`, and for the cost of any other schedule. */
  readonly prices?: PriceProfile;
  /** Other load of nodes over time, A; it takes the place of the load that the network states there. */
  readonly load?: readonly CurrentProfile[];
  /** Limits of nodes over time, A. */
  readonly limits?: readonly CurrentProfile[];
  /** When vehicles may charge; at any time when absent. Random delays act here. */
  readonly hours?: ChargingHours;
}

/** Largest number of steps. */
const MOST_STEPS = 100_000;
const POLICIES: readonly SchedulePolicy[] = ['earliest-deadline', 'least-laxity', 'minimum-cost', 'valley-filling'];

/** Refuses an input with everything that is wrong with it. */
export function inspectSchedule(input: ScheduleInput): void {
  const found = inspection();
  const { from, to, step, policy, stage } = input;
  inspectNetwork(input.network, found, ['network']);
  const span = [found.number(from, ['from'], {}), found.number(to, ['to'], {})].every(Boolean);
  found.when(span && to <= from, ['to'], `must be after the begin, ${from} s`);
  if (found.number(step, ['step'], { above: 0 }) && span)
    found.when((to - from) / step > MOST_STEPS, ['step'], `makes more than ${MOST_STEPS} steps`);
  found.number(input.voltage, ['voltage'], { above: 0 });
  found.when(!POLICIES.includes(policy), ['policy'], `there is no policy '${policy}'`);
  found.when(stage !== 'continuous' && stage !== 'zero-or-least', ['stage'], `there is no stage '${stage}'`);
  inspectSessions(input.network, input.sessions, found);
  if (stage === 'zero-or-least') inspectLeast(input, found);
  inspectHours(input.hours, found);
  const clock = { from, step };
  inspectProfiles(input.network, input.load ?? [], clock, found, 'load');
  inspectProfiles(input.network, input.limits ?? [], clock, found, 'limits');
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
  found.when(prices.values.length === 0, ['prices', 'values'], 'must have at least one value');
  prices.values.forEach((value, k) => {
    found.number(value, ['prices', 'values', k], {});
  });
  const whole = (time: number) => Math.abs(time / step - Math.round(time / step)) < 1e-6;
  const steps = step > 0 ? `must be a whole number of steps of ${step} s` : '';
  if (prices.every !== undefined && found.number(prices.every, ['prices', 'every'], { above: 0 }) && steps)
    found.when(!whole(prices.every) || prices.every < step / 2, ['prices', 'every'], steps);
  if (prices.from !== undefined && found.number(prices.from, ['prices', 'from'], {}) && steps)
    found.when(!whole(prices.from - from), ['prices', 'from'], `${steps} from the begin, ${from} s`);
}

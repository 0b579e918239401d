import type { Amperes, Seconds } from '../../units/index.js';
import { type Inspection, isObject } from '../network/refuse.js';

/**
 * How current is shared.
 *
 * - `max-min-amperes`: weighted max-min fairness of the current of each vehicle;
 * - `max-min-kilowatts`: the same of its power, which differs when some vehicles use one line and others three;
 * - `proportional-fairness`: maximises the sum of weight times logarithm of current; three-phase vehicles, which use room
 *   on three lines, get less than under max-min;
 * - `strict-priority`: by priority, each as much as it can have; max-min between equals;
 * - `equal-share`: each limit divided by the number of points behind it, whether a vehicle is there or not.
 * @inline
 */
export type SharingRule =
  | 'max-min-amperes'
  | 'max-min-kilowatts'
  | 'proportional-fairness'
  | 'strict-priority'
  | 'equal-share';

/**
 * Who is served first when there is not enough for everybody's smallest current; ties go by name.
 *
 * - `longest-waiting`: who has waited longest; over time whoever has had current for a turn goes behind those who have
 *   waited, so that all get the same share of the time;
 * - `least-energy`: who has received least;
 * - `priority`: by the priority of the point, then who has waited longest;
 * - a rotation: the points of each node take turns, one place further with each period of the clock.
 * @inline
 */
export type WaitingRule =
  | 'longest-waiting'
  | 'least-energy'
  | 'priority'
  | {
      /** Time after which the turn passes on, s, above 0. */
      readonly rotation: Seconds;
      /** The clock value now, s. */
      readonly now: Seconds;
    };

/** A policy of allocation. */
export interface AllocationPolicy {
  readonly rule: SharingRule;
  /** Who is served first when not all can run; `longest-waiting` when absent. */
  readonly waiting?: WaitingRule;
  /**
   * How far the result is taken: `continuous` shares any current; `zero-or-least` gives nothing or at least the smallest
   * current; `whole-steps` rounds that to the resolution as well. `whole-steps` when absent.
   */
  readonly stage?: 'continuous' | 'zero-or-least' | 'whole-steps';
  /** Unit of the currents of `whole-steps`, A, above 0; 1 A when absent. */
  readonly resolution?: Amperes;
  /** What happens with the remainders of `whole-steps`: given to the largest first, or left. `share` when absent. */
  readonly remainder?: 'share' | 'leave';
}

const rules: readonly SharingRule[] = [
  'max-min-amperes',
  'max-min-kilowatts',
  'proportional-fairness',
  'strict-priority',
  'equal-share',
];

/** Everything that is wrong with a policy. A load control has its own clock and is always in whole steps. */
export function inspectPolicy(policy: AllocationPolicy, found: Inspection, path: readonly string[] = []): void {
  if (!isObject(policy)) {
    found.when(true, path, 'must be a policy of allocation');
    return;
  }
  const { rule, waiting, stage, resolution, remainder } = policy;
  found.label(rule, [...path, 'rule'], rules);
  found.number(resolution, [...path, 'resolution'], { above: 0, optional: true });
  if (isObject(waiting)) {
    found.number(waiting.rotation, [...path, 'waiting', 'rotation'], { above: 0 });
    found.number(waiting.now, [...path, 'waiting', 'now'], {});
  } else found.label(waiting, [...path, 'waiting'], ['longest-waiting', 'least-energy', 'priority'], 'optional');
  found.label(stage, [...path, 'stage'], ['continuous', 'zero-or-least', 'whole-steps'], 'optional');
  found.label(remainder, [...path, 'remainder'], ['share', 'leave'], 'optional');
}

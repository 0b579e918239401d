import { type WattHours, wattHours } from '../../units/index.js';
import { courseOf } from './course.js';
import { serveInOrder } from './in-order.js';
import { inspectSchedule, type ScheduleInput } from './input.js';
import { nodesOf, type ScheduledNode, type ScheduledSession, sessionsOf } from './pieces.js';

/** Who charges when, and what it comes to: plain, JSON-ready. */
export interface Schedule {
  /** Vehicles, in the order of the input. */
  readonly sessions: readonly ScheduledSession[];
  /** Nodes, each before those that it feeds. */
  readonly nodes: readonly ScheduledNode[];
  /** Energy that all get, Wh. */
  readonly delivered: WattHours;
  /** Energy that is lacking in all, Wh. */
  readonly shortfall: WattHours;
  /** Cost of all energy, in the currency of the prices; absent without prices. */
  readonly cost?: number;
}

/**
 * Plans ahead who charges when. Limits hold at every node, on every line, at every instant; nobody gets more than it
 * needs, nor anything outside its stay and the hours.
 *
 * @param input network, vehicles, other load, policy, time; A, Wh, s, V
 * @returns currents of every vehicle over time, A; energy and shortfall, Wh; the peak of every node, A
 * @throws CalculationError `invalid-input` with everything that is wrong
 * @example
 * ```ts
 * import { amperes, hours, kilowattHours, volts } from 'ohmwright';
 * import { schedule } from 'ohmwright/charging';
 *
 * const line = (a: number) => [amperes(a), amperes(0), amperes(0)] as const;
 * const point = (id: string) => ({ id, node: 'intake', lines: ['L1'], most: amperes(32) }) as const;
 * const night = schedule({
 *   network: { nodes: [{ id: 'intake', limit: line(40) }], points: [point('left'), point('right')] },
 *   sessions: [
 *     { id: 'van', point: 'left', arrives: hours(18), leaves: hours(30), energy: kilowattHours(20) },
 *     { id: 'car', point: 'right', arrives: hours(18), leaves: hours(22), energy: kilowattHours(20) },
 *   ],
 *   from: hours(18), to: hours(30), step: hours(0.5), voltage: volts(230),
 *   policy: 'earliest-deadline', stage: 'zero-or-least',
 * });
 * night.shortfall; // => 0
 * night.sessions[0]?.stretches[0]; // => { from: 64800, to: 74582.60869565218, current: 8 }
 * night.nodes[0]?.peak; // => [40, 0, 0]
 * ```
 */
export function schedule(input: ScheduleInput): Schedule {
  inspectSchedule(input);
  const course = courseOf(input, true);
  const pieces = serveInOrder(course, input);
  const sessions = sessionsOf(course, pieces, input.prices !== undefined);
  const sum = (of: (s: ScheduledSession) => number) => sessions.reduce((total, s) => total + of(s), 0);
  return {
    sessions,
    nodes: nodesOf(course, pieces),
    delivered: wattHours(sum((s) => s.delivered)),
    shortfall: wattHours(sum((s) => s.shortfall)),
    ...(input.prices ? { cost: sum((s) => s.cost!) } : {}),
  };
}

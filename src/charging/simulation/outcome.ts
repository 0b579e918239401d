import type { Line } from '../../installation/index.js';
import type { Amperes, Seconds, WattHours } from '../../units/index.js';
import type { Ruling } from '../allocation/decide.js';
import type { PerLine } from '../network/network.js';
import type { TreeOrder } from '../network/tree-order.js';
import type { SimulationNotPromised } from '../not-promised.js';
import type { SimulationInput } from './input.js';
import type { SourceOutcome } from './sources.js';

/** What became of a vehicle. @inline */
export interface SessionOutcome {
  readonly id: string;
  readonly point: string;
  /** Energy that it received, Wh. */
  readonly delivered: WattHours;
  /** Energy that was missing at its departure, or at the end of the simulation, Wh. */
  readonly missing: WattHours;
  /** When it had all that it needs, s; absent when it never had. */
  readonly fullAt?: Seconds;
  /** How often charging began. */
  readonly starts: number;
  /** How often it was paused before the vehicle was full or left, for want of current or because its turn was over. */
  readonly pauses: number;
  /** How often that was before it had run for the least time, because a limit left no current; absent without one. */
  readonly cutShort?: number;
  /** Time in which it was there, allowed to charge, not full, and had no current, s. */
  readonly waited: Seconds;
}

/** A time on each line conductor in the order of `lineConductors`, s. @inline */
export type TimePerLine = readonly [Seconds, Seconds, Seconds];

/** What a node saw. @inline */
export interface NodeOutcome {
  readonly id: string;
  /** Highest current on each line, A, other load and charging; negative when it exported throughout. */
  readonly peak: PerLine;
  /** Highest current of the neutral at unity power factor, third harmonics of the node included, A. */
  readonly neutral: Amperes;
  /** Time in which the line carried current and less than one step more was left below its limit, s. */
  readonly atLimit: TimePerLine;
  /** Time in which other load alone exceeded the limit, s. */
  readonly overloaded: TimePerLine;
  /** Highest excess of other load alone over the limit, A. */
  readonly excess: PerLine;
  /**
   * Longest unbroken time in which charging kept the current above the limit or above other load that exceeded it, s: 0
   * when shared at once; with a load control as long as meter, controller and vehicles take.
   */
  readonly longestAbove: TimePerLine;
}

/** Currents step by step. @inline */
export interface SimulationSeries {
  /** Begin of each step, minutes since midnight of the first day. */
  readonly minutes: readonly number[];
  /** Current by point and line, A: in each step, or at its begin where the vehicle became full in it. */
  readonly points: readonly {
    readonly id: string;
    readonly current: Readonly<Partial<Record<Line, readonly number[]>>>;
  }[];
  /** Other load by node and line, A, with what is behind the node. */
  readonly load: readonly { readonly id: string; readonly current: Readonly<Record<Line, readonly number[]>> }[];
  /** Limit by node and line, A; null where there is none. */
  readonly limit: readonly {
    readonly id: string;
    readonly current: Readonly<Record<Line, readonly (number | null)[]>>;
  }[];
}

/** A simulated night or year: plain, JSON-ready. */
export interface Simulation {
  /** Vehicles, in the order of the input. */
  readonly sessions: readonly SessionOutcome[];
  /** Nodes, each before those that it feeds. */
  readonly nodes: readonly NodeOutcome[];
  /** What became of solar power and batteries; absent where there are none. */
  readonly sources?: readonly SourceOutcome[];
  /** Energy delivered to all, Wh. */
  readonly delivered: WattHours;
  /** Energy missing in all, Wh. */
  readonly missing: WattHours;
  /** What is not promised; in words under `notPromisedWords`. */
  readonly notPromised: readonly SimulationNotPromised[];
  /** Currents step by step, where they were to be kept. */
  readonly series?: SimulationSeries;
}

/**
 * What is not promised. An equal share never depends on the others: raising any limit lowers nobody's energy. When any
 * current is shared among vehicles that all use the same lines, raising the limit of the intake lowers nobody's either.
 * @param sameLines whether all vehicles use the same lines
 */
export function caveatsOf(
  order: TreeOrder,
  control: SimulationInput['control'],
  ruling: Ruling,
  sameLines: boolean,
): readonly SimulationNotPromised[] {
  const delayed =
    'meters' in control || [control.resumeAfter, control.leastOn, control.mostStarts].some((held) => (held ?? 0) > 0);
  const independent = ruling.rule === 'equal-share' || (!ruling.floors && sameLines);
  return independent && !delayed && order.allBalances.length === 0 ? [] : ['less-energy-may-come-from-more-capacity'];
}

import { type Volts, type WattHours, type Watts, wattHours, watts } from '../../units/index.js';
import type { ScheduleNotPromised } from '../not-promised.js';
import type { LongWork } from '../time/long-work.js';
import { type Course, courseOf } from './course.js';
import { serveInOrder } from './in-order.js';
import { inspectSchedule, type ScheduleInput } from './input.js';
import { type LinearForm, linearFormOf } from './linear.js';
import { baseTotals, leastShortfall, type Optimum, type OptimumPolicy, optimumOf, piecesOf } from './optimum.js';
import { nodesOf, type Piece, type ScheduledNode, type ScheduledSession, sessionsOf } from './pieces.js';
import { topUp, withSmallestCurrents } from './smallest-currents.js';

/** What no schedule can better. @inline */
export interface ScheduleBound {
  /** The smallest shortfall of all vehicles together, Wh. */
  readonly shortfall: WattHours;
  /** The least cost with that shortfall, shared as evenly as can be, in the currency of the prices; for `minimum-cost`. */
  readonly cost?: number;
  /** The lowest peak of the whole site with that shortfall, shared as evenly as can be, W; for `valley-filling`. */
  readonly peak?: Watts;
}

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
  /** Largest power of the whole site, other load included, at unity power factor, W. */
  readonly peak: Watts;
  /** What no schedule can better; absent where an order of service leaves some short and it was not asked for. */
  readonly bound?: ScheduleBound;
  /** What is not promised; in words under `notPromisedWords`. */
  readonly notPromised: readonly ScheduleNotPromised[];
}

/**
 * Plans ahead who charges when. Limits hold at every node, on every line, at every instant; nobody gets more than it
 * needs, nor anything outside its stay and the hours.
 *
 * `minimum-cost` and `valley-filling` at the `continuous` stage are proven optima: first the shortfall of all together is
 * the smallest that any schedule reaches, then the smallest share of its need that a vehicle gets is as large as
 * possible, and only then cost or peaks are lowered. At the stage `zero-or-least` the exact problem is NP-hard (points
 * with different smallest currents pose the problem of dividing numbers into two sets of equal sum): limits, needs and
 * smallest currents are kept, the result is near the bound as a rule, but neither the least shortfall nor the least cost
 * is promised. `bound` holds what the continuous optimum reaches, which no schedule betters.
 *
 * The optima are meant for up to hundreds of vehicles in steps of minutes to an hour; with steps of seconds they take
 * long, and a policy that serves in order is the one to use.
 *
 * `earliest-deadline` and `least-laxity` promise limits and needs, not that all is met that could be: `bound.shortfall`
 * says what could have been, where the input asks for it.
 *
 * @param input network, vehicles, other load, policy, time; A, Wh, s, V
 * @param work what it tells while it goes on, and what cuts it short
 * @returns currents of every vehicle over time, A; energy and shortfall, Wh; the peak of every node, A
 * @throws CalculationError `invalid-input` with everything that is wrong
 * @example
 * ```ts
 * import { amperes, hours, kilowattHours, volts } from 'ohmwright';
 * import { schedule } from 'ohmwright/charging';
 *
 * const line = (a: number) => [amperes(a), amperes(0), amperes(0)] as const;
 * const point = (id: string) => ({ id, node: 'intake', lines: ['L1'], most: amperes(32) }) as const;
 * const input = {
 *   network: { nodes: [{ id: 'intake', limit: line(40) }], points: [point('left'), point('right')] },
 *   sessions: [
 *     { id: 'van', point: 'left', arrives: hours(18), leaves: hours(30), energy: kilowattHours(20) },
 *     { id: 'car', point: 'right', arrives: hours(18), leaves: hours(22), energy: kilowattHours(20) },
 *   ],
 *   from: hours(18), to: hours(30), step: hours(0.5), voltage: volts(230),
 *   prices: { values: [0.3, 0.1], every: hours(6) },
 * } as const;
 * const first = schedule({ ...input, policy: 'earliest-deadline', stage: 'zero-or-least' });
 * first.shortfall; // => 0
 * first.sessions[0]?.stretches[0]; // => { from: 64800, to: 74582.60869565218, current: 8 }
 * first.nodes[0]?.peak; // => [40, 0, 0]
 *
 * const cheap = schedule({ ...input, policy: 'minimum-cost', stage: 'continuous' });
 * cheap.cost; // => 8
 * cheap.sessions[0]?.stretches; // => [{ from: 86400, to: 108000, current: 14.492753623188406 }]
 * ```
 */
export function schedule(input: ScheduleInput, work: LongWork = {}): Schedule {
  inspectSchedule(input);
  const { course, pieces, bound, notPromised } = made(input, work);
  const sessions = sessionsOf(course, pieces, input.prices !== undefined);
  const sum = (of: (s: ScheduledSession) => number) => sessions.reduce((total, s) => total + of(s), 0);
  const shortfall = sum((s) => s.shortfall);
  const byName = new Map(sessions.map((s) => [s.id, s]));
  return {
    sessions: input.sessions.map(({ id }) => byName.get(id)!),
    nodes: nodesOf(course, pieces),
    delivered: wattHours(sum((s) => s.delivered)),
    shortfall: wattHours(shortfall),
    ...(input.prices ? { cost: sum((s) => s.cost!) } : {}),
    peak: peakOf(course, pieces, input.voltage),
    ...boundOf(input, shortfall, bound),
    notPromised,
  };
}

/** In an order of service the bound is free where nobody lacks anything; elsewhere it takes longer than the schedule. */
function boundOf(input: ScheduleInput, shortfall: number, found?: ScheduleBound): { readonly bound?: ScheduleBound } {
  if (found) return { bound: found };
  if (shortfall === 0) return { bound: { shortfall: wattHours(0) } };
  if (input.bound !== true) return {};
  return { bound: { shortfall: wattHours(1000 * leastShortfall(linearFormOf(courseOf(input, false)))) } };
}

interface Made {
  readonly course: Course;
  readonly pieces: readonly Piece[];
  readonly bound?: ScheduleBound;
  readonly notPromised: readonly ScheduleNotPromised[];
}

function made(input: ScheduleInput, work: LongWork): Made {
  const { policy, stage, voltage } = input;
  if (policy === 'earliest-deadline' || policy === 'least-laxity') {
    const course = courseOf(input, policy === 'least-laxity');
    return { course, pieces: serveInOrder(course, input, work), notPromised: ['may-miss-what-can-be-met'] };
  }
  const course = courseOf(input, stage === 'zero-or-least');
  const form = linearFormOf(course);
  const first = optimumOf(course, form, policy, undefined, work);
  const best = piecesOf(course, form, first.x);
  const bound = {
    shortfall: wattHours(1000 * first.shortfall),
    ...(policy === 'minimum-cost'
      ? { cost: sessionsOf(course, best, true).reduce((sum, s) => sum + s.cost!, 0) }
      : { peak: peakOf(course, best, voltage) }),
  };
  if (stage === 'continuous') return { course, pieces: best, bound, notPromised: [] };
  const pieces = nearBest(course, form, policy, first);
  return { course, pieces, bound, notPromised: ['not-the-best-with-smallest-currents'] };
}

/**
 * The better of two: the optimum decided cell by cell, and the optimum without its currents that are too small; each
 * topped up with what limits leave.
 */
function nearBest(course: Course, form: LinearForm, policy: OptimumPolicy, first: Optimum): readonly Piece[] {
  const merit = policy === 'minimum-cost' ? ({ slot }: Piece) => slot.price : (piece: Piece) => totalOf(course, piece);
  const without = first.x.map((current, k) => (current < course.vehicles[form.cells[k]!.vehicle]!.least ? 0 : current));
  // where lines must be in balance, a current cannot be taken away alone
  const others = course.order.allBalances.length > 0 ? [] : [without];
  const tried = [withSmallestCurrents(course, form, policy, first), ...others].map((x) => {
    const pieces = topUp(course, piecesOf(course, form, x), (a, b) => merit(a) - merit(b));
    const sessions = sessionsOf(course, pieces, true);
    return {
      pieces,
      shortfall: sessions.reduce((sum, s) => sum + s.shortfall, 0),
      merit:
        policy === 'minimum-cost'
          ? sessions.reduce((sum, s) => sum + s.cost!, 0)
          : Math.max(...pieces.map((piece) => totalOf(course, piece))),
    };
  });
  return tried.reduce((best, other) => {
    const more = other.shortfall - best.shortfall;
    return more < -1e-3 || (more < 1e-3 && other.merit < best.merit) ? other : best;
  }).pieces;
}

/** Current of the whole site in a piece, all lines together, A. */
const totalOf = (course: Course, { slot, currents }: Piece): number =>
  baseTotals({ ...course, slots: [slot] })[0]! +
  course.vehicles.reduce((sum, { lines }, j) => sum + lines * currents[j]!, 0);

const peakOf = (course: Course, pieces: readonly Piece[], voltage: Volts): Watts =>
  watts(voltage * Math.max(...pieces.map((piece) => totalOf(course, piece))));

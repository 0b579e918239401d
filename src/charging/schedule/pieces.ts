import { type Amperes, amperes, type Seconds, seconds, type WattHours, wattHours } from '../../units/index.js';
import type { PerLine } from '../network/network.js';
import { chargingByNode } from '../network/tree-order.js';
import { type Course, hoursOf, type Slot } from './course.js';

/** A stretch of a schedule: constant currents within one slot. */
export interface Piece {
  /** Begin, s. */
  readonly from: number;
  /** End, s. */
  readonly to: number;
  /** The slot that it lies in. */
  readonly slot: Slot;
  /** Current of each vehicle, A per line. */
  readonly currents: Float64Array;
}

/** A stretch in which a vehicle charges. @inline */
export interface ChargingStretch {
  /** Begin, s since midnight of the first day. */
  readonly from: Seconds;
  /** End, s. */
  readonly to: Seconds;
  /** Current on each line that the vehicle uses, A. */
  readonly current: Amperes;
}

/** What a schedule gives a vehicle. @inline */
export interface ScheduledSession {
  readonly id: string;
  readonly point: string;
  /** When it charges with what, in order; it does not charge in between. */
  readonly stretches: readonly ChargingStretch[];
  /** Energy that it gets, Wh. */
  readonly delivered: WattHours;
  /** Energy that it lacks, Wh. */
  readonly shortfall: WattHours;
  /** When it has what it needs, s; absent when it does not get there. */
  readonly fullAt?: Seconds;
  /** Cost of its energy, in the currency of the prices; absent without prices. */
  readonly cost?: number;
}

/** What comes together at a node. @inline */
export interface ScheduledNode {
  readonly id: string;
  /** Largest current on each line, other load and charging, A. */
  readonly peak: PerLine;
  /** For how long other load alone exceeds a limit and everything behind it on that line pauses, s; absent if never. */
  readonly overloaded?: Seconds;
}

/** Sessions in the order of the vehicles, by name: summed in that of the input they would round by it. */
export function sessionsOf({ vehicles }: Course, pieces: readonly Piece[], priced: boolean): ScheduledSession[] {
  return vehicles.map(({ session, perAmpere, need }, j) => {
    const stretches: { from: Seconds; to: Seconds; current: Amperes }[] = [];
    let [delivered, cost, fullAt] = [0, 0, need === 0 ? (session.arrives as number) : Number.NaN];
    for (const piece of pieces) {
      const current = piece.currents[j]!;
      if (current <= 0) continue;
      const energy = current * perAmpere * hoursOf(piece);
      delivered += energy;
      cost += energy * piece.slot.price;
      if (Number.isNaN(fullAt) && delivered >= need * (1 - 1e-9)) fullAt = piece.to;
      const last = stretches.at(-1);
      if (last?.to === piece.from && Math.abs(last.current - current) <= 1e-9 * current) last.to = seconds(piece.to);
      else stretches.push({ from: seconds(piece.from), to: seconds(piece.to), current: amperes(current) });
    }
    // rounding alone never makes a vehicle lack energy or get more than it needs
    const full = !Number.isNaN(fullAt);
    delivered = full ? session.energy : Math.min(1000 * delivered, session.energy);
    return {
      id: session.id,
      point: session.point,
      stretches,
      delivered: wattHours(delivered),
      shortfall: wattHours(session.energy - delivered),
      ...(full ? { fullAt: seconds(fullAt) } : {}),
      ...(priced ? { cost } : {}),
    };
  });
}

/** Nodes, each before those that it feeds. */
export function nodesOf(course: Course, pieces: readonly Piece[]): ScheduledNode[] {
  const { order, vehicles } = course;
  const peak = new Float64Array(3 * order.nodes.length).fill(Number.NEGATIVE_INFINITY);
  const over = new Float64Array(order.nodes.length);
  const x = new Float64Array(order.points.length);
  for (const { from, to, slot, currents } of pieces) {
    x.fill(0);
    vehicles.forEach((vehicle, j) => {
      if (currents[j]! <= 0) return;
      x[vehicle.point] = currents[j]!;
      order.mask[vehicle.point] = vehicle.mask;
    });
    const charging = chargingByNode(order, x);
    for (let c = 0; c < peak.length; c++) peak[c] = Math.max(peak[c]!, slot.base[c]! + charging[c]!);
    for (let v = 0; v < over.length; v++)
      if ([0, 1, 2].some((p) => slot.limit[3 * v + p]! < slot.base[3 * v + p]!)) over[v] = over[v]! + to - from;
  }
  return order.nodes.map((node, v) => ({
    id: node.id,
    peak: [amperes(peak[3 * v]!), amperes(peak[3 * v + 1]!), amperes(peak[3 * v + 2]!)],
    ...(over[v]! > 0 ? { overloaded: seconds(over[v]!) } : {}),
  }));
}

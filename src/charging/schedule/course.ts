import { LEAST_CURRENT } from '../network/network.js';
import { type Moment, maskOf, momentOf, type TreeOrder, treeOrder } from '../network/tree-order.js';
import { clockworkOf } from '../time/clockwork.js';
import { valueInStep } from '../time/profiles.js';
import type { ChargingSession } from '../time/sessions.js';
import { windowsOf } from '../time/windows.js';
import type { ScheduleInput } from './input.js';

/** A vehicle that is scheduled. */
export interface Vehicle {
  readonly session: ChargingSession;
  /** Place of its point. */
  readonly point: number;
  /** Node of its point. */
  readonly node: number;
  /** Largest current, A. */
  readonly most: number;
  /** Smallest current, A. */
  readonly least: number;
  /** Lines that it uses: 1 for L1, 2 for L2, 4 for L3, added. */
  readonly mask: number;
  /** How many lines it uses. */
  readonly lines: number;
  /** Power of one ampere, kW. */
  readonly perAmpere: number;
  /** Energy that it needs, kWh. */
  readonly need: number;
  /** Slots in which it may charge, in order. */
  readonly slots: readonly number[];
}

/** A stretch of time in which nothing changes: no limit, load or price, and nobody comes or goes. */
export interface Slot {
  /** Begin, s. */
  readonly from: number;
  /** End, s. */
  readonly to: number;
  /** Other load by node and line, everything behind the node included, A. */
  readonly base: Float64Array;
  /** Limit by node and line, A; infinite where there is none. */
  readonly limit: Float64Array;
  /** What the limits leave for charging by node and line, A. */
  readonly room: Float64Array;
  /** Price of energy per kWh; 0 when none is given. */
  readonly price: number;
}

/** What is scheduled, as arrays: time cut into slots, vehicles by name. The order of the input leaves no trace in it. */
export interface Course {
  readonly order: TreeOrder;
  /** A moment of it, to be set as needed. */
  readonly moment: Moment;
  /** Slots in order of time. */
  readonly slots: readonly Slot[];
  readonly vehicles: readonly Vehicle[];
}

/** Edges nearer than this are one, s. */
const SAME = 1e-6;

/**
 * Cuts time wherever anything changes. Within a slot everything is constant, so the mean of a current over the slot
 * serves as well as the current itself: what is optimal with one current a slot is optimal among all.
 * @param fine whether to cut at every step too
 */
export function courseOf(input: ScheduleInput, fine: boolean): Course {
  const limited = new Map((input.limits ?? []).map((p) => [p.node, p.values[0]!]));
  const order = treeOrder({
    ...input.network,
    // a node that gets a limit over time must be known to have one
    nodes: input.network.nodes.map((n) => (limited.has(n.id) ? { ...n, limit: limited.get(n.id)! } : n)),
  });
  const moment = momentOf(order);
  const clock = { from: input.from, step: input.step };
  const clockwork = clockworkOf(order, moment, clock, input.load ?? [], input.limits ?? []);
  const { prices } = input;
  const priceAt = prices ? valueInStep(prices, clock) : () => 0;
  const windows = input.sessions.map(({ id, arrives, leaves }) =>
    windowsOf(input.hours ?? { kind: 'any' }, { from: arrives, to: leaves }, id),
  );
  const inside = (time: number) => time > input.from + SAME && time < input.to - SAME;
  const cuts = [...new Set(windows.flatMap((list) => list.flatMap((w) => [w.from, w.to])).filter(inside))];
  cuts.sort((a, b) => a - b);

  const slots: Slot[] = [];
  const steps = Math.ceil((input.to - input.from) / input.step - 1e-9);
  let begin = input.from as number;
  let state: Omit<Slot, 'from' | 'to'> | undefined;
  let next = 0;
  const close = (end: number) => {
    if (state && end > begin + SAME) {
      slots.push({ ...state, from: begin, to: end });
      begin = end;
    }
  };
  for (let k = 0; k < steps; k++) {
    const now = input.from + k * input.step;
    for (; next < cuts.length && cuts[next]! <= now; next++) close(cuts[next]!);
    const price = prices ? prices.values[priceAt(k)]! : 0;
    const moved = clockwork.set(k);
    if (!moved && !fine && state?.price === price) continue;
    close(now);
    state =
      moved || !state
        ? { base: moment.base.slice(), limit: order.limit.slice(), room: moment.room.slice(), price }
        : { ...state, price };
  }
  for (; next < cuts.length; next++) close(cuts[next]!);
  close(input.to);
  return { order, moment, slots, vehicles: vehiclesOf(input, order, slots, windows) };
}

function vehiclesOf(
  input: ScheduleInput,
  order: TreeOrder,
  slots: readonly Slot[],
  windows: readonly (readonly { readonly from: number; readonly to: number }[])[],
): Vehicle[] {
  const place = new Map(order.points.map((p, i) => [p.id, i]));
  const vehicles = input.sessions.map((session, k): Vehicle => {
    const point = place.get(session.point)!;
    const at = order.points[point]!;
    const lines = session.vehicleLines ?? at.vehicleLines ?? at.lines.length;
    return {
      session,
      point,
      node: order.node[point]!,
      most: Math.min(at.most, session.most ?? at.most),
      least: at.least ?? LEAST_CURRENT,
      mask: maskOf(at.lines, lines),
      lines,
      perAmpere: (lines * input.voltage) / 1000,
      need: session.energy / 1000,
      slots: slots.flatMap(({ from, to }, t) =>
        windows[k]!.some((w) => w.from <= from + SAME && w.to >= to - SAME) ? [t] : [],
      ),
    };
  });
  return vehicles.sort((a, b) => (a.session.id < b.session.id ? -1 : 1));
}

/** Length of a slot, h. */
export const hoursOf = ({ from, to }: { readonly from: number; readonly to: number }): number => (to - from) / 3600;

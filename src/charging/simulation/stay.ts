import { type Seconds, seconds, wattHours } from '../../units/index.js';
import type { Moment, TreeOrder } from '../network/tree-order.js';
import { maskOf } from '../network/tree-order.js';
import { acceptedBy, type ChargingSession } from '../time/sessions.js';
import type { TimeWindow } from '../time/windows.js';
import type { SessionOutcome } from './outcome.js';

/** A vehicle while it is simulated. */
export interface Stay {
  readonly session: ChargingSession;
  /** Place of its point. */
  readonly point: number;
  readonly windows: readonly TimeWindow[];
  /** Largest current, A. */
  readonly most: number;
  /** Current that the vehicle takes of what it is offered at most, A: falls as its battery fills. */
  accepts: number;
  /** How many lines it uses. */
  readonly lines: number;
  /** Which lines it uses: 1 for L1, 2 for L2, 4 for L3, added. */
  readonly mask: number;
  /** The window that is open or comes next. */
  window: number;
  /** Energy so far, Wh. */
  delivered: number;
  /** When it was full, s; NaN while it is not. */
  fullAt: number;
  /** How often charging began. */
  starts: number;
  /** How often it was paused. */
  pauses: number;
  /** Of those, how often before it had run for the least time. */
  cutShort: number;
  /** Time without current, s. */
  waited: number;
  wants: boolean;
  running: boolean;
  /** Since when it runs, s. */
  runsSince: number;
  /** Whether it was paused for want of current. */
  starved: boolean;
  /** Since when current is available, s; NaN while it is not. */
  availableSince: number;
}

/** A vehicle at its begin. */
export function stayOf(
  order: TreeOrder,
  session: ChargingSession,
  point: number,
  windows: readonly TimeWindow[],
  from: Seconds,
): Stay {
  const at = order.points[point]!;
  const lines = session.vehicleLines ?? at.vehicleLines ?? at.lines.length;
  return {
    session,
    point,
    windows,
    most: Math.min(at.most, session.most ?? at.most),
    accepts: session.battery ? acceptedBy(session.battery, 0) : Number.POSITIVE_INFINITY,
    lines,
    mask: maskOf(at.lines, lines),
    window: 0,
    delivered: 0,
    fullAt: session.energy === 0 ? Math.max(session.arrives, from) : Number.NaN,
    starts: 0,
    pauses: 0,
    cutShort: 0,
    waited: 0,
    wants: false,
    running: false,
    runsSince: Number.NaN,
    starved: false,
    availableSince: Number.NaN,
  };
}

/** Largest current that is of use to a vehicle, A: never offered below the smallest, of which it takes what it can. */
const offeredMost = (moment: Moment, { most, accepts, point }: Stay): number =>
  Math.min(most, Math.max(accepts, moment.least[point]!));

/** Follows the batteries of those who want current; says whether what is of use to any of them has changed. */
export function follow(moment: Moment, wanting: readonly Stay[]): boolean {
  let changed = false;
  for (const stay of wanting) {
    if (!stay.session.battery) continue;
    const most = offeredMost(moment, stay);
    if (moment.most[stay.point] !== most) changed = true;
    moment.most[stay.point] = most;
  }
  return changed;
}

/** Enters what a vehicle wants at a moment; says whether it wants anything. */
export function enter(order: TreeOrder, moment: Moment, stay: Stay, now: number): boolean {
  while (stay.window < stay.windows.length && stay.windows[stay.window]!.to <= now) stay.window++;
  const window = stay.windows[stay.window];
  const wanted = stay.wants;
  stay.wants = window !== undefined && window.from <= now && stay.delivered < stay.session.energy;
  if (!stay.wants) return false;
  const i = stay.point;
  moment.wants[i] = 1;
  if (wanted) return true;
  moment.most[i] = offeredMost(moment, stay);
  moment.waitingSince[i] = stay.session.arrives;
  moment.received[i] = stay.delivered;
  order.lines[i] = stay.lines;
  order.mask[i] = stay.mask;
  return true;
}

/**
 * Lets a vehicle charge for a step with the current that it is given; returns what it takes.
 * @param current offered, A
 * @param end of the step, s
 * @param voltage of a line, V
 */
export function charge(
  stay: Stay,
  current: number,
  now: number,
  end: number,
  voltage: number,
  { resumeAfter, leastOn }: { readonly resumeAfter: number; readonly leastOn: number },
): number {
  const open = stay.windows[stay.window];
  const until = Math.min(end, open?.to ?? end);
  if (current === 0) stay.availableSince = Number.NaN;
  else if (Number.isNaN(stay.availableSince)) stay.availableSince = now;
  if (current === 0 || (stay.starved && now - stay.availableSince < resumeAfter)) {
    if (stay.running) {
      stay.pauses++;
      if (now - stay.runsSince < leastOn - 1e-9) stay.cutShort++;
      stay.starved = true;
    }
    stay.running = false;
    stay.waited += until - now;
    return 0;
  }
  if (!stay.running) {
    stay.starts++;
    stay.runsSince = now;
  }
  stay.running = true;
  stay.starved = false;
  const taken = Math.min(current, stay.accepts);
  const power = taken * stay.lines * voltage;
  const energy = (power * (until - now)) / 3600;
  const left = stay.session.energy - stay.delivered;
  if (energy < left * (1 - 1e-12)) stay.delivered += energy;
  else {
    stay.delivered = stay.session.energy;
    stay.fullAt = now + (left * 3600) / power;
    stay.running = false;
  }
  if (stay.session.battery) stay.accepts = acceptedBy(stay.session.battery, stay.delivered);
  return taken;
}

/** What became of a vehicle. */
export const outcomeOf = (
  { session, delivered, fullAt, starts, pauses, cutShort, waited }: Stay,
  leastOn: number,
): SessionOutcome => ({
  id: session.id,
  point: session.point,
  delivered: wattHours(delivered),
  missing: wattHours(session.energy - delivered),
  ...(Number.isNaN(fullAt) ? {} : { fullAt: seconds(fullAt) }),
  starts,
  pauses,
  ...(leastOn > 0 ? { cutShort } : {}),
  waited: seconds(waited),
});

import { decide, type Ruling } from '../allocation/decide.js';
import { type LongWork, telling } from '../time/long-work.js';
import { type Course, hoursOf, type Vehicle } from './course.js';
import type { ScheduleInput } from './input.js';
import type { Piece } from './pieces.js';

/** Energy below which a vehicle is full, as a share of what it needs. */
const FULL = 1e-12;
/** Laxities nearer than this are equal, s. */
const SAME_LAXITY = 1e-6;

/** What is left for a vehicle while a schedule is made. */
interface Progress {
  readonly vehicle: Vehicle;
  /** Energy that it lacks, kWh. */
  left: number;
  /** Time in which it may still charge, after the slot that is looked at, h. */
  ahead: number;
}

/**
 * Serves vehicles in order at each moment, each with as much as limits leave beside those before it. The order is looked
 * at anew when anything changes, when a vehicle is full and, by laxity, with each step.
 */
export function serveInOrder(course: Course, input: ScheduleInput, work: LongWork = {}): Piece[] {
  const { order, moment, slots, vehicles } = course;
  const ruling: Ruling = {
    rule: 'strict-priority',
    waiting: 'priority',
    floors: input.stage === 'zero-or-least',
    step: 0,
    remainder: 'leave',
  };
  const here: Map<number, number[]> = new Map();
  vehicles.forEach((vehicle, j) => {
    for (const t of vehicle.slots) {
      const there = here.get(t);
      if (there) there.push(j);
      else here.set(t, [j]);
    }
  });
  const progress = vehicles.map(
    (vehicle): Progress => ({
      vehicle,
      left: vehicle.need,
      ahead: vehicle.slots.reduce((sum, t) => sum + hoursOf(slots[t]!), 0),
    }),
  );
  const pieces: Piece[] = [];

  const tell = telling(work, slots.length);
  slots.forEach((slot, t) => {
    tell?.(t);
    const open = here.get(t) ?? [];
    for (const j of open) progress[j]!.ahead -= hoursOf(slot);
    let now = slot.from;
    while (now < slot.to) {
      const currents = new Float64Array(vehicles.length);
      const wanting = open.filter((j) => progress[j]!.left > FULL * vehicles[j]!.need);
      let to = slot.to;
      if (wanting.length > 0) {
        rank(wanting, progress, input, slot.to - now).forEach((j, place) => {
          const { point, most, least, mask, lines } = vehicles[j]!;
          moment.priority[point] = place;
          moment.most[point] = most;
          moment.least[point] = least;
          order.mask[point] = mask;
          order.lines[point] = lines;
        });
        moment.base.set(slot.base);
        moment.room.set(slot.room);
        moment.wants.fill(0);
        for (const j of wanting) moment.wants[vehicles[j]!.point] = 1;
        const x = decide(order, moment, ruling);
        const fullAt = (j: number) => now + (3600 * progress[j]!.left) / (currents[j]! * vehicles[j]!.perAmpere);
        for (const j of wanting) {
          currents[j] = x[vehicles[j]!.point]!;
          if (currents[j]! > 0) to = Math.min(to, fullAt(j));
        }
        for (const j of wanting) {
          const energy = (currents[j]! * vehicles[j]!.perAmpere * (to - now)) / 3600;
          progress[j]!.left = currents[j]! > 0 && fullAt(j) <= to ? 0 : Math.max(0, progress[j]!.left - energy);
        }
      }
      if (to > now) pieces.push({ from: now, to, slot, currents });
      now = to;
    }
  });
  return pieces;
}

/** Vehicles in the order of service. */
function rank(wanting: number[], progress: readonly Progress[], { policy }: ScheduleInput, rest: number): number[] {
  const leaves = (j: number) => progress[j]!.vehicle.session.leaves;
  if (policy === 'earliest-deadline') return wanting.slice().sort((a, b) => leaves(a) - leaves(b) || a - b);
  const laxity = new Map(
    wanting.map((j) => {
      const { vehicle, left, ahead } = progress[j]!;
      const spare = 3600 * (ahead - left / (vehicle.most * vehicle.perAmpere)) + rest;
      return [j, Math.round(spare / SAME_LAXITY)];
    }),
  );
  return wanting.slice().sort((a, b) => laxity.get(a)! - laxity.get(b)! || leaves(a) - leaves(b) || a - b);
}

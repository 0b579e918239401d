import { balanceRoom } from '../network/balance.js';
import { LINE_BIT } from '../network/tree-order.js';
import type { Row } from '../optimum/lexicographic-simplex.js';
import { type Course, hoursOf } from './course.js';

/** A vehicle in a slot: one variable, its current, A. */
export interface Cell {
  /** Place of the vehicle. */
  readonly vehicle: number;
  /** Place of the slot. */
  readonly slot: number;
  /** Energy of one ampere over the slot, kWh. */
  readonly energy: number;
  /** Largest current, A: that of the vehicle, or what the limits on its way leave. */
  readonly most: number;
}

/** The needs of vehicles and the limits of a network over time, in linear form. */
export interface LinearForm {
  /** Variables. */
  readonly cells: readonly Cell[];
  /** Nobody gets more than it needs: one row for each vehicle, in order. */
  readonly needs: readonly Row[];
  /** Limits that could bind, A. */
  readonly limits: readonly Row[];
}

/** The linear form of a course of time; limits that cannot bind, or are implied by another, are left out. */
export function linearFormOf(course: Course): LinearForm {
  const { slots, vehicles } = course;
  const cells: Cell[] = [];
  const bySlot: number[][] = slots.map(() => []);
  const byVehicle: number[][] = vehicles.map(() => []);
  vehicles.forEach((vehicle, j) => {
    for (const t of vehicle.slots) {
      const most = Math.min(vehicle.most, wayRoom(course, j, t));
      if (most <= 0) continue;
      const place = cells.push({ vehicle: j, slot: t, energy: vehicle.perAmpere * hoursOf(slots[t]!), most }) - 1;
      bySlot[t]!.push(place);
      byVehicle[j]!.push(place);
    }
  });
  const needs = vehicles.map(
    ({ need }, j): Row => ({
      variables: byVehicle[j]!,
      coefficients: byVehicle[j]!.map((k) => cells[k]!.energy),
      most: need,
    }),
  );
  return { cells, needs, limits: bySlot.flatMap((here, t) => limitsIn(course, cells, here, t)) };
}

/** What the limits on the way of a vehicle leave in a slot, A. */
function wayRoom({ order, slots, vehicles }: Course, j: number, t: number): number {
  const { node, mask } = vehicles[j]!;
  let room = Number.POSITIVE_INFINITY;
  for (let v = node; v >= 0; v = order.parent[v]!)
    for (let p = 0; p < 3; p++) if (mask & LINE_BIT[p]!) room = Math.min(room, slots[t]!.room[3 * v + p]!);
  return room;
}

function limitsIn(course: Course, cells: readonly Cell[], here: readonly number[], t: number): Row[] {
  const { order, moment, vehicles, slots } = course;
  // of rows with the same left side the tightest; they are sought among those with the same length and ends
  const tightest = new Map<string, Row[]>();
  const take = (variables: number[], coefficients: number[], most: number) => {
    let sum = 0;
    for (let i = 0; i < variables.length; i++) sum += Math.max(0, coefficients[i]!) * cells[variables[i]!]!.most;
    if (sum <= most) return;
    const name = `${variables.length} ${variables[0]} ${variables.at(-1)}`;
    const alike = tightest.get(name);
    const row: Row = { variables, coefficients, most };
    if (!alike) {
      tightest.set(name, [row]);
      return;
    }
    const at = alike.findIndex((other) =>
      variables.every((k, i) => other.variables[i] === k && other.coefficients[i] === coefficients[i]),
    );
    if (at < 0) alike.push(row);
    else if (alike[at]!.most > most) alike[at] = row;
  };
  moment.base.set(slots[t]!.base);
  for (let v = 0; v < order.nodes.length; v++) {
    const behind = here.filter((k) => {
      const { point } = vehicles[cells[k]!.vehicle]!;
      return point >= order.first[v]! && point < order.end[v]!;
    });
    if (behind.length === 0) continue;
    const maskAt = (k: number) => vehicles[cells[k]!.vehicle]!.mask;
    for (let p = 0; p < 3; p++) {
      const users = behind.filter((k) => maskAt(k) & LINE_BIT[p]!);
      take(
        users,
        users.map(() => 1),
        slots[t]!.room[3 * v + p]!,
      );
    }
    for (const balance of order.balances[v]!) {
      const leaning = behind.filter((k) => balance.lean[maskAt(k)] !== 0);
      take(
        leaning,
        leaning.map((k) => balance.lean[maskAt(k)]!),
        balanceRoom(balance, moment.base),
      );
    }
  }
  return [...tightest.values()].flat();
}

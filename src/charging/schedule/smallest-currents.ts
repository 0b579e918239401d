import { balanceRoom, balanceSum } from '../network/balance.js';
import { LINE_BIT } from '../network/tree-order.js';
import type { Row } from '../optimum/lexicographic-simplex.js';
import { type Course, hoursOf } from './course.js';
import type { LinearForm } from './linear.js';
import { type Decisions, type Optimum, type OptimumPolicy, optimumOf } from './optimum.js';
import type { Piece } from './pieces.js';

const TOLERANCE = 1e-9;
/** After so many times nothing more is left open. */
const MOST_ROUNDS = 8;

/**
 * Gives each cell nothing or at least its smallest current. The currents of the optimum that are too small are raised
 * where the smallest currents of all that run still fit, the largest share first, and given up elsewhere; then the
 * optimum of what is left open is found anew, until none is too small. Sound, and often near the optimum, but not proven
 * to be one: with smallest currents the problem contains that of dividing a set of numbers into two of equal sum, for
 * which no fast exact method is known.
 */
export function withSmallestCurrents(
  course: Course,
  form: LinearForm,
  policy: OptimumPolicy | 'energy',
  first: Optimum,
): Float64Array {
  const { cells } = form;
  const { vehicles } = course;
  const least = (k: number) => vehicles[cells[k]!.vehicle]!.least;
  const decisions: Decisions = {
    least: new Float64Array(cells.length),
    open: Uint8Array.from(cells, ({ most }, k) => (most + TOLERANCE >= least(k) ? 1 : 0)),
  };
  // what each need and limit leaves beside the smallest currents of those that run
  const rows = [...form.needs, ...form.limits, ...(policy === 'valley-filling' ? levelsOf(course, form, first.x) : [])];
  const left = Float64Array.from(rows, (row) => row.most);
  const entries: [number, number][][] = cells.map(() => []);
  rows.forEach(({ variables, coefficients }, r) => {
    for (let i = 0; i < variables.length; i++) entries[variables[i]!]!.push([r, coefficients[i]!]);
  });
  const run = (k: number): boolean => {
    if (entries[k]!.some(([r, a]) => a > 0 && left[r]! + TOLERANCE < a * least(k))) return false;
    for (const [r, a] of entries[k]!) left[r] = left[r]! - a * least(k);
    decisions.least[k] = least(k);
    return true;
  };
  let { x } = decisions.open.every(Boolean) ? first : optimumOf(course, form, policy, decisions);
  for (let round = 1; ; round++) {
    const charging = cells.flatMap((_, k) => (x[k]! > 0 && decisions.least[k] === 0 ? [k] : []));
    if (charging.every((k) => x[k]! >= least(k) - TOLERANCE)) return x;
    charging.sort((a, b) => x[b]! / least(b) - x[a]! / least(a) || a - b);
    for (const k of charging) if (!run(k)) decisions.open[k] = 0;
    // what is left after so many rounds is small: cells without current are given up too, and the rest is topped up
    if (round >= MOST_ROUNDS)
      cells.forEach((_, k) => {
        if (decisions.least[k] === 0) decisions.open[k] = 0;
      });
    x = optimumOf(course, form, policy, decisions).x;
  }
}

/** The smallest currents that run in a slot keep within its level in the optimum. */
const levelsOf = (course: Course, { cells }: LinearForm, x: Float64Array): Row[] =>
  course.slots.map((_, t) => {
    const variables = cells.flatMap(({ slot }, k) => (slot === t ? [k] : []));
    const coefficients = variables.map((k) => course.vehicles[cells[k]!.vehicle]!.lines);
    return { variables, coefficients, most: variables.reduce((sum, k, i) => sum + coefficients[i]! * x[k]!, 0) };
  });

/**
 * Gives vehicles that lack energy what pieces still leave, those that come first in the given order first, never less
 * than the smallest current; a piece is cut where a vehicle becomes full in it.
 */
export function topUp(course: Course, pieces: readonly Piece[], before: (a: Piece, b: Piece) => number): Piece[] {
  const { order, moment, vehicles } = course;
  const lacking = vehicles.map(({ need, perAmpere }, j) =>
    pieces.reduce((rest, piece) => rest - piece.currents[j]! * perAmpere * hoursOf(piece), need),
  );
  const result: Piece[] = [];
  const ahead = [...pieces].sort((a, b) => before(b, a) || b.from - a.from);
  const open = new Map(
    course.slots.map((slot, t) => [slot, vehicles.flatMap((v, j) => (v.slots.includes(t) ? [j] : []))]),
  );

  /** How much more current limits leave for a vehicle in a piece, A. */
  const roomFor = ({ slot, currents }: Piece, j: number): number => {
    const { mask, node, most } = vehicles[j]!;
    let room = most - currents[j]!;
    const sums = new Float64Array(3);
    const inside = (v: number, i: number) =>
      vehicles[i]!.point >= order.first[v]! && vehicles[i]!.point < order.end[v]!;
    moment.base.set(slot.base);
    for (let v = node; v >= 0; v = order.parent[v]!) {
      sums.fill(0);
      for (const i of open.get(slot)!)
        for (let p = 0; p < 3; p++)
          if (vehicles[i]!.mask & LINE_BIT[p]! && inside(v, i)) sums[p] = sums[p]! + currents[i]!;
      for (let p = 0; p < 3; p++) {
        if (mask & LINE_BIT[p]!) room = Math.min(room, slot.room[3 * v + p]! - sums[p]!);
      }
      for (const balance of order.balances[v]!) {
        const by = balance.lean[mask]!;
        if (by > 0) room = Math.min(room, (balanceRoom(balance, moment.base) - balanceSum(balance, sums)) / by);
      }
    }
    return room;
  };

  for (let piece = ahead.pop(); piece; piece = ahead.pop()) {
    let { from, to, slot, currents } = piece;
    for (const j of open.get(slot)!) {
      const { need, perAmpere, least } = vehicles[j]!;
      if (lacking[j]! <= TOLERANCE * need) continue;
      const room = roomFor({ from, to, slot, currents }, j);
      const smallest = currents[j]! > 0 ? 0 : least;
      if (room < smallest || room <= TOLERANCE) continue;
      const exact = lacking[j]! / (perAmpere * hoursOf({ from, to }));
      const more = Math.max(smallest, Math.min(room, exact));
      if (more > exact * (1 + TOLERANCE)) {
        // full before the end of the piece: the rest of it goes on without
        const full = from + (3600 * lacking[j]!) / (perAmpere * more);
        if (!(full > from && full < to)) continue;
        ahead.push({ from: full, to, slot, currents: currents.slice() });
        to = full;
      }
      currents = currents.slice();
      currents[j] = currents[j]! + more;
      lacking[j] = Math.max(0, lacking[j]! - more * perAmpere * hoursOf({ from, to }));
    }
    result.push({ from, to, slot, currents });
  }
  return result.sort((a, b) => a.from - b.from);
}

import { type Programme, programme, type Row } from '../optimum/lexicographic-simplex.js';
import { type LongWork, telling } from '../time/long-work.js';
import type { Course } from './course.js';
import type { SchedulePolicy } from './input.js';
import type { LinearForm } from './linear.js';
import type { Piece } from './pieces.js';

/** Policies with a defined optimum. */
export type OptimumPolicy = Exclude<SchedulePolicy, 'earliest-deadline' | 'least-laxity'>;

/** What has been decided about the cells when each must have nothing or at least its smallest current. */
export interface Decisions {
  /** Smallest current of each cell, A; 0 where it is free. */
  readonly least: Float64Array;
  /** Whether a cell may have current at all. */
  readonly open: Uint8Array;
}

/** An optimum: the current of each cell, A, and the energy that is lacking, kWh. */
export interface Optimum {
  /** Current of each cell, A. */
  readonly x: Float64Array;
  /** Energy that all lack, kWh. */
  readonly shortfall: number;
}

/** Energy below which nothing is lacking, as a share of what all need. */
const NOTHING = 1e-9;
/** A need below this share of all is met as far as it comes: it is too small to be weighed against the others. */
const WEIGHED = 1e-6;

/**
 * The optimum by linear programming, objective after objective: most energy; where not all can be met, the smallest
 * share of its need that a vehicle gets as large as possible, then the next; then what the policy is about. With
 * `energy` it ends after the energy.
 */
export function optimumOf(
  course: Course,
  form: LinearForm,
  policy: OptimumPolicy | 'energy',
  decisions?: Decisions,
  work: LongWork = {},
): Optimum {
  const { cells, needs, limits } = form;
  const floor = decisions?.least ?? new Float64Array(cells.length);
  const upper = Float64Array.from(cells, ({ most }, k) => (!decisions || decisions.open[k] ? most - floor[k]! : 0));
  // currents are counted from their floors
  const shifted = (row: Row): Row => {
    let most = row.most;
    for (let i = 0; i < row.variables.length; i++) most -= row.coefficients[i]! * floor[row.variables[i]!]!;
    return { ...row, most: Math.max(0, most) };
  };
  const energy = Float64Array.from(cells, (cell) => cell.energy);
  const needed = needs.reduce((sum, row) => sum + row.most, 0);
  const given = cells.reduce((sum, cell, k) => sum + cell.energy * floor[k]!, 0);
  const rows = [...needs, ...limits].map(shifted);
  const totals = policy === 'valley-filling' ? totalsBySlot(course, form).map(shifted) : [];
  const wanting = needs.flatMap((row, j) => (row.most > WEIGHED * needed ? [j] : []));

  // what is told: the groups of equal price, and the three objectives
  const begins = decisions ? [] : inOrderOf(course, form, policy);
  const tell = telling(work, begins.length + 3);
  let done = 0;
  const begin = (shares: boolean): { lp: Programme; shortfall: number } => {
    const shareRows = shares ? wanting.map((j) => shifted(negative(needs[j]!))) : [];
    done = 0;
    const lp = programme(
      upper,
      [...rows, ...totals, ...shareRows],
      shareRows.length + totals.length + 1,
      tell && (() => tell(done)),
    );
    for (const cheapest of begins) {
      lp.fill(cheapest, energy);
      tell?.(++done);
    }
    const delivered = lp.maximise(energy) + given;
    tell?.(++done);
    if (shares)
      lp.raiseLevels(
        wanting.map((_, i) => rows.length + totals.length + i),
        wanting.map((j) => needs[j]!.most / needed),
      );
    return { lp, shortfall: Math.max(0, needed - delivered) };
  };
  let { lp, shortfall } = begin(false);
  if (shortfall > NOTHING * needed && wanting.length > 1) ({ lp, shortfall } = begin(true));
  else if (shortfall <= NOTHING * needed) shortfall = 0;

  if (policy === 'minimum-cost') lp.maximise(cells.map((cell) => -cell.energy * course.slots[cell.slot]!.price));
  if (policy === 'valley-filling')
    lp.raiseLevels(
      totals.map((_, t) => rows.length + t),
      totals.map(() => 1),
    );
  tell?.(++done);
  // among equals the one that charges early: it is the safest against a departure ahead of time
  const span = course.slots.at(-1)!.to - course.slots[0]!.from;
  if (policy !== 'energy')
    lp.maximise(cells.map(({ energy: e, slot }) => (e * (course.slots[slot]!.from - course.slots[0]!.from)) / -span));
  tell?.(++done);
  const x = lp.solution().map((value, k) => value + floor[k]!);
  settleWithin([...limits, ...needs], x);
  return { x, shortfall };
}

/**
 * Cells in the order in which they are filled to begin with, those of one price together: the cheapest slots first, the
 * early ones among them, in each who has the least time at that price.
 */
function inOrderOf(
  { slots, vehicles }: Course,
  { cells }: LinearForm,
  policy: OptimumPolicy | 'energy',
): readonly (readonly number[])[] {
  const price = (k: number) => (policy === 'minimum-cost' ? slots[cells[k]!.slot]!.price : 0);
  const time = vehicles.map(() => new Map<number, number>());
  cells.forEach(({ vehicle, energy, most }, k) => {
    time[vehicle]!.set(price(k), (time[vehicle]!.get(price(k)) ?? 0) + energy * most);
  });
  const of = (k: number) => time[cells[k]!.vehicle]!.get(price(k))! / vehicles[cells[k]!.vehicle]!.need;
  const order = cells
    .map((_, k) => k)
    .sort((a, b) => price(a) - price(b) || cells[a]!.slot - cells[b]!.slot || of(a) - of(b) || a - b);
  const groups: number[][] = [];
  for (const k of order) {
    const last = groups.at(-1);
    if (last && price(last[0]!) === price(k)) last.push(k);
    else groups.push([k]);
  }
  return groups;
}

/** The least shortfall of all together, kWh, without saying whose: the first objective alone. */
export function leastShortfall({ cells, needs, limits }: LinearForm): number {
  const lp = programme(
    cells.map((cell) => cell.most),
    [...needs, ...limits],
  );
  const needed = needs.reduce((sum, row) => sum + row.most, 0);
  const shortfall = needed - lp.maximise(cells.map((cell) => cell.energy));
  return shortfall > NOTHING * needed ? shortfall : 0;
}

const negative = ({ variables, coefficients }: Row): Row => ({
  variables,
  coefficients: Array.from(coefficients, (c) => -c),
  most: 0,
});

/** Current of the whole site in each slot, counted against one that is never reached: a level lowers them all. */
function totalsBySlot(course: Course, { cells }: LinearForm): Row[] {
  const base = baseTotals(course);
  const bySlot: number[][] = course.slots.map(() => []);
  cells.forEach(({ slot }, k) => {
    bySlot[slot]!.push(k);
  });
  const lines = (k: number) => course.vehicles[cells[k]!.vehicle]!.lines;
  const highest = Math.max(
    ...bySlot.map((here, t) => base[t]! + here.reduce((s, k) => s + lines(k) * cells[k]!.most, 0)),
  );
  return bySlot.map((here, t) => ({ variables: here, coefficients: here.map(lines), most: highest - base[t]! }));
}

/** Other load of the whole site in each slot, all lines together, A. */
export const baseTotals = ({ order, slots }: Course): number[] =>
  slots.map(({ base }) =>
    order.nodes.reduce(
      (sum, _, v) => (order.parent[v]! < 0 ? sum + base[3 * v]! + base[3 * v + 1]! + base[3 * v + 2]! : sum),
      0,
    ),
  );

/** Takes away what rounding puts above a limit. */
function settleWithin(rows: readonly Row[], x: Float64Array): void {
  for (let k = 0; k < x.length; k++) if (x[k]! < 1e-9) x[k] = 0;
  for (const { variables, coefficients, most } of rows) {
    let [sum, positive] = [0, 0];
    for (let i = 0; i < variables.length; i++) {
      const part = coefficients[i]! * x[variables[i]!]!;
      sum += part;
      if (part > 0) positive += part;
    }
    if (sum <= most) continue;
    const scale = 1 - (sum - most) / positive - 1e-15;
    for (let i = 0; i < variables.length; i++) if (coefficients[i]! > 0) x[variables[i]!] = x[variables[i]!]! * scale;
  }
}

/** The pieces of an optimum: one a slot. */
export function piecesOf({ slots, vehicles }: Course, { cells }: LinearForm, x: Float64Array): Piece[] {
  const pieces = slots.map((slot) => ({
    from: slot.from,
    to: slot.to,
    slot,
    currents: new Float64Array(vehicles.length),
  }));
  cells.forEach(({ vehicle, slot }, k) => {
    pieces[slot]!.currents[vehicle] = x[k]!;
  });
  return pieces;
}

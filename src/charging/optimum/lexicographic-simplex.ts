import { CalculationError } from '../../units/index.js';
import { type Entries, workingBasis } from './working-basis.js';

/** A row `Σ coefficient · variable ≤ most`, with `most` not negative: everything at zero is a solution. */
export interface Row {
  readonly variables: ArrayLike<number>;
  readonly coefficients: ArrayLike<number>;
  /** Upper limit of the sum, 0 and up. */
  readonly most: number;
}

/** A linear programme whose objectives are taken one after another, each on the optimal solutions of those before. */
export interface Programme {
  /** Maximises an objective; the solutions that are left are those at its maximum. Returns the maximum. */
  maximise(objective: ArrayLike<number>): number;
  /**
   * Raises a level by which the given rows are tightened, each by its weight, as far as it goes, then fixes the rows
   * that stand in the way; again with the rest, until none is left.
   */
  raiseLevels(rows: readonly number[], weights: ArrayLike<number>): void;
  /** Value of each variable. */
  solution(): Float64Array;
}

/** Reduced costs and steps below this are none. */
const EPS = 1e-9;
/** How far a bound may be passed to find a larger pivot. */
const GIVE = 1e-10;
/** Changes after which the inverse is computed anew. */
const REFRESH = 80;

/** Into how many sections variables are divided. */
const SECTIONS = 8;
/** How many variables are looked at together at least. */
const SECTION = 100;

/** Where an entering variable is stopped: by itself, by a basic variable or by a row. */
interface Stop {
  readonly kind: 'itself' | 'variable' | 'row';
  readonly which: number;
  readonly step: number;
}

/**
 * A linear programme with bounded variables, solved by the primal simplex method on a basis of the limits that bind.
 * Objectives follow one another without starting again: after each, variables and rows that would lower it are fixed.
 * The time goes with the number of limits that bind, squared, not with the number of limits.
 * @param upper largest value of each variable; the smallest is 0
 * @param levels how many times a level may be raised
 */
export function programme(upper: ArrayLike<number>, rows: readonly Row[], levels = 0): Programme {
  const n = upper.length;
  const m = rows.length;
  const width = n + levels;
  let used = n;
  const columns: Entries[] = Array.from({ length: width }, () => ({ at: [], values: [] }));
  const matrix: Entries[] = rows.map(() => ({ at: [], values: [] }));
  const enter = (r: number, j: number, value: number) => {
    columns[j]!.at.push(r);
    columns[j]!.values.push(value);
    matrix[r]!.at.push(j);
    matrix[r]!.values.push(value);
  };
  rows.forEach((row, r) => {
    for (let k = 0; k < row.variables.length; k++) enter(r, row.variables[k]!, row.coefficients[k]!);
  });
  const most = new Float64Array(width).fill(Number.POSITIVE_INFINITY);
  for (let j = 0; j < n; j++) most[j] = upper[j]!;
  const x = new Float64Array(width);
  const slack = Float64Array.from(rows, (row) => row.most);
  const fixedColumn = new Uint8Array(width);
  const fixedRow = new Uint8Array(m);
  const basis = workingBasis(width, m);
  const { placeOfColumn, placeOfRow } = basis;
  const change = new Float64Array(m); // of the left side of each row for a unit of the entering variable
  let changes = 0;
  let free: number[] = []; // variables that may change
  let cursor = 0;

  /** Computes basic variables and slacks anew from the variables at their bounds. */
  const settle = () => {
    basis.refresh(columns);
    const rest = (r: number, basic: boolean) => {
      const { at, values } = matrix[r]!;
      let sum = rows[r]!.most;
      for (let k = 0; k < at.length; k++) if (basic || placeOfColumn[at[k]!]! < 0) sum -= values[k]! * x[at[k]!]!;
      return sum;
    };
    const values = basis.ahead({ at: basis.rows, values: basis.rows.map((r) => rest(r, false)) });
    basis.columns.forEach((j, p) => {
      x[j] = Math.min(Math.max(0, values[p]!), most[j]!);
    });
    for (let r = 0; r < m; r++) slack[r] = placeOfRow[r]! < 0 ? Math.max(0, rest(r, true)) : 0;
    changes = 0;
  };

  const priceOfRow = new Float64Array(m); // nothing for rows with slack
  const pricesAt = (costs: Float64Array): Float64Array => {
    const prices = basis.prices(costs);
    priceOfRow.fill(0);
    for (let q = 0; q < prices.length; q++) priceOfRow[basis.rows[q]!] = prices[q]!;
    return prices;
  };

  const reducedCost = (j: number, costs: Float64Array): number => {
    const { at, values } = columns[j]!;
    let d = costs[j]!;
    for (let k = 0; k < at.length; k++) d -= priceOfRow[at[k]!]! * values[k]!;
    return d;
  };

  /**
   * The variable, or the slack of a row as `-1 - row`, that improves most of those looked at: rows all, variables section
   * by section from where the last look ended, until one improves. By number, the first of all.
   */
  const entering = (costs: Float64Array, prices: Float64Array, byNumber: boolean): number | undefined => {
    let [best, gain] = [undefined as number | undefined, EPS];
    const count = free.length;
    const section = Math.max(SECTION, Math.ceil(count / SECTIONS));
    if (byNumber) cursor = 0;
    for (let looked = 0; looked < count; looked++) {
      if (looked % section === 0 && best !== undefined) break;
      if (cursor >= count) cursor = 0;
      const j = free[cursor++]!;
      if (placeOfColumn[j]! >= 0) continue;
      const d = reducedCost(j, costs);
      const good = x[j] === 0 ? d : -d;
      if (good <= gain) continue;
      [best, gain] = [j, good];
      if (byNumber) return best;
    }
    let row = m;
    for (let q = 0; q < prices.length; q++) {
      const r = basis.rows[q]!;
      if (fixedRow[r]) continue;
      if (byNumber ? -prices[q]! > EPS && r < row : -prices[q]! > gain) [best, gain, row] = [-1 - r, -prices[q]!, r];
    }
    return best;
  };

  /** What stops the entering variable first. */
  const stopOf = (direction: Float64Array, own: number, byNumber: boolean): Stop => {
    const give = byNumber ? 0 : GIVE;
    let far = own;
    const each = (visit: (kind: 'variable' | 'row', which: number, left: number, rate: number) => void) => {
      for (let p = 0; p < direction.length; p++) {
        const [rate, j] = [direction[p]!, basis.columns[p]!];
        if (rate > EPS) visit('variable', j, most[j]! - x[j]!, rate);
        else if (rate < -EPS) visit('variable', j, x[j]!, -rate);
      }
      for (let r = 0; r < m; r++) if (change[r]! > EPS && placeOfRow[r]! < 0) visit('row', r, slack[r]!, change[r]!);
    };
    each((_, __, left, rate) => {
      far = Math.min(far, (left + give) / rate);
    });
    if (far === own && own < Number.POSITIVE_INFINITY) return { kind: 'itself', which: -1, step: own };
    // of those that are reached, the one with the largest pivot, or the first by number
    let [stop, merit]: [Stop, number] = [{ kind: 'itself', which: -1, step: own }, Number.NEGATIVE_INFINITY];
    each((kind, which, left, rate) => {
      const step = Math.max(0, left / rate);
      const better = byNumber ? -(kind === 'row' ? width + which : which) : rate;
      if (step <= far && better > merit) [stop, merit] = [{ kind, which, step }, better];
    });
    return stop;
  };

  const move = (direction: Float64Array, step: number) => {
    for (let p = 0; p < direction.length; p++) {
      const j = basis.columns[p]!;
      x[j] = Math.min(Math.max(0, x[j]! + step * direction[p]!), most[j]!);
    }
    for (let r = 0; r < m; r++)
      if (change[r] !== 0 && placeOfRow[r]! < 0) slack[r] = Math.max(0, slack[r]! - step * change[r]!);
  };

  /** Lets a variable or slack into the basis; returns how far it went. */
  const pivot = (who: number, byNumber: boolean): number => {
    const row = who < 0 ? -1 - who : -1;
    const sign = row < 0 && x[who]! > 0 ? -1 : 1;
    const ahead = row < 0 ? basis.ahead(columns[who]!) : basis.aheadUnit(placeOfRow[row]!);
    const direction = ahead.map((w) => -sign * w);
    change.fill(0);
    const add = ({ at, values }: Entries, by: number) => {
      for (let k = 0; k < at.length; k++) change[at[k]!] = change[at[k]!]! + by * values[k]!;
    };
    for (let p = 0; p < direction.length; p++) if (direction[p] !== 0) add(columns[basis.columns[p]!]!, direction[p]!);
    if (row < 0) add(columns[who]!, sign);
    const stop = stopOf(direction, row < 0 ? most[who]! : Number.POSITIVE_INFINITY, byNumber);
    const { kind, which, step } = stop;
    if (step === Number.POSITIVE_INFINITY)
      throw new CalculationError('no-solution', 'linear programme: the objective has no upper end', {
        method: 'simplex method',
        values: {},
      });
    move(direction, step);
    if (row < 0)
      x[who] =
        kind === 'itself' ? (sign > 0 ? most[who]! : 0) : Math.min(Math.max(0, x[who]! + sign * step), most[who]!);
    else slack[row] = step;
    if (kind === 'itself') return step;
    if (kind === 'variable') {
      const place = placeOfColumn[which]!;
      x[which] = direction[place]! > 0 ? most[which]! : 0;
      if (row < 0) basis.replaceColumn(place, who, ahead);
      else basis.remove(place, placeOfRow[row]!);
    } else {
      slack[which] = 0;
      const across = basis.across(matrix[which]!);
      if (row < 0) basis.add(who, which, ahead, across, sign * change[which]!);
      else basis.replaceRow(placeOfRow[row]!, which, across);
    }
    if (++changes >= REFRESH) settle();
    return step;
  };

  const improve = (costs: Float64Array): void => {
    const patience = 50 + m;
    const limit = 200 * (m + n + 10);
    let idle = 0;
    free = [...columns.keys()].filter((j) => j < used && !fixedColumn[j] && most[j]! > 0);
    cursor = 0;
    for (let steps = 0; ; steps++) {
      const byNumber = idle > patience; // after many steps without gain: the rule that cannot go round in a circle
      const prices = pricesAt(costs);
      const who = entering(costs, prices, byNumber);
      if (who === undefined) break;
      if (steps > limit)
        throw new CalculationError('not-converged', `simplex method: no optimum after ${steps} steps`, {
          method: 'simplex method',
          iterations: steps,
          residual: Math.max(0, ...prices.map((y) => -y)),
        });
      idle = pivot(who, byNumber) > 1e-11 ? 0 : idle + 1;
    }
    if (changes > 0) settle();
    const prices = pricesAt(costs);
    for (let j = 0; j < used; j++)
      if (placeOfColumn[j]! < 0 && Math.abs(reducedCost(j, costs)) > EPS) fixedColumn[j] = 1;
    for (let q = 0; q < prices.length; q++) if (prices[q]! > EPS) fixedRow[basis.rows[q]!] = 1;
  };

  return {
    maximise(objective) {
      // what counts as nothing is measured against the largest coefficient, whatever its unit
      let largest = 0;
      for (let j = 0; j < n; j++) largest = Math.max(largest, Math.abs(objective[j]!));
      const costs = new Float64Array(width);
      for (let j = 0; j < n && largest > 0; j++) costs[j] = objective[j]! / largest;
      improve(costs);
      let sum = 0;
      for (let j = 0; j < n; j++) sum += costs[j]! * x[j]!;
      return sum * largest;
    },
    raiseLevels(which, weights) {
      let open = which.map((row, k) => ({ row, weight: weights[k]! })).filter(({ row }) => !fixedRow[row]);
      while (open.length > 0) {
        if (used === width) throw new RangeError('more levels than were provided for');
        const level = used++;
        for (const { row, weight } of open) enter(row, level, weight);
        const costs = new Float64Array(width);
        costs[level] = 1;
        improve(costs);
        const left = open.filter(({ row }) => !fixedRow[row]);
        // the dual values of the rows that are in the way sum to one: at least one is fixed each time
        if (left.length === open.length)
          throw new CalculationError('not-converged', 'levels: no row stands in the way', {
            method: 'lexicographic simplex method',
            iterations: used - n,
            residual: 0,
          });
        open = left;
      }
    },
    solution: () => x.slice(0, n),
  };
}

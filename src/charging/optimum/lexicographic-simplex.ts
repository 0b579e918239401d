import { CalculationError } from '../../units/index.js';
import { type Columns, clear, sparseBasis, sparseVector } from './sparse-basis.js';

/** A row `Σ coefficient · variable ≤ most`, with `most` not negative: everything at zero is a solution. */
export interface Row {
  readonly variables: ArrayLike<number>;
  readonly coefficients: ArrayLike<number>;
  /** Upper limit of the sum, 0 and up. */
  readonly most: number;
}

/** A linear programme whose objectives are taken one after another, each on the optimal solutions of those before. */
export interface Programme {
  /** Gives each variable in turn as much as the rows leave beside those before it: a begin near the optimum saves steps. */
  fill(order: readonly number[], gains: ArrayLike<number>): void;
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
/** Factorings after which the values of the basic columns are computed anew. */
const SETTLE = 5;
/** Into how many sections variables are divided. */
const SECTIONS = 32;
/** How many variables are looked at together at least. */
const SECTION = 100;
/** Steps between two signs of life. */
const PULSE = 250;
/** How many that improve are kept in mind for the next steps. */
const CANDIDATES = 40;

/**
 * A linear programme with bounded variables, solved by the primal simplex method on a sparse basis. Objectives follow one
 * another without starting again: after each, variables and rows that would lower it are fixed.
 * @param upper largest value of each variable; the smallest is 0
 * @param levels how many times a level may be raised
 * @param pulse called now and then while it works
 */
export function programme(upper: ArrayLike<number>, rows: readonly Row[], levels = 0, pulse?: () => void): Programme {
  const n = upper.length;
  const m = rows.length;
  const width = n + levels; // the slack of row r is column width + r
  let used = n;
  const columns = columnsOf(width, rows);
  const { starts } = columns;
  const most = new Float64Array(width + m).fill(Number.POSITIVE_INFINITY);
  for (let j = 0; j < n; j++) most[j] = upper[j]!;
  const x = new Float64Array(width + m);
  rows.forEach((row, r) => {
    x[width + r] = row.most;
  });
  const fixed = new Uint8Array(width + m);
  const isBasic = new Uint8Array(width + m).fill(1, width);
  const basis = sparseBasis(width, m);
  const { head, busy } = basis;
  const ahead = sparseVector(m);
  const prices = new Float64Array(m); // nothing for rows with slack
  let [factored, moved] = [0, false];
  let free: number[] = []; // variables that may change
  let cursor = 0;
  let candidates: number[] = [];
  const filled: number[] = [];

  const refactor = () => {
    for (const r of busy) prices[r] = 0;
    basis.refresh(columns);
  };
  /** Factors the basis and computes basic columns anew from those at their bounds. */
  const settle = () => {
    refactor();
    factored = 0;
    const { values } = ahead;
    clear(ahead);
    const left = Float64Array.from(rows, (row) => row.most);
    for (let j = 0; j < used; j++) {
      if (isBasic[j] || x[j] === 0) continue;
      const { at, values: by } = columns;
      for (let k = starts[j]!; k < starts[j + 1]!; k++) left[at[k]!] = left[at[k]!]! - by[k]! * x[j]!;
    }
    for (let r = 0; r < m; r++)
      if (left[r] !== 0) {
        values[r] = left[r]!;
        ahead.rows.push(r);
        ahead.marked[r] = 1;
      }
    basis.ahead(ahead);
    for (let r = 0; r < m; r++) x[head[r]!] = Math.min(Math.max(0, values[r]!), most[head[r]!]!);
    clear(ahead);
  };

  const findPrices = (costs: Float64Array): void => {
    for (const r of busy) prices[r] = head[r]! < width ? costs[head[r]!]! : 0;
    basis.back(prices);
  };

  const reducedCost = (j: number, costs: Float64Array): number => {
    const { at, values } = columns;
    let d = costs[j]!;
    for (let k = starts[j]!; k < starts[j + 1]!; k++) d -= prices[at[k]!]! * values[k]!;
    return d;
  };
  /** What a unit of a column away from its bound gains. */
  const gainOf = (j: number, costs: Float64Array): number => {
    const d = reducedCost(j, costs);
    return x[j] === 0 ? d : -d;
  };

  /**
   * The column that improves most of those looked at: slacks all, variables those in mind or, where none of them improves,
   * section by section from where the last look ended, until one improves. By number, the first of all.
   */
  const entering = (costs: Float64Array, byNumber: boolean): number | undefined => {
    let [best, gain] = [undefined as number | undefined, EPS];
    const look = (j: number): boolean => {
      if (isBasic[j]) return false;
      const good = gainOf(j, costs);
      if (good > gain) [best, gain] = [j, good];
      return good > EPS;
    };
    if (byNumber) {
      for (const j of free) if (look(j)) return j;
    } else {
      candidates = candidates.filter(look);
      if (best === undefined) {
        const count = free.length;
        const section = Math.max(SECTION, Math.ceil(count / SECTIONS));
        for (let looked = 0; looked < count; looked++) {
          if (looked % section === 0 && best !== undefined) break;
          if (cursor >= count) cursor = 0;
          const j = free[cursor++]!;
          if (look(j)) candidates.push(j);
        }
        if (candidates.length > CANDIDATES) {
          const merit = new Map(candidates.map((j) => [j, gainOf(j, costs)]));
          candidates = candidates.sort((a, b) => merit.get(b)! - merit.get(a)!).slice(0, CANDIDATES);
        }
      }
    }
    let row = m;
    for (const r of busy) {
      const slack = width + r;
      if (isBasic[slack] || fixed[slack]) continue;
      const good = -prices[r]!;
      if (byNumber ? good > EPS && r < row : good > gain) [best, gain, row] = [slack, good, r];
    }
    return best;
  };

  /** Lets a column into the basis; returns how far it went. */
  const pivot = (who: number, byNumber: boolean): number => {
    const sign = x[who]! > 0 ? -1 : 1;
    clear(ahead);
    const { values, rows: list, marked } = ahead;
    const put = (r: number, value: number) => {
      values[r] = value;
      marked[r] = 1;
      list.push(r);
    };
    if (who >= width) put(who - width, 1);
    else for (let k = starts[who]!; k < starts[who + 1]!; k++) put(columns.at[k]!, columns.values[k]!);
    basis.ahead(ahead);
    // what stops it first: itself, or of the basic columns that are reached the one with the largest pivot
    const give = byNumber ? 0 : GIVE;
    const own = most[who]!;
    let far = own;
    for (const r of list) {
      const rate = sign * values[r]!;
      const j = head[r]!;
      if (rate > EPS) far = Math.min(far, (x[j]! + give) / rate);
      else if (rate < -EPS) far = Math.min(far, (most[j]! - x[j]! + give) / -rate);
    }
    let [stop, step, merit] = [-1, own, Number.NEGATIVE_INFINITY];
    if (far < own || own === Number.POSITIVE_INFINITY)
      for (const r of list) {
        const rate = sign * values[r]!;
        const j = head[r]!;
        if (Math.abs(rate) <= EPS) continue;
        const reach = Math.max(0, (rate > 0 ? x[j]! : most[j]! - x[j]!) / Math.abs(rate));
        const better = byNumber ? -j : Math.abs(rate);
        if (reach <= far && better > merit) [stop, step, merit] = [r, reach, better];
      }
    if (step === Number.POSITIVE_INFINITY)
      throw new CalculationError('no-solution', 'linear programme: the objective has no upper end', {
        method: 'simplex method',
        values: {},
      });
    for (const r of list) {
      const j = head[r]!;
      x[j] = Math.min(Math.max(0, x[j]! - sign * step * values[r]!), most[j]!);
    }
    x[who] = stop < 0 ? (sign > 0 ? own : 0) : Math.min(Math.max(0, x[who]! + sign * step), own);
    if (stop < 0) return step;
    const leaves = head[stop]!;
    x[leaves] = sign * values[stop]! > 0 ? 0 : most[leaves]!;
    isBasic[leaves] = 0;
    isBasic[who] = 1;
    basis.change(stop, who, ahead);
    moved = true;
    if (basis.heavy()) {
      if (++factored >= SETTLE) settle();
      else refactor();
    }
    return step;
  };

  const climb = (costs: Float64Array, within: readonly number[]): void => {
    const patience = 50 + m;
    const limit = 200 * (m + n + 10);
    let idle = 0;
    free = within.filter((j) => !fixed[j] && most[j]! > 0);
    cursor = 0;
    candidates = [];
    for (let steps = 0; ; steps++) {
      if (pulse && steps % PULSE === PULSE - 1) pulse();
      const byNumber = idle > patience; // after many steps without gain: the rule that cannot go round in a circle
      findPrices(costs);
      const who = entering(costs, byNumber);
      if (who === undefined) break;
      if (steps > limit)
        throw new CalculationError('not-converged', `simplex method: no optimum after ${steps} steps`, {
          method: 'simplex method',
          iterations: steps,
          residual: Math.max(0, ...busy.map((r) => -prices[r]!)),
        });
      idle = pivot(who, byNumber) > 1e-11 ? 0 : idle + 1;
    }
    if (moved) settle();
    moved = false;
  };

  const all = Array.from({ length: width }, (_, j) => j);
  /** Climbs to the maximum, and stays there from then on. */
  const improve = (costs: Float64Array): void => {
    climb(costs, used < width ? all.slice(0, used) : all);
    findPrices(costs);
    for (const j of free) if (!isBasic[j] && Math.abs(reducedCost(j, costs)) > EPS) fixed[j] = 1;
    for (const r of busy) if (!isBasic[width + r] && prices[r]! > EPS) fixed[width + r] = 1;
  };

  return {
    fill(order, gains) {
      for (const j of order) filled.push(j);
      for (const j of order) {
        const { at, values } = columns;
        let [step, stop] = [most[j]!, -1];
        for (let k = starts[j]!; k < starts[j + 1]! && step > 0; k++) {
          if (head[at[k]!] !== width + at[k]!)
            step = 0; // tight already
          else if (values[k]! < 0)
            step = 0; // rows of differences are left to the method
          else if (x[width + at[k]!]! / values[k]! < step) {
            step = x[width + at[k]!]! / values[k]!;
            stop = at[k]!;
          }
        }
        if (step <= EPS || isBasic[j] || x[j]! > 0) continue;
        for (let k = starts[j]!; k < starts[j + 1]!; k++)
          x[width + at[k]!] = Math.max(0, x[width + at[k]!]! - values[k]! * step);
        x[j] = step;
        if (stop < 0) continue;
        x[width + stop] = 0;
        isBasic[width + stop] = 0;
        isBasic[j] = 1;
        head[stop] = j;
      }
      settle();
      const costs = new Float64Array(width);
      for (const j of filled) costs[j] = gains[j]!;
      climb(costs, filled);
    },
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
      let open = which.map((row, k) => ({ row, weight: weights[k]! })).filter(({ row }) => !fixed[width + row]);
      while (open.length > 0) {
        if (used === width) throw new RangeError('more levels than were provided for');
        const level = used++;
        append(columns, level, open);
        const costs = new Float64Array(width);
        costs[level] = 1;
        improve(costs);
        const left = open.filter(({ row }) => !fixed[width + row]);
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

/** The rows column by column; those that come later are empty. */
function columnsOf(width: number, rows: readonly Row[]): Columns {
  const starts = new Int32Array(width + 1);
  for (const { variables, coefficients } of rows)
    for (let k = 0; k < variables.length; k++)
      if (coefficients[k] !== 0) starts[variables[k]! + 1] = starts[variables[k]! + 1]! + 1;
  for (let j = 0; j < width; j++) starts[j + 1] = starts[j + 1]! + starts[j]!;
  const next = starts.slice();
  const [at, values] = [new Int32Array(starts[width]!), new Float64Array(starts[width]!)];
  rows.forEach(({ variables, coefficients }, r) => {
    for (let k = 0; k < variables.length; k++) {
      if (coefficients[k] === 0) continue;
      const place = next[variables[k]!]!++;
      at[place] = r;
      values[place] = coefficients[k]!;
    }
  });
  return { starts, at, values };
}

/** Writes a column after all those that are not empty. */
function append(columns: Columns, j: number, entries: readonly { readonly row: number; readonly weight: number }[]) {
  const { starts } = columns;
  const [begin, end] = [starts[j]!, starts[j]! + entries.length];
  const [at, values] = [new Int32Array(end), new Float64Array(end)];
  at.set(columns.at.subarray(0, begin));
  values.set(columns.values.subarray(0, begin));
  entries.forEach(({ row, weight }, k) => {
    at[begin + k] = row;
    values[begin + k] = weight;
  });
  [columns.at, columns.values] = [at, values];
  starts.fill(end, j + 1);
}

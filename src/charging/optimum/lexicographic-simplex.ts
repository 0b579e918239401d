import { CalculationError } from '../../units/index.js';

/** A row `Σ coefficient · variable ≤ most`, with `most` not negative: everything at zero is a solution. */
export interface Row {
  /** Variables. */
  readonly variables: ArrayLike<number>;
  /** Their coefficients. */
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

const EPS = 1e-9;

/**
 * A linear programme with bounded variables, solved by the primal simplex method on a dense tableau. Objectives follow
 * one another without starting again: after each, columns that would lower it may not enter any more. For the hundreds
 * of rows of a night's schedule or of a site with a limit on unbalance, not for a depot.
 * @param upper largest value of each variable; the smallest is 0
 * @param rows constraints
 * @param levels how many times a level may be raised
 */
export function programme(upper: ArrayLike<number>, rows: readonly Row[], levels = 0): Programme {
  const n = upper.length;
  const m = rows.length;
  const width = n + m + levels;
  const table = new Float64Array(m * width);
  const right = new Float64Array(m);
  const basis = new Int32Array(m);
  const most = new Float64Array(width).fill(Number.POSITIVE_INFINITY);
  const flipped = new Uint8Array(width); // the variable stands for its distance from its upper bound
  const basic = new Uint8Array(width);
  const barred = new Uint8Array(width);
  const nonzero = new Int32Array(width);
  let used = n + m;

  for (let j = 0; j < n; j++) most[j] = upper[j]!;
  rows.forEach((row, r) => {
    for (let k = 0; k < row.variables.length; k++) {
      const at = r * width + row.variables[k]!;
      table[at] = table[at]! + row.coefficients[k]!;
    }
    table[r * width + n + r] = 1;
    right[r] = row.most;
    basis[r] = n + r;
    basic[n + r] = 1;
  });

  const flipColumn = (j: number, reduced: Float64Array) => {
    for (let r = 0; r < m; r++) {
      const a = table[r * width + j]!;
      if (a === 0) continue;
      right[r] = right[r]! - a * most[j]!;
      table[r * width + j] = -a;
    }
    reduced[j] = -reduced[j]!;
    flipped[j] = 1 - flipped[j]!;
  };

  /** A basic variable leaves at its upper bound: from now on it is counted from there. */
  const flipBasic = (r: number) => {
    const j = basis[r]!;
    for (let k = 0; k < used; k++) table[r * width + k] = -table[r * width + k]!;
    table[r * width + j] = 1;
    right[r] = most[j]! - right[r]!;
    flipped[j] = 1 - flipped[j]!;
  };

  const pivot = (r: number, j: number, reduced: Float64Array) => {
    const own = r * width;
    const scale = table[own + j]!;
    let count = 0;
    for (let k = 0; k < used; k++) {
      const a = table[own + k]!;
      if (a === 0) continue;
      table[own + k] = a / scale;
      nonzero[count++] = k;
    }
    right[r] = right[r]! / scale;
    const lower = (target: Float64Array, at: number, factor: number) => {
      for (let q = 0; q < count; q++) {
        const k = nonzero[q]!;
        const value = target[at + k]! - factor * table[own + k]!;
        target[at + k] = Math.abs(value) < 1e-13 ? 0 : value;
      }
      target[at + j] = 0;
    };
    for (let s = 0; s < m; s++) {
      const factor = table[s * width + j]!;
      if (s === r || factor === 0) continue;
      lower(table, s * width, factor);
      const value = right[s]! - factor * right[r]!;
      right[s] = Math.abs(value) < 1e-11 ? 0 : value;
    }
    lower(reduced, 0, reduced[j]!);
    table[own + j] = 1;
    basic[basis[r]!] = 0;
    basic[j] = 1;
    basis[r] = j;
  };

  const reducedCosts = (costs: Float64Array): Float64Array => {
    const reduced = new Float64Array(width);
    for (let j = 0; j < used; j++) reduced[j] = flipped[j] ? -costs[j]! : costs[j]!;
    const own = reduced.slice();
    for (let r = 0; r < m; r++) {
      const c = own[basis[r]!]!;
      if (c !== 0) for (let k = 0; k < used; k++) reduced[k] = reduced[k]! - c * table[r * width + k]!;
    }
    return reduced;
  };

  /** Row that stops the entering variable first, and how far it gets. */
  const ratioTest = (j: number, byNumber: boolean) => {
    let [row, step, size, atUpper] = [-1, most[j]!, 0, false];
    for (let r = 0; r < m; r++) {
      const a = table[r * width + j]!;
      if (Math.abs(a) < EPS) continue;
      const up = most[basis[r]!]!;
      if (a < 0 && up === Number.POSITIVE_INFINITY) continue;
      const ratio = Math.max(0, a > 0 ? right[r]! / a : (right[r]! - up) / a);
      const nearer = ratio < step - 1e-12;
      const tie = row >= 0 && ratio <= step + 1e-12;
      if (!nearer && !(tie && (byNumber ? basis[r]! < basis[row]! : Math.abs(a) > size))) continue;
      [row, step, size, atUpper] = [r, Math.min(ratio, nearer ? ratio : step), Math.abs(a), a < 0];
    }
    return { row, step, atUpper };
  };

  const improve = (costs: Float64Array): void => {
    const reduced = reducedCosts(costs);
    let idle = 0;
    const patience = 20 + m;
    for (let steps = 0; ; steps++) {
      const byNumber = idle > patience; // after many steps without gain: the rule that cannot go round in a circle
      let enter = -1;
      for (let j = 0; j < used; j++) {
        if (basic[j] || barred[j] || reduced[j]! <= EPS) continue;
        if (enter < 0 || reduced[j]! > reduced[enter]!) enter = j;
        if (byNumber) break;
      }
      if (enter < 0) break;
      if (steps > 200 * (m + n + 10))
        throw new CalculationError('not-converged', `simplex method: no optimum after ${steps} steps`, {
          method: 'simplex method',
          iterations: steps,
          residual: reduced[enter]!,
        });
      const { row, step, atUpper } = ratioTest(enter, byNumber);
      if (step === Number.POSITIVE_INFINITY)
        throw new CalculationError('no-solution', 'linear programme: the objective has no upper end', {
          method: 'simplex method',
          values: {},
        });
      idle = step > 1e-11 ? 0 : idle + 1;
      if (row < 0) flipColumn(enter, reduced);
      else {
        if (atUpper) flipBasic(row);
        pivot(row, enter, reduced);
      }
    }
    for (let j = 0; j < used; j++) if (!basic[j] && reduced[j]! < -EPS) barred[j] = 1;
  };

  const valuesNow = (): Float64Array => {
    const x = new Float64Array(width);
    for (let r = 0; r < m; r++) x[basis[r]!] = right[r]!;
    for (let j = 0; j < used; j++) if (flipped[j]) x[j] = most[j]! - x[j]!;
    return x;
  };

  return {
    maximise(objective) {
      const costs = new Float64Array(width);
      for (let j = 0; j < n; j++) costs[j] = objective[j]!;
      improve(costs);
      const x = valuesNow();
      let sum = 0;
      for (let j = 0; j < n; j++) sum += costs[j]! * x[j]!;
      return sum;
    },
    raiseLevels(which, weights) {
      let open = which.map((row, k) => ({ row, weight: weights[k]! })).filter(({ row }) => !barred[n + row]);
      while (open.length > 0) {
        if (used === width) throw new RangeError('more levels than were provided for');
        const level = used++;
        for (const { row, weight } of open)
          for (let r = 0; r < m; r++)
            table[r * width + level] = table[r * width + level]! + weight * table[r * width + n + row]!;
        const costs = new Float64Array(width);
        costs[level] = 1;
        improve(costs);
        const left = open.filter(({ row }) => !barred[n + row]);
        // the dual values of the rows that are in the way sum to one: at least one is fixed each time
        if (left.length === open.length)
          throw new CalculationError('not-converged', 'levels: no row stands in the way', {
            method: 'lexicographic simplex method',
            iterations: used - n - m,
            residual: 0,
          });
        open = left;
      }
    },
    solution: () => valuesNow().slice(0, n),
  };
}

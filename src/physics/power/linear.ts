import { type Complex, complex, divide, magnitude, multiply, subtract } from '../complex.js';

/** @internal A system of complex linear equations that is factored once and solved for many right sides. */
export type Solve = (right: readonly Complex[]) => readonly Complex[];

/**
 * @internal Factors a square matrix by Gauss with row exchange.
 * @param matrix the rows; they are overwritten
 * @returns what solves for a right side, or undefined where the matrix has no inverse to working accuracy
 */
export function factored(matrix: Complex[][]): Solve | undefined {
  const n = matrix.length;
  const order = matrix.map((_, i) => i);
  const largest = matrix.map((row) => Math.max(...row.map(magnitude)));
  const at = (i: number, j: number) => (matrix[i] as Complex[])[j] as Complex;
  for (let k = 0; k < n; k++) {
    let best = k;
    for (let i = k + 1; i < n; i++) if (magnitude(at(i, k)) > magnitude(at(best, k))) best = i;
    for (const list of [matrix, order, largest] as unknown[][]) [list[k], list[best]] = [list[best], list[k]];
    if (!(magnitude(at(k, k)) > 1e-13 * (largest[k] as number))) return undefined;
    for (let i = k + 1; i < n; i++) {
      if (at(i, k).re === 0 && at(i, k).im === 0) continue;
      const row = matrix[i] as Complex[];
      const factor = divide(at(i, k), at(k, k));
      row[k] = factor;
      for (let j = k + 1; j < n; j++) row[j] = subtract(at(i, j), multiply(factor, at(k, j)));
    }
  }
  return (right) => {
    const x = order.map((i) => right[i] as Complex);
    for (let i = 0; i < n; i++)
      for (let j = 0; j < i; j++) x[i] = subtract(x[i] as Complex, multiply(at(i, j), x[j] as Complex));
    for (let i = n - 1; i >= 0; i--) {
      for (let j = i + 1; j < n; j++) x[i] = subtract(x[i] as Complex, multiply(at(i, j), x[j] as Complex));
      x[i] = divide(x[i] as Complex, at(i, i));
    }
    return x;
  };
}

/** @internal A matrix of noughts. */
export const noughts = (n: number): Complex[][] =>
  Array.from({ length: n }, () => Array.from({ length: n }, () => complex(0)));

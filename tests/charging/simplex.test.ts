import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { programme, type Row } from '../../src/charging/optimum/lexicographic-simplex.js';
import { hasCode } from '../../src/index.js';
import { seedOf } from '../support/seed.js';
import { maximum } from './solver.js';

const number = (min: number, max: number) => fc.integer({ min: 10 * min, max: 10 * max }).map((x) => x / 10);

/** Programmes with coefficients of both signs, many zeros on the right, and two objectives. */
const programmes = fc
  .record({ n: fc.integer({ min: 1, max: 12 }), m: fc.integer({ min: 1, max: 14 }) })
  .chain(({ n, m }) =>
    fc.record({
      upper: fc.array(fc.oneof(number(0, 20), fc.constant(0)), { minLength: n, maxLength: n }),
      table: fc.array(
        fc.array(fc.oneof({ weight: 2, arbitrary: fc.constant(0) }, number(-3, 5)), { minLength: n, maxLength: n }),
        { minLength: m, maxLength: m },
      ),
      right: fc.array(fc.oneof(number(0, 30), fc.constant(0)), { minLength: m, maxLength: m }),
      first: fc.array(number(-5, 5), { minLength: n, maxLength: n }),
      second: fc.array(number(-5, 5), { minLength: n, maxLength: n }),
    }),
  );

const rowsOf = (table: readonly (readonly number[])[], right: readonly number[]): Row[] =>
  table.map((coefficients, r) => ({ variables: coefficients.map((_, j) => j), coefficients, most: right[r]! }));

type Drawn = typeof programmes extends fc.Arbitrary<infer P> ? P : never;

/** Two objectives, one after the other, against a general solver from outside this project. */
function expectOptima({ upper, table, right, first, second }: Drawn): void {
  const rows = rowsOf(table, right);
  const lp = programme(upper, rows);
  const one = lp.maximise(first);
  const two = lp.maximise(second);
  const x = lp.solution();
  x.forEach((value, j) => {
    expect(value).toBeGreaterThanOrEqual(0);
    expect(value).toBeLessThanOrEqual(upper[j]!);
  });
  const dot = (a: readonly number[]) => a.reduce((sum, c, j) => sum + c * x[j]!, 0);
  table.forEach((row, r) => {
    expect(dot(row)).toBeLessThanOrEqual(right[r]! + 1e-9);
  });
  expect(dot(first)).toBeCloseTo(one, 7);
  expect(dot(second)).toBeCloseTo(two, 7);
  const least = upper.map(() => 0);
  const who = [...upper.keys()];
  const same = rows.map((row) => ({ who, by: [...(row.coefficients as number[])], to: row.most }));
  const best = maximum({ objective: first, least, most: upper, rows: same })!.value;
  expect(one).toBeCloseTo(best, 6);
  /** The second objective where the first may fall short by so much: what it costs may be ten thousand times as much. */
  const short = (by: number) =>
    maximum({ objective: second, least, most: upper, rows: [...same, { who, by: first, from: best - by }] })!.value;
  expect(Math.abs(two - (2 * short(1e-8) - short(2e-8)))).toBeLessThan(1e-5);
}

describe('the simplex method on the limits that bind', () => {
  test('finds the optimum of 1,000 random programmes, and of a second objective on what the first leaves', () => {
    fc.assert(fc.property(programmes, expectOptima), { numRuns: 1000, seed: seedOf(51), endOnFailure: true });
  });

  test('finds the second where a hair of the first is worth ten thousand of it', () => {
    expectOptima({
      upper: [6.7, 15.2, 15.5, 0, 0, 6.8, 4.7, 0, 8.1, 0, 0, 14.8],
      table: [
        [0, 0, -2.6, 0, 0.3, 0, -0.9, 0, 0, 3.4, 0, -0.8],
        [3.2, 0.5, 0.2, 0, 4.8, 0, -2.7, 0, 0, 4.1, 0, 0],
        [0, 0.2, 0, 0, 0, 0, 4.9, 0, 0, -2.7, 0, 0],
        [0, 0, 0.5, 0, -1.8, 0, 0, 1.1, -0.9, 0, -2.4, 0.4],
        [1, -2.6, 3.5, 0.5, -1.5, 0, 0.5, 0, 4.4, 0, 0, 0.4],
      ],
      right: [7, 0, 2.8, 12.2, 0],
      first: [3, 0.3, 0.3, 3.7, 2.6, -2.8, -5, 0.1, -4.8, -0.4, -4.5, 0.1],
      second: [-0.4, -4.9, 0, -4.9, 0.3, 4.4, 0.2, -1.8, -5, 0.7, 0.1, -0.7],
    });
  });

  test('an assignment, whose optima are all degenerate', () => {
    const size = 9;
    const value = (i: number, j: number) => ((i * 7 + j * 13) % 11) + (i === j ? 3 : 0);
    const variables = Array.from({ length: size * size }, (_, k) => k);
    const rows = [...Array(size).keys()].flatMap((i): Row[] => [
      { variables: variables.filter((k) => Math.floor(k / size) === i), coefficients: Array(size).fill(1), most: 1 },
      { variables: variables.filter((k) => k % size === i), coefficients: Array(size).fill(1), most: 1 },
    ]);
    const objective = variables.map((k) => value(Math.floor(k / size), k % size));
    const found = programme(Array(size * size).fill(1), rows).maximise(objective);
    const best = maximum({
      objective,
      least: variables.map(() => 0),
      most: variables.map(() => 1),
      rows: rows.map((r) => ({
        who: [...(r.variables as number[])],
        by: [...(r.coefficients as number[])],
        to: r.most,
      })),
    });
    expect(found).toBeCloseTo(best!.value, 9);
  });

  test('an objective without upper end is an error', () => {
    try {
      programme([Number.POSITIVE_INFINITY], []).maximise([1]);
    } catch (error) {
      expect(hasCode(error, 'no-solution')).toBe(true);
      return;
    }
    throw new Error('nothing was thrown');
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Line } from '../../src/index.js';
import { placeOnLines } from '../../src/site/index.js';

const all = ['L1', 'L2', 'L3'] as const;
type Item = Parameters<typeof placeOnLines>[1][number];
const sumsOf = (base: readonly number[], items: readonly Item[], lines: readonly Line[]) =>
  all.map((line, k) => items.reduce((sum, item, i) => sum + (lines[i] === line ? item.current : 0), base[k] as number));
const worst = (sums: readonly number[]) => Math.max(...sums);
const spread = (sums: readonly number[]) => Math.max(...sums) - Math.min(...sums);

/** Every placement there is. */
function* every(items: readonly Item[], i = 0): Generator<readonly Line[]> {
  if (i === items.length) yield [];
  else for (const rest of every(items, i + 1)) for (const line of items[i]?.may ?? all) yield [line, ...rest];
}

const drawn = fc.record({
  current: fc.constantFrom(6, 10, 16, 20, 25, 32, 13.7),
  on: fc.constantFrom(...all),
  free: fc.constantFrom<readonly Line[] | undefined>(undefined, ['L1', 'L2'], ['L2', 'L3']),
});
const base = fc.tuple(...all.map(() => fc.integer({ min: 0, max: 80 }))) as fc.Arbitrary<[number, number, number]>;
const items = (most: number) =>
  fc.array(drawn, { minLength: 1, maxLength: most }).map((list) =>
    list.map(({ current, on, free }, i): Item => {
      const may = free && (free.includes(on) ? free : [...free, on]);
      return { id: `${i}`, current, on, ...(may ? { may } : {}) };
    }),
  );

describe('points and loads on lines', () => {
  test('are as level as they can be, by every placement of up to seven', () => {
    fc.assert(
      fc.property(base, items(7), (b, list) => {
        const found = placeOnLines(b, list);
        expect(found.proven).toBe(true);
        const sums = [...every(list)].map((lines) => sumsOf(b, list, lines));
        const least = Math.min(...sums.map(worst));
        expect(worst(found.currents)).toBeCloseTo(least, 6);
        const level = Math.min(...sums.filter((s) => worst(s) <= least + 1e-6).map(spread));
        expect(found.unbalance).toBeCloseTo(level, 5);
      }),
      { numRuns: 40 },
    );
  });
  test('are never worse than they were, where they may go, and their currents are those that are told', () => {
    fc.assert(
      fc.property(base, items(30), (b, list) => {
        const found = placeOnLines(b, list);
        const given = sumsOf(
          b,
          list,
          list.map((i) => i.on),
        );
        expect(worst(found.currents)).toBeLessThanOrEqual(worst(given) + 1e-6);
        for (const { id, may } of list) expect(may ?? all).toContain(found.lines[id]);
        const own = sumsOf(
          b,
          list,
          list.map((i) => found.lines[i.id] as Line),
        );
        for (const [k, s] of own.entries()) expect(found.currents[k]).toBeCloseTo(s, 6);
        expect(found.moved).toEqual(list.filter((i) => found.lines[i.id] !== i.on).map((i) => i.id));
      }),
      { numRuns: 30 },
    );
  });
  // 200 of 32 A: 67, 67 and 66 on the lines, 67 x 32 = 2144 A
  test('two hundred alike are level, and proven', () => {
    const bays = Array.from({ length: 200 }, (_, i): Item => ({ id: `${i}`, current: 32, on: 'L1' }));
    const { currents, proven, moved } = placeOnLines([0, 0, 0], bays);
    expect([...currents].sort()).toEqual([2112, 2144, 2144]);
    expect(proven).toBe(true);
    expect(moved.length).toBe(133);
  });
  test('what is level already stays', () => {
    const two: readonly Item[] = [
      { id: 'a', current: 32, on: 'L3' },
      { id: 'b', current: 32, on: 'L1' },
    ];
    expect(placeOnLines([0, 40, 0], two).moved).toEqual([]);
  });
  test('wrong input names all that is wrong', () => {
    const wrong = [{ id: 'a', current: -1, on: 'L4' as 'L1' }];
    expect(() => placeOnLines([0, Number.NaN, 0], wrong)).toThrow(/base[\s\S]*current[\s\S]*on/);
  });
});

import { describe, expect, it } from 'vitest';
import type { Axis, Table } from '../../src/core/index.js';
import { CalculationError } from '../../src/units/index.js';
import { definitions } from '../../src/verify/definitions.js';

const labels = (axis: Axis | undefined): axis is Extract<Axis, { labels: unknown }> =>
  axis !== undefined && 'labels' in axis;
type Keys = Parameters<Table['find']>[0];

function keysOf(table: Table, column: readonly (string | number)[], row: string | number): Keys {
  const at = [...column, row];
  return Object.fromEntries(table.axes.map((axis, i) => [axis.name, at[i]])) as unknown as Keys;
}

describe('every table, by its look-up', () => {
  it.each(definitions.tables.map((t) => [t.id, t] as const))(
    '%s: every printed cell is found, and no other',
    (_, t) => {
      let found = 0;
      for (const row of t.rows)
        for (const [c, column] of t.columns.entries()) {
          const value = t.find(keysOf(t, column, row[0] as string | number));
          const printed = row[c + 1];
          if (typeof printed !== 'number') expect(value).toBeUndefined();
          else {
            expect(value).toBe(printed / (t.per ?? 1));
            found++;
          }
        }
      expect(found).toBeGreaterThan(0);
    },
  );

  it.each(definitions.tables.map((t) => [t.id, t] as const))('%s: nothing is read beyond its ends', (_, t) => {
    const row = t.rows[0]?.[0] as string | number;
    const column = t.columns[0] ?? [];
    for (const [i, axis] of t.axes.entries()) {
      const keys: Record<string, unknown> = { ...keysOf(t, column, row) };
      if (labels(axis)) keys[axis.name] = 'no such label';
      else {
        const offered = t.offers(axis.name) as readonly number[];
        keys[axis.name] = (offered.at(-1) as number) + 1e-6;
        expect(t.find(keys as unknown as Keys)).toBeUndefined();
        for (const no of [Number.NaN, Number.POSITIVE_INFINITY])
          expect(t.find({ ...keys, [axis.name]: no } as unknown as Keys)).toBeUndefined();
        keys[axis.name] = (offered[0] as number) - 1e-6;
        if (axis.below === 'first') {
          expect(t.find(keys as unknown as Keys)).toBe(t.find(keysOf(t, column, row)));
          continue;
        }
      }
      expect(t.find(keys as unknown as Keys), `${axis.name} ${i}`).toBeUndefined();
      // the refusal lists what there is
      const error = t.explain(keys as unknown as Keys);
      expect(error).toBeInstanceOf(CalculationError);
      expect(error.code).toBe('no-cell');
      expect(() => t.get(keys as unknown as Keys)).toThrow(error.message);
    }
  });

  it.each(definitions.tables.map((t) => [t.id, t] as const))('%s: between two numbers as the axis says', (_, t) => {
    const last = t.axes.at(-1);
    if (labels(last) || last === undefined) return;
    const at = t.rows.map((r) => r[0] as number).sort((a, b) => a - b);
    for (const [i, upper] of at.slice(1).entries()) {
      const lower = at[i] as number;
      for (const column of t.columns) {
        const [a, b, between] = [lower, upper, (lower + upper) / 2].map((x) => t.find(keysOf(t, column, x)));
        if (last.between === 'exact') expect(between).toBeUndefined();
        else if (last.between === 'next-up') expect(between).toBe(b);
        else if (a !== undefined && b !== undefined) expect(between).toBeCloseTo((a + b) / 2, 10);
      }
    }
  });
});

import { describe, expect, test } from 'vitest';
import type { AnnexDColumn } from '../../../src/codes/iec60364/annex-d.js';
import { tableB522, tableB5210 } from '../../../src/codes/iec60364/definitions.js';
import { annexDCapacity } from '../../../src/codes/iec60364/index.js';
import { squareMillimetres } from '../../../src/units/index.js';
import { lawInstances } from './annex-d.data.js';

// tabulated cells that the law misses after rounding
const missed = new Map([['B.52.2 copper A1, 240', 320]]);

describe.each(lawInstances)('%s', (column, points) => {
  test.each(points)('%d mm²', (size, unrounded, cell) => {
    const { computed, printed } = annexDCapacity(column as AnnexDColumn, squareMillimetres(size ?? 0));
    expect(Math.abs(computed / (unrounded ?? 0) - 1)).toBeLessThan(1e-9);
    expect(printed).toBe(missed.get(`${column}, ${size}`) ?? cell);
  });
});

test('between the sizes of the table it lies between its cells', () => {
  const at = (s: number) => annexDCapacity('B.52.10 copper G_3c_flat_spaced_vertical', squareMillimetres(s)).printed;
  const cell = (s: number) =>
    tableB5210.get({ method: 'G', loaded: '3', formation: 'spaced-vertical', conductorArea: squareMillimetres(s) });
  expect(at(60)).toBeGreaterThan(cell(50));
  expect(at(60)).toBeLessThan(cell(70));
  expect(annexDCapacity('B.52.2 copper C', squareMillimetres(7)).printed).toBeGreaterThan(
    tableB522.get({ material: 'copper', method: 'C', conductorArea: squareMillimetres(6) }),
  );
});

test.each([
  ['B.52.2 copper B1', 150, { least: 1.5, most: 120 }], // the print leaves the law
  ['B.52.2 copper A1', 400, { least: 1.5, most: 300 }],
  ['B.52.10 copper F_2c_touching', 800, { least: 1.5, most: 630 }],
  ['B.52.4 aluminium C', 1, { least: 1.5, most: 300 }],
] as const)('%s refuses %d mm²', (column, size, bounds) => {
  expect(() => annexDCapacity(column, squareMillimetres(size))).toThrow(
    expect.objectContaining({ code: 'out-of-range', detail: expect.objectContaining({ value: size, bounds }) }),
  );
});

test('a column without a law says which have one', () => {
  expect(() => annexDCapacity('B.52.2 copper D2' as AnnexDColumn, squareMillimetres(6))).toThrow(
    expect.objectContaining({ code: 'no-cell', message: expect.stringContaining('B.52.2 copper D1') }),
  );
});

import { expect, test } from 'vitest';
import { type FactorRange, groupFactors, soilFactors } from './ground-factors.js';

/** By how much a printed factor lies outside what is computed for small and large cables; above it is positive. */
const outside = ({ printed, least, most }: FactorRange) =>
  printed > most ? printed - most : printed < least ? printed - least : 0;
const count = (f: FactorRange) => Number(f.cell.split(', ')[1]);

test('group factors of cables in the ground: images of equal losses come within 0.04 of every one up to nine circuits', () => {
  const upToNine = groupFactors().filter((f) => count(f) <= 9);
  expect(upToNine).toHaveLength(40);
  expect(upToNine.filter((f) => Math.abs(outside(f)) > 0.04)).toEqual([]);
});

test('of larger groups the print is the lower one, by up to 0.05', () => {
  const larger = groupFactors().filter((f) => count(f) > 9);
  expect(larger).toHaveLength(15);
  expect(larger.filter((f) => outside(f) > 0 || outside(f) < -0.05)).toEqual([]);
});

test('soil factors come within 0.04 of the range from small to large cables', () => {
  const all = soilFactors();
  expect(all).toHaveLength(7);
  expect(all.filter((f) => Math.abs(outside(f)) > 0.04)).toEqual([]);
});

test('in good soil the one printed factor grants small cables more than the balance does', () => {
  const [best] = soilFactors();
  expect(best?.cell).toBe('iec60364/b.52.16 direct, 0.5');
  expect((best?.printed ?? 0) / (best?.least ?? 1)).toBeGreaterThan(1.1);
});

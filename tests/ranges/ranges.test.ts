/** What is said over ranges against values inside; `npm run ranges` tries more of them. */
import { expect, test } from 'vitest';
import { seedOf } from '../support/seed.js';
import { tried } from './cases.js';

test('the verdict over ranges bounds every value inside', () => {
  const { compared, samples, decided, found } = tried(250, seedOf(20_261_201));
  expect(found).toEqual([]);
  expect(compared).toBeGreaterThan(150);
  expect(samples).toBeGreaterThan(3000);
  // neither is everything left open
  expect(decided).toBeGreaterThan(compared / 3);
});

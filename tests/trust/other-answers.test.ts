import { expect, it } from 'vitest';
import { seedOf } from '../support/seed.js';
import { answersOf, type Of } from './other-answers.js';

const shares: readonly (readonly [Of, number])[] = [
  ['the cheapest circuit', 90],
  ['what is permitted', 120],
  ['what charge points share', 4000],
  ['whom to tell', 1500],
  ['the demand', 1500],
];

it.each(shares)(
  '%s is no better of what nobody knows, or that is worse: %i cases',
  (of, count) => {
    const { compared, found } = answersOf(of, count, seedOf(43));
    expect(found).toEqual([]);
    expect(compared).toBeGreaterThan(count / 2);
  },
  600_000,
);

import { describe, expect, it } from 'vitest';
import { type Kind, openArrangements, tried } from './cases.js';

const shares: readonly (readonly [Kind, number])[] = [
  ['one fact', 1300],
  ['two facts', 400],
  ['a worse value', 300],
];

describe('absence is never favourable', () => {
  it.each(shares)(
    'what is said of %s that nobody knows, or that is worse, is no better: %i cases',
    (kind, count) => {
      const { compared, violations } = tried(kind, count, 41);
      expect(violations).toEqual([]);
      expect(compared).toBeGreaterThan(count / 5);
    },
    600_000,
  );

  it('an arrangement that a designer leaves open is that of the device built in', () => {
    const both = openArrangements();
    expect(both.length).toBeGreaterThan(20);
    for (const [left, stated] of both) expect(left).toEqual(stated);
  }, 600_000);
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { seedOf } from '../support/seed.js';
import { inFaults, inRamps } from './control-promise.js';
import { worlds } from './control-worlds.js';

/** How many networks are drawn; more in a command of their own, whose record is `docs/control.md`. */
const runs = 60;

describe('meter faults, clocks that jump, points without link, vehicles that ignore their commands, ramps', () => {
  test.each([
    ['every point says what it draws', false],
    ['some do not', true],
  ])(
    'the excess is never above what is promised, and sharing comes back in the time that is promised: %s',
    (_, unread) => {
      let excess = 0;
      let safe = 0;
      fc.assert(
        fc.property(worlds({ unread }), (world) => {
          const kept = inFaults(world);
          expect(kept.broken).toBeUndefined();
          if (kept.excess) excess++;
          if (kept.safe) safe++;
        }),
        { numRuns: runs, seed: seedOf(21) },
      );
      // it is looked at where something goes wrong, not where nothing ever does
      expect(excess).toBeGreaterThan(runs / 20);
      expect(safe).toBeGreaterThan(runs / 20);
    },
  );
});

test('a load that rises: excess, its time at each height, and its heat are bounded by the rises and the time', () => {
  let seen = 0;
  fc.assert(
    fc.property(worlds({ unread: false, calm: true }), (world) => {
      const kept = inRamps(world);
      expect(kept.broken).toBeUndefined();
      if (kept.excess) seen++;
    }),
    { numRuns: runs, seed: seedOf(22) },
  );
  expect(seen).toBeGreaterThan(runs / 20);
});

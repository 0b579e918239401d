import { expect, it } from 'vitest';
import { runSlice } from './slice.js';

it('random and mutated surveys end in typed errors or in plans and reports that keep every promise', () => {
  const { ended, breaches } = runSlice(1, 0, 280);
  expect(breaches).toEqual([]);
  // the cases reach both sides of the door
  const some = (what: string) => Object.entries(ended).reduce((sum, [k, n]) => sum + (k.startsWith(what) ? n : 0), 0);
  expect(some('planned')).toBeGreaterThan(50);
  expect(some('refused: invalid-input')).toBeGreaterThan(50);
});

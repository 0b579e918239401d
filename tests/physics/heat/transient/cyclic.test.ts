import { expect, test } from 'vitest';
import { exponentialIntegral } from '../../../../src/physics/heat/transient/exponential-integral.js';
import { expectPublished } from '../../../support/expect-published.js';
import { cases } from './cyclic.cases.js';

test.each(cases.map((c) => [c.id, c] as const))('%s', (_, c) => expectPublished(c));

// Abramowitz and Stegun, Handbook of Mathematical Functions, tables 5.1 and 5.2
test.each([
  [0.1, 1.8229239584],
  [0.5, 0.5597735948],
  [1, 0.2193839344],
  [2, 0.0489005107],
  [5, 0.0011482956],
  [10, 4.1569689e-6],
])('E_1(%d)', (x, printed) => {
  expect(exponentialIntegral(x) / printed).toBeCloseTo(1, 7);
});

import { expect, test } from 'vitest';
import { metres, millimetres, ratio, squareMetresPerSecond } from '../../../../src/index.js';
import { cyclicFactorOf } from '../../../../src/physics/heat/definitions.js';
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

// daily curve of Engineering Recommendation P17 part 3, as reproduced in a public repository, of its peak; its factor of
// 1.13 for distribution cables direct in the ground is recalled, and for no cable in particular: the order of size is compared
test('cables of low voltage by the daily curve of British distribution networks come near the factor that is used there', () => {
  const load = [
    1, 0.97, 0.94, 0.87, 0.71, 0.56, 0.45, 0.28, 0.33, 0.44, 0.57, 0.65, 0.74, 0.75, 0.61, 0.61, 0.61, 0.61, 0.61, 0.62,
    0.73, 0.84, 0.92, 0.99,
  ];
  for (const [diameter, depth] of [
    [35, 0.45],
    [50, 0.5],
    [60, 0.6],
  ] as const) {
    const body = {
      diameter: millimetres(diameter),
      depth: metres(depth),
      diffusivity: squareMetresPerSecond(5e-7),
      soilShare: ratio(0.8),
    };
    expect(Math.abs(cyclicFactorOf({ body, load }) - 1.13)).toBeLessThan(0.05);
  }
});

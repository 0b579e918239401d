import { expect, test } from 'vitest';
import { metres, squareMillimetres } from '../../src/index.js';
import { ohmSquareMillimetresPerMetre, resistanceOfConductor } from '../../src/physics/index.js';
import { expectPublished } from '../support/expect-published.js';
import { cases } from './plain.cases.js';

test.each(cases.map((c) => [c.id, c] as const))('%s', (_, c) => {
  expectPublished(c);
});

test('a metre of one square millimetre has its resistivity as resistance', () => {
  const conductorResistivity = ohmSquareMillimetresPerMetre(0.017241);
  const of = (length: number, area: number) =>
    resistanceOfConductor({ conductorResistivity, length: metres(length), conductorArea: squareMillimetres(area) });
  expect(of(1, 1)).toBeCloseTo(0.017241, 12);
  expect(of(25, 6)).toBeCloseTo((0.017241 * 25) / 6, 12);
});

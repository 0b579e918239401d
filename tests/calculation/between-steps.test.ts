import { expect, test } from 'vitest';
import {
  betweenSteps,
  by,
  Calculator,
  contents,
  derive,
  fact,
  open,
  Span,
  set,
  when,
} from '../../src/calculation/index.js';
import { amperes, between, type Fact, isMissing, known, seconds } from '../../src/index.js';
import { faultEnergy } from '../../src/physics/index.js';
import type { Amperes } from '../../src/units/index.js';

interface Place {
  readonly current: Fact<Amperes>;
}
/** Energy at a current: above 100 A the fault is cleared in 0.1 s, below in 5 s, or nobody can say. */
const energy = (slow: boolean) =>
  new Calculator(
    contents({
      scopes: { circuit: { things: () => [] } },
      figures: {
        circuit: {
          faultCurrent: fact((p: Place) => p.current),
          operatingCurrent: set(amperes(100)),
          opensAtOnce: derive(
            ['faultCurrent', 'operatingCurrent'],
            ({ faultCurrent, operatingCurrent }) => faultCurrent >= operatingCurrent,
            { direction: { faultCurrent: 1, operatingCurrent: -1 } },
          ),
          letThrough: betweenSteps(
            'faultCurrent',
            ['operatingCurrent'],
            when(
              'opensAtOnce',
              by(faultEnergy, undefined, { faultTime: set(seconds(0.1)) }),
              slow
                ? by(faultEnergy, undefined, { faultTime: set(seconds(5)) })
                : open({ kind: 'fact', fact: 'time of the device' }),
            ),
          ),
        },
      },
      checks: {},
    }),
  );
const at = (current: Fact<Amperes>, slow = true) => energy(slow).of({ current }).figure('letThrough');

test('a figure that jumps is bounded by its ends and both sides of the jump', () => {
  // I²t on each side of the jump at 100 A, by hand
  expect(at(known(amperes(99)))).toBeCloseTo(99 ** 2 * 5, 9);
  expect(at(known(amperes(100)))).toBeCloseTo(100 ** 2 * 0.1, 9);
  const over = at(between(amperes(90), amperes(200))) as Span;
  expect(over.least).toBeCloseTo(100 ** 2 * 0.1, 9);
  expect(over.most).toBeCloseTo(100 ** 2 * 5, 6);
  expect(over.most).toBeLessThan(100 ** 2 * 5); // 100 A itself is cleared at once
  const above = at(between(amperes(100), amperes(200))) as Span;
  expect(above).toEqual(new Span(at(known(amperes(100))) as number, at(known(amperes(200))) as number));
});

test('what nobody can say of one side is not said of the whole', () => {
  expect(isMissing(at(between(amperes(90), amperes(200)), false))).toBe(true);
  expect(at(between(amperes(100), amperes(200)), false)).toBeInstanceOf(Span);
});

test('no value in the span lies outside the figure', () => {
  const over = at(between(amperes(60), amperes(140))) as Span;
  for (let i = 0; i <= 800; i++) {
    const one = at(known(amperes(60 + i / 10))) as number;
    expect(one >= over.least && one <= over.most).toBe(true);
  }
});

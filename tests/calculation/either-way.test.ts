import { expect, test } from 'vitest';
import { by, Calculator, contents, derive, fact, open, Span, set, when } from '../../src/calculation/index.js';
import { amperes, between, type Fact, isMissing, known, seconds } from '../../src/index.js';
import { faultEnergy } from '../../src/physics/index.js';
import type { Amperes, Seconds } from '../../src/units/index.js';

interface Place {
  readonly current: Fact<Amperes>;
  readonly slow?: Fact<Seconds>;
}
/** Energy of 100 A: for 0.1 s where a device opens at once, else for another time. */
const energy = (turns: 'known' | 'blind' = 'known', otherwise = set(seconds(5))) =>
  new Calculator(
    contents({
      scopes: { circuit: { things: () => [] } },
      figures: {
        circuit: {
          faultCurrent: set(amperes(100)),
          operatingCurrent: fact((p: Place) => p.current),
          opensAtOnce: derive(
            ['faultCurrent', 'operatingCurrent'],
            ({ faultCurrent, operatingCurrent }) => faultCurrent >= operatingCurrent,
            turns === 'known' ? { direction: { faultCurrent: 1, operatingCurrent: -1 } } : {},
          ),
          letThrough: when(
            'opensAtOnce',
            by(faultEnergy, undefined, { faultTime: set(seconds(0.1)) }),
            by(faultEnergy, undefined, { faultTime: otherwise }),
          ),
        },
      },
      checks: {},
    }),
  );
const at = (current: Fact<Amperes>, calculator = energy()) => calculator.of({ current }).figure('letThrough');
const wide = between(amperes(80), amperes(120));

test('where a yes or no turns within a span, the figure lies between what it is either way', () => {
  // 100² A²s by 0.1 s and by 5 s, by hand
  expect(at(wide)).toEqual(new Span(1000, 50_000));
  for (let i = 80; i <= 120; i++) {
    const one = at(known(amperes(i))) as number;
    expect(one === 1000 || one === 50_000).toBe(true);
  }
});

test('where it is the same all over the span, only that way counts', () => {
  expect(at(between(amperes(80), amperes(100)))).toBeCloseTo(1000, 9);
  expect(at(between(amperes(101), amperes(120)))).toBeCloseTo(50_000, 9);
});

test('where one of the ways is open, so is the figure', () => {
  expect(isMissing(at(wide, energy('known', open({ kind: 'fact', fact: 'time of the device' }))))).toBe(true);
});

test('what declares no direction is not taken to be one or the other', () => {
  expect(isMissing(at(wide, energy('blind')))).toBe(true);
});

test('given other facts, a way that was not taken before is read anew', () => {
  const calculation = new Calculator(
    contents({
      scopes: { circuit: { things: () => [] } },
      figures: {
        circuit: {
          faultCurrent: set(amperes(100)),
          operatingCurrent: fact((p: Place) => p.current),
          opensAtOnce: derive(
            ['faultCurrent', 'operatingCurrent'],
            ({ faultCurrent, operatingCurrent }) => faultCurrent >= operatingCurrent,
            { direction: { faultCurrent: 1, operatingCurrent: -1 } },
          ),
          faultTime: when(
            'opensAtOnce',
            set(seconds(0.1)),
            fact((p: Place) => p.slow ?? known(seconds(5))),
          ),
          letThrough: by(faultEnergy),
        },
      },
      checks: {},
    }),
  ).of({ current: wide, slow: known(seconds(5)) });
  expect(calculation.figure('letThrough')).toEqual(new Span(1000, 50_000));
  calculation.change({ current: wide, slow: known(seconds(2)) });
  expect(calculation.figure('letThrough')).toEqual(new Span(1000, 20_000));
});

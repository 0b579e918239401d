import fc from 'fast-check';
import { expect, test } from 'vitest';
import { taperedChargeTime } from '../../src/charging/definitions.js';
import { type TaperedCharge, taperOf } from '../../src/charging/index.js';
import { hasCode, kilowattHours, kilowatts, ratio } from '../../src/index.js';
import { expectPublished } from '../support/expect-published.js';
import { cases } from './taper.cases.js';

test.each(cases.map((c) => [c.id, c] as const))('%s', (_, c) => expectPublished(c));

const charge: TaperedCharge = {
  battery: kilowattHours(60),
  peakPower: kilowatts(100),
  pointPower: kilowatts(50),
  from: ratio(0.1),
  to: ratio(0.8),
  taper: taperOf('median'),
};

test('a power that never falls takes energy over power', () => {
  const flat = [
    [0, 1],
    [1, 1],
  ] as const;
  expect(taperedChargeTime({ ...charge, taper: flat })).toBeCloseTo((42 / 50) * 3600, 6);
  expect(taperedChargeTime({ ...charge, taper: flat, pointPower: kilowatts(300) })).toBeCloseTo((42 / 100) * 3600, 6);
  expect(taperedChargeTime({ ...charge, to: ratio(0.1) })).toBe(0);
});

test('comes to the sum of small steps, and a stronger point is never slower', () => {
  fc.assert(
    fc.property(
      fc.constantFrom('p10', 'p25', 'median', 'p75', 'p90'),
      fc.double({ min: 5, max: 200, noNaN: true }),
      fc.double({ min: 0, max: 0.5, noNaN: true }),
      fc.double({ min: 0.5, max: 1, noNaN: true }),
      (statistic, power, from, to) => {
        const taper = taperOf(statistic);
        const one = { ...charge, taper, pointPower: kilowatts(power), from: ratio(from), to: ratio(to) };
        const at = (s: number) => {
          const i = Math.max(
            1,
            taper.findIndex(([state]) => state >= s),
          );
          const [[a, p], [b, q]] = [taper[i - 1], taper[i]] as [readonly [number, number], readonly [number, number]];
          return Math.min(power, 100 * (p + ((q - p) * (s - a)) / (b - a)));
        };
        const steps = 4000;
        let hours = 0;
        for (let i = 0; i < steps; i++)
          hours += (60 * (to - from)) / steps / at(from + ((i + 0.5) * (to - from)) / steps);
        expect(taperedChargeTime(one) / (hours * 3600)).toBeCloseTo(1, 4);
        expect(taperedChargeTime({ ...one, pointPower: kilowatts(power * 1.5) })).toBeLessThanOrEqual(
          taperedChargeTime(one) * (1 + 1e-12),
        );
      },
    ),
    { numRuns: 20 },
  );
});

test.each<[string, Partial<TaperedCharge>, string]>([
  ['no power', { pointPower: kilowatts(0) }, 'pointPower'],
  ['an end before the start', { to: ratio(0.05) }, 'from'],
  [
    'a course that ends before full',
    {
      taper: [
        [0, 1],
        [0.9, 1],
      ],
    },
    'taper',
  ],
  [
    'a power of nothing',
    {
      taper: [
        [0, 1],
        [1, 0],
      ],
    },
    'taper',
  ],
])('%s is refused by name', (_, change, path) => {
  let found: unknown = 'taken';
  try {
    taperedChargeTime({ ...charge, ...change });
  } catch (error) {
    if (hasCode(error, 'invalid-input')) found = error.detail.problems.map((p) => p.path.join('.'));
  }
  expect(found).toEqual([path]);
});

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { celsius, hasCode, kilovoltAmperes, percent, ratio, seconds, watts } from '../../../src/index.js';
import type { TransformerDay } from '../../../src/physics/power/ageing.js';
import {
  ageingOfDay,
  ageingRateOfPlainPaper,
  bestLoadShareOf,
  hotSpotGradientOf,
  hottestSpot,
  oilRiseOf,
} from '../../../src/physics/power/definitions.js';
import {
  distributionTransformer,
  parallelShares,
  transformerEfficiencyOf,
  transformerLossesOf,
} from '../../../src/physics/power/index.js';

const night = Array.from({ length: 24 }, (_, hour) => (hour < 7 ? 1.2 : 0.4));
const day: TransformerDay = {
  warmth: distributionTransformer,
  load: night,
  ambient: celsius(20),
  upgradedPaper: false,
};

/** The equations of the loading guide as they stand, by the classical Runge-Kutta method of ten seconds a step. */
function integrated({ warmth, load, ambient }: TransformerDay): { most: number; rate: number } {
  const [k11, k21, k22] = warmth.k;
  const slope = ([oil, up, down]: readonly number[], hour: number) => {
    const loadShare = ratio(load[hour] as number);
    const end = (ambient as number) + oilRiseOf({ ...warmth, loadShare });
    const gradient = hotSpotGradientOf({ ...warmth, loadShare });
    return [
      (end - (oil as number)) / (k11 * warmth.oilTime),
      (k21 * gradient - (up as number)) / (k22 * warmth.windingTime),
      ((k21 - 1) * gradient - (down as number)) / (warmth.oilTime / k22),
    ];
  };
  let state: readonly number[] = [60, 0, 0];
  let [most, sum, count] = [0, 0, 0];
  const go = (from: readonly number[], k: readonly number[], h: number) => from.map((v, i) => v + h * (k[i] as number));
  for (let d = 0; d < 8; d++) {
    [most, sum, count] = [0, 0, 0];
    for (let hour = 0; hour < 24; hour++)
      for (let i = 0; i < 360; i++) {
        const h = 10;
        const a = slope(state, hour);
        const b = slope(go(state, a, h / 2), hour);
        const c = slope(go(state, b, h / 2), hour);
        const e = slope(go(state, c, h), hour);
        state = state.map(
          (v, n) => v + (h / 6) * ((a[n] as number) + 2 * (b[n] as number) + 2 * (c[n] as number) + (e[n] as number)),
        );
        const hot = (state[0] as number) + (state[1] as number) - (state[2] as number);
        most = Math.max(most, hot);
        sum += ageingRateOfPlainPaper({ hotSpotTemperature: celsius(hot) });
        count++;
      }
  }
  return { most, rate: sum / count };
}

test.each([
  ['a distribution transformer', distributionTransformer],
  ['one whose hot spot overshoots', { ...distributionTransformer, k: [0.5, 2, 2] as const, windingTime: seconds(420) }],
])('hot spot and ageing of %s over a night of charging come to the equations integrated', (_, warmth) => {
  const theirs = integrated({ ...day, warmth });
  expect(hottestSpot({ ...day, warmth })).toBeCloseTo(theirs.most, 0);
  // ours are the ends of steps of five minutes
  expect(ageingOfDay({ ...day, warmth }) / theirs.rate).toBeCloseTo(1, 1);
});

test('ages normally at rated load and 20 °C; faster with load and heat, slower with better paper', () => {
  const at = (change: Partial<TransformerDay>) => ageingOfDay({ ...day, load: new Array(24).fill(1), ...change });
  expect(at({})).toBeCloseTo(1, 9);
  expect(at({ ambient: celsius(26) })).toBeCloseTo(2, 9);
  expect(at({ upgradedPaper: true })).toBeLessThan(0.3);
  expect(at({ load: new Array(24).fill(1.2) })).toBeGreaterThan(4);
  expect(at({ load: night })).toBeLessThan(at({ load: new Array(24).fill(1.2) }));
  expect(at({ ambient: new Array(24).fill(20) })).toBeCloseTo(1, 9);
});

test('a day that cannot be is refused by name', () => {
  const refused = (change: Partial<TransformerDay>): unknown => {
    try {
      return ageingOfDay({ ...day, ...change });
    } catch (error) {
      return hasCode(error, 'invalid-input')
        ? error.detail.problems.map((p) => p.path.join('.'))
        : (error as { code: string }).code;
    }
  };
  expect(refused({ load: [1] })).toEqual(['load']);
  expect(refused({ ambient: [1, 2] })).toEqual(['ambient']);
  expect(refused({ warmth: { ...distributionTransformer, oilTime: seconds(0) } })).toEqual(['warmth.oilTime']);
  expect(refused({ warmth: { ...distributionTransformer, k: [1, 0.5, 2] } })).toEqual(['warmth.k']);
  expect(refused({ warmth: { ...distributionTransformer, lossRatio: ratio(-1) } })).toEqual(['warmth.lossRatio']);
  // far beyond what the rates were made for
  expect(refused({ load: new Array(24).fill(2.5) })).toBe('out-of-range');
});

test('the best load is the most efficient one', () => {
  const plate = { noLoadLoss: watts(693), transformerLoss: watts(7600) };
  const efficiency = (loadShare: number) =>
    transformerEfficiencyOf({
      loadShare: ratio(loadShare),
      transformerRating: kilovoltAmperes(1000),
      powerFactor: ratio(0.95),
      transformerLosses: transformerLossesOf({ ...plate, loadShare: ratio(loadShare) }),
    });
  const best = bestLoadShareOf(plate);
  for (const other of [0.1, 0.2, 0.29, 0.32, 0.5, 1])
    expect(efficiency(best)).toBeGreaterThanOrEqual(efficiency(other));
});

test('shares of transformers in parallel add up: exactly where angles are alike, to more where they are not', () => {
  const unit = fc.record({
    rating: fc.integer({ min: 25, max: 2500 }).map(kilovoltAmperes),
    impedanceVoltage: fc.double({ min: 3.5, max: 8, noNaN: true }).map(percent),
    loss: fc.integer({ min: 100, max: 800 }).map(watts),
  });
  fc.assert(
    fc.property(fc.array(unit, { minLength: 1, maxLength: 5 }), (units) => {
      const load = kilovoltAmperes(1000);
      const sum = (all: typeof units) => parallelShares(all, load).reduce((s, x) => s + x.load, 0);
      expect(sum(units.map(({ loss: _, ...u }) => u) as typeof units)).toBeCloseTo(load, 3);
      expect(sum(units)).toBeGreaterThanOrEqual(load - 1e-3);
    }),
    { numRuns: 50 },
  );
  const wrong = () =>
    parallelShares(
      [{ rating: kilovoltAmperes(100), impedanceVoltage: percent(4), loss: watts(5000) }],
      kilovoltAmperes(10),
    );
  expect(wrong).toThrow(/loss/);
  expect(() => parallelShares([], kilovoltAmperes(1))).toThrow(/at least one/);
});

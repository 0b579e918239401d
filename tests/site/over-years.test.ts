import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { amperes, hours, kilovoltAmperes, kilowattHours, volts } from '../../src/index.js';
import { type BuildStage, compareOverYears, type YearsQuestion } from '../../src/site/index.js';

const stage: BuildStage = {
  from: 2027,
  what: 'points with load management',
  capacity: amperes(100),
  points: 30,
  setting: amperes(32),
  managed: true,
  quoted: 900_000,
};
const way = (id: string, ...stages: readonly BuildStage[]) => ({ id, title: id, stages });
/** Twelve hours of the night, 10 kWh each, 60 A of other load on every line of 100 A. */
const question = (ways: YearsQuestion['ways'], vehicles = [6, 12, 18, 24]): YearsQuestion => ({
  years: vehicles.map((n, i) => ({ year: 2027 + i, vehicles: n })),
  fleet: [{ arrives: hours(18), leaves: hours(30), energy: kilowattHours(10) }],
  existing: [amperes(60), amperes(60), amperes(60)],
  voltage: volts(230),
  ways,
  prices: { format: 'prices/1', currency: 'GBP', items: { gland: 450 }, hour: 4500, taxBasisPoints: 2000 },
});

describe('ways to build up a site', () => {
  test('load management suffices up to the energy that the night leaves', () => {
    // 40 A x 230 V x 12 h = 110.4 kWh on a line: ten vehicles of 10 kWh with time to spare for the last, which takes 32 A
    // alone (an eleventh would not have it); of 40 every line lacks the rest:
    // 14, 13 and 13 vehicles: 140 + 130 + 130 - 3 x 110.4 = 68.8 kWh
    const [found] = compareOverYears(question([way('managed', { ...stage, points: 60 })], [24, 30, 40]));
    expect(found?.years.map((y) => y.suffices)).toEqual([true, true, false]);
    expect(found?.ceases).toBe(2029);
    expect(found?.lacking).toBeCloseTo(68_800, 0);
  });
  test('without management the sum of all has to be carried', () => {
    // 60 A + 32 A = 92 A with three points, 60 + 2 x 32 = 124 A with six
    const free = { ...stage, managed: false, quoted: 0 };
    const [three, six] = compareOverYears(
      question([way('three', { ...free, points: 3 }), way('six', { ...free, points: 6 })], [3, 4]),
    );
    expect(three?.years.map((y) => [y.carried, y.suffices, y.withoutPoint])).toEqual([
      [true, true, 0],
      [true, false, 1],
    ]);
    expect(three?.years[1]?.lacking).toBe(10_000);
    expect(six?.years[0]).toMatchObject({ carried: false, suffices: false, most: 124 });
    expect(six?.years[0]?.lacking).toBeUndefined();
  });
  test('stages are paid for when they are built: by the book, and by what is quoted', () => {
    const gland = { key: 'gland', words: 'gland', quantity: 4, unit: 'each', rule: 'two for each cable' } as const;
    const lid = { key: 'lid', words: 'lid of the duct', quantity: 1, unit: 'each', rule: 'one' } as const;
    const work = { items: [gland, lid], hours: { tasks: [], low: 1, typical: 2, high: 3, complete: true } };
    const [phased] = compareOverYears(
      question([way('phased', { ...stage, points: 9 }, { ...stage, from: 2029, points: 24, quoted: 50_000, work })]),
    );
    // second stage: 500.00 quoted, 4 x 4.50 and 2 h x 45.00 = 108.00
    expect(phased?.years.map((y) => y.spent)).toEqual([900_000, 0, 60_800, 0]);
    expect(phased?.spent).toBe(960_800);
    expect(phased?.unpriced).toEqual(['lid of the duct']);
    expect(phased?.years.map((y) => y.withoutPoint)).toEqual([0, 3, 0, 0]);
  });
  test('agreed capacity is charged year by year: 500 kVA at 1.30 a month come to 7,800 a year, as published', () => {
    const agreed = { agreed: kilovoltAmperes(500), monthly: 130 };
    const [one] = compareOverYears(
      question([way('one', { ...stage, quoted: 0, agreedCapacity: agreed }, { ...stage, from: 2029, quoted: 100 })]),
    );
    // consultant's page on reviews of maximum import capacity: 650.00 a month
    expect(one?.years.map((y) => y.capacityCharge)).toEqual([780_000, 780_000, 0, 0]);
    expect(one?.years.map((y) => y.spent)).toEqual([780_000, 780_000, 100, 0]);
    const wrong = question([way('wrong', { ...stage, agreedCapacity: { ...agreed, monthly: -1 } })]);
    expect(() => compareOverYears(wrong)).toThrow(/agreedCapacity/);
  });
  test('a supply that other load alone exceeds carries nothing', () => {
    const [small] = compareOverYears(question([way('small', { ...stage, capacity: amperes(50) })]));
    expect(small?.years[0]).toMatchObject({ carried: false, suffices: false });
  });
  test('more supply never leaves more lacking, and energy balances', () => {
    const amps = fc.integer({ min: 60, max: 200 });
    fc.assert(
      fc.property(amps, amps, fc.integer({ min: 0, max: 24 }), (one, two, vehicles) => {
        const capacity = (a: number) => ({ ...stage, capacity: amperes(a) });
        const [less, more] = compareOverYears(
          question([way('less', capacity(Math.min(one, two))), way('more', capacity(Math.max(one, two)))], [vehicles]),
        );
        const lacking = (w: typeof less) => w?.years[0]?.lacking as number;
        expect(lacking(more)).toBeLessThanOrEqual(lacking(less) + 1);
        expect(lacking(less)).toBeLessThanOrEqual((less?.years[0]?.asked as number) + 1);
        expect(less?.years[0]?.asked).toBe(vehicles * 10_000);
      }),
      { numRuns: 40 },
    );
  });
  test('wrong questions name all that is wrong', () => {
    const wrong = { ...question([way('none')]), fleet: [], years: [] };
    expect(() => compareOverYears(wrong)).toThrow(/years[\s\S]*fleet[\s\S]*stages/);
  });
});

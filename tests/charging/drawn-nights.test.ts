import { describe, expect, test } from 'vitest';
import { agreedCapacityOf, drawnNights, simulate } from '../../src/charging/index.js';
import { countedShare } from '../../src/charging/simulation/drawn-nights.js';
import { amperes, hours, kilowattHours, minutes, ratio, seconds, volts, wattHours } from '../../src/index.js';
import { europeanSummerTime } from '../../src/networks/index.js';
import { node, perLine, point, problemsOf } from './networks.js';

type Question = Parameters<typeof drawnNights>[0];
const need = wattHours(32 * 230 * 3);
const exactly = <T extends number>(value: T) =>
  [
    [0, value],
    [1, value],
  ] as const;
/** One vehicle that comes at any time between 16:00 and 20:00 and needs three hours at full current. */
const one: Question = {
  network: { nodes: [node('intake', perLine(60))], points: [point('bay', 'intake', 32, { lines: ['L1'] })] },
  vehicles: [
    {
      point: 'bay',
      comes: ratio(1),
      arrives: [
        [0, hours(16)],
        [1, hours(20)],
      ],
      leaves: exactly(hours(31)),
      energy: exactly(need),
    },
  ],
  by: hours(22),
  nights: 2000,
  seed: 4711,
  from: hours(16),
  to: hours(31),
  step: minutes(1),
  voltage: volts(230),
  control: { policy: { rule: 'max-min-amperes', stage: 'zero-or-least' } },
};
const with1 = (change: Partial<Question['vehicles'][number]>, more: Partial<Question> = {}) =>
  drawnNights({ ...one, nights: 400, ...more, vehicles: [{ ...one.vehicles[0]!, ...change }] });

describe('the interval of a share that was counted', () => {
  test('is that of Clopper and Pearson: 10 of 100 lie between 4.90 % and 17.62 %, as tables have it', () => {
    const { least, most } = countedShare(10, 100, 0.95);
    expect(least).toBeCloseTo(0.049, 4);
    expect(most).toBeCloseTo(0.1762, 4);
  });
  test('has a closed form where none or all were counted', () => {
    for (const n of [1, 20, 500]) {
      expect(countedShare(0, n, 0.95).least).toBe(0);
      expect(countedShare(0, n, 0.95).most).toBeCloseTo(1 - 0.025 ** (1 / n), 9);
      expect(countedShare(n, n, 0.9).least).toBeCloseTo(0.05 ** (1 / n), 9);
      expect(countedShare(n, n, 0.9).most).toBe(1);
    }
    expect(countedShare(0, 0, 0.95)).toEqual({ count: 0, of: 0, least: 0, most: 1 });
  });
});

describe('many nights', () => {
  test('come to the share that follows from the distribution', () => {
    // full by 22:00 who comes by 19:00: three hours of four
    const { allFull, missing } = drawnNights(one);
    expect(allFull.least).toBeLessThan(0.75);
    expect(allFull.most).toBeGreaterThan(0.75);
    expect((allFull.most as number) - allFull.least).toBeLessThan(0.05);
    expect(missing.all).toBe(0);
  });
  test('the same seed draws the same nights, another one others; more nights narrow the interval', () => {
    expect(with1({})).toEqual(with1({}));
    expect(with1({}).allFull.count).not.toBe(with1({}, { seed: 4712 }).allFull.count);
    const width = (nights: number) => {
      const { allFull } = with1({}, { nights });
      return allFull.most - allFull.least;
    };
    expect(width(1600)).toBeLessThan(0.6 * width(400));
  });
  test('without anything uncertain are one night', () => {
    const { allFull, vehicles, missing } = with1(
      { arrives: exactly(hours(18)), leaves: exactly(hours(20)) },
      { nights: 10 },
    );
    const night = simulate({
      ...one,
      sessions: [{ id: 'bay', point: 'bay', arrives: hours(18), leaves: hours(20), energy: need }],
    });
    expect(allFull.count).toBe(0);
    expect(vehicles[0]).toMatchObject({ point: 'bay', count: 0, of: 10 });
    expect(missing).toEqual({ mean: night.missing, half: night.missing, ninety: night.missing, all: night.missing });
    expect(night.missing).toBeCloseTo(need / 3, 6);
  });
  test('count a vehicle that does not come nowhere, and one that leaves before it comes either', () => {
    const { vehicles, allFull } = with1({ comes: ratio(0.3) });
    expect(vehicles[0]!.of / 400).toBeCloseTo(0.3, 1);
    // one that comes is not full in one of four
    expect(allFull.count).toBe(400 - vehicles[0]!.of + vehicles[0]!.count);
    expect(with1({ leaves: exactly(hours(16)) }).vehicles[0]!.of).toBe(0);
  });
  test('two who share are seldom full both; a battery that slows makes it seldomer still', () => {
    const two = (limit: number, battery?: Question['vehicles'][number]['battery']) =>
      drawnNights({
        ...one,
        nights: 300,
        network: {
          nodes: [node('intake', perLine(limit))],
          points: ['a', 'b'].map((id) => point(id, 'intake', 32, { lines: ['L1'] })),
        },
        vehicles: ['a', 'b'].map((id) => ({ ...one.vehicles[0]!, point: id, ...(battery ? { battery } : {}) })),
      }).allFull.count;
    expect(two(64)).toBeGreaterThan(two(40));
    const battery = {
      holds: kilowattHours(30),
      peak: amperes(32),
      course: [
        [0, 1],
        [0.8, 1],
        [1, 0.2],
      ],
    } as const;
    expect(two(64, battery)).toBeLessThan(two(64));
  });
  test('a question that cannot be names all that is wrong', () => {
    const wrong = {
      ...one,
      nights: 0,
      seed: 0.5,
      confidence: ratio(1),
      vehicles: [
        {
          ...one.vehicles[0]!,
          comes: ratio(2),
          arrives: [[0, hours(3)]],
          energy: [
            [0, 2],
            [1, 1],
          ],
          point: 'none',
        },
      ],
    } as unknown as Question;
    const said = problemsOf(() => drawnNights(wrong)).join();
    for (const key of ['nights', 'seed', 'confidence', 'comes', 'arrives', 'energy', 'point'])
      expect(said).toContain(key);
  });
});

describe('capacity by season, day and hour', () => {
  const clock = { from: seconds(0), to: hours(48), step: minutes(30) };
  const terms = [
    {
      months: [11, 12, 1, 2],
      days: ['Monday', 'Tuesday'] as const,
      from: hours(16),
      to: hours(20),
      current: perLine(60),
    },
    { from: hours(23), to: hours(5), current: perLine(160) },
    { current: perLine(100) },
  ];
  test('is the first term that holds, half hour by half hour', () => {
    // 31 January 2027 is a Sunday, 1 February a Monday
    const { values } = agreedCapacityOf(terms, clock, { date: '2027-01-31' });
    const at = (hour: number) => values[hour * 2]![0];
    expect([at(2), at(5), at(17), at(23), at(24), at(40 - 24), at(40), at(43), at(44)]).toEqual([
      160, 100, 100, 160, 160, 100, 60, 60, 100,
    ]);
    expect(agreedCapacityOf(terms, clock, { date: '2027-06-06' }).values[34]).toEqual(perLine(100));
  });
  test('follows the clocks on the wall', () => {
    const calendar = { changes: europeanSummerTime('2027-03-28', 2, 0) };
    const { values } = agreedCapacityOf(terms, clock, { date: '2027-03-28', calendar });
    // five in the morning comes after four hours
    expect(values.findIndex(([a]) => a === 100)).toBe(8);
  });
  test('limits what a simulation shares', () => {
    const limits = [{ node: 'intake', ...agreedCapacityOf(terms, clock, { date: '2027-01-31' }) }];
    const night = simulate({
      ...one,
      from: hours(16),
      to: hours(48),
      step: minutes(30),
      network: {
        nodes: [node('intake', perLine(1000))],
        points: ['a', 'b', 'c'].map((id) => point(id, 'intake', 80, { lines: ['L1'] })),
      },
      sessions: ['a', 'b', 'c'].map((id) => ({
        id,
        point: id,
        arrives: hours(38),
        leaves: hours(48),
        energy: kilowattHours(300),
      })),
      limits,
      keepSeries: true,
    });
    const sum = (hour: number) => night.series!.points.reduce((s, p) => s + (p.current.L1![(hour - 16) * 2] ?? 0), 0);
    expect([sum(39), sum(40), sum(43), sum(44), sum(47)]).toEqual([100, 60, 60, 100, 160]);
  });
  test('a moment that no term covers is refused, and what is no term', () => {
    expect(problemsOf(() => agreedCapacityOf(terms.slice(0, 1), clock, { date: '2027-01-31' })).join()).toMatch(
      /at 0 s/,
    );
    const wrong = [{ months: [13], days: ['Someday'], from: seconds(-1), current: [1, 2] }] as never;
    const said = problemsOf(() => agreedCapacityOf(wrong, clock, { date: 'soon' })).join();
    for (const key of ['months', 'days', 'from', 'current', 'date']) expect(said).toContain(key);
  });
});

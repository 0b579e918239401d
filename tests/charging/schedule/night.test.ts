import { describe, expect, test } from 'vitest';
import { type ScheduleInput, schedule } from '../../../src/charging/index.js';
import type { SchedulePolicy } from '../../../src/charging/schedule/input.js';
import { hours, kilowattHours, seconds, volts, wattHours } from '../../../src/index.js';
import { smartChargingPeak } from '../../../src/networks/index.js';
import { node, perLine, point } from '../networks.js';

const POLICIES: readonly SchedulePolicy[] = ['earliest-deadline', 'least-laxity', 'minimum-cost', 'valley-filling'];
const STAGES = ['continuous', 'zero-or-least'] as const;

/** A weekday evening at home: the default hours of SI 2021/1467 are outside 16:00 to 22:00. Invented. */
const home: Omit<ScheduleInput, 'policy' | 'stage'> = {
  network: {
    nodes: [node('intake', perLine(60, 0, 0), { load: perLine(8, 0, 0) })],
    points: [point('drive', 'intake')],
  },
  sessions: [{ id: 'car', point: 'drive', arrives: hours(18), leaves: hours(31), energy: kilowattHours(30) }],
  from: hours(17),
  to: hours(31),
  step: hours(0.5),
  voltage: volts(230),
  hours: { kind: 'off-peak', peak: smartChargingPeak, first: 'Monday', delay: { seed: 4711, maximum: seconds(600) } },
  prices: { values: [0.28, 0.28, 0.28, 0.28, 0.28, 0.2, 0.2, 0.07, 0.07, 0.07, 0.07, 0.2, 0.2, 0.2], every: hours(1) },
};

describe('a night at home', () => {
  test('begins at ten o’clock and a random delay of up to ten minutes, the same for the same seed', () => {
    for (const stage of STAGES) {
      const begin = (seed: number) => {
        const delay = { seed, maximum: seconds(600) };
        const night = schedule({
          ...home,
          hours: { kind: 'off-peak', peak: smartChargingPeak, first: 'Monday', delay },
          policy: 'earliest-deadline',
          stage,
        });
        return night.sessions[0]!.stretches[0]!.from;
      };
      const begins = Array.from({ length: 40 }, (_, seed) => begin(seed));
      expect(Math.min(...begins)).toBeGreaterThanOrEqual(hours(22));
      expect(Math.max(...begins)).toBeLessThanOrEqual(hours(22) + 600);
      expect(new Set(begins).size).toBeGreaterThan(30);
      expect(begins).toEqual(Array.from({ length: 40 }, (_, seed) => begin(seed)));
    }
  });

  test('a delay never puts off the end of a window', () => {
    const night = schedule({
      ...home,
      hours: {
        kind: 'windows',
        windows: [{ from: hours(24), to: hours(26) }],
        delay: { seed: 1, maximum: seconds(600) },
      },
      policy: 'valley-filling',
      stage: 'continuous',
    });
    const stretches = night.sessions[0]!.stretches;
    expect(stretches.at(-1)!.to).toBe(hours(26));
    expect(night.shortfall).toBeGreaterThan(0);
  });

  test('least cost takes the four cheap hours first, then those next in price', () => {
    for (const stage of STAGES) {
      const { cost, sessions, nodes, bound } = schedule({ ...home, policy: 'minimum-cost', stage });
      // 32 A for four hours are 29.44 kWh at 0.07; what is missing costs 0.2
      expect(bound!.cost).toBeCloseTo(29.44 * 0.07 + 0.56 * 0.2, 9);
      expect(cost).toBeCloseTo(bound!.cost!, 9);
      expect(sessions[0]!.shortfall).toBe(0);
      expect(nodes[0]!.peak).toEqual([40, 0, 0]);
    }
  });
});

describe('edges', () => {
  test.each(POLICIES)(
    '%s: nobody there, a vehicle that needs nothing, one outside the time that is planned',
    (policy) => {
      for (const stage of STAGES) {
        const none = schedule({ ...home, sessions: [], policy, stage });
        expect(none).toMatchObject({ sessions: [], delivered: 0, shortfall: 0, cost: 0, peak: 8 * 230 });
        const [car] = home.sessions;
        const night = schedule({
          ...home,
          sessions: [
            { ...car!, energy: kilowattHours(0) },
            { ...car!, id: 'late', arrives: hours(31), leaves: hours(40), energy: kilowattHours(5) },
          ],
          policy,
          stage,
          bound: true,
        });
        expect(night.sessions[0]).toMatchObject({ stretches: [], delivered: 0, shortfall: 0, fullAt: hours(18) });
        expect(night.sessions[1]).toMatchObject({ stretches: [], delivered: 0, shortfall: 5000 });
        expect(night.bound?.shortfall).toBe(5000);
      }
    },
  );

  test.each(POLICIES)('%s: a network without limits, and one whose other load alone exceeds its limit', (policy) => {
    for (const stage of STAGES) {
      const free = schedule({
        ...home,
        network: { nodes: [node('intake', undefined)], points: [point('drive', 'intake')] },
        policy,
        stage,
      });
      expect(free.shortfall).toBe(0);
      const over = schedule({
        ...home,
        load: [{ node: 'intake', values: [perLine(70, 0, 0)] }],
        policy,
        stage,
        bound: true,
      });
      expect(over).toMatchObject({ delivered: 0, shortfall: 30_000, nodes: [{ overloaded: hours(14) }] });
      expect(over.bound?.shortfall).toBeCloseTo(30_000, 6);
    }
  });

  test('nothing but finite numbers leaves, and all of it survives JSON', () => {
    for (const policy of POLICIES)
      for (const stage of STAGES) {
        const night = schedule({ ...home, policy, stage });
        expect(JSON.parse(JSON.stringify(night))).toEqual(night);
      }
  });
});

describe('sizes', () => {
  test('prices in a very small unit are told apart as in any other', () => {
    const { values, every } = home.prices!;
    const tiny = { values: values.map((p) => p * 1e-9), every: every! };
    for (const stage of STAGES) {
      const night = schedule({ ...home, prices: tiny, policy: 'minimum-cost', stage });
      expect(night.cost! * 1e9).toBeCloseTo(29.44 * 0.07 + 0.56 * 0.2, 6);
    }
  });

  test('a need next to nothing beside others that lack energy does no harm', () => {
    const points = ['a', 'b', 'c'].map((id) => point(id, 'intake'));
    const sessions = [1e-7, 80_000, 90_000].map((energy, k) => ({
      ...home.sessions[0]!,
      id: `s${k}`,
      point: points[k]!.id,
      energy: wattHours(energy),
    }));
    const network = { ...home.network, points };
    for (const policy of ['minimum-cost', 'valley-filling'] as const) {
      const night = schedule({ ...home, network, sessions, hours: { kind: 'any' }, policy, stage: 'continuous' });
      // 52 A for 13 h
      expect(night.delivered).toBeCloseTo(52 * 230 * 13, 2);
      expect(night.sessions[1]!.delivered / 80_000).toBeCloseTo(night.sessions[2]!.delivered / 90_000, 6);
    }
  });
});

test('smallest currents: a room of 9 A for two vehicles of at least 6 A is used by one after the other', () => {
  const input: ScheduleInput = {
    network: { nodes: [node('row', perLine(9, 0, 0))], points: [point('a', 'row'), point('b', 'row')] },
    sessions: ['a', 'b'].map((id) => ({
      id,
      point: id,
      arrives: hours(22),
      leaves: hours(30),
      energy: kilowattHours(8),
    })),
    from: hours(22),
    to: hours(30),
    step: hours(1),
    voltage: volts(230),
    policy: 'valley-filling',
    stage: 'zero-or-least',
  };
  const night = schedule(input);
  expect(night.shortfall).toBeLessThan(1e-6);
  for (const s of night.sessions) for (const { current } of s.stretches) expect(current).toBeGreaterThanOrEqual(6);
  expect(night.nodes[0]!.peak[0]).toBeLessThanOrEqual(9);
});

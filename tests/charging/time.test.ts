import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type ChargingHours,
  type ChargingSession,
  type CurrentProfile,
  isPeak,
  offPeakWindows,
  type PeakHours,
  startDelayOf,
  windowsOf,
} from '../../src/charging/index.js';
import { inspection } from '../../src/charging/network/refuse.js';
import { momentOf, treeOrder } from '../../src/charging/network/tree-order.js';
import { clockworkOf } from '../../src/charging/time/clockwork.js';
import { inspectProfiles, valueInStep } from '../../src/charging/time/profiles.js';
import { inspectSessions } from '../../src/charging/time/sessions.js';
import { inspectHours, type TimeWindow } from '../../src/charging/time/windows.js';
import { amperes, hours, seconds, wattHours } from '../../src/index.js';
import { startDelays } from '../../src/networks/definitions.js';
import { smartChargingPeak } from '../../src/networks/index.js';
import { pathText } from '../../src/units/error.js';
import { node, perLine, point } from './networks.js';

const WEEK = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'] as const;
const said = (look: (found: ReturnType<typeof inspection>) => void): string[] => {
  const found = inspection();
  look(found);
  return found.problems.map((p) => `${pathText(p.path)}: ${p.message}`);
};

describe('hours outside the peak', () => {
  // SI 2021/1467: 08:00 to 11:00 and 16:00 to 22:00 on weekdays
  test('a weekday, a Friday into the weekend, a Sunday into Monday', () => {
    expect(offPeakWindows(smartChargingPeak, 'Tuesday', { from: hours(0), to: hours(24) })).toEqual([
      { from: 0, to: hours(8) },
      { from: hours(11), to: hours(16) },
      { from: hours(22), to: hours(24) },
    ]);
    expect(offPeakWindows(smartChargingPeak, 'Friday', { from: hours(17), to: hours(60) })).toEqual([
      { from: hours(22), to: hours(60) },
    ]);
    expect(offPeakWindows(smartChargingPeak, 'Sunday', { from: hours(17), to: hours(34) })).toEqual([
      { from: hours(17), to: hours(32) },
    ]);
    expect(offPeakWindows(smartChargingPeak, 'Monday', { from: hours(17), to: hours(21) })).toEqual([]);
  });

  test('hold every second that is no peak and no other, in order', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...WEEK),
        fc.integer({ min: -86_400, max: 864_000 }),
        fc.integer({ min: 1, max: 400_000 }),
        fc.array(fc.double({ min: 0, max: 0.999999, noNaN: true }), { minLength: 20, maxLength: 20 }),
        (first, from, length, places) => {
          const windows = offPeakWindows(smartChargingPeak, first, { from: seconds(from), to: seconds(from + length) });
          windows.forEach((w, k) => {
            expect(w.to).toBeGreaterThan(w.from);
            if (k > 0) expect(w.from).toBeGreaterThan(windows[k - 1]!.to);
          });
          for (const part of places) {
            const t = from + part * length;
            const day = Math.floor(t / 86_400);
            const weekday = WEEK[(((WEEK.indexOf(first) + day) % 7) + 7) % 7]!;
            const open = windows.some((w) => w.from <= t && t < w.to);
            expect(open).toBe(!isPeak(smartChargingPeak, weekday, seconds(t - day * 86_400)));
          }
        },
      ),
    );
  });
});

describe('windows of a vehicle', () => {
  const stay = { from: hours(18), to: hours(31) };
  const delay = { seed: 7, maximum: startDelays.get({ unit: 'delay', maximum: 'settable' }) };

  test('are its stay, its stay within the windows, or its stay outside the peak', () => {
    const windows: TimeWindow[] = [
      { from: hours(17), to: hours(19) },
      { from: hours(24.5), to: hours(28.5) },
      { from: hours(30), to: hours(40) },
      { from: hours(48), to: hours(50) },
    ];
    expect(windowsOf({ kind: 'any' }, stay, 'a')).toEqual([stay]);
    expect(windowsOf({ kind: 'windows', windows }, stay, 'a')).toEqual([
      { from: hours(18), to: hours(19) },
      { from: hours(24.5), to: hours(28.5) },
      { from: hours(30), to: hours(31) },
    ]);
    expect(windowsOf({ kind: 'off-peak', peak: smartChargingPeak, first: 'Monday' }, stay, 'a')).toEqual([
      { from: hours(22), to: hours(31) },
    ]);
  });

  test('begin late by the delay and never end late', () => {
    const plain: ChargingHours = { kind: 'off-peak', peak: smartChargingPeak, first: 'Monday' };
    const names = Array.from({ length: 200 }, (_, k) => `vehicle ${k}`);
    const begins = names.map((name) => {
      const [w, ...more] = windowsOf({ ...plain, delay }, stay, name);
      expect(more).toEqual([]);
      expect(w?.to).toBe(hours(31));
      return w!.from - hours(22);
    });
    expect(Math.min(...begins)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...begins)).toBeLessThanOrEqual(1800);
    expect(new Set(begins).size).toBeGreaterThan(100);
    // a window that the delay leaves nothing of is gone
    const brief = { kind: 'windows', windows: [{ from: hours(20), to: seconds(72_001) }], delay } as const;
    expect(names.filter((name) => windowsOf(brief, stay, name).length > 0).length).toBeLessThan(5);
  });
});

describe('delay of a start', () => {
  test('is the same for the same seed and event, and differs with either', () => {
    const at = (seed: number, event: string) => startDelayOf({ seed, maximum: seconds(600) }, event);
    expect(at(1, 'a')).toBe(at(1, 'a'));
    const bySeed = new Set(Array.from({ length: 50 }, (_, seed) => at(seed, 'a')));
    const byEvent = new Set(Array.from({ length: 50 }, (_, k) => at(1, `a${k}`)));
    expect(Math.min(bySeed.size, byEvent.size)).toBeGreaterThan(40);
  });

  test('is a whole second from 0 to the maximum, each as likely', () => {
    const [maximum, draws] = [9, 20_000];
    const counts = new Array<number>(maximum + 1).fill(0);
    for (let k = 0; k < draws; k++) {
      const delay = startDelayOf({ seed: 2026, maximum: seconds(maximum) }, `point ${k}`);
      counts[delay] = (counts[delay] ?? 0) + 1;
    }
    expect(counts).toHaveLength(maximum + 1);
    // chi-squared with 9 degrees of freedom: 27.88 is exceeded once in a thousand (tables of the distribution)
    const expected = draws / (maximum + 1);
    expect(counts.reduce((sum, n) => sum + (n - expected) ** 2 / expected, 0)).toBeLessThan(27.88);
    expect(startDelayOf({ seed: 1, maximum: seconds(0) }, 'a')).toBe(0);
  });

  test('is refused beyond a day', () => {
    for (const maximum of [-1, 86_401])
      expect(() => startDelayOf({ seed: 1, maximum: seconds(maximum) }, 'a')).toThrow('largest delay is');
  });
});

describe('profiles', () => {
  const clock = { from: hours(17), step: seconds(60) };

  test('a value holds for its time, and the first comes again after the last', () => {
    const values = [perLine(1), perLine(2), perLine(3)];
    const places = (profile: Partial<CurrentProfile>, steps: number[]) =>
      steps.map(valueInStep({ values, ...profile }, clock));
    expect(places({}, [0, 1, 2, 3, 4])).toEqual([0, 1, 2, 0, 1]);
    expect(places({ every: seconds(120) }, [0, 1, 2, 5, 6])).toEqual([0, 0, 1, 2, 0]);
    // half hours since midnight: 17:00 is the 35th
    expect(
      valueInStep(
        { values: Array.from({ length: 48 }, () => perLine(1)), every: hours(0.5), from: seconds(0) },
        clock,
      )(29),
    ).toBe(34);
    // begins two steps after the begin: what comes before is the end of the cycle
    expect(places({ from: seconds(hours(17) + 120) }, [0, 1, 2, 3])).toEqual([1, 2, 0, 1]);
  });

  test('load and limits of a network move with the steps', () => {
    const order = treeOrder({
      nodes: [
        node('intake', perLine(60), { load: perLine(10) }),
        node('row', perLine(40), { parent: 'intake', load: perLine(1) }),
      ],
      points: [point('p', 'row')],
    });
    const moment = momentOf(order);
    const set = clockworkOf(
      order,
      moment,
      clock,
      [{ node: 'row', values: [perLine(5), perLine(5), perLine(50)] }],
      [{ node: 'intake', values: [perLine(60)] }],
    ).set;
    const state = (): [boolean, number, number, number] => [false, moment.base[0]!, moment.room[0]!, moment.room[3]!];
    expect([set(0), ...state().slice(1)]).toEqual([true, 15, 45, 35]);
    expect([set(1), ...state().slice(1)]).toEqual([false, 15, 45, 35]);
    expect([set(2), ...state().slice(1)]).toEqual([true, 60, 0, 0]);
    expect([set(3), ...state().slice(1)]).toEqual([true, 15, 45, 35]);
  });
});

describe('bad input', () => {
  const network = { nodes: [node('a', perLine(60))], points: [point('p', 'a'), point('q', 'a')] };

  test('every problem of sessions, with its path', () => {
    const session = (more: Partial<ChargingSession>): ChargingSession => ({
      id: 's',
      point: 'p',
      arrives: hours(18),
      leaves: hours(31),
      energy: wattHours(1000),
      ...more,
    });
    const sessions = [
      session({}),
      session({ id: 'late', point: 'q', arrives: hours(31), leaves: hours(18), vehicleLines: 3 }),
      session({ arrives: hours(30), leaves: hours(40), energy: -1 as never }),
      session({ id: 'lost', point: 'r', most: -2 as never, vehicleLines: 0 as never }),
      session({ id: 'never', point: 'q', arrives: Number.NaN as never, energy: Number.NaN as never }),
      session({ id: 'next', arrives: hours(40), leaves: hours(41) }),
    ];
    expect(said((found) => inspectSessions(network, sessions, found))).toEqual([
      'sessions[1].leaves: leaves at 64800 s, not after its arrival at 111600 s',
      'sessions[1].vehicleLines: must be 1 to 1, the lines of the point',
      "sessions[2].id: 's' is the name of another session too",
      'sessions[2].energy: must be at least 0',
      "sessions[3].point: there is no point 'r'",
      'sessions[3].most: must be at least 0',
      'sessions[3].vehicleLines: must be 1 to 3, the lines of the point',
      'sessions[4].arrives: must be a finite number',
      'sessions[4].energy: must be a finite number',
      "sessions[2]: stays at 'p' together with 's'",
    ]);
  });

  test('every problem of profiles', () => {
    const profiles: CurrentProfile[] = [
      { node: 'a', values: [] },
      { node: 'a', values: [perLine(-1, 2, 3)], every: seconds(90), from: seconds(30) },
      { node: 'b', values: [[amperes(1)] as never, [amperes(1), Number.NaN as never, amperes(1)]], every: seconds(0) },
    ];
    const clock = { from: seconds(0), step: seconds(60) };
    const expected = [
      'limits[0].values: must have at least one value',
      "limits[1].node: 'a' has another profile too",
      'limits[1].every: must be a whole number of steps of 60 s',
      'limits[1].from: must be a whole number of steps of 60 s from the begin, 0 s',
      'limits[1].values[0][0]: must be at least 0',
      "limits[2].node: there is no node 'b'",
      'limits[2].every: must be above 0',
      'limits[2].values[0]: must have three currents, for L1, L2 and L3',
      'limits[2].values[1][1]: must be a finite number',
    ];
    expect(said((found) => inspectProfiles(network, profiles, clock, found, 'limits'))).toEqual(expected);
    expect(said((found) => inspectProfiles(network, profiles, clock, found, 'load'))).toEqual(
      expected.filter((line) => !line.includes('[0][0]')).map((line) => line.replace('limits', 'load')),
    );
  });

  test('every problem of hours', () => {
    const delay = { seed: 0.5, maximum: seconds(90_000) };
    expect(
      said((found) =>
        inspectHours({ kind: 'off-peak', peak: smartChargingPeak, first: 'Caturday' as never, delay }, found),
      ),
    ).toEqual([
      'hours.delay.seed: must be a whole number',
      'hours.delay.maximum: must be at most 86400',
      "hours.first: there is no weekday 'Caturday'",
    ]);
    const peak: PeakHours = {
      days: ['Monday', 'Caturday' as never],
      periods: [
        { from: seconds(-1), to: hours(2) },
        { from: hours(1), to: hours(25) },
      ],
    };
    expect(said((found) => inspectHours({ kind: 'off-peak', peak, first: 'Monday' }, found))).toEqual([
      "hours.peak.days[1]: there is no weekday 'Caturday'",
      'hours.peak.periods[1].from: begins at 3600 s, before the end of the window ahead of it, 7200 s',
      'hours.peak.periods[0]: must lie within a day, 0 s to 86400 s',
      'hours.peak.periods[1]: must lie within a day, 0 s to 86400 s',
    ]);
    const windows = [
      { from: hours(20), to: hours(22) },
      { from: hours(21), to: hours(21) },
      { from: hours(30), to: Number.NaN as never },
    ];
    expect(said((found) => inspectHours({ kind: 'windows', windows }, found))).toEqual([
      'hours.windows[1].from: begins at 75600 s, before the end of the window ahead of it, 79200 s',
      'hours.windows[1].to: ends at 75600 s, not after its begin at 75600 s',
      'hours.windows[2].to: must be a finite number',
    ]);
    expect(said((found) => inspectHours(undefined, found))).toEqual([]);
  });
});

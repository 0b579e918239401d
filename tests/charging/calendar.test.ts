import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { elapsedAt, inLocalTime, isPeak, offPeakWindows, schedule, windowsOf } from '../../src/charging/index.js';
import type { LocalCalendar } from '../../src/charging/time/calendar.js';
import { hours, seconds, volts, wattHours } from '../../src/index.js';
import { europeanSummerTime, smartChargingPeak } from '../../src/networks/index.js';
import { seedOf } from '../support/seed.js';
import { node, perLine, point, problemsOf } from './networks.js';

const WEEK = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'] as const;
const zones = [
  ['Europe/London', 0],
  ['Europe/Berlin', 1],
  ['Europe/Helsinki', 2],
] as const;

/** The clock of a zone at an instant, by the time zone database of the platform: shared with nothing under test. */
function clockOf(zone: string, instant: number) {
  const parts = new Intl.DateTimeFormat('en-GB', {
    timeZone: zone,
    hourCycle: 'h23',
    weekday: 'long',
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    hour: '2-digit',
    minute: '2-digit',
    second: '2-digit',
  }).formatToParts(new Date(instant * 1000));
  const of = (type: string) => parts.find((p) => p.type === type)?.value ?? '';
  return {
    date: `${of('year')}-${of('month')}-${of('day')}`,
    weekday: of('weekday') as (typeof WEEK)[number],
    time: Number(of('hour')) * 3600 + Number(of('minute')) * 60 + Number(of('second')),
  };
}
/** The instant of the midnight at which a day begins in a zone. */
function midnightIn(zone: string, day: string): number {
  for (let t = Date.parse(`${day}T00:00:00Z`) / 1000 - 14 * 3600; ; t += 900) {
    const clock = clockOf(zone, t);
    if (clock.date === day && clock.time === 0) return t;
  }
}
const drawn = fc.record({
  zone: fc.constantFrom(...zones),
  day: fc.integer({ min: 0, max: 2500 }).map((k) => new Date(Date.UTC(2024, 0, 1 + k)).toISOString().slice(0, 10)),
  elapsed: fc.integer({ min: 0, max: 20 * 86_400 }),
});

describe('clocks that change', () => {
  test('local time is that of the time zone database', () => {
    fc.assert(
      fc.property(drawn, ({ zone: [zone, ahead], day, elapsed }) => {
        const calendar = { changes: europeanSummerTime(day, 21, ahead) };
        const begin = midnightIn(zone, day);
        const clock = clockOf(zone, begin + elapsed);
        const days = Math.round((Date.parse(clock.date) - Date.parse(day)) / 86_400_000);
        const [first, second] = (['first', 'second'] as const).map((which) =>
          elapsedAt(calendar, days, seconds(clock.time), which),
        );
        expect([first, second]).toContain(elapsed);
        expect(second! - first! === 0 || second! - first! === 3600).toBe(true);
        // peak hours go by the clock
        const stretch = { from: seconds(elapsed), to: seconds(elapsed + 1) };
        const weekday = clockOf(zone, begin + 1).weekday;
        expect(offPeakWindows(smartChargingPeak, weekday, stretch, calendar).length === 0).toBe(
          isPeak(smartChargingPeak, clock.weekday, seconds(clock.time)),
        );
      }),
      { numRuns: 300, seed: seedOf(61) },
    );
  });

  test('windows outside the peak hold every second that is none, across changes and holidays', () => {
    fc.assert(
      fc.property(
        drawn,
        fc.array(fc.integer({ min: 0, max: 14 }), { maxLength: 3 }),
        fc.array(fc.integer({ min: 0, max: 14 * 86_400 - 1 }), { minLength: 10, maxLength: 10 }),
        ({ zone: [zone, ahead], day }, holidays, moments) => {
          const calendar: LocalCalendar = { changes: europeanSummerTime(day, 15, ahead), holidays };
          const begin = midnightIn(zone, day);
          const first = clockOf(zone, begin + 1).weekday;
          const windows = offPeakWindows(smartChargingPeak, first, { from: hours(0), to: hours(14 * 24) }, calendar);
          for (const t of moments) {
            const clock = clockOf(zone, begin + t);
            const dayOf = Math.round((Date.parse(clock.date) - Date.parse(day)) / 86_400_000);
            const peak = isPeak(smartChargingPeak, clock.weekday, seconds(clock.time)) && !holidays.includes(dayOf);
            expect(windows.some((w) => w.from <= t && t < w.to)).toBe(!peak);
          }
        },
      ),
      { numRuns: 60, seed: seedOf(62) },
    );
  });

  test('an hour that is skipped comes with the change; one that comes twice, twice', () => {
    // 28 March 2027, London: 01:00 becomes 02:00; 31 October: 02:00 becomes 01:00
    const forward = { changes: europeanSummerTime('2027-03-28', 1, 0) };
    expect(elapsedAt(forward, 0, hours(1.5))).toBe(3600);
    expect(elapsedAt(forward, 0, hours(7))).toBe(6 * 3600);
    const back = { changes: europeanSummerTime('2027-10-31', 1, 0) };
    expect([elapsedAt(back, 0, hours(1.5)), elapsedAt(back, 0, hours(1.5), 'second')]).toEqual([5400, 9000]);
    expect(elapsedAt(back, 0, hours(7))).toBe(8 * 3600);
  });

  test('a tariff by the clock has its five cheap hours in the night that has 25, four in the others, three in that of 23', () => {
    // cheap from 01:00 to 05:00, as the clock shows; central Europe changes at 02:00 and 03:00
    const price = Array.from({ length: 24 }, (_, hour) => (hour >= 1 && hour < 5 ? 0.09 : 0.29));
    const cheap = (day: string) =>
      inLocalTime(
        price,
        { from: hours(0), to: hours(12), step: hours(0.5) },
        { changes: europeanSummerTime(day, 1, 1) },
      ).values.filter((p) => p < 0.1).length / 2;
    expect([cheap('2027-10-31'), cheap('2027-10-30'), cheap('2027-03-28')]).toEqual([5, 4, 3]);
  });

  test('a vehicle that stands from six to seven has twelve hours where clocks go forward', () => {
    // Saturday to Sunday: no peak; 18:00 to 07:00 are 13 h by the clock and 12 h that pass
    const calendar = { changes: europeanSummerTime('2027-03-27', 2, 0) };
    const stay = { from: elapsedAt(calendar, 0, hours(18)), to: elapsedAt(calendar, 1, hours(7)) };
    const charging = { kind: 'off-peak', peak: smartChargingPeak, first: 'Saturday', calendar } as const;
    const [window] = windowsOf(charging, stay, 'car');
    expect((window?.to as number) - (window?.from as number)).toBe(12 * 3600);
    const found = schedule({
      network: { nodes: [node('intake', perLine(32))], points: [point('drive', 'intake')] },
      sessions: [{ id: 'car', point: 'drive', arrives: stay.from, leaves: stay.to, energy: wattHours(100_000) }],
      from: stay.from,
      to: seconds(stay.to),
      step: hours(0.5),
      voltage: volts(230),
      policy: 'earliest-deadline',
      stage: 'continuous',
      hours: charging,
    });
    // 32 A · 230 V · 12 h
    expect(found.sessions[0]?.delivered).toBeCloseTo(32 * 230 * 12, 3);
  });

  test('a bank holiday that a rule excepts has no peak', () => {
    const day = { from: hours(0), to: hours(24) };
    expect(offPeakWindows(smartChargingPeak, 'Monday', day, { holidays: [0] })).toEqual([day]);
  });
});

test('what is no calendar is refused, each with its path', () => {
  const at = (calendar: LocalCalendar) =>
    problemsOf(() => offPeakWindows(smartChargingPeak, 'Monday', { from: hours(0), to: hours(1) }, calendar));
  expect(
    at({
      changes: [
        { at: seconds(10), by: seconds(0) },
        { at: seconds(5), by: seconds(3600) },
      ],
      holidays: [0.5],
    }),
  ).toEqual([
    'calendar.changes[0].by: must be up to 43200 s either way, not 0',
    'calendar.changes[1].at: must be after the one ahead',
    'calendar.holidays[0]: must be the whole number of a day',
  ]);
  expect(at(7 as never)).toEqual(['calendar: must be a calendar']);
  expect(at({ holidays: 3 as never })).toEqual(['calendar.holidays: must be a list of days']);
  expect(problemsOf(() => elapsedAt({}, 0.5, hours(25), 'third' as never))).toEqual([
    'day: must be a whole number',
    'time: must be at most 86400',
    "which: must be one of first, second, not 'third'",
  ]);
  expect(
    problemsOf(() => inLocalTime([], { from: hours(1), to: hours(1), step: hours(1) }, {})).length,
  ).toBeGreaterThan(1);
  expect(problemsOf(() => europeanSummerTime('2027-02-30', 0, 0.1)).length).toBe(3);
});

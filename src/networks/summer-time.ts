import type { ClockChange } from '../charging/time/calendar.js';
import { invalidInput, seconds } from '../units/index.js';

const DAY = 86_400;
const HOUR = 3600;

/** Midnight of a day in UTC, s since that of 1970-01-01; undefined where there is no such day. */
function midnightOf(day: string): number | undefined {
  const time = Date.parse(`${day}T00:00:00Z`);
  return /^\d{4}-\d\d-\d\d$/.test(day) && Number.isFinite(time) && new Date(time).toISOString().startsWith(day)
    ? time / 1000
    : undefined;
}

/** One o'clock in UTC on the last Sunday of a month, 1 for January, s since 1970-01-01. */
function lastSunday(year: number, month: number): number {
  const last = new Date(Date.UTC(year, month, 0));
  return last.getTime() / 1000 - last.getUTCDay() * DAY + HOUR;
}

/**
 * Changes of the clocks in the days that follow one: summer time of Europe, the United Kingdom among it, from one o'clock UTC on
 * the last Sunday of March to that of October. Directive 2000/84/EC; Summer Time Order 2002. As recalled; what a country
 * decides otherwise is not in it.
 * @param first the first day, `yyyy-mm-dd`
 * @param days how many days, 1 and up
 * @param aheadOfUtc hours by which standard time is ahead of UTC: 0 in Britain, 1 in central Europe
 * @returns changes, s that have passed since local midnight of the first day, in order of time
 * @throws CalculationError `invalid-input` with everything that is wrong
 * @example
 * ```ts
 * import { europeanSummerTime } from 'ohmwright/networks';
 *
 * europeanSummerTime('2027-03-28', 1, 0); // => [{ at: 3600, by: 3600 }]
 * europeanSummerTime('2027-03-28', 1, 1); // => [{ at: 7200, by: 3600 }]
 * europeanSummerTime('2027-10-31', 1, 0); // => [{ at: 7200, by: -3600 }]
 * ```
 */
export function europeanSummerTime(first: string, days: number, aheadOfUtc: number): readonly ClockChange[] {
  const midnight = typeof first === 'string' ? midnightOf(first) : undefined;
  const problems = [
    ...(midnight === undefined ? [{ path: ['first'], message: 'must be a day, yyyy-mm-dd' }] : []),
    ...(Number.isInteger(days) && days >= 1 && days <= 4000
      ? []
      : [{ path: ['days'], message: 'must be a whole number from 1 to 4000' }]),
    ...(typeof aheadOfUtc === 'number' && Number.isInteger(4 * aheadOfUtc) && Math.abs(aheadOfUtc) <= 14
      ? []
      : [{ path: ['aheadOfUtc'], message: 'must be hours up to 14 either way, in quarters' }]),
  ];
  if (problems.length > 0 || midnight === undefined) throw invalidInput('the days of changes of the clocks', problems);
  const year = Number(first.slice(0, 4));
  const all = Array.from({ length: Math.ceil(days / 365) + 1 }, (_, k) => year + k).flatMap((y) => [
    { utc: lastSunday(y, 3), by: HOUR },
    { utc: lastSunday(y, 10), by: -HOUR },
  ]);
  // summer time holds already at the midnight of a first day between the two
  const standard = midnight - aheadOfUtc * HOUR;
  const summer = standard - HOUR >= lastSunday(year, 3) && standard - HOUR < lastSunday(year, 10);
  const begin = summer ? standard - HOUR : standard;
  return all
    .map(({ utc, by }) => ({ at: seconds(utc - begin), by: seconds(by) }))
    .filter(({ at }) => at > 0 && at < days * DAY + HOUR);
}

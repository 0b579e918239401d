import { type Seconds, seconds } from '../../units/index.js';
import { type Inspection, inspection, isObject } from '../network/refuse.js';
import type { RepeatingProfile } from './profiles.js';

/** A change of the clocks. @inline */
export interface ClockChange {
  /** When, s that have passed since midnight of the first day. */
  readonly at: Seconds;
  /** By how much clocks are put forward, s; below 0 where they are put back. */
  readonly by: Seconds;
}

/**
 * How local time runs beside the time that has passed. Simulations and schedules count seconds that pass; hours of
 * tariffs and of peaks, arrivals and departures are local. @inline
 */
export interface LocalCalendar {
  /** Changes of the clocks in order of time; none when absent. */
  readonly changes?: readonly ClockChange[];
  /** Days, 0 for the first, that a rule excepts from its peak hours: bank holidays where it says so; none when absent. */
  readonly holidays?: readonly number[];
}

export const DAY = 86_400;

/** Seconds by which local time is ahead at a moment, against the midnight of the first day. */
export const aheadAt = ({ changes = [] }: LocalCalendar, elapsed: number): number =>
  changes.reduce((sum, { at, by }) => (at <= elapsed ? sum + by : sum), 0);

/** Everything that is wrong with a calendar. */
export function inspectCalendar(calendar: LocalCalendar, root: readonly (string | number)[], found: Inspection): void {
  if (!isObject(calendar)) {
    found.when(true, root, 'must be a calendar');
    return;
  }
  const { changes = [], holidays = [] } = calendar;
  if (found.list(changes, [...root, 'changes']))
    for (const [k, change] of changes.entries()) {
      const path = [...root, 'changes', k];
      if (!isObject(change)) {
        found.when(true, path, 'must be a change of the clocks');
        continue;
      }
      const { at, by } = change;
      const before = changes[k - 1]?.at ?? Number.NEGATIVE_INFINITY;
      if (found.number(at, [...path, 'at'], {}))
        found.when(at <= before, [...path, 'at'], 'must be after the one ahead');
      if (found.number(by, [...path, 'by'], {}))
        found.when(Math.abs(by) > DAY / 2 || by === 0, [...path, 'by'], `must be up to ${DAY / 2} s either way, not 0`);
    }
  if (Array.isArray(holidays))
    holidays.forEach((day, k) => {
      found.when(!Number.isInteger(day), [...root, 'holidays', k], 'must be the whole number of a day');
    });
  else found.when(true, [...root, 'holidays'], 'must be a list of days');
}

/**
 * When a local time of a day comes, in seconds that pass. Of an hour that clocks skip the moment of the change; of an hour
 * that comes twice the first time, or the second.
 * @param calendar changes of the clocks
 * @param day the day, 0 for the first
 * @param time local time since midnight, s, 0 to 86 400
 * @param which of an hour that comes twice; the first when absent, which is the careful one for a departure
 * @returns s that have passed since midnight of the first day
 * @throws CalculationError `invalid-input` with everything that is wrong
 * @example
 * ```ts
 * import { hours } from 'ohmwright';
 * import { elapsedAt } from 'ohmwright/charging';
 * import { europeanSummerTime } from 'ohmwright/networks';
 *
 * // the night in which clocks go forward: from six in the evening to seven is twelve hours
 * const calendar = { changes: europeanSummerTime('2027-03-27', 2, 0) };
 * elapsedAt(calendar, 1, hours(7)) - elapsedAt(calendar, 0, hours(18)); // => 43200
 * ```
 */
export function elapsedAt(
  calendar: LocalCalendar,
  day: number,
  time: Seconds,
  which: 'first' | 'second' = 'first',
): Seconds {
  const found = inspection();
  inspectCalendar(calendar, ['calendar'], found);
  found.when(!Number.isInteger(day), ['day'], 'must be a whole number');
  if (found.number(time, ['time'], { least: 0 })) found.when(time > DAY, ['time'], `must be at most ${DAY}`);
  found.label(which, ['which'], ['first', 'second']);
  found.refuse('the local time');
  return seconds(elapsedOf(calendar, day * DAY + time, which));
}

/** When a local time, s since the midnight of the first day by the clock, comes; seconds that pass. */
function elapsedOf(calendar: LocalCalendar, local: number, which: 'first' | 'second'): number {
  const { changes = [] } = calendar;
  const starts = [Number.NEGATIVE_INFINITY, ...changes.map((c) => c.at as number)];
  const moments = starts.flatMap((from, k) => {
    const elapsed = local - aheadAt(calendar, from);
    return elapsed >= from && elapsed < (starts[k + 1] ?? Number.POSITIVE_INFINITY) ? [elapsed] : [];
  });
  const moment = which === 'first' ? moments[0] : moments.at(-1);
  if (moment !== undefined) return moment;
  // skipped: between the last moment that has not reached it and the first beyond
  return changes.find(({ at, by }) => local >= at + aheadAt(calendar, at) - by && local < at + aheadAt(calendar, at))
    ?.at as number;
}

/**
 * Values by local time of day, such as the prices of a tariff, as a profile of the seconds that pass: on the days on which
 * clocks change some come twice, or not at all.
 * @param values values of a day in order from midnight, all for the same time
 * @param clock begin and end, s since midnight of the first day; step, s, that divides the time of each value and changes of the clocks
 * @param calendar changes of the clocks
 * @returns one value for each step, from the begin
 * @throws CalculationError `invalid-input` with everything that is wrong
 * @example
 * ```ts
 * import { hours } from 'ohmwright';
 * import { inLocalTime } from 'ohmwright/charging';
 * import { europeanSummerTime } from 'ohmwright/networks';
 *
 * const price = Array.from({ length: 24 }, (_, hour) => (hour >= 1 && hour < 5 ? 0.09 : 0.29));
 * const back = { changes: europeanSummerTime('2027-10-31', 1, 1) };
 * const night = inLocalTime(price, { from: hours(0), to: hours(7), step: hours(1) }, back);
 * night.values.filter((p) => p === 0.09).length; // => 5
 * ```
 */
export function inLocalTime<V>(
  values: readonly V[],
  clock: { readonly from: Seconds; readonly to: Seconds; readonly step: Seconds },
  calendar: LocalCalendar,
): RepeatingProfile<V> {
  const found = inspection();
  inspectCalendar(calendar, ['calendar'], found);
  found.when(!isObject(clock), ['clock'], 'must be a begin, an end and a step');
  found.refuse('the values of a local day');
  const { from, to, step } = clock;
  const span = [found.number(from, ['clock', 'from'], {}), found.number(to, ['clock', 'to'], {})].every(Boolean);
  found.when(span && to <= from, ['clock', 'to'], 'must be after the begin');
  found.when(!Array.isArray(values) || values.length === 0, ['values'], 'must be at least one');
  const each = DAY / (Array.isArray(values) ? values.length : 1);
  if (found.number(step, ['clock', 'step'], { above: 0 })) {
    const whole = (time: number) => Math.abs(time / step - Math.round(time / step)) < 1e-6;
    found.when(!whole(each), ['clock', 'step'], `must divide the ${each} s of each value`);
    found.when(span && !whole(from), ['clock', 'from'], 'must be a whole number of steps');
    found.when(span && (to - from) / step > 1e6, ['clock', 'step'], 'makes more than 1000000 steps');
    for (const [k, { at, by }] of (calendar.changes ?? []).entries())
      found.when(!(whole(at) && whole(by)), ['calendar', 'changes', k], 'must come at a whole number of steps');
  }
  found.refuse('the values of a local day');
  const count = Math.ceil((to - from) / step - 1e-9);
  return {
    values: Array.from({ length: count }, (_, k) => {
      const begin = from + k * step;
      const local = begin + aheadAt(calendar, begin);
      const inDay = local - Math.floor(local / DAY + 1e-9) * DAY;
      return values[Math.min(values.length - 1, Math.floor(inDay / each + 1e-9))] as V;
    }),
    every: step,
    from,
  };
}

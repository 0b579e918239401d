import { type Seconds, seconds } from '../../units/index.js';
import type { PerLine } from '../network/network.js';
import { inspection, inspectLines, isObject } from '../network/refuse.js';
import { aheadAt, DAY, inspectCalendar, type LocalCalendar } from './calendar.js';
import type { RepeatingProfile } from './profiles.js';
import { WEEK, type Weekday } from './windows.js';

/** What may be taken in some months, on some days, in some hours. @inline */
export interface CapacityTerm {
  /** Months, 1 for January to 12; all when absent. */
  readonly months?: readonly number[];
  /** Days of the week; all when absent. */
  readonly days?: readonly Weekday[];
  /** Local time from which it holds, s since midnight; midnight when absent. */
  readonly from?: Seconds;
  /** Local time up to which it holds, s since midnight; the end of the day when absent. Before `from` it passes midnight. */
  readonly to?: Seconds;
  /** Largest current on each line, A, 0 and up. */
  readonly current: PerLine;
}

/** Whether a term holds at a local moment of a day. */
function holds({ months, days, from = seconds(0), to = seconds(DAY) }: CapacityTerm, day: Date, time: number): boolean {
  const inHours = from <= to ? time >= from && time < to : time >= from || time < to;
  return (
    inHours &&
    (months === undefined || months.includes(day.getUTCMonth() + 1)) &&
    (days === undefined || days.includes(WEEK[(day.getUTCDay() + 6) % 7] as Weekday))
  );
}

/**
 * The capacity that a network operator grants by season, day and hour, as limits of a simulation or a schedule: of several
 * terms the first that holds. What no term covers is refused; what may be taken is not guessed.
 * @param terms what may be taken when, A; the first that holds counts
 * @param clock begin and end, s since midnight of the first day, and step, s
 * @param first the first day, as 2027-01-31, and how local time runs
 * @returns one value for each step, from the begin
 * @throws CalculationError `invalid-input` with everything that is wrong, and the first moment that no term covers
 * @example
 * ```ts
 * import { amperes, hours } from 'ohmwright';
 * import { agreedCapacityOf } from 'ohmwright/charging';
 *
 * const all = (a: number) => [amperes(a), amperes(a), amperes(a)] as const;
 * const winterEvenings = { months: [11, 12, 1, 2], from: hours(16), to: hours(20), current: all(60) };
 * const { values } = agreedCapacityOf(
 *   [winterEvenings, { current: all(100) }],
 *   { from: hours(15), to: hours(21), step: hours(1) },
 *   { date: '2027-01-31' },
 * );
 * values.map(([a]) => a); // => [100, 60, 60, 60, 60, 100]
 * ```
 */
export function agreedCapacityOf(
  terms: readonly CapacityTerm[],
  clock: { readonly from: Seconds; readonly to: Seconds; readonly step: Seconds },
  first: { readonly date: string; readonly calendar?: LocalCalendar },
): RepeatingProfile<PerLine> {
  const what = 'The agreed capacity';
  const found = inspection();
  found.when(!isObject(clock), ['clock'], 'must be a begin, an end and a step');
  found.when(!isObject(first), ['first'], 'must be a day');
  found.refuse(what);
  const { from, to, step } = clock;
  const span = [found.number(from, ['clock', 'from'], {}), found.number(to, ['clock', 'to'], {})].every(Boolean);
  found.when(span && to <= from, ['clock', 'to'], 'must be after the begin');
  if (found.number(step, ['clock', 'step'], { above: 0 }) && span)
    found.when((to - from) / step > 1e6, ['clock', 'step'], 'makes more than 1000000 steps');
  const { date, calendar = {} } = first;
  const midnight =
    typeof date === 'string' && /^\d{4}-\d\d-\d\d$/.test(date) ? Date.parse(`${date}T00:00:00Z`) : Number.NaN;
  found.when(Number.isNaN(midnight), ['first', 'date'], 'must be a day, as 2027-01-31');
  inspectCalendar(calendar, ['first', 'calendar'], found);
  if (found.list(terms, ['terms']))
    terms.forEach((term, k) => {
      inspectLines(term.current, 0, found, ['terms', k, 'current']);
      for (const key of ['from', 'to'] as const)
        if (found.number(term[key], ['terms', k, key], { least: 0, optional: true }))
          found.when((term[key] ?? 0) > DAY, ['terms', k, key], `must be at most ${DAY}`);
      const { months = [], days = [] } = term;
      const known = Array.isArray(months) && months.every((m) => Number.isInteger(m) && m >= 1 && m <= 12);
      found.when(!known, ['terms', k, 'months'], 'must be whole numbers from 1 to 12');
      const week = Array.isArray(days) && days.every((d) => WEEK.includes(d));
      found.when(!week, ['terms', k, 'days'], 'must be days of the week');
    });
  found.refuse(what);
  const count = Math.ceil((to - from) / step - 1e-9);
  const values = Array.from({ length: count }, (_, k): PerLine | undefined => {
    const begin = from + k * step;
    const local = begin + aheadAt(calendar, begin);
    const day = Math.floor(local / DAY + 1e-9);
    return terms.find((term) => holds(term, new Date(midnight + day * DAY * 1000), local - day * DAY))?.current;
  });
  const open = values.indexOf(undefined);
  found.when(open >= 0, ['terms'], `do not say what may be taken at ${from + open * step} s`);
  found.refuse(what);
  return { values: values as readonly PerLine[], every: step, from };
}

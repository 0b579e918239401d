import { type Seconds, seconds } from '../../units/index.js';
import { type Inspection, inspection, isObject } from '../network/refuse.js';
import { aheadAt, DAY, inspectCalendar, type LocalCalendar } from './calendar.js';
import { type RandomDelay, startDelayOf } from './start-delay.js';

/** A stretch of time; clock values in s since midnight of the first day. @inline */
export interface TimeWindow {
  /** Its begin, s. */
  readonly from: Seconds;
  /** Its end, s. */
  readonly to: Seconds;
}

/** Days of the week. @inline */
export type Weekday = 'Monday' | 'Tuesday' | 'Wednesday' | 'Thursday' | 'Friday' | 'Saturday' | 'Sunday';

/** Hours of some days of the week in which vehicles do not charge by default. */
export interface PeakHours {
  /** The days of the week that have them. */
  readonly days: readonly Weekday[];
  /** Periods in order of time, none before the end of the one ahead of it, s since midnight. */
  readonly periods: readonly TimeWindow[];
}

/** When vehicles may charge. */
export type ChargingHours =
  /** At any time. */
  | { readonly kind: 'any'; readonly delay?: RandomDelay }
  /** Outside the peak hours; `first` is the weekday of the first day; days of 24 hours, and no holidays, without a calendar. */
  | {
      readonly kind: 'off-peak';
      readonly peak: PeakHours;
      readonly first: Weekday;
      readonly calendar?: LocalCalendar;
      readonly delay?: RandomDelay;
    }
  /** In these windows only: in order of time, none before the end of the one ahead of it. */
  | { readonly kind: 'windows'; readonly windows: readonly TimeWindow[]; readonly delay?: RandomDelay };

/** The days of a week in their order. */
export const WEEK: readonly Weekday[] = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];

/**
 * Whether a time lies in peak hours; a period's first second does, its last end does not.
 * @param peak the peak hours, such as `smartChargingPeak`
 * @param weekday day of the week by local time
 * @param time local time since midnight, s, 0 to 86 400
 * @returns true in the peak hours
 * @throws CalculationError `invalid-input` with everything that is wrong
 * @example
 * ```ts
 * import { hours } from 'ohmwright';
 * import { isPeak } from 'ohmwright/charging';
 * import { smartChargingPeak } from 'ohmwright/networks';
 *
 * isPeak(smartChargingPeak, 'Monday', hours(16)); // => true
 * isPeak(smartChargingPeak, 'Monday', hours(22)); // => false
 * isPeak(smartChargingPeak, 'Sunday', hours(18)); // => false
 * ```
 */
export function isPeak(peak: PeakHours, weekday: Weekday, time: Seconds): boolean {
  const found = inspection();
  inspectPeak(peak, ['peak'], found);
  found.label(weekday, ['weekday'], WEEK);
  found.number(time, ['time'], {});
  found.refuse('the peak hours');
  return inPeak(peak, weekday, time);
}

const inPeak = ({ days, periods }: PeakHours, weekday: Weekday, time: number): boolean =>
  days.includes(weekday) && periods.some(({ from, to }) => time >= from && time < to);

/** Longest stretch that is divided by peak hours, s: ten years. */
const MOST_STRETCH = 315_360_000;

/**
 * The parts of a stretch of time that lie outside peak hours, which are local.
 * @param peak the peak hours, such as `smartChargingPeak`
 * @param first weekday of the first day
 * @param stretch clock values, s since midnight of the first day
 * @param calendar changes of the clocks, and holidays that have no peak hours; days of 24 hours and none when absent
 * @returns windows in order, none of them empty
 * @throws CalculationError `invalid-input` with everything that is wrong
 * @example
 * ```ts
 * import { hours } from 'ohmwright';
 * import { offPeakWindows } from 'ohmwright/charging';
 * import { smartChargingPeak } from 'ohmwright/networks';
 *
 * offPeakWindows(smartChargingPeak, 'Monday', { from: hours(18), to: hours(31) }); // => [{ from: 79200, to: 111600 }]
 * ```
 */
export function offPeakWindows(
  peak: PeakHours,
  first: Weekday,
  stretch: TimeWindow,
  calendar: LocalCalendar = {},
): TimeWindow[] {
  const found = inspection();
  inspectPeak(peak, ['peak'], found);
  found.label(first, ['first'], WEEK);
  inspectStretch(stretch, ['stretch'], found);
  inspectCalendar(calendar, ['calendar'], found);
  found.refuse('the peak hours');
  const { from, to } = stretch;
  const { changes = [], holidays = [] } = calendar;
  const edges = new Set<number>([from, to]);
  const add = (edge: number) => {
    if (edge > from && edge < to) edges.add(edge);
  };
  // edges by the clock of each stretch between changes: one that is not in force cuts where nothing changes
  const offsets = new Set([0, ...changes.map((c) => aheadAt(calendar, c.at))]);
  for (const { at } of changes) add(at);
  for (const ahead of offsets)
    for (let day = Math.floor((from + ahead) / DAY); day * DAY < to + ahead; day++) {
      if (holidays.length > 0) for (const midnight of [day, day + 1]) add(midnight * DAY - ahead);
      for (const period of peak.periods) for (const time of [period.from, period.to]) add(day * DAY + time - ahead);
    }
  const sorted = [...edges].sort((a, b) => a - b);
  const windows: { from: Seconds; to: Seconds }[] = [];
  for (let k = 0; k + 1 < sorted.length; k++) {
    const [a, b] = [sorted[k]!, sorted[k + 1]!];
    const local = a + aheadAt(calendar, a);
    const day = Math.floor(local / DAY);
    const weekday = WEEK[(((WEEK.indexOf(first) + day) % 7) + 7) % 7]!;
    if (!holidays.includes(day) && inPeak(peak, weekday, local - day * DAY)) continue;
    const last = windows.at(-1);
    if (last?.to === a) last.to = seconds(b);
    else windows.push({ from: seconds(a), to: seconds(b) });
  }
  return windows;
}

/**
 * When one vehicle may charge: its stay within the hours, each begin put off by a random delay where there is one. The
 * end of a window is never put off.
 * @param hours when vehicles may charge
 * @param stay arrival and departure, s since midnight of the first day
 * @param name of the session, for its delays
 * @returns windows in order, none of them empty
 * @throws CalculationError `out-of-range` for a delay beyond 86 400 s
 * @example
 * ```ts
 * import { hours, seconds } from 'ohmwright';
 * import { windowsOf } from 'ohmwright/charging';
 * import { smartChargingPeak } from 'ohmwright/networks';
 *
 * const night = { from: hours(18), to: hours(31) };
 * windowsOf({ kind: 'any' }, night, 'car'); // => [{ from: 64800, to: 111600 }]
 * windowsOf({ kind: 'windows', windows: [{ from: hours(24.5), to: hours(28.5) }] }, night, 'car'); // => [{ from: 88200, to: 102600 }]
 * const [delayed] = windowsOf(
 *   { kind: 'off-peak', peak: smartChargingPeak, first: 'Monday', delay: { seed: 4711, maximum: seconds(600) } },
 *   night,
 *   'car',
 * );
 * delayed!.from >= hours(22) && delayed!.from <= hours(22) + 600; // => true
 * ```
 */
export function windowsOf(hours: ChargingHours, stay: TimeWindow, name: string): TimeWindow[] {
  const found = inspection();
  if (hours === undefined) found.when(true, ['hours'], 'must say when vehicles may charge');
  inspectHours(hours, found);
  inspectStretch(stay, ['stay'], found);
  found.when(typeof name !== 'string', ['name'], 'must be a name');
  found.refuse('the hours of charging');
  const open =
    hours.kind === 'any'
      ? [stay]
      : hours.kind === 'off-peak'
        ? offPeakWindows(hours.peak, hours.first, stay, hours.calendar)
        : hours.windows.map((w) => ({
            from: seconds(Math.max(w.from, stay.from)),
            to: seconds(Math.min(w.to, stay.to)),
          }));
  const { delay } = hours;
  return open
    .map((w) => ({ from: delay ? seconds(w.from + startDelayOf(delay, `${name}/${w.from}`)) : w.from, to: w.to }))
    .filter((w) => w.to > w.from);
}

/** Everything that is wrong with the hours in which vehicles may charge. */
export function inspectHours(hours: ChargingHours | undefined, found: Inspection): void {
  if (hours === undefined) return;
  if (!isObject(hours)) {
    found.when(true, ['hours'], 'must say when vehicles may charge');
    return;
  }
  found.label(hours.kind, ['hours', 'kind'], ['any', 'off-peak', 'windows']);
  const { delay } = hours;
  if (delay !== undefined && !isObject(delay)) found.when(true, ['hours', 'delay'], 'must be a delay');
  else if (delay) {
    const { seed, maximum } = delay;
    if (found.number(seed, ['hours', 'delay', 'seed'], {}))
      found.when(!Number.isSafeInteger(seed), ['hours', 'delay', 'seed'], 'must be a whole number');
    if (found.number(maximum, ['hours', 'delay', 'maximum'], { least: 0 }))
      found.when(maximum > DAY, ['hours', 'delay', 'maximum'], `must be at most ${DAY}`);
  }
  if (hours.kind === 'windows') inspectWindows(hours.windows, ['hours', 'windows'], found);
  if (hours.kind !== 'off-peak') return;
  found.when(!WEEK.includes(hours.first), ['hours', 'first'], `there is no weekday '${dayWords(hours.first)}'`);
  inspectPeak(hours.peak, ['hours', 'peak'], found);
  if (hours.calendar !== undefined) inspectCalendar(hours.calendar, ['hours', 'calendar'], found);
}

const dayWords = (day: unknown): string => (typeof day === 'string' ? day : typeof day);

function inspectPeak(peak: PeakHours, root: readonly string[], found: Inspection): void {
  if (!isObject(peak) || !Array.isArray(peak.days)) {
    found.when(true, root, 'must be peak hours');
    return;
  }
  const { days, periods } = peak;
  days.forEach((day, k) => {
    found.when(!WEEK.includes(day), [...root, 'days', k], `there is no weekday '${dayWords(day)}'`);
  });
  inspectWindows(periods, [...root, 'periods'], found);
  // what is no list of periods has been named
  const list: unknown = periods;
  if (!Array.isArray(list) || !list.every(isObject)) return;
  periods.forEach(({ from, to }, k) => {
    const outside = from < 0 || to > DAY;
    found.when(outside, [...root, 'periods', k], `must lie within a day, 0 s to ${DAY} s`);
  });
}

function inspectStretch(stretch: TimeWindow, root: readonly string[], found: Inspection): void {
  if (!isObject(stretch)) {
    found.when(true, root, 'must have a begin and an end');
    return;
  }
  const { from, to } = stretch;
  const ends = [found.number(from, [...root, 'from'], {}), found.number(to, [...root, 'to'], {})];
  if (ends.every(Boolean))
    found.when(to - from > MOST_STRETCH, [...root, 'to'], `lies more than ${MOST_STRETCH} s after the begin`);
}

/** Windows in order of time, none before the end of the one ahead of it. */
function inspectWindows(windows: readonly TimeWindow[], root: readonly (string | number)[], found: Inspection): void {
  if (!found.list(windows, root)) return;
  let end = Number.NEGATIVE_INFINITY;
  windows.forEach(({ from, to }, k) => {
    const path = [...root, k];
    if (found.number(from, [...path, 'from'], {}))
      found.when(
        from < end,
        [...path, 'from'],
        `begins at ${from} s, before the end of the window ahead of it, ${end} s`,
      );
    if (found.number(to, [...path, 'to'], {})) {
      found.when(to <= from, [...path, 'to'], `ends at ${to} s, not after its begin at ${from} s`);
      end = Math.max(end, to);
    }
  });
}

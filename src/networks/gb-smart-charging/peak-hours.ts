import { table } from '../../core/index.js';
import type { Seconds } from '../../units/index.js';

/**
 * Peak hours, in which a private charge point does not charge by default. SI 2021/1467. Electric Vehicles (Smart
 * Charge Points) Regulations 2021 (SI 2021/1467), regulation 2.
 */
export const peakHours = /* @__PURE__ */ table({
  id: 'gb-smart-charging/peak-hours',
  title: 'Peak hours of weekdays, since midnight',
  axes: [
    { name: 'end', labels: ['from', 'to'] },
    { name: 'period', labels: ['morning', 'evening'] },
  ],
  columns: [['from'], ['to']],
  rows: [
    ['morning', 28800, 39600],
    ['evening', 57600, 79200],
  ],
  cell: 'timeOfDay',
  unit: 's',
  source: {
    document: 'Electric Vehicles (Smart Charge Points) Regulations 2021 (SI 2021/1467)',
    edition: '2021',
    clause: 'regulation 2',
    provenance: 'two-sources',
    note: 'press reports of the policy and a note on the regulation; the clause itself was not seen',
  },
  notes: ['08:00 to 11:00 and 16:00 to 22:00, Monday to Friday; not at weekends. Great Britain, private points only.'],
});

/** Days of the week. */
export type Weekday = 'Monday' | 'Tuesday' | 'Wednesday' | 'Thursday' | 'Friday' | 'Saturday' | 'Sunday';

/**
 * Whether a time lies in the peak hours of SI 2021/1467; a period's first second does, its last end does not.
 * @param weekday day of the week by local time
 * @param time local time since midnight, s, 0 to 86 400
 * @returns true in the peak hours
 * @example
 * ```ts
 * import { hours } from 'ohmwright';
 * import { isPeak } from 'ohmwright/charging';
 *
 * isPeak('Monday', hours(16)); // => true
 * isPeak('Monday', hours(22)); // => false
 * isPeak('Sunday', hours(18)); // => false
 * ```
 */
export function isPeak(weekday: Weekday, time: Seconds): boolean {
  if (weekday === 'Saturday' || weekday === 'Sunday') return false;
  return (['morning', 'evening'] as const).some(
    (period) => time >= peakHours.get({ end: 'from', period }) && time < peakHours.get({ end: 'to', period }),
  );
}

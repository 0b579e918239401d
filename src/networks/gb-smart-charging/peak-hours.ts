import type { PeakHours } from '../../charging/time/windows.js';
import { table } from '../../core/index.js';

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

/** Peak hours of SI 2021/1467, as `ChargingHours` take them. */
export const smartChargingPeak: PeakHours = {
  days: ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday'],
  periods: [
    {
      from: /* @__PURE__ */ peakHours.get({ end: 'from', period: 'morning' }),
      to: /* @__PURE__ */ peakHours.get({ end: 'to', period: 'morning' }),
    },
    {
      from: /* @__PURE__ */ peakHours.get({ end: 'from', period: 'evening' }),
      to: /* @__PURE__ */ peakHours.get({ end: 'to', period: 'evening' }),
    },
  ],
};

import { taperedChargeTime } from '../../src/charging/definitions.js';
import { taperOf } from '../../src/charging/index.js';
import { kilowattHours, kilowatts, ratio } from '../../src/index.js';
import type { PublishedCase } from '../support/published.js';

const car = {
  battery: kilowattHours(60),
  peakPower: kilowatts(100),
  from: ratio(0.1),
  to: ratio(0.8),
  taper: taperOf('median'),
};

/** Charges whose power falls as the battery fills. */
export const cases: readonly PublishedCase[] = (
  [
    [150, 31.79],
    [50, 50.41],
  ] as const
).map(([point, published]) => ({
  id: `direct-current-10-80-${point}-kw`,
  about: `time from 10 to 80 % of 60 kWh, own peak of 100 kW, at a point of ${point} kW, median of measured cars`,
  source: { document: 'Worked examples for larger sites', where: 'median of 74 measured curves, trapezoids of 0.1 %' },
  provenance: 'derived',
  exercises: ['tapered-charge-time', 'charging/direct-current-taper'],
  ours: () => taperedChargeTime({ ...car, pointPower: kilowatts(point) }) / 60,
  published,
  unit: 'min',
  tolerance: 0.005001,
}));

import { expect, test } from 'vitest';
import { isPeak } from '../../src/charging/index.js';
import { hours } from '../../src/index.js';
import { peakHours, startDelays } from '../../src/networks/definitions.js';
import { smartChargingPeak } from '../../src/networks/index.js';

test('peak hours and delays of SI 2021/1467', () => {
  expect(peakHours.get({ end: 'from', period: 'evening' })).toBe(hours(16));
  expect([7.99, 8, 10.99, 11, 15.99, 16, 21.99, 22].map((h) => isPeak(smartChargingPeak, 'Friday', hours(h)))).toEqual([
    false,
    true,
    true,
    false,
    false,
    true,
    true,
    false,
  ]);
  expect(isPeak(smartChargingPeak, 'Saturday', hours(17))).toBe(false);
  expect(startDelays.get({ unit: 'delay', maximum: 'default' })).toBe(600);
  expect(startDelays.get({ unit: 'delay', maximum: 'settable' })).toBe(1800);
});

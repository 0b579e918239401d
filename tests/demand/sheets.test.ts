/** Sheets of demand hang together: what a line uses was taken down before, and what was taken down is used. */
import { expect, test } from 'vitest';
import { bs7671Demand } from '../../src/codes/bs7671/demand.js';
import {
  adequacyOf,
  coincidentCharging,
  demandOfDwellings,
  mountingResults,
  notificationOf,
} from '../../src/demand/index.js';
import { codeOfPracticeMounting } from '../../src/guidance/index.js';
import {
  amperes,
  hours,
  kilovoltAmperes,
  kilowatts,
  known,
  millimetres,
  Recorder,
  ratio,
  recorder,
  squareMillimetres,
  wattHours,
  writeSheet,
} from '../../src/index.js';
import { germany, greatBritain } from '../../src/networks/index.js';
import { verifySheet } from '../../src/verify/index.js';
import { groupMethods, type LoadSpec, point, premises } from './premises.js';

const loads: readonly LoadSpec[] = [
  { purpose: 'lighting', current: 6 },
  { purpose: 'socket-outlets', current: 32 },
  { purpose: 'socket-outlets', current: 20, standardCircuit: false },
  { purpose: 'cooking', current: 31.3, withSocket: true },
  { purpose: 'heat-pump', current: 16, existing: false },
  { purpose: 'instantaneous-water-heating', current: 41 },
  { purpose: 'storage', current: 16, existing: false },
];
const house = premises(
  loads,
  [point('ev', 32), point('second', 16)],
  {
    meteredDemand: { current: known(amperes(22)), about: 'logger' },
  },
  { control: { name: 'limiter', limit: known(amperes(60)), controls: ['ev'] } },
);
const options = {
  assembly: 'IEC 61439-3',
  meteredMargin: ratio(0.2),
  readings: {
    readings: [{ start: '2026-01-05T17:30:00Z', energy: wattHours(3200) }],
    season: 'winter',
    margin: ratio(0.2),
  },
  factors: {
    utilisation: Object.fromEntries(loads.map((l) => [l.purpose, ratio(0.8)])),
    simultaneity: { db: ratio(0.9) },
  },
} as const;

test.each([
  ['dwelling', (s: Recorder) => adequacyOf(bs7671Demand, house, { premises: 'dwelling', ...options }, s)],
  ['shop', (s: Recorder) => adequacyOf(bs7671Demand, house, { premises: 'small-shop', ...options }, s)],
  [
    'three phases, large tails, looped',
    (s: Recorder) =>
      adequacyOf(
        bs7671Demand,
        premises(loads, [point('ev', 32, ['L1', 'L2', 'L3'])], {
          phases: known(3),
          tails: known(squareMillimetres(35)),
          looped: known(true),
        }),
        { premises: 'small-shop' },
        s,
      ),
  ],
  ['hotel', (s: Recorder) => adequacyOf(bs7671Demand, house, { premises: 'small-hotel' }, s)],
  ['notification', (s: Recorder) => notificationOf(bs7671Demand, greatBritain, house, { premises: 'dwelling' }, s)],
  ['Germany', (s: Recorder) => notificationOf(bs7671Demand, germany, house, { premises: 'dwelling' }, s)],
  [
    'mounting',
    (s: Recorder) =>
      mountingResults(
        codeOfPracticeMounting,
        { outlet: known(millimetres(900)), gasMeter: known(millimetres(300)) },
        s,
      ),
  ],
  [
    'dwellings',
    (s: Recorder) =>
      demandOfDwellings(
        groupMethods,
        { dwellings: 10, each: kilovoltAmperes(6), storageHeating: false, electricWaterHeating: true },
        s,
      ),
  ],
  [
    'charging',
    (s: Recorder) =>
      coincidentCharging(
        {
          groups: [
            {
              count: 4,
              power: kilowatts(7.36),
              participation: ratio(0.5),
              sessionDuration: hours(2),
              arrivalWindow: hours(4),
            },
          ],
          percentile: ratio(0.99),
          timed: known(false),
        },
        s,
      ),
  ],
] as const)('%s', (title, run) => {
  const sheet = recorder(title);
  run(sheet);
  expect(sheet).toBeInstanceOf(Recorder);
  expect(sheet.entries.length).toBeGreaterThan(0);
  expect(verifySheet(writeSheet(sheet)).problems).toEqual([]);
});

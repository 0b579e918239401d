/** Sheets of demand hang together: what a line uses was taken down before, and what was taken down is used. */
import { expect, test } from 'vitest';
import {
  adequacyOf,
  coincidentCharging,
  demandOfDwellings,
  mountingResults,
  notificationOf,
} from '../../src/demand/index.js';
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
} from '../../src/index.js';
import { type LoadSpec, point, premises } from './premises.js';

interface Taken {
  readonly value: unknown;
  used: boolean;
  readonly where: string;
}

function latest(places: readonly Map<string, Taken>[], name: string): Taken | undefined {
  for (let i = places.length - 1; i >= 0; i--) {
    const found = places[i]?.get(name);
    if (found) return found;
  }
  return undefined;
}

/** Everything that does not hang together. */
function loose(sheet: Recorder, above: readonly Map<string, Taken>[] = []): string[] {
  const own = new Map<string, Taken>();
  const places = [...above, own];
  const faults: string[] = [];
  const inside = new Map<unknown, Map<string, Taken>>();
  const put = (name: string, value: unknown, used: boolean) => {
    own.set(name, { value, used, where: `${sheet.title}: ${name}` });
  };
  const use = (name: string, value: unknown) => {
    const found = latest(places, name);
    if (!found || found.value !== value) faults.push(`${sheet.title}: ${name} was not taken down`);
    else found.used = true;
  };
  const useAll = (values: object) => {
    for (const [name, value] of Object.entries(values))
      if (typeof value === 'number' || (typeof value === 'string' && latest(places, name))) use(name, value);
  };
  for (const entry of sheet.entries) {
    if (entry.kind === 'given' || entry.kind === 'label') put(entry.name, entry.value, false);
    else if (entry.kind === 'look') {
      for (const axis of entry.table.axes) use(axis.name, entry.keys[axis.name]);
      put(entry.table.cell, entry.value, true);
    } else if (entry.kind === 'step') {
      useAll(entry.values);
      put(entry.formula.output, entry.value, true);
    } else if (entry.kind === 'gather') {
      for (const part of entry.parts) {
        const found = inside.get(part)?.get(entry.from);
        if (!found) faults.push(`${sheet.title}: a part has no ${entry.from}`);
        else found.used = true;
      }
      put(entry.to, entry.value, true);
    } else if (entry.kind === 'check') useAll(entry.evidence);
    else if (entry.kind === 'part') {
      const part = entry.part;
      const kept: Map<string, Taken>[] = [];
      faults.push(...looseInside(part, places, kept));
      inside.set(part, kept[0] ?? new Map());
    }
  }
  values.set(sheet, own);
  return faults;
}
const values = new Map<Recorder, Map<string, Taken>>();
function looseInside(part: Recorder, places: readonly Map<string, Taken>[], kept: Map<string, Taken>[]): string[] {
  const faults = loose(part, places);
  kept.push(values.get(part) ?? new Map());
  return faults;
}

/** What was taken down anywhere and never used. */
function unused(sheet: Recorder): string[] {
  const here = [...(values.get(sheet)?.values() ?? [])].filter((t) => !t.used).map((t) => t.where);
  return [...here, ...sheet.entries.flatMap((e) => (e.kind === 'part' ? unused(e.part) : []))];
}

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
  ['dwelling', (s: Recorder) => adequacyOf(house, { premises: 'dwelling', ...options }, s)],
  ['shop', (s: Recorder) => adequacyOf(house, { premises: 'small-shop', ...options }, s)],
  [
    'three phases, large tails, looped',
    (s: Recorder) =>
      adequacyOf(
        premises(loads, [point('ev', 32, ['L1', 'L2', 'L3'])], {
          phases: known(3),
          tails: known(squareMillimetres(35)),
          looped: known(true),
        }),
        { premises: 'small-shop' },
        s,
      ),
  ],
  ['hotel', (s: Recorder) => adequacyOf(house, { premises: 'small-hotel' }, s)],
  ['notification', (s: Recorder) => notificationOf(house, { premises: 'dwelling', country: 'GB' }, s)],
  ['Germany', (s: Recorder) => notificationOf(house, { premises: 'dwelling', country: 'DE' }, s)],
  [
    'mounting',
    (s: Recorder) =>
      mountingResults({ outlet: known(millimetres(900)), gasMeter: known(millimetres(300)) }, 'general', s),
  ],
  [
    'dwellings',
    (s: Recorder) =>
      demandOfDwellings(
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
  expect(loose(sheet)).toEqual([]);
  expect(unused(sheet)).toEqual([]);
});

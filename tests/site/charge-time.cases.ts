import { amperes, kilowattHours, kilowatts, ratio, volts } from '../../src/index.js';
import { chargePowerFromCurrent, chargeTimeAtPower } from '../../src/site/definitions.js';
import type { PublishedCase } from '../support/published.js';

const power = (
  [
    [1, 16, 3.7],
    [1, 32, 7.4],
    [3, 16, 11],
    [3, 32, 22],
  ] as const
).map(
  ([lines, current, published]): PublishedCase => ({
    id: `charging-power-${lines}-phase-${current}-a`,
    about: `charging power of ${current} A on ${lines === 1 ? 'one line' : 'three lines'} at 230 V`,
    source: {
      document: 'help pages of an installer and of a seller of charge points',
      where: 'tables of charging power',
    },
    provenance: 'two-sources',
    exercises: ['charge-power-from-current'],
    ours: () =>
      chargePowerFromCurrent({
        nominalVoltage: volts(230),
        chargeCurrent: amperes(current),
        phases: ratio(lines),
      }) / 1000,
    published,
    unit: 'kW',
    tolerance: lines === 1 ? 0.05 : 0.5,
  }),
);

const exactPower: PublishedCase = {
  id: 'charging-power-32-a-exact',
  about: 'charging power of 32 A on one line at 230 V',
  source: { document: 'page of a maker of connectors', where: 'plugs of type 2' },
  provenance: 'one-source',
  exercises: ['charge-power-from-current'],
  ours: () =>
    chargePowerFromCurrent({ nominalVoltage: volts(230), chargeCurrent: amperes(32), phases: ratio(1) }) / 1000,
  published: 7.36,
  unit: 'kW',
  tolerance: 0.005,
};

// battery in kWh, power in kW, printed time in h; the print cuts 8.108
const times = (
  [
    [60, 7.4, 8.1, 0.01],
    [60, 2.3, 26, 0.5],
    [30, 4.4, 7, 0.5],
  ] as const
).map(
  ([energy, kilowatt, published, tolerance]): PublishedCase => ({
    id: `charging-time-${energy}-kwh-at-${String(kilowatt).replace('.', '-')}-kw`,
    about: `time for ${energy} kWh at ${kilowatt} kW, losses left out`,
    source: { document: 'pages of sellers of charge points', where: 'how long a charge takes, examples' },
    provenance: 'one-source',
    exercises: ['charge-time-at-power'],
    ours: () => hoursFor(energy, kilowatt),
    published,
    unit: 'h',
    tolerance,
  }),
);

function hoursFor(energy: number, kilowatt: number): number {
  return (
    chargeTimeAtPower({
      energyNeeded: kilowattHours(energy),
      availablePower: kilowatts(kilowatt),
      chargeEfficiency: ratio(1),
    }) / 3600
  );
}

const misread: PublishedCase = {
  id: 'charging-time-60-kwh-at-11-kw',
  about: 'time for 60 kWh at 11 kW, losses left out',
  source: { document: 'page of a seller of charge points', where: 'how long a charge takes, second example' },
  provenance: 'one-source',
  exercises: ['charge-time-at-power'],
  ours: () => hoursFor(60, 11),
  published: 5.75,
  unit: 'h',
  tolerance: 0.01,
  differs: 'the print reads the decimals of 5.45 h as minutes and gives 5 h 45 min; it is 5 h 27 min',
};

/** Figures of charging power and charging time. */
export const cases: readonly PublishedCase[] = [...power, exactPower, ...times, misread];

import { lowestSupplyVoltage } from '../../src/codes/bs7671/earthing-checks.js';
import { amperes, metres, ohmMetres, ohms, ratio, squareMetres, volts, watts } from '../../src/index.js';
import {
  arithmeticSum,
  heldCurrentElectrodeLimit,
  heldPowerTouchVoltage,
  openPenSourceVoltage,
  undetectedVoltageOf,
  vectorSum,
  windowMarginOf,
} from '../../src/physics/definitions.js';
import { openPenTouchVoltage, plateResistance, stripResistance } from '../../src/physics/index.js';
import type { PublishedCase } from '../support/published.js';

// Open PEN conductor and simple electrodes, worked out apart by node equations and closed forms.

const nodes = { document: 'circuit theory', where: 'one node, resistive loads in star and an electrode' } as const;
const touch = (currents: readonly [number, number, number], electrode: number, source = 0): number => {
  const [a, b, c] = currents;
  const lines = { lineCurrent1: amperes(a), lineCurrent2: amperes(b), lineCurrent3: amperes(c) };
  return openPenTouchVoltage({
    sourceFactor: ratio(1),
    nominalVoltage: volts(230),
    vectorSumCurrent: vectorSum(lines),
    arithmeticSumCurrent: arithmeticSum(lines),
    electrodeResistance: ohms(electrode),
    sourceElectrodeResistance: ohms(source),
  });
};

// line currents, electrode, touch voltage
const touched = [
  [[32, 0, 0], 10, 133.818181818],
  [[32, 0, 0], 20, 169.195402299],
  [[32, 0, 0], 200, 222.021116139],
  [[32, 32, 0], 20, 97.4834437086],
  [[60, 40, 20], 20, 60.5888495423],
  [[40, 30, 25], 20, 28.5691456124],
  [[52, 20, 20], 17.5, 70],
] as const;
// one dwelling after another on a broken conductor: line currents, electrodes of 100 Ω side by side
const streets = [
  [3, [40, 8, 8], 117.011128776],
  [6, [48, 16, 16], 78.4648187633],
  [24, [96, 64, 64], 26.3610315186],
] as const;

const apart = (
  id: string,
  about: string,
  source: PublishedCase['source'],
  exercises: readonly string[],
  ours: () => number,
  published: number,
  unit: string,
): PublishedCase => ({
  ...{ id, about, source, exercises, ours, published, unit },
  provenance: 'derived',
  tolerance: Math.abs(published) * 1e-9,
});

const lateHeld = { document: 'circuit theory', where: 'held power in series with a resistance' } as const;
const closed = { document: 'closed forms of electrodes', where: 'confirmed by moments within 1 %' } as const;

/** Published figures and ones worked out apart. */
export const cases: readonly PublishedCase[] = [
  ...touched.map(([currents, electrode, published]) =>
    apart(
      `open-pen-touch-${currents.join('-')}-${electrode}`,
      `touch voltage at ${currents.join(', ')} A with an electrode of ${electrode} Ω`,
      nodes,
      ['open-pen-touch-voltage', 'arithmetic-sum-of-line-currents', 'vector-sum-of-line-currents'],
      () => touch(currents, electrode),
      published,
      'V',
    ),
  ),
  ...streets.map(([dwellings, currents, published]) =>
    apart(
      `open-pen-street-${dwellings}`,
      `${dwellings} dwellings of 8 A and a charge point of 32 A behind a break, an electrode of 100 Ω each`,
      nodes,
      ['open-pen-touch-voltage'],
      () => touch(currents, 100 / dwellings),
      published,
      'V',
    ),
  ),
  ...(
    [
      [4.6618852459, 5, 75.0769230769],
      [10.3995901639, 20, 134.620689655],
    ] as const
  ).map(([electrode, source, published]) =>
    apart(
      `open-pen-source-neutral-${source}`,
      `source neutral of ${source} Ω with 70 V on an electrode of ${electrode} Ω`,
      nodes,
      ['open-pen-source-neutral-voltage'],
      () =>
        openPenSourceVoltage({
          touchVoltage: volts(70),
          electrodeResistance: ohms(electrode),
          sourceElectrodeResistance: ohms(source),
        }),
      published,
      'V',
    ),
  ),
  ...(
    [
      [16, 4.375],
      [20, 3.5],
      [40, 1.75],
    ] as const
  ).map(([current, published]) =>
    apart(
      `open-pen-held-current-${current}`,
      `largest electrode for 70 V at a held current of ${current} A`,
      { document: 'circuit theory', where: 'held current through a resistance' },
      ['open-pen-electrode-limit-held-current'],
      () => heldCurrentElectrodeLimit({ touchVoltageLimit: volts(70), installationCurrent: amperes(current) }),
      published,
      'Ω',
    ),
  ),
  apart(
    'open-pen-held-power-1-ohm',
    'touch voltage of 7.36 kW that is held, electrode of 1 Ω',
    lateHeld,
    ['open-pen-touch-voltage-held-power'],
    () => heldPowerTouchVoltage({ supplyVoltage: volts(230), heldPower: watts(7360), electrodeResistance: ohms(1) }),
    38.4167120058,
    'V',
  ),
  apart(
    'open-pen-undetected-253',
    'largest voltage that a monitor of 207 to 253 V does not see',
    { document: 'geometry of the phase triangle', where: 'confirmed by a search over a grid' },
    ['open-pen-undetected-voltage'],
    () => undetectedVoltageOf({ supplyVoltage: volts(230), windowUpper: volts(253) }),
    126.968356324,
    'V',
  ),
  {
    id: 'lowest-supply-voltage-230',
    about: 'lowest voltage of a public supply of 230 V',
    source: { document: 'pages of distributors in Great Britain', where: 'statutory band, 216.2 V to 253 V' },
    provenance: 'one-source',
    exercises: ['lowest-supply-voltage'],
    ours: () => lowestSupplyVoltage({ nominalVoltage: volts(230) }),
    published: 216.2,
    unit: 'V',
    tolerance: 0.05,
  },
  apart(
    'window-margin-lowest',
    'drop that is left above 207 V at the lowest supply voltage',
    { document: 'statutory band of the supply', where: '216.2 V less 207 V' },
    ['line-neutral-window-margin'],
    () => windowMarginOf({ minimumSupplyVoltage: volts(216.2), windowLower: volts(207) }),
    9.2,
    'V',
  ),
  apart(
    'plate-1-square-metre',
    'plate of 1 m² in 100 Ω·m',
    { document: 'closed forms of electrodes', where: 'disc of equal area' },
    ['plate-resistance'],
    () => plateResistance({ earthResistivity: ohmMetres(100), plateArea: squareMetres(1) }),
    44.3113462726,
    'Ω',
  ),
  apart(
    'strip-20-m',
    'strip of 25 mm over 20 m at 0.6 m in 100 Ω·m',
    closed,
    ['strip-resistance'],
    () =>
      stripResistance({
        earthResistivity: ohmMetres(100),
        electrodeLength: metres(20),
        stripWidth: metres(0.025),
        burialDepth: metres(0.6),
      }),
    8.22012328672,
    'Ω',
  ),
];

import { offeredCurrentOf } from '../../src/charging/definitions.js';
import { dutyCycleOf, pilotCurrentOf, readCable } from '../../src/charging/index.js';
import { amperes, ohms, percent } from '../../src/index.js';
import type { PublishedCase } from '../support/published.js';

// current in A, duty cycle in %
const encode = [
  [6, 10],
  [8, 13.333],
  [10, 16.667],
  [13, 21.667],
  [16, 26.667],
  [20, 33.333],
  [24, 40],
  [25, 41.667],
  [30, 50],
  [32, 53.333],
  [36, 60],
  [40, 66.667],
  [48, 80],
  [50, 83.333],
  [51, 85],
  [63, 89.2],
  [70, 92],
  [80, 96],
] as const;

// duty cycle in %, current in A
const decode = [
  [8, 6],
  [9.99, 6],
  [10, 6],
  [16, 9.6],
  [53, 31.8],
  [85, 51],
  [85.001, 52.5025],
  [96, 80],
  [97, 80],
] as const;

// resistor in Ω, cable in A
const cables = [
  [1500, 13],
  [680, 20],
  [220, 32],
  [100, 63],
] as const;

const annex = (where: string) => ({ document: 'IEC 61851-1:2017', where });

export const cases: readonly PublishedCase[] = [
  ...encode.map(
    ([current, duty]): PublishedCase => ({
      id: `duty-cycle-${current}-a`,
      about: `duty cycle for ${current} A`,
      source: annex('Annex A, Table A.7: D = I/0.6 from 6 A to 51 A, I/2.5 + 64 above'),
      provenance: 'derived',
      exercises: ['pilot-duty-cycle'],
      ours: () => 100 * dutyCycleOf({ pilotCurrent: amperes(current) }),
      published: duty,
      unit: '%',
      tolerance: 0.0005,
    }),
  ),
  ...decode.map(
    ([duty, current]): PublishedCase => ({
      id: `duty-cycle-read-${String(duty).replace('.', '-')}-percent`,
      about: `current at a duty cycle of ${duty} %`,
      source: annex('Annex A, Table A.8'),
      provenance: 'two-sources',
      exercises: ['pilot-current'],
      ours: () => pilotCurrentOf({ dutyCycle: percent(duty) }),
      published: current,
      unit: 'A',
      tolerance: 1e-9,
    }),
  ),
  ...cables.map(
    ([resistance, current]): PublishedCase => ({
      id: `cable-coding-${resistance}-ohm`,
      about: `cable coded with ${resistance} Ω`,
      source: annex('Annex B, Table B.2'),
      provenance: 'two-sources',
      exercises: ['iec62196/cable-coding'],
      ours: () => {
        const reading = readCable(ohms(resistance), 'three-phase');
        return reading.kind === 'cable' ? reading.current : Number.NaN;
      },
      published: current,
      unit: 'A',
      tolerance: 0,
    }),
  ),
  {
    id: 'cable-of-20-a-at-point-of-32-a',
    about: 'current offered through a cable of 20 A at a charge point of 32 A',
    source: { document: 'lexicon of an electric-vehicle forum', where: 'contact PP' },
    provenance: 'one-source',
    exercises: ['offered-current'],
    ours: () => offeredCurrentOf({ setCurrent: amperes(32), cableCurrent: amperes(20), allocatedCurrent: amperes(32) }),
    published: 20,
    unit: 'A',
    tolerance: 0,
  },
];

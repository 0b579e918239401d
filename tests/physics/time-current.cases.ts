import { ratio, seconds } from '../../src/index.js';
import { thermalTripTime } from '../../src/physics/definitions.js';
import { inverseTime } from '../../src/physics/index.js';
import type { PublishedCase } from '../support/published.js';

// curve, constant in s, exponent, and operating times in s at multiples of the setting, time multiplier 1
const curves = [
  [
    'standard',
    0.14,
    0.02,
    [
      [2, 10.029],
      [3, 6.302],
      [5, 4.28],
      [10, 2.971],
      [20, 2.267],
    ],
  ],
  [
    'very',
    13.5,
    1,
    [
      [2, 13.5],
      [5, 3.375],
      [10, 1.5],
    ],
  ],
  [
    'extremely',
    80,
    2,
    [
      [2, 26.667],
      [5, 3.333],
      [10, 0.808],
      [20, 0.201],
    ],
  ],
  [
    'long',
    120,
    1,
    [
      [2, 120],
      [10, 13.333],
    ],
  ],
] as const;

const inverse: readonly PublishedCase[] = curves.flatMap(([curve, constant, exponent, times]) =>
  times.map(
    ([multiple, published]): PublishedCase => ({
      id: `relay-${curve}-inverse-${multiple}`,
      about: `operating time of a relay, ${curve} inverse, at ${multiple} times its setting`,
      source: { document: 'manual of a protection relay', where: 'table of IEC operating times, time multiplier 1' },
      provenance: 'one-source',
      exercises: ['inverse-time-relay'],
      ours: () =>
        inverseTime({
          timeMultiplier: ratio(1),
          inverseConstant: seconds(constant),
          deviceMultiple: ratio(multiple),
          inverseExponent: ratio(exponent),
          inverseOffset: seconds(0),
        }),
      published,
      unit: 's',
      tolerance: 0.0006,
    }),
  ),
);

// time constant in s for 5 s at 6 times the base current, from cold and after that current; trip at 1.1 times
const thermal = (
  [
    ['cold', 146, 0],
    ['hot', 830, 1],
  ] as const
).map(
  ([state, constant, preload]): PublishedCase => ({
    id: `thermal-trip-${state}-${constant}-s`,
    about: `time of a thermal trip of ${constant} s at 6 times the current, ${state}`,
    source: {
      document: 'manual of a protection relay, motor protection',
      where: `thermal overload protection, page 25, time constant of ${constant} s`,
    },
    provenance: 'one-source',
    exercises: ['thermal-trip-time'],
    ours: () =>
      thermalTripTime({
        thermalTimeConstant: seconds(constant),
        deviceMultiple: ratio(6),
        preloadMultiple: ratio(preload),
        thresholdMultiple: ratio(1.1),
      }),
    published: 5,
    unit: 's',
    tolerance: 0.02, // the print rounds or cuts the time constants to whole seconds
  }),
);

/** Operating times of inverse-time relays and of thermal trips. */
export const cases: readonly PublishedCase[] = [...inverse, ...thermal];

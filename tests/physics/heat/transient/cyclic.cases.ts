import {
  amperes,
  celsius,
  kelvinMetresPerWatt,
  kelvins,
  metres,
  millimetres,
  perKelvin,
  ratio,
  seconds,
  squareMetresPerSecond,
} from '../../../../src/index.js';
import {
  ageingByArrhenius,
  ageingByTenKelvin,
  ageingOfCableDay,
  cyclicFactorOf,
  emergencyFactorOf,
  lossLoadFactorByRule,
  lossLoadFactorOf,
  soilAttainment,
  soilDiffusivityOf,
  soilHeatCapacityOf,
  superposedCyclicFactor,
} from '../../../../src/physics/heat/definitions.js';
import { overloadCurrent } from '../../../../src/physics/heat/index.js';
import type { BuriedBody } from '../../../../src/physics/heat/transient/buried-body.js';
import type { PublishedCase } from '../../../support/published.js';

const body = (diameter: number, depth: number, soilShare = 1): BuriedBody => ({
  diameter: millimetres(diameter),
  depth: metres(depth),
  diffusivity: squareMetresPerSecond(5e-7),
  soilShare: ratio(soilShare),
});

// hours, then diameter in mm, depth in m and the share of the rise of the surface that is reached
const hours = [0.5, 1, 2, 3, 4, 5, 6, 12, 24, 72, 168, 720, 8760];
const responses = [
  [
    35.0, 0.5, 0.24352, 0.3241, 0.40718, 0.45642, 0.49154, 0.51886, 0.54122, 0.62645, 0.71184, 0.84086, 0.91562,
    0.97727, 0.99805,
  ],
  [
    45.0, 0.6, 0.19115, 0.26992, 0.35277, 0.4023, 0.43774, 0.46536, 0.48799, 0.57441, 0.66119, 0.79691, 0.88533,
    0.96737, 0.99715,
  ],
  [
    60.0, 0.8, 0.1313, 0.20412, 0.28378, 0.33221, 0.36709, 0.39437, 0.41678, 0.50264, 0.58914, 0.72668, 0.82801,
    0.94483, 0.99495,
  ],
] as const;
const steps: readonly PublishedCase[] = responses.flatMap(([diameter, depth, ...reached]) =>
  reached.map((published, i) => ({
    id: `soil-attainment-${diameter}-mm-${hours[i]}-h`,
    about: `surface of a cable of ${diameter} mm at ${depth} m after ${hours[i]} h of load`,
    source: { document: 'IEC 60853-1, method as recalled', where: 'attainment of the surface, computed independently' },
    provenance: 'derived',
    exercises: ['soil-attainment'],
    ours: () => soilAttainment({ body: body(diameter, depth), time: seconds((hours[i] as number) * 3600) }),
    published,
    unit: '1',
    tolerance: 0.5001e-5,
  })),
);

const half = (at: (hour: number) => number) => Array.from({ length: 24 }, (_, hour) => at(hour));
/** Hourly loads. The home points are means of 1200 sessions' profiles of a British trial, kW. */
const loads = {
  steady: half(() => 1),
  night: half((h) => (h < 7 ? 1 : 0.15)),
  work: half((h) => (h < 9 ? 1 : 0.1)),
  sine: half((h) => (1 - Math.cos((Math.PI * h) / 12)) / 2),
  home3: [
    0.298, 0.118, 0.045, 0.02, 0.011, 0.006, 0.01, 0.028, 0.075, 0.152, 0.163, 0.169, 0.231, 0.291, 0.321, 0.37, 0.509,
    0.738, 0.944, 1.031, 1.015, 0.953, 0.823, 0.563,
  ],
  home7: [
    1.068, 0.675, 0.333, 0.194, 0.097, 0.038, 0.068, 0.17, 0.359, 0.553, 0.598, 0.621, 0.676, 0.724, 0.83, 0.887, 1.005,
    1.361, 1.813, 2.04, 2.087, 2.076, 1.8, 1.501,
  ],
} as const;

// diameter in mm, depth in m, share of the rise in the soil, load, factor
const factors = [
  [35, 0.5, 0.6, 'night', 1.1115],
  [35, 0.5, 0.6, 'work', 1.0979],
  [35, 0.5, 0.6, 'home7', 1.1389],
  [35, 0.5, 0.6, 'home3', 1.1666],
  [35, 0.5, 0.6, 'sine', 1.117],
  [35, 0.5, 0.7, 'night', 1.134],
  [35, 0.5, 0.7, 'work', 1.1171],
  [35, 0.5, 0.7, 'home7', 1.1668],
  [35, 0.5, 0.7, 'home3', 1.1989],
  [35, 0.5, 0.7, 'sine', 1.1408],
  [35, 0.5, 0.8, 'steady', 1.0],
  [35, 0.5, 0.8, 'night', 1.1579],
  [35, 0.5, 0.8, 'work', 1.1375],
  [35, 0.5, 0.8, 'home7', 1.1968],
  [35, 0.5, 0.8, 'home3', 1.234],
  [35, 0.5, 0.8, 'sine', 1.1653],
  [35, 0.5, 0.9, 'night', 1.1834],
  [35, 0.5, 0.9, 'work', 1.1589],
  [35, 0.5, 0.9, 'home7', 1.2293],
  [35, 0.5, 0.9, 'home3', 1.2724],
  [35, 0.5, 0.9, 'sine', 1.1888],
  [45, 0.6, 0.6, 'night', 1.127],
  [45, 0.6, 0.6, 'work', 1.1112],
  [45, 0.6, 0.6, 'home7', 1.1561],
  [45, 0.6, 0.6, 'home3', 1.1857],
  [45, 0.6, 0.6, 'sine', 1.1314],
  [45, 0.6, 0.7, 'night', 1.1533],
  [45, 0.6, 0.7, 'work', 1.1336],
  [45, 0.6, 0.7, 'home7', 1.1884],
  [45, 0.6, 0.7, 'home3', 1.2232],
  [45, 0.6, 0.7, 'sine', 1.1587],
  [45, 0.6, 0.8, 'steady', 1.0],
  [45, 0.6, 0.8, 'night', 1.1815],
  [45, 0.6, 0.8, 'work', 1.1574],
  [45, 0.6, 0.8, 'home7', 1.2237],
  [45, 0.6, 0.8, 'home3', 1.2646],
  [45, 0.6, 0.8, 'sine', 1.1859],
  [45, 0.6, 0.9, 'night', 1.2118],
  [45, 0.6, 0.9, 'work', 1.1827],
  [45, 0.6, 0.9, 'home7', 1.2623],
  [45, 0.6, 0.9, 'home3', 1.3104],
  [45, 0.6, 0.9, 'sine', 1.2135],
  [60, 0.8, 0.6, 'night', 1.1488],
  [60, 0.8, 0.6, 'work', 1.1298],
  [60, 0.8, 0.6, 'home7', 1.1798],
  [60, 0.8, 0.6, 'home3', 1.2119],
  [60, 0.8, 0.6, 'sine', 1.1509],
  [60, 0.8, 0.7, 'night', 1.1807],
  [60, 0.8, 0.7, 'work', 1.1567],
  [60, 0.8, 0.7, 'home7', 1.2187],
  [60, 0.8, 0.7, 'home3', 1.2571],
  [60, 0.8, 0.7, 'sine', 1.1834],
  [60, 0.8, 0.8, 'steady', 1.0],
  [60, 0.8, 0.8, 'night', 1.2154],
  [60, 0.8, 0.8, 'work', 1.1857],
  [60, 0.8, 0.8, 'home7', 1.2617],
  [60, 0.8, 0.8, 'home3', 1.3078],
  [60, 0.8, 0.8, 'sine', 1.215],
  [60, 0.8, 0.9, 'night', 1.2534],
  [60, 0.8, 0.9, 'work', 1.217],
  [60, 0.8, 0.9, 'home7', 1.3097],
  [60, 0.8, 0.9, 'home3', 1.3651],
  [60, 0.8, 0.9, 'sine', 1.2487],
] as const;
const cyclic: readonly PublishedCase[] = factors.map(([diameter, depth, share, load, published]) => ({
  id: `cyclic-factor-${diameter}-mm-${share}-${load}`,
  about: `cyclic factor of a cable of ${diameter} mm at ${depth} m, ${share} of the rise in the soil, load ${load}`,
  source: { document: 'IEC 60853-1, method as recalled', where: 'cyclic rating factor, computed independently' },
  provenance: 'derived',
  exercises: ['cyclic-factor'],
  ours: () => cyclicFactorOf({ body: body(diameter, depth, share), load: loads[load] }),
  published,
  unit: '1',
  tolerance: 0.5001e-4,
}));

const shapes: readonly PublishedCase[] = (
  [
    ['night', 0.3076],
    ['work', 0.3813],
    ['home7', 0.286],
    ['home3', 0.2453],
    ['sine', 0.375],
  ] as const
).map(([load, published]) => ({
  id: `loss-load-factor-${load}`,
  about: `loss-load factor of the load ${load}`,
  source: { document: 'IEC 60853-1, method as recalled', where: 'loss-load factor, computed independently' },
  provenance: 'derived',
  exercises: ['loss-load-factor'],
  ours: () => lossLoadFactorOf(loads[load]),
  published,
  unit: '1',
  tolerance: 0.5001e-4,
}));

const after4h = 0.49367;
const sixty = {
  body: body(60, 0.8, 0.8),
  steadyCapacity: amperes(1),
  operatingTemperature: celsius(90),
  groundTemperature: celsius(15),
  // the printed example takes the resistance as constant
  temperatureCoefficient: perKelvin(0),
  cautions: [],
};

/** The daily load curve of the examples of IEC 60853-2. */
const utility = [
  302, 247, 227, 232, 235, 246, 290, 600, 1000, 950, 940, 910, 892, 770, 772, 800, 853, 996, 853, 790, 740, 740, 722,
  600,
];

/** Loads that vary, in the ground. */
export const cases: readonly PublishedCase[] = [
  ...steps,
  ...cyclic,
  ...shapes,
  {
    id: 'loss-load-factor-utility-curve',
    about: 'loss-load factor of the daily curve that IEC 60853-2 uses in its examples',
    source: {
      document: 'IEC 60853-2',
      where: 'daily curve as reproduced in a public repository; its loss-load factor 0.504 recalled',
    },
    provenance: 'memory',
    exercises: ['loss-load-factor'],
    ours: () => lossLoadFactorOf(utility),
    published: 0.504,
    unit: '1',
    tolerance: 0.5001e-3,
  },
  {
    id: 'cyclic-factor-home-points',
    about: 'cyclic factor of a feeder of home points that nobody manages',
    source: { document: 'Worked examples for larger sites', where: 'IEC 60853-1 with the profile of a British trial' },
    provenance: 'derived',
    exercises: ['cyclic-factor'],
    ours: () => cyclicFactorOf({ body: body(60, 0.8, 0.8), load: loads.home7 }),
    published: 1.2617,
    unit: '1',
    tolerance: 0.5001e-4,
  },
  {
    id: 'cyclic-factor-home-points-superposed',
    about: 'cyclic factor of the same feeder with 400 days of hours counted one by one',
    source: { document: 'Worked examples for larger sites', where: 'full superposition' },
    provenance: 'derived',
    exercises: ['cyclic-factor-superposed'],
    ours: () => superposedCyclicFactor({ body: body(60, 0.8, 0.8), load: loads.home7 }),
    published: 1.279,
    unit: '1',
    tolerance: 0.5001e-4,
  },
  {
    id: 'attainment-four-hours',
    about: 'share of its rise that the conductor reaches in four hours',
    source: { document: 'Worked examples for larger sites', where: 'overload of four hours from 60 %' },
    provenance: 'derived',
    exercises: ['soil-attainment'],
    ours: () => 0.2 + 0.8 * soilAttainment({ body: body(60, 0.8), time: seconds(4 * 3600) }),
    published: after4h,
    unit: '1',
    tolerance: 0.5001e-5,
  },
  {
    id: 'emergency-factor-four-hours',
    about: 'current that just reaches the limit temperature after four hours from 60 % load',
    source: { document: 'Worked examples for larger sites', where: 'overload of four hours from 60 %' },
    provenance: 'derived',
    exercises: ['emergency-factor'],
    ours: () =>
      emergencyFactorOf({
        startLoad: ratio(0.6),
        startResistanceRatio: ratio(1),
        ratedResistanceRatio: ratio(1),
        riseRatio: ratio(1),
        attainment: ratio(after4h),
      }),
    published: 1.287,
    unit: '1',
    tolerance: 0.5001e-3,
  },
  {
    id: 'overload-current-four-hours',
    about: 'the same from the cable and the time',
    source: { document: 'Worked examples for larger sites', where: 'overload of four hours from 60 %' },
    provenance: 'derived',
    exercises: ['emergency-factor', 'conductor-attainment'],
    ours: () => overloadCurrent(sixty, { before: amperes(0.6), duration: seconds(4 * 3600) }),
    published: 1.287,
    unit: '1',
    tolerance: 0.5001e-3,
  },
  {
    id: 'soil-diffusivity-estimate',
    about: 'diffusivity of soil of 1 K·m/W, 1700 kg/m³ dry, 7 % water',
    source: { document: 'IEC 60853-1, formula as recalled', where: 'estimate of the diffusivity' },
    provenance: 'derived',
    exercises: ['soil-diffusivity', 'soil-heat-capacity'],
    ours: () =>
      1e7 *
      soilDiffusivityOf({
        soilResistivity: kelvinMetresPerWatt(1),
        soilHeatCapacity: soilHeatCapacityOf({ dryDensity: ratio(1.7), soilMoisture: ratio(0.07) }),
      }),
    published: 5.28,
    unit: '1e-7 m²/s',
    tolerance: 0.005001,
  },
  {
    id: 'loss-load-factor-rule-night',
    about: 'loss-load factor of a night block by the rule 0.3 and 0.7, where the exact one is 0.3076',
    source: { document: 'Rules from load factor to loss factor', where: 'night block, computed independently' },
    provenance: 'derived',
    exercises: ['loss-load-factor-by-rule'],
    ours: () => lossLoadFactorByRule({ loadFactor: ratio(9.55 / 24), loadFactorWeight: ratio(0.3) }),
    published: 0.2302,
    unit: '1',
    tolerance: 0.5001e-4,
  },
  {
    id: 'cable-ageing-ten-kelvin',
    about: 'rate of ageing 10 K above the operating temperature: the life is halved',
    source: { document: 'Rule of thumb after Montsinger (1930)', where: 'life halved for each 10 K, recalled' },
    provenance: 'memory',
    exercises: ['cable-ageing-ten-kelvin'],
    ours: () => ageingByTenKelvin({ conductorTemperature: celsius(100), operatingTemperature: celsius(90) }),
    published: 2,
    unit: '1',
    tolerance: 1e-12,
  },
  {
    id: 'cable-ageing-arrhenius',
    // 11604.5 · (1/363.15 - 1/373.15) = 0.85635; e to that is 2.3546
    about: 'rate of ageing at 100 °C over that at 90 °C of a material of 1 eV',
    source: { document: 'Arrhenius relation', where: 'worked by hand from the Boltzmann constant' },
    provenance: 'derived',
    exercises: ['cable-ageing-arrhenius'],
    ours: () =>
      ageingByArrhenius({
        conductorTemperature: celsius(100),
        operatingTemperature: celsius(90),
        activationTemperature: kelvins(11_604.5),
      }),
    published: 2.355,
    unit: '1',
    tolerance: 0.5001e-3,
  },
  {
    id: 'cable-ageing-day-half',
    // a quarter of 75 K above 15 °C: 33.75 °C, 56.25 K below 90 °C; 2 to the power -5.625 is 0.020263
    about: 'rate of ageing of a buried cable at half its steady capacity for ever',
    source: { document: 'Rule of thumb after Montsinger (1930)', where: 'worked by hand' },
    provenance: 'derived',
    exercises: ['cable-ageing-day'],
    ours: () => ageingOfCableDay({ cable: sixty, currents: Array.from({ length: 24 }, () => amperes(0.5)) }),
    published: 0.02026,
    unit: '1',
    tolerance: 0.5001e-5,
  },
];

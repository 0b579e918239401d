import {
  chargingProbability,
  coincidentCount,
  coincidentPowerOf,
  demandPowerOfLine,
  factorChain,
  riserDemand,
  rootCoincidence,
} from '../../src/demand/definitions.js';
import { demandOfDwellings, powerDistribution } from '../../src/demand/index.js';
import { binomialProbabilities } from '../../src/demand/many/coincidence.js';
import {
  amperes,
  hours,
  kilovoltAmperes,
  kilowattHours,
  kilowatts,
  known,
  ratio,
  volts,
  wattHours,
} from '../../src/index.js';
import { afterDiversityGroup, energyToPeak } from '../../src/networks/definitions.js';
import { riserMethod } from '../../src/networks/index.js';
import type { PublishedCase } from '../support/published.js';
import { amps, by, type LoadSpec, point, premises } from './premises.js';

const guide = (kind: 'dwelling' | 'small-shop' | 'small-hotel') => `on-site-guide-${kind}`;
const rings = (n: number, current: number): LoadSpec[] =>
  Array.from({ length: n }, () => ({ purpose: 'socket-outlets', current }));
const derived = { document: 'allowances of the On-Site Guide', where: 'worked from the rows; 230 V' } as const;
const house = (lights: number, cooker: LoadSpec, more: readonly LoadSpec[]): LoadSpec[] => [
  { purpose: 'lighting', current: lights },
  cooker,
  ...rings(2, 32),
  ...more,
];
const cooker: LoadSpec = { purpose: 'cooking', current: amps(7.2), withSocket: true };
const shower = (kw: number): LoadSpec => ({ purpose: 'instantaneous-water-heating', current: amps(kw) });
const cylinder: LoadSpec = { purpose: 'thermostatic-water-heating', current: amps(3) };
const ev = [point('ev', 32)];

const worked: readonly (readonly [id: string, LoadSpec[], number, number])[] = [
  ['gas house and charge point', house(6, cooker, []), 1, 102.15],
  ['gas house with a shower and charge point', house(6, cooker, [shower(9.5)]), 1, 143.46],
  ['gas house with a shower, no charge point', house(6, cooker, [shower(9.5)]), 0, 111.46],
  ['two showers, immersion heater, charge point', house(6, cooker, [shower(9.5), shower(8.5), cylinder]), 1, 193.46],
  [
    'heat pump, hob, charge point',
    house(5, { purpose: 'cooking', current: amps(7.4) }, [{ purpose: 'heat-pump', current: 16 }, cylinder]),
    1,
    125.8,
  ],
];

const shop: LoadSpec[] = [
  { purpose: 'lighting', current: 20 },
  { purpose: 'other', current: 22 },
  { purpose: 'other', current: 11 },
  ...rings(2, 32),
];
const guestHouse: LoadSpec[] = [
  { purpose: 'lighting', current: 30 },
  ...[25, 21, 20].map((current): LoadSpec => ({ purpose: 'cooking', current })),
  ...[20, 14, 10].map((current): LoadSpec => ({ purpose: 'space-heating', current })),
  ...[40, 40, 13].map((current): LoadSpec => ({ purpose: 'instantaneous-water-heating', current })),
  ...rings(3, 32),
];

/** The published shop, as one sum over its three lines at 240 V. */
const publishedShop: LoadSpec[] = [
  ...[6, 6, 3, 3, 3, 3, 3, 3, 3].map(
    (kw): LoadSpec => ({ purpose: 'thermostatic-water-heating', current: amps(kw, 240) }),
  ),
  ...[3, 3].map((kw): LoadSpec => ({ purpose: 'instantaneous-water-heating', current: amps(kw, 240) })),
  ...[6, 6, 4].map((kw): LoadSpec => ({ purpose: 'cooking', current: amps(kw, 240) })),
  { purpose: 'lighting', current: (12000 * 1.8) / 240 },
  ...rings(8, 30),
];

/** Six circuits of a forum question: a 16 kW cooker of 26.8 A after its allowance, three rings and two lighting circuits. */
const forumHouse: LoadSpec[] = [
  { purpose: 'cooking', current: 10 + (26.8 - 10) / 0.3 },
  ...rings(3, 30),
  { purpose: 'lighting', current: 4.16 },
  { purpose: 'lighting', current: 4.16 },
];

const binomial = { document: 'exact rational arithmetic', where: 'binomial percentiles' } as const;
const percentiles: readonly (readonly [n: number, p: number, q: number, k: number, atK: number])[] = [
  [1, 0.25, 0.99, 1, 1],
  [5, 0.25, 0.99, 4, 0.9990234375],
  [10, 0.25, 0.99, 6, 0.996494293213],
  [50, 0.25, 0.99, 20, 0.993737092752],
  [100, 0.25, 0.99, 35, 0.99059303407],
  [500, 0.25, 0.99, 148, 0.991553443055],
  [1000, 0.25, 0.99, 282, 0.990542481557],
  [100, 0.5, 0.95, 58, 0.955686959943],
  [1000, 0.1, 0.999, 130, 0.999030558509],
  [1000, 0.75, 0.99, 781, 0.990058691687],
];
const mixed = [
  { count: 10, power: 7360, probability: 0.25 },
  { count: 6, power: 3680, probability: 0.2 },
  { count: 4, power: 11040, probability: 0.15 },
];
const recalled = {
  document: 'network design practice',
  where: 'form recalled; constants as stated in the case',
} as const;
const groupOf = (n: number, kw: number) =>
  afterDiversityGroup({
    dwellings: ratio(n),
    afterDiversityDemand: kilowatts(2),
    groupConstant: kilowatts(kw),
    unbalanceAllowance: ratio(1),
  }) / 1000;

// four feeders in kVA, which at one voltage stand for amperes, and the demand factor of each
const feeders = [
  [250, 0.9],
  [200, 0.8],
  [150, 0.75],
  [400, 0.85],
] as const;
const mainFeeder = (
  [
    ['unity', 1, 837.5, 0.05],
    ['1-5', 1.5, 558, 0.5],
  ] as const
).map(
  ([name, diversity, published, tolerance]): PublishedCase => ({
    id: `main-feeder-diversity-${name}`,
    about: `demand of four feeders with their demand factors, diversity factor ${diversity} as its reciprocal`,
    source: {
      document: 'trade journal column on NEC loads',
      where: 'demand factor and diversity factor, four feeders',
    },
    provenance: 'one-source',
    exercises: ['factor-chain'],
    ours: () =>
      feeders.reduce(
        (sum, [connected, factor]) =>
          sum +
          factorChain({
            connectedCurrent: amperes(connected),
            utilisationFactor: ratio(factor),
            simultaneityFactor: ratio(1 / diversity),
          }),
        0,
      ),
    published,
    unit: 'kVA',
    tolerance,
  }),
);

// the operator prints the current of a power; the last place of the current is the tolerance of the power
const linePower = (
  [
    ['single-phase-4-kw', 17.39, 1, 4],
    ['three-phase-50-kw', 72.46, 3, 50],
  ] as const
).map(
  ([name, current, lines, published]): PublishedCase => ({
    id: `line-power-${name}`,
    about: `power of ${current} A at 230 V on ${lines === 1 ? 'one line' : 'each of three lines'}`,
    source: { document: 'page of a network operator in Great Britain', where: 'ratings of generators, examples' },
    provenance: 'one-source',
    exercises: ['demand-power-of-line'],
    ours: () => (lines * demandPowerOfLine({ demand: amperes(current), nominalVoltage: volts(230) })) / 1000,
    published,
    unit: 'kW',
    tolerance: 0.00115 * lines,
  }),
);

/** Figures printed outside this project, and worked ones. */
export const cases: readonly PublishedCase[] = [
  {
    id: 'cooker-12-kw',
    about: 'cooker of 12 kW with a socket-outlet',
    source: { document: 'UK college textbook, 5th edition', where: 'page 298' },
    provenance: 'one-source',
    exercises: ['first-and-share', 'on-site-guide/a2', 'on-site-guide/a2-first'],
    ours: () => by(guide('dwelling'), premises([{ purpose: 'cooking', current: 52.17, withSocket: true }])),
    published: 27.65,
    unit: 'A',
    tolerance: 0.005,
  },
  {
    id: 'cooker-14-kw-240-v',
    about: 'cooker of 14 kW at 240 V with a socket-outlet',
    source: { document: 'Guide to the 16th edition', where: 'Example 6.2' },
    provenance: 'memory',
    exercises: ['first-and-share'],
    ours: () => by(guide('dwelling'), premises([{ purpose: 'cooking', current: amps(14, 240), withSocket: true }])),
    published: 29.5,
    unit: 'A',
    tolerance: 0.05,
  },
  {
    id: 'shop-sum-of-lines',
    about: 'shop over three lines, summed',
    source: { document: 'Guide to the 16th edition', where: 'Example 6.1; answer rounded up' },
    provenance: 'memory',
    exercises: ['on-site-guide/a2', 'share-of-current'],
    ours: () => by(guide('small-shop'), premises(publishedShop), { premises: 'small-shop' }),
    published: 434,
    unit: 'A',
    tolerance: 1,
  },
  {
    id: 'shop-per-line',
    about: 'shop, a third of the sum',
    source: { document: 'Guide to the 16th edition', where: 'Example 6.1; answer rounded up' },
    provenance: 'memory',
    exercises: ['on-site-guide/a2'],
    ours: () => by(guide('small-shop'), premises(publishedShop), { premises: 'small-shop' }) / 3,
    published: 145,
    unit: 'A',
    tolerance: 1,
  },
  {
    id: 'hotel-heaters',
    about: 'three heaters of 4 kW in a hotel at 240 V',
    source: { document: 'Textbook of electrical engineering for secondary schools, Form Four', where: 'page 53' },
    provenance: 'one-source',
    exercises: ['on-site-guide/a2'],
    ours: () =>
      by(
        guide('small-hotel'),
        premises([1, 2, 3].map((): LoadSpec => ({ purpose: 'space-heating', current: 16.67 }))),
        { premises: 'small-hotel' },
      ),
    published: 40.01,
    unit: 'A',
    tolerance: 0.005,
  },
  {
    id: 'hotel-lamps',
    about: '25 A of lamps in a hotel',
    source: { document: 'Textbook of electrical engineering for secondary schools, Form Four', where: 'page 53' },
    provenance: 'one-source',
    exercises: ['on-site-guide/a2'],
    ours: () => by(guide('small-hotel'), premises([{ purpose: 'lighting', current: 25 }]), { premises: 'small-hotel' }),
    published: 18.75,
    unit: 'A',
    tolerance: 0.005,
  },
  {
    id: 'one-line-rule-ranked-after-cooker-rule',
    about: 'six circuits by the one-line rule, ranked after the cooker’s own allowance',
    source: { document: 'On-Site Guide, standard circuits', where: 'circuits of a forum question, worked' },
    provenance: 'derived',
    exercises: ['largest-and-share', 'first-and-share'],
    ours: () => by('one-line-rule', premises(forumHouse)),
    published: 68.05,
    unit: 'A',
    tolerance: 0.005,
  },
  {
    id: 'one-line-rule-forum-answer',
    about: 'the same circuits as a forum answer has them',
    source: { document: 'answer in an electricians’ forum', where: 'maximum demand of a dwelling' },
    provenance: 'one-source',
    exercises: ['largest-and-share'],
    ours: () => by('one-line-rule', premises(forumHouse)),
    published: 66.13,
    unit: 'A',
    tolerance: 0.05,
    differs:
      'it takes the cooker for the largest circuit by its 16 kW, though after its allowance it is 26.8 A and a ring of 30 A is larger',
  },
  ...worked.map(
    ([id, loads, points, published]): PublishedCase => ({
      id: `guide-${id.replaceAll(/[ ,]+/g, '-')}`,
      about: id,
      source: derived,
      provenance: 'derived',
      exercises: ['on-site-guide/a2', 'on-site-guide/a2-first', 'demand-with-points'],
      ours: () => by(guide('dwelling'), premises(loads, points === 1 ? ev : [])),
      published,
      unit: 'A',
      tolerance: 0.006,
    }),
  ),
  {
    id: 'guide-small-shop',
    about: 'small shop with a charge point; circuits chosen to make up the parts',
    source: derived,
    provenance: 'derived',
    exercises: ['on-site-guide/a2'],
    ours: () => by(guide('small-shop'), premises(shop, ev), { premises: 'small-shop' }),
    published: 128.25,
    unit: 'A',
    tolerance: 0.005,
  },
  {
    id: 'guide-guest-house',
    about: 'guest house with two charge points; circuits chosen to make up the parts',
    source: derived,
    provenance: 'derived',
    exercises: ['on-site-guide/a2'],
    ours: () =>
      by(guide('small-hotel'), premises(guestHouse, [point('one', 32), point('two', 32)]), { premises: 'small-hotel' }),
    published: 324.75,
    unit: 'A',
    tolerance: 0.005,
  },
  {
    id: 'half-hour-3.2-kwh',
    about: 'largest half-hour of 3.2 kWh',
    source: { document: 'measured demand', where: 'kWh of a half-hour times two' },
    provenance: 'derived',
    exercises: ['metered-power-of-interval', 'metered-current-of-line', 'metered-demand-with-margin'],
    ours: () =>
      by('half-hour-readings', premises([]), {
        readings: {
          readings: [{ start: '2026-01-05T17:30:00Z', energy: wattHours(3200) }],
          season: 'one winter evening',
          margin: ratio(0),
        },
      }),
    published: 27.8,
    unit: 'A',
    tolerance: 0.05,
  },
  ...(
    [
      [38, 60],
      [62, 62],
    ] as const
  ).map(
    ([existing, published]): PublishedCase => ({
      id: `limiter-${existing}`,
      about: `limiter of 60 A over a house of ${existing} A and a point of 32 A`,
      source: { document: 'load control with pause', where: 'min(D + I_ev, max(limit, D))' },
      provenance: 'derived',
      exercises: ['controlled-demand'],
      ours: () =>
        by(
          'connected-load',
          premises(
            [{ purpose: 'other', current: existing }],
            ev,
            {},
            {
              control: { name: 'limiter', limit: known(amperes(60)), controls: ['ev'] },
            },
          ),
        ),
      published,
      unit: 'A',
      tolerance: 1e-9,
    }),
  ),
  {
    id: 'garages-heaviest-line',
    about: '17 of 49 charge points of 30.4 A on the heaviest line, none of them diversified',
    source: { document: 'answer column of a trade body', where: 'diversity for 49 garages; worked' },
    provenance: 'derived',
    exercises: ['demand-with-points'],
    ours: () =>
      by(
        'connected-load',
        premises(
          [],
          Array.from({ length: 17 }, (_, i) => point(`p${i}`, amps(7))),
        ),
        { premises: 'other' },
      ),
    published: 517,
    unit: 'A',
    tolerance: 0.5,
  },
  ...(
    [
      [25, 69],
      [10, 37.8],
    ] as const
  ).map(
    ([n, published]): PublishedCase => ({
      id: `riser-${n}`,
      about: `${n} flats of 6 kVA on a riser`,
      source: { document: 'installation handbook', where: 'Table A11' },
      provenance: n === 25 ? 'one-source' : 'derived',
      exercises: ['riser-demand', 'nfc14100/riser'],
      ours: () =>
        (demandOfDwellings([riserMethod], { dwellings: n, each: kilovoltAmperes(6), storageHeating: false }).find(
          (r) => r.method === 'nfc14100-riser',
        )?.demand as number) / 1000,
      published,
      unit: 'kVA',
      tolerance: 0.05,
    }),
  ),
  ...([1, 2, 4, 10, 25, 50, 100] as const).flatMap((n, i): PublishedCase[] =>
    (
      [
        [12, [14, 16, 20, 32, 62, 112, 212]],
        [8, [10, 12, 16, 28, 58, 108, 208]],
      ] as const
    ).map(([constant, figures]) => ({
      id: `after-diversity-${n}-${constant}`,
      about: `${n} dwellings of 2 kW after diversity, constant ${constant} kW`,
      source: recalled,
      provenance: 'memory',
      exercises: ['after-diversity-group'],
      ours: () => groupOf(n, constant),
      published: figures[i] as number,
      unit: 'kW',
      tolerance: 1e-9,
    })),
  ),
  {
    id: 'street-of-40-home-points',
    about: 'peak that 40 home points add, by their demand after diversity',
    source: {
      document: 'Worked examples for larger sites',
      where: 'street of 40 cars, large-number figure of a trial',
    },
    provenance: 'derived',
    exercises: ['after-diversity-group'],
    ours: () =>
      afterDiversityGroup({
        dwellings: ratio(40),
        afterDiversityDemand: kilowatts(1.49),
        groupConstant: kilowatts(0),
        unbalanceAllowance: ratio(1),
      }) / 1000,
    published: 59.6,
    unit: 'kW',
    tolerance: 1e-9,
  },
  {
    id: 'street-of-40-home-points-measured',
    about: 'the same by the coincidence that was measured of 40, nineteen times of twenty not exceeded',
    source: { document: 'Worked examples for larger sites', where: 'street of 40 cars, measured factor 0.251' },
    provenance: 'derived',
    exercises: ['riser-demand'],
    ours: () =>
      riserDemand({ dwellings: ratio(40), dwellingPower: kilovoltAmperes(7.36), simultaneityFactor: ratio(0.251) }) /
      1000,
    published: 73.9,
    unit: 'kW',
    tolerance: 0.0501,
  },
  ...(
    [
      [1, 7.36],
      [10, 35.8557726841],
      [50, 131.032294321],
      [1000, 2014.55772684],
    ] as const
  ).map(
    ([n, published]): PublishedCase => ({
      id: `root-coincidence-${n}`,
      about: `${n} consumers of 7.36 kW, limit 0.25`,
      source: recalled,
      provenance: 'memory',
      exercises: ['root-coincidence'],
      ours: () =>
        rootCoincidence({ dwellings: ratio(n), largestPower: kilowatts(7.36), coincidenceLimit: ratio(0.25) }) / 1000,
      published,
      unit: 'kW',
      tolerance: published * 1e-11,
    }),
  ),
  {
    id: 'energy-to-peak-20000',
    about: '20 000 kWh a year with stated coefficients',
    source: recalled,
    provenance: 'memory',
    exercises: ['energy-to-peak'],
    ours: () =>
      energyToPeak({
        annualEnergy: kilowattHours(20000),
        linearCoefficient: ratio(0.00033),
        rootCoefficient: ratio(0.05),
      }) / 1000,
    published: 13.6710678119,
    unit: 'kW',
    tolerance: 1e-9,
  },
  ...percentiles.flatMap(([count, probability, percentile, k, atK]): PublishedCase[] => [
    {
      id: `count-${count}-${probability}-${percentile}`,
      about: `${count} points, probability ${probability}, percentile ${percentile}`,
      source: binomial,
      provenance: 'derived',
      exercises: ['coincident-count'],
      ours: () => coincidentCount({ count, probability, percentile }),
      published: k,
      unit: '1',
      tolerance: 0,
    },
    {
      id: `cumulated-${count}-${probability}-${k}`,
      about: `probability of at most ${k} of ${count} points`,
      source: binomial,
      provenance: 'derived',
      exercises: ['coincident-count'],
      ours: () =>
        binomialProbabilities(count, probability)
          .slice(0, k + 1)
          .reduce((a, b) => a + b, 0),
      published: atK,
      unit: '1',
      tolerance: 1e-12,
    },
  ]),
  ...(
    [
      [0.9, 47840],
      [0.99, 62560],
      [0.999, 77280],
    ] as const
  ).map(
    ([percentile, published]): PublishedCase => ({
      id: `mixed-${percentile}`,
      about: `three kinds of charge points, percentile ${percentile}`,
      source: { document: 'exact convolution', where: 'two-point distributions' },
      provenance: 'derived',
      exercises: ['coincident-power'],
      ours: () => coincidentPowerOf({ groups: mixed, percentile }),
      published,
      unit: 'W',
      tolerance: 0,
    }),
  ),
  {
    id: 'mixed-mean',
    about: 'mean power of three kinds of charge points',
    source: { document: 'exact convolution', where: 'two-point distributions' },
    provenance: 'derived',
    exercises: ['coincident-power'],
    ours: () => powerDistribution(mixed).reduce((sum, s) => sum + s.power * s.probability, 0),
    published: 29440,
    unit: 'W',
    tolerance: 29440e-9,
  },
  ...(
    [
      [3, 0.45],
      [6, 0.6],
    ] as const
  ).map(
    ([duration, published]): PublishedCase => ({
      id: `window-${duration}-h`,
      about: `sessions of ${duration} h, arrivals over 4 h, participation 0.6`,
      source: { document: 'uniform arrivals of fixed duration', where: 'share at the busiest instant' },
      provenance: 'derived',
      exercises: ['charging-probability'],
      ours: () =>
        chargingProbability({
          participation: ratio(0.6),
          sessionDuration: hours(duration),
          arrivalWindow: hours(4),
        }),
      published,
      unit: '1',
      tolerance: 1e-12,
    }),
  ),
  {
    id: 'worst-of-three-lines-30',
    about: '30 points over three lines, the worst line, p = 0.25, 99 %',
    source: binomial,
    provenance: 'derived',
    exercises: ['coincident-count'],
    ours: () => coincidentCount({ count: 30, probability: 0.25, percentile: 0.99, lines: 3 }),
    published: 7,
    unit: '1',
    tolerance: 0,
  },
  ...mainFeeder,
  ...linePower,
];

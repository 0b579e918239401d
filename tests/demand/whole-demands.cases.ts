import type { PublishedCase } from '../support/published.js';
import { amps, by, type LoadSpec, premises } from './premises.js';

// Whole demands that somebody worked out in print, and their parts: each goes through the method of the guide.

type Premises = 'dwelling' | 'small-shop' | 'small-hotel';
const demand = (kind: Premises, loads: readonly LoadSpec[]): number =>
  by(`on-site-guide-${kind}`, premises(loads), { premises: kind });

const lamps = (current: number): LoadSpec => ({ purpose: 'lighting', current });
const rings = (n: number, current: number): LoadSpec[] =>
  Array.from({ length: n }, () => ({ purpose: 'socket-outlets', current }));
const of = (purpose: LoadSpec['purpose'], kilowatts: readonly number[]): LoadSpec[] =>
  kilowatts.map((kw) => ({ purpose, current: amps(kw, 240) }));

// a house of three lighting circuits, three rings, a cooker of 5.8 kW with a socket, an oven and a boiler
const forum = { document: 'electricians’ forum, question on diversity', where: 'new board of a house, thread 5783' };
const lights = [1.51, 0.41, 2.11].map((after) => lamps(after / 0.66));
const cooker: LoadSpec = { purpose: 'cooking', current: amps(5.8, 240), withSocket: true };
const forumParts = [...lights, ...rings(3, 32), cooker];
const forumAll: LoadSpec[] = [
  ...forumParts,
  { purpose: 'cooking', current: 10 },
  { purpose: 'thermostatic-water-heating', current: 16 },
];

const shop = { document: 'Guide to the 16th edition', where: 'Example 6.1, steps' };
const hotel = { document: 'Textbook of electrical engineering for secondary schools, Form Four', where: 'page 53' };
const hotelLoads = (heaters: number): LoadSpec[] => [
  ...of('cooking', [6, 6, 6]),
  ...of(
    'space-heating',
    Array.from({ length: heaters }, () => 4),
  ),
  lamps(25),
];

const rows: readonly (readonly [
  id: string,
  about: string,
  source: PublishedCase['source'],
  provenance: PublishedCase['provenance'],
  ours: () => number,
  published: number,
  tolerance: number,
  differs?: string,
])[] = [
  [
    'house-lights',
    'three lighting circuits of a house',
    forum,
    'one-source',
    () => demand('dwelling', lights),
    4.03,
    0.005,
  ],
  ['house-rings', 'three rings of 32 A', forum, 'one-source', () => demand('dwelling', rings(3, 32)), 57.6, 0.005],
  [
    'house-cooker',
    'cooker of 5.8 kW with a socket-outlet',
    forum,
    'one-source',
    () => demand('dwelling', [cooker]),
    19.25,
    0.005,
  ],
  [
    'house-parts',
    'lights, rings and cooker of the house together',
    forum,
    'one-source',
    () => demand('dwelling', forumParts),
    80.88,
    0.015,
  ],
  [
    'house-all',
    'the whole house, with its oven and its boiler',
    forum,
    'one-source',
    () => demand('dwelling', forumAll),
    97.29,
    0.05,
    'the answer counts the oven apart from the cooker, and the boiler at 40 %; the guide takes cooking together and a thermostatic heater in full',
  ],
  [
    'cooker-66-a',
    'cooker of 66 A without a socket-outlet',
    { document: 'electricians’ forum, answer on diversity', where: 'thread 28769' },
    'one-source',
    () => demand('dwelling', [{ purpose: 'cooking', current: 66 }]),
    26.8,
    0.005,
  ],
  [
    'cooker-30-a',
    'cooking appliance of 30 A',
    { document: 'home electrics forum', where: 'thread 625391, page 4' },
    'one-source',
    () => demand('dwelling', [{ purpose: 'cooking', current: 30 }]),
    16,
    0.005,
  ],
  [
    'shop-thermostatic',
    'nine thermostatic heaters of a shop',
    shop,
    'memory',
    () => demand('small-shop', of('thermostatic-water-heating', [6, 6, 3, 3, 3, 3, 3, 3, 3])),
    137.5,
    0.05,
  ],
  [
    'shop-instantaneous',
    'two instantaneous heaters of a shop',
    shop,
    'memory',
    () => demand('small-shop', of('instantaneous-water-heating', [3, 3])),
    25,
    0.05,
  ],
  [
    'shop-cooking',
    'three cookers of a shop',
    shop,
    'memory',
    () => demand('small-shop', of('cooking', [6, 6, 4])),
    55,
    0.05,
  ],
  [
    'shop-lighting',
    'discharge lighting of a shop',
    shop,
    'memory',
    () => demand('small-shop', [lamps((12_000 * 1.8) / 240)]),
    81,
    0.05,
  ],
  ['shop-rings', 'eight rings of a shop', shop, 'memory', () => demand('small-shop', rings(8, 30)), 135, 0.05],
  [
    'hotel-cookers',
    'three cookers of a hotel',
    hotel,
    'one-source',
    () => demand('small-hotel', of('cooking', [6, 6, 6])),
    60,
    0.05,
  ],
  [
    'hotel-all',
    'cookers, heaters and lamps of a hotel',
    hotel,
    'one-source',
    () => demand('small-hotel', hotelLoads(3)),
    118.75,
    0.02,
  ],
  [
    'hotel-undiversified',
    'the same without diversity',
    hotel,
    'one-source',
    () => hotelLoads(3).reduce((sum, l) => sum + (l.current as number), 0),
    166.67,
    0.05,
    'the book has a fourth heater here and three where it takes diversity',
  ],
];

/** Published figures of whole demands. */
export const cases: readonly PublishedCase[] = rows.map(
  ([id, about, source, provenance, ours, published, tolerance, differs]) => ({
    ...{ id: `whole-demand-${id}`, about, source, provenance, ours, published, tolerance },
    exercises: ['on-site-guide/a2'],
    unit: 'A',
    ...(differs === undefined ? {} : { differs }),
  }),
);

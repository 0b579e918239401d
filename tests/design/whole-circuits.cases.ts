import { requiredWithInfeed } from '../../src/codes/bs7671/groups/shared-circuit.js';
import { amperes, known, ohms } from '../../src/index.js';
import type { PublishedCase } from '../support/published.js';
import { armoured, at, drop, loop, required, singles, tabulated, type Whole, whole } from './whole.js';

// Whole circuits that somebody worked out in print: each goes through the assessment, not through one formula.

const distributor = {
  document: 'technical pages of a cable distributor',
  where: 'voltage drop calculations, 415 V example',
};
const far: Whole = { current: 100, three: true, cable: armoured, size: 35, length: 150, rating: 100 };

const college = { document: 'UK college textbook, 5th edition', where: 'pages 300 and 301, cooker of 6 kW' };
const cooker: Whole = { current: 26.09, cable: singles, size: 10, length: 20, route: at(35, 'A'), rating: 32 };

const heaterSource = (part: string) => ({
  document: 'UK textbook exercise, BS 7671',
  where: `three-phase heater of 16 kW, ${part}`,
});
const heater = (size: number, standard: string, rating: number): Whole => ({
  current: 23.1,
  three: true,
  cable: singles,
  size,
  length: 25,
  route: at(35, 'B'),
  device: { kind: known({ standard } as never) },
  rating,
});

const kiln: Whole = { current: 37.4, cable: {}, size: 6, length: 20, route: at(40, 'C'), rating: 40 };

const guide16 = { document: "The electricians' guide to the 16th edition", where: '4.3.11, example in the text' };
const shower6: Whole = { current: 25, cable: {}, size: 4, length: 16, rating: 30 };

const newsgroup = { document: 'UK newsgroup on home electrics', where: 'circuit of a shower at 45 A, 10 mm², 240 V' };
const shower45: Whole = { current: 45, cable: {}, size: 10, length: 40, rating: 45 };
/** Length at which a loop impedance is reached beyond that of the supply. */
const lengthFor = (limit: number, external: number): number => {
  const w = (length: number): Whole => ({ ...shower45, length, supply: { externalImpedance: known(ohms(external)) } });
  return ((limit - external) / (loop(w(60)) - loop(w(20)))) * 40;
};

const electrasim = { document: 'installer’s guide to electric showers', where: 'capacities and sizes' };
const infeed = { document: 'members’ forum of an institution', where: 'rating of a board with sources, 551.7.2' };

/** Published figures of whole circuits. */
export const cases: readonly PublishedCase[] = [
  whole(
    'armoured-35-drop',
    '100 A over 150 m of 35 mm² armoured, three-phase: drop between lines',
    distributor,
    'one-source',
    () => Math.sqrt(3) * drop(far),
    16.5,
    'V',
    0.05,
    ['bs7671/4d4b', 'voltage-drop-tabulated'],
  ),
  whole(
    'armoured-size',
    'the smallest size that keeps the drop within 10.5 V',
    distributor,
    'one-source',
    () => [35, 50, 70, 95].find((size) => Math.sqrt(3) * drop({ ...far, size }) <= 10.5) ?? Number.NaN,
    70,
    'mm²',
    0,
    ['bs7671/4d4b'],
  ),
  whole(
    'cooker-required',
    'cooker behind 32 A at 35 °C: tabulated capacity required',
    college,
    'one-source',
    () => required(cooker),
    34.04,
    'A',
    0.005,
    ['bs7671/4b1', 'required-capacity-overload'],
  ),
  whole(
    'cooker-capacity',
    'cooker in 10 mm² by method A: tabulated capacity',
    college,
    'one-source',
    () => tabulated(cooker),
    46,
    'A',
    0,
    ['bs7671/4d1a'],
  ),
  whole(
    'heater-a-required',
    'heater of 16 kW behind a 30 A rewirable fuse at 35 °C',
    heaterSource('(a)'),
    'derived',
    () => required(heater(10, 'BS 3036', 30)),
    44.0,
    'A',
    0.05,
    ['bs7671/4b1'],
  ),
  whole(
    'heater-a-capacity',
    'its 10 mm² in conduit, three loaded',
    heaterSource('(a)'),
    'one-source',
    () => tabulated(heater(10, 'BS 3036', 30)),
    57,
    'A',
    0,
    ['bs7671/4d1a'],
    'the exercise reads the column for two loaded conductors: 57 A; three carry 50 A',
  ),
  whole(
    'heater-a-drop',
    'its drop between lines over 25 m of 10 mm²',
    heaterSource('(a)'),
    'derived',
    () => Math.sqrt(3) * drop(heater(10, 'BS 3036', 30)),
    2.2,
    'V',
    0.05,
    ['bs7671/4d1b'],
  ),
  whole(
    'heater-b-required',
    'the heater behind a 25 A cartridge fuse',
    heaterSource('(b)'),
    'derived',
    () => required(heater(4, 'BS 88-2', 25)),
    26.6,
    'A',
    0.05,
    ['bs7671/4b1'],
  ),
  whole(
    'heater-b-capacity',
    'its 4 mm² in conduit',
    heaterSource('(b)'),
    'one-source',
    () => tabulated(heater(4, 'BS 88-2', 25)),
    32,
    'A',
    0,
    ['bs7671/4d1a'],
    'the exercise reads the column for two loaded conductors: 32 A; three carry 28 A',
  ),
  whole(
    'heater-b-drop',
    'its drop between lines over 25 m of 4 mm²',
    heaterSource('(b)'),
    'derived',
    () => Math.sqrt(3) * drop(heater(4, 'BS 88-2', 25)),
    5.5,
    'V',
    0.05,
    ['bs7671/4d1b'],
  ),
  whole(
    'kiln-required',
    'kiln of 8.6 kW behind 40 A in a roof space of 40 °C',
    { document: 'Electric wiring: domestic, design example', where: 'pottery kiln in a workshop' },
    'derived',
    () => required(kiln),
    46,
    'A',
    0.05,
    ['bs7671/4b1'],
  ),
  whole(
    'shower-6-drop',
    'shower of 6 kW at 240 V, 16 m of 4 mm²: drop',
    guide16,
    'one-source',
    () => drop(shower6),
    4.4,
    'V',
    0.05,
    ['bs7671/4d5-drop'],
  ),
  whole(
    'shower-6-share',
    'the same as a share of the voltage',
    guide16,
    'one-source',
    () => (100 * drop(shower6)) / 240,
    1.83,
    '%',
    0.005,
    ['bs7671/4d5-drop'],
  ),
  whole(
    'shower-45-length-drop',
    'length of a shower circuit of 45 A in 10 mm² for a drop of 4 %',
    newsgroup,
    'one-source',
    () => (0.04 * 240 * 40) / drop(shower45),
    49,
    'm',
    1,
    ['bs7671/4d5-drop'],
  ),
  whole(
    'shower-45-length-type-b',
    'length for disconnection behind type B on TN-S of 0.8 Ω, without voltage factor',
    newsgroup,
    'one-source',
    () => lengthFor(240 / (5 * 45), 0.8),
    35,
    'm',
    1,
    ['resistance-at-temperature', 'loop-impedance'],
  ),
  whole(
    'shower-45-length-type-c',
    'length for disconnection behind type C on PME of 0.35 Ω, without voltage factor',
    newsgroup,
    'one-source',
    () => lengthFor(240 / (10 * 45), 0.35),
    23,
    'm',
    1,
    ['loop-impedance'],
  ),
  whole(
    'shower-6-mm2-capacity',
    'flat twin and earth of 6 mm², clipped direct',
    electrasim,
    'one-source',
    () => tabulated({ current: 37, cable: {}, size: 6, length: 20, rating: 40 }),
    47,
    'A',
    0,
    ['bs7671/4d5'],
  ),
  whole(
    'shower-10-mm2-capacity',
    'flat twin and earth of 10 mm², clipped direct',
    electrasim,
    'one-source',
    () => tabulated({ current: 41.3, cable: {}, size: 10, length: 20, rating: 45 }),
    65,
    'A',
    0,
    ['bs7671/4d5'],
    'the page has the figure of single-core cables; flat cable of 10 mm² carries 64 A by Table 4D5',
  ),
  ...(
    [
      ['one-source', 100, 16, 116],
      ['two-sources-of-16', 100, 32, 132],
      ['smaller-fuse', 80, 16, 96],
    ] as const
  ).map(([id, rating, generation, published]) =>
    whole(
      `infeed-${id}`,
      `device of ${rating} A and sources of ${generation} A together`,
      infeed,
      'one-source',
      () => requiredWithInfeed({ deviceRating: amperes(rating), generationCurrent: amperes(generation) }),
      published,
      'A',
      0,
      ['required-capacity-with-infeed'],
    ),
  ),
];

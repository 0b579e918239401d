import { known, metres, ohms, ratio } from '../../src/index.js';
import type { PublishedCase } from '../support/published.js';
import { armoured, at, carries, chosenFor, drop, loop, required, tabulated, type Whole, whole } from './whole.js';

// Circuits that electricians worked out for one another in public, and their answers: each goes through the assessment.

/** The smallest of some sizes that a circuit does with. */
const smallest = (sizes: readonly number[], enough: (size: number) => boolean): number =>
  sizes.find(enough) ?? Number.NaN;

// 5 kW at 230 V behind a 25 A breaker, beside one other cable and for 300 mm in insulation, at 35 °C
const heaterSource = { document: 'electricians’ forum, answer to a student', where: 'thread 30878, heater of 5 kW' };
const heater = (size: number): Whole => ({
  current: 5000 / 230,
  cable: { construction: 'multicore', protective: 'core' },
  size,
  length: 18,
  route: at(35, 'C', {
    group: { arrangement: 'bunched', circuits: known(2), unequal: known(false) },
    insulated: known(metres(0.3)),
  }),
  rating: 25,
});

// a garage 30 m away, 32 A, armoured cable with thermoplastic insulation
const garageSource = { document: 'UK newsgroup on home improvement', where: 'armoured cable to a garage 30 m away' };
const garage = (size: number): Whole => ({
  current: 32,
  cable: armoured,
  size,
  length: 30,
  rating: 32,
  supply: { system: known('TN-S'), externalImpedance: known(ohms(0.8)) },
});

// a summer house 40 m away, 5 kW, armoured cable with thermosetting insulation
const summerSource = { document: 'home electrics forum', where: 'thread 129678, summer house 40 m away' };
const summer = (size: number): Whole => ({
  current: 21.74,
  cable: { ...armoured, insulation: 'thermosetting-90' },
  size,
  length: 40,
  rating: 32,
});

const houseSource = { document: 'home improvement forum', where: 'post 22012, armoured cable over 70 m' };
const farHouse = (size: number): Whole => ({ current: 32, cable: armoured, size, length: 70, rating: 32 });

const lesson = { document: 'assignment of a college', where: 'load 100 m from the point of supply, 35 mm² armoured' };
const far: Whole = { current: 90, three: true, cable: armoured, size: 35, length: 100, rating: 100 };

const institution = { document: 'members’ forum of an institution', where: 'question 29061, 10 mm² to an outbuilding' };
const outbuilding: Whole = {
  current: 32,
  cable: { construction: 'armoured', insulation: 'thermosetting-90', protective: 'core' },
  size: 10,
  length: 50,
  device: { kind: known({ standard: 'BS 88-2' }) },
  rating: 40,
  supply: { system: known('TN-S'), externalImpedance: known(ohms(0.8)) },
};

// four-core cables of IEC 60364-5-52 Annex E, 39 A with third harmonics
const annexE = { document: 'IEC 60364-5-52:2009', where: 'Annex E, examples of 39 A' };
const harmonics = (content: number): Whole => ({
  current: 39,
  three: true,
  cable: { construction: 'multicore', insulation: 'thermoplastic-70', protective: 'core' },
  size: 10,
  length: 20,
  rating: 40,
  thirdHarmonic: known(ratio(content)),
});

/** Answers of forums and courses on whole circuits. */
export const cases: readonly PublishedCase[] = [
  whole(
    'heater-5-kw-required',
    'heater of 5 kW, grouped, hot and in insulation: tabulated capacity required',
    heaterSource,
    'one-source',
    () => required(heater(10)),
    65.18,
    'A',
    0.01,
    ['bs7671/4b1', 'bs7671/4c1', 'bs7671/52.2', 'required-capacity-overload', 'tabulated-capacity'],
  ),
  whole(
    'heater-5-kw-drop',
    'its drop over 18 m of 10 mm²',
    heaterSource,
    'one-source',
    () => drop(heater(10)),
    1.72,
    'V',
    0.005,
    ['bs7671/4d5-drop'],
  ),
  ...(
    [
      [4, 38],
      [6, 49],
    ] as const
  ).map(([size, published]) =>
    whole(
      `garage-${size}-mm2-capacity`,
      `armoured cable of ${size} mm², clipped direct`,
      garageSource,
      'one-source',
      () => tabulated(garage(size)),
      published,
      'A',
      0,
      ['bs7671/4d4a', 'tabulated-capacity'],
    ),
  ),
  ...(
    [
      [4, 10.5, 0.1],
      [6, 7, 0.05],
    ] as const
  ).map(([size, published, tolerance]) =>
    whole(
      `garage-${size}-mm2-drop`,
      `drop of 32 A over 30 m of ${size} mm² armoured`,
      garageSource,
      'one-source',
      () => drop(garage(size)),
      published,
      'V',
      tolerance,
      ['bs7671/4d4b'],
    ),
  ),
  whole(
    'garage-loop-of-cable',
    'loop of 30 m of 6 mm² armoured, the armour as protective conductor',
    garageSource,
    'one-source',
    () => loop(garage(6)) - 0.8,
    0.3,
    'Ω',
    0.05,
    ['loop-impedance', 'bs5467/armour-resistance'],
    'the post takes 3 mΩ/m for the core and 7 mΩ/m for the armour, cold; at working temperature they come to 12 mΩ/m',
  ),
  whole(
    'garage-loop',
    'the same with 0.8 Ω ahead',
    garageSource,
    'one-source',
    () => loop(garage(6)),
    1.1,
    'Ω',
    0.05,
    ['loop-impedance'],
    'as before: conductors cold',
  ),
  whole(
    'garage-fault',
    'fault current behind it',
    garageSource,
    'one-source',
    () => 230 / loop(garage(6)),
    253,
    'A',
    1,
    ['loop-impedance'],
    'the post divides 230 V by 1.1 Ω, which is 209 A, not 253 A',
  ),
  ...(
    [
      [4, 10.44, 0.01],
      [6, 6.9, 0.05],
    ] as const
  ).map(([size, published, tolerance]) =>
    whole(
      `summer-house-${size}-mm2-drop`,
      `drop of 21.74 A over 40 m of ${size} mm² armoured, thermosetting`,
      summerSource,
      'one-source',
      () => drop(summer(size)),
      published,
      'V',
      tolerance,
      ['bs7671/4e4b'],
    ),
  ),
  whole(
    'summer-house-share',
    'the same for 6 mm² as a share of the voltage',
    summerSource,
    'one-source',
    () => (100 * drop(summer(6))) / 230,
    3,
    '%',
    0.05,
    ['bs7671/4e4b'],
  ),
  whole(
    'summer-house-size',
    'its size for a drop of 3 %',
    summerSource,
    'one-source',
    () => smallest([2.5, 4, 6, 10], (size) => drop(summer(size)) <= 6.9),
    6,
    'mm²',
    0,
    ['bs7671/4e4b'],
  ),
  whole(
    'summer-house-three-core',
    'drop of 4 mm² with three cores',
    summerSource,
    'one-source',
    () => drop(summer(4)),
    8.7,
    'V',
    0.05,
    ['bs7671/4e4b'],
    'the thread finds that the column of three-phase cables was read: 10 mV/A/m in place of 12',
  ),
  whole(
    'far-house-drop',
    'drop of 32 A over 70 m of 10 mm² armoured',
    houseSource,
    'one-source',
    () => drop(farHouse(10)),
    9.8,
    'V',
    0.06,
    ['bs7671/4d4b'],
  ),
  whole(
    'far-house-size',
    'its size for a drop of 9.2 V',
    houseSource,
    'one-source',
    () => smallest([6, 10, 16, 25], (size) => drop(farHouse(size)) <= 9.2),
    16,
    'mm²',
    0,
    ['bs7671/4d4b'],
  ),
  whole(
    'lesson-capacity',
    'armoured cable of 35 mm², three-phase',
    lesson,
    'one-source',
    () => tabulated(far),
    119,
    'A',
    0,
    ['bs7671/4d4a'],
    '119 A stands in the column of buried two-core cables; four cores clipped direct carry 125 A, and buried 98 A',
  ),
  whole(
    'lesson-rate',
    'its drop between lines per ampere and metre',
    lesson,
    'one-source',
    () => (1000 * Math.sqrt(3) * drop(far)) / (90 * 100),
    1.1,
    'mV',
    0.005,
    ['bs7671/4d4b'],
  ),
  whole(
    'outbuilding-resistances',
    'R_1+R_2 of 50 m of three-core 10 mm², thermosetting',
    institution,
    'one-source',
    () => loop(outbuilding) - 0.8,
    0.0216,
    'Ω',
    0.00005,
    ['resistance-at-temperature', 'loop-impedance'],
    'a slip of a place: 50 × 3.66 × 1.2 mΩ are 0.2196 Ω, and 90 °C asks for 1.28 in place of 1.2',
  ),
  ...(
    [
      [0.2, 45, 0.5],
      [0.4, 54.4, 0.05],
    ] as const
  ).map(([content, published, tolerance]) =>
    whole(
      `harmonics-${100 * content}-required`,
      `39 A with ${100 * content} % of third harmonics: current from which the cable is chosen`,
      annexE,
      'memory',
      () => chosenFor(harmonics(content)),
      published,
      'A',
      tolerance,
      ['iec60364/e.52.1'],
    ),
  ),
  ...(
    [
      [0.2, 10],
      [0.4, 10],
      [0.5, 16],
    ] as const
  ).map(([content, published]) =>
    whole(
      `harmonics-${100 * content}-size`,
      `39 A with ${100 * content} % of third harmonics: size of four-core cable by method C`,
      annexE,
      'memory',
      () => smallest([6, 10, 16, 25], (size) => carries({ ...harmonics(content), size })),
      published,
      'mm²',
      0,
      ['iec60364/e.52.1', 'bs7671/4d2a', 'load-within-capacity'],
    ),
  ),
];

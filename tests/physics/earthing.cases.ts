import { publishedElectrodeLimit, vectorSumPrinted } from '../../src/codes/bs7671/definitions.js';
import { amperes, metres, ohmMetres, ohms, ratio, squareMetres, volts, watts } from '../../src/index.js';
import {
  arithmeticSum,
  gridResistance,
  heldPowerElectrodeLimit,
  mutualResistanceOf,
  openPenElectrodeLimit,
  rodSpacingRatio,
  twoElectrodes,
  vectorSum,
  wireResistance,
} from '../../src/physics/definitions.js';
import { gridResistanceAtDepth } from '../../src/physics/electrodes.js';
import { openPenFloating, parallelRods, plateResistance, rodResistance } from '../../src/physics/index.js';
import type { PublishedCase } from '../support/published.js';

const annex = { document: 'BS 7671', where: 'Annex A722, equation recalled; figures computed from it' } as const;
const lines = (a: number, b: number, c: number) => ({
  lineCurrent1: amperes(a),
  lineCurrent2: amperes(b),
  lineCurrent3: amperes(c),
});

// load in A, largest electrode in Ω with source factor 1.1 and with 1.0
const single = [
  [10, 8.798, 10.062],
  [16, 5.499, 6.289],
  [20, 4.399, 5.031],
  [32, 2.749, 3.145],
  [40, 2.199, 2.516],
  [50, 1.76, 2.013],
  [60, 1.466, 1.677],
  [80, 1.1, 1.258],
  [100, 0.88, 1.006],
] as const;

// three line currents in A, neutral current in A, touch voltage without electrode in V at 1.1, largest electrode in Ω
const three = [
  [100, 100, 100, 0, 0, null],
  [100, 90, 80, 17.32, 16.2, null],
  [60, 50, 40, 17.32, 29.2, null],
  [100, 60, 60, 40, 46, null],
  [100, 40, 40, 60, 84.3, 6.24],
  [100, 50, 0, 86.6, 146.1, 1.411],
  [100, 0, 0, 100, 253, 0.88],
  [60, 30, 30, 30, 63.3, null],
  [40, 32, 8, 28.84, 91.2, 9.484],
  [32, 0, 0, 32, 253, 2.749],
  [80, 70, 38, 38, 51.1, null],
] as const;

const sums = (a: number, b: number, c: number) => ({
  vectorSumCurrent: vectorSum(lines(a, b, c)),
  arithmeticSumCurrent: arithmeticSum(lines(a, b, c)),
});

// 55 Ω·m, rods of 3 m and 25 mm at 10 m in a line, factor 1; the text cuts the figures instead of rounding them
const rodText = { document: 'earthing design calculation after BS 7430', where: 'worked example, nine rods' } as const;
const rod = () =>
  rodResistance({
    earthResistivity: ohmMetres(55),
    electrodeLength: metres(3),
    electrodeDiameter: metres(0.025),
  });
const spacing = () =>
  rodSpacingRatio({ earthResistivity: ohmMetres(55), singleRodResistance: ohms(rod()), rodSpacing: metres(10) });
const nineRods: readonly PublishedCase[] = [
  {
    id: 'nine-rods-single',
    about: 'one rod of 3 m and 25 mm in 55 Ω·m',
    source: rodText,
    provenance: 'one-source',
    exercises: ['rod-resistance'],
    ours: rod,
    published: 17.12,
    unit: 'Ω',
    tolerance: 0.01,
  },
  {
    id: 'nine-rods-ratio',
    about: 'ratio of spacing resistance to rod resistance, rods at 10 m',
    source: rodText,
    provenance: 'one-source',
    exercises: ['rod-spacing-ratio'],
    ours: spacing,
    published: 0.0511,
    unit: '1',
    tolerance: 0.0001,
  },
  {
    id: 'nine-rods-parallel',
    about: 'nine rods in parallel, factor 1',
    source: rodText,
    provenance: 'one-source',
    exercises: ['parallel-rods'],
    ours: () =>
      parallelRods({
        singleRodResistance: ohms(rod()),
        rodFactor: ratio(1),
        spacingRatio: ratio(spacing()),
        rodCount: ratio(9),
      }),
    published: 1.99,
    unit: 'Ω',
    tolerance: 0.01,
  },
];

/** Figures on the open PEN conductor and on electrodes that are printed or derived elsewhere. */
export const cases: readonly PublishedCase[] = [
  ...single.flatMap(([current, high, nominal]) =>
    ([1.1, 1] as const).map(
      (c): PublishedCase => ({
        id: `open-pen-electrode-${current}-a-c-${c}`,
        about: `largest electrode for 70 V at ${current} A, source factor ${c}`,
        source: annex,
        provenance: 'derived',
        exercises: ['open-pen-electrode-limit-published'],
        ours: () =>
          publishedElectrodeLimit({
            touchVoltageLimit: volts(70),
            nominalVoltage: volts(230),
            sourceFactor: ratio(c),
            installationCurrent: amperes(current),
          }),
        published: c === 1.1 ? high : nominal,
        unit: 'Ω',
        tolerance: 0.0005001,
      }),
    ),
  ),
  ...three.flatMap(([a, b, c, neutral, floating, electrode]): PublishedCase[] => [
    {
      id: `neutral-current-${a}-${b}-${c}`,
      about: `neutral current of ${a}/${b}/${c} A`,
      source: annex,
      provenance: 'one-source',
      exercises: ['vector-sum-of-line-currents', 'vector-sum-of-line-currents-printed'],
      ours: () => vectorSumPrinted(lines(a, b, c)),
      published: neutral,
      unit: 'A',
      tolerance: 0.005001,
    },
    {
      id: `open-pen-floating-${a}-${b}-${c}`,
      about: `touch voltage without electrode, ${a}/${b}/${c} A at 253 V`,
      source: { document: 'circuit theory', where: 'star point of three resistances' },
      provenance: 'derived',
      exercises: ['open-pen-voltage-without-electrode'],
      ours: () => openPenFloating({ sourceFactor: ratio(1.1), nominalVoltage: volts(230), ...sums(a, b, c) }),
      published: floating,
      unit: 'V',
      tolerance: 0.05001,
    },
    ...(electrode === null
      ? []
      : [
          {
            id: `open-pen-electrode-${a}-${b}-${c}`,
            about: `largest electrode for 70 V, ${a}/${b}/${c} A at 253 V`,
            source: { document: 'circuit theory', where: 'one node, three resistances and an electrode' },
            provenance: 'derived' as const,
            exercises: ['open-pen-electrode-limit'],
            ours: () =>
              openPenElectrodeLimit({
                touchVoltageLimit: volts(70),
                sourceFactor: ratio(1.1),
                nominalVoltage: volts(230),
                sourceElectrodeResistance: ohms(0),
                ...sums(a, b, c),
              }),
            published: electrode,
            unit: 'Ω',
            tolerance: 0.0005001,
          },
        ]),
  ]),
  ...(
    [
      [216.2, 1.39],
      [230, 1.52],
      [253, 1.74],
    ] as const
  ).map(
    ([voltage, published]): PublishedCase => ({
      id: `open-pen-electrode-held-power-${voltage}`,
      about: `largest electrode for 70 V, 7.36 kW held, at ${voltage} V`,
      source: { document: 'circuit theory', where: 'held power in series with a resistance' },
      provenance: 'derived',
      exercises: ['open-pen-electrode-limit-held-power'],
      ours: () =>
        heldPowerElectrodeLimit({
          touchVoltageLimit: volts(70),
          supplyVoltage: volts(voltage),
          heldPower: watts(7360),
        }),
      published,
      unit: 'Ω',
      tolerance: 0.005001,
    }),
  ),
  {
    id: 'rod-55-ohm-metres-3-m',
    about: 'rod of 3 m and 25 mm in 55 Ω·m',
    source: { document: 'BS 7430', where: 'calculation sheet in its form' },
    provenance: 'one-source',
    exercises: ['rod-resistance'],
    ours: () =>
      rodResistance({ earthResistivity: ohmMetres(55), electrodeLength: metres(3), electrodeDiameter: metres(0.025) }),
    published: 17.12,
    unit: 'Ω',
    tolerance: 0.005,
  },
  {
    id: 'rod-244-ohm-metres-15-m',
    about: 'rod of 15 m and 60.3 mm in 244 Ω·m',
    source: { document: 'a published worked line', where: 'vertical rod' },
    provenance: 'one-source',
    exercises: ['rod-resistance'],
    ours: () =>
      rodResistance({
        earthResistivity: ohmMetres(244),
        electrodeLength: metres(15),
        electrodeDiameter: metres(0.0603),
      }),
    published: 17.076,
    unit: 'Ω',
    tolerance: 0.0005,
  },
  {
    id: 'rod-spacing-ratio-55',
    about: 'ratio of spacing resistance, rods 10 m apart',
    source: { document: 'BS 7430', where: 'calculation sheet in its form' },
    provenance: 'one-source',
    exercises: ['rod-spacing-ratio'],
    ours: () =>
      rodSpacingRatio({
        earthResistivity: ohmMetres(55),
        singleRodResistance: ohms(17.1187762719),
        rodSpacing: metres(10),
      }),
    published: 0.0511,
    unit: '1',
    tolerance: 0.00005,
  },
  ...(
    [
      [1540, 2.78],
      [1690, 2.75],
    ] as const
  ).map(
    ([length, published]): PublishedCase => ({
      id: `grid-400-4900-${length}`,
      about: `grid of 70 m by 70 m with ${length} m of conductor in 400 Ω·m`,
      source: { document: 'IEEE 80', where: 'worked example' },
      provenance: 'memory',
      exercises: ['grid-resistance-at-depth'],
      ours: () =>
        gridResistanceAtDepth({
          earthResistivity: ohmMetres(400),
          plateArea: squareMetres(4900),
          electrodeLength: metres(length),
          burialDepth: metres(0.5),
        }),
      published,
      unit: 'Ω',
      tolerance: 0.0056,
    }),
  ),
  {
    id: 'grid-first-form-100-100-60',
    about: 'grid of 10 m by 10 m with 60 m of conductor in 100 Ω·m, first form',
    source: { document: 'IEEE 80', where: 'first form' },
    provenance: 'derived',
    exercises: ['grid-resistance'],
    ours: () =>
      gridResistance({ earthResistivity: ohmMetres(100), plateArea: squareMetres(100), electrodeLength: metres(60) }),
    published: 6.09666666667,
    unit: 'Ω',
    tolerance: 1e-9,
  },
  ...nineRods,
  {
    id: 'dwight-wire-200-ft',
    about: 'wire of 60.96 m and 11.684 mm, 3.048 m deep in 2,000 Ω·m',
    source: {
      document: 'Dwight, Calculation of resistances to ground, 1936, quoted in the tests of an open library',
      where: 'page 1323, horizontal wire of 200 ft, No. 4/0, 10 ft deep',
    },
    provenance: 'one-source',
    exercises: ['wire-resistance'],
    ours: () =>
      wireResistance({
        earthResistivity: ohmMetres(2000),
        electrodeLength: metres(60.96),
        electrodeDiameter: metres(0.011684),
        burialDepth: metres(3.048),
      }),
    published: 57.6,
    unit: 'Ω',
    tolerance: 0.05,
  },
  {
    id: 'two-rods-mutual-1.3',
    about: 'two rods of 11.57308 Ω with 1.3027 Ω between them, in parallel',
    source: {
      document: 'discussion among engineers on an earth pit, two rods computed at once by a program',
      where: 'eng-tips.com, thread 455339',
    },
    provenance: 'one-source',
    exercises: ['two-electrodes'],
    ours: () =>
      twoElectrodes({
        firstElectrodeResistance: ohms(11.57308),
        secondElectrodeResistance: ohms(11.57308),
        mutualResistance: ohms(1.3027),
      }),
    published: 6.43789,
    unit: 'Ω',
    tolerance: 0.000005,
  },
  {
    id: 'mutual-resistance-hemisphere-25-mm',
    about: 'potential per ampere 25 mm from a point on soil of 1 MΩ·m',
    source: {
      document: 'textbook problem, hemisphere of 25 mm buried in earth of 1 µS/m',
      where: 'homeworksource.com, problem 1004212, solution',
    },
    provenance: 'one-source',
    exercises: ['mutual-resistance'],
    ours: () => mutualResistanceOf({ earthResistivity: ohmMetres(1e6), rodSpacing: metres(0.025) }) / 1e6,
    published: 6.37,
    unit: 'MΩ',
    tolerance: 0.005,
  },
  {
    id: 'mutual-resistance-rods-100-m',
    about: 'mutual resistance of two rods of 10 m at 100 m in 100 Ω·m',
    source: { document: 'discussion among engineers on an earth pit', where: 'eng-tips.com, thread 455339, last row' },
    provenance: 'one-source',
    exercises: ['mutual-resistance'],
    ours: () => mutualResistanceOf({ earthResistivity: ohmMetres(100), rodSpacing: metres(100) }),
    published: 0.1586,
    unit: 'Ω',
    tolerance: 0.00005,
    differs: 'rods of 10 m are no points: 0.3 % less between them than between points',
  },
  {
    id: 'plate-600-mm-square',
    about: 'plate of 600 mm square in 100 Ω·m',
    source: { document: 'electrical engineer’s notes on earthing after IS 3043', where: 'number of plates, example' },
    provenance: 'one-source',
    exercises: ['plate-resistance'],
    ours: () => plateResistance({ earthResistivity: ohmMetres(100), plateArea: squareMetres(0.36) }),
    published: 290.14,
    unit: 'Ω',
    tolerance: 0.005,
    differs: 'the notes divide by the area of both faces instead of by 4, and take 0.072 m² under the root for 0.72 m²',
  },
];

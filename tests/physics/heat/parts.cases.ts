import { tableB5214, tableB5215 } from '../../../src/codes/iec60364/definitions.js';
import {
  celsius,
  hertz,
  kelvinMetresPerWatt,
  kelvins,
  metres,
  millimetres,
  ohmsPerMetre,
  perKelvin,
  ratio,
} from '../../../src/index.js';
import {
  acResistance,
  airDissipation,
  ambientFactorOfRises,
  buriedResistance,
  dissipationOf,
  groundResistance,
  neighbourResistance,
  proximityOfThree,
  proximityOfTwo,
  skinArgument,
  skinFactor,
  touchingCoresFactor,
} from '../../../src/physics/heat/definitions.js';
import { laidUpDiameterOfRound } from '../../../src/physics/heat/geometry.js';
import { resistanceAtTemperature } from '../../../src/physics/index.js';
import type { PublishedCase } from '../../support/published.js';

const equations = (where: string) =>
  ({ document: 'IEC 60287, equations as recalled', where: `${where}, computed independently` }) as const;
const close = (published: number) => Math.abs(published) * 1e-9;

// name, resistance at 20 °C in Ω/m, temperature, conductor in mm, spacing in mm, conductors; R', y_s, y_p, R
const conductors = [
  ['400-three', 4.7e-5, 90, 23.6, 27.6, 3, 5.99297e-5, 0.0224879589543, 0.0700837738316, 6.54774961743e-5],
  ['95-three', 0.000193, 90, 11.4, 13.6, 3, 0.0002460943, 0.00135657500677, 0.00435389100771, 0.000247499613137],
  ['2.5-two', 0.00741, 70, 2.01, 3.61, 2, 0.008866065, 1.04630021356e-6, 9.40658583733e-7, 0.00886608261651],
] as const;

const resistances = conductors.flatMap(([name, r20, hot, diameter, spacing, count, dc, ys, yp, ac]) => {
  const resistancePerMetre = resistanceAtTemperature({
    resistancePerMetre20: ohmsPerMetre(r20),
    temperatureCoefficient: perKelvin(0.00393),
    conductorTemperature: celsius(hot),
  });
  const x = skinArgument({ frequency: hertz(50), resistancePerMetre });
  const skin = skinFactor({ skinArgument: x });
  const proximity = (count === 3 ? proximityOfThree : proximityOfTwo)({
    skinArgument: x,
    conductorDiameter: millimetres(diameter),
    conductorSpacing: millimetres(spacing),
    shapeShare: ratio(1),
  });
  const one = (what: string, unit: string, exercises: readonly string[], ours: number, published: number) =>
    ({
      id: `ac-resistance-${name}-${what}`,
      about: `${what.replaceAll('-', ' ')} of a conductor of ${name.replace('-', ' mm², ')} cores`,
      source: equations('alternating-current resistance'),
      provenance: 'derived',
      exercises,
      ours: () => ours,
      published,
      unit,
      tolerance: close(published),
    }) satisfies PublishedCase;
  return [
    one('direct-current', 'Ω/m', ['resistance-at-temperature'], resistancePerMetre, dc),
    one('skin-effect', '1', ['skin-argument', 'skin-factor'], skin, ys),
    one('proximity-effect', '1', [count === 3 ? 'proximity-factor-three' : 'proximity-factor-two'], proximity, yp),
    one(
      'alternating-current',
      'Ω/m',
      ['ac-resistance'],
      acResistance({ resistancePerMetre, skinFactor: skin, proximityFactor: proximity }),
      ac,
    ),
  ];
});

// name, soil in K·m/W, depth in m, diameter in m, offsets of neighbours in m, external thermal resistance
const buried = [
  ['three-touching', 2.5, 0.7, 0.02, [-0.02, 0.02], 5.34712303004],
  ['two-at-0.25', 1, 0.8, 0.04, [0.25], 0.994754799395],
] as const;

const grounds = buried.map(([name, soil, depth, diameter, offsets, published]): PublishedCase => {
  const at = { soilResistivity: kelvinMetresPerWatt(soil), burialDepth: metres(depth) };
  return {
    id: `buried-${name}`,
    about: 'thermal resistance outside a buried cable among neighbours',
    source: equations('groups of buried cables'),
    provenance: 'derived',
    exercises: ['buried-thermal-resistance', 'neighbour-thermal-resistance', 'ground-thermal-resistance'],
    ours: () =>
      groundResistance({
        soilThermalResistance: buriedResistance({ ...at, cableDiameter: millimetres(diameter * 1000) }),
        neighboursThermalResistance: kelvinMetresPerWatt(
          offsets.reduce(
            (sum, a) =>
              sum + neighbourResistance({ ...at, neighbourOffset: metres(a), neighbourDepth: at.burialDepth }),
            0,
          ),
        ),
      }),
    published,
    unit: 'K·m/W',
    tolerance: close(published),
  };
});

const surfaces = (
  [
    ['one-on-wall', 16.6, 5.33825181619],
    ['three-trefoil', 20, 3.34925518197],
    ['two-touching-horizontal', 20, 4.40060966544],
    ['three-spaced-vertical', 20, 4.86460863373],
  ] as const
).map(([formation, diameter, published]): PublishedCase => {
  const constant = (name: 'Z' | 'E' | 'g') => airDissipation.get({ constant: name, formation });
  return {
    id: `dissipation-${formation}`,
    about: `heat that cables give to the air, ${formation.replaceAll('-', ' ')}`,
    source: equations('cables in free air'),
    provenance: 'memory',
    exercises: ['heat-dissipation', 'iec60287/air-dissipation'],
    ours: () =>
      dissipationOf({
        dissipationSlope: constant('Z'),
        dissipationBase: constant('E'),
        dissipationExponent: constant('g'),
        cableDiameter: millimetres(diameter),
      }),
    published,
    unit: 'W/m² at 1 K to the power of 5/4',
    tolerance: close(published),
  };
});

// thickness of insulation over diameter, geometric factor by finite volumes for two, three, four and five cores
const finiteVolumes = [
  [0.04, 0.31134, 0.33589, 0.36128, 0.37975],
  [0.06, 0.38745, 0.42521, 0.45791, 0.48048],
  [0.08, 0.45382, 0.50133, 0.54211, 0.57052],
  [0.1, 0.51604, 0.57001, 0.61729, 0.65104],
  [0.13, 0.59534, 0.66444, 0.72074, 0.76046],
  [0.17, 0.68974, 0.77474, 0.8401, 0.89077],
  [0.22, 0.79693, 0.89535, 0.97369, 1.03508],
  [0.3, 0.94083, 1.06353, 1.15716, 1.22848],
  [0.4, 1.09029, 1.2373, 1.34964, 1.43272],
  [0.5, 1.22098, 1.38805, 1.51032, 1.60047],
  [0.65, 1.38303, 1.57278, 1.70755, 1.81027],
  [0.8, 1.52211, 1.72932, 1.8762, 1.98159],
  [1, 1.68102, 1.89911, 2.05847, 2.16994],
] as const;

const factors = finiteVolumes.flatMap(([x, ...all]) =>
  all.map(
    (published, i): PublishedCase => ({
      id: `touching-cores-${i + 2}-at-${x}`,
      about: `geometric factor of ${i + 2} touching cores, insulation ${x} of the conductor`,
      source: { document: 'Heat conduction in two dimensions', where: 'finite volumes, solved apart from this code' },
      provenance: 'derived',
      exercises: ['touching-cores-factor'],
      ours: () => touchingCoresFactor({ coreCount: ratio(i + 2), insulationRatio: ratio(x) }),
      published,
      unit: '1',
      tolerance: published * 0.01,
    }),
  ),
);

const printedFactors = [
  [tableB5214, 30],
  [tableB5215, 20],
] as const;
const hottest = [
  ['thermoplastic-70', 70],
  ['thermosetting-90', 90],
] as const;

const ambientCases = printedFactors.flatMap(([printed, reference]) =>
  hottest.flatMap(([insulation, hot]) =>
    printed.rows.flatMap((row): PublishedCase[] => {
      const published = row[printed.columns.findIndex(([name]) => name === insulation) + 1];
      const ambient = Number(row[0]);
      if (typeof published !== 'number') return [];
      const rises = { permissibleRise: kelvins(hot - ambient), referenceRise: kelvins(hot - reference) };
      return [
        {
          id: `ambient-factor-${printed.id}-${hot}-at-${ambient}`,
          about: `factor for ${ambient} °C, conductor ${hot} °C, table at ${reference} °C`,
          source: { document: printed.source.document, where: printed.source.clause ?? '' },
          provenance: printed.source.provenance === 'one-source' ? 'one-source' : 'memory',
          exercises: ['ambient-factor-of-rises', printed.id],
          ours: () => ambientFactorOfRises(rises),
          published,
          unit: '1',
          tolerance: 0.005 + 1e-9,
        },
      ];
    }),
  ),
);

// cabling factors of two makers, who agree; only one prints the third place
const laidUp = (
  [
    [2, 2, 0.005, 'two-sources'],
    [3, 2.154, 0.001, 'one-source'],
    [4, 2.414, 0.001, 'one-source'],
    [5, 2.7, 0.005, 'two-sources'],
  ] as const
).map(
  ([cores, published, tolerance, provenance]): PublishedCase => ({
    id: `laid-up-diameter-${cores}-cores`,
    about: `diameter over ${cores} round cores laid up, core of 1 mm`,
    source: { document: 'tables of two makers of cables', where: 'cabling factors, diameter of bundles' },
    provenance,
    exercises: ['laid-up-diameter-round'],
    ours: () => laidUpDiameterOfRound({ coreCount: ratio(cores), conductorSpacing: millimetres(1) }),
    published,
    unit: 'mm',
    tolerance,
  }),
);

/** Parts of the heat balance of cables: figures of the same equations computed elsewhere, and printed factors. */
export const cases: readonly PublishedCase[] = [
  ...resistances,
  ...grounds,
  ...surfaces,
  ...factors,
  ...ambientCases,
  ...laidUp,
];

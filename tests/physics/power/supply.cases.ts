import { celsius, kilovoltAmperes, ohms, percent, ratio, voltAmperes, volts, watts } from '../../../src/index.js';
import { peakFactorOf, transformerFactorOf } from '../../../src/physics/definitions.js';
import {
  type Impedance,
  peakCurrentOf,
  transformerImpedanceOf,
  transformerResistanceOf,
} from '../../../src/physics/index.js';
import {
  ageingRateOfPlainPaper,
  ageingRateOfUpgradedPaper,
  hotSpotGradientOf,
  hotSpotTemperatureOf,
  hottestSpot,
  largestParallelLoad,
  meshedThreePhaseFault,
  oilRiseOf,
  reactiveVoltageOf,
  resistiveVoltageOf,
} from '../../../src/physics/power/definitions.js';
import type { FaultBranch } from '../../../src/physics/power/fault-network.js';
import {
  distributionTransformer,
  type FaultNetwork,
  impedanceAt,
  type ParallelTransformer,
  parallelShares,
  transformerCurrentOf,
  transformerLossesOf,
} from '../../../src/physics/power/index.js';
import type { PublishedCase } from '../../support/published.js';

const milli = (resistance: number, reactance: number): Impedance => ({
  resistance: resistance / 1e3,
  reactance: reactance / 1e3,
});
const branch = (name: string, from: string, to: string, impedance: Impedance): FaultBranch => ({
  name,
  from,
  to,
  impedance,
});

/** The low-voltage example of the short-circuit guide: two transformers from one 20 kV busbar, cables and an overhead line. */
const lowVoltage: FaultNetwork = (() => {
  const grid = ((1.1 * 20_000) / (Math.sqrt(3) * 10_000)) * (410 / 20_000) ** 2;
  const transformer = (kVA: number, loss: number): Impedance => {
    const plate = { transformerVoltage: volts(410), transformerRating: kilovoltAmperes(kVA) };
    const size = transformerImpedanceOf({ ...plate, transformerImpedanceVoltage: percent(4) });
    const resistance = transformerResistanceOf({ ...plate, transformerLoss: watts(loss) });
    const reactance = Math.sqrt(size ** 2 - resistance ** 2);
    const factor = transformerFactorOf({
      maximumVoltageFactor: ratio(1.05),
      transformerReactanceRatio: ratio((reactance * kVA * 1e3) / 410 ** 2),
    });
    return { resistance: resistance * factor, reactance: reactance * factor };
  };
  return {
    lineVoltage: 400,
    voltageFactor: 1.05,
    branches: [
      branch('grid', 'source', '20 kV', { resistance: 0.0995 * grid, reactance: 0.995 * grid }),
      branch('transformer 1', '20 kV', 'F1', transformer(630, 6500)),
      branch('transformer 2', '20 kV', 'T2', transformer(400, 4600)),
      branch('cables 1', 'F1', 'F2', milli((0.077 * 10) / 2, (0.079 * 10) / 2)),
      branch('cables 2', 'T2', 'F2', milli((0.208 * 4) / 2, (0.068 * 4) / 2)),
      branch('cable 3', 'F2', 'end of 3', milli(0.271 * 20, 0.087 * 20)),
      branch('line 4', 'end of 3', 'F3', milli(0.3704 * 50, 0.297 * 50)),
    ],
  };
})();
const guide = { document: 'IEC TR 60909-4', where: 'low-voltage example, recalled' } as const;
const at = (node: string) => ({ network: lowVoltage, node });
const peak = (node: string) => {
  const z = impedanceAt(at(node));
  const peakFactor = peakFactorOf({ resistance: ohms(z.resistance), reactance: ohms(z.reactance) });
  return peakCurrentOf({ peakFactor, faultCurrent: meshedThreePhaseFault(at(node)) });
};
const faults: readonly PublishedCase[] = (
  [
    ['F2', 34.12, 0.005001],
    ['F3', 6.95, 0.035],
  ] as const
).map(([node, published, tolerance]) => ({
  id: `iec60909-4-low-voltage-${node}`,
  about: `three-phase fault current at ${node} of two transformers, cables and a line`,
  source: guide,
  provenance: 'memory',
  exercises: ['meshed-three-phase-fault'],
  ours: () => meshedThreePhaseFault(at(node)) / 1e3,
  published,
  unit: 'kA',
  // line data of F3 are recalled to their last digit but one: half a per cent
  tolerance,
}));

// units by rated power in kVA and impedance in per cent; load; then what each carries, in the unit of the print
const two: readonly ParallelTransformer[] = [
  { rating: kilovoltAmperes(1000), impedanceVoltage: percent(5) },
  { rating: kilovoltAmperes(1500), impedanceVoltage: percent(8) },
];
const three: readonly ParallelTransformer[] = [
  { rating: voltAmperes(100e6), impedanceVoltage: percent(10) },
  { rating: voltAmperes(150e6), impedanceVoltage: percent(9) },
  { rating: voltAmperes(150e6), impedanceVoltage: percent(8) },
];
const notes2012 = {
  document: 'Determine how to load two paralleled transformers',
  where: 'worked example, 2012',
} as const;
const notes2011 = {
  document: 'Parallel operation of transformers with different impedances',
  where: 'worked example, 2011',
} as const;
const parallel: readonly PublishedCase[] = [
  {
    id: 'parallel-1000-1500-total',
    about: 'largest load of 1000 kVA, 5 % and 1500 kVA, 8 % in parallel',
    source: notes2012,
    provenance: 'one-source',
    exercises: ['largest-parallel-load'],
    ours: () => largestParallelLoad(two) / 1e3,
    published: 1937.5,
    unit: 'kVA',
    tolerance: 0.05,
  },
  {
    id: 'parallel-1000-1500-second',
    about: 'what the second carries of it',
    source: notes2012,
    provenance: 'one-source',
    exercises: ['largest-parallel-load'],
    ours: () => (parallelShares(two, voltAmperes(1937.5e3))[1]?.load as number) / 1e3,
    published: 937.5,
    unit: 'kVA',
    tolerance: 0.05,
  },
  ...[88.07, 146.7889, 165.137].map(
    (published, i): PublishedCase => ({
      id: `parallel-three-share-${i + 1}`,
      about: `share of the transformer ${i + 1} of three in parallel at 400 MVA`,
      source: notes2011,
      provenance: 'one-source',
      exercises: ['largest-parallel-load'],
      ours: () => (parallelShares(three, voltAmperes(400e6))[i]?.load as number) / 1e6,
      published,
      unit: 'MVA',
      tolerance: 0.005,
    }),
  ),
  {
    id: 'parallel-three-total',
    about: 'largest load of three transformers in parallel',
    source: notes2011,
    provenance: 'one-source',
    exercises: ['largest-parallel-load'],
    ours: () => largestParallelLoad(three) / 1e6,
    published: 363.3,
    unit: 'MVA',
    tolerance: 0.05,
  },
];

// load of a 1000 kVA transformer of 1340 W and 12.5 kW, and its losses, W
const partLoad: readonly PublishedCase[] = (
  [
    [1, 13840],
    [0.9, 11465],
    [0.8, 9340],
    [0.7, 7465],
    [0.6, 5840],
    [0.5, 4465],
  ] as const
).map(([share, published]) => ({
  id: `transformer-losses-${100 * share}-per-cent`,
  about: `losses of a 1000 kVA transformer at ${100 * share} % load`,
  source: {
    document: 'Heat loss of a liquid-filled transformer at part load',
    where: 'technical question page of a maker',
  },
  provenance: 'one-source',
  exercises: ['transformer-losses'],
  ours: () => transformerLossesOf({ noLoadLoss: watts(1340), transformerLoss: watts(12_500), loadShare: ratio(share) }),
  published,
  unit: 'W',
  tolerance: 0.5,
}));

// limits of losses of liquid-immersed transformers: kVA, u_k in %, load loss in W, u_r and u_x in %
const split: readonly PublishedCase[] = (
  [
    [25, 4, 600, 2.4, 3.2],
    [160, 4, 1750, 1.094, 3.848],
    [400, 4, 3250, 0.812, 3.917],
    [1000, 6, 7600, 0.76, 5.952],
  ] as const
).flatMap(([kVA, uk, loss, ur, ux]) => {
  const resistiveVoltage = () =>
    resistiveVoltageOf({ transformerLoss: watts(loss), transformerRating: kilovoltAmperes(kVA) });
  const one = (part: string, ours: () => number, published: number): PublishedCase => ({
    id: `transformer-${kVA}-kva-${part}`,
    about: `${part} part of the impedance voltage of a ${kVA} kVA transformer`,
    source: {
      document: 'Commission Regulation (EU) 548/2014',
      where: 'Annex I, Table I.1, second tier; parts computed independently',
    },
    provenance: 'derived',
    exercises: [`transformer-${part}-voltage`],
    ours: () => 100 * ours(),
    published,
    unit: '%',
    tolerance: 0.0005001,
  });
  return [
    one('resistive', resistiveVoltage, ur),
    one(
      'reactive',
      () => reactiveVoltageOf({ transformerImpedanceVoltage: percent(uk), resistiveVoltage: resistiveVoltage() }),
      ux,
    ),
  ];
});

// temperature of the hot spot, and the rates for plain and for upgraded paper
const ageing: readonly PublishedCase[] = (
  [
    [80, 0.125, 0.036],
    [86, 0.25, 0.073],
    [92, 0.5, 0.145],
    [98, 1, 0.282],
    [104, 2, 0.536],
    [110, 4, 1],
    [116, 8, 1.83],
    [122, 16, 3.29],
    [128, 32, 5.8],
    [134, 64, 10.1],
    [140, 128, 17.2],
  ] as const
).flatMap(([hot, plain, upgraded]) => {
  const one = (paper: string, rate: typeof ageingRateOfPlainPaper, published: number): PublishedCase => ({
    id: `ageing-rate-${paper}-${hot}`,
    about: `rate of ageing of ${paper} paper at ${hot} °C`,
    source: { document: 'IEC 60076-7', where: 'table of relative ageing rates, recalled' },
    provenance: 'memory',
    exercises: [rate.id],
    ours: () => rate({ hotSpotTemperature: celsius(hot) }),
    published,
    unit: '1',
    tolerance: 10 ** Math.floor(Math.log10(published) - 1) / 2 + (published < 1 ? 0 : 0.005),
  });
  return [one('plain', ageingRateOfPlainPaper, plain), one('upgraded', ageingRateOfUpgradedPaper as never, upgraded)];
});

const rated = { ...distributionTransformer, loadShare: ratio(1) };

/** Transformers, networks and motors. */
export const cases: readonly PublishedCase[] = [
  ...faults,
  {
    id: 'iec60909-4-low-voltage-F2-peak',
    about: 'peak of the fault current at F2, factor from the impedance at 50 Hz',
    source: guide,
    provenance: 'memory',
    exercises: ['meshed-three-phase-fault', 'peak-factor', 'peak-current'],
    ours: () => peak('F2') / 1e3,
    published: 69,
    unit: 'kA',
    tolerance: 0.06,
  },
  ...(
    [
      ['resistance', 1.9771],
      ['reactance', 6.8271],
    ] as const
  ).map(
    ([part, published]): PublishedCase => ({
      id: `iec60909-4-low-voltage-F2-${part}`,
      about: `${part} of the network at F2`,
      source: guide,
      provenance: 'memory',
      exercises: ['meshed-three-phase-fault'],
      ours: () => 1e3 * impedanceAt(at('F2'))[part],
      published,
      unit: 'mΩ',
      tolerance: 0.00005001,
    }),
  ),
  ...parallel,
  ...partLoad,
  ...split,
  ...ageing,
  {
    id: 'hot-spot-at-rated-load',
    about: 'hot spot of a distribution transformer at rated load and 20 °C, where it ages normally',
    source: { document: 'IEC 60076-7', where: 'normal ageing, recalled' },
    provenance: 'memory',
    exercises: ['transformer-hot-spot', 'transformer-oil-rise', 'transformer-hot-spot-gradient'],
    ours: () =>
      hotSpotTemperatureOf({
        ambientTemperature: celsius(20),
        oilRise: oilRiseOf(rated),
        hotSpotGradient: hotSpotGradientOf(rated),
      }),
    published: 98,
    unit: '°C',
    tolerance: 0.5,
  },
  {
    id: 'hottest-spot-at-rated-load',
    about: 'the same over a day of rated load',
    source: { document: 'IEC 60076-7', where: 'normal ageing, recalled' },
    provenance: 'memory',
    exercises: ['transformer-hottest-spot'],
    ours: () =>
      hottestSpot({
        warmth: distributionTransformer,
        load: new Array(24).fill(1),
        ambient: celsius(20),
        upgradedPaper: false,
      }),
    published: 98,
    unit: '°C',
    tolerance: 0.5,
  },
  {
    id: 'transformer-current-1000-kva',
    about: 'rated current of 1000 kVA at 400 V',
    source: { document: 'Handbook of low-voltage installations', where: 'table of transformers, recalled' },
    provenance: 'memory',
    exercises: ['transformer-current'],
    ours: () => transformerCurrentOf({ transformerRating: kilovoltAmperes(1000), transformerVoltage: volts(400) }),
    published: 1443,
    unit: 'A',
    tolerance: 0.5,
  },
];

import {
  amperes,
  hertz,
  metres,
  ohms,
  ohmsPerMetre,
  percent,
  ratio,
  seconds,
  voltAmperes,
  volts,
  watts,
} from '../../../src/index.js';
import {
  correctedPowerOf,
  detunedOrderOf,
  dropAtLastTap,
  dropOfSpreadLoad,
  equivalentCurrentOf,
  harmonicDeratingOf,
  harmonicLoadFactorOf,
  kRatingOf,
  largestImpedanceByDip,
  largestStartCurrentAnyAngle,
  largestStartCurrentOf,
  neutralOfLoads,
  reactivePowerOf,
  resonanceOrderOf,
  startPowerByLetter,
  unbalanceByMean,
  unbalanceOfLineVoltages,
  workingShareOfWelds,
} from '../../../src/physics/power/definitions.js';
import { capacitorPowerOf, correctedPowerFactorOf, voltageDipOf } from '../../../src/physics/power/index.js';
import { classALimits, codeLetters, largerEquipmentLimits } from '../../../src/products/definitions.js';
import type { Vars } from '../../../src/units/index.js';
import type { PublishedCase } from '../../support/published.js';

const vars = (value: number) => value as Vars;
type Rest = Omit<PublishedCase, 'id' | 'about' | 'ours' | 'published' | 'unit' | 'tolerance'>;
const of =
  (rest: Rest) =>
  (
    id: string,
    about: string,
    ours: () => number,
    published: number,
    unit: string,
    tolerance: number,
  ): PublishedCase => ({
    ...rest,
    id,
    about,
    ours,
    published,
    unit,
    tolerance,
  });

const book = of({
  source: {
    document: 'Handbook of electrical engineering for the oil and gas industry',
    where: 'Table 9.33, cable of a motor',
  },
  provenance: 'one-source',
  exercises: ['voltage-dip'],
});
const motorCable = { resistance: ohms(0.296), reactance: ohms(0.0268), nominalVoltage: volts(415 / Math.sqrt(3)) };
const motor: readonly PublishedCase[] = [
  book(
    'motor-behind-cable-running',
    'drop in a 16 mm² motor cable while it runs, 415 V',
    () =>
      100 *
      voltageDipOf({
        ...motorCable,
        startCurrent: amperes(65.82),
        powerFactor: ratio(0.85),
        reactiveFactor: ratio(0.5268),
      }),
    7.299,
    '%',
    0.001,
  ),
  book(
    'motor-behind-cable-starting',
    'drop in the same cable while the motor starts',
    () =>
      100 *
      voltageDipOf({
        ...motorCable,
        startCurrent: amperes(460.74),
        powerFactor: ratio(0.45),
        reactiveFactor: ratio(0.893),
      }),
    30.216,
    '%',
    0.001,
  ),
];

const loop = { dipLimit: percent(3), nominalVoltage: volts(230), resistance: ohms(0.4), reactance: ohms(0.25) };
const service = of({
  source: { document: 'Worked examples for larger sites', where: 'limit of ENA ER P28, impedance of IEC 60725' },
  provenance: 'derived',
  exercises: ['largest-start-current', 'largest-start-current-any-angle'],
});
const starts: readonly PublishedCase[] = [
  service(
    'largest-start-reference-loop',
    'largest start at a power factor of 0.35 on the reference loop for 3 %',
    () => largestStartCurrentOf({ ...loop, powerFactor: ratio(0.35), reactiveFactor: ratio(Math.sqrt(1 - 0.35 ** 2)) }),
    18.44,
    'A',
    0.005001,
  ),
  service(
    'largest-start-reference-loop-any-angle',
    'the same whatever the power factor',
    () => largestStartCurrentAnyAngle(loop),
    14.63,
    'A',
    0.005001,
  ),
];

const welder = of({
  source: { document: 'Welding cable sizing by duty cycle', where: 'digest of an engineering forum' },
  provenance: 'one-source',
  exercises: ['equivalent-current'],
});
const chart = of({
  source: { document: 'Jumper cable selection', where: 'chart of a cable maker' },
  provenance: 'one-source',
  exercises: ['working-share-of-welds', 'equivalent-current'],
});
const spot = () => workingShareOfWelds({ weldCycles: ratio(6), frequency: hertz(60), weldTime: seconds(1) });
const welders: readonly PublishedCase[] = [
  welder(
    'welder-140-a-8-per-cent',
    'steady current of a robot welder of 140 A that works 8 % of the time',
    () => equivalentCurrentOf({ workingCurrent: amperes(140), workingShare: percent(8) }),
    39.6,
    'A',
    0.05,
  ),
  chart('spot-welder-share', 'share of the time of six cycles sixty times a minute at 60 Hz', spot, 0.1, '1', 1e-9),
  chart(
    'spot-welder-factor',
    'steady current over that of the weld',
    () => equivalentCurrentOf({ workingCurrent: amperes(1), workingShare: spot() }),
    0.32,
    '1',
    0.005,
  ),
  chart(
    'spot-welder-current',
    'steady current of 60 kA for six cycles sixty times a minute',
    () => equivalentCurrentOf({ workingCurrent: amperes(60_000), workingShare: spot() }),
    19_200,
    'A',
    // the chart multiplies by its factor of two digits
    0.005 * 60_000,
  ),
  // multipliers of arc welders with transformer or rectifier
  ...(
    [
      [0.9, 0.95],
      [0.8, 0.89],
      [0.7, 0.84],
      [0.6, 0.78],
      [0.5, 0.71],
      [0.4, 0.63],
      [0.3, 0.55],
      [0.2, 0.45],
    ] as const
  ).map(([share, published]) =>
    of({
      source: { document: 'NEC', where: 'Table 630.11(A), transformer or rectifier' },
      provenance: 'memory',
      exercises: ['equivalent-current'],
    })(
      `welder-multiplier-${100 * share}`,
      `multiplier of a welder that works ${100 * share} % of the time`,
      () => equivalentCurrentOf({ workingCurrent: amperes(1), workingShare: ratio(share) }),
      published,
      '1',
      0.01,
    ),
  ),
];

const help = of({
  source: { document: 'How to select capacitor size', where: 'help page of a meter maker' },
  provenance: 'one-source',
  exercises: ['capacitor-power'],
});
const notes = of({
  source: { document: 'Improving power factor', where: 'training notes, 410 kvar on a plant' },
  provenance: 'one-source',
  exercises: ['reactive-power', 'corrected-power', 'corrected-power-factor'],
});
const plant = () => {
  const activePower = watts(812_000);
  const reactivePower = reactivePowerOf({ activePower, powerFactor: ratio(0.7) });
  const correctedPower = correctedPowerOf({ activePower, reactivePower, capacitorPower: vars(410_000) });
  return { activePower, reactivePower, correctedPower };
};
// rows of power factors, columns of targets: kvar for each kW
const targets = [0.8, 0.86, 0.9, 0.92, 0.93, 0.95, 0.96, 0.98, 1] as const;
const multipliers = [
  [0.5, 0.9821, 1.1387, 1.2477, 1.3061, 1.3368, 1.4034, 1.4404, 1.529, 1.7321],
  [0.7, 0.2702, 0.4268, 0.5359, 0.5942, 0.625, 0.6915, 0.7285, 0.8171, 1.0202],
] as const;
const capacitors: readonly PublishedCase[] = [
  help(
    'capacitors-650-kw-to-unity',
    'capacitors that raise 650 kW from 0.65 to 1',
    () =>
      capacitorPowerOf({ activePower: watts(650_000), powerFactor: ratio(0.65), targetPowerFactor: ratio(1) }) / 1e3,
    759.85,
    'kvar',
    // the page multiplies by 1.169
    0.1,
  ),
  notes(
    'plant-reactive-before',
    'reactive power of a plant of 1160 kVA at 0.7',
    () => plant().reactivePower / 1e3,
    828.4,
    'kvar',
    0.05,
  ),
  notes('plant-power-after', 'its apparent power with 410 kvar', () => plant().correctedPower / 1e3, 913, 'kVA', 0.5),
  notes(
    'plant-factor-after',
    'its power factor with 410 kvar',
    () => correctedPowerFactorOf(plant()),
    0.89,
    '1',
    0.005,
  ),
  notes(
    'plant-loading-after',
    'load of its 1500 kVA transformer',
    () => plant().correctedPower / 15_000,
    60.9,
    '%',
    0.05,
  ),
  ...multipliers.flatMap(([from, ...row]) =>
    row.map((published, i) =>
      of({
        source: { document: 'Power triangle', where: 'kvar for each kW, computed independently' },
        provenance: 'derived',
        exercises: ['capacitor-power'],
      })(
        `capacitor-multiplier-${from}-${targets[i]}`,
        `kvar for each kW from ${from} to ${targets[i]}`,
        () =>
          capacitorPowerOf({
            activePower: watts(1),
            powerFactor: ratio(from),
            targetPowerFactor: ratio(targets[i] as number),
          }),
        published,
        'kvar/kW',
        0.5001e-4,
      ),
    ),
  ),
  of({
    source: { document: 'Capacitor bank harmonic resonance case study', where: '125 MVA and 5 Mvar' },
    provenance: 'one-source',
    exercises: ['resonance-order'],
  })(
    'resonance-125-mva-5-mvar',
    'order at which 5 Mvar resonate with 125 MVA',
    () => resonanceOrderOf({ faultPower: voltAmperes(125e6), capacitorPower: vars(5e6) }),
    5,
    '1',
    0.05,
  ),
  ...(
    [
      [0.07, 3.78],
      [0.0567, 4.2],
      [0.14, 2.67],
    ] as const
  ).map(([share, published]) =>
    of({
      source: { document: 'Detuned capacitors', where: 'orders of usual reactors' },
      provenance: 'memory',
      exercises: ['detuned-order'],
    })(
      `detuned-order-${share}`,
      `order of a reactor of ${100 * share} %`,
      () => detunedOrderOf({ reactorShare: ratio(share) }),
      published,
      '1',
      0.005,
    ),
  ),
];

const sixPulse = (
  [
    [1, 1],
    [5, 0.2],
    [7, 0.14],
    [11, 0.091],
    [13, 0.077],
    [17, 0.058],
    [19, 0.056],
    [23, 0.043],
    [25, 0.04],
  ] as const
).map(([order, current]) => ({ order, current }));
// the sheet gives e/(1+e) as 0.091
const sheet = { harmonics: sixPulse, eddyShare: 0.091 / (1 - 0.091), exponent: 1.7 };
const derating = of({
  source: { document: 'Transformer derating for harmonics', where: 'calculation sheet, six-pulse load' },
  provenance: 'one-source',
  exercises: ['k-rating'],
});
const european = of({
  source: { document: 'EN 50464-3', where: 'the same load with the sum from the second order, computed independently' },
  provenance: 'derived',
  exercises: ['harmonic-load-factor', 'harmonic-derating'],
});
const upper = of({
  source: {
    document: 'Limits of IEC 61000-3-2 and 61000-3-12',
    where: 'balanced single-phase chargers at the limits, computed independently',
  },
  provenance: 'derived',
  exercises: ['neutral-of-loads'],
});
const chargers = (rest: readonly { readonly order: number; readonly current: number }[], current: number) =>
  ([0, 1, 2] as const).map((line) => ({ line, harmonics: [{ order: 1, current }, ...rest] }));
const harmonics: readonly PublishedCase[] = [
  derating('k-rating-six-pulse', 'factor K of a six-pulse load', () => kRatingOf(sixPulse), 8.3476, '1', 0.5001e-4),
  {
    ...derating(
      'factor-k-six-pulse-sheet',
      'European factor K as the sheet has it',
      () => harmonicLoadFactorOf(sheet),
      1.1828,
      '1',
      0.5001e-4,
    ),
    exercises: ['harmonic-load-factor'],
    differs: 'the sheet starts the sum at the fundamental, the standard at the second order',
  },
  european(
    'factor-k-six-pulse',
    'European factor K of the six-pulse load',
    () => harmonicLoadFactorOf(sheet),
    1.1467,
    '1',
    0.5001e-4,
  ),
  european(
    'derating-six-pulse',
    'load that is left of the transformer',
    () => 100 * harmonicDeratingOf(sheet),
    87.21,
    '%',
    0.005001,
  ),
  upper(
    'neutral-chargers-16-a',
    'neutral of three chargers of 16 A at the limits of class A',
    () =>
      neutralOfLoads(
        chargers(
          [
            { order: 3, current: 2.3 },
            { order: 9, current: 0.4 },
          ],
          16,
        ),
      ),
    7,
    'A',
    0.05,
  ),
  upper(
    'neutral-chargers-32-a',
    'neutral of three chargers of 32 A at the limits for a short-circuit ratio of 33',
    () =>
      neutralOfLoads(
        chargers(
          [
            { order: 3, current: 6.91 },
            { order: 9, current: 1.22 },
          ],
          32,
        ),
      ),
    21.05,
    'A',
    0.005,
  ),
];

const three = [383, 386, 392] as const;
const unbalance: readonly PublishedCase[] = [
  of({
    source: { document: 'Chiller installation manual', where: 'p. 25' },
    provenance: 'one-source',
    exercises: ['unbalance-by-mean'],
  })(
    'unbalance-383-386-392',
    'unbalance by the largest deviation from the mean',
    () => 100 * unbalanceByMean(three),
    1.29,
    '%',
    0.005001,
  ),
  of({
    source: { document: 'Worked examples for larger sites', where: 'the same voltages by sequences' },
    provenance: 'derived',
    exercises: ['unbalance-of-line-voltages'],
  })(
    'unbalance-383-386-392-sequences',
    'negative over positive sequence of the same',
    () => 100 * unbalanceOfLineVoltages(three),
    1.37,
    '%',
    0.005001,
  ),
];

// busbar trunking: rating, drops in V per 100 m and A of spread loads at 1.0, 0.9, 0.8 and 0.7, and r and x in µΩ/m
const trunkings = [
  [800, 0.0072, 0.0073, 0.0069, 0.0064, 83.14, 21.94],
  [1250, 0.00405, 0.00421, 0.00402, 0.00376, 46.77, 15.01],
  [1600, 0.00303, 0.00322, 0.0031, 0.00292, 34.99, 13.01],
  [4000, 0.00127, 0.0014, 0.00138, 0.00132, 14.66, 7.01],
] as const;
const guide = of({
  source: { document: 'Design guide for busbar trunking', where: 'drop of feeder trunking, about 2005' },
  provenance: 'one-source',
  exercises: ['drop-of-spread-load'],
});
const spread = (r: number, x: number, powerFactor: number, current: number, length: number) =>
  dropOfSpreadLoad({
    designCurrent: amperes(current),
    length: metres(length),
    resistancePerMetre: ohmsPerMetre(r * 1e-6),
    reactancePerMetre: ohmsPerMetre(x * 1e-6),
    powerFactor: ratio(powerFactor),
    reactiveFactor: ratio(Math.sqrt(1 - powerFactor ** 2)),
  });
const busbars: readonly PublishedCase[] = [
  ...trunkings.flatMap(([rating, one, nine, eight, seven, r, x]) =>
    (
      [
        [1, one],
        [0.9, nine],
        [0.8, eight],
        [0.7, seven],
      ] as const
    ).map(([powerFactor, published]) =>
      guide(
        `busbar-drop-${rating}-${powerFactor}`,
        `drop of trunking of ${rating} A at a power factor of ${powerFactor}, load spread`,
        () => spread(r, x, powerFactor, 1, 100),
        published,
        'V/(100 m A)',
        // resistance and reactance were solved from two of the four columns, which fit the others within 0.6 %
        0.006 * published,
      ),
    ),
  ),
  guide(
    'busbar-1600-a-87-m',
    'drop of 1530 A along 87 m, load spread, 0.8',
    () => spread(34.99, 13.01, 0.8, 1530, 87),
    4.12,
    'V',
    0.01,
  ),
  {
    ...guide(
      'busbar-1600-a-87-m-taps',
      'the same as 200 equal tap-offs',
      () =>
        dropAtLastTap({
          resistancePerMetre: 34.99e-6,
          reactancePerMetre: 13.01e-6,
          taps: Array.from({ length: 200 }, (_, i) => ({
            at: (87 * (i + 0.5)) / 200,
            current: 1530 / 200,
            powerFactor: 0.8,
          })),
        }),
      4.12,
      'V',
      0.015,
    ),
    exercises: ['drop-at-last-tap'],
  },
];

const emission = of({
  source: {
    document: 'Limits of voltage change and impedances of reference',
    where: 'limit of 3.3 %, 0.472 Ω; computed independently',
  },
  provenance: 'derived',
  exercises: ['largest-impedance-by-dip'],
});
const limits: readonly PublishedCase[] = [
  emission(
    'largest-impedance-6-6-per-cent',
    'largest impedance for equipment that changes the voltage by 6.6 % under the reference impedance, for 3.3 %',
    () => largestImpedanceByDip({ testImpedance: ohms(0.472), dipLimit: percent(3.3), voltageDip: percent(6.6) }),
    0.236,
    'Ω',
    0.0005,
  ),
  of({
    source: { document: 'NEMA MG 1', where: 'code letters; 10 hp of letter G, computed independently' },
    provenance: 'derived',
    exercises: ['start-power-by-letter', 'nema-mg1/code-letters'],
  })(
    'start-power-10-hp-letter-g',
    'largest starting power of a motor of 10 hp with letter G',
    () =>
      startPowerByLetter({
        letterFactor: codeLetters.get({ bound: 'most', letter: 'G' }),
        motorPower: watts(7456.99872),
      }) / 1e3,
    62.9,
    'kVA',
    0.05,
  ),
  upper(
    'neutral-chargers-32-a-by-table',
    'neutral of three chargers of 32 A by the table of limits',
    () => {
      const at = (harmonicOrder: 3 | 9) =>
        32 * largerEquipmentLimits.get({ harmonicOrder: ratio(harmonicOrder), shortCircuitRatio: ratio(33) });
      return neutralOfLoads(
        chargers(
          [
            { order: 3, current: at(3) },
            { order: 9, current: at(9) },
          ],
          32,
        ),
      );
    },
    21.05,
    'A',
    0.01,
  ),
  upper(
    'neutral-chargers-16-a-by-table',
    'neutral of three chargers of 16 A by the table of limits',
    () => {
      const at = (harmonicOrder: 3 | 9) => classALimits.get({ class: 'A', harmonicOrder: ratio(harmonicOrder) });
      return neutralOfLoads(
        chargers(
          [
            { order: 3, current: at(3) },
            { order: 9, current: at(9) },
          ],
          16,
        ),
      );
    },
    7,
    'A',
    0.05,
  ),
];

/** Motors, welders, capacitors, harmonics, unbalance and busbars. */
export const cases: readonly PublishedCase[] = [
  ...motor,
  ...starts,
  ...welders,
  ...capacitors,
  ...harmonics,
  ...unbalance,
  ...busbars,
  ...limits,
];

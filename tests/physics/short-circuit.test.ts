import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { celsius, ohms, perKelvin, ratio, voltAmperes, volts, watts } from '../../src/index.js';
import { peakFactorOf, temperatureFactorOfResistance, transformerFactorOf } from '../../src/physics/definitions.js';
import {
  type Impedance,
  lineEarthFault,
  lineLineFault,
  lineNeutralFault,
  lineNeutralPath,
  peakCurrentOf,
  type RadialNetwork,
  splitImpedance,
  threePhaseFault,
  threePhasePath,
  transformerImpedanceOf,
  transformerResistanceOf,
  warmed,
} from '../../src/physics/index.js';
import type { RadialElement } from '../../src/physics/short-circuit.js';
import { seedOf } from '../support/seed.js';
import { faultsByKirchhoff, radialNetworks } from './kirchhoff.js';

const near = (ours: number, expected: number, relative = 1e-9) =>
  expect(Math.abs(ours - expected)).toBeLessThanOrEqual(relative * Math.abs(expected));
const z = (resistance: number, reactance: number): Impedance => ({ resistance, reactance });
const milli = (r: number, x: number) => z(r / 1e3, x / 1e3);
const scaled = (a: Impedance, k: number) => z(a.resistance * k, a.reactance * k);
const plus = (...all: readonly Impedance[]) =>
  all.reduce((a, b) => z(a.resistance + b.resistance, a.reactance + b.reactance));
const inParallel = (a: Impedance, b: Impedance): Impedance => {
  const inverse = (v: Impedance) => scaled(z(v.resistance, -v.reactance), 1 / (v.resistance ** 2 + v.reactance ** 2));
  return inverse(plus(inverse(a), inverse(b)));
};

describe('the low-voltage example of IEC TR 60909-4, inputs and results recalled', () => {
  const grid = (() => {
    const size = ((1.1 * 20000) / (Math.sqrt(3) * 10000)) * (410 / 20000) ** 2;
    return z(0.0995 * size, 0.995 * size);
  })();
  const transformer = (rating: number, loss: number) => {
    const plate = { transformerVoltage: volts(410), transformerRating: voltAmperes(rating) };
    const size = transformerImpedanceOf({ ...plate, transformerImpedanceVoltage: ratio(0.04) });
    const r = transformerResistanceOf({ ...plate, transformerLoss: watts(loss) });
    const plain = z(r, Math.sqrt(size * size - r * r));
    const factor = transformerFactorOf({
      maximumVoltageFactor: ratio(1.05),
      transformerReactanceRatio: ratio((plain.reactance * rating) / 410 ** 2),
    });
    return { factor, corrected: scaled(plain, factor) };
  };
  const [t1, t2] = [transformer(630e3, 6500), transformer(400e3, 4600)];
  const lines = { l1: milli(0.385, 0.395), l2: milli(0.416, 0.136), l3: milli(5.42, 1.74), l4: milli(18.52, 14.85) };

  test('impedances of grid and transformers', () => {
    near(grid.resistance * 1e3, 0.0531120245422);
    near(grid.reactance * 1e3, 0.531120245422);
    near(t1.factor, 0.974894264049);
    near(t1.corrected.resistance * 1e3, 2.68384534546);
    near(t1.corrected.reactance * 1e3, 10.0529741093);
    near(t2.factor, 0.975085957202);
    near(t2.corrected.resistance * 1e3, 4.71246854541);
    near(t2.corrected.reactance * 1e3, 15.6991691432);
  });
  // zero sequence, factors recalled: transformers R 1, X 0.95; lines by their own factors
  const zeroOf = (a: Impedance, r: number, x: number) => z(a.resistance * r, a.reactance * x);
  const branch = (t: Impedance, l: Impedance, rl: number, xl: number) => ({
    line: plus(t, l),
    zero: plus(zeroOf(t, 1, 0.95), zeroOf(l, rl, xl)),
  });
  const [a, b] = [branch(t1.corrected, lines.l1, 3.7, 1.81), branch(t2.corrected, lines.l2, 4.23, 1.21)];
  const busbar: RadialElement = {
    name: 'busbar F2',
    line: plus(grid, inParallel(a.line, b.line)),
    zero: inParallel(a.zero, b.zero),
  };
  const behind: RadialElement[] = [
    { name: 'L3', line: lines.l3, zero: zeroOf(lines.l3, 3, 4.46) },
    { name: 'L4', line: lines.l4, zero: zeroOf(lines.l4, 2, 3) },
  ];
  const network = (elements: readonly RadialElement[]): RadialNetwork => ({
    lineVoltage: 400,
    voltageFactor: 1.05,
    elements,
  });
  test('fault at the busbar', () => {
    const f2 = network([busbar]);
    near(threePhaseFault(f2) / 1e3, 34.1165373906);
    near(lineNeutralFault(f2) / 1e3, 34.9828776534);
    expect(threePhaseFault(f2) / 1e3).toBeCloseTo(34.12, 1);
    expect(lineNeutralFault(f2) / 1e3).toBeCloseTo(34.98, 2);
  });
  test('fault behind two cables, with its peak', () => {
    const f3 = network([busbar, ...behind]);
    near(threePhaseFault(f3) / 1e3, 6.9422287388);
    near(lineNeutralFault(f3) / 1e3, 4.83187684805);
  });
  test('peak current by R/X at the place of the fault', () => {
    for (const [elements, kappa, peak] of [
      [[busbar], 1.43107638524, 69.0466734375],
      [[busbar, ...behind], 1.05542005975, 10.3618967676],
    ] as const) {
      const path = threePhasePath(network(elements));
      const simple = peakFactorOf({ resistance: ohms(path.resistance), reactance: ohms(path.reactance) });
      near(simple, kappa);
      const faultCurrent = threePhaseFault(network(elements));
      near(peakCurrentOf({ peakFactor: simple, faultCurrent }) / 1e3, peak);
    }
  });
});

test.each([
  [0, 2],
  [0.1, 1.74600185627],
  [0.2, 1.55783540337],
  [0.5, 1.23866755695],
  [0.7, 1.14000729969],
  [1.5, 1.03088681661],
  [2, 1.02242917713],
])('κ at R/X %d', (ratioOf, expected) =>
  near(peakFactorOf({ resistance: ohms(ratioOf), reactance: ohms(1) }), expected, 1e-11),
);

test.each([
  [70, 1.2],
  [80, 1.24],
  [160, 1.56],
  [250, 1.92],
])('resistance at %d °C', (temperature, expected) =>
  near(
    temperatureFactorOfResistance({
      temperatureCoefficient: perKelvin(0.004),
      conductorTemperature: celsius(temperature),
    }),
    expected,
    1e-12,
  ),
);

test.each([
  [160, 2888.79964627, 1575.8821152, 516.215914621, 0.13921923485],
  [80, 3432.39385373, 1934.46805128, 646.235991571, 0.113412626353],
])('a radial network at %d °C: cut-out and load', (temperature, three, atCutOut, atLoad, loop) => {
  const size = (0.0475 * 433 ** 2) / 500e3;
  const r = (5100 * 433 ** 2) / 500e3 ** 2;
  const elements: RadialElement[] = [
    { name: 'grid', line: splitImpedance(433 ** 2 / 250e6, 0.1), neutral: z(0, 0) },
    { name: 'transformer', line: z(r, Math.sqrt(size * size - r * r)), neutral: z(0, 0) },
    warmed({ name: 'main', line: milli(24.6, 11.1), neutral: milli(24.6, 2.1) }, temperature),
    warmed({ name: 'service', line: milli(17.36, 1.7), neutral: milli(17.36, 1.7) }, temperature),
  ];
  const final = warmed({ name: 'final', line: milli(92.4, 2.7), neutral: milli(92.4, 2.7) }, temperature);
  const network = { lineVoltage: 400, voltageFactor: 0.95, elements };
  near(threePhaseFault(network), three, 1e-6);
  near(lineNeutralFault(network), atCutOut, 1e-6);
  near(lineNeutralFault({ ...network, elements: [...elements, final] }), atLoad, 1e-6);
  const path = lineNeutralPath(network);
  near(Math.hypot(path.resistance, path.reactance), loop, 1e-6);
});

describe('against a general nodal solver', () => {
  test('1,000 random radial networks: three-phase, line-neutral, line-earth and line-line', () => {
    fc.assert(
      fc.property(radialNetworks, (radial) => {
        const theirs = faultsByKirchhoff(radial);
        near(lineNeutralFault(radial), theirs.lineNeutral, 1e-7);
        near(lineEarthFault(radial), theirs.lineEarth, 1e-7);
        near(lineLineFault(radial), theirs.lineLine, 1e-7);
        near(threePhaseFault(radial), theirs.threePhase, 1e-7);
      }),
      { numRuns: 1000, seed: seedOf(60909) },
    );
  });
});

test('a path without impedance has no solution', () => {
  expect(() => threePhaseFault({ lineVoltage: 400, voltageFactor: 1, elements: [] })).toThrow(
    expect.objectContaining({ code: 'no-solution' }),
  );
});

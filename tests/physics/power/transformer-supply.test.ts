import fc from 'fast-check';
import { expect, test } from 'vitest';
import { hasCode } from '../../../src/index.js';
import { type TransformerSupplyInput, transformerSupply } from '../../../src/physics/power/index.js';

const plate: TransformerSupplyInput = {
  lineVoltage: 400,
  transformer: {
    rating: 500_000,
    voltage: 433,
    impedanceVoltage: { least: 0.0475, most: 0.0475 },
    loss: { least: 5500, most: 5500 },
  },
  gridFaultPower: { least: 1e15, most: Number.POSITIVE_INFINITY },
  voltageFactor: { least: 1, most: 1 },
};

test('an infinite grid: rated current over impedance voltage, as a table of British transformers has it', () => {
  // 14.04 kA at 433 V for 500 kVA and 4.75 %; here by the nominal 400 V
  const { threePhase } = transformerSupply(plate);
  expect((threePhase.least * 433) / 400 / 1e3).toBeCloseTo(14.04, 2);
  // the correction of IEC 60909-0 makes the largest current differ
  expect(threePhase.most / threePhase.least).toBeCloseTo((1 + 0.6 * Math.sqrt(0.0475 ** 2 - 0.011 ** 2)) / 0.95, 6);
});

test('every plate within the ranges lies between the ends', () => {
  const cable = { line: { resistance: 0.004, reactance: 0.003 }, protective: { resistance: 0.008, reactance: 0.003 } };
  const wide: TransformerSupplyInput = {
    ...plate,
    transformer: {
      ...plate.transformer,
      impedanceVoltage: { least: 0.0428, most: 0.0523 },
      loss: { least: 4000, most: 6000 },
    },
    gridFaultPower: { least: 50e6, most: 250e6 },
    voltageFactor: { least: 0.95, most: 1.1 },
    cable,
    hottest: 70,
  };
  const ends = transformerSupply(wide);
  const part = fc.double({ min: 0, max: 1, noNaN: true });
  fc.assert(
    fc.property(part, part, part, (a, b, c) => {
      const at = (s: { least: number; most: number }, k: number) => {
        const value = s.least + k * (s.most - s.least);
        return { least: value, most: value };
      };
      const one = transformerSupply({
        ...wide,
        transformer: {
          ...wide.transformer,
          impedanceVoltage: at(wide.transformer.impedanceVoltage, a),
          loss: at(wide.transformer.loss, b),
        },
        gridFaultPower: at(wide.gridFaultPower, c),
      });
      for (const name of ['externalImpedance', 'threePhase', 'lineEarth'] as const) {
        expect(one[name].least).toBeGreaterThanOrEqual(ends[name].least * (1 - 1e-12));
        expect(one[name].most).toBeLessThanOrEqual(ends[name].most * (1 + 1e-12));
        expect(one[name].least).toBeLessThanOrEqual(one[name].most);
      }
    }),
  );
});

test('what cannot be is refused by name', () => {
  const paths = (change: Partial<TransformerSupplyInput>) => {
    try {
      return transformerSupply({ ...plate, ...change });
    } catch (error) {
      return hasCode(error, 'invalid-input') ? error.detail.problems.map((p) => p.path.join('.')) : error;
    }
  };
  expect(paths({ gridFaultPower: { least: 0, most: 1 } })).toEqual(['gridFaultPower']);
  expect(paths({ transformer: { ...plate.transformer, loss: { least: 1, most: 1e6 } } })).toEqual(['transformer.loss']);
  const none = { resistance: 0, reactance: 0 };
  expect(paths({ cable: { line: none, protective: none } })).toEqual(['hottest']);
  expect(paths({ lineVoltage: Number.NaN })).toEqual(['lineVoltage']);
});

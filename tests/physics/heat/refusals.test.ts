import { expect, test } from 'vitest';
import {
  type CalculationError,
  celsius,
  hasCode,
  hertz,
  kelvinMetresPerWatt,
  metres,
  millimetres,
  recorder,
  squareMillimetres,
  writeSheet,
} from '../../../src/index.js';
import { balanceArmour } from '../../../src/physics/heat/balance.js';
import { type HeatCase, heatBalance } from '../../../src/physics/heat/index.js';
import { armouredBuild } from '../../../src/products/bs5467/build.js';
import { unarmouredBuild } from '../../../src/products/iec60502/build.js';
import { verifySheet } from '../../../src/verify/index.js';

const cable = unarmouredBuild({ metal: 'copper', insulation: 'XLPE', cores: 3, conductorArea: squareMillimetres(16) });
const single = unarmouredBuild({ metal: 'copper', insulation: 'XLPE', cores: 1, conductorArea: squareMillimetres(50) });
const air: HeatCase = {
  cable,
  loadedConductors: 3,
  surroundings: { where: 'air', ambientTemperature: celsius(30), formation: 'one-spaced' },
  operatingTemperature: celsius(90),
  frequency: hertz(50),
};
const soil = {
  groundTemperature: celsius(20),
  soilResistivity: kelvinMetresPerWatt(2.5),
  burialDepth: metres(0.7),
} as const;
const duct = {
  kind: 'plastic',
  wall: 'PVC duct',
  innerDiameter: millimetres(63),
  outerDiameter: millimetres(68),
} as const;

function thrown(heat: HeatCase): CalculationError {
  try {
    heatBalance(heat);
  } catch (error) {
    return error as CalculationError;
  }
  throw new Error('was accepted');
}

test.each<[string, HeatCase, string, string]>([
  ['a surface in the heat of the conductor', { ...air, operatingTemperature: celsius(30) }, 'permissibleRise', 'K'],
  [
    'a depth of 0.1 m',
    { ...air, surroundings: { where: 'ground', ...soil, burialDepth: metres(0.1) } },
    'burialDepth',
    'm',
  ],
  [
    'ground that freezes around a duct',
    { ...air, surroundings: { where: 'duct', ...soil, groundTemperature: celsius(-5), duct } },
    'groundTemperature',
    '°C',
  ],
  [
    'insulation thicker than the conductor',
    { ...air, cable: { ...cable, conductorDiameter: millimetres(0.6) } },
    'insulationRatio',
    '1',
  ],
  ['no frequency', { ...air, frequency: hertz(0) }, 'frequency', 'Hz'],
  ['a frequency beyond the proximity correlation', { ...air, frequency: hertz(60_000) }, 'skinArgument', '1'],
])('%s is out of range', (_, heat, quantity, unit) => {
  const error = thrown(heat);
  if (!hasCode(error, 'out-of-range')) throw error;
  expect(error.detail).toMatchObject({ quantity, unit });
  expect(error.message).toMatch(/\d/);
});

test.each<[string, HeatCase, string]>([
  [
    'armour of single-core cable',
    {
      ...air,
      cable: { ...single, armour: { wireDiameter: millimetres(1) }, overallDiameter: millimetres(30) },
      surroundings: { where: 'air', ambientTemperature: celsius(30), formation: 'three-trefoil' },
    },
    'armour',
  ],
  ['a single sector', { ...air, cable: { ...single, shape: 'sector' } }, 'sector'],
])('%s is refused by name', (_, heat, what) => {
  const error = thrown(heat);
  if (!hasCode(error, 'not-covered')) throw error;
  expect(error.detail.what).toContain(what);
});

test('what contradicts itself is refused with every problem', () => {
  const error = thrown({
    ...air,
    loadedConductors: 4,
    cable: {
      ...cable,
      laidUpDiameter: millimetres(5),
      overallDiameter: millimetres(7),
      sheath: { material: 'PVC', thickness: millimetres(0) },
    },
    surroundings: {
      where: 'duct',
      ...soil,
      neighbours: [{ offset: metres(0.004), depth: metres(0.7) }],
      duct: { ...duct, innerDiameter: millimetres(6), outerDiameter: millimetres(5) },
    },
  });
  if (!hasCode(error, 'invalid-input')) throw error;
  expect(error.detail.problems.map((p) => p.path.join('.'))).toEqual([
    'loadedConductors',
    'cable.sheath.thickness',
    'cable.laidUpDiameter',
    'surroundings.neighbours.0',
    'surroundings.duct.innerDiameter',
    'surroundings.duct.outerDiameter',
  ]);
});

test('a formation of the wrong number of single-core cables, or too thick for a wall, is refused', () => {
  const trefoil = { where: 'air', ambientTemperature: celsius(30), formation: 'three-trefoil' } as const;
  const wrong = thrown({ ...air, cable: single, loadedConductors: 2, surroundings: trefoil });
  expect(wrong.code).toBe('invalid-input');
  const thick = armouredBuild({ metal: 'copper', cores: 4, conductorArea: squareMillimetres(400) });
  const wall = { ...trefoil, formation: 'one-on-wall' } as const;
  const large = { ...thick, overallDiameter: millimetres(85) };
  expect(thrown({ ...air, cable: large, surroundings: wall }).message).toContain('80 mm');
});

test('cautions go with the figures: thin cable in a duct, unloaded cores', () => {
  const { cautions } = heatBalance({ ...air, loadedConductors: 2, surroundings: { where: 'duct', ...soil, duct } });
  expect(cautions.join(' ')).toMatch(/a tabulated capacity goes before/);
  expect(cautions.join(' ')).toMatch(/from 25 mm/);
  expect(cautions.join(' ')).toMatch(/Unloaded cores/);
});

test('single-core cables on a sheet are proven', () => {
  const sheet = recorder('three single-core cables');
  heatBalance(
    {
      ...air,
      cable: single,
      surroundings: { where: 'air', ambientTemperature: celsius(30), formation: 'three-trefoil' },
    },
    sheet,
  );
  expect(verifySheet(writeSheet(sheet)).problems).toEqual([]);
});

test('the armour settles between air and conductor; an iteration cut short is a typed error', () => {
  const armoured = armouredBuild({ metal: 'copper', cores: 2, conductorArea: squareMillimetres(150) });
  const heat: HeatCase = { ...air, cable: armoured, loadedConductors: 2 };
  const { armourTemperature } = heatBalance(heat);
  expect(armourTemperature).toBeLessThan(90);
  expect(armourTemperature).toBeGreaterThan(30);
  expect(() => balanceArmour(heat, 2)).toThrow(
    expect.objectContaining({
      code: 'not-converged',
      detail: expect.objectContaining({ method: 'heat-balance', iterations: 2 }),
    }),
  );
});

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
  volts,
} from '../../../src/index.js';
import {
  acResistance,
  dielectricLossOf,
  ductGap,
  ductGapResistance,
  proximityOfThree,
  sheathedCapacity,
  sheathLossFactorOf,
  sheathReactanceOf,
  shellResistance,
  skinArgument,
  skinFactor,
  trefoilResistance,
  trefoilSheathedResistance,
} from '../../../src/physics/heat/definitions.js';
import { resistanceAtTemperature } from '../../../src/physics/index.js';
import type { PublishedCase } from '../../support/published.js';

// 630 mm² of copper, 132 kV, aluminium sheath; diameters from the conductor outwards, mm
const [conductor, screen, insulation, outerScreen, sheath, overall] = [30.3, 33.3, 64.3, 66.9, 68.5, 75.5] as const;
const layer = (resistivity: number, inner: number, outer: number) =>
  shellResistance({
    thermalResistivity: kelvinMetresPerWatt(resistivity),
    shellThickness: millimetres((outer - inner) / 2),
    shellInnerDiameter: millimetres(inner),
  });
const coreThermalResistance = kelvinMetresPerWatt(
  layer(2.5, conductor, screen) + layer(3.5, screen, insulation) + layer(2.5, insulation, outerScreen),
);
const dielectricLoss = () =>
  dielectricLossOf({
    frequency: hertz(50),
    permittivity: ratio(2.5),
    dielectricLossFactor: ratio(0.001),
    nominalVoltage: volts(132_000 / Math.sqrt(3)),
    insulationDiameter: millimetres(insulation),
    innerInsulationDiameter: millimetres(screen),
  });

interface Laid {
  /** Distance of the axes, mm. */
  readonly spacing: number;
  /** Thermal resistance of the outer covering; touching cables in trefoil give off less: 1.6 times as much. */
  readonly covering: number;
  /** Thermal resistance outside it, with the space in a duct at a temperature. */
  readonly outside: (medium: number) => number;
  /** What of it lies outside the space in a duct. */
  readonly beyond: number;
}
const soil = { soilResistivity: kelvinMetresPerWatt(1), burialDepth: metres(1) };
const buried: Laid = (() => {
  const outside = trefoilSheathedResistance({ ...soil, cableDiameter: millimetres(overall) });
  return { spacing: overall, covering: 1.6 * layer(3.5, sheath, overall), outside: () => outside, beyond: outside };
})();
const ducts: Laid = (() => {
  const constant = (name: 'U' | 'V' | 'Y') => ductGap.get({ constant: name, duct: 'plastic' });
  const beyond = layer(3.5, 119.4, 140) + trefoilResistance({ ...soil, cableDiameter: millimetres(140) });
  const gap = (medium: number) =>
    ductGapResistance({
      ductGapBase: constant('U'),
      ductGapOffset: constant('V'),
      ductGapSlope: constant('Y'),
      mediumTemperature: celsius(medium),
      cableDiameter: millimetres(overall),
    });
  return { spacing: 140, covering: layer(3.5, sheath, overall), outside: (medium) => gap(medium) + beyond, beyond };
})();

/** The balance, with the temperature of the sheath repeated until it stands still. */
function balanced({ spacing, covering, outside, beyond }: Laid) {
  const hot = { temperatureCoefficient: perKelvin(0.00393), conductorTemperature: celsius(90) };
  const resistancePerMetre = resistanceAtTemperature({ ...hot, resistancePerMetre20: ohmsPerMetre(2.83e-5) });
  const argument = skinArgument({ frequency: hertz(50), resistancePerMetre });
  const acResistancePerMetre = acResistance({
    resistancePerMetre,
    skinFactor: skinFactor({ skinArgument: argument }),
    proximityFactor: proximityOfThree({
      skinArgument: argument,
      conductorDiameter: millimetres(conductor),
      conductorSpacing: millimetres(spacing),
      shapeShare: ratio(1),
    }),
  });
  const mean = (outerScreen + sheath) / 2;
  const sheathReactance = sheathReactanceOf({
    frequency: hertz(50),
    cableSpacing: millimetres(spacing),
    sheathMeanDiameter: millimetres(mean),
  });
  const lost = dielectricLoss();
  let [temperature, medium, capacity, factor] = [80, 70, 0, 0];
  for (let i = 0; i < 60; i++) {
    const cold = 2.84e-8 / (Math.PI * mean * 0.8e-6);
    const sheathLossFactor = sheathLossFactorOf({
      sheathPerMetre: ohmsPerMetre(cold * (1 + 0.00403 * (temperature - 20))),
      acResistancePerMetre,
      sheathReactance,
    });
    factor = sheathLossFactor;
    capacity = sheathedCapacity({
      permissibleRise: kelvins(70),
      dielectricLoss: lost,
      acResistancePerMetre,
      sheathLossFactor,
      coreThermalResistance,
      sheathThermalResistance: kelvinMetresPerWatt(covering),
      externalThermalResistance: kelvinMetresPerWatt(outside(medium)),
    });
    temperature = 90 - (acResistancePerMetre * capacity ** 2 + lost / 2) * coreThermalResistance;
    const all = acResistancePerMetre * capacity ** 2 * (1 + factor) + lost;
    // halfway between the surface of the cable and the inside of its duct
    medium = 20 + all * (beyond + (outside(medium) - beyond) / 2);
  }
  return { capacity, temperature, factor };
}

const of = (
  id: string,
  about: string,
  exercises: readonly string[],
  ours: () => number,
  published: number,
  unit: string,
  tolerance: number,
): PublishedCase => ({
  id: `tb880-${id}`,
  about,
  source: { document: 'CIGRE TB 880', where: 'introductory case 0, open worked notebooks' },
  provenance: 'one-source',
  exercises,
  ours,
  published,
  unit,
  tolerance,
});
const laid = (
  name: string,
  how: Laid,
  covering: number,
  outside: number,
  capacity: number,
  factor: number,
  temperature: number,
) => [
  of(
    `${name}-covering`,
    `covering, ${name}`,
    ['shell-thermal-resistance'],
    () => how.covering,
    covering,
    'K·m/W',
    5.001e-6,
  ),
  of(
    `${name}-outside`,
    `outside the cable, ${name}`,
    [how === buried ? 'trefoil-sheathed-thermal-resistance' : 'trefoil-thermal-resistance'],
    () => how.outside(70),
    outside,
    'K·m/W',
    // the notebook prints the space in the duct at the 70 °C from which it starts
    5.001e-6,
  ),
  of(
    `${name}-sheath-losses`,
    `losses of the sheath, ${name}`,
    ['sheath-loss-factor', 'sheath-reactance'],
    () => balanced(how).factor,
    factor,
    '1',
    2e-4,
  ),
  of(
    `${name}-sheath-temperature`,
    `temperature of the sheath, ${name}`,
    ['sheathed-capacity'],
    () => balanced(how).temperature,
    temperature,
    '°C',
    0.01,
  ),
  of(
    `${name}-capacity`,
    `current of 630 mm² at 132 kV, ${name}`,
    ['sheathed-capacity'],
    () => balanced(how).capacity,
    capacity,
    'A',
    0.1,
  ),
];

/** Single-core cables of high voltage with a metal sheath. */
export const cases: readonly PublishedCase[] = [
  of(
    'insulation',
    'between conductor and sheath',
    ['shell-thermal-resistance'],
    () => coreThermalResistance,
    0.41987149,
    'K·m/W',
    5.001e-6,
  ),
  of('dielectric', 'dielectric loss at 132 kV', ['dielectric-loss'], dielectricLoss, 0.38513822, 'W/m', 5.001e-5),
  ...laid('trefoil in the ground', buried, 0.08671937, 1.59469289, 821.7763334, 0.29390446, 78.71297191),
  ...laid('trefoil in ducts', ducts, 0.05419961, 1.82077769, 682.8144649, 0.83430504, 82.35899634),
].map((c) => ({ ...c, id: c.id.replaceAll(' ', '-') }));

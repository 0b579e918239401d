import { formula, moving } from '../../core/index.js';

/** Dielectric loss of one phase: of cables of high voltage. IEC 60287-1-1. */
export const dielectricLossOf = /* @__PURE__ */ moving({
  id: 'dielectric-loss',
  title: 'Dielectric loss of one phase',
  moves: {
    frequency: 1,
    permittivity: 1,
    dielectricLossFactor: 1,
    nominalVoltage: 1,
    insulationDiameter: -1,
    innerInsulationDiameter: 1,
  },
  output: 'dielectricLoss',
  expression:
    '2 * 3.141592653589793 * frequency * second * permittivity / (18e9 * log(insulationDiameter / innerInsulationDiameter)) * nominalVoltage^2 * dielectricLossFactor / ohmMetre',
  constants: { second: [1, 's'], ohmMetre: [1, 'Ω·m'] },
  compute: (v) =>
    ((2 * Math.PI * v.frequency * v.permittivity) /
      (18e9 * Math.log(v.insulationDiameter / v.innerInsulationDiameter))) *
    v.nominalVoltage ** 2 *
    v.dielectricLossFactor,
  source: { document: 'IEC 60287-1-1', clause: 'dielectric losses', provenance: 'memory' },
});

/** Reactance of the metal sheath of one of three single-core cables in trefoil. IEC 60287-1-1. */
export const sheathReactanceOf = /* @__PURE__ */ moving({
  id: 'sheath-reactance',
  title: 'Reactance of the metal sheath of single-core cables in trefoil',
  moves: { frequency: 1, cableSpacing: 1, sheathMeanDiameter: -1 },
  output: 'sheathReactance',
  expression:
    '4e-7 * 3.141592653589793 * ohmPerMetre * frequency * second * log(2 * cableSpacing / sheathMeanDiameter)',
  constants: { ohmPerMetre: [1, 'Ω/m'], second: [1, 's'] },
  compute: ({ frequency, cableSpacing, sheathMeanDiameter }) =>
    4e-7 * Math.PI * frequency * Math.log((2 * cableSpacing) / sheathMeanDiameter),
  source: { document: 'IEC 60287-1-1', clause: 'sheaths of single-core cables in trefoil', provenance: 'memory' },
});

/** Losses of a metal sheath that is bonded at both ends, over those of the conductor; trefoil. IEC 60287-1-1. */
export const sheathLossFactorOf = /* @__PURE__ */ formula({
  id: 'sheath-loss-factor',
  title: 'Losses of a metal sheath bonded at both ends over those of the conductor',
  inputs: ['sheathPerMetre', 'acResistancePerMetre', 'sheathReactance'],
  output: 'sheathLossFactor',
  expression: 'sheathPerMetre / acResistancePerMetre / (1 + (sheathPerMetre / sheathReactance)^2)',
  compute: ({ sheathPerMetre, acResistancePerMetre, sheathReactance }) =>
    sheathPerMetre / acResistancePerMetre / (1 + (sheathPerMetre / sheathReactance) ** 2),
  source: { document: 'IEC 60287-1-1', clause: 'sheaths bonded at both ends, trefoil', provenance: 'memory' },
});

/** Thermal resistance outside cables with metal sheaths that touch in trefoil in the ground. IEC 60287-2-1. */
export const trefoilSheathedResistance = /* @__PURE__ */ moving({
  id: 'trefoil-sheathed-thermal-resistance',
  title: 'Thermal resistance outside cables with metal sheaths in trefoil in the ground',
  moves: { soilResistivity: 1, burialDepth: 1, cableDiameter: -1 },
  output: 'externalThermalResistance',
  expression: '1.5 / 3.141592653589793 * soilResistivity * (log(4 * burialDepth / cableDiameter) - 0.63)',
  compute: ({ soilResistivity, burialDepth, cableDiameter }) =>
    (1.5 / Math.PI) * soilResistivity * (Math.log((4000 * burialDepth) / cableDiameter) - 0.63),
  valid: { burialDepth: { least: 0.2, most: 20 }, cableDiameter: { above: 0, most: 300 } },
  source: { document: 'IEC 60287-2-1', clause: 'three single-core cables touching in trefoil', provenance: 'memory' },
});

/** Thermal resistance of the soil around ducts, or cables without metal sheath, that touch in trefoil. IEC 60287-2-1. */
export const trefoilResistance = /* @__PURE__ */ moving({
  id: 'trefoil-thermal-resistance',
  title: 'Thermal resistance of the soil around ducts or cables without metal sheath in trefoil',
  moves: { soilResistivity: 1, burialDepth: 1, cableDiameter: -1 },
  output: 'soilThermalResistance',
  expression:
    'soilResistivity / (2 * 3.141592653589793) * (log(4 * burialDepth / cableDiameter) + 2 * log(2 * burialDepth / cableDiameter))',
  compute: ({ soilResistivity, burialDepth, cableDiameter }) =>
    (soilResistivity / (2 * Math.PI)) *
    (Math.log((4000 * burialDepth) / cableDiameter) + 2 * Math.log((2000 * burialDepth) / cableDiameter)),
  valid: { burialDepth: { least: 0.2, most: 20 }, cableDiameter: { above: 0, most: 300 } },
  source: { document: 'IEC 60287-2-1', clause: 'three single-core cables touching in trefoil', provenance: 'memory' },
});

/** Current of a single-core cable with metal sheath and dielectric loss. IEC 60287-1-1. */
export const sheathedCapacity = /* @__PURE__ */ formula({
  id: 'sheathed-capacity',
  title: 'Current at which a sheathed single-core cable reaches its permitted rise',
  inputs: [
    'permissibleRise',
    'dielectricLoss',
    'acResistancePerMetre',
    'sheathLossFactor',
    'coreThermalResistance',
    'sheathThermalResistance',
    'externalThermalResistance',
  ],
  output: 'computedCapacity',
  expression:
    'sqrt((permissibleRise - dielectricLoss * (coreThermalResistance / 2 + sheathThermalResistance + externalThermalResistance)) / (acResistancePerMetre * (coreThermalResistance + (1 + sheathLossFactor) * (sheathThermalResistance + externalThermalResistance))))',
  direction: { permissibleRise: 1, dielectricLoss: -1, acResistancePerMetre: -1, sheathLossFactor: -1 },
  compute: (v) => {
    const outside = v.sheathThermalResistance + v.externalThermalResistance;
    return Math.sqrt(
      (v.permissibleRise - v.dielectricLoss * (v.coreThermalResistance / 2 + outside)) /
        (v.acResistancePerMetre * (v.coreThermalResistance + (1 + v.sheathLossFactor) * outside)),
    );
  },
  source: {
    document: 'IEC 60287-1-1',
    clause: 'permissible current rating of cables, alternating current',
    provenance: 'one-source',
    note: 'one core, no armour; stands in an open library of IEC 60287 that cites its clauses',
  },
});

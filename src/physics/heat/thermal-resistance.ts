import { formula } from '../../core/index.js';

/** Thermal resistance of a round layer: bedding, sheath, wall of a duct, insulation of a single core. Heat conduction. */
export const shellResistance = /* @__PURE__ */ formula({
  id: 'shell-thermal-resistance',
  title: 'Thermal resistance of a round layer',
  inputs: ['thermalResistivity', 'shellThickness', 'shellInnerDiameter'],
  output: 'shellThermalResistance',
  expression: 'thermalResistivity / (2 * 3.141592653589793) * log(1 + 2 * shellThickness / shellInnerDiameter)',
  compute: ({ thermalResistivity, shellThickness, shellInnerDiameter }) =>
    (thermalResistivity / (2 * Math.PI)) * Math.log(1 + (2 * shellThickness) / shellInnerDiameter),
  source: { document: 'Heat conduction', clause: 'hollow cylinder', provenance: 'definition' },
});

/**
 * Geometric factor of the insulation between touching round cores: a fit to a solution of the heat conduction in two
 * dimensions, within 1 % of it. The line-source formula and the polynomials of IEC 60287 are not used: for these thick
 * conductors the first gives 8 % to more than twice too much.
 */
export const touchingCoresFactor = /* @__PURE__ */ formula({
  id: 'touching-cores-factor',
  title: 'Geometric factor of the insulation between touching cores',
  inputs: ['coreCount', 'insulationRatio'],
  output: 'geometricFactor',
  expression:
    'log(1 + (coreCount < 2.5 ? 1.29685 : coreCount < 3.5 ? 1.27612 : coreCount < 4.5 ? 1.32967 : 1.34169) * sqrt(insulationRatio) + (coreCount < 2.5 ? 2.45017 : coreCount < 3.5 ? 3.31955 : coreCount < 4.5 ? 3.80518 : 4.2592) * insulationRatio + (coreCount < 2.5 ? 0.65834 : coreCount < 3.5 ? 1.17432 : coreCount < 4.5 ? 1.82401 : 2.3456) * insulationRatio^1.5)',
  compute: ({ coreCount: n, insulationRatio: x }) => {
    const [a, b, c] =
      n < 2.5
        ? [1.29685, 2.45017, 0.65834]
        : n < 3.5
          ? [1.27612, 3.31955, 1.17432]
          : n < 4.5
            ? [1.32967, 3.80518, 1.82401]
            : [1.34169, 4.2592, 2.3456];
    return Math.log(1 + (a as number) * Math.sqrt(x) + (b as number) * x + (c as number) * x ** 1.5);
  },
  valid: { coreCount: { least: 2, most: 5 }, insulationRatio: { least: 0.04, most: 1 } },
  source: {
    document: 'Heat conduction',
    clause: 'finite volumes, cores in an isothermal circle around them',
    provenance: 'derived',
    note: 'fit within 1 % of the solution, itself within 0.5 %',
  },
});

/** Thermal resistance per core of touching round cores from their geometric factor. Heat conduction. */
export const touchingCoresResistance = /* @__PURE__ */ formula({
  id: 'touching-cores-thermal-resistance',
  title: 'Thermal resistance per core of touching cores',
  inputs: ['thermalResistivity', 'geometricFactor', 'hottestCoreShare'],
  output: 'coreThermalResistance',
  expression: 'thermalResistivity / (2 * 3.141592653589793) * geometricFactor * hottestCoreShare',
  compute: ({ thermalResistivity, geometricFactor, hottestCoreShare }) =>
    (thermalResistivity / (2 * Math.PI)) * geometricFactor * hottestCoreShare,
  source: { document: 'Heat conduction', provenance: 'definition' },
});

/** Thermal resistance per core of sector-shaped cores. IEC 60287-2-1. */
export const sectorCoresResistance = /* @__PURE__ */ formula({
  id: 'sector-cores-thermal-resistance',
  title: 'Thermal resistance per core of sector-shaped cores',
  inputs: ['thermalResistivity', 'coreCount', 'insulationThickness', 'conductorDiameter', 'sectorRadius'],
  output: 'coreThermalResistance',
  expression:
    'thermalResistivity / (2 * 3.141592653589793) * coreCount * (1 + (coreCount < 2.5 ? 2.2 : coreCount < 3.5 ? 3 : 4) * 2 * insulationThickness / (2 * 3.141592653589793 * (conductorDiameter + 2 * insulationThickness) - 2 * insulationThickness)) * log((sectorRadius + insulationThickness) / sectorRadius)',
  compute: ({ thermalResistivity, coreCount: n, insulationThickness, conductorDiameter, sectorRadius }) => {
    const t = 2 * insulationThickness;
    const f = 1 + ((n < 2.5 ? 2.2 : n < 3.5 ? 3 : 4) * t) / (2 * Math.PI * (conductorDiameter + t) - t);
    return (thermalResistivity / (2 * Math.PI)) * n * f * Math.log((sectorRadius + insulationThickness) / sectorRadius);
  },
  valid: { coreCount: { least: 2, most: 4 } },
  source: {
    document: 'IEC 60287-2-1',
    clause: 'shaped conductors',
    provenance: 'memory',
    note: 'the constant for four cores extends those for two and three and is unchecked; the form for three cores stands in an open library of IEC 60287 that cites its clauses',
  },
});

/** Thermal resistance between conductors and surface, for the losses of conductors and armour together. IEC 60287-1-1. */
export const innerResistance = /* @__PURE__ */ formula({
  id: 'inner-thermal-resistance',
  title: 'Thermal resistance between conductors and surface',
  inputs: [
    'loadedCores',
    'coreThermalResistance',
    'beddingThermalResistance',
    'sheathThermalResistance',
    'armourLossFactor',
  ],
  output: 'innerThermalResistance',
  expression:
    '(coreThermalResistance / loadedCores + beddingThermalResistance) / (1 + armourLossFactor) + sheathThermalResistance',
  compute: (v) =>
    (v.coreThermalResistance / v.loadedCores + v.beddingThermalResistance) / (1 + v.armourLossFactor) +
    v.sheathThermalResistance,
  source: { document: 'IEC 60287-1-1', clause: 'permissible current rating', provenance: 'memory' },
});

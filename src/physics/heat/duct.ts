import { added, formula, relation } from '../../core/index.js';

/** Thermal resistance of the gap between a cable and its duct. IEC 60287-2-1. */
export const ductGapResistance = /* @__PURE__ */ formula({
  id: 'duct-gap-thermal-resistance',
  title: 'Thermal resistance of the gap between cable and duct',
  inputs: ['ductGapBase', 'ductGapOffset', 'ductGapSlope', 'mediumTemperature', 'cableDiameter'],
  output: 'gapThermalResistance',
  expression:
    'one * ductGapBase / (1 + 0.1 * (ductGapOffset + ductGapSlope * (mediumTemperature / kelvin)) * (cableDiameter / millimetre))',
  constants: { one: [1, 'K·m/W'], kelvin: [1, 'K'], millimetre: [1, 'mm'] },
  compute: (v) =>
    v.ductGapBase / (1 + 0.1 * (v.ductGapOffset + v.ductGapSlope * v.mediumTemperature) * v.cableDiameter),
  valid: { mediumTemperature: { least: 0, most: 250 }, cableDiameter: { least: 5, most: 100 } },
  source: {
    document: 'IEC 60287-2-1',
    clause: 'cables in ducts',
    provenance: 'one-source',
    note: 'made for diameters from 25 to 100 mm; thinner cables are an extension; stands in an open library of IEC 60287 that cites its clauses',
  },
});

/** Thermal resistance between the inside of a duct and the surface of the ground. IEC 60287-2-1. */
export const ductResistance = /* @__PURE__ */ added({
  id: 'duct-thermal-resistance',
  title: 'Thermal resistance between the inside of a duct and the surface of the ground',
  plus: ['wallThermalResistance', 'soilThermalResistance', 'neighboursThermalResistance'],
  output: 'ductThermalResistance',
  source: {
    document: 'IEC 60287-2-1',
    clause: 'cables in ducts',
    provenance: 'one-source',
    note: 'stands in an open library of IEC 60287 that cites its clauses',
  },
});

/**
 * Mean temperature between a cable and its duct at the permitted rise of the conductor: the gap shares the rise with
 * the cable inside it and the ground outside, and its own resistance depends on its temperature. IEC 60287-2-1.
 */
export const mediumTemperatureOf = /* @__PURE__ */ relation({
  id: 'medium-temperature',
  title: 'Mean temperature between a cable and its duct',
  inputs: [
    'groundTemperature',
    'permissibleRise',
    'innerThermalResistance',
    'ductThermalResistance',
    'ductGapBase',
    'ductGapOffset',
    'ductGapSlope',
    'cableDiameter',
  ],
  output: 'mediumTemperature',
  terms: [
    '(mediumTemperature - groundTemperature) * (innerThermalResistance + ductThermalResistance + one * ductGapBase / (1 + 0.1 * (ductGapOffset + ductGapSlope * mediumTemperature / kelvin) * cableDiameter / millimetre))',
    '-permissibleRise * ductThermalResistance',
    '-permissibleRise / 2 * one * ductGapBase / (1 + 0.1 * (ductGapOffset + ductGapSlope * mediumTemperature / kelvin) * cableDiameter / millimetre)',
  ],
  constants: { one: [1, 'K·m/W'], kelvin: [1, 'K'], millimetre: [1, 'mm'] },
  tolerance: 1e-9,
  valid: {
    groundTemperature: { least: 0, most: 60 },
    permissibleRise: { least: 1, most: 180 },
    ductGapOffset: { above: 0 },
    ductGapSlope: { above: 0, most: 0.1 },
    cableDiameter: { least: 5, most: 100 },
  },
  // with the gap as U / (p + q theta) the relation is a quadratic with one root above the temperature of the ground
  solve: (v) => {
    const [t, rise, u] = [v.groundTemperature, v.permissibleRise, v.ductGapBase];
    const all = v.innerThermalResistance + v.ductThermalResistance;
    const p = 1 + 0.1 * v.ductGapOffset * v.cableDiameter;
    const q = 0.1 * v.ductGapSlope * v.cableDiameter;
    // in the rise y of the gap above the ground: a y² + b y + c = 0 with a > 0 > c
    const a = all * q;
    const b = all * (p + q * t) + u - rise * v.ductThermalResistance * q;
    const c = -rise * (v.ductThermalResistance * (p + q * t) + u / 2);
    const root = Math.sqrt(b * b - 4 * a * c);
    return t + (b > 0 ? (-2 * c) / (b + root) : (root - b) / (2 * a));
  },
  source: {
    document: 'IEC 60287-2-1',
    clause: 'cables in ducts',
    provenance: 'derived',
    note: 'mean of the temperatures of the cable and of the inside of the duct',
  },
});

/** Thermal resistance outside a cable in a duct. IEC 60287-2-1. */
export const ductedResistance = /* @__PURE__ */ added({
  id: 'ducted-thermal-resistance',
  title: 'Thermal resistance outside a cable in a duct',
  plus: ['gapThermalResistance', 'ductThermalResistance'],
  output: 'externalThermalResistance',
  source: {
    document: 'IEC 60287-2-1',
    clause: 'cables in ducts',
    provenance: 'one-source',
    note: 'stands in an open library of IEC 60287 that cites its clauses',
  },
});

import { formula } from '../../core/index.js';

/** Cross-section of a layer of steel wires side by side. Geometry. */
export const armourLayerArea = /* @__PURE__ */ formula({
  id: 'armour-layer-area',
  title: 'Cross-section of a layer of wires side by side',
  inputs: ['armourMeanDiameter', 'armourWireDiameter'],
  output: 'armourArea',
  expression: '3.141592653589793^2 / 4 * armourMeanDiameter * armourWireDiameter',
  compute: ({ armourMeanDiameter, armourWireDiameter }) => (Math.PI ** 2 / 4) * armourMeanDiameter * armourWireDiameter,
  source: { document: 'Geometry', provenance: 'definition', note: 'the number of wires is not rounded' },
});

/** Resistance per length of steel wire armour. IEC 60287-1-1. */
export const armourLayerResistance = /* @__PURE__ */ formula({
  id: 'armour-layer-resistance',
  title: 'Resistance of steel wire armour',
  inputs: ['armourArea', 'armourTemperature'],
  output: 'armourPerMetre',
  expression: '0.138 * perMetre * (1 + 0.0045 * (armourTemperature - reference) / kelvin) / (armourArea / square)',
  constants: { reference: [20, '°C'], kelvin: [1, 'K'], perMetre: [1, 'Ω/m'], square: [1, 'mm²'] },
  compute: ({ armourArea, armourTemperature }) => (0.138 * (1 + 0.0045 * (armourTemperature - 20))) / armourArea,
  source: {
    document: 'IEC 60287-1-1',
    clause: 'armour',
    provenance: 'memory',
    note: 'resistivity 1.38e-7 Ω·m at 20 °C; the lay of the wires is left out',
  },
});

/** Losses of steel wire armour over those of the conductors, three or four round cores. IEC 60287-1-1. */
export const armourLossOfRound = /* @__PURE__ */ formula({
  id: 'armour-loss-round',
  title: 'Losses of the armour of a cable with three or four round cores',
  inputs: ['armourPerMetre', 'acResistancePerMetre', 'coreAxisRadius', 'armourMeanDiameter', 'frequency'],
  output: 'armourLossFactor',
  expression:
    '1.23 * armourPerMetre / acResistancePerMetre * (2 * coreAxisRadius / armourMeanDiameter)^2 / ((2.77e6 * (armourPerMetre / perMetre) / (2 * 3.141592653589793 * frequency / hertz))^2 + 1)',
  constants: { perMetre: [1, 'Ω/m'], hertz: [1, 'Hz'] },
  compute: (v) =>
    (((1.23 * v.armourPerMetre) / v.acResistancePerMetre) * ((2 * v.coreAxisRadius) / v.armourMeanDiameter) ** 2) /
    (((2.77e6 * v.armourPerMetre) / (2 * Math.PI * v.frequency)) ** 2 + 1),
  source: { document: 'IEC 60287-1-1', clause: 'armour losses, steel wires', provenance: 'memory' },
});

/** Losses of steel wire armour over those of the conductors, three or four sector-shaped cores. IEC 60287-1-1. */
export const armourLossOfSectors = /* @__PURE__ */ formula({
  id: 'armour-loss-sectors',
  title: 'Losses of the armour of a cable with three or four sector-shaped cores',
  inputs: ['armourPerMetre', 'acResistancePerMetre', 'sectorRadius', 'armourMeanDiameter', 'frequency'],
  output: 'armourLossFactor',
  expression:
    '0.358 * armourPerMetre / acResistancePerMetre * (2 * sectorRadius / armourMeanDiameter)^2 / ((2.77e6 * (armourPerMetre / perMetre) / (2 * 3.141592653589793 * frequency / hertz))^2 + 1)',
  constants: { perMetre: [1, 'Ω/m'], hertz: [1, 'Hz'] },
  compute: (v) =>
    (((0.358 * v.armourPerMetre) / v.acResistancePerMetre) * ((2 * v.sectorRadius) / v.armourMeanDiameter) ** 2) /
    (((2.77e6 * v.armourPerMetre) / (2 * Math.PI * v.frequency)) ** 2 + 1),
  source: { document: 'IEC 60287-1-1', clause: 'armour losses, steel wires', provenance: 'memory' },
});

/** Losses of steel wire armour over those of the conductors, two cores. IEC 60287-1-1. */
export const armourLossOfTwo = /* @__PURE__ */ formula({
  id: 'armour-loss-two',
  title: 'Losses of the armour of a two-core cable',
  inputs: [
    'armourPerMetre',
    'acResistancePerMetre',
    'armourArea',
    'armourMeanDiameter',
    'sectorRadius',
    'insulationThickness',
    'frequency',
  ],
  output: 'armourLossFactor',
  expression:
    '0.62e-14 * (2 * 3.141592653589793 * frequency / hertz)^2 / ((acResistancePerMetre / perMetre) * (armourPerMetre / perMetre)) + 3.82e-5 * (armourArea / square) * (2 * 3.141592653589793 * frequency / hertz) / (acResistancePerMetre / perMetre) * ((1.48 * sectorRadius + 2 * insulationThickness) / millimetre / ((armourMeanDiameter / millimetre)^2 + 95.7 * (armourArea / square)))^2',
  constants: { perMetre: [1, 'Ω/m'], hertz: [1, 'Hz'], square: [1, 'mm²'], millimetre: [1, 'mm'] },
  compute: (v) => {
    const w = 2 * Math.PI * v.frequency;
    return (
      (0.62e-14 * w ** 2) / (v.acResistancePerMetre * v.armourPerMetre) +
      ((3.82e-5 * v.armourArea * w) / v.acResistancePerMetre) *
        ((1.48 * v.sectorRadius + 2 * v.insulationThickness) / (v.armourMeanDiameter ** 2 + 95.7 * v.armourArea)) ** 2
    );
  },
  source: { document: 'IEC 60287-1-1', clause: 'armour losses, two-core cables', provenance: 'memory' },
});

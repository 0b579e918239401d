import { formula } from '../core/index.js';

/** Material constant K of the adiabatic equation from heat capacity, resistivity and temperature coefficient. */
export const materialFactorOf = /* @__PURE__ */ formula({
  id: 'adiabatic-material-factor',
  title: 'Material constant of the adiabatic equation',
  inputs: ['conductorHeatCapacity', 'reciprocalCoefficient', 'conductorResistivity'],
  output: 'materialFactor',
  expression: 'sqrt(conductorHeatCapacity * (reciprocalCoefficient + reference) / conductorResistivity)',
  constants: { reference: [20, 'K'] },
  direction: { conductorHeatCapacity: 1, reciprocalCoefficient: 1, conductorResistivity: -1 },
  compute: ({ conductorHeatCapacity, reciprocalCoefficient, conductorResistivity }) =>
    Math.sqrt((conductorHeatCapacity * (reciprocalCoefficient + 20)) / conductorResistivity),
  source: { document: 'IEC 60949', clause: 'adiabatic equation', provenance: 'one-source' },
});

/**
 * Factor k from the material constant and the temperatures before and at the end of the fault. IEC 60364-5-54, Annex
 * A.
 */
export const adiabaticFactorOf = /* @__PURE__ */ formula({
  id: 'adiabatic-factor',
  title: 'Factor k of the adiabatic equation',
  inputs: ['materialFactor', 'reciprocalCoefficient', 'initialTemperature', 'finalTemperature'],
  output: 'adiabaticFactor',
  expression:
    'materialFactor * sqrt(log((reciprocalCoefficient + finalTemperature) / (reciprocalCoefficient + initialTemperature)))',
  direction: { materialFactor: 1, reciprocalCoefficient: -1, initialTemperature: -1, finalTemperature: 1 },
  compute: ({ materialFactor, reciprocalCoefficient: b, initialTemperature, finalTemperature }) =>
    materialFactor * Math.sqrt(Math.log((b + finalTemperature) / (b + initialTemperature))),
  source: { document: 'IEC 60364-5-54', clause: 'Annex A', provenance: 'one-source' },
});

/** Energy I²t of a fault current that flows for a time. BS 7671, 434.5.2, 543.1.3. */
export const faultEnergy = /* @__PURE__ */ formula({
  id: 'fault-energy',
  title: 'Energy of a fault current',
  inputs: ['faultCurrent', 'faultTime'],
  output: 'letThrough',
  expression: 'faultCurrent^2 * faultTime',
  direction: { faultCurrent: 1, faultTime: 1 },
  compute: ({ faultCurrent, faultTime }) => faultCurrent * faultCurrent * faultTime,
  valid: { faultTime: { most: 5 } },
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '434.5.2, 543.1.3', provenance: 'two-sources' },
});

/** Energy that a conductor withstands, k²S². BS 7671, 434.5.2. */
export const withstandEnergyOf = /* @__PURE__ */ formula({
  id: 'withstand-energy',
  title: 'Energy that a conductor withstands',
  inputs: ['adiabaticFactor', 'conductorArea'],
  output: 'withstandEnergy',
  expression: '(adiabaticFactor * conductorArea)^2',
  direction: { adiabaticFactor: 1, conductorArea: 1 },
  compute: ({ adiabaticFactor, conductorArea }) => (adiabaticFactor * conductorArea) ** 2,
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '434.5.2', provenance: 'two-sources' },
});

/** Smallest area of a protective conductor for an energy, S = √(I²t)/k. BS 7671, 543.1.3. */
export const adiabaticArea = /* @__PURE__ */ formula({
  id: 'adiabatic-area',
  title: 'Smallest area by the adiabatic equation',
  inputs: ['letThrough', 'adiabaticFactor'],
  output: 'minimumProtectiveArea',
  expression: 'sqrt(letThrough) / adiabaticFactor',
  direction: { letThrough: 1, adiabaticFactor: -1 },
  compute: ({ letThrough, adiabaticFactor }) => Math.sqrt(letThrough) / adiabaticFactor,
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '543.1.3', provenance: 'two-sources' },
});

/** Longest time for which a conductor withstands a fault current, t = k²S²/I². BS 7671, 434.5.2. */
export const longestFaultTime = /* @__PURE__ */ formula({
  id: 'longest-fault-time',
  title: 'Longest time of a fault current',
  inputs: ['adiabaticFactor', 'conductorArea', 'faultCurrent'],
  output: 'maximumFaultTime',
  expression: '(adiabaticFactor * conductorArea / faultCurrent)^2',
  direction: { adiabaticFactor: 1, conductorArea: 1, faultCurrent: -1 },
  compute: ({ adiabaticFactor, conductorArea, faultCurrent }) =>
    ((adiabaticFactor * conductorArea) / faultCurrent) ** 2,
  valid: { faultCurrent: { above: 0 } },
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '434.5.2', provenance: 'two-sources' },
});

/**
 * Factor for the heat of the direct-current component of a fault current over its duration. IEC 60909-0, factor m.
 */
export const directComponentFactor = /* @__PURE__ */ formula({
  id: 'direct-component-factor',
  title: 'Heat of the direct-current component over the duration of the fault',
  inputs: ['peakFactor', 'frequency', 'faultTime'],
  output: 'thermalFactor',
  expression:
    '(exp(4 * frequency * faultTime * log(peakFactor - 1)) - 1) / (2 * frequency * faultTime * log(peakFactor - 1))',
  direction: { peakFactor: 1, frequency: -1, faultTime: -1 },
  compute: ({ peakFactor, frequency, faultTime }) => {
    const decay = frequency * faultTime * Math.log(peakFactor - 1);
    return Math.expm1(4 * decay) / (2 * decay);
  },
  valid: { peakFactor: { above: 1.02, most: 1.99 } },
  source: {
    document: 'IEC 60909-0',
    clause: 'thermal equivalent current, factor m',
    provenance: 'one-source',
    note: 'stands in the documentation of the open network library pandapower',
  },
});

/**
 * Upper bound of the energy of a fault that is cleared within a time, with its direct-current component. IEC 60909-0,
 * thermal equivalent current.
 */
export const boundedFaultEnergy = /* @__PURE__ */ formula({
  id: 'bounded-fault-energy',
  title: 'Upper bound of the energy of a fault, direct-current component included',
  inputs: ['faultCurrent', 'faultTime', 'thermalFactor'],
  output: 'letThrough',
  expression: 'faultCurrent^2 * faultTime * (1 + thermalFactor)',
  direction: { faultCurrent: 1, faultTime: 1, thermalFactor: 1 },
  compute: ({ faultCurrent, faultTime, thermalFactor }) =>
    faultCurrent * faultCurrent * faultTime * (1 + thermalFactor),
  source: {
    document: 'IEC 60909-0',
    clause: 'thermal equivalent current',
    provenance: 'one-source',
    note: 'stands in the documentation of the open network library pandapower',
  },
});

/** Energy of a fault that a circuit-breaker clears at once: the bound for its time, or the limit of its class if less. */
export const lesserEnergy = /* @__PURE__ */ formula({
  id: 'lesser-energy',
  title: 'Let-through energy: the bound for the time or the limit of the class, whichever is less',
  inputs: ['boundedEnergy', 'classEnergy'],
  output: 'letThrough',
  expression: 'min(boundedEnergy, classEnergy)',
  direction: { boundedEnergy: 1, classEnergy: 1 },
  compute: ({ boundedEnergy, classEnergy }) => Math.min(boundedEnergy, classEnergy),
  source: { document: 'physics', provenance: 'definition', note: 'both are upper bounds' },
});

/** Share of the fault current that the armour takes beside another protective conductor. */
export const armourShare = /* @__PURE__ */ formula({
  id: 'armour-share',
  title: 'Share of the fault current in the armour',
  inputs: ['armourResistance', 'separateResistance'],
  output: 'pathShare',
  expression: 'separateResistance / (armourResistance + separateResistance)',
  direction: { armourResistance: -1, separateResistance: 1 },
  compute: ({ armourResistance, separateResistance }) => separateResistance / (armourResistance + separateResistance),
  source: { document: 'physics', provenance: 'definition' },
});

/** Share of the fault current that a protective conductor takes beside the armour. */
export const separateShare = /* @__PURE__ */ formula({
  id: 'separate-share',
  title: 'Share of the fault current beside the armour',
  inputs: ['armourResistance', 'separateResistance'],
  output: 'pathShare',
  expression: 'armourResistance / (armourResistance + separateResistance)',
  direction: { armourResistance: 1, separateResistance: -1 },
  compute: ({ armourResistance, separateResistance }) => armourResistance / (armourResistance + separateResistance),
  source: { document: 'physics', provenance: 'definition' },
});

/** Smallest area of one of several parallel paths, from its share of the current. BS 7671, 543.1.3. */
export const adiabaticAreaOfShare = /* @__PURE__ */ formula({
  id: 'adiabatic-area-of-share',
  title: 'Smallest area of one of several paths by the adiabatic equation',
  inputs: ['letThrough', 'adiabaticFactor', 'pathShare'],
  output: 'minimumProtectiveArea',
  expression: 'pathShare * sqrt(letThrough) / adiabaticFactor',
  direction: { letThrough: 1, adiabaticFactor: -1, pathShare: 1 },
  compute: ({ letThrough, adiabaticFactor, pathShare }) => (pathShare * Math.sqrt(letThrough)) / adiabaticFactor,
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '543.1.3', provenance: 'two-sources' },
});

/** Area of a protective conductor by the table, of the material of the line conductor. BS 7671, Table 54.7. */
export const tabulatedProtective = /* @__PURE__ */ formula({
  id: 'protective-conductor-by-table',
  title: 'Smallest protective conductor by the table, same material',
  inputs: ['conductorArea'],
  output: 'tabulatedProtectiveArea',
  expression: 'conductorArea <= first ? conductorArea : conductorArea <= second ? first : conductorArea / 2',
  constants: { first: [16, 'mm²'], second: [35, 'mm²'] },
  direction: { conductorArea: 1 },
  compute: ({ conductorArea: s }) => (s <= 16 ? s : s <= 35 ? 16 : s / 2),
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: 'Table 54.7', provenance: 'two-sources' },
});

/** Area of a protective conductor by the table, for another material or insulation. BS 7671, Table 54.7. */
export const tabulatedProtectiveOther = /* @__PURE__ */ formula({
  id: 'protective-conductor-by-table-other-material',
  title: 'Smallest protective conductor by the table, k_1/k_2 times',
  inputs: ['tabulatedProtectiveArea', 'lineFactor', 'protectiveFactor'],
  output: 'minimumProtectiveArea',
  expression: 'tabulatedProtectiveArea * lineFactor / protectiveFactor',
  direction: { tabulatedProtectiveArea: 1, lineFactor: 1, protectiveFactor: -1 },
  compute: ({ tabulatedProtectiveArea, lineFactor, protectiveFactor }) =>
    (tabulatedProtectiveArea * lineFactor) / protectiveFactor,
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: 'Table 54.7', provenance: 'one-source' },
});

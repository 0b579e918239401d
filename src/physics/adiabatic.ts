import { formula, moving } from '../core/index.js';

/** Material constant K of the adiabatic equation from heat capacity, resistivity and temperature coefficient. */
export const materialFactorOf = /* @__PURE__ */ moving({
  id: 'adiabatic-material-factor',
  title: 'Material constant of the adiabatic equation',
  moves: { conductorHeatCapacity: 1, reciprocalCoefficient: 1, conductorResistivity: -1 },
  output: 'materialFactor',
  expression: 'sqrt(conductorHeatCapacity * (reciprocalCoefficient + reference) / conductorResistivity)',
  constants: { reference: [20, 'K'] },
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
  direction: { materialFactor: 1, reciprocalCoefficient: -1, initialTemperature: -1, finalTemperature: 1 },
  output: 'adiabaticFactor',
  expression:
    'materialFactor * sqrt(log((reciprocalCoefficient + finalTemperature) / (reciprocalCoefficient + initialTemperature)))',
  compute: ({ materialFactor, reciprocalCoefficient: b, initialTemperature, finalTemperature }) =>
    materialFactor * Math.sqrt(Math.log((b + finalTemperature) / (b + initialTemperature))),
  source: { document: 'IEC 60364-5-54', clause: 'Annex A', provenance: 'one-source' },
});

/** Energy I²t of a fault current that flows for a time. Definition of the Joule integral. */
export const faultEnergy = /* @__PURE__ */ moving({
  id: 'fault-energy',
  title: 'Energy of a fault current',
  moves: { faultCurrent: 1, faultTime: 1 },
  output: 'letThrough',
  expression: 'faultCurrent^2 * faultTime',
  compute: ({ faultCurrent, faultTime }) => faultCurrent * faultCurrent * faultTime,
  valid: { faultTime: { most: 5 } },
  source: { document: 'Definition of the Joule integral', provenance: 'definition' },
});

/** Energy that a conductor withstands, k²S². IEC 60949, adiabatic equation. */
export const withstandEnergyOf = /* @__PURE__ */ moving({
  id: 'withstand-energy',
  title: 'Energy that a conductor withstands',
  moves: { adiabaticFactor: 1, conductorArea: 1 },
  output: 'withstandEnergy',
  expression: '(adiabaticFactor * conductorArea)^2',
  compute: ({ adiabaticFactor, conductorArea }) => (adiabaticFactor * conductorArea) ** 2,
  source: { document: 'IEC 60949', clause: 'adiabatic equation', provenance: 'one-source' },
});

/** Smallest area of a protective conductor for an energy, S = √(I²t)/k. IEC 60949, adiabatic equation. */
export const adiabaticArea = /* @__PURE__ */ moving({
  id: 'adiabatic-area',
  title: 'Smallest area by the adiabatic equation',
  moves: { letThrough: 1, adiabaticFactor: -1 },
  output: 'minimumProtectiveArea',
  expression: 'sqrt(letThrough) / adiabaticFactor',
  compute: ({ letThrough, adiabaticFactor }) => Math.sqrt(letThrough) / adiabaticFactor,
  source: { document: 'IEC 60949', clause: 'adiabatic equation', provenance: 'one-source' },
});

/** Longest time for which a conductor withstands a fault current, t = k²S²/I². IEC 60949, adiabatic equation. */
export const longestFaultTime = /* @__PURE__ */ moving({
  id: 'longest-fault-time',
  title: 'Longest time of a fault current',
  moves: { adiabaticFactor: 1, conductorArea: 1, faultCurrent: -1 },
  output: 'maximumFaultTime',
  expression: '(adiabaticFactor * conductorArea / faultCurrent)^2',
  compute: ({ adiabaticFactor, conductorArea, faultCurrent }) =>
    ((adiabaticFactor * conductorArea) / faultCurrent) ** 2,
  valid: { faultCurrent: { above: 0 } },
  source: { document: 'IEC 60949', clause: 'adiabatic equation', provenance: 'one-source' },
});

/**
 * Factor for the heat of the direct-current component of a fault current over its duration. IEC 60909-0, factor m.
 */
export const directComponentFactor = /* @__PURE__ */ moving({
  id: 'direct-component-factor',
  title: 'Heat of the direct-current component over the duration of the fault',
  moves: { peakFactor: 1, frequency: -1, faultTime: -1 },
  output: 'thermalFactor',
  expression:
    '(exp(4 * frequency * faultTime * log(peakFactor - 1)) - 1) / (2 * frequency * faultTime * log(peakFactor - 1))',
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
export const boundedFaultEnergy = /* @__PURE__ */ moving({
  id: 'bounded-fault-energy',
  title: 'Upper bound of the energy of a fault, direct-current component included',
  moves: { faultCurrent: 1, faultTime: 1, thermalFactor: 1 },
  output: 'letThrough',
  expression: 'faultCurrent^2 * faultTime * (1 + thermalFactor)',
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
export const lesserEnergy = /* @__PURE__ */ moving({
  id: 'lesser-energy',
  title: 'Let-through energy: the bound for the time or the limit of the class, whichever is less',
  moves: { boundedEnergy: 1, classEnergy: 1 },
  output: 'letThrough',
  expression: 'min(boundedEnergy, classEnergy)',
  compute: ({ boundedEnergy, classEnergy }) => Math.min(boundedEnergy, classEnergy),
  source: { document: 'physics', provenance: 'definition', note: 'both are upper bounds' },
});

/** Share of the fault current that the armour takes beside another protective conductor. */
export const armourShare = /* @__PURE__ */ moving({
  id: 'armour-share',
  title: 'Share of the fault current in the armour',
  moves: { armourResistance: -1, separateResistance: 1 },
  output: 'pathShare',
  expression: 'separateResistance / (armourResistance + separateResistance)',
  compute: ({ armourResistance, separateResistance }) => separateResistance / (armourResistance + separateResistance),
  source: { document: 'physics', provenance: 'definition' },
});

/** Share of the fault current that a protective conductor takes beside the armour. */
export const separateShare = /* @__PURE__ */ moving({
  id: 'separate-share',
  title: 'Share of the fault current beside the armour',
  moves: { armourResistance: 1, separateResistance: -1 },
  output: 'pathShare',
  expression: 'armourResistance / (armourResistance + separateResistance)',
  compute: ({ armourResistance, separateResistance }) => armourResistance / (armourResistance + separateResistance),
  source: { document: 'physics', provenance: 'definition' },
});

/** Smallest area of one of several parallel paths, from its share of the current. IEC 60949, adiabatic equation. */
export const adiabaticAreaOfShare = /* @__PURE__ */ moving({
  id: 'adiabatic-area-of-share',
  title: 'Smallest area of one of several paths by the adiabatic equation',
  moves: { letThrough: 1, adiabaticFactor: -1, pathShare: 1 },
  output: 'minimumProtectiveArea',
  expression: 'pathShare * sqrt(letThrough) / adiabaticFactor',
  compute: ({ letThrough, adiabaticFactor, pathShare }) => (pathShare * Math.sqrt(letThrough)) / adiabaticFactor,
  source: { document: 'IEC 60949', clause: 'adiabatic equation', provenance: 'one-source' },
});

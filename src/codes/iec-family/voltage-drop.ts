import { formula, moving, multiplied } from '../../core/index.js';

/** Voltage drop of a run from the tabulated drop per ampere and metre. Definition of the tabulated drop. */
export const voltageDropTabulated = /* @__PURE__ */ formula({
  id: 'voltage-drop-tabulated',
  title: 'Voltage drop from the tabulated drop per ampere and metre',
  inputs: ['dropRate', 'designCurrent', 'length'],
  output: 'voltageDrop',
  expression: 'dropRate * designCurrent * length',
  direction: { dropRate: 1, designCurrent: 1, length: 1 },
  compute: ({ dropRate, designCurrent, length }) => dropRate * designCurrent * length,
  source: { document: 'Definition of the tabulated drop', provenance: 'definition' },
});

/** Tabulated drop per ampere and metre from its resistive and reactive parts and the power factor. IEC 60364-5-52 Annex G. */
export const dropRateAtPowerFactor = /* @__PURE__ */ formula({
  id: 'drop-rate-at-power-factor',
  title: 'Drop per ampere and metre at a power factor',
  inputs: ['resistiveRate', 'reactiveRate', 'powerFactor', 'reactiveFactor', 'temperatureCorrection'],
  output: 'dropRate',
  expression: 'temperatureCorrection * resistiveRate * powerFactor + reactiveRate * reactiveFactor',
  direction: { resistiveRate: 1, temperatureCorrection: 1 },
  compute: (v) => v.temperatureCorrection * v.resistiveRate * v.powerFactor + v.reactiveRate * v.reactiveFactor,
  source: {
    document: 'IEC 60364-5-52',
    edition: '2009',
    clause: 'Annex G',
    provenance: 'memory',
    note: 'approximate, and always a little low: the exact drop is larger by up to 2 %',
  },
});

/** Drop per ampere and metre with the resistive part at the real conductor temperature, at the worst phase angle. Impedance. */
export const dropRateAtWorstAngle = /* @__PURE__ */ moving({
  id: 'drop-rate-at-worst-angle',
  title: 'Drop per ampere and metre at the real conductor temperature, whatever the power factor',
  moves: { resistiveRate: 1, reactiveRate: 1, temperatureCorrection: 1 },
  output: 'dropRate',
  expression: 'sqrt((temperatureCorrection * resistiveRate)^2 + reactiveRate^2)',
  compute: (v) => Math.hypot(v.temperatureCorrection * v.resistiveRate, v.reactiveRate),
  source: { document: 'Impedance', provenance: 'derived', note: 'only the resistance changes with temperature' },
});

/** Drop per ampere and metre of conductors in parallel that share the load equally. Circuit theory. */
export const dropRateInParallel = /* @__PURE__ */ multiplied({
  id: 'drop-rate-in-parallel',
  title: 'Drop per ampere and metre of conductors in parallel',
  times: ['dropRate'],
  over: ['parallelConductors'],
  output: 'dropRate',
  source: { document: 'Circuit theory', clause: 'equal impedances in parallel', provenance: 'derived' },
});

/** Balanced current that gives the drop of an unbalanced four-wire load: the line and what is left for the neutral. Circuit theory. */
export const balancedEquivalent = /* @__PURE__ */ moving({
  id: 'balanced-equivalent-current',
  title: 'Balanced current with the same drop, line and neutral together',
  moves: { ownLineCurrent: 1, otherLineCurrents: -1 },
  output: 'designCurrent',
  expression: 'max(2 * ownLineCurrent - otherLineCurrents / 2, 0 * ownLineCurrent)',
  compute: ({ ownLineCurrent, otherLineCurrents }) => Math.max(2 * ownLineCurrent - otherLineCurrents / 2, 0),
  source: {
    document: 'Circuit theory',
    clause: 'resistive, one phase angle, neutral of the same size',
    provenance: 'derived',
    note: 'I_L + Re(I_N) with I_N = I_L - (I_2 + I_3)/2 in phase; a rise on a line lighter than the others counts as none',
  },
});

/** Drop line to neutral from the drop between lines. Symmetrical three-phase system. */
export const dropToNeutral = /* @__PURE__ */ moving({
  id: 'drop-to-neutral',
  title: 'Voltage drop line to neutral from the drop between lines',
  moves: { voltageDrop: 1 },
  output: 'phaseDrop',
  expression: 'voltageDrop / sqrt(3)',
  compute: ({ voltageDrop }) => voltageDrop / Math.sqrt(3),
  source: { document: 'Symmetrical three-phase system', provenance: 'definition' },
});

/** Voltage drop as a ratio of the nominal voltage. Definition. */
export const dropRatioOf = /* @__PURE__ */ multiplied({
  id: 'drop-ratio',
  title: 'Voltage drop as a ratio of the nominal voltage',
  times: ['totalDrop'],
  over: ['nominalVoltage'],
  output: 'dropRatio',
  source: { document: 'Definition', provenance: 'definition' },
});

import { formula, moving, multiplied } from '../../core/index.js';

/** Rated current of a transformer on its low side. Three-phase power. */
export const transformerCurrentOf = /* @__PURE__ */ moving({
  id: 'transformer-current',
  title: 'Rated current of a transformer on its low side',
  moves: { transformerRating: 1, transformerVoltage: -1 },
  output: 'transformerCurrent',
  expression: 'transformerRating / (sqrt(3) * transformerVoltage)',
  compute: ({ transformerRating, transformerVoltage }) => transformerRating / (Math.sqrt(3) * transformerVoltage),
  source: { document: 'Three-phase power', provenance: 'definition' },
});

/** Rated current of a transformer for a load with harmonics. EN 50464-3. */
export const transformerCurrentWithHarmonics = /* @__PURE__ */ multiplied({
  id: 'transformer-current-harmonics',
  title: 'Rated current of a transformer for a load with harmonics',
  times: ['transformerCurrent'],
  over: ['harmonicLossFactor'],
  output: 'transformerCurrent',
  valid: { harmonicLossFactor: { least: 1 } },
  source: { document: 'EN 50464-3', provenance: 'memory' },
});

/** Impedance of the grid by its fault level, referred to the low side of the transformer. IEC 60909-0, network feeders. */
export const gridImpedanceByPower = /* @__PURE__ */ moving({
  id: 'grid-impedance-by-power',
  title: 'Impedance of the grid by its fault level, referred to the low side',
  moves: { voltageFactor: 1, gridFaultPower: -1, transformerVoltage: 1 },
  output: 'gridImpedance',
  expression: 'voltageFactor * transformerVoltage^2 / gridFaultPower',
  compute: ({ voltageFactor, gridFaultPower, transformerVoltage }) =>
    (voltageFactor * transformerVoltage * transformerVoltage) / gridFaultPower,
  source: {
    document: 'IEC 60909-0',
    clause: 'network feeders',
    provenance: 'memory',
    note: 'for a transformer whose high side is rated at the nominal voltage of the grid',
  },
});

/** Resistive part of the impedance voltage, from the loss at rated current. IEC 60909-0, transformers. */
export const resistiveVoltageOf = /* @__PURE__ */ multiplied({
  id: 'transformer-resistive-voltage',
  title: 'Resistive part of the impedance voltage',
  times: ['transformerLoss'],
  over: ['transformerRating'],
  output: 'resistiveVoltage',
  source: { document: 'IEC 60909-0', clause: 'transformers', provenance: 'memory' },
});

/** Reactive part of the impedance voltage. IEC 60909-0, transformers. */
export const reactiveVoltageOf = /* @__PURE__ */ moving({
  id: 'transformer-reactive-voltage',
  title: 'Reactive part of the impedance voltage',
  moves: { transformerImpedanceVoltage: 1, resistiveVoltage: -1 },
  output: 'reactiveVoltage',
  expression: 'sqrt(transformerImpedanceVoltage^2 - resistiveVoltage^2)',
  compute: ({ transformerImpedanceVoltage: u, resistiveVoltage: r }) => Math.sqrt(u ** 2 - r ** 2),
  source: { document: 'IEC 60909-0', clause: 'transformers', provenance: 'memory' },
});

/**
 * Drop of the voltage of a transformer by its load, with the second-order term; negative where a leading load raises it.
 * IEC 60076-8.
 */
export const regulationOf = /* @__PURE__ */ formula({
  id: 'transformer-regulation',
  title: 'Drop of the voltage of a transformer by its load',
  inputs: ['loadShare', 'resistiveVoltage', 'reactiveVoltage', 'powerFactor', 'reactiveFactor'],
  output: 'regulation',
  signed: true,
  expression:
    'loadShare * (resistiveVoltage * powerFactor + reactiveVoltage * reactiveFactor) + (loadShare * (reactiveVoltage * powerFactor - resistiveVoltage * reactiveFactor))^2 / 2',
  compute: ({ loadShare: x, resistiveVoltage: r, reactiveVoltage: z, powerFactor: c, reactiveFactor: s }) =>
    x * (r * c + z * s) + (x * (z * c - r * s)) ** 2 / 2,
  source: { document: 'IEC 60076-8', clause: 'voltage drop for a specified load', provenance: 'memory' },
});

/** Losses of a transformer at part load. IEC 60076-1. */
export const transformerLossesOf = /* @__PURE__ */ moving({
  id: 'transformer-losses',
  title: 'Losses of a transformer at its load',
  moves: { noLoadLoss: 1, transformerLoss: 1, loadShare: 1 },
  output: 'transformerLosses',
  expression: 'noLoadLoss + loadShare^2 * transformerLoss',
  compute: ({ noLoadLoss, transformerLoss, loadShare }) => noLoadLoss + loadShare * loadShare * transformerLoss,
  source: { document: 'IEC 60076-1', clause: 'losses', provenance: 'one-source' },
});

/** Load at which a transformer is most efficient. IEC 60076-1. */
export const bestLoadShareOf = /* @__PURE__ */ moving({
  id: 'transformer-best-load',
  title: 'Load at which a transformer is most efficient',
  moves: { noLoadLoss: 1, transformerLoss: -1 },
  output: 'bestLoadShare',
  expression: 'sqrt(noLoadLoss / transformerLoss)',
  compute: ({ noLoadLoss, transformerLoss }) => Math.sqrt(noLoadLoss / transformerLoss),
  valid: { transformerLoss: { above: 0 } },
  source: { document: 'IEC 60076-1', clause: 'losses', provenance: 'derived' },
});

/** Efficiency of a transformer at a load. IEC 60076-1. */
export const transformerEfficiencyOf = /* @__PURE__ */ formula({
  id: 'transformer-efficiency',
  title: 'Efficiency of a transformer at a load',
  inputs: ['loadShare', 'transformerRating', 'powerFactor', 'transformerLosses'],
  output: 'transformerEfficiency',
  expression:
    'loadShare * transformerRating * powerFactor / (loadShare * transformerRating * powerFactor + transformerLosses)',
  compute: ({ loadShare, transformerRating, powerFactor, transformerLosses }) => {
    const power = loadShare * transformerRating * powerFactor;
    return power / (power + transformerLosses);
  },
  source: { document: 'IEC 60076-1', clause: 'losses', provenance: 'definition' },
});

/** Current between two transformers in parallel whose voltages without load differ. Circuit theory. */
export const circulatingCurrentOf = /* @__PURE__ */ moving({
  id: 'circulating-current',
  title: 'Current between two transformers in parallel without load',
  moves: { tapDifference: 1, transformerVoltage: 1, transformerImpedance: -1, secondTransformerImpedance: -1 },
  output: 'circulatingCurrent',
  expression: 'tapDifference * transformerVoltage / (sqrt(3) * (transformerImpedance + secondTransformerImpedance))',
  compute: ({ tapDifference, transformerVoltage, transformerImpedance, secondTransformerImpedance }) =>
    (tapDifference * transformerVoltage) / (Math.sqrt(3) * (transformerImpedance + secondTransformerImpedance)),
  source: {
    document: 'Circuit theory',
    provenance: 'derived',
    note: 'sizes of the impedances added: exact where both have the same ratio of resistance to reactance, less than the current by a few per cent else; the network solution is exact',
  },
});

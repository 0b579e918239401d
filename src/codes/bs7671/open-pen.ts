import { formula, moving } from '../../core/index.js';

/** Vector sum of three line currents as printed, with 0.866 for √3/2. BS 7671 Annex A722. */
export const vectorSumPrinted = /* @__PURE__ */ formula({
  id: 'vector-sum-of-line-currents-printed',
  title: 'Vector sum of the line currents, printed form',
  inputs: ['lineCurrent1', 'lineCurrent2', 'lineCurrent3'],
  output: 'vectorSumCurrent',
  expression:
    'sqrt((lineCurrent1 - 0.5 * (lineCurrent2 + lineCurrent3))^2 + (0.866 * (lineCurrent2 - lineCurrent3))^2)',
  compute: ({ lineCurrent1: a, lineCurrent2: b, lineCurrent3: c }) => Math.hypot(a - 0.5 * (b + c), 0.866 * (b - c)),
  source: { document: 'BS 7671', clause: 'Annex A722', provenance: 'one-source' },
});

/**
 * Largest electrode resistance by the published equation for a single phase: load as a constant resistance. BS 7671,
 * Annex A722.
 */
export const publishedElectrodeLimit = /* @__PURE__ */ moving({
  id: 'open-pen-electrode-limit-published',
  title: 'Largest electrode resistance, published equation for resistive load',
  moves: { touchVoltageLimit: 1, nominalVoltage: -1, sourceFactor: -1, installationCurrent: -1 },
  output: 'electrodeLimit',
  expression:
    'touchVoltageLimit * nominalVoltage / (installationCurrent * (sourceFactor * nominalVoltage - touchVoltageLimit))',
  compute: ({ touchVoltageLimit, nominalVoltage, sourceFactor, installationCurrent }) =>
    (touchVoltageLimit * nominalVoltage) / (installationCurrent * (sourceFactor * nominalVoltage - touchVoltageLimit)),
  source: {
    document: 'BS 7671',
    clause: 'Annex A722',
    provenance: 'one-source',
    note: 'structure read in one text, the equation recalled; other electrodes are left out',
  },
});

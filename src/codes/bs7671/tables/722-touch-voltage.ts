import { table } from '../../../core/index.js';

/** Largest voltage of exposed metal after the loss of a PEN conductor, by arrangement. BS 7671 722.411.4.1. */
export const openPenLimits = /* @__PURE__ */ table({
  id: 'bs7671/722.411.4.1-voltage',
  title: 'Largest voltage between main earthing terminal and earth after the loss of a PEN conductor',
  axes: [{ name: 'earthing', labels: ['balanced-three-phase', 'low-electrode', 'open-pen-detection-touch-voltage'] }],
  rows: [
    ['balanced-three-phase', 70],
    ['low-electrode', 70],
    ['open-pen-detection-touch-voltage', 70],
  ],
  cell: 'touchVoltageLimit',
  unit: 'V',
  source: {
    document: 'BS 7671',
    edition: '2018+A1:2020',
    clause: '722.411.4.1 (i) to (iii)',
    provenance: 'two-sources',
    note: 'the 70 V of the electrode is recalled',
  },
  provenanceOf: { 'low-electrode': 'memory' },
  notes: [
    'Open-PEN detection by touch voltage disconnects live and protective conductors within 5 s (two sources); it need not operate on more than 70 V for less than 4 s (one source), and does not reclose while the voltage stands.',
  ],
});

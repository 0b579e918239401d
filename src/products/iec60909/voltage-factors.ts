import { table } from '../../core/index.js';

/** Voltage factor c at low voltage. IEC 60909-0 Table 1. */
export const voltageFactors = /* @__PURE__ */ table({
  id: 'iec60909/voltage-factors',
  title: 'Voltage factor c at low voltage',
  axes: [
    { name: 'case', labels: ['most', 'least'] },
    { name: 'tolerance', labels: ['+6 %', '+10 %'] },
  ],
  rows: [
    ['+6 %', 1.05, 0.95],
    ['+10 %', 1.1, 0.9],
  ],
  cell: 'voltageFactor',
  unit: '1',
  source: {
    document: 'IEC 60909-0',
    clause: 'Table 1',
    provenance: 'one-source',
    note: '0.90 recalled from the edition of 2016; the text seen gives 0.95 for all low voltage',
  },
  provenanceOf: { 'least, +10 %': 'memory' },
  notes: ['Great Britain: tolerance +10 %.'],
});

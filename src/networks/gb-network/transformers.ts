import { table } from '../../core/index.js';

/** Typical impedance voltage of 11/0.433 kV distribution transformers. ENA TS 35-1. */
export const transformerImpedances = /* @__PURE__ */ table({
  id: 'gb-network/transformers',
  title: 'Typical impedance voltage of 11/0.433 kV distribution transformers',
  axes: [
    { name: 'winding', labels: ['11/0.433 kV'] },
    { name: 'transformerRating', unit: 'VA', between: 'exact' },
  ],
  rows: `
    100000   4.5
    200000  4.75
    315000  4.75
    500000  4.75
    800000  4.75
    1000000 4.75
    1250000    5
    1500000 5.75
    1600000    6
    2000000    6`,
  cell: 'transformerImpedanceVoltage',
  unit: '1',
  per: 100,
  printed: '%',
  source: { document: 'ENA TS 35-1', provenance: 'memory' },
  provenanceOf: { '500000': 'one-source' },
  notes: ['Take the rating plate where there is one.'],
});

import { table } from '../../../core/index.js';

/** Rating factor C_g for cables laid direct in the ground. BS 7671 Table 4C2. */
export const table4C2 = /* @__PURE__ */ table({
  id: 'bs7671/4c2',
  title: 'Rating factor for grouping of cables direct in the ground',
  axes: [
    { name: 'clearance', labels: ['touching', 'one-diameter', '0.125 m', '0.25 m', '0.5 m'] },
    { name: 'circuitsInGroup', unit: '1', between: 'next-up', allowedBy: 'the safe side' },
  ],
  columns: [['touching'], ['one-diameter'], ['0.125 m'], ['0.25 m'], ['0.5 m']],
  rows: [
    [2, 0.75, 0.8, 0.85, 0.9, 0.9],
    [3, 0.65, 0.7, 0.75, 0.8, 0.85],
    [4, 0.6, 0.6, 0.7, 0.75, 0.8],
    [5, 0.55, 0.55, 0.65, 0.7, 0.8],
    [6, 0.5, 0.55, 0.6, 0.7, 0.8],
  ],
  cell: 'groupFactor',
  unit: '1',
  source: {
    document: 'BS 7671',
    edition: '2018+A2:2022',
    clause: 'Table 4C2',
    provenance: 'memory',
    note: 'BS 7671 prints up to six circuits',
  },
});

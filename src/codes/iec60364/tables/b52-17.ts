import { table } from '../../../core/index.js';

/** Rating factor for groups of circuits or multicore cables, touching. IEC 60364-5-52 Table B.52.17. */
export const tableB5217 = /* @__PURE__ */ table({
  id: 'iec60364/b.52.17',
  title: 'Rating factor for grouping of circuits or multicore cables',
  axes: [
    { name: 'circuitsInGroup', unit: '1', between: 'next-up', allowedBy: 'the safe side' },
    {
      name: 'arrangement',
      labels: ['bunched', 'single-layer-wall', 'single-layer-tray', 'single-layer-ladder', 'single-layer-ceiling'],
    },
  ],
  columns: [[1], [2], [3], [4], [5], [6], [7], [8], [9], [12], [16], [20]],
  rows: [
    ['bunched', 1, 0.8, 0.7, 0.65, 0.6, 0.57, 0.54, 0.52, 0.5, 0.45, 0.41, 0.38],
    ['single-layer-wall', 1, 0.85, 0.79, 0.75, 0.73, 0.72, 0.72, 0.71, 0.7, 0.7, 0.7, 0.7],
    ['single-layer-tray', 1, 0.88, 0.82, 0.77, 0.75, 0.73, 0.73, 0.72, 0.72, 0.72, 0.72, 0.72],
    ['single-layer-ladder', 1, 0.87, 0.82, 0.8, 0.8, 0.79, 0.79, 0.78, 0.78, 0.78, 0.78, 0.78],
    ['single-layer-ceiling', 0.95, 0.81, 0.72, 0.68, 0.66, 0.64, 0.63, 0.62, 0.61, null, null, null],
  ],
  cell: 'groupFactor',
  unit: '1',
  source: {
    document: 'IEC 60364-5-52',
    edition: '2009',
    clause: 'Table B.52.17',
    provenance: 'one-source',
    note: 'the text seen prints one set of figures for this table and BS 7671 Table 4C1; the ceiling row is recalled',
  },
  provenanceOf: { 'single-layer-ceiling': 'memory' },
});

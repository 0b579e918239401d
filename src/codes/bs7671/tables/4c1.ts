import { table } from '../../../core/index.js';
import { bs } from '../source.js';

/** Rating factor C_g for groups of circuits or multicore cables, touching. BS 7671 Table 4C1. */
export const table4C1 = /* @__PURE__ */ table({
  id: 'bs7671/4c1',
  title: 'Rating factor for grouping of circuits or multicore cables',
  axes: [
    { name: 'circuitsInGroup', unit: '1', between: 'next-up', allowedBy: 'the safe side' },
    { name: 'arrangement', labels: ['bunched', 'single-layer-wall', 'single-layer-tray', 'single-layer-ladder'] },
  ],
  columns: [[1], [2], [3], [4], [5], [6], [7], [8], [9], [12], [16], [20]],
  rows: [
    ['bunched', 1, 0.8, 0.7, 0.65, 0.6, 0.57, 0.54, 0.52, 0.5, 0.45, 0.41, 0.38],
    ['single-layer-wall', 1, 0.85, 0.79, 0.75, 0.73, 0.72, 0.72, 0.71, 0.7, 0.7, 0.7, 0.7],
    ['single-layer-tray', 1, 0.88, 0.82, 0.77, 0.75, 0.73, 0.73, 0.72, 0.72, 0.72, 0.72, 0.72],
    ['single-layer-ladder', 1, 0.87, 0.82, 0.8, 0.8, 0.79, 0.79, 0.78, 0.78, 0.78, 0.78, 0.78],
  ],
  cell: 'groupFactor',
  unit: '1',
  source: /* @__PURE__ */ bs('Table 4C1', 'one-source'),
  notes: [
    'For cables equally loaded.',
    'Bunched: methods A to F; single layer on wall: C; on tray, ladder or cleats: E and F.',
  ],
});

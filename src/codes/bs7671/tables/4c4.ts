import { table } from '../../../core/index.js';
import { trayFactors } from '../../iec-family/factor-forms.js';
import { bs } from '../source.js';

/** Rating factor for multicore cables on trays and ladders in free air, single layer. BS 7671 Table 4C4. */
export const table4C4 = /* @__PURE__ */ table(trayFactors, {
  id: 'bs7671/4c4',
  title: 'Rating factor for multicore cables on trays and ladders',
  rows: `
    1    1    1    1    1    1    1    1    1    1    1    1 0.97 0.97 0.97 0.97    1    1    1    1 1    1    1
    2 0.88 0.87 0.86 0.84    1 0.99 0.98 0.88 0.88 0.91 0.91 0.84 0.83 0.82 0.81 0.87 0.86 0.85 0.84 1 0.99 0.98
    3 0.82  0.8 0.79 0.77 0.98 0.96 0.95 0.82 0.81 0.89 0.88 0.78 0.76 0.75 0.73 0.82  0.8 0.79 0.77 1 0.98 0.97
    4 0.79 0.77 0.76 0.73 0.95 0.92 0.91 0.78 0.76 0.88 0.87 0.75 0.72 0.71 0.69  0.8 0.78 0.76 0.73 1 0.97 0.96
    6 0.76 0.73 0.71 0.68 0.91 0.87 0.85 0.73 0.71 0.87 0.85 0.71 0.68 0.66 0.63 0.79 0.76 0.73 0.68 1 0.96 0.93
    9 0.73 0.68 0.66 0.64    -    -    - 0.72  0.7    -    - 0.68 0.63 0.61 0.58 0.78 0.73  0.7 0.64 -    -    -`,
  source: /* @__PURE__ */ bs('Table 4C4', 'memory'),
  notes: ['Trays 300 mm apart vertically, 20 mm from the wall.'],
});

import { table } from '../../../core/index.js';
import { directFactors } from '../../iec-family/factor-forms.js';
import { bs } from '../source.js';

/** Rating factor C_g for cables laid direct in the ground. BS 7671 Table 4C2. */
export const table4C2 = /* @__PURE__ */ table(directFactors, {
  id: 'bs7671/4c2',
  title: 'Rating factor for grouping of cables direct in the ground',
  rows: `
    2 0.75  0.8 0.85  0.9  0.9
    3 0.65  0.7 0.75  0.8 0.85
    4  0.6  0.6  0.7 0.75  0.8
    5 0.55 0.55 0.65  0.7  0.8
    6  0.5 0.55  0.6  0.7  0.8`,
  source: /* @__PURE__ */ bs('Table 4C2', 'memory', 'BS 7671 prints up to six circuits'),
});

import { table } from '../../../core/index.js';
import { ductFactors } from '../../iec-family/factor-forms.js';
import { bs } from '../source.js';

/** Rating factor C_g for multicore cables in buried ducts. BS 7671 Table 4C3. */
export const table4C3Multicore = /* @__PURE__ */ table(ductFactors, {
  id: 'bs7671/4c3-multicore',
  title: 'Rating factor for grouping of multicore cables, one in each buried duct',
  rows: `
    2 0.85  0.9 0.95 0.95
    3 0.75 0.85  0.9 0.95
    4  0.7  0.8 0.85  0.9
    5 0.65  0.8 0.85  0.9
    6  0.6  0.8  0.8  0.9`,
  source: /* @__PURE__ */ bs('Table 4C3', 'memory', 'BS 7671 prints up to six'),
});

/** Rating factor C_g for single-core cables in buried ducts. BS 7671 Table 4C3. */
export const table4C3SingleCore = /* @__PURE__ */ table(ductFactors, {
  id: 'bs7671/4c3-single-core',
  title: 'Rating factor for grouping of single-core cables, one in each buried duct',
  rows: `
    2  0.8  0.9  0.9 0.95
    3  0.7  0.8 0.85  0.9
    4 0.65 0.75  0.8  0.9
    5  0.6  0.7  0.8  0.9
    6  0.6  0.7  0.8  0.9`,
  source: /* @__PURE__ */ bs('Table 4C3', 'memory', 'BS 7671 prints up to six'),
});

import { table } from '../../../core/index.js';
import { singleCoreTrayFactors } from '../../iec-family/factor-forms.js';
import { bs } from '../source.js';

/** Rating factor for groups of circuits of single-core cables on trays. BS 7671 Table 4C5. */
export const table4C5 = /* @__PURE__ */ table(singleCoreTrayFactors, {
  id: 'bs7671/4c5',
  title: 'Rating factor for three-phase circuits of single-core cables on trays',
  rows: `
    1 0.98 0.96 0.95 0.96 0.95    1 0.98 0.97    1 0.97 0.96    1    1 1 0.97 0.96
    2 0.91 0.87 0.85 0.86 0.84 0.97 0.93  0.9 0.98 0.93 0.92 0.91  0.9 1 0.95 0.94
    3 0.87 0.81 0.78    -    - 0.96 0.89 0.86 0.96 0.89 0.86 0.89 0.86 1 0.93  0.9`,
  source: /* @__PURE__ */ bs('Table 4C5', 'one-source', 'flat touching on vertical perforated tray recalled'),
});

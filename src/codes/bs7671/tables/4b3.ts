import { table } from '../../../core/index.js';
import { soilFactors } from '../../iec-family/factor-forms.js';
import { bs } from '../source.js';

/** Rating factor C_s for soil thermal resistivities other than 2.5 K·m/W. BS 7671 Table 4B3. */
export const table4B3 = /* @__PURE__ */ table(soilFactors, {
  id: 'bs7671/4b3',
  title: 'Rating factor for soil thermal resistivity',
  rows: `
    laying ducts direct
    0.5     1.28   1.88
    0.8      1.2   1.62
    1       1.18    1.5
    1.5      1.1   1.28
    2       1.05   1.12
    2.5        1      1
    3       0.96    0.9`,
  source: /* @__PURE__ */ bs('Table 4B3', 'memory', 'whether the second row is 0.7 or 0.8 K·m/W is not certain'),
});

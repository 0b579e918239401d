import { table } from '../../../core/index.js';
import { groundFactors } from '../../iec-family/factor-forms.js';
import { bs } from '../source.js';

/** Rating factor C_a for ground temperatures other than 20 °C. BS 7671 Table 4B2. */
export const table4B2 = /* @__PURE__ */ table(groundFactors, {
  id: 'bs7671/4b2',
  title: 'Rating factor for ground temperature',
  rows: `
    insulation thermoplastic-70 thermosetting-90
    10                      1.1             1.07
    15                     1.05             1.04
    20                        1                1
    25                     0.95             0.96
    30                     0.89             0.93
    35                     0.84             0.89
    40                     0.77             0.85
    45                     0.71              0.8
    50                     0.63             0.76
    55                     0.55             0.71
    60                     0.45             0.65
    65                        -              0.6
    70                        -             0.53
    75                        -             0.46
    80                        -             0.38`,
  source: /* @__PURE__ */ bs('Table 4B2', 'one-source'),
});

import { table } from '../../../core/index.js';
import { fuseImpedances } from './forms.js';

/** Largest earth fault loop impedance for fuses, 5 s, 230 V, as printed in 2008 and 2011. BS 7671 Table 41.4. */
export const table414 = /* @__PURE__ */ table(fuseImpedances, {
  id: 'bs7671/41.4',
  title: 'Largest earth fault loop impedance for fuses, 5 s, 230 V, without voltage factor',
  rows: `
    3      -    -    - 23.2    -     -    - 23.2
    5      - 16.4 17.7    -    - 15.33 17.7    -
    6   13.5    -    -    - 12.8     -    -    -
    10  7.42    -    -    - 7.19     -    -    -
    13     -    -    - 3.83    -     -    - 3.83
    15     -    5 5.35    -    -     - 5.35    -
    16  4.18    -    -    - 4.18  4.11    -    -
    20  2.91  2.8 3.83    - 2.95  3.38 3.83    -
    25   2.3    -    -    -  2.3     -    -    -
    30     - 1.84 2.64    -    -     - 2.64    -
    32  1.84    -    -    - 1.84  1.64    -    -
    40  1.35    -    -    - 1.35     -    -    -
    45     - 0.96 1.59    -    -  1.04 1.59    -
    50  1.04    -    -    - 1.04     -    -    -
    60     -  0.7 1.12    -    -     - 1.12    -
    63  0.82    -    -    - 0.82  0.72    -    -
    80  0.57  0.5    -    - 0.57  0.53    -    -
    100 0.42 0.36 0.53    - 0.46   0.4 0.53    -
    125 0.33    -    -    - 0.34     -    -    -
    160 0.25    -    -    - 0.28     -    -    -
    200 0.19    -    -    - 0.19     -    -    -`,
  source: { clause: 'Table 41.4', provenance: 'one-source' },
  provenanceOf: { '2008 BS 88-2.2': 'two-sources', 'BS 3036': 'two-sources', 'BS 1362': 'two-sources' },
});

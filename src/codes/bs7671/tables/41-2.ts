import { table } from '../../../core/index.js';
import { fuseImpedances } from './forms.js';

/** Largest earth fault loop impedance for fuses, 0.4 s, 230 V, as printed in 2008 and 2011. BS 7671 Table 41.2. */
export const table412 = /* @__PURE__ */ table(fuseImpedances, {
  id: 'bs7671/41.2',
  title: 'Largest earth fault loop impedance for fuses, 0.4 s, 230 V, without voltage factor',
  rows: `
    3     -     -    - 16.4    -     -    - 16.4
    5     - 10.45 9.58    -    - 10.45 9.58    -
    6  8.52     -    -    - 8.21     -    -    -
    10 5.11     -    -    - 4.89     -    -    -
    13    -     -    - 2.42    -     -    - 2.42
    15    -  3.28 2.55    -    -     - 2.55    -
    16  2.7     -    -    - 2.56  2.42    -    -
    20 1.77   1.7 1.77    - 1.77  2.04 1.77    -
    25 1.44     -    -    - 1.35     -    -    -
    30    -  1.15 1.09    -    -     - 1.09    -
    32 1.04     -    -    - 1.04  0.96    -    -`,
  source: { clause: 'Table 41.2', provenance: 'two-sources' },
  provenanceOf: { '2011 BS 88-3': 'one-source' },
});

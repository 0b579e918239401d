import { table } from '../../../core/index.js';
import { bs } from '../source.js';

/** Largest earth fault loop impedance for circuit-breakers and RCBOs at 230 V, 0.4 s and 5 s. BS 7671 Table 41.3. */
export const table413 = /* @__PURE__ */ table({
  id: 'bs7671/41.3',
  title: 'Largest earth fault loop impedance for circuit-breakers and RCBOs, 230 V',
  axes: [
    { name: 'printed', labels: ['2008', '2015'] },
    { name: 'type', labels: ['B', 'C', 'D'] },
    { name: 'deviceRating', unit: 'A', between: 'exact' },
  ],
  rows: `
    printed  2008 2008 2008  2015 2015 2015
    type        B    C    D     B    C    D
    3       15.33    -    - 14.57    -    -
    6        7.67 3.83 1.92  7.28 3.64 1.82
    10        4.6  2.3 1.15  4.37 2.19 1.09
    16       2.87 1.44 0.72  2.73 1.37 0.68
    20        2.3 1.15 0.57  2.19 1.09 0.55
    25       1.84 0.92 0.46  1.75 0.87 0.44
    32       1.44 0.72 0.36  1.37 0.68 0.34
    40       1.15 0.57 0.29  1.09 0.55 0.27
    50       0.92 0.46 0.23  0.87 0.44 0.22
    63       0.73 0.36 0.18  0.69 0.35 0.17
    80       0.57 0.29 0.14  0.55 0.27 0.14
    100      0.46 0.23 0.11  0.44 0.22 0.11
    125      0.37 0.18 0.09  0.35 0.17 0.09`,
  cell: 'loopImpedanceLimit',
  unit: 'Ω',
  source: /* @__PURE__ */ bs(
    'Table 41.3',
    'derived',
    'the columns of 2015 are 218.5 V/I_a rounded to two places; 7.28 and 1.37 Ω seen in print',
  ),
  provenanceOf: { '2008': 'two-sources' },
  notes: [
    '2008: without voltage factor, also in Amendment 1:2011. 2015: with C_min 0.95, from Amendment 3:2015 on.',
    'A relaxed type D figure for 5 s may stand in editions from 2015 on; it was not available. The figures here are on the safe side.',
  ],
});

import { table } from '../../../core/index.js';
import { bs } from '../source.js';

/** Largest earth fault loop impedance of reduced low voltage circuits, 5 s. BS 7671 Table 41.6. */
export const table416 = /* @__PURE__ */ table({
  id: 'bs7671/41.6',
  title: 'Largest earth fault loop impedance of reduced low voltage circuits, 5 s',
  axes: [
    { name: 'minimumFactor', labels: ['none', '0.95'] },
    { name: 'nominalVoltage', unit: 'V', between: 'exact' },
    { name: 'type', labels: ['B', 'C', 'D'] },
    { name: 'deviceRating', unit: 'A', between: 'exact' },
  ],
  rows: `
    minimumFactor  none none none none none none 0.95 0.95 0.95 0.95 0.95 0.95
    nominalVoltage   55   55   55 63.5 63.5 63.5   55   55   55 63.5 63.5 63.5
    type              B    C    D    B    C    D    B    C    D    B    C    D
    6              1.83 0.92 0.46 2.12 1.06 0.53 1.74 0.87 0.44 2.01 1.01  0.5
    10              1.1 0.55 0.28 1.27 0.64 0.32 1.04 0.52 0.26 1.21  0.6  0.3
    16             0.69 0.34 0.17 0.79  0.4  0.2 0.65 0.33 0.16 0.75 0.38 0.19
    20             0.55 0.28 0.14 0.64 0.32 0.16 0.52 0.26 0.13  0.6  0.3 0.15
    25             0.44 0.22 0.11 0.51 0.25 0.13 0.42 0.21  0.1 0.48 0.24 0.12
    32             0.34 0.17 0.09  0.4  0.2  0.1 0.33 0.16 0.08 0.38 0.19 0.09
    40             0.28 0.14 0.07 0.32 0.16 0.08 0.26 0.13 0.07  0.3 0.15 0.08
    50             0.22 0.11 0.06 0.25 0.13 0.06 0.21  0.1 0.05 0.24 0.12 0.06
    63             0.17 0.09 0.04  0.2  0.1 0.05 0.17 0.08 0.04 0.19  0.1 0.05
    80             0.14 0.07 0.03 0.16 0.08 0.04 0.13 0.07 0.03 0.15 0.08 0.04
    100            0.11 0.06 0.03 0.13 0.06 0.03  0.1 0.05 0.03 0.12 0.06 0.03
    125            0.09 0.04 0.02  0.1 0.05 0.03 0.08 0.04 0.02  0.1 0.05 0.02`,
  cell: 'loopImpedanceLimit',
  unit: 'Ω',
  source: /* @__PURE__ */ bs('Table 41.6', 'derived', 'computed; the printed table was not available'),
});

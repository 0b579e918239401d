import { table } from '../../../core/index.js';
import { airFactors } from '../../iec-family/factor-forms.js';
import { bs } from '../source.js';

/** Rating factor C_a for ambient air temperatures other than 30 °C. BS 7671 Table 4B1. */
export const table4B1 = /* @__PURE__ */ table(airFactors, {
  id: 'bs7671/4b1',
  title: 'Rating factor for ambient air temperature',
  rows: `
    insulation thermoplastic-70 thermosetting-90 mineral-70 mineral-105
    25                     1.03             1.02       1.07        1.04
    30                        1                1          1           1
    35                     0.94             0.96       0.93        0.96
    40                     0.87             0.91       0.85        0.92
    45                     0.79             0.87       0.78        0.88
    50                     0.71             0.82       0.67        0.84
    55                     0.61             0.76       0.57         0.8
    60                      0.5             0.71       0.45        0.75
    65                        -             0.65          -         0.7
    70                        -             0.58          -        0.65
    75                        -              0.5          -         0.6
    80                        -             0.41          -        0.54
    85                        -                -          -        0.47
    90                        -                -          -         0.4
    95                        -                -          -        0.32`,
  source: /* @__PURE__ */ bs(
    'Table 4B1',
    'one-source',
    'the 70 °C and 90 °C columns stood in two texts; the mineral columns in one for some rows',
  ),
  notes: ['25 °C: BS prints 1.03 and 1.02 where the law gives 1.06 and 1.04.'],
});

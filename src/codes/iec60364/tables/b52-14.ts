import { table } from '../../../core/index.js';
import { airFactors } from '../../iec-family/factor-forms.js';

/** Rating factor for ambient air temperatures other than 30 °C. IEC 60364-5-52 Table B.52.14. */
export const tableB5214 = /* @__PURE__ */ table(airFactors, {
  id: 'iec60364/b.52.14',
  title: 'Rating factor for ambient air temperature',
  rows: `
    insulation thermoplastic-70 thermosetting-90 mineral-70 mineral-105
    10                     1.22             1.15       1.26        1.14
    15                     1.17             1.12        1.2        1.11
    20                     1.12             1.08       1.14        1.07
    25                     1.06             1.04       1.07        1.04
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
  source: {
    document: 'IEC 60364-5-52',
    edition: '2009',
    clause: 'Table B.52.14',
    provenance: 'memory',
    note: 'from 25 °C up seen in part; 40 to 55 °C, PVC and XLPE, are the ratios of currents that a compressor maker’s instruction book prints, and all of these two columns are what the heat balance gives to two places',
  },
  provenanceOf: { 'thermoplastic-70': 'derived', 'thermosetting-90': 'derived' },
});

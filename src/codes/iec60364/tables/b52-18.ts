import { table } from '../../../core/index.js';
import { directFactors } from '../../iec-family/factor-forms.js';

/** Rating factor for cables laid direct in the ground. IEC 60364-5-52 Table B.52.18. */
export const tableB5218 = /* @__PURE__ */ table(directFactors, {
  id: 'iec60364/b.52.18',
  title: 'Rating factor for grouping of cables direct in the ground',
  rows: `
    2  0.75  0.8 0.85  0.9  0.9
    3  0.65  0.7 0.75  0.8 0.85
    4   0.6  0.6  0.7 0.75  0.8
    5  0.55 0.55 0.65  0.7  0.8
    6   0.5 0.55  0.6  0.7  0.8
    7  0.45 0.51 0.59 0.67 0.76
    8  0.43 0.48 0.57 0.65 0.75
    9  0.41 0.46 0.55 0.63 0.74
    12 0.36 0.42 0.51 0.59 0.71
    16 0.32 0.38 0.47 0.56 0.68
    20 0.29 0.35 0.44 0.53 0.66`,
  source: { document: 'IEC 60364-5-52', edition: '2009', clause: 'Table B.52.18', provenance: 'memory' },
});

import { table } from '../../../core/index.js';
import { ductFactors } from '../../iec-family/factor-forms.js';

/** Rating factor for multicore cables in buried ducts. IEC 60364-5-52 Table B.52.19. */
export const tableB5219Multicore = /* @__PURE__ */ table(ductFactors, {
  id: 'iec60364/b.52.19-multicore',
  title: 'Rating factor for grouping of multicore cables, one in each buried duct',
  rows: `
    2  0.85  0.9 0.95 0.95
    3  0.75 0.85  0.9 0.95
    4   0.7  0.8 0.85  0.9
    5  0.65  0.8 0.85  0.9
    6   0.6  0.8  0.8  0.9
    7  0.57 0.76  0.8 0.88
    8  0.54 0.74 0.78 0.88
    9  0.52 0.73 0.77 0.87
    10 0.49 0.72 0.76 0.86
    11 0.47  0.7 0.75 0.86
    12 0.45 0.69 0.74 0.85
    13 0.44 0.68 0.73 0.85
    14 0.42 0.68 0.72 0.84
    15 0.41 0.67 0.72 0.84
    16 0.39 0.66 0.71 0.83
    17 0.38 0.65  0.7 0.83
    18 0.37 0.65  0.7 0.83
    19 0.35 0.64 0.69 0.82
    20 0.34 0.63 0.68 0.82`,
  source: { document: 'IEC 60364-5-52', edition: '2009', clause: 'Table B.52.19', provenance: 'memory' },
});

/** Rating factor for single-core cables in buried ducts. IEC 60364-5-52 Table B.52.19. */
export const tableB5219SingleCore = /* @__PURE__ */ table(ductFactors, {
  id: 'iec60364/b.52.19-single-core',
  title: 'Rating factor for grouping of single-core cables, one in each buried duct',
  rows: `
    2   0.8  0.9  0.9 0.95
    3   0.7  0.8 0.85  0.9
    4  0.65 0.75  0.8  0.9
    5   0.6  0.7  0.8  0.9
    6   0.6  0.7  0.8  0.9
    7  0.53 0.66 0.76 0.87
    8   0.5 0.63 0.74 0.87
    9  0.47 0.61 0.73 0.86
    10 0.45 0.59 0.72 0.85
    11 0.43 0.57  0.7 0.85
    12 0.41 0.56 0.69 0.84
    13 0.39 0.54 0.68 0.84
    14 0.37 0.53 0.68 0.83
    15 0.35 0.52 0.67 0.83
    16 0.34 0.51 0.66 0.83
    17 0.33  0.5 0.65 0.82
    18 0.31 0.49 0.65 0.82
    19  0.3 0.48 0.64 0.82
    20 0.29 0.47 0.63 0.81`,
  source: { document: 'IEC 60364-5-52', edition: '2009', clause: 'Table B.52.19', provenance: 'memory' },
});

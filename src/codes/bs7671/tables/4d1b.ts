import { table } from '../../../core/index.js';
import { singleCoreDrops } from './forms.js';

/** Single-core 70 °C thermoplastic, non-armoured, copper: voltage drop. BS 7671 Table 4D1B. */
export const table4D1B = /* @__PURE__ */ table(singleCoreDrops, {
  id: 'bs7671/4d1b',
  title: 'Single-core 70 °C thermoplastic, non-armoured, copper: voltage drop',
  rows: `
    1      44    44    -   44    44     -   44    44    -   44   38    -   38    38     -    38    38    -   38   38    -   38
    1.5    29    29    -   29    29     -   29    29    -   29   25    -   25    25     -    25    25    -   25   25    -   25
    2.5    18    18    -   18    18     -   18    18    -   18   15    -   15    15     -    15    15    -   15   15    -   15
    4      11    11    -   11    11     -   11    11    -   11  9.5    -  9.5   9.5     -   9.5   9.5    -  9.5  9.5    -  9.5
    6     7.3   7.3    -  7.3   7.3     -  7.3   7.3    -  7.3  6.4    -  6.4   6.4     -   6.4   6.4    -  6.4  6.4    -  6.4
    10    4.4   4.4    -  4.4   4.4     -  4.4   4.4    -  4.4  3.8    -  3.8   3.8     -   3.8   3.8    -  3.8  3.8    -  3.8
    16    2.8   2.8    -  2.8   2.8     -  2.8   2.8    -  2.8  2.4    -  2.4   2.4     -   2.4   2.4    -  2.4  2.4    -  2.4
    25   1.75   1.8 0.33  1.8  1.75   0.2 1.75  1.75 0.29  1.8  1.5 0.29 1.55   1.5 0.175   1.5   1.5 0.25 1.55  1.5 0.32 1.55
    35   1.25   1.3 0.31  1.3  1.25 0.195 1.25  1.25 0.28  1.3  1.1 0.27  1.1   1.1  0.17   1.1   1.1 0.24  1.1  1.1 0.32 1.15
    50   0.93  0.95  0.3    1  0.93  0.19 0.95  0.93 0.28 0.97 0.81 0.26 0.85   0.8 0.165  0.82   0.8 0.24 0.84  0.8 0.32 0.86
    70   0.63  0.65 0.29 0.72  0.63 0.185 0.66  0.63 0.27 0.69 0.56 0.25 0.61  0.55  0.16  0.57  0.55 0.24  0.6 0.55 0.31 0.63
    95   0.46  0.49 0.28 0.56  0.47  0.18  0.5  0.47 0.27 0.54 0.42 0.24 0.48  0.41 0.155  0.43  0.41 0.23 0.47  0.4 0.31 0.51
    120  0.36  0.39 0.27 0.47  0.37 0.175 0.41  0.37 0.26 0.45 0.33 0.23 0.41  0.32  0.15  0.36  0.32 0.23  0.4 0.32  0.3 0.44
    150  0.29  0.31 0.27 0.41   0.3 0.175 0.34  0.29 0.26 0.39 0.27 0.23 0.36  0.26  0.15   0.3  0.26 0.23 0.34 0.26  0.3  0.4
    185  0.23  0.25 0.27 0.37  0.24  0.17 0.29  0.24 0.26 0.35 0.22 0.23 0.32  0.21 0.145  0.26  0.21 0.22 0.31 0.21  0.3 0.36
    240  0.18 0.195 0.26 0.33 0.185 0.165 0.25 0.185 0.25 0.31 0.17 0.23 0.29  0.16 0.145  0.22  0.16 0.22 0.27 0.16 0.29 0.34
    300 0.145  0.16 0.26 0.31  0.15 0.165 0.22  0.15 0.25 0.29 0.14 0.23 0.27  0.13  0.14  0.19  0.13 0.22 0.25 0.13 0.29 0.32
    400 0.105  0.13 0.26 0.29  0.12  0.16  0.2 0.115 0.25 0.27 0.12 0.22 0.25 0.105  0.14 0.175 0.105 0.21 0.24  0.1 0.29 0.31`,
  source: {
    clause: 'Table 4D1B',
    provenance: 'memory',
    note: 'up to 240 mm², enclosed and single-phase up to 300 mm², as in a wholesaler’s catalogue of 2025; that prints 0.51 for z of three cables spaced, 70 mm², and 0.195 for r of two flat and touching, 240 mm², where resistance and reactance have 0.63 and 0.185',
  },
  provenanceOf: {
    '1 to 240': 'one-source',
    'dc enclosed z, 1 to 300': 'one-source',
    'single-phase enclosed r, 25 to 300': 'one-source',
    'single-phase enclosed x, 25 to 300': 'one-source',
    'single-phase enclosed z, 1 to 300': 'one-source',
    'single-phase flat-touching r, 25 to 300': 'one-source',
    'single-phase flat-touching x, 25 to 300': 'one-source',
    'single-phase flat-touching z, 1 to 300': 'one-source',
    'single-phase spaced r, 25 to 300': 'one-source',
    'single-phase spaced x, 25 to 300': 'one-source',
    'single-phase spaced z, 1 to 300': 'one-source',
    'three-phase enclosed r, 25 to 300': 'one-source',
    'three-phase enclosed x, 25 to 300': 'one-source',
    'three-phase enclosed z, 1 to 300': 'one-source',
    'three-phase spaced z, 70': 'memory',
    'single-phase flat-touching r, 240': 'memory',
  },
});

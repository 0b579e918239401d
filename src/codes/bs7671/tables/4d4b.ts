import { table } from '../../../core/index.js';
import { multicoreDrops } from './forms.js';

/** Multicore armoured 70 °C thermoplastic, copper: voltage drop. BS 7671 Table 4D4B. */
export const table4D4B = /* @__PURE__ */ table(multicoreDrops, {
  id: 'bs7671/4d4b',
  title: 'Multicore armoured 70 °C thermoplastic, copper: voltage drop',
  rows: `
    system       dc single-phase single-phase single-phase three-phase three-phase three-phase
    component     z            r            x            z           r           x           z
    1.5          29           29            -           29          25           -          25
    2.5          18           18            -           18          15           -          15
    4            11           11            -           11         9.5           -         9.5
    6           7.3          7.3            -          7.3         6.4           -         6.4
    10          4.4          4.4            -          4.4         3.8           -         3.8
    16          2.8          2.8            -          2.8         2.4           -         2.4
    25         1.75         1.75         0.17         1.75         1.5       0.145         1.5
    35         1.25         1.25        0.165         1.25         1.1       0.145         1.1
    50         0.93         0.93        0.165         0.94         0.8        0.14        0.81
    70         0.63         0.63         0.16         0.65        0.55        0.14        0.57
    95         0.46         0.47        0.155          0.5        0.41       0.135        0.43
    120        0.36         0.38        0.155         0.41        0.33       0.135        0.35
    150        0.29          0.3        0.155         0.34        0.26        0.13        0.29
    185        0.23         0.25         0.15         0.29        0.21        0.13        0.25
    240        0.18         0.19         0.15         0.24       0.165        0.13        0.21
    300       0.145        0.155        0.145         0.21       0.135        0.13       0.185
    400       0.105        0.115        0.145        0.185         0.1       0.125        0.16`,
  source: { clause: 'Table 4D4B', provenance: 'memory', note: 'partly seen' },
  provenanceOf: { 'single-phase z, 4 to 10': 'one-source', 'three-phase z, 35': 'one-source' },
});

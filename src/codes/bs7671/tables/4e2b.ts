import { table } from '../../../core/index.js';
import { multicoreDrops } from './forms.js';

/** Multicore 90 °C thermosetting, non-armoured, copper: voltage drop. BS 7671 Table 4E2B. */
export const table4E2B = /* @__PURE__ */ table(multicoreDrops, {
  id: 'bs7671/4e2b',
  title: 'Multicore 90 °C thermosetting, non-armoured, copper: voltage drop',
  rows: `
    system       dc single-phase single-phase single-phase three-phase three-phase three-phase
    component     z            r            x            z           r           x           z
    1            46           46            -           46          40           -          40
    1.5          31           31            -           31          27           -          27
    2.5          19           19            -           19          16           -          16
    4            12           12            -           12          10           -          10
    6           7.9          7.9            -          7.9         6.8           -         6.8
    10          4.7          4.7            -          4.7           4           -           4
    16          2.9          2.9            -          2.9         2.5           -         2.5
    25         1.85         1.85         0.16          1.9         1.6        0.14        1.65
    35         1.35         1.35        0.155         1.35        1.15       0.135        1.15
    50         0.98         0.99        0.155            1        0.86       0.135        0.87
    70         0.67         0.67         0.15         0.69        0.59        0.13         0.6
    95         0.49          0.5         0.15         0.52        0.43        0.13        0.45
    120        0.39          0.4        0.145         0.42        0.34        0.13        0.37
    150        0.31         0.32        0.145         0.35        0.28       0.125         0.3
    185        0.25         0.26        0.145         0.29        0.22       0.125        0.26
    240       0.195          0.2         0.14         0.24       0.175       0.125        0.21
    300       0.155         0.16         0.14         0.21        0.14        0.12       0.185
    400        0.12         0.13         0.14         0.19       0.115        0.12       0.165`,
  source: { clause: 'Table 4E2B', provenance: 'memory', note: 'partly seen' },
});

import { table } from '../../../core/index.js';
import { multicoreDrops } from './forms.js';

/** Multicore armoured 90 °C thermosetting, aluminium: voltage drop. BS 7671 Table 4J4B. */
export const table4J4B = /* @__PURE__ */ table(multicoreDrops, {
  id: 'bs7671/4j4b',
  title: 'Multicore armoured 90 °C thermosetting, aluminium: voltage drop',
  rows: `
    system      dc single-phase single-phase single-phase three-phase three-phase three-phase
    component    z            r            x            z           r           x           z
    16         4.8          4.8            -          4.8         4.2           -         4.2
    25         3.1          3.1        0.165          3.1         2.7        0.14         2.7
    35         2.2          2.2         0.16          2.2        1.95        0.14        1.95
    50        1.65         1.65         0.16         1.65         1.4       0.135        1.45
    70        1.15         1.15        0.155         1.15        0.97       0.135        0.97
    95        0.83         0.83         0.15         0.85        0.72        0.13        0.73
    120          -            -            -            -        0.56        0.13        0.58
    150          -            -            -            -        0.46        0.13        0.48
    185          -            -            -            -        0.37        0.13        0.39
    240          -            -            -            -        0.28       0.125        0.31
    300          -            -            -            -        0.23       0.125        0.26`,
  source: { clause: 'Table 4J4B', provenance: 'memory' },
});

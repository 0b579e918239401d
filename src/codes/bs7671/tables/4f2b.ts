import { table } from '../../../core/index.js';
import { bs } from '../source.js';

/** Flexible cables with sheath, 90 °C thermosetting, copper: voltage drop. BS 7671 Table 4F2B. */
export const table4F2B = /* @__PURE__ */ table({
  id: 'bs7671/4f2b',
  title: 'Flexible cables with sheath, 90 °C thermosetting, copper: voltage drop',
  axes: [
    { name: 'system', labels: ['dc', 'single-phase', 'three-phase'] },
    { name: 'build', labels: ['multicore', 'single-core'] },
    { name: 'component', labels: ['r', 'x', 'z'] },
    { name: 'conductorArea', unit: 'mm²', between: 'exact' },
  ],
  // biome-ignore format: r, x and z side by side, as they are printed
  columns: [
    ['dc', 'multicore', 'z'],
    ['single-phase', 'multicore', 'r'], ['single-phase', 'multicore', 'x'], ['single-phase', 'multicore', 'z'],
    ['three-phase', 'multicore', 'r'], ['three-phase', 'multicore', 'x'], ['three-phase', 'multicore', 'z'],
    ['single-phase', 'single-core', 'r'], ['single-phase', 'single-core', 'x'], ['single-phase', 'single-core', 'z'],
  ],
  rows: `
    4   13.2 13.2     - 13.2  11.1     -  11.1     -     -    -
    6    8.5  8.5     -  8.5   7.4     -   7.4     -     -    -
    10   5.1  5.1     -  5.1   4.4     -   4.4     -     -    -
    16   3.2  3.2     -  3.2   2.7     -   2.7     -     -    -
    25  2.03 2.03 0.175 2.04  1.73  0.15  1.73     -     -    -
    35     -    -     -    -  1.22  0.15  1.23  1.44  0.21 1.46
    50     -    -     -    -  0.91 0.145  0.93     1  0.21 1.02
    70     -    -     -    -  0.62  0.14  0.64  0.71   0.2 0.73
    95     -    -     -    -  0.47 0.135  0.49  0.54 0.195 0.57
    120    -    -     -    -  0.37 0.135  0.39  0.42  0.19 0.46
    150    -    -     -    -  0.29  0.13  0.32  0.34  0.19 0.39
    185    -    -     -    -  0.24  0.13  0.27  0.27  0.19 0.33
    240    -    -     -    - 0.188  0.13 0.231  0.21 0.185 0.28
    300    -    -     -    - 0.147 0.125 0.195 0.173  0.18 0.25
    400    -    -     -    -     -     -     - 0.132 0.175 0.22
    500    -    -     -    -     -     -     - 0.107  0.17  0.2
    630    -    -     -    -     -     -     - 0.085  0.17 0.19`,
  cell: 'dropRate',
  unit: 'V/(A·m)',
  per: 1000,
  printed: 'mV/A/m',
  source: /* @__PURE__ */ bs(
    'Table 4F2B',
    'one-source',
    'two-core, 25 mm²: a cable maker’s and a distributor’s table print 2.03 and 2.04, as the resistance of class 5 has it; a copy of the page of 2018 prints 1.80 and 1.85, the figures of Table 4F1B. The larger drop stands here until the standard is seen. Three-phase, 4 to 10 mm²: the maker’s table prints 11, 7.3 and 4.3',
  ),
});

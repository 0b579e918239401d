import { table } from '../../core/index.js';

/** R_1+R_2 per metre at 20 °C, copper. On-Site Guide Table I1. */
export const tableI1 = /* @__PURE__ */ table({
  id: 'on-site-guide/i1',
  title: 'R_1+R_2 per metre at 20 °C, copper',
  axes: [
    { name: 'protectiveArea', unit: 'mm²', between: 'exact' },
    { name: 'conductorArea', unit: 'mm²', between: 'exact' },
  ],
  rows: `
    protectiveArea     1   1.5   2.5    4    6    10    16    25    35    50
    1               36.2     -     -    -    -     -     -     -     -     -
    1.5             30.2  24.2     -    -    -     -     -     -     -     -
    2.5            25.51 19.51 14.82    -    -     -     -     -     -     -
    4                  - 16.71 12.02 9.22    -     -     -     -     -     -
    6                  -     - 10.49 7.69 6.16     -     -     -     -     -
    10                 -     -     - 6.44 4.91  3.66     -     -     -     -
    16                 -     -     -    - 4.23  2.98   2.3     -     -     -
    25                 -     -     -    -    - 2.557 1.877 1.454     -     -
    35                 -     -     -    -    -     - 1.674 1.251 1.048     -
    50                 -     -     -    -    -     -     - 1.114 0.911 0.774`,
  cell: 'resistancePerMetre20',
  unit: 'Ω/m',
  per: 1000,
  printed: 'mΩ/m',
  source: {
    document: 'On-Site Guide',
    clause: 'Table I1',
    provenance: 'derived',
    note: 'fourteen of the combinations seen in one text, 2.5/1.5 in two',
  },
  notes: ['Sum of the greatest resistances of IEC 60228.'],
});

import { table } from '../../../core/index.js';
import { singleCoreCapacities } from './forms.js';

/** Single-core 70 °C thermoplastic, non-armoured, copper: current-carrying capacity. BS 7671 Table 4D1A. */
export const table4D1A = /* @__PURE__ */ table(singleCoreCapacities, {
  id: 'bs7671/4d1a',
  title: 'Single-core 70 °C thermoplastic, non-armoured, copper: current-carrying capacity',
  rows: `
    1     11 10.5 13.5   12 15.5  14    -   -   -    -    -
    1.5 14.5 13.5 17.5 15.5   20  18    -   -   -    -    -
    2.5   20   18   24   21   27  25    -   -   -    -    -
    4     26   24   32   28   37  33    -   -   -    -    -
    6     34   31   41   36   47  43    -   -   -    -    -
    10    46   42   57   50   65  59    -   -   -    -    -
    16    61   56   76   68   87  79    -   -   -    -    -
    25    80   73  101   89  114 104  131 114 110  146  130
    35    99   89  125  110  141 129  162 143 137  181  162
    50   119  108  151  134  182 167  196 174 167  219  197
    70   151  136  192  171  234 214  251 225 216  281  254
    95   182  164  232  207  284 261  304 275 264  341  311
    120  210  188  269  239  330 303  352 321 308  396  362
    150  240  216  300  262  381 349  406 372 356  456  419
    185  273  245  341  296  436 400  463 427 409  521  480
    240  321  286  400  346  515 472  546 507 485  615  569
    300  367  328  458  394  594 545  629 587 561  709  659
    400    -    -  546  467  694 634  754 689 656  852  795
    500    -    -  626  533  792 723  868 789 749  982  920
    630    -    -  720  611  904 826 1005 905 855 1138 1070`,
  source: {
    clause: 'Table 4D1A',
    provenance: 'memory',
    note: 'stood in a cable maker’s rating sheet of the 16th edition (A, B, C, G up to 300 mm², trefoil up to 240 mm²) and in a page in the form of the 17th (A, B, C, F of two cables); those print 320 A for A, two cables, 240 mm², and 59 A for A, three cables, 16 mm², both slips by the power law. Columns A, B, F and G agree with the power laws of the IEC tables',
  },
  provenanceOf: {
    'A 2 enclosed': 'one-source',
    'A 3 enclosed': 'one-source',
    'B 2 enclosed': 'one-source',
    'B 3 enclosed': 'one-source',
    'C 2 flat-touching': 'one-source',
    'C 3 flat-or-trefoil': 'one-source',
    'F 2 flat-touching': 'one-source',
    'F 3 trefoil, 25 to 240': 'one-source',
    'G 3 spaced-horizontal, 25 to 300': 'one-source',
    'G 3 spaced-vertical, 25 to 300': 'one-source',
  },
});

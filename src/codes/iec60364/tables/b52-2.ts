import { table } from '../../../core/index.js';
import { enclosedCapacities } from './forms.js';

/** PVC, two loaded conductors: capacity. IEC 60364-5-52 Table B.52.2. */
export const tableB522 = /* @__PURE__ */ table(enclosedCapacities, {
  id: 'iec60364/b.52.2',
  title: 'PVC, two loaded conductors: current-carrying capacity',
  rows: `
    1.5 14.5   14 17.5 16.5 19.5  22  22   -    -    -    -   -   -   -
    2.5 19.5 18.5   24   23   27  29  28  15 14.5 18.5 17.5  21  22   -
    4     26   25   32   30   36  37  38  20 19.5   25   24  28  29   -
    6     34   32   41   38   46  46  48  26   25   32   30  36  36   -
    10    46   43   57   52   63  60  64  36   33   44   41  49  47   -
    16    61   57   76   69   85  78  83  48   44   60   54  66  61  63
    25    80   75  101   90  112  99 110  63   58   79   71  83  77  82
    35    99   92  125  111  138 119 132  77   71   97   86 103  93  98
    50   119  110  151  133  168 140 156  93   86  118  104 125 109 117
    70   151  139  192  168  213 173 192 118  108  150  131 160 135 145
    95   182  167  232  201  258 204 230 142  130  181  157 195 159 173
    120  210  192  269  232  299 231 261 164  150  210  181 226 180 200
    150  240  219  300  258  344 261 293 189  172  234  201 261 204 224
    185  273  248  341  294  392 292 331 215  195  266  230 298 228 255
    240  321  291  400  344  461 336 382 252  229  312  269 352 262 298
    300  367  334  458  394  530 379 427 289  263  358  308 406 296 336`,
  source: {
    clause: 'Table B.52.2',
    provenance: 'memory',
    note: 'columns A1 to C stood in a contractor’s reference page after the Czech issue, copper of 1.5 and 2.5 mm² also in the Polish issue of 2001, B1 in part also in an Italian engineering reference; D1 and D2 are recalled: an older issue, with one column D, prints other figures from 4 mm² up; the numbering may differ in the edition as amended in 2024; B1 of 150 to 300 mm², copper, stood in prints of BS 7671 Table 4D1A, which takes them over',
  },
  provenanceOf: {
    'copper A1': 'one-source',
    'copper A2': 'one-source',
    'copper B1': 'one-source',
    'copper B2': 'one-source',
    'copper C': 'one-source',
    'aluminium A1': 'one-source',
    'aluminium A2': 'one-source',
    'aluminium B1': 'one-source',
    'aluminium B2': 'one-source',
    'aluminium C': 'one-source',
    'copper A1, 1.5 to 2.5': 'two-sources',
    'copper A2, 1.5 to 2.5': 'two-sources',
    'copper B1, 1.5 to 4': 'two-sources',
    'copper B1, 10 to 16': 'two-sources',
    'copper B1, 150 to 300': 'derived',
    'copper B2, 1.5 to 2.5': 'two-sources',
    'copper B2, 150 to 300': 'memory',
    'copper C, 1.5 to 2.5': 'two-sources',
    'aluminium A1, 185 to 300': 'memory',
    'aluminium A2, 185 to 300': 'memory',
    'aluminium B1, 150 to 300': 'memory',
    'aluminium B2, 150 to 300': 'memory',
    'aluminium C, 185 to 300': 'memory',
  },
});

import { table } from '../../../core/index.js';
import { enclosedCapacities } from './forms.js';

/** PVC, three loaded conductors: capacity. IEC 60364-5-52 Table B.52.4. */
export const tableB524 = /* @__PURE__ */ table(enclosedCapacities, {
  id: 'iec60364/b.52.4',
  title: 'PVC, three loaded conductors: current-carrying capacity',
  rows: `
    1.5 13.5   13 15.5  15 17.5  18  19    -    -    -    -    -    -   -
    2.5   18 17.5   21  20   24  24  24   14 13.5 16.5 15.5 18.5 18.5   -
    4     24   23   28  27   32  30  33 18.5 17.5   22   21   25   24   -
    6     31   29   36  34   41  38  41   24   23   28   27   32   30   -
    10    42   39   50  46   57  50  54   32   31   39   36   44   39   -
    16    56   52   68  62   76  64  70   43   41   53   48   59   50  53
    25    73   68   89  80   96  82  92   57   53   70   62   73   64  69
    35    89   83  110  99  119  98 110   70   65   86   77   90   77  83
    50   108   99  134 118  144 116 130   84   78  104   92  110   91  99
    70   136  125  171 149  184 143 162  107   98  133  116  140  112 122
    95   164  150  207 179  223 169 193  129  118  161  139  170  132 148
    120  188  172  239 206  259 192 220  149  135  186  160  197  150 169
    150  216  196  262 225  299 217 246  170  155  204  176  227  169 189
    185  245  223  296 255  341 243 278  194  176  230  199  259  190 214
    240  286  261  346 297  403 280 320  227  207  269  232  305  218 250
    300  328  298  394 339  464 316 359  261  237  306  265  351  247 282`,
  source: {
    clause: 'Table B.52.4',
    provenance: 'memory',
    note: 'columns A1 to C stood in a contractor’s reference page after the Czech issue; B2 up to 120 mm² and C up to 35 mm², copper, also in a compressor maker’s instruction book, B1 in part also in an Italian engineering reference; D1 and D2 are recalled; the numbering may differ in the edition as amended in 2024; B1 of 150 to 300 mm², copper, stood in prints of BS 7671 Table 4D1A, which takes them over',
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
    'copper B1, 2.5 to 10': 'two-sources',
    'copper B1, 150 to 300': 'derived',
    'copper B2, 1.5 to 120': 'two-sources',
    'copper B2, 150 to 300': 'memory',
    'copper C, 2.5 to 35': 'two-sources',
    'aluminium A1, 185 to 300': 'memory',
    'aluminium A2, 185 to 300': 'memory',
    'aluminium B1, 150 to 300': 'memory',
    'aluminium B2, 150 to 300': 'memory',
    'aluminium C, 185 to 300': 'memory',
  },
});

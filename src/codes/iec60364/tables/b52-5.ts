import { table } from '../../../core/index.js';
import { enclosedCapacities } from './forms.js';

/** XLPE or EPR, three loaded conductors: capacity. IEC 60364-5-52 Table B.52.5. */
export const tableB525 = /* @__PURE__ */ table(enclosedCapacities, {
  id: 'iec60364/b.52.5',
  title: 'XLPE or EPR, three loaded conductors: current-carrying capacity',
  rows: `
    1.5  17 16.5  20 19.5  22  21  23   -   -   -   -   -   -   -
    2.5  23   22  28   26  30  28  30  19  18  22  21  24  22   -
    4    31   30  37   35  40  36  39  25  24  29  28  32  28   -
    6    40   38  48   44  52  44  49  32  31  38  35  41  35   -
    10   54   51  66   60  71  58  65  44  41  52  48  57  46   -
    16   73   68  88   80  96  75  84  58  55  71  64  76  59  64
    25   95   89 117  105 119  96 107  76  71  93  84  90  75  82
    35  117  109 144  128 147 115 129  94  87 116 103 112  90  98
    50  141  130 175  154 179 135 153 113 104 140 124 136 106 117
    70  179  164 222  194 229 167 188 142 131 179 156 174 130 144
    95  216  197 269  233 278 197 226 171 157 217 188 211 154 172
    120 249  227 312  268 322 223 257 197 180 251 216 245 174 197
    150 285  259 342  300 371 251 287 226 206 267 240 283 197 220
    185 324  295 384  340 424 281 324 256 233 300 272 323 220 250
    240 380  346 450  398 500 324 375 300 273 351 318 382 253 290
    300 435  396 514  455 576 365 419 344 313 402 364 440 286 326`,
  source: {
    clause: 'Table B.52.5',
    provenance: 'memory',
    note: 'copper partly seen, column D2 least certain; the numbering may differ in the edition as amended in 2024; what is called derived stood with these figures in prints of BS 7671 Table 4E1A or 4E4A, which takes them over',
  },
  provenanceOf: { 'copper A1': 'derived', 'copper B1': 'derived', 'copper D1': 'derived' },
});

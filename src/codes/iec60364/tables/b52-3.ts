import { table } from '../../../core/index.js';
import { enclosedCapacities } from './forms.js';

/** XLPE or EPR, two loaded conductors: capacity. IEC 60364-5-52 Table B.52.3. */
export const tableB523 = /* @__PURE__ */ table(enclosedCapacities, {
  id: 'iec60364/b.52.3',
  title: 'XLPE or EPR, two loaded conductors: current-carrying capacity',
  rows: `
    1.5  19 18.5  23  22  24  25  27   -    -   -   -   -   -   -
    2.5  26   25  31  30  33  33  35  20 19.5  25  23  26  26   -
    4    35   33  42  40  45  43  46  27   26  33  31  35  33   -
    6    45   42  54  51  58  53  58  35   33  43  40  45  42   -
    10   61   57  75  69  80  71  77  48   45  59  54  62  55   -
    16   81   76 100  91 107  91 100  64   60  79  72  84  71  76
    25  106   99 133 119 138 116 129  84   78 105  94 101  90  98
    35  131  121 164 146 171 139 155 103   96 130 115 126 108 117
    50  158  145 198 175 209 164 183 125  115 157 138 154 128 139
    70  200  183 253 221 269 203 225 158  145 200 175 198 158 170
    95  241  220 306 265 328 239 270 191  175 242 210 241 186 204
    120 278  253 354 305 382 271 306 220  201 281 242 280 211 233
    150 318  290 393 334 441 306 343 253  230 307 261 324 238 261
    185 362  329 449 384 506 343 387 288  262 351 300 371 267 296
    240 424  386 528 459 599 395 448 338  307 412 358 439 307 343
    300 486  442 603 532 693 446 502 387  352 471 415 508 346 386`,
  source: {
    clause: 'Table B.52.3',
    provenance: 'memory',
    note: 'copper partly seen, column D2 least certain; the numbering may differ in the edition as amended in 2024; what is called derived stood with these figures in prints of BS 7671 Table 4E1A or 4E4A, which takes them over',
  },
  provenanceOf: { 'copper A1': 'derived', 'copper B1': 'derived', 'copper D1': 'derived' },
});

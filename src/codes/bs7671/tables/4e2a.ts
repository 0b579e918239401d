import { table } from '../../../core/index.js';
import { multicoreCapacities } from './forms.js';

/** Multicore 90 °C thermosetting, non-armoured, copper: current-carrying capacity. BS 7671 Table 4E2A. */
export const table4E2A = /* @__PURE__ */ table(multicoreCapacities, {
  id: 'bs7671/4e2a',
  title: 'Multicore 90 °C thermosetting, non-armoured, copper: current-carrying capacity',
  rows: `
    method    A    A   B    B   C   C   E   E
    loaded    2    3   2    3   2   3   2   3
    1      14.5   13  17   15  19  17  21  18
    1.5    18.5 16.5  22 19.5  24  22  26  23
    2.5      25   22  30   26  33  30  36  32
    4        33   30  40   35  45  40  49  42
    6        42   38  51   44  58  52  63  54
    10       57   51  69   60  80  71  86  75
    16       76   68  91   80 107  96 115 100
    25       99   89 119  105 138 119 149 127
    35      121  109 146  128 171 147 185 158
    50      145  130 175  154 209 179 225 192
    70      183  164 221  194 269 229 289 246
    95      220  197 265  233 328 278 352 298
    120     253  227 305  268 382 322 410 346
    150     290  259 334  300 441 371 473 399
    185     329  295 384  340 506 424 542 456
    240     386  346 459  398 599 500 641 538
    300     442  396 532  455 693 576 741 621
    400       -    - 625  536 803 667 865 741`,
  source: {
    clause: 'Table 4E2A',
    provenance: 'memory',
    note: 'first two rows seen; the columns agree with the IEC tables',
  },
});

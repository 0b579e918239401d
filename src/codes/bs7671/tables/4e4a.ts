import { table } from '../../../core/index.js';
import { armouredCapacities } from './forms.js';

/** Multicore armoured 90 °C thermosetting, copper: current-carrying capacity. BS 7671 Table 4E4A. */
export const table4E4A = /* @__PURE__ */ table(armouredCapacities, {
  id: 'bs7671/4e4a',
  title: 'Multicore armoured 90 °C thermosetting, copper: current-carrying capacity',
  rows: `
    method   C   C   E   E   D   D
    loaded   2   3   2   3   2   3
    1.5     27  23  29  25  25  21
    2.5     36  31  39  33  33  28
    4       49  42  52  44  43  36
    6       62  53  66  56  53  44
    10      85  73  90  78  71  58
    16     110  94 115  99  91  75
    25     146 124 152 131 116  96
    35     180 154 188 162 139 115
    50     219 187 228 197 164 135
    70     279 238 291 251 203 167
    95     338 289 354 304 239 197
    120    392 335 410 353 271 223
    150    451 386 472 406 306 251
    185    515 441 539 463 343 281
    240    607 520 636 546 395 324
    300    698 599 732 628 446 365
    400    787 673 847 728   -   -`,
  source: {
    clause: 'Table 4E4A',
    provenance: 'two-sources',
    note: 'one copy prints 46 A for two cores of 4 mm² in the ground; 43 A is kept',
  },
});

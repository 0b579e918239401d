import { table } from '../../../core/index.js';
import { armouredCapacities } from './forms.js';

/** Multicore armoured 70 °C thermoplastic, copper: current-carrying capacity. BS 7671 Table 4D4A. */
export const table4D4A = /* @__PURE__ */ table(armouredCapacities, {
  id: 'bs7671/4d4a',
  title: 'Multicore armoured 70 °C thermoplastic, copper: current-carrying capacity',
  rows: `
    method   C   C   E   E   D   D
    loaded   2   3   2   3   2   3
    1.5     21  18  22  19  22  18
    2.5     28  25  31  26  29  24
    4       38  33  41  35  37  30
    6       49  42  53  45  46  38
    10      67  58  72  62  60  50
    16      89  77  97  83  78  64
    25     118 102 128 110  99  82
    35     145 125 157 135 119  98
    50     175 151 190 163 140 116
    70     222 192 241 207 173 143
    95     269 231 291 251 204 169
    120    310 267 336 290 231 192
    150    356 306 386 332 261 217
    185    405 348 439 378 292 243
    240    476 409 516 445 336 280
    300    547 469 592 510 379 316
    400    621 540 683 590   -   -`,
  source: {
    clause: 'Table 4D4A',
    provenance: 'memory',
    note: 'column D agrees with the IEC tables; C and E are only smooth',
  },
  provenanceOf: { 'C 2, 4 to 6': 'one-source' },
});

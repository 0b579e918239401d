import { table } from '../../../core/index.js';
import { armouredCapacities } from './forms.js';

/** Multicore armoured 90 °C thermosetting, aluminium: current-carrying capacity. BS 7671 Table 4J4A. */
export const table4J4A = /* @__PURE__ */ table(armouredCapacities, {
  id: 'bs7671/4j4a',
  title: 'Multicore armoured 90 °C thermosetting, aluminium: current-carrying capacity',
  rows: `
    method   C   C   E   E   D   D
    loaded   2   3   2   3   2   3
    16      82  71  85  74  71  59
    25     108  92 112  98  90  75
    35     132 113 138 120 108  90
    50     159 137 166 145 128 106
    70     201 174 211 185 158 130
    95     242 214 254 224 186 154
    120      - 249   - 264   - 174
    150      - 284   - 305   - 197
    185      - 328   - 350   - 220
    240      - 386   - 418   - 253
    300      - 441   - 488   - 286`,
  source: { clause: 'Table 4J4A', provenance: 'memory' },
});

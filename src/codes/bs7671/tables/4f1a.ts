import { table } from '../../../core/index.js';
import { flexibleCapacities } from './forms.js';

/** Flexible cables with sheath, 60 °C thermosetting, copper: current-carrying capacity. BS 7671 Table 4F1A. */
export const table4F1A = /* @__PURE__ */ table(flexibleCapacities, {
  id: 'bs7671/4f1a',
  title: 'Flexible cables with sheath, 60 °C thermosetting, copper: current-carrying capacity',
  rows: `
    build  multicore multicore single-core
    loaded         2         3           2
    4             30        26           -
    6             39        34           -
    10            51        47           -
    16            73        63           -
    25            97        83           -
    35             -       102         140
    50             -       124         175
    70             -       158         216
    95             -       192         258
    120            -       222         302
    150            -       255         347
    185            -       291         394
    240            -       343         471
    300            -       394         541
    400            -         -         644
    500            -         -         738
    630            -         -         861`,
  source: {
    clause: 'Table 4F1A',
    provenance: 'one-source',
    note: 'stood in a cable maker’s rating tables after the 17th edition, up to 95 mm² also in a distributor’s technical table',
  },
  provenanceOf: { '4 to 95': 'two-sources' },
});

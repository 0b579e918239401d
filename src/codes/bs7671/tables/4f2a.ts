import { table } from '../../../core/index.js';
import { flexibleCapacities } from './forms.js';

/** Flexible cables with sheath, 90 °C thermosetting, copper: current-carrying capacity. BS 7671 Table 4F2A. */
export const table4F2A = /* @__PURE__ */ table(flexibleCapacities, {
  id: 'bs7671/4f2a',
  title: 'Flexible cables with sheath, 90 °C thermosetting, copper: current-carrying capacity',
  rows: `
    build  multicore multicore single-core
    loaded         2         3           2
    4             42        37           -
    6             55        49           -
    10            76        66           -
    16           103        89           -
    25           136       119           -
    35             -       146         200
    50             -       177         250
    70             -       225         310
    95             -       273         369
    120            -       316         432
    150            -       363         497
    185            -       414         564
    240            -       487         673
    300            -       560         773
    400            -         -         885
    500            -         -        1017
    630            -         -        1190`,
  source: {
    clause: 'Table 4F2A',
    provenance: 'one-source',
    note: 'stood in a distributor’s technical table, most also in a cable maker’s rating tables of 2008. Single-core, 185 mm² and from 400 mm² up, the distributor prints 567, 924, 1062 and 1242 A: the lower figures of the maker’s tables stand here until the standard is seen',
  },
  provenanceOf: {
    '4 to 150': 'two-sources',
    '240': 'two-sources',
    'multicore 3, 185': 'two-sources',
    'single-core 2, 300': 'two-sources',
  },
});

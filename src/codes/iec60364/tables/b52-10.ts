import { table } from '../../../core/index.js';
import { freeAirCapacities } from './forms.js';

/** PVC, copper, free air: capacity for methods E, F and G. IEC 60364-5-52 Table B.52.10. */
export const tableB5210 = /* @__PURE__ */ table(freeAirCapacities, {
  id: 'iec60364/b.52.10',
  title: 'PVC, copper, free air: current-carrying capacity, methods E, F, G',
  rows: `
    method            E         E             F       F             F                 G               G
    loaded            2         3             2       3             3                 3               3
    formation multicore multicore flat-touching trefoil flat-touching spaced-horizontal spaced-vertical
    1.5              22      18.5             -       -             -                 -               -
    2.5              30        25             -       -             -                 -               -
    4                40        34             -       -             -                 -               -
    6                51        43             -       -             -                 -               -
    10               70        60             -       -             -                 -               -
    16               94        80             -       -             -                 -               -
    25              119       101           131     110           114               146             130
    35              148       126           162     137           143               181             162
    50              180       153           196     167           174               219             197
    70              232       196           251     216           225               281             254
    95              282       238           304     264           275               341             311
    120             328       276           352     308           321               396             362
    150             379       319           406     356           372               456             419
    185             434       364           463     409           427               521             480
    240             514       430           546     485           507               615             569
    300             593       497           629     561           587               709             659
    400               -         -           754     656           689               852             795
    500               -         -           868     749           789               982             920
    630               -         -          1005     855           905              1138            1070`,
  source: {
    clause: 'Table B.52.10',
    provenance: 'memory',
    note: 'three single-core cables in trefoil, 25 to 300 mm², stood in a compressor maker’s instruction book, which prints 659 A at 400 mm² where 656 A is recalled; the numbering may differ in the edition as amended in 2024; what is called derived stood with these figures in prints of BS 7671 Table 4D1A, which takes them over',
  },
  provenanceOf: {
    'F 2 flat-touching': 'derived',
    'F 3 trefoil, 25 to 300': 'one-source',
    'G 3 spaced-horizontal, 25 to 300': 'derived',
    'G 3 spaced-vertical, 25 to 300': 'derived',
  },
});

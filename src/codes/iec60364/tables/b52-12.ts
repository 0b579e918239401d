import { table } from '../../../core/index.js';
import { freeAirCapacities } from './forms.js';

/** XLPE or EPR, copper, free air: capacity for methods E, F and G. IEC 60364-5-52 Table B.52.12. */
export const tableB5212 = /* @__PURE__ */ table(freeAirCapacities, {
  id: 'iec60364/b.52.12',
  title: 'XLPE or EPR, copper, free air: current-carrying capacity, methods E, F, G',
  rows: `
    method            E         E             F       F             F                 G               G
    loaded            2         3             2       3             3                 3               3
    formation multicore multicore flat-touching trefoil flat-touching spaced-horizontal spaced-vertical
    1.5              26        23             -       -             -                 -               -
    2.5              36        32             -       -             -                 -               -
    4                49        42             -       -             -                 -               -
    6                63        54             -       -             -                 -               -
    10               86        75             -       -             -                 -               -
    16              115       100             -       -             -                 -               -
    25              149       127           161     135           141               182             161
    35              185       158           200     169           176               226             201
    50              225       192           242     207           216               275             246
    70              289       246           310     268           279               353             318
    95              352       298           377     328           342               430             389
    120             410       346           437     383           400               500             454
    150             473       399           504     444           464               577             527
    185             542       456           575     510           533               661             605
    240             641       538           679     607           634               781             719
    300             741       621           783     703           736               902             833
    400               -         -           940     823           868              1085            1008
    500               -         -          1083     946           998              1253            1169
    630               -         -          1254    1088          1151              1454            1362`,
  source: {
    clause: 'Table B.52.12',
    provenance: 'memory',
    note: 'three single-core cables in trefoil, 25 to 400 mm², stood in a compressor maker’s instruction book; the numbering may differ in the edition as amended in 2024; what is called derived stood with these figures in prints of BS 7671 Table 4E1A, which takes them over',
  },
  provenanceOf: {
    'F 2 flat-touching': 'derived',
    'F 3 flat-touching': 'derived',
    'F 3 trefoil': 'derived',
    'F 3 trefoil, 25 to 400': 'one-source',
    'G 3 spaced-horizontal': 'derived',
    'G 3 spaced-vertical': 'derived',
  },
});

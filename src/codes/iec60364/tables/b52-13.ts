import { table } from '../../../core/index.js';
import { freeAirCapacities } from './forms.js';

/** XLPE or EPR, aluminium, free air: capacity for methods E, F and G. IEC 60364-5-52 Table B.52.13. */
export const tableB5213 = /* @__PURE__ */ table(freeAirCapacities, {
  id: 'iec60364/b.52.13',
  title: 'XLPE or EPR, aluminium, free air: current-carrying capacity, methods E, F, G',
  rows: `
    method            E         E             F       F             F                 G               G
    loaded            2         3             2       3             3                 3               3
    formation multicore multicore flat-touching trefoil flat-touching spaced-horizontal spaced-vertical
    2.5              28        24             -       -             -                 -               -
    4                38        32             -       -             -                 -               -
    6                49        42             -       -             -                 -               -
    10               67        58             -       -             -                 -               -
    16               91        77             -       -             -                 -               -
    25              108        97           121     103           107               138             122
    35              135       120           150     129           135               172             153
    50              164       146           184     159           165               210             188
    70              211       187           237     206           215               271             244
    95              257       227           289     253           264               332             300
    120             300       263           337     296           308               387             351
    150             346       304           389     343           358               448             408
    185             397       347           447     395           413               515             470
    240             470       409           530     471           492               611             561
    300             543       471           613     547           571               708             652
    400               -         -           740     663           694               856             792
    500               -         -           856     770           806               991             921
    630               -         -           996     899           942              1154            1077`,
  source: {
    clause: 'Table B.52.13',
    provenance: 'memory',
    note: 'the numbering may differ in the edition as amended in 2024',
  },
});

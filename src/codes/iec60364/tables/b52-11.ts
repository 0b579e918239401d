import { table } from '../../../core/index.js';
import { freeAirCapacities } from './forms.js';

/** PVC, aluminium, free air: capacity for methods E, F and G. IEC 60364-5-52 Table B.52.11. */
export const tableB5211 = /* @__PURE__ */ table(freeAirCapacities, {
  id: 'iec60364/b.52.11',
  title: 'PVC, aluminium, free air: current-carrying capacity, methods E, F, G',
  rows: `
    method            E         E             F       F             F                 G               G
    loaded            2         3             2       3             3                 3               3
    formation multicore multicore flat-touching trefoil flat-touching spaced-horizontal spaced-vertical
    2.5              23      19.5             -       -             -                 -               -
    4                31        26             -       -             -                 -               -
    6                39        33             -       -             -                 -               -
    10               54        46             -       -             -                 -               -
    16               73        61             -       -             -                 -               -
    25               89        78            98      84            87               112              99
    35              111        96           122     105           109               139             124
    50              135       117           149     128           133               169             152
    70              173       150           192     166           173               217             196
    95              210       183           235     203           212               265             241
    120             244       212           273     237           247               308             282
    150             282       245           316     274           287               356             327
    185             322       280           363     315           330               407             376
    240             380       330           430     375           392               482             447
    300             439       381           497     434           455               557             519
    400               -         -           600     526           552               671             629
    500               -         -           694     610           640               775             730
    630               -         -           808     711           746               900             852`,
  source: {
    clause: 'Table B.52.11',
    provenance: 'memory',
    note: 'the numbering may differ in the edition as amended in 2024',
  },
});

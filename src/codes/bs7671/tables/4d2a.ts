import { table } from '../../../core/index.js';
import { multicoreCapacities } from './forms.js';

/** Multicore 70 °C thermoplastic, non-armoured, copper: current-carrying capacity. BS 7671 Table 4D2A. */
export const table4D2A = /* @__PURE__ */ table(multicoreCapacities, {
  id: 'bs7671/4d2a',
  title: 'Multicore 70 °C thermoplastic, non-armoured, copper: current-carrying capacity',
  rows: `
    method    A    A    B    B    C    C   E    E
    loaded    2    3    2    3    2    3   2    3
    1        11   10   13 11.5   15 13.5  17 14.5
    1.5      14   13 16.5   15 19.5 17.5  22 18.5
    2.5    18.5 17.5   23   20   27   24  30   25
    4        25   23   30   27   36   32  40   34
    6        32   29   38   34   46   41  51   43
    10       43   39   52   46   63   57  70   60
    16       57   52   69   62   85   76  94   80
    25       75   68   90   80  112   96 119  101
    35       92   83  111   99  138  119 148  126
    50      110   99  133  118  168  144 180  153
    70      139  125  168  149  213  184 232  196
    95      167  150  201  179  258  223 282  238
    120     192  172  232  206  299  259 328  276
    150     219  196  258  225  344  299 379  319
    185     248  223  294  255  392  341 434  364
    240     291  261  344  297  461  403 514  430
    300     334  298  394  339  530  464 593  497
    400       -    -  470  402  634  557 715  597`,
  source: {
    clause: 'Table 4D2A',
    provenance: 'memory',
    note: 'some cells seen; all columns equal the IEC tables B.52.2, B.52.4 and B.52.10',
  },
});

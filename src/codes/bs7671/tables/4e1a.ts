import { table } from '../../../core/index.js';
import { singleCoreCapacities } from './forms.js';

/** Single-core 90 °C thermosetting, non-armoured, copper: current-carrying capacity. BS 7671 Table 4E1A. */
export const table4E1A = /* @__PURE__ */ table(singleCoreCapacities, {
  id: 'bs7671/4e1a',
  title: 'Single-core 90 °C thermosetting, non-armoured, copper: current-carrying capacity',
  rows: `
    1    14  13  17  15   19 17.5    -    -    -    -    -
    1.5  19  17  23  20   25   23    -    -    -    -    -
    2.5  26  23  31  28   34   31    -    -    -    -    -
    4    35  31  42  37   46   41    -    -    -    -    -
    6    45  40  54  48   59   54    -    -    -    -    -
    10   61  54  75  66   81   74    -    -    -    -    -
    16   81  73 100  88  109   99    -    -    -    -    -
    25  106  95 133 117  143  130  161  141  135  182  161
    35  131 117 164 144  176  161  200  176  169  226  201
    50  158 141 198 175  228  209  242  216  207  275  246
    70  200 179 253 222  293  268  310  279  268  353  318
    95  241 216 306 269  355  326  377  342  328  430  389
    120 278 249 354 312  413  379  437  400  383  500  454
    150 318 285 393 342  476  436  504  464  444  577  527
    185 362 324 449 384  545  500  575  533  510  661  605
    240 424 380 528 450  644  590  679  634  607  781  719
    300 486 435 603 514  743  681  783  736  703  902  833
    400   -   - 683 584  868  793  940  868  823 1085 1008
    500   -   - 783 666  990  904 1083  998  946 1253 1169
    630   -   - 900 764 1130 1033 1254 1151 1088 1454 1362`,
  source: {
    clause: 'Table 4E1A',
    provenance: 'one-source',
    note: 'most columns seen in text copies; the rest recalled and in agreement with the IEC tables',
  },
});

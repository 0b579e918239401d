import { table } from '../../core/index.js';

/**
 * Operating currents of generic gG fuses as a maker of test instruments prints them for loop testing. IEC 60269-1, as
 * reproduced in a manual of a test instrument.
 */
export const ggLoopTesting = /* @__PURE__ */ table({
  id: 'bs88/gg-loop-testing',
  title: 'Operating currents of generic gG fuses for loop testing',
  axes: [
    { name: 'operatingTime', unit: 's', between: 'exact' },
    { name: 'deviceRating', unit: 'A', between: 'exact' },
  ],
  rows: `
    operatingTime   5  0.4
    6              28   47
    10             46   82
    16             65  110
    20             85  147
    25            110  183
    32            150  275
    40            190  320
    50            250  470
    63            320  550
    80            425  840
    100           580 1020`,
  cell: 'operatingCurrent',
  unit: 'A',
  source: {
    document: 'IEC 60269-1',
    clause: 'as reproduced in a manual of a test instrument',
    provenance: 'one-source',
    note: 'heavier than the figures of BS 88-2',
  },
});

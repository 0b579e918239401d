import { table } from '../../core/index.js';

/** Operating time of plug fuses at test currents. BS 1362. */
export const plugFuseWindows = /* @__PURE__ */ table({
  id: 'bs1362/operating-windows',
  title: 'Operating time of plug fuses at test currents',
  axes: [
    { name: 'edge', labels: ['least', 'most'] },
    { name: 'deviceRating', unit: 'A', between: 'exact' },
    { name: 'faultCurrent', unit: 'A', between: 'exact' },
  ],
  rows: `
    edge         least least most most
    deviceRating     3    13    3   13
    9             0.02     -   80    -
    20               -     -  0.1    -
    30               -     1 0.03  400
    50               -   0.1    -   20
    100              -  0.01    -  0.2`,
  cell: 'operatingTime',
  unit: 's',
  source: { document: 'BS 1362', edition: '1973', clause: 'time-current characteristics', provenance: 'one-source' },
  notes: ['For verification; automatic disconnection is judged by Tables 41.2 and 41.4.'],
});

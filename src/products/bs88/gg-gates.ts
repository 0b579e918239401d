import { table } from '../../core/index.js';

/** Gates of the time-current zone of gG fuses. IEC 60269-1 Table 3. */
export const ggGates = /* @__PURE__ */ table({
  id: 'bs88/gg-gates',
  title: 'Gates of the time-current zone of gG fuses',
  axes: [
    { name: 'gate', labels: ['least-10s', 'most-5s', 'least-0.1s', 'most-0.1s'] },
    { name: 'deviceRating', unit: 'A', between: 'exact' },
  ],
  rows: `
    gate least-10s most-5s least-0.1s most-0.1s
    16          33      65         85       150
    20          42      85        110       200
    25          52     110        150       260
    32          75     150        200       350
    40          95     190        260       450
    50         125     250        350       610
    63         160     320        450       820
    80         215     425        610      1100
    100        290     580        820      1450
    125        355     715       1100      1910
    160        460     950       1450      2590
    200        610    1250       1910      3420
    250        750    1650       2590      4500
    315       1050    2200       3420      6000
    400       1420    2840       4500      8060
    500       1780    3800       6000     10600
    630       2200    5100       8060     14140
    800       3060    7000      10600     19000
    1000      4000    9500      14140     24000
    1250      5000   13000      19000     35000`,
  cell: 'operatingCurrent',
  unit: 'A',
  source: {
    document: 'IEC 60269-1',
    clause: 'Table 3',
    provenance: 'memory',
    note: 'the 5 s column from 16 to 100 A seen in one text',
  },
  provenanceOf: { 'most-5s': 'memory' },
  notes: ['least-10s and least-0.1s: must not melt within the time. most-5s and most-0.1s: must melt within the time.'],
});

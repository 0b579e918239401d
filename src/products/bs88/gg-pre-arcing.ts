import { table } from '../../core/index.js';

/** Pre-arcing energy of gG fuse-links at 0.01 s. IEC 60269-1 Table 7. */
export const ggPreArcing = /* @__PURE__ */ table({
  id: 'bs88/gg-pre-arcing',
  title: 'Pre-arcing energy of gG fuse-links at 0.01 s',
  axes: [
    { name: 'edge', labels: ['least', 'most'] },
    { name: 'deviceRating', unit: 'A', between: 'exact' },
  ],
  rows: `
    edge    least     most
    16        300     1000
    20        500     1800
    25       1000     3000
    32       1800     5000
    40       3000     9000
    50       5000    16000
    63       9000    27000
    80      16000    46000
    100     27000    86000
    125     46000   140000
    160     86000   250000
    200    140000   400000
    250    250000   760000
    315    400000  1300000
    400    760000  2250000
    500   1300000  3800000
    630   2250000  7500000
    800   3800000 13600000
    1000  7840000 25000000
    1250 13700000 47000000`,
  cell: 'letThrough',
  unit: 'A²s',
  source: { document: 'IEC 60269-1', clause: 'Table 7', provenance: 'memory' },
  notes: ['The total operating energy is larger and a matter of the maker.'],
});

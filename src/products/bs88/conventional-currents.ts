import { table } from '../../core/index.js';

/**
 * Conventional non-fusing and fusing currents of gG fuses in multiples of the rated current. IEC 60269. IEC 60269-1,
 * -2, Table 2.
 */
export const ggConventional = /* @__PURE__ */ table({
  id: 'bs88/conventional-currents',
  title: 'Conventional currents of gG fuses, multiple of the rated current',
  axes: [
    { name: 'edge', labels: ['non-fusing', 'fusing'] },
    { name: 'deviceRating', unit: 'A', between: 'next-up', allowedBy: 'bands of rated current', below: 'first' },
  ],
  rows: `
    edge  non-fusing fusing
    4            1.5    2.1
    15.99        1.5    1.9
    63          1.25    1.6
    160         1.25    1.6
    400         1.25    1.6
    1250        1.25    1.6`,
  cell: 'deviceMultiple',
  unit: '1',
  source: { document: 'IEC 60269-1, -2', clause: 'Table 2', provenance: 'memory' },
  notes: ['Ratings from 16 A on have the smaller factors: the row of 15.99 A stands for everything below 16 A.'],
});

/** Conventional times of gG fuses. IEC 60269. IEC 60269-1, Table 2. */
export const ggConventionalTimes = /* @__PURE__ */ table({
  id: 'bs88/conventional-times',
  title: 'Conventional times of gG fuses',
  axes: [
    { name: 'edge', labels: ['fusing'] },
    { name: 'deviceRating', unit: 'A', between: 'next-up', allowedBy: 'bands of rated current', below: 'first' },
  ],
  rows: `
    edge  fusing
    4       3600
    15.99   3600
    63      3600
    160     7200
    400    10800
    1250   14400`,
  cell: 'operatingTime',
  unit: 's',
  source: { document: 'IEC 60269-1', clause: 'Table 2', provenance: 'one-source', note: 'above 160 A recalled' },
});

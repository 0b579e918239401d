import { table } from '../../core/index.js';

/** Simultaneity of dwellings on one riser by their number. NF C 14-100. */
export const riserSimultaneity = /* @__PURE__ */ table({
  id: 'nfc14100/riser',
  title: 'Simultaneity of dwellings on one riser',
  axes: [
    { name: 'supply', labels: ['230/400 V'] },
    {
      name: 'dwellingBand',
      labels: ['2-4', '5-9', '10-14', '15-19', '20-24', '25-29', '30-34', '35-39', '40-49', '50+'],
    },
  ],
  columns: [['230/400 V']],
  rows: [
    ['2-4', 1],
    ['5-9', 0.78],
    ['10-14', 0.63],
    ['15-19', 0.53],
    ['20-24', 0.49],
    ['25-29', 0.46],
    ['30-34', 0.44],
    ['35-39', 0.42],
    ['40-49', 0.41],
    ['50+', 0.4],
  ],
  cell: 'simultaneityFactor',
  unit: '1',
  source: {
    document: 'NF C 14-100',
    clause: 'as reproduced in an installation handbook, Table A10',
    provenance: 'one-source',
    note: 'two digits of the scan repaired, recalled figures agree',
  },
  notes: ['With storage heating 0.8 whatever the number (one text).'],
});

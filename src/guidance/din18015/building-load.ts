import { table } from '../../core/index.js';

/** Load of a residential building by its number of dwellings, as a technical dictionary reads the curves. DIN 18015-1 Annex A. */
export const buildingLoad = /* @__PURE__ */ table({
  id: 'din18015/a1',
  title: 'Load of a residential building by number of dwellings',
  axes: [
    { name: 'waterHeating', labels: ['not-electric', 'electric'] },
    { name: 'dwellings', unit: '1', between: 'exact' },
  ],
  columns: [['not-electric'], ['electric']],
  rows: [
    [1, 14.5, 34],
    [2, 24, 52],
    [3, 32, 64],
    [4, 37, 73],
    [5, 41, 81],
    [6, 44, 87],
    [7, 47, 93],
    [8, 50, 98],
    [9, 53, 103],
    [10, 55, 107],
  ],
  cell: 'groupPower',
  unit: 'VA',
  per: 0.001,
  printed: 'kVA',
  source: { document: 'DIN 18015-1', clause: 'Annex A, Figure A.1', provenance: 'one-source', note: 'read off curves' },
  notes: ['Another text reads the curves differently in places (buildingLoadSecondReading).'],
});

/** Load of a residential building by its number of dwellings, as an encyclopedia reads the curves. DIN 18015-1 Annex A. */
export const buildingLoadSecondReading = /* @__PURE__ */ table({
  id: 'din18015/a1-second-reading',
  title: 'Load of a residential building by number of dwellings, second reading',
  axes: [
    { name: 'waterHeating', labels: ['not-electric', 'electric'] },
    { name: 'dwellings', unit: '1', between: 'exact' },
  ],
  columns: [['not-electric'], ['electric']],
  rows: [
    [1, 15, 34],
    [3, 30, null],
    [10, 55, null],
    [24, null, 140],
    [100, 110, null],
  ],
  cell: 'groupPower',
  unit: 'VA',
  per: 0.001,
  printed: 'kVA',
  source: {
    document: 'DIN 18015-1',
    clause: 'Annex A, Figure A.1',
    provenance: 'one-source',
    note: '"about"; read off curves',
  },
});

import { table } from '../../core/index.js';

/** Heights of controls and socket-outlets in buildings. Approved Document M, 4.30. */
export const buildingHeights = /* @__PURE__ */ table({
  id: 'approved-document-m/heights',
  title: 'Heights of controls and socket-outlets in buildings',
  axes: [
    { name: 'end', labels: ['least', 'greatest'] },
    { name: 'part', labels: ['controls', 'socket-outlet'] },
  ],
  columns: [['least'], ['greatest']],
  rows: [
    ['controls', 750, 1200],
    ['socket-outlet', 400, 1000],
  ],
  cell: 'mountingHeight',
  unit: 'mm',
  source: { document: 'Approved Document M', clause: '4.30', provenance: 'two-sources' },
});

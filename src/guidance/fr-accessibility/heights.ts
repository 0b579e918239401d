import { table } from '../../core/index.js';

/** Heights of accessible equipment in France. Order of 1 August 2006. */
export const frenchHeights = /* @__PURE__ */ table({
  id: 'fr-accessibility/heights',
  title: 'Heights of accessible equipment in France',
  axes: [
    { name: 'end', labels: ['least', 'greatest'] },
    { name: 'part', labels: ['outlet'] },
  ],
  columns: [['least'], ['greatest']],
  rows: [['outlet', 900, 1300]],
  cell: 'mountingHeight',
  unit: 'mm',
  source: { document: 'French order of 1 August 2006', clause: 'accessible equipment', provenance: 'one-source' },
});

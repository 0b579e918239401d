import { table } from '../../core/index.js';

/** Heights of accessible charge points. PAS 1899. */
export const accessibleHeights = /* @__PURE__ */ table({
  id: 'pas1899/heights',
  title: 'Heights of accessible charge points',
  axes: [
    { name: 'end', labels: ['least', 'greatest'] },
    { name: 'part', labels: ['outlet', 'controls', 'display'] },
  ],
  columns: [['least'], ['greatest']],
  rows: [
    ['outlet', 750, 1000],
    ['controls', 800, 1000],
    ['display', 1100, 1300],
  ],
  cell: 'mountingHeight',
  unit: 'mm',
  source: {
    document: 'PAS 1899',
    edition: '2022',
    clause: '5.2 of the draft',
    provenance: 'one-source',
    note: 'figures of the draft; see the published text',
  },
});

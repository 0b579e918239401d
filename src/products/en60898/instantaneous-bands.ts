import { table } from '../../core/index.js';

/** Band of the instantaneous trip in multiples of the rated current. EN 60898-1 Table 7. */
export const instantaneousBands = /* @__PURE__ */ table({
  id: 'en60898/instantaneous-bands',
  title: 'Instantaneous trip of circuit-breakers and RCBOs, multiple of the rated current',
  axes: [
    { name: 'edge', labels: ['lower', 'upper'] },
    { name: 'type', labels: ['B', 'C', 'D'] },
  ],
  rows: [
    ['B', 3, 5],
    ['C', 5, 10],
    ['D', 10, 20],
  ],
  cell: 'deviceMultiple',
  unit: '1',
  source: { document: 'EN 60898-1', clause: 'Table 7', provenance: 'two-sources' },
  notes: [
    'At the lower edge it may trip only after 0.1 s, at the upper edge it must trip in less than 0.1 s. The same limits hold for RCBOs to EN 61009-1.',
  ],
});

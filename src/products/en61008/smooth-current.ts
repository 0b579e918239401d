import { table } from '../../core/index.js';

/**
 * Smooth direct residual current with which a device of a type still works. EN 61008-1, EN 62423. EN 61008-1; EN
 * 61009-1; EN 62423, types.
 */
export const smoothCurrentWithstand = /* @__PURE__ */ table({
  id: 'en61008/smooth-current',
  title: 'Smooth direct residual current with which a residual current device works',
  axes: [{ name: 'residualType', labels: ['AC', 'A', 'F', 'B'] }],
  rows: [
    ['AC', 0],
    ['A', 6],
    ['F', 10],
    ['B', null],
  ],
  cell: 'smoothResidualWithstand',
  unit: 'A',
  per: 1000,
  printed: 'mA',
  source: { document: 'EN 61008-1; EN 61009-1; EN 62423', clause: 'types', provenance: 'two-sources' },
  notes: ['Type B detects smooth direct current; it has no such limit below its operating current.'],
});

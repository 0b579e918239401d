import { table } from '../../core/index.js';

/**
 * Bands of residual current in which a device operates on a slowly rising current. EN 61008-1, EN 62423. EN 61008-1;
 * EN 62423, operating current.
 */
export const residualOperatingBands = /* @__PURE__ */ table({
  id: 'en61008/operating-bands',
  title: 'Band of operating current of residual current devices, over the rated residual current',
  axes: [
    { name: 'end', labels: ['lower', 'upper'] },
    { name: 'residualType', labels: ['AC', 'A, above 10 mA', 'A, up to 10 mA', 'B'] },
  ],
  rows: [
    ['AC', 0.5, 1],
    ['A, above 10 mA', 0.35, 1.4],
    ['A, up to 10 mA', 0.35, 2],
    ['B', 0.5, 2],
  ],
  cell: 'bandLimit',
  unit: '1',
  source: { document: 'EN 61008-1; EN 62423', clause: 'operating current', provenance: 'two-sources' },
  provenanceOf: { B: 'one-source' },
  notes: ['Type A: pulsating direct current. Type B: smooth direct current.'],
});

import { table } from '../../core/index.js';

/**
 * Conventional fusing current of household cartridge and rewirable fuses in multiples of the rated current. BS 1361,
 * BS 3036. BS 1361; BS 3036, fusing factor.
 */
export const householdFuseConventional = /* @__PURE__ */ table({
  id: 'bs1361/conventional-currents',
  title: 'Conventional fusing current of household cartridge and rewirable fuses, multiple of the rated current',
  axes: [
    { name: 'edge', labels: ['fusing'] },
    { name: 'device', labels: ['BS 1361', 'BS 3036'] },
  ],
  rows: [
    ['BS 1361', 1.5],
    ['BS 3036', 2],
  ],
  cell: 'deviceMultiple',
  unit: '1',
  source: { document: 'BS 1361; BS 3036', clause: 'fusing factor', provenance: 'memory' },
});

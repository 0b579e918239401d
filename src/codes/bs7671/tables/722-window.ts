import { table } from '../../../core/index.js';

/** Limits of the line-neutral voltage outside which a device disconnects within 5 s. BS 7671 722.411.4.1 (iv). */
export const lineNeutralWindow = /* @__PURE__ */ table({
  id: 'bs7671/722.411.4.1-window',
  title: 'Window of the line-neutral voltage, single-phase installations',
  axes: [{ name: 'end', labels: ['lower', 'upper'] }],
  rows: [
    ['lower', 207],
    ['upper', 253],
  ],
  cell: 'windowLimit',
  unit: 'V',
  source: {
    document: 'BS 7671',
    edition: '2018+A1:2020',
    clause: '722.411.4.1 (iv)',
    provenance: 'two-sources',
  },
  notes: ['The upper end is the largest permitted voltage of the supply: expect lock-outs where that is high.'],
});

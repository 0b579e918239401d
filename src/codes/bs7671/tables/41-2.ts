import { table } from '../../../core/index.js';

/** Largest earth fault loop impedance for fuses, 0.4 s, 230 V, as printed in 2008 and 2011. BS 7671 Table 41.2. */
export const table412 = /* @__PURE__ */ table({
  id: 'bs7671/41.2',
  title: 'Largest earth fault loop impedance for fuses, 0.4 s, 230 V, without voltage factor',
  axes: [
    { name: 'printed', labels: ['2008', '2011'] },
    { name: 'device', labels: ['BS 88-2.2', 'BS 88-2', 'BS 88-3', 'BS 1361', 'BS 1362', 'BS 3036'] },
    { name: 'deviceRating', unit: 'A', between: 'exact' },
  ],
  columns: [
    ['2008', 'BS 88-2.2'],
    ['2008', 'BS 1361'],
    ['2008', 'BS 3036'],
    ['2008', 'BS 1362'],
    ['2011', 'BS 88-2'],
    ['2011', 'BS 88-3'],
    ['2011', 'BS 3036'],
    ['2011', 'BS 1362'],
  ],
  rows: [
    [3, null, null, null, 16.4, null, null, null, 16.4],
    [5, null, 10.45, 9.58, null, null, 10.45, 9.58, null],
    [6, 8.52, null, null, null, 8.21, null, null, null],
    [10, 5.11, null, null, null, 4.89, null, null, null],
    [13, null, null, null, 2.42, null, null, null, 2.42],
    [15, null, 3.28, 2.55, null, null, null, 2.55, null],
    [16, 2.7, null, null, null, 2.56, 2.42, null, null],
    [20, 1.77, 1.7, 1.77, null, 1.77, 2.04, 1.77, null],
    [25, 1.44, null, null, null, 1.35, null, null, null],
    [30, null, 1.15, 1.09, null, null, null, 1.09, null],
    [32, 1.04, null, null, null, 1.04, 0.96, null, null],
  ],
  cell: 'loopImpedanceLimit',
  unit: 'Ω',
  source: { document: 'BS 7671', edition: '2008 and 2008+A1:2011', clause: 'Table 41.2', provenance: 'two-sources' },
  provenanceOf: { '2011 BS 88-3': 'one-source' },
  notes: [
    'Without voltage factor. Printed figures with C_min 0.95 (from Amendment 3:2015 on) were not available: they are computed from the operating current.',
    'BS 1361 and BS 88-2.2 were withdrawn in 2010; they are in service. The figures of 2011 were seen multiplied by 0.8 and divided back.',
  ],
});

import { table } from '../../../core/index.js';

/** Flexible cables with sheath, 60 °C thermosetting, copper: current-carrying capacity. BS 7671 Table 4F1A. */
export const table4F1A = /* @__PURE__ */ table({
  id: 'bs7671/4f1a',
  title: 'Flexible cables with sheath, 60 °C thermosetting, copper: current-carrying capacity',
  axes: [
    { name: 'build', labels: ['multicore', 'single-core'] },
    { name: 'loaded', labels: ['2', '3'] },
    { name: 'conductorArea', unit: 'mm²', between: 'exact' },
  ],
  columns: [
    ['multicore', '2'],
    ['multicore', '3'],
    ['single-core', '2'],
  ],
  rows: [
    [4, 30, 26, null],
    [6, 39, 34, null],
    [10, 51, 47, null],
    [16, 73, 63, null],
    [25, 97, 83, null],
    [35, null, 102, 140],
    [50, null, 124, 175],
    [70, null, 158, 216],
    [95, null, 192, 258],
    [120, null, 222, 302],
    [150, null, 255, 347],
    [185, null, 291, 394],
    [240, null, 343, 471],
    [300, null, 394, 541],
    [400, null, null, 644],
    [500, null, null, 738],
    [630, null, null, 861],
  ],
  cell: 'tabulatedCapacity',
  unit: 'A',
  source: {
    document: 'BS 7671',
    edition: '2018+A2:2022',
    clause: 'Table 4F1A',
    provenance: 'memory',
    note: 'partly seen',
  },
});

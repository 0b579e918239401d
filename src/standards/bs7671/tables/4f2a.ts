import { table } from '../../../core/index.js';

/** Flexible cables with sheath, 90 °C thermosetting, copper: current-carrying capacity. BS 7671 Table 4F2A. */
export const table4F2A = /* @__PURE__ */ table({
  id: 'bs7671/4f2a',
  title: 'Flexible cables with sheath, 90 °C thermosetting, copper: current-carrying capacity',
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
    [4, 42, 37, null],
    [6, 55, 49, null],
    [10, 76, 66, null],
    [16, 103, 89, null],
    [25, 136, 119, null],
    [35, null, 146, 200],
    [50, null, 177, 250],
    [70, null, 225, 310],
    [95, null, 273, 369],
    [120, null, 316, 432],
    [150, null, 363, 497],
    [185, null, 414, 567],
    [240, null, 487, 673],
    [300, null, 560, 773],
    [400, null, null, 924],
    [500, null, null, 1062],
    [630, null, null, 1242],
  ],
  cell: 'tabulatedCapacity',
  unit: 'A',
  source: {
    document: 'BS 7671',
    edition: '2018+A2:2022',
    clause: 'Table 4F2A',
    provenance: 'memory',
    note: 'partly seen; 185 mm² single-core: 567 A kept, another copy prints 564 A',
  },
});

import { table } from '../../../core/index.js';

/** Multicore armoured 90 °C thermosetting, aluminium: current-carrying capacity. BS 7671 Table 4J4A. */
export const table4J4A = /* @__PURE__ */ table({
  id: 'bs7671/4j4a',
  title: 'Multicore armoured 90 °C thermosetting, aluminium: current-carrying capacity',
  axes: [
    { name: 'method', labels: ['C', 'D', 'E'] },
    { name: 'loaded', labels: ['2', '3'] },
    { name: 'conductorArea', unit: 'mm²', between: 'exact' },
  ],
  columns: [
    ['C', '2'],
    ['C', '3'],
    ['E', '2'],
    ['E', '3'],
    ['D', '2'],
    ['D', '3'],
  ],
  rows: [
    [16, 82, 71, 85, 74, 71, 59],
    [25, 108, 92, 112, 98, 90, 75],
    [35, 132, 113, 138, 120, 108, 90],
    [50, 159, 137, 166, 145, 128, 106],
    [70, 201, 174, 211, 185, 158, 130],
    [95, 242, 214, 254, 224, 186, 154],
    [120, null, 249, null, 264, null, 174],
    [150, null, 284, null, 305, null, 197],
    [185, null, 328, null, 350, null, 220],
    [240, null, 386, null, 418, null, 253],
    [300, null, 441, null, 488, null, 286],
  ],
  cell: 'tabulatedCapacity',
  unit: 'A',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: 'Table 4J4A', provenance: 'memory' },
  notes: [
    '30 °C air, 20 °C ground for method D.',
    'Two loaded: two-core cable, with or without protective conductor. Three loaded: three-, four- or five-core cable.',
  ],
});

import { table } from '../../../core/index.js';
import { bs } from '../source.js';

/** Flat twin (and three-core) cable with bare protective conductor, 70 °C thermoplastic, copper: capacity. BS 7671 Table 4D5. */
export const table4D5 = /* @__PURE__ */ table({
  id: 'bs7671/4d5',
  title: 'Flat twin and earth, 70 °C thermoplastic, copper: current-carrying capacity',
  axes: [
    { name: 'method', labels: ['100', '101', '102', '103', 'C', 'A'] },
    { name: 'conductorArea', unit: 'mm²', between: 'exact' },
  ],
  rows: `
    method 100  101 102  103  C    A
    1       13 10.5  13    8 16 11.5
    1.5     16   13  16   10 20 14.5
    2.5     21   17  21 13.5 27   20
    4       27   22  27 17.5 37   26
    6       34   27  35 23.5 47   32
    10      45   36  47   32 64   44
    16      57   46  63 42.5 85   57`,
  cell: 'tabulatedCapacity',
  unit: 'A',
  source: /* @__PURE__ */ bs(
    'Table 4D5',
    'memory',
    'rows 1 and 1.5 mm² and eleven further cells seen in one text each, the rest recalled',
  ),
  provenanceOf: { '1': 'one-source', '1.5': 'one-source' },
  notes: [
    'Single-phase, 30 °C ambient, 70 °C conductor.',
    'Not column C of Table 4D1A, which is for single-core cable.',
  ],
});

/** Flat twin (and three-core) cable with bare protective conductor: voltage drop. BS 7671 Table 4D5. */
export const table4D5Drop = /* @__PURE__ */ table({
  id: 'bs7671/4d5-drop',
  title: 'Flat twin and earth, 70 °C thermoplastic, copper: voltage drop',
  axes: [
    { name: 'system', labels: ['single-phase'] },
    { name: 'component', labels: ['z'] },
    { name: 'conductorArea', unit: 'mm²', between: 'exact' },
  ],
  rows: `
    system    single-phase
    component            z
    1                   44
    1.5                 29
    2.5                 18
    4                   11
    6                  7.3
    10                 4.4
    16                 2.8`,
  cell: 'dropRate',
  unit: 'V/(A·m)',
  per: 1000,
  printed: 'mV/A/m',
  source: /* @__PURE__ */ bs('Table 4D5', 'memory'),
  provenanceOf: { '1': 'one-source', '1.5': 'one-source' },
});

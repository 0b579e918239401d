import { table } from '../../../core/index.js';

/** Factor k of steel conduit, ducting and trunking. BS 7671 Table 54.5. */
export const table545 = /* @__PURE__ */ table({
  id: 'bs7671/54.5',
  title: 'Factor k of steel conduit, ducting and trunking',
  axes: [
    { name: 'metal', labels: ['steel'] },
    {
      name: 'insulation',
      labels: ['70 °C thermoplastic', '90 °C thermoplastic', '90 °C thermosetting', '85 °C thermosetting (rubber)'],
    },
  ],
  columns: [['steel']],
  rows: [
    ['70 °C thermoplastic', 47],
    ['90 °C thermoplastic', 44],
    ['90 °C thermosetting', 58],
    ['85 °C thermosetting (rubber)', 54],
  ],
  cell: 'adiabaticFactor',
  unit: 'A·√s/mm²',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: 'Table 54.5', provenance: 'memory' },
  provenanceOf: {
    'steel, 70 °C thermoplastic': 'one-source',
    'steel, 90 °C thermoplastic': 'one-source',
    'steel, 90 °C thermosetting': 'one-source',
  },
});

/** Initial temperature of steel conduit, ducting and trunking. BS 7671 Table 54.5. */
export const table545Initial = /* @__PURE__ */ table({
  id: 'bs7671/54.5-initial',
  title: 'Initial temperature of steel conduit, ducting and trunking',
  axes: [
    { name: 'metal', labels: ['steel'] },
    {
      name: 'insulation',
      labels: ['70 °C thermoplastic', '90 °C thermoplastic', '90 °C thermosetting', '85 °C thermosetting (rubber)'],
    },
  ],
  columns: [['steel']],
  rows: [
    ['70 °C thermoplastic', 50],
    ['90 °C thermoplastic', 60],
    ['90 °C thermosetting', 60],
    ['85 °C thermosetting (rubber)', 58],
  ],
  cell: 'initialTemperature',
  unit: '°C',
  source: {
    document: 'BS 7671',
    edition: '2018+A2:2022',
    clause: 'Table 54.5',
    provenance: 'memory',
    note: 'each pair of temperatures reproduces the printed k',
  },
});

/** Final temperature of steel conduit, ducting and trunking. BS 7671 Table 54.5. */
export const table545Final = /* @__PURE__ */ table({
  id: 'bs7671/54.5-final',
  title: 'Final temperature of steel conduit, ducting and trunking',
  axes: [
    { name: 'metal', labels: ['steel'] },
    {
      name: 'insulation',
      labels: ['70 °C thermoplastic', '90 °C thermoplastic', '90 °C thermosetting', '85 °C thermosetting (rubber)'],
    },
  ],
  columns: [['steel']],
  rows: [
    ['70 °C thermoplastic', 160],
    ['90 °C thermoplastic', 160],
    ['90 °C thermosetting', 250],
    ['85 °C thermosetting (rubber)', 220],
  ],
  cell: 'finalTemperature',
  unit: '°C',
  source: {
    document: 'BS 7671',
    edition: '2018+A2:2022',
    clause: 'Table 54.5',
    provenance: 'memory',
    note: 'each pair of temperatures reproduces the printed k',
  },
});

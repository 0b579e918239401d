import { table } from '../../../core/index.js';

/** Factor k of live conductors. BS 7671 Table 43.1. */
export const table431 = /* @__PURE__ */ table({
  id: 'bs7671/43.1',
  title: 'Factor k of live conductors',
  axes: [
    { name: 'metal', labels: ['copper', 'aluminium'] },
    {
      name: 'insulation',
      labels: [
        '70 °C thermoplastic, up to 300 mm²',
        '70 °C thermoplastic, above 300 mm²',
        '90 °C thermoplastic, up to 300 mm²',
        '90 °C thermoplastic, above 300 mm²',
        '60 °C thermosetting (rubber)',
        '85 °C thermosetting (rubber)',
        '90 °C thermosetting (XLPE)',
        'mineral, thermoplastic covered or exposed to touch',
        'mineral, bare and not exposed to touch',
      ],
    },
  ],
  columns: [['copper'], ['aluminium']],
  rows: [
    ['70 °C thermoplastic, up to 300 mm²', 115, 76],
    ['70 °C thermoplastic, above 300 mm²', 103, 68],
    ['90 °C thermoplastic, up to 300 mm²', 100, 66],
    ['90 °C thermoplastic, above 300 mm²', 86, 57],
    ['60 °C thermosetting (rubber)', 141, 93],
    ['85 °C thermosetting (rubber)', 134, 89],
    ['90 °C thermosetting (XLPE)', 143, 94],
    ['mineral, thermoplastic covered or exposed to touch', 115, null],
    ['mineral, bare and not exposed to touch', 135, null],
  ],
  cell: 'adiabaticFactor',
  unit: 'A·√s/mm²',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: 'Table 43.1', provenance: 'memory' },
  provenanceOf: {
    'copper, 70 °C thermoplastic, up to 300 mm²': 'two-sources',
    'copper, 70 °C thermoplastic, above 300 mm²': 'one-source',
    'copper, 90 °C thermoplastic, up to 300 mm²': 'one-source',
    'copper, 90 °C thermoplastic, above 300 mm²': 'one-source',
    'copper, 60 °C thermosetting (rubber)': 'one-source',
    'copper, 90 °C thermosetting (XLPE)': 'two-sources',
    'copper, mineral, thermoplastic covered or exposed to touch': 'one-source',
    'copper, mineral, bare and not exposed to touch': 'one-source',
    'aluminium, 70 °C thermoplastic, up to 300 mm²': 'one-source',
    'aluminium, 90 °C thermosetting (XLPE)': 'one-source',
  },
});

/** Initial temperature of live conductors. BS 7671 Table 43.1. */
export const table431Initial = /* @__PURE__ */ table({
  id: 'bs7671/43.1-initial',
  title: 'Initial temperature of live conductors',
  axes: [
    { name: 'metal', labels: ['copper', 'aluminium'] },
    {
      name: 'insulation',
      labels: [
        '70 °C thermoplastic, up to 300 mm²',
        '70 °C thermoplastic, above 300 mm²',
        '90 °C thermoplastic, up to 300 mm²',
        '90 °C thermoplastic, above 300 mm²',
        '60 °C thermosetting (rubber)',
        '85 °C thermosetting (rubber)',
        '90 °C thermosetting (XLPE)',
        'mineral, thermoplastic covered or exposed to touch',
        'mineral, bare and not exposed to touch',
      ],
    },
  ],
  columns: [['copper'], ['aluminium']],
  rows: [
    ['70 °C thermoplastic, up to 300 mm²', 70, 70],
    ['70 °C thermoplastic, above 300 mm²', 70, 70],
    ['90 °C thermoplastic, up to 300 mm²', 90, 90],
    ['90 °C thermoplastic, above 300 mm²', 90, 90],
    ['60 °C thermosetting (rubber)', 60, 60],
    ['85 °C thermosetting (rubber)', 85, 85],
    ['90 °C thermosetting (XLPE)', 90, 90],
    ['mineral, thermoplastic covered or exposed to touch', 70, null],
    ['mineral, bare and not exposed to touch', 105, null],
  ],
  cell: 'initialTemperature',
  unit: '°C',
  source: {
    document: 'BS 7671',
    edition: '2018+A2:2022',
    clause: 'Table 43.1',
    provenance: 'memory',
    note: 'each pair of temperatures reproduces the printed k',
  },
});

/** Final temperature of live conductors. BS 7671 Table 43.1. */
export const table431Final = /* @__PURE__ */ table({
  id: 'bs7671/43.1-final',
  title: 'Final temperature of live conductors',
  axes: [
    { name: 'metal', labels: ['copper', 'aluminium'] },
    {
      name: 'insulation',
      labels: [
        '70 °C thermoplastic, up to 300 mm²',
        '70 °C thermoplastic, above 300 mm²',
        '90 °C thermoplastic, up to 300 mm²',
        '90 °C thermoplastic, above 300 mm²',
        '60 °C thermosetting (rubber)',
        '85 °C thermosetting (rubber)',
        '90 °C thermosetting (XLPE)',
        'mineral, thermoplastic covered or exposed to touch',
        'mineral, bare and not exposed to touch',
      ],
    },
  ],
  columns: [['copper'], ['aluminium']],
  rows: [
    ['70 °C thermoplastic, up to 300 mm²', 160, 160],
    ['70 °C thermoplastic, above 300 mm²', 140, 140],
    ['90 °C thermoplastic, up to 300 mm²', 160, 160],
    ['90 °C thermoplastic, above 300 mm²', 140, 140],
    ['60 °C thermosetting (rubber)', 200, 200],
    ['85 °C thermosetting (rubber)', 220, 220],
    ['90 °C thermosetting (XLPE)', 250, 250],
    ['mineral, thermoplastic covered or exposed to touch', 160, null],
    ['mineral, bare and not exposed to touch', 250, null],
  ],
  cell: 'finalTemperature',
  unit: '°C',
  source: {
    document: 'BS 7671',
    edition: '2018+A2:2022',
    clause: 'Table 43.1',
    provenance: 'memory',
    note: 'each pair of temperatures reproduces the printed k',
  },
});

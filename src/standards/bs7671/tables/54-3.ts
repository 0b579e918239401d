import { table } from '../../../core/index.js';

/** Factor k of protective conductors that are a core of a cable or bunched with cables. BS 7671 Table 54.3. */
export const table543 = /* @__PURE__ */ table({
  id: 'bs7671/54.3',
  title: 'Factor k of protective conductors that are a core of a cable or bunched with cables',
  axes: [
    { name: 'metal', labels: ['copper', 'aluminium'] },
    {
      name: 'insulation',
      labels: [
        '70 °C thermoplastic, up to 300 mm²',
        '70 °C thermoplastic, above 300 mm²',
        '90 °C thermoplastic, up to 300 mm²',
        '90 °C thermoplastic, above 300 mm²',
        '90 °C thermosetting',
        '85 °C thermosetting (rubber)',
      ],
    },
  ],
  columns: [['copper'], ['aluminium']],
  rows: [
    ['70 °C thermoplastic, up to 300 mm²', 115, 76],
    ['70 °C thermoplastic, above 300 mm²', 103, 68],
    ['90 °C thermoplastic, up to 300 mm²', 100, 66],
    ['90 °C thermoplastic, above 300 mm²', 86, 57],
    ['90 °C thermosetting', 143, 94],
    ['85 °C thermosetting (rubber)', 134, 89],
  ],
  cell: 'adiabaticFactor',
  unit: 'A·√s/mm²',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: 'Table 54.3', provenance: 'memory' },
  provenanceOf: {
    'copper, 70 °C thermoplastic, up to 300 mm²': 'one-source',
    'copper, 70 °C thermoplastic, above 300 mm²': 'one-source',
    'copper, 90 °C thermoplastic, up to 300 mm²': 'one-source',
    'copper, 90 °C thermoplastic, above 300 mm²': 'one-source',
    'copper, 90 °C thermosetting': 'one-source',
  },
});

/** Initial temperature of protective conductors that are a core of a cable or bunched with cables. BS 7671 Table 54.3. */
export const table543Initial = /* @__PURE__ */ table({
  id: 'bs7671/54.3-initial',
  title: 'Initial temperature of protective conductors that are a core of a cable or bunched with cables',
  axes: [
    { name: 'metal', labels: ['copper', 'aluminium'] },
    {
      name: 'insulation',
      labels: [
        '70 °C thermoplastic, up to 300 mm²',
        '70 °C thermoplastic, above 300 mm²',
        '90 °C thermoplastic, up to 300 mm²',
        '90 °C thermoplastic, above 300 mm²',
        '90 °C thermosetting',
        '85 °C thermosetting (rubber)',
      ],
    },
  ],
  columns: [['copper'], ['aluminium']],
  rows: [
    ['70 °C thermoplastic, up to 300 mm²', 70, 70],
    ['70 °C thermoplastic, above 300 mm²', 70, 70],
    ['90 °C thermoplastic, up to 300 mm²', 90, 90],
    ['90 °C thermoplastic, above 300 mm²', 90, 90],
    ['90 °C thermosetting', 90, 90],
    ['85 °C thermosetting (rubber)', 85, 85],
  ],
  cell: 'initialTemperature',
  unit: '°C',
  source: {
    document: 'BS 7671',
    edition: '2018+A2:2022',
    clause: 'Table 54.3',
    provenance: 'memory',
    note: 'each pair of temperatures reproduces the printed k',
  },
});

/** Final temperature of protective conductors that are a core of a cable or bunched with cables. BS 7671 Table 54.3. */
export const table543Final = /* @__PURE__ */ table({
  id: 'bs7671/54.3-final',
  title: 'Final temperature of protective conductors that are a core of a cable or bunched with cables',
  axes: [
    { name: 'metal', labels: ['copper', 'aluminium'] },
    {
      name: 'insulation',
      labels: [
        '70 °C thermoplastic, up to 300 mm²',
        '70 °C thermoplastic, above 300 mm²',
        '90 °C thermoplastic, up to 300 mm²',
        '90 °C thermoplastic, above 300 mm²',
        '90 °C thermosetting',
        '85 °C thermosetting (rubber)',
      ],
    },
  ],
  columns: [['copper'], ['aluminium']],
  rows: [
    ['70 °C thermoplastic, up to 300 mm²', 160, 160],
    ['70 °C thermoplastic, above 300 mm²', 140, 140],
    ['90 °C thermoplastic, up to 300 mm²', 160, 160],
    ['90 °C thermoplastic, above 300 mm²', 140, 140],
    ['90 °C thermosetting', 250, 250],
    ['85 °C thermosetting (rubber)', 220, 220],
  ],
  cell: 'finalTemperature',
  unit: '°C',
  source: {
    document: 'BS 7671',
    edition: '2018+A2:2022',
    clause: 'Table 54.3',
    provenance: 'memory',
    note: 'each pair of temperatures reproduces the printed k',
  },
});

import { table } from '../../../core/index.js';

/** Factor k of protective conductors not in a cable and not bunched. BS 7671 Table 54.2. */
export const table542 = /* @__PURE__ */ table({
  id: 'bs7671/54.2',
  title: 'Factor k of protective conductors not in a cable and not bunched',
  axes: [
    { name: 'metal', labels: ['copper', 'aluminium', 'steel'] },
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
  columns: [['copper'], ['aluminium'], ['steel']],
  rows: [
    ['70 °C thermoplastic, up to 300 mm²', 143, 95, 52],
    ['70 °C thermoplastic, above 300 mm²', 133, 88, null],
    ['90 °C thermoplastic, up to 300 mm²', 143, 95, 52],
    ['90 °C thermoplastic, above 300 mm²', 133, 88, null],
    ['90 °C thermosetting', 176, 116, 64],
    ['85 °C thermosetting (rubber)', 166, 110, 60],
  ],
  cell: 'adiabaticFactor',
  unit: 'A·√s/mm²',
  source: {
    document: 'BS 7671',
    edition: '2018+A2:2022',
    clause: 'Table 54.2',
    provenance: 'memory',
    note: 'rubber stood in a page of an older Dutch issue of IEC 60364-5-54',
  },
  provenanceOf: {
    'copper, 70 °C thermoplastic, up to 300 mm²': 'one-source',
    'copper, 70 °C thermoplastic, above 300 mm²': 'one-source',
    'copper, 90 °C thermoplastic, up to 300 mm²': 'one-source',
    'copper, 90 °C thermoplastic, above 300 mm²': 'one-source',
    'copper, 90 °C thermosetting': 'one-source',
    'aluminium, 70 °C thermoplastic, up to 300 mm²': 'one-source',
    'aluminium, 70 °C thermoplastic, above 300 mm²': 'one-source',
    'aluminium, 90 °C thermoplastic, up to 300 mm²': 'one-source',
    'aluminium, 90 °C thermoplastic, above 300 mm²': 'one-source',
    'aluminium, 90 °C thermosetting': 'one-source',
    'steel, 70 °C thermoplastic, up to 300 mm²': 'one-source',
    'steel, 90 °C thermoplastic, up to 300 mm²': 'one-source',
    'steel, 90 °C thermosetting': 'one-source',
    '85 °C thermosetting (rubber)': 'one-source',
  },
});

/** Initial temperature of protective conductors not in a cable and not bunched. BS 7671 Table 54.2. */
export const table542Initial = /* @__PURE__ */ table({
  id: 'bs7671/54.2-initial',
  title: 'Initial temperature of protective conductors not in a cable and not bunched',
  axes: [
    { name: 'metal', labels: ['copper', 'aluminium', 'steel'] },
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
  columns: [['copper'], ['aluminium'], ['steel']],
  rows: [
    ['70 °C thermoplastic, up to 300 mm²', 30, 30, 30],
    ['70 °C thermoplastic, above 300 mm²', 30, 30, null],
    ['90 °C thermoplastic, up to 300 mm²', 30, 30, 30],
    ['90 °C thermoplastic, above 300 mm²', 30, 30, null],
    ['90 °C thermosetting', 30, 30, 30],
    ['85 °C thermosetting (rubber)', 30, 30, 30],
  ],
  cell: 'initialTemperature',
  unit: '°C',
  source: {
    document: 'BS 7671',
    edition: '2018+A2:2022',
    clause: 'Table 54.2',
    provenance: 'memory',
    note: 'up to 300 mm² 70 °C thermoplastic, thermosetting and rubber stood in a page of an older Dutch issue of IEC 60364-5-54; each pair of temperatures reproduces the printed k',
  },
  provenanceOf: {
    'copper, 70 °C thermoplastic, up to 300 mm²': 'one-source',
    'aluminium, 70 °C thermoplastic, up to 300 mm²': 'one-source',
    'steel, 70 °C thermoplastic, up to 300 mm²': 'one-source',
    'copper, 90 °C thermosetting': 'one-source',
    'aluminium, 90 °C thermosetting': 'one-source',
    'steel, 90 °C thermosetting': 'one-source',
    'copper, 85 °C thermosetting (rubber)': 'one-source',
    'aluminium, 85 °C thermosetting (rubber)': 'one-source',
    'steel, 85 °C thermosetting (rubber)': 'one-source',
  },
});

/** Final temperature of protective conductors not in a cable and not bunched. BS 7671 Table 54.2. */
export const table542Final = /* @__PURE__ */ table({
  id: 'bs7671/54.2-final',
  title: 'Final temperature of protective conductors not in a cable and not bunched',
  axes: [
    { name: 'metal', labels: ['copper', 'aluminium', 'steel'] },
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
  columns: [['copper'], ['aluminium'], ['steel']],
  rows: [
    ['70 °C thermoplastic, up to 300 mm²', 160, 160, 160],
    ['70 °C thermoplastic, above 300 mm²', 140, 140, null],
    ['90 °C thermoplastic, up to 300 mm²', 160, 160, 160],
    ['90 °C thermoplastic, above 300 mm²', 140, 140, null],
    ['90 °C thermosetting', 250, 250, 250],
    ['85 °C thermosetting (rubber)', 220, 220, 220],
  ],
  cell: 'finalTemperature',
  unit: '°C',
  source: {
    document: 'BS 7671',
    edition: '2018+A2:2022',
    clause: 'Table 54.2',
    provenance: 'memory',
    note: 'up to 300 mm² 70 °C thermoplastic, thermosetting and rubber stood in a page of an older Dutch issue of IEC 60364-5-54; each pair of temperatures reproduces the printed k',
  },
  provenanceOf: {
    'copper, 70 °C thermoplastic, up to 300 mm²': 'one-source',
    'aluminium, 70 °C thermoplastic, up to 300 mm²': 'one-source',
    'steel, 70 °C thermoplastic, up to 300 mm²': 'one-source',
    'copper, 90 °C thermosetting': 'one-source',
    'aluminium, 90 °C thermosetting': 'one-source',
    'steel, 90 °C thermosetting': 'one-source',
    'copper, 85 °C thermosetting (rubber)': 'one-source',
    'aluminium, 85 °C thermosetting (rubber)': 'one-source',
    'steel, 85 °C thermosetting (rubber)': 'one-source',
  },
});

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
  source: {
    document: 'BS 7671',
    edition: '2018+A2:2022',
    clause: 'Table 54.3',
    provenance: 'one-source',
    note: 'the figures are those of IEC 60364-5-54, Table A.54.4, in its Russian issue of 2011; for all but 90 °C thermoplastic and above 300 mm² also those of an older Dutch issue',
  },
  provenanceOf: {
    'copper, 70 °C thermoplastic, up to 300 mm²': 'two-sources',
    'aluminium, 70 °C thermoplastic, up to 300 mm²': 'two-sources',
    'copper, 90 °C thermosetting': 'two-sources',
    'aluminium, 90 °C thermosetting': 'two-sources',
    'copper, 85 °C thermosetting (rubber)': 'two-sources',
    'aluminium, 85 °C thermosetting (rubber)': 'two-sources',
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
    provenance: 'one-source',
    note: 'the figures are those of IEC 60364-5-54, Table A.54.4, in its Russian issue of 2011; for all but 90 °C thermoplastic and above 300 mm² also those of an older Dutch issue',
  },
  provenanceOf: {
    'copper, 70 °C thermoplastic, up to 300 mm²': 'two-sources',
    'aluminium, 70 °C thermoplastic, up to 300 mm²': 'two-sources',
    'copper, 90 °C thermosetting': 'two-sources',
    'aluminium, 90 °C thermosetting': 'two-sources',
    'copper, 85 °C thermosetting (rubber)': 'two-sources',
    'aluminium, 85 °C thermosetting (rubber)': 'two-sources',
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
    provenance: 'one-source',
    note: 'the figures are those of IEC 60364-5-54, Table A.54.4, in its Russian issue of 2011; for all but 90 °C thermoplastic and above 300 mm² also those of an older Dutch issue',
  },
  provenanceOf: {
    'copper, 70 °C thermoplastic, up to 300 mm²': 'two-sources',
    'aluminium, 70 °C thermoplastic, up to 300 mm²': 'two-sources',
    'copper, 90 °C thermosetting': 'two-sources',
    'aluminium, 90 °C thermosetting': 'two-sources',
    'copper, 85 °C thermosetting (rubber)': 'two-sources',
    'aluminium, 85 °C thermosetting (rubber)': 'two-sources',
  },
});

import { table } from '../../../core/index.js';

/** Factor k of the sheath or armour of a cable. BS 7671 Table 54.4. */
export const table544 = /* @__PURE__ */ table({
  id: 'bs7671/54.4',
  title: 'Factor k of the sheath or armour of a cable',
  axes: [
    { name: 'metal', labels: ['aluminium', 'steel', 'lead'] },
    {
      name: 'insulation',
      labels: ['70 °C thermoplastic', '90 °C thermoplastic', '90 °C thermosetting', '85 °C thermosetting (rubber)'],
    },
  ],
  columns: [['aluminium'], ['steel'], ['lead']],
  rows: [
    ['70 °C thermoplastic', 93, 51, 26],
    ['90 °C thermoplastic', 85, 46, 23],
    ['90 °C thermosetting', 85, 46, 23],
    ['85 °C thermosetting (rubber)', 87, 48, null],
  ],
  cell: 'adiabaticFactor',
  unit: 'A·√s/mm²',
  source: {
    document: 'BS 7671',
    edition: '2018+A2:2022',
    clause: 'Table 54.4',
    provenance: 'memory',
    note: 'aluminium and steel are also in IEC 60364-5-54, Table A.54.5, in its Russian issue of 2011; for 85 °C rubber that prints 93 and 51 with a final temperature of 220 °C, where 87, 48 and 200 °C are recalled',
  },
  provenanceOf: {
    'aluminium, 70 °C thermoplastic': 'one-source',
    'steel, 70 °C thermoplastic': 'one-source',
    'lead, 70 °C thermoplastic': 'one-source',
    'aluminium, 90 °C thermoplastic': 'one-source',
    'steel, 90 °C thermoplastic': 'one-source',
    'lead, 90 °C thermoplastic': 'one-source',
    'aluminium, 90 °C thermosetting': 'one-source',
    'steel, 90 °C thermosetting': 'one-source',
    'lead, 90 °C thermosetting': 'one-source',
  },
});

/** Initial temperature of the sheath or armour of a cable. BS 7671 Table 54.4. */
export const table544Initial = /* @__PURE__ */ table({
  id: 'bs7671/54.4-initial',
  title: 'Initial temperature of the sheath or armour of a cable',
  axes: [
    { name: 'metal', labels: ['aluminium', 'steel', 'lead'] },
    {
      name: 'insulation',
      labels: ['70 °C thermoplastic', '90 °C thermoplastic', '90 °C thermosetting', '85 °C thermosetting (rubber)'],
    },
  ],
  columns: [['aluminium'], ['steel'], ['lead']],
  rows: [
    ['70 °C thermoplastic', 60, 60, 60],
    ['90 °C thermoplastic', 80, 80, 80],
    ['90 °C thermosetting', 80, 80, 80],
    ['85 °C thermosetting (rubber)', 75, 75, null],
  ],
  cell: 'initialTemperature',
  unit: '°C',
  source: {
    document: 'BS 7671',
    edition: '2018+A2:2022',
    clause: 'Table 54.4',
    provenance: 'memory',
    note: 'aluminium and steel stood in IEC 60364-5-54, Table A.54.5, in its Russian issue of 2011; for 85 °C rubber that prints a final temperature of 220 °C; each pair of temperatures reproduces the printed k',
  },
  provenanceOf: {
    'aluminium, 70 °C thermoplastic': 'one-source',
    'steel, 70 °C thermoplastic': 'one-source',
    'aluminium, 90 °C thermoplastic': 'one-source',
    'steel, 90 °C thermoplastic': 'one-source',
    'aluminium, 90 °C thermosetting': 'one-source',
    'steel, 90 °C thermosetting': 'one-source',
    'aluminium, 85 °C thermosetting (rubber)': 'one-source',
    'steel, 85 °C thermosetting (rubber)': 'one-source',
  },
});

/** Final temperature of the sheath or armour of a cable. BS 7671 Table 54.4. */
export const table544Final = /* @__PURE__ */ table({
  id: 'bs7671/54.4-final',
  title: 'Final temperature of the sheath or armour of a cable',
  axes: [
    { name: 'metal', labels: ['aluminium', 'steel', 'lead'] },
    {
      name: 'insulation',
      labels: ['70 °C thermoplastic', '90 °C thermoplastic', '90 °C thermosetting', '85 °C thermosetting (rubber)'],
    },
  ],
  columns: [['aluminium'], ['steel'], ['lead']],
  rows: [
    ['70 °C thermoplastic', 200, 200, 200],
    ['90 °C thermoplastic', 200, 200, 200],
    ['90 °C thermosetting', 200, 200, 200],
    ['85 °C thermosetting (rubber)', 200, 200, null],
  ],
  cell: 'finalTemperature',
  unit: '°C',
  source: {
    document: 'BS 7671',
    edition: '2018+A2:2022',
    clause: 'Table 54.4',
    provenance: 'memory',
    note: 'aluminium and steel stood in IEC 60364-5-54, Table A.54.5, in its Russian issue of 2011; for 85 °C rubber that prints a final temperature of 220 °C; each pair of temperatures reproduces the printed k',
  },
  provenanceOf: {
    'aluminium, 70 °C thermoplastic': 'one-source',
    'steel, 70 °C thermoplastic': 'one-source',
    'aluminium, 90 °C thermoplastic': 'one-source',
    'steel, 90 °C thermoplastic': 'one-source',
    'aluminium, 90 °C thermosetting': 'one-source',
    'steel, 90 °C thermosetting': 'one-source',
  },
});

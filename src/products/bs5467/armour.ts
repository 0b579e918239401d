import { table } from '../../core/index.js';

/** Gross area of steel wire armour, 600/1000 V thermosetting cable, copper. BS 5467. */
export const armourAreas = /* @__PURE__ */ table({
  id: 'bs5467/armour-area',
  title: 'Gross area of steel wire armour',
  axes: [
    { name: 'cores', unit: '1', between: 'exact' },
    { name: 'conductorArea', unit: 'mm²', between: 'exact' },
  ],
  rows: `
    cores   2   3   4   5
    1.5    15  16  17  19
    2.5    17  19  20  22
    4      19  20  22  25
    6      22  23  36  39
    10     26  39  42  45
    16     42  45  50  70
    25     42  62  76  85
    35     60  68  78  96
    50     68  78  90 139
    70     80  90 131 163
    95    113 128 147   -
    120   125 141 206   -
    150   138 201 230   -
    185   191 220 255   -
    240   215 250 289   -
    300   235 269 319   -
    400   265 304 452   -`,
  cell: 'armourArea',
  unit: 'mm²',
  source: {
    document: 'BS 5467',
    provenance: 'memory',
    note: 'areas of two-core cable and resistances up to 6 mm² seen in one text',
  },
  provenanceOf: { '2': 'one-source' },
  notes: [
    'Makers differ: least design data, not measured values.',
    'Four cores, 25 mm²: 76 mm² seen in one text, 70 mm² recalled elsewhere.',
  ],
});

/** Greatest resistance of steel wire armour at 20 °C, 600/1000 V thermosetting cable, copper. BS 5467. */
export const armourResistances = /* @__PURE__ */ table({
  id: 'bs5467/armour-resistance',
  title: 'Greatest resistance of steel wire armour at 20 °C',
  axes: [
    { name: 'cores', unit: '1', between: 'exact' },
    { name: 'conductorArea', unit: 'mm²', between: 'exact' },
  ],
  rows: `
    cores    2    3    4    5
    1.5   10.2  9.5  8.8  8.2
    2.5    8.8  8.2  7.7  6.8
    4      7.9  7.5  6.8  6.2
    6        7  6.7  4.3  3.9
    10       6    4  3.7  3.4
    16     3.7  3.5  3.1  2.2
    25     3.7  2.5  2.3  1.8
    35     2.6  2.3    2  1.6
    50     2.3    2  1.8  1.1
    70       2  1.8  1.2 0.94
    95     1.4  1.3  1.1    -
    120    1.3  1.2 0.76    -
    150    1.2 0.78 0.68    -
    185   0.82 0.71 0.61    -
    240   0.73 0.63 0.54    -
    300   0.67 0.58 0.49    -
    400   0.59 0.52 0.35    -`,
  cell: 'resistancePerMetre20',
  unit: 'Ω/m',
  per: 1000,
  printed: 'Ω/km',
  source: { document: 'BS 5467', provenance: 'memory', note: 'up to 6 mm² seen in one text' },
  provenanceOf: { '1.5': 'one-source', '2.5': 'one-source', '4': 'one-source', '6': 'one-source' },
  notes: ['Makers differ: least design data, not measured values.'],
});

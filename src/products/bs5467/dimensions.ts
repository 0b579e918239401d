import { table } from '../../core/index.js';

/** Outer diameter of steel wire armoured copper cable. BS 5467 and BS 6724, makers' lists. */
export const armouredOverallDiameters = /* @__PURE__ */ table({
  id: 'bs5467/overall-diameter',
  title: 'Outer diameter of steel wire armoured cable',
  axes: [
    { name: 'cores', unit: '1', between: 'exact' },
    { name: 'conductorArea', unit: 'mm²', between: 'exact' },
  ],
  rows: `
    cores    2    3    4
    1.5   12.1 12.6 13.3
    2.5   13.6 14.1   15
    4     14.7 15.3 16.4
    6     15.9 16.6 18.7
    10      18 19.5 21.1
    16    20.4 21.6 23.4
    25    20.4 23.6 26.1
    35    23.3 25.7 28.6
    50    25.8 28.5   32
    70      29 32.2 37.7
    95    33.1   37 41.7
    120   36.1 40.4 47.1
    150   39.3 45.5 51.4
    185      - 49.8 56.6
    240      - 55.1   63
    300      - 60.2 68.8
    400      - 66.6 78.1`,
  cell: 'cableDiameter',
  unit: 'mm',
  source: {
    document: 'BS 5467',
    clause: 'makers’ lists',
    provenance: 'one-source',
    note: 'two-core 25 mm²: another list prints 24.1',
  },
  notes: ['Approximate: makers differ. BS 6724 has the same build with another sheath.'],
});

/** Diameter of the armour wires of steel wire armoured copper cable. BS 5467. */
export const armourWireDiameters = /* @__PURE__ */ table({
  id: 'bs5467/armour-wire-diameter',
  title: 'Diameter of the armour wires',
  axes: [
    { name: 'cores', unit: '1', between: 'exact' },
    { name: 'conductorArea', unit: 'mm²', between: 'exact' },
  ],
  rows: `
    cores    2    3    4
    1.5    0.9  0.9  0.9
    2.5    0.9  0.9  0.9
    4      0.9  0.9  0.9
    6      0.9  0.9 1.25
    10     0.9 1.25 1.25
    16    1.25 1.25 1.25
    25    1.25  1.6  1.6
    35     1.6  1.6  1.6
    50     1.6  1.6  1.6
    70     1.6  1.6    2
    95       2    2    2
    120      2    2  2.5
    150      2  2.5  2.5
    185      -  2.5  2.5
    240      -  2.5  2.5
    300      -  2.5  2.5
    400      -  2.5 3.15`,
  cell: 'armourWireDiameter',
  unit: 'mm',
  source: {
    document: 'BS 5467',
    provenance: 'memory',
    note: 'four cores up to 25 mm² seen in one text; the rest agrees with the areas of the armour',
  },
});

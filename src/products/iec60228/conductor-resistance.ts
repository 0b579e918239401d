import { table } from '../../core/index.js';

/** Greatest resistance of a conductor per length at 20 °C, plain wires. IEC 60228 Tables 1 to 3. */
export const conductorResistance = /* @__PURE__ */ table({
  id: 'iec60228/conductor-resistance',
  title: 'Greatest resistance of a conductor per length at 20 °C',
  axes: [
    { name: 'metal', labels: ['copper', 'aluminium'] },
    { name: 'conductorClass', labels: ['1', '2', '5'] },
    { name: 'conductorArea', unit: 'mm²', between: 'exact' },
  ],
  rows: `
    metal          copper copper copper aluminium aluminium
    conductorClass      1      2      5         1         2
    0.5                36     36     39         -         -
    0.75             24.5   24.5     26         -         -
    1                18.1   18.1   19.5         -         -
    1.5              12.1   12.1   13.3         -         -
    2.5              7.41   7.41   7.98         -         -
    4                4.61   4.61   4.95         -         -
    6                3.08   3.08    3.3         -         -
    10               1.83   1.83   1.91      3.08      3.08
    16               1.15   1.15   1.21      1.91      1.91
    25              0.727  0.727   0.78       1.2       1.2
    35              0.524  0.524  0.554     0.868     0.868
    50              0.387  0.387  0.386     0.641     0.641
    70              0.268  0.268  0.272     0.443     0.443
    95              0.193  0.193  0.206      0.32      0.32
    120             0.153  0.153  0.161     0.253     0.253
    150             0.124  0.124  0.129     0.206     0.206
    185             0.101 0.0991  0.106     0.164     0.164
    240            0.0775 0.0754 0.0801     0.125     0.125
    300             0.062 0.0601 0.0641       0.1       0.1
    400            0.0465  0.047 0.0486    0.0778    0.0778
    500                 - 0.0366 0.0384    0.0605    0.0605
    630                 - 0.0283 0.0287    0.0469    0.0469
    800                 - 0.0221      -         -    0.0367
    1000                - 0.0176      -         -    0.0291`,
  cell: 'resistancePerMetre20',
  unit: 'Ω/m',
  per: 1000,
  printed: 'Ω/km',
  source: {
    document: 'IEC 60228',
    edition: '2004',
    clause: 'Tables 1 to 3',
    provenance: 'memory',
    note: 'the edition of 2023 was not compared',
  },
  provenanceOf: {
    copper: 'two-sources',
    'aluminium 1': 'two-sources',
    'aluminium 2': 'one-source',
    'copper 2, 800 to 1000': 'memory',
    'aluminium 2, 240 to 1000': 'memory',
  },
  notes: [
    'Class 1 solid, 2 stranded, 5 flexible.',
    'Class 1 copper from 25 mm² is for special cables such as mineral insulated.',
    'Class 1 aluminium alloy: 1.162 times as much.',
  ],
});

/** Greatest resistance of a copper conductor of metal-coated wires per length at 20 °C. IEC 60228 Tables 2 and 3. */
export const coatedConductorResistance = /* @__PURE__ */ table({
  id: 'iec60228/coated-conductor-resistance',
  title: 'Greatest resistance of a copper conductor of metal-coated wires per length at 20 °C',
  axes: [
    { name: 'conductorClass', labels: ['2', '5'] },
    { name: 'conductorArea', unit: 'mm²', between: 'exact' },
  ],
  rows: `
    conductorClass      2      5
    0.5              36.7   40.1
    0.75             24.8   26.7
    1                18.2     20
    1.5              12.2   13.7
    2.5              7.56   8.21
    4                 4.7   5.09
    6                3.11   3.39
    10               1.84   1.95
    16               1.16   1.24
    25              0.734  0.795
    35              0.529  0.565
    50              0.391  0.393
    70               0.27  0.277
    95              0.195   0.21
    120             0.154  0.164
    150             0.126  0.132
    185               0.1  0.108
    240            0.0762 0.0817
    300            0.0607 0.0654
    400            0.0475 0.0495
    500            0.0369 0.0391
    630            0.0286 0.0292`,
  cell: 'resistancePerMetre20',
  unit: 'Ω/m',
  per: 1000,
  printed: 'Ω/km',
  source: {
    document: 'IEC 60228',
    edition: '2004',
    clause: 'Tables 2 and 3',
    provenance: 'two-sources',
    note: 'class 2 of 630 mm²: one text prints 0.0289, another 0.0286, which is kept',
  },
  provenanceOf: { '2, 630': 'one-source' },
});

import { table } from '../../core/index.js';

/** Terms of single-core cables for conduit, thermoplastic or low smoke insulation of 70 °C. On-Site Guide, Tables E1 and E3. */
export const conduitCableTerms = /* @__PURE__ */ table({
  id: 'on-site-guide/conduit-cable-terms',
  title: 'Terms of single-core cables for conduit',
  axes: [
    { name: 'run', labels: ['straight to 3 m', 'longer or with bends'] },
    { name: 'conductor', labels: ['solid', 'stranded'] },
    { name: 'conductorArea', unit: 'mm²', between: 'exact' },
  ],
  rows: [
    [1, 22, null, 16, null],
    [1.5, 27, 31, 22, 22],
    [2.5, 39, 43, 30, 30],
    [4, null, 58, null, 43],
    [6, null, 88, null, 58],
    [10, null, 146, null, 105],
    [16, null, 202, null, 145],
    [25, null, 385, null, 217],
  ],
  cell: 'spaceTerm',
  unit: '1',
  source: {
    document: 'On-Site Guide',
    clause: 'Appendix E, Tables E1 and E3',
    provenance: 'one-source',
    note: 'the terms of longer runs stand in two texts',
  },
  provenanceOf: {
    'straight to 3 m stranded, 16': 'memory',
    'straight to 3 m stranded, 25': 'memory',
  },
});

/** Terms of conduit for straight runs of up to 3 m. On-Site Guide, Table E2. */
export const conduitTermsStraight = /* @__PURE__ */ table({
  id: 'on-site-guide/conduit-terms-straight',
  title: 'Terms of conduit for straight runs of up to 3 m',
  axes: [
    { name: 'run', labels: ['straight to 3 m'] },
    { name: 'conduitDiameter', unit: 'mm', between: 'exact' },
  ],
  rows: [
    [16, 290],
    [20, 460],
    [25, 800],
    [32, 1400],
    [38, 1900],
    [50, 3500],
    [63, 5600],
  ],
  cell: 'spaceTerm',
  unit: '1',
  source: { document: 'On-Site Guide', clause: 'Appendix E, Table E2', provenance: 'one-source' },
  provenanceOf: { '38 to 63': 'memory' },
});

/** Terms of conduit for runs of more than 3 m or with bends. On-Site Guide, Table E4. */
export const conduitTermsLong = /* @__PURE__ */ table({
  id: 'on-site-guide/conduit-terms-long',
  title: 'Terms of conduit for runs of more than 3 m or with bends',
  axes: [
    { name: 'bends', unit: '1', between: 'exact' },
    { name: 'conduitDiameter', unit: 'mm', between: 'exact' },
    { name: 'length', unit: 'm', between: 'next-up', allowedBy: 'a longer run has the smaller term', below: 'first' },
  ],
  rows: `
    bends               0    0    0    0    1    1    1    1    2    2    2    2    3    3    3    3    4    4    4    4
    conduitDiameter    16   20   25   32   16   20   25   32   16   20   25   32   16   20   25   32   16   20   25   32
    1                   -    -    -    -  188  303  543  947  177  286  514  900  158  256  463  818  130  213  388  692
    1.5                 -    -    -    -  182  294  528  923  167  270  487  857  143  233  422  750  111  182  333  600
    2                   -    -    -    -  177  286  514  900  158  256  463  818  130  213  388  692   97  159  292  529
    2.5                 -    -    -    -  171  278  500  878  150  244  442  783  120  196  358  643   86  141  260  474
    3                   -    -    -    -  167  270  487  857  143  233  422  750  111  182  333  600    -    -    -    -
    3.5               179  290  521  911  162  263  475  837  136  222  404  720  103  169  311  563    -    -    -    -
    4                 177  286  514  900  158  256  463  818  130  213  388  692   97  159  292  529    -    -    -    -
    4.5               174  282  507  889  154  250  452  800  125  204  373  667   91  149  275  500    -    -    -    -
    5                 171  278  500  878  150  244  442  783  120  196  358  643   86  141  260  474    -    -    -    -
    6                 167  270  487  857  143  233  422  750  111  182  333  600    -    -    -    -    -    -    -    -
    7                 162  263  475  837  136  222  404  720  103  169  311  563    -    -    -    -    -    -    -    -
    8                 158  256  463  818  130  213  388  692   97  159  292  529    -    -    -    -    -    -    -    -
    9                 154  250  452  800  125  204  373  667   91  149  275  500    -    -    -    -    -    -    -    -
    10                150  244  442  783  120  196  358  643   86  141  260  474    -    -    -    -    -    -    -    -`,
  cell: 'spaceTerm',
  unit: '1',
  source: {
    document: 'On-Site Guide',
    clause: 'Appendix E, Table E4',
    provenance: 'two-sources',
    note: 'every cell follows 6000/(30+x), 10000/(31+x), 19000/(33+x) and 36000/(36+x), x being the length in metres times two for each bend; only 177 for 16 mm at x = 4 does not',
  },
  provenanceOf: { '9': 'one-source', '10': 'derived' },
});

/** Terms of single-core cables for trunking. On-Site Guide, Table E5. */
export const trunkingCableTerms = /* @__PURE__ */ table({
  id: 'on-site-guide/trunking-cable-terms',
  title: 'Terms of single-core cables for trunking',
  axes: [
    { name: 'insulation', labels: ['thermoplastic', 'thermosetting'] },
    { name: 'conductor', labels: ['solid', 'stranded'] },
    { name: 'conductorArea', unit: 'mm²', between: 'exact' },
  ],
  rows: [
    [1.5, 8, 8.6, 8.6, 9.6],
    [2.5, 11.9, 12.6, 11.9, 13.9],
    [4, null, 16.6, null, 18.1],
    [6, null, 21.2, null, 22.9],
    [10, null, 35.3, null, 36.3],
    [16, null, 47.8, null, 50.3],
    [25, null, 73.9, null, 75.4],
  ],
  cell: 'spaceTerm',
  unit: '1',
  source: {
    document: 'On-Site Guide',
    clause: 'Appendix E, Table E5',
    provenance: 'one-source',
    note: 'the print has 9.1 for 1.5 mm² stranded, thermosetting; the larger term is kept until the guide is seen',
  },
  provenanceOf: { 'thermosetting stranded, 1.5': 'memory' },
});

/** Terms of trunking by its size in mm. On-Site Guide, Table E6. */
export const trunkingTerms = /* @__PURE__ */ table({
  id: 'on-site-guide/trunking-terms',
  title: 'Terms of trunking',
  axes: [
    { name: 'use', labels: ['term'] },
    {
      name: 'size',
      labels: [
        '50x38',
        '50x50',
        '75x25',
        '75x38',
        '75x50',
        '75x75',
        '100x25',
        '100x38',
        '100x50',
        '100x75',
        '100x100',
        '150x50',
        '150x75',
        '150x100',
        '150x150',
      ],
    },
  ],
  rows: [
    ['50x38', 767],
    ['50x50', 1037],
    ['75x25', 738],
    ['75x38', 1146],
    ['75x50', 1555],
    ['75x75', 2371],
    ['100x25', 993],
    ['100x38', 1542],
    ['100x50', 2091],
    ['100x75', 3189],
    ['100x100', 4252],
    ['150x50', 3091],
    ['150x75', 4743],
    ['150x100', 6394],
    ['150x150', 9575],
  ],
  cell: 'spaceTerm',
  unit: '1',
  source: {
    document: 'On-Site Guide',
    clause: 'Appendix E, Table E6',
    provenance: 'one-source',
    note: 'the figure recalled for 150 by 38 mm cannot be right and is left out; of the others of 150 mm a print has 3161, 4787, 6414 and 9575, and 3091, 4743, 6394 and 9697 are recalled: the smaller ones are kept until the guide is seen',
  },
  provenanceOf: { '150x50': 'memory', '150x75': 'memory', '150x100': 'memory' },
});

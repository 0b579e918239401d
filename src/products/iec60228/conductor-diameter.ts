import { table } from '../../core/index.js';

/** Usual diameter of round conductors of class 2, for computing heat: makers' lists, which differ. IEC 60228. */
export const conductorDiameters = /* @__PURE__ */ table({
  id: 'iec60228/conductor-diameter',
  title: 'Usual diameter of round stranded conductors',
  axes: [
    { name: 'strand', labels: ['stranded', 'compacted'] },
    { name: 'conductorArea', unit: 'mm²', between: 'exact' },
  ],
  rows: `
    strand stranded compacted
    1.5        1.59      1.56
    2.5        2.01         -
    4          2.55         -
    6          3.12         -
    10         4.05         -
    16          5.1      4.65
    25         6.42       5.9
    35         7.65       6.9
    50          8.9         8
    70         10.7       9.8
    95         12.6      11.4
    120        14.2      12.9
    150       15.75      14.2
    185        17.6      15.9
    240       20.25      18.3
    300        22.7      20.6
    400        25.7      23.6`,
  cell: 'conductorDiameter',
  unit: 'mm',
  source: {
    document: 'IEC 60228',
    clause: 'conductors of class 2; diameters of makers’ lists',
    provenance: 'memory',
    note: 'a tenth more or less of the outer diameter of a cable moves its computed rating by less than 1 %',
  },
  provenanceOf: { 'stranded, 1.5 to 25': 'one-source', 'compacted, 16 to 95': 'one-source' },
});

import { table } from '../../core/index.js';

/** Starting kVA for each horsepower by the code letter of a motor. NEMA MG 1. */
export const codeLetters = /* @__PURE__ */ table({
  id: 'nema-mg1/code-letters',
  title: 'Starting kVA for each horsepower by the code letter of a motor',
  axes: [
    { name: 'bound', labels: ['most'] },
    {
      name: 'letter',
      labels: ['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H', 'J', 'K', 'L', 'M', 'N', 'P', 'R', 'S', 'T', 'U'],
    },
  ],
  rows: [
    ['A', 3.14],
    ['B', 3.54],
    ['C', 3.99],
    ['D', 4.49],
    ['E', 4.99],
    ['F', 5.59],
    ['G', 6.29],
    ['H', 7.09],
    ['J', 7.99],
    ['K', 8.99],
    ['L', 9.99],
    ['M', 11.19],
    ['N', 12.49],
    ['P', 13.99],
    ['R', 15.99],
    ['S', 17.99],
    ['T', 19.99],
    ['U', 22.39],
  ],
  cell: 'letterFactor',
  unit: '1',
  source: {
    document: 'NEMA MG 1',
    clause: 'code letters',
    provenance: 'two-sources',
    note: 'upper ends of the bands; letter V has none; a print has 3.55 for B, with which C begins',
  },
  provenanceOf: { B: 'one-source', H: 'one-source' },
});

import { table } from '../../core/index.js';

/** Bare protective conductor in flat twin and three-core cable. BS 6004. */
export const flatCableProtective = /* @__PURE__ */ table({
  id: 'bs6004/protective-conductors',
  title: 'Bare protective conductor in flat twin and three-core cable',
  axes: [
    { name: 'construction', labels: ['flat-twin-and-earth'] },
    { name: 'conductorArea', unit: 'mm²', between: 'exact' },
  ],
  rows: `
    construction flat-twin-and-earth
    1                              1
    1.5                            1
    2.5                          1.5
    4                            1.5
    6                            2.5
    10                             4
    16                             6`,
  cell: 'protectiveArea',
  unit: 'mm²',
  source: { document: 'BS 6004', clause: '6242Y, 6243Y', provenance: 'one-source' },
  provenanceOf: { '1': 'memory', '2.5': 'two-sources' },
});

import { table } from '../../core/index.js';

/** Rated diversity factor of an assembly by the number of its outgoing circuits. IEC 61439-2 and 61439-3, Table 101. */
export const ratedDiversity = /* @__PURE__ */ table({
  id: 'iec61439/101',
  title: 'Rated diversity factor by number of outgoing circuits',
  axes: [
    { name: 'assembly', labels: ['IEC 61439-2', 'IEC 61439-3'] },
    { name: 'circuitBand', labels: ['2-3', '4-5', '6-9', '10+'] },
  ],
  rows: [
    ['2-3', 0.9, 0.8],
    ['4-5', 0.8, 0.7],
    ['6-9', 0.7, 0.6],
    ['10+', 0.6, 0.5],
  ],
  cell: 'demandFactor',
  unit: '1',
  source: {
    document: 'IEC 61439',
    clause: 'Table 101 of parts 2 and 3',
    provenance: 'memory',
    note: 'the figures of part 2, and of the former IEC 60439-1, seen in one text',
  },
  notes: [
    'Where the maker states a factor, that one counts. Never below the loading that is really present.',
    'Unmanaged charge points: 1.',
  ],
});

import { table } from '../../core/index.js';

/** Band of the instantaneous trip of breakers to the withdrawn standard, in multiples of the rated current. BS 3871-1. */
export const oldInstantaneousBands = /* @__PURE__ */ table({
  id: 'bs3871/instantaneous-bands',
  title: 'Instantaneous trip of breakers to BS 3871, multiple of the rated current',
  axes: [
    { name: 'edge', labels: ['lower', 'upper'] },
    { name: 'type', labels: ['1', '2', '3'] },
  ],
  rows: [
    ['1', 2.7, 4],
    ['2', 4, 7],
    ['3', 7, 10],
  ],
  cell: 'deviceMultiple',
  unit: '1',
  source: {
    document: 'BS 3871-1',
    clause: 'instantaneous trip',
    provenance: 'one-source',
    note: 'withdrawn 1994; for breakers in service',
  },
  notes: ['Type 4 (10 to 50 times) is left out: ask the maker.'],
});

import { table } from '../../core/index.js';

/** Test currents of the inverse-time part in multiples of the rated current. EN 60898-1 Table 7. */
export const testMultiples = /* @__PURE__ */ table({
  id: 'en60898/test-currents',
  title: 'Test currents of the inverse-time part of circuit-breakers',
  axes: [
    { name: 'basis', labels: ['rated current'] },
    { name: 'test', labels: ['a', 'b', 'c'] },
  ],
  rows: [
    ['a', 1.13],
    ['b', 1.45],
    ['c', 2.55],
  ],
  cell: 'deviceMultiple',
  unit: '1',
  source: { document: 'EN 60898-1', clause: 'Table 7', provenance: 'two-sources' },
  notes: [
    'a: must not trip within the conventional time, from cold. b: must trip within it, from test a. c: must trip after more than 1 s and in less than the limit, from cold.',
  ],
});

/** Longest times of the tests of the inverse-time part. EN 60898-1 Table 7. */
export const testTimes = /* @__PURE__ */ table({
  id: 'en60898/test-times',
  title: 'Longest times of the tests of the inverse-time part of circuit-breakers',
  axes: [
    { name: 'test', labels: ['a', 'b', 'c'] },
    { name: 'deviceRating', unit: 'A', between: 'next-up', allowedBy: 'bands of rated current', below: 'first' },
  ],
  rows: `
    test    a    b   c
    32   3600 3600  60
    63   3600 3600 120
    125  7200 7200 120`,
  cell: 'operatingTime',
  unit: 's',
  source: {
    document: 'EN 60898-1',
    clause: 'Table 7',
    provenance: 'two-sources',
    note: 'above 63 A, and test c above 32 A: one source',
  },
});

import { table } from '../../core/index.js';

/** Largest let-through energy by energy limiting class, at the rated short-circuit capacity. EN 60898-1, national annex. */
export const energyLimits = /* @__PURE__ */ table({
  id: 'en60898/energy-limiting-classes',
  title: 'Largest let-through energy of circuit-breakers by energy limiting class',
  axes: [
    { name: 'type', labels: ['B', 'C'] },
    { name: 'energyClass', labels: ['2', '3'] },
    { name: 'breakingCapacity', unit: 'A', between: 'exact' },
    {
      name: 'deviceRating',
      unit: 'A',
      between: 'next-up',
      allowedBy: 'the classes are given for bands of rated current',
      below: 'first',
    },
  ],
  rows: `
    type                 B     B      B      B     B     B     B      B     C      C      C      C     C     C     C      C
    energyClass          2     2      2      2     3     3     3      3     2      2      2      2     3     3     3      3
    breakingCapacity  3000  4500   6000  10000  3000  4500  6000  10000  3000   4500   6000  10000  3000  4500  6000  10000
    16               31000 60000 100000 240000 15000 25000 35000  70000 37000  75000 120000 290000 18000 30000 42000  84000
    32               40000 80000 130000 310000 18000 32000 45000  90000 50000 100000 160000 370000 22000 39000 55000 110000
    40               48000 96000 156000 372000 21600 38400 54000 108000 60000 120000 192000 444000 26400 46800 66000 132000`,
  cell: 'letThrough',
  unit: 'A²s',
  source: {
    document: 'EN 60898-1',
    clause: 'Tables ZA.1 and ZA.2',
    provenance: 'memory',
    note: '40 A: 1.2 times the row of 32 A, a recalled rule',
  },
  provenanceOf: { '40': 'memory' },
  notes: [
    'Class 1 has no limit. Valid for prospective currents up to the marked capacity; at lower currents the device lets through less.',
    'Class 2 is of the issue of 2006; that of 2019 has classes 1 and 3 alone.',
    'Type D and ratings above 40 A have no row.',
  ],
});

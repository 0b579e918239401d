import { table } from '../../core/index.js';

/** Smallest copper protective conductor behind breakers of energy limiting class 3. On-Site Guide Table B7. */
export const tableB7 = /* @__PURE__ */ table({
  id: 'on-site-guide/b7',
  title: 'Smallest copper protective conductor behind breakers of class 3',
  axes: [
    { name: 'type', labels: ['B', 'C'] },
    { name: 'breakingCapacity', unit: 'A', between: 'exact' },
    { name: 'deviceRating', unit: 'A', between: 'next-up', allowedBy: 'bands of rated current', below: 'first' },
  ],
  rows: `
    type                B    B    C    C
    breakingCapacity 3000 6000 3000 6000
    16                  1  2.5  1.5  2.5
    32                1.5  2.5  1.5  2.5
    40                1.5  2.5  1.5  2.5`,
  cell: 'minimumProtectiveArea',
  unit: 'mm²',
  source: {
    document: 'On-Site Guide',
    clause: 'Table B7',
    provenance: 'memory',
    note: 'the number of the table varies by edition',
  },
  notes: ['Type B up to 16 A at 3 kA: the adiabatic equation gives 1.065 mm² where the guide accepts 1.0.'],
});

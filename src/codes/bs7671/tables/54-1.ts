import { table } from '../../../core/index.js';
import { bs } from '../source.js';

/** Smallest buried earthing conductor. BS 7671 Table 54.1. */
export const table541 = /* @__PURE__ */ table({
  id: 'bs7671/54.1',
  title: 'Smallest buried earthing conductor',
  axes: [
    { name: 'metal', labels: ['copper', 'steel'] },
    {
      name: 'protection',
      labels: [
        'protected against corrosion and mechanical damage',
        'protected against corrosion only',
        'protected against mechanical damage only',
        'not protected',
      ],
    },
  ],
  rows: [
    ['protected against corrosion and mechanical damage', 2.5, 10],
    ['protected against corrosion only', 16, 16],
    ['protected against mechanical damage only', 25, 50],
    ['not protected', 25, 50],
  ],
  cell: 'minimumEarthingArea',
  unit: 'mm²',
  source: /* @__PURE__ */ bs('Table 54.1'),
  provenanceOf: { 'steel, protected against corrosion and mechanical damage': 'memory' },
  notes: [
    'Protected against both: 2.5 mm² is a floor only; the size follows from 543.1.',
    'Coated steel in the first two rows.',
  ],
});

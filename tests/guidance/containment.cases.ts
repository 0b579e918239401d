import { smallestConduit } from '../../src/guidance/index.js';
import { squareMillimetres } from '../../src/index.js';
import type { PublishedCase } from '../support/published.js';

/** Conduit by the terms of the guide. */
export const cases: readonly PublishedCase[] = [
  {
    id: 'conduit-six-4-mm2-3-m',
    about: 'conduit for six cables of 4 mm² along 3 m straight',
    source: { document: 'Conduit and trunking capacity chart', where: 'technical resource of a wholesaler' },
    provenance: 'one-source',
    exercises: ['smallest-conduit', 'on-site-guide/conduit-cable-terms', 'on-site-guide/conduit-terms-straight'],
    ours: () =>
      smallestConduit({
        cables: [{ conductorArea: squareMillimetres(4), conductor: 'stranded', count: 6 }],
        length: 3,
        bends: 0,
      }),
    published: 20,
    unit: 'mm',
    tolerance: 1e-9,
  },
  {
    id: 'conduit-eleven-cables-three-bends-5-m',
    about: 'conduit for eleven cables of 1 to 2.5 mm² along 5 m with three bends',
    source: { document: 'Notes of an electrical technician', where: 'conduit factors, three bends' },
    provenance: 'one-source',
    exercises: ['smallest-conduit', 'on-site-guide/conduit-cable-terms', 'on-site-guide/conduit-terms-long'],
    ours: () =>
      smallestConduit({
        cables: [
          { conductorArea: squareMillimetres(2.5), conductor: 'stranded', count: 3 },
          { conductorArea: squareMillimetres(1.5), conductor: 'stranded', count: 4 },
          { conductorArea: squareMillimetres(1), conductor: 'solid', count: 4 },
        ],
        length: 5,
        bends: 3,
      }),
    published: 25,
    unit: 'mm',
    tolerance: 1e-9,
  },
];

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
];

import { table } from '../../../core/index.js';

/**
 * Distances between metal on an electrode of its own and metal on the earth of the supply, as installers quote them.
 * Guidance of the trade, separation of earthing systems.
 */
export const earthSeparations = /* @__PURE__ */ table({
  id: 'bs7671/722-separation',
  title: 'Distance between metal on two earthing systems',
  axes: [{ name: 'place', labels: ['arms-reach', 'above-ground', 'buried', 'buried-old', 'street-furniture'] }],
  rows: [
    ['arms-reach', 2.5],
    ['above-ground', 2],
    ['buried', 3.5],
    ['buried-old', 10],
    ['street-furniture', 2.5],
  ],
  cell: 'requiredSeparation',
  unit: 'm',
  source: {
    document: 'guidance of the trade',
    clause: 'separation of earthing systems',
    provenance: 'one-source',
    note: 'BS 7671 prints no single figure; the electrode of another system is a matter of the site',
  },
  provenanceOf: { 'street-furniture': 'memory' },
  notes: ['The 10 m figure is contradicted by others; the 3.5 m figure is one network operator’s.'],
});

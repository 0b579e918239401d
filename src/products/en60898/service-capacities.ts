import { table } from '../../core/index.js';

/** Service short-circuit capacity of circuit-breakers by their rated capacity. EN 60898-1. */
export const serviceCapacities = /* @__PURE__ */ table({
  id: 'en60898/service-capacities',
  title: 'Service short-circuit capacity of circuit-breakers',
  axes: [
    { name: 'capacity', labels: ['service'] },
    { name: 'breakingCapacity', unit: 'A', between: 'exact' },
  ],
  rows: `
    capacity service
    1500        1500
    3000        3000
    4500        4500
    6000        6000
    10000       7500
    15000       7500
    20000      10000
    25000      12500`,
  cell: 'breakingLimit',
  unit: 'A',
  source: {
    document: 'EN 60898-1',
    clause: 'rated short-circuit capacities',
    provenance: 'memory',
    note: 'up to 6 kA in two sources',
  },
  provenanceOf: { '1500 to 6000': 'two-sources' },
});

import { table } from '../../core/index.js';

/** Current that meter tails carry, as distributors in Great Britain ask for them by the rating of the cut-out. */
export const meterTails = /* @__PURE__ */ table({
  id: 'gb-network/meter-tails',
  title: 'Current that meter tails carry',
  axes: [
    { name: 'tails', labels: ['copper'] },
    { name: 'tailsArea', unit: 'mm²', between: 'exact' },
  ],
  rows: `
    tails copper
    16        80
    25       100`,
  cell: 'tailsCapacity',
  unit: 'A',
  source: { document: 'requirements of distributors', clause: 'meter tails', provenance: 'common-practice' },
  notes: ['Up to 3 m, not under thermal insulation. The distributor’s own figure goes before it.'],
});

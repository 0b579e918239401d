import { table } from '../../../core/index.js';
import { bs } from '../source.js';

/** Smallest main protective bonding conductor where PME applies. BS 7671 Table 54.8. */
export const table548 = /* @__PURE__ */ table({
  id: 'bs7671/54.8',
  title: 'Smallest main protective bonding conductor where PME applies, copper',
  axes: [
    { name: 'metal', labels: ['copper'] },
    {
      name: 'supplyNeutralArea',
      unit: 'mm²',
      between: 'next-up',
      allowedBy: 'bands of the supply neutral',
      below: 'first',
    },
  ],
  rows: `
    metal copper
    35        10
    50        16
    95        25
    150       35
    2000      50`,
  cell: 'minimumBondingArea',
  unit: 'mm²',
  source: /* @__PURE__ */ bs('Table 54.8'),
  notes: [
    'By the copper-equivalent neutral of the supply; the last row stands for everything above 150 mm². The distributor may ask for more at the origin.',
  ],
});

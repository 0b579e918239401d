import { table } from '../../../core/index.js';
import { bs } from '../source.js';

/** Longest disconnection time of final circuits. BS 7671 Table 41.1. */
export const table411 = /* @__PURE__ */ table({
  id: 'bs7671/41.1',
  title: 'Longest disconnection time of final circuits',
  axes: [
    { name: 'system', labels: ['TN', 'TT'] },
    { name: 'current', labels: ['AC', 'DC'] },
    {
      name: 'nominalVoltage',
      unit: 'V',
      between: 'next-up',
      allowedBy: 'Table 41.1 gives bands of U_0',
      below: 'first',
    },
  ],
  rows: `
    system   TN   TT  TN  TT
    current  AC   AC  DC  DC
    120     0.8  0.3   -   -
    230     0.4  0.2   1 0.4
    400     0.2 0.07 0.4 0.2
    1000    0.1 0.04 0.1 0.1`,
  cell: 'requiredTime',
  unit: 's',
  source: /* @__PURE__ */ bs('Table 41.1', 'one-source', 'TN and TT a.c. up to 230 V and TN a.c. above: two sources'),
  provenanceOf: { 'TN DC, 230': 'memory', 'TN AC': 'two-sources', 'TT AC, 230': 'two-sources' },
  notes: [
    'Each row holds for nominal voltages above the row before (the first above 50 V) up to its own; the last row stands for everything above 400 V up to the limit of low voltage.',
    'From 2018: final circuits up to 63 A with one or more socket-outlets and up to 32 A supplying only fixed equipment; before, all final circuits up to 32 A.',
    'No time where disconnection is not needed against shock.',
    'TN, d.c., 120 to 230 V: 5 s in the text of 2008, 1 s recalled from the text of 2018; the stricter stands here.',
  ],
});

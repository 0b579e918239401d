import { table } from '../../../core/index.js';
import { bs } from '../source.js';

/** Longest disconnection time of distribution circuits and of final circuits outside Table 41.1. BS 7671 411.3.2.3, 411.3.2.4. */
export const distributionTimes = /* @__PURE__ */ table({
  id: 'bs7671/411.3.2',
  title: 'Longest disconnection time of distribution circuits and larger final circuits',
  axes: [
    { name: 'supply', labels: ['any'] },
    { name: 'system', labels: ['TN', 'TT'] },
  ],
  rows: [
    ['TN', 5],
    ['TT', 1],
  ],
  cell: 'requiredTime',
  unit: 's',
  source: /* @__PURE__ */ bs('411.3.2.3, 411.3.2.4'),
});

import { table } from '../../../core/index.js';
import { bs } from '../source.js';

/** Flexible cords, copper: current-carrying capacity. BS 7671 Table 4F3A. */
export const table4F3A = /* @__PURE__ */ table({
  id: 'bs7671/4f3a',
  title: 'Flexible cords, copper: current-carrying capacity',
  axes: [
    { name: 'system', labels: ['single-phase', 'three-phase'] },
    { name: 'conductorArea', unit: 'mm²', between: 'exact' },
  ],
  rows: `
    system single-phase three-phase
    0.5               3           3
    0.75              6           6
    1                10          10
    1.25             13           -
    1.5              16          16
    2.5              25          20
    4                32          25`,
  cell: 'tabulatedCapacity',
  unit: 'A',
  source: /* @__PURE__ */ bs('Table 4F3A', 'one-source', 'stood in a distributor’s technical table'),
});

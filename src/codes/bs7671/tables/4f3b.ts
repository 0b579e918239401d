import { table } from '../../../core/index.js';
import { bs } from '../source.js';

/** Flexible cords, copper: voltage drop. BS 7671 Table 4F3B. */
export const table4F3B = /* @__PURE__ */ table({
  id: 'bs7671/4f3b',
  title: 'Flexible cords, copper: voltage drop',
  axes: [
    { name: 'system', labels: ['single-phase', 'three-phase'] },
    { name: 'component', labels: ['z'] },
    { name: 'conductorArea', unit: 'mm²', between: 'exact' },
  ],
  rows: `
    system    single-phase three-phase
    component            z           z
    0.5                 93          80
    0.75                62          54
    1                   46          40
    1.25                37           -
    1.5                 32          27
    2.5                 19          16
    4                   12          10`,
  cell: 'dropRate',
  unit: 'V/(A·m)',
  per: 1000,
  printed: 'mV/A/m',
  source: /* @__PURE__ */ bs('Table 4F3B', 'two-sources', 'stood in the technical tables of two distributors'),
});

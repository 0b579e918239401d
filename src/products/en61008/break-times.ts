import { table } from '../../core/index.js';

/**
 * Largest break time of residual current devices by multiple of the rated residual current. EN 61008-1, EN 61009-1. EN
 * 61008-1; EN 61009-1, break times.
 */
export const residualBreakTimes = /* @__PURE__ */ table({
  id: 'en61008/break-times',
  title: 'Largest break time of residual current devices',
  axes: [
    { name: 'delay', labels: ['general', 'selective'] },
    { name: 'residualMultiple', unit: '1', between: 'exact' },
  ],
  rows: `
    delay general selective
    1         300       500
    2         150       200
    5          40       150`,
  cell: 'disconnectionTime',
  unit: 's',
  per: 1000,
  printed: 'ms',
  source: { document: 'EN 61008-1; EN 61009-1', clause: 'break times', provenance: 'two-sources' },
  notes: ['Alternating residual current. Up to 30 mA, 0.25 A may stand for five times the rated current.'],
});

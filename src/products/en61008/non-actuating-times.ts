import { table } from '../../core/index.js';

/**
 * Times for which a selective residual current device must not operate. EN 61008-1, EN 61009-1. EN 61008-1; EN
 * 61009-1, non-actuating times.
 */
export const residualNonActuatingTimes = /* @__PURE__ */ table({
  id: 'en61008/non-actuating-times',
  title: 'Non-actuating time of selective residual current devices',
  axes: [
    { name: 'delay', labels: ['selective'] },
    { name: 'residualMultiple', unit: '1', between: 'exact' },
  ],
  rows: `
    delay selective
    1           130
    2            60
    5            50`,
  cell: 'operatingTime',
  unit: 's',
  per: 1000,
  printed: 'ms',
  source: { document: 'EN 61008-1; EN 61009-1', clause: 'non-actuating times', provenance: 'two-sources' },
  provenanceOf: { '2': 'one-source' },
  notes: ['At twice the rated current one tester manual prints 50 ms; the standard has 60 ms.'],
});

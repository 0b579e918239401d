import { table } from '../../../core/index.js';
import { bs } from '../source.js';

/** Ambient factors that go with the 90 °C flexible cables of Table 4F2A. BS 7671. */
export const table4FAmbient = /* @__PURE__ */ table({
  id: 'bs7671/4f-ambient',
  title: 'Ambient temperature factors of the flexible cables of Table 4F2A',
  axes: [{ name: 'ambientTemperature', unit: '°C', between: 'next-up', allowedBy: 'the safe side' }],
  rows: `
    35 0.95
    40 0.91
    45 0.86
    50 0.82
    55 0.76
    60  0.7
    65 0.64
    70 0.57
    75  0.5
    80  0.4
    85 0.28`,
  cell: 'ambientFactor',
  unit: '1',
  source: /* @__PURE__ */ bs('Table 4F2A, notes', 'one-source', 'differ by 0.01 here and there from Table 4B1'),
});

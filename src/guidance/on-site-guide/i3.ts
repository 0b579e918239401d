import { table } from '../../core/index.js';

/** Resistance at the operating temperature over that at 20 °C. On-Site Guide Table I3. */
export const tableI3 = /* @__PURE__ */ table({
  id: 'on-site-guide/i3',
  title: 'Resistance at the operating temperature over that at 20 °C',
  axes: [
    { name: 'laid', labels: ['in cable or bunched', 'not bunched'] },
    { name: 'insulation', labels: ['70 °C thermoplastic', '85 °C thermosetting (rubber)', '90 °C thermosetting'] },
  ],
  rows: [
    ['70 °C thermoplastic', 1.2, 1.04],
    ['85 °C thermosetting (rubber)', 1.26, 1.04],
    ['90 °C thermosetting', 1.28, 1.04],
  ],
  cell: 'temperatureFactor',
  unit: '1',
  source: {
    document: 'On-Site Guide',
    clause: 'Table I3',
    provenance: 'memory',
    note: '1.20 for 70 °C in two sources',
  },
});

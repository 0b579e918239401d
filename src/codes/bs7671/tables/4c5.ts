import { table } from '../../../core/index.js';

/** Rating factor for groups of circuits of single-core cables on trays. BS 7671 Table 4C5. */
export const table4C5 = /* @__PURE__ */ table({
  id: 'bs7671/4c5',
  title: 'Rating factor for three-phase circuits of single-core cables on trays',
  axes: [
    { name: 'formation', labels: ['flat touching', 'trefoil spaced'] },
    { name: 'support', labels: ['perforated tray', 'vertical perforated tray', 'ladder, cleats'] },
    { name: 'trays', labels: ['1', '2', '3'] },
    { name: 'circuitsInGroup', unit: '1', between: 'next-up', allowedBy: 'the safe side' },
  ],
  columns: [
    ['flat touching', 'perforated tray', '1'],
    ['flat touching', 'perforated tray', '2'],
    ['flat touching', 'perforated tray', '3'],
    ['flat touching', 'vertical perforated tray', '1'],
    ['flat touching', 'vertical perforated tray', '2'],
    ['flat touching', 'ladder, cleats', '1'],
    ['flat touching', 'ladder, cleats', '2'],
    ['flat touching', 'ladder, cleats', '3'],
    ['trefoil spaced', 'perforated tray', '1'],
    ['trefoil spaced', 'perforated tray', '2'],
    ['trefoil spaced', 'perforated tray', '3'],
    ['trefoil spaced', 'vertical perforated tray', '1'],
    ['trefoil spaced', 'vertical perforated tray', '2'],
    ['trefoil spaced', 'ladder, cleats', '1'],
    ['trefoil spaced', 'ladder, cleats', '2'],
    ['trefoil spaced', 'ladder, cleats', '3'],
  ],
  rows: [
    [1, 0.98, 0.96, 0.95, 0.96, 0.95, 1, 0.98, 0.97, 1, 0.97, 0.96, 1, 1, 1, 0.97, 0.96],
    [2, 0.91, 0.87, 0.85, 0.86, 0.84, 0.97, 0.93, 0.9, 0.98, 0.93, 0.92, 0.91, 0.9, 1, 0.95, 0.94],
    [3, 0.87, 0.81, 0.78, null, null, 0.96, 0.89, 0.86, 0.96, 0.89, 0.86, 0.89, 0.86, 1, 0.93, 0.9],
  ],
  cell: 'groupFactor',
  unit: '1',
  source: {
    document: 'BS 7671',
    edition: '2018+A2:2022',
    clause: 'Table 4C5',
    provenance: 'one-source',
    note: 'flat touching on vertical perforated tray recalled',
  },
});

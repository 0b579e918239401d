import { table } from '../../../core/index.js';

/** Constants of the heat that cables give to free air, without sun. IEC 60287-2-1. */
export const airDissipation = /* @__PURE__ */ table({
  id: 'iec60287/air-dissipation',
  title: 'Constants of the heat that cables give to free air, without sun',
  axes: [
    { name: 'constant', labels: ['Z', 'E', 'g'] },
    {
      name: 'formation',
      labels: [
        'one-spaced',
        'two-touching-horizontal',
        'three-trefoil',
        'three-touching-horizontal',
        'two-touching-vertical',
        'two-spaced-vertical',
        'three-touching-vertical',
        'three-spaced-vertical',
        'one-on-wall',
        'three-trefoil-on-wall',
      ],
    },
  ],
  rows: [
    ['one-spaced', 0.21, 3.94, 0.6],
    ['two-touching-horizontal', 0.29, 2.35, 0.5],
    ['three-trefoil', 0.96, 1.25, 0.2],
    ['three-touching-horizontal', 0.62, 1.95, 0.25],
    ['two-touching-vertical', 1.42, 0.86, 0.25],
    ['two-spaced-vertical', 0.75, 2.8, 0.3],
    ['three-touching-vertical', 1.61, 0.42, 0.2],
    ['three-spaced-vertical', 1.31, 2.0, 0.2],
    ['one-on-wall', 1.69, 0.63, 0.25],
    ['three-trefoil-on-wall', 0.94, 0.79, 0.2],
  ],
  cell: 'heatConstant',
  unit: '1',
  source: {
    document: 'IEC 60287-2-1',
    clause: 'cables in free air, constants Z, E and g',
    provenance: 'memory',
    note: 'the first row agrees with natural convection and radiation within 13 % from 8 to 80 mm',
  },
  notes: [
    'Cables spaced by a diameter or more side by side count as one.',
    'For cables up to 150 mm; on a wall up to 80 mm.',
  ],
});

import { table } from '../../../core/index.js';

/** Factors for flexible cable on a drum. BS 7671 Tables 4F, notes. */
export const table4FDrum = /* @__PURE__ */ table({
  id: 'bs7671/4f-drum',
  title: 'Rating factor of flexible cable on a drum',
  axes: [
    {
      name: 'drum',
      labels: [
        'radial, ventilated',
        'radial, unventilated',
        'ventilated cylindrical, 1 layer',
        'ventilated cylindrical, 2 layers',
        'ventilated cylindrical, 3 layers',
        'ventilated cylindrical, 4 layers',
      ],
    },
  ],
  rows: [
    ['radial, ventilated', 0.85],
    ['radial, unventilated', 0.75],
    ['ventilated cylindrical, 1 layer', 0.85],
    ['ventilated cylindrical, 2 layers', 0.65],
    ['ventilated cylindrical, 3 layers', 0.45],
    ['ventilated cylindrical, 4 layers', 0.35],
  ],
  cell: 'drumFactor',
  unit: '1',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: 'Tables 4F, notes', provenance: 'one-source' },
});

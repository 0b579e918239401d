import { table } from '../../core/index.js';

/**
 * Typical bands of soil resistivity: an answer from them is a range, and the electrode is measured after installing.
 * BS 7430; IEEE 142, typical resistivities.
 */
export const soilResistivities = /* @__PURE__ */ table({
  id: 'bs7430/soil-resistivity',
  title: 'Typical bands of soil resistivity',
  axes: [
    { name: 'end', labels: ['least', 'most'] },
    {
      name: 'soil',
      labels: [
        'well-graded gravel',
        'poorly graded gravel',
        'clayey gravel',
        'silty sand',
        'clayey sand',
        'silty or clayey sand, slight plasticity',
        'fine sandy soil',
        'gravelly clay',
        'inorganic clay, high plasticity',
        'surface soils',
        'clay',
        'sandy clay',
        'moist gravel',
        'dry gravel',
        'limestone',
        'porous limestone',
        'sandstone',
        'granite',
        'concrete',
      ],
    },
  ],
  rows: [
    ['well-graded gravel', 600, 1000],
    ['poorly graded gravel', 1000, 2500],
    ['clayey gravel', 200, 400],
    ['silty sand', 100, 800],
    ['clayey sand', 50, 200],
    ['silty or clayey sand, slight plasticity', 30, 80],
    ['fine sandy soil', 80, 300],
    ['gravelly clay', 20, 60],
    ['inorganic clay, high plasticity', 10, 55],
    ['surface soils', 1, 50],
    ['clay', 2, 100],
    ['sandy clay', 100, 150],
    ['moist gravel', 50, 700],
    ['dry gravel', 700, 1200],
    ['limestone', 5, 10000],
    ['porous limestone', 30, 100],
    ['sandstone', 20, 2000],
    ['granite', 900, 1100],
    ['concrete', 300, 500],
  ],
  cell: 'earthResistivity',
  unit: 'Ω·m',
  source: {
    document: 'BS 7430; IEEE 142',
    clause: 'typical resistivities',
    provenance: 'one-source',
    note: 'as quoted in one paper',
  },
  notes: ['Bands of the trade, not of the site: moisture and frost move them. Measure.'],
});

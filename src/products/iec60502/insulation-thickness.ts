import { table } from '../../core/index.js';

/** Nominal thickness of the insulation of cores for 0.6/1 kV. IEC 60502-1 Tables 5 and 6. */
export const insulationThicknesses = /* @__PURE__ */ table({
  id: 'iec60502/insulation-thickness',
  title: 'Nominal thickness of the insulation of cores, 0.6/1 kV',
  axes: [
    { name: 'insulation', labels: ['XLPE', 'PVC'] },
    { name: 'conductorArea', unit: 'mm²', between: 'exact' },
  ],
  rows: `
    insulation XLPE PVC
    1.5         0.7 0.8
    2.5         0.7 0.8
    4           0.7   1
    6           0.7   1
    10          0.7   1
    16          0.7   1
    25          0.9 1.2
    35          0.9 1.2
    50            1 1.4
    70          1.1 1.4
    95          1.1 1.6
    120         1.2 1.6
    150         1.4 1.8
    185         1.6   2
    240         1.7 2.2
    300         1.8 2.4
    400           2 2.6`,
  cell: 'insulationThickness',
  unit: 'mm',
  source: {
    document: 'IEC 60502-1',
    clause: 'Tables 5 and 6',
    provenance: 'one-source',
    note: 'XLPE from 2.5 mm² stands in lists of BS 5467 cable too; 1.5 mm²: 0.6 in one list, 0.7 in another',
  },
  provenanceOf: { 'XLPE, 2.5 to 95': 'two-sources' },
});

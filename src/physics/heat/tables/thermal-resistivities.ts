import { table } from '../../../core/index.js';

/** Thermal resistivity of materials of cables and ducts. IEC 60287-2-1. */
export const thermalResistivities = /* @__PURE__ */ table({
  id: 'iec60287/thermal-resistivity',
  title: 'Thermal resistivity of materials of cables and ducts',
  axes: [
    {
      name: 'material',
      labels: ['PVC', 'XLPE', 'EPR', 'PE', 'polychloroprene', 'fibre filler', 'PVC duct', 'concrete'],
    },
  ],
  rows: [
    ['PVC', 5],
    ['XLPE', 3.5],
    ['EPR', 3.5],
    ['PE', 3.5],
    ['polychloroprene', 5.5],
    ['fibre filler', 6],
    ['PVC duct', 6],
    ['concrete', 1],
  ],
  cell: 'thermalResistivity',
  unit: 'K·m/W',
  source: {
    document: 'IEC 60287-2-1',
    clause: 'thermal resistivities of materials',
    provenance: 'memory',
    note: 'PVC and EPR of cables up to 3 kV',
  },
  provenanceOf: { PVC: 'one-source', XLPE: 'one-source', PE: 'one-source' },
});

import { table } from '../../../core/index.js';

/** Heat capacity of a volume of materials of cables. IEC 60853-2. */
export const volumeHeatCapacities = /* @__PURE__ */ table({
  id: 'iec60853/volume-heat-capacity',
  title: 'Heat capacity of a volume of materials of cables',
  axes: [{ name: 'material', labels: ['copper', 'aluminium', 'steel', 'PVC', 'XLPE', 'EPR', 'PE', 'polychloroprene'] }],
  rows: [
    ['copper', 0.00345],
    ['aluminium', 0.0025],
    ['steel', 0.0038],
    ['PVC', 0.0017],
    ['XLPE', 0.0024],
    ['EPR', 0.002],
    ['PE', 0.0024],
    ['polychloroprene', 0.002],
  ],
  cell: 'volumeHeatCapacity',
  unit: 'J/(K·mm³)',
  source: { document: 'IEC 60853-2', clause: 'thermal properties of materials', provenance: 'memory' },
});

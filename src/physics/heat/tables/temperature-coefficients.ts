import { table } from '../../../core/index.js';

/** Temperature coefficient of the resistance of conductors at 20 °C. IEC 60287-1-1. */
export const temperatureCoefficients = /* @__PURE__ */ table({
  id: 'iec60287/temperature-coefficient',
  title: 'Temperature coefficient of the resistance of conductors at 20 °C',
  axes: [{ name: 'metal', labels: ['copper', 'aluminium'] }],
  rows: [
    ['copper', 0.00393],
    ['aluminium', 0.00403],
  ],
  cell: 'temperatureCoefficient',
  unit: '1/K',
  source: {
    document: 'IEC 60287-1-1',
    clause: 'resistivities and temperature coefficients',
    provenance: 'one-source',
    note: 'both figures stand in a handbook of industrial power engineering, properties of copper and aluminium',
  },
});

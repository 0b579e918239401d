import { table } from '../../core/index.js';

/** Resistance at the temperature of the test over that at 20 °C. On-Site Guide Table I2. */
export const tableI2 = /* @__PURE__ */ table({
  id: 'on-site-guide/i2',
  title: 'Resistance at the temperature of the test over that at 20 °C',
  axes: [
    { name: 'conductor', labels: ['copper'] },
    { name: 'testTemperature', unit: '°C', between: 'exact' },
  ],
  rows: `
    conductor copper
    5           0.94
    10          0.96
    15          0.98
    20             1
    25          1.02
    30          1.04`,
  cell: 'temperatureFactor',
  unit: '1',
  source: { document: 'On-Site Guide', clause: 'Table I2', provenance: 'memory' },
  provenanceOf: { '30': 'derived' },
});

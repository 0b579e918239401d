import { table } from '../../../core/index.js';
import { bs } from '../source.js';

/** Voltage of the insulation test, d.c.. BS 7671 Table 64. */
export const insulationTestVoltages = /* @__PURE__ */ table({
  id: 'bs7671/64-voltage',
  title: 'Voltage of the insulation test, d.c.',
  axes: [
    { name: 'quantity', labels: ['test'] },
    { name: 'circuit', labels: ['SELV and PELV', 'up to 500 V', 'above 500 V'] },
  ],
  rows: [
    ['SELV and PELV', 250],
    ['up to 500 V', 500],
    ['above 500 V', 1000],
  ],
  cell: 'insulationTestVoltage',
  unit: 'V',
  source: /* @__PURE__ */ bs('Table 64'),
  notes: [
    'Where connected equipment could be harmed or affect the result: 250 V d.c., live conductors together to earth, still 1 MΩ (circuits up to 500 V with surge protection that cannot be removed). One source.',
  ],
});

/** Smallest insulation resistance. BS 7671 Table 64. */
export const insulationResistanceLimits = /* @__PURE__ */ table({
  id: 'bs7671/64-resistance',
  title: 'Smallest insulation resistance',
  axes: [
    { name: 'quantity', labels: ['test'] },
    { name: 'circuit', labels: ['SELV and PELV', 'up to 500 V', 'above 500 V'] },
  ],
  rows: [
    ['SELV and PELV', 500000],
    ['up to 500 V', 1000000],
    ['above 500 V', 1000000],
  ],
  cell: 'insulationResistanceLimit',
  unit: 'Ω',
  source: /* @__PURE__ */ bs('Table 64'),
  notes: [
    'Where connected equipment could be harmed or affect the result: 250 V d.c., live conductors together to earth, still 1 MΩ (circuits up to 500 V with surge protection that cannot be removed). One source.',
  ],
});

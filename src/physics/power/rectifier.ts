import { formula } from '../../core/index.js';

/** Current that a rectifier takes on each line at its largest direct-current power, its lines loaded alike. Definition of power. */
export const rectifierCurrentOf = /* @__PURE__ */ formula({
  id: 'rectifier-current',
  title: 'Current of a rectifier from its direct-current power',
  inputs: ['directOutputPower', 'rectifierEfficiency', 'powerFactor', 'nominalVoltage', 'phases'],
  output: 'rectifierCurrent',
  expression: 'directOutputPower / (rectifierEfficiency * powerFactor * nominalVoltage * phases)',
  direction: { directOutputPower: 1, rectifierEfficiency: -1, powerFactor: -1, nominalVoltage: -1, phases: -1 },
  compute: ({ directOutputPower, rectifierEfficiency, powerFactor, nominalVoltage, phases }) =>
    directOutputPower / (rectifierEfficiency * powerFactor * nominalVoltage * phases),
  valid: { powerFactor: { above: 0, most: 1 } },
  source: {
    document: 'Definition of power',
    provenance: 'definition',
    note: 'lines loaded alike, nominal voltage; the power factor contains the harmonics',
  },
});

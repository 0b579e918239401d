import { multiplied } from '../../core/index.js';

/** Current that a rectifier takes on each line at its largest direct-current power, its lines loaded alike. Definition of power. */
export const rectifierCurrentOf = /* @__PURE__ */ multiplied({
  id: 'rectifier-current',
  title: 'Current of a rectifier from its direct-current power',
  times: ['directOutputPower'],
  over: ['rectifierEfficiency', 'powerFactor', 'nominalVoltage', 'phases'],
  output: 'rectifierCurrent',
  valid: { powerFactor: { above: 0, most: 1 } },
  source: {
    document: 'Definition of power',
    provenance: 'definition',
    note: 'lines loaded alike, nominal voltage; the power factor contains the harmonics',
  },
});

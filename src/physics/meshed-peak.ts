import { formula } from '../core/index.js';

/**
 * Factor κ of the peak current in a meshed network, method (b): from R/X at the place of the fault, with a margin for
 * branches of unlike ratio. IEC 60909-0, peak current in meshed networks.
 */
export const meshedPeakFactorOf = /* @__PURE__ */ formula({
  id: 'peak-factor-meshed',
  title: 'Factor of the peak current in a meshed network, method (b)',
  inputs: ['resistance', 'reactance'],
  output: 'peakFactor',
  expression: 'min(1.15 * (1.02 + 0.98 * exp(-3 * resistance / reactance)), 1.8)',
  compute: ({ resistance, reactance }) => Math.min(1.15 * (1.02 + 0.98 * Math.exp((-3 * resistance) / reactance)), 1.8),
  valid: { reactance: { above: 0 } },
  source: {
    document: 'IEC 60909-0',
    clause: 'peak current, meshed networks, method (b)',
    provenance: 'memory',
    note: 'low voltage: need not exceed 1.8. Against networks integrated in time it can be 12 % low where branches differ from R/X 0.02 to 2: method (c) is within 4 %',
  },
});

/**
 * Factor κ of the peak current in a meshed network, method (c): from the impedance at the place of the fault, worked out
 * at 0.4 of the nominal frequency (20 Hz of 50 Hz). IEC 60909-0, peak current in meshed networks.
 */
export const equivalentFrequencyPeakFactorOf = /* @__PURE__ */ formula({
  id: 'peak-factor-equivalent-frequency',
  title: 'Factor of the peak current in a meshed network, method (c)',
  inputs: ['resistance', 'reactance'],
  output: 'peakFactor',
  expression: '1.02 + 0.98 * exp(-3 * 0.4 * resistance / reactance)',
  compute: ({ resistance, reactance }) => 1.02 + 0.98 * Math.exp((-3 * 0.4 * resistance) / reactance),
  valid: { reactance: { above: 0 } },
  source: {
    document: 'IEC 60909-0',
    clause: 'peak current, meshed networks, method (c)',
    provenance: 'memory',
    note: 'resistance and reactance are those of the network at 0.4 of its frequency, every reactance 0.4 times',
  },
});

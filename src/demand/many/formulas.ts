import { formula, multiplied } from '../../core/index.js';

/**
 * Demand of like dwellings on one riser by a simultaneity factor. Definition of a simultaneity factor.
 */
export const riserDemand = /* @__PURE__ */ multiplied({
  id: 'riser-demand',
  title: 'Demand of dwellings on one riser',
  times: ['dwellings', 'dwellingPower', 'simultaneityFactor'],
  output: 'groupPower',
  source: { document: 'definition of a simultaneity factor', provenance: 'definition' },
});

/** Current of a group of consumers on one line, from its apparent power. Definition of apparent power. */
export const groupCurrentOfLine = /* @__PURE__ */ multiplied({
  id: 'group-current-of-line',
  title: 'Current of a group of consumers on one line',
  times: ['groupPower', 'groupLineShare'],
  over: ['nominalVoltage'],
  output: 'existingDemand',
  source: { document: 'definition of apparent power', provenance: 'definition' },
});

/** Current of a group of consumers on one line, from its active power. Definition of the power factor. */
export const groupActiveCurrentOfLine = /* @__PURE__ */ formula({
  id: 'group-active-current-of-line',
  title: 'Current of a group of consumers on one line, from its active power',
  inputs: ['groupActivePower', 'powerFactor', 'groupLineShare', 'nominalVoltage'],
  output: 'existingDemand',
  expression: 'groupActivePower * groupLineShare / (powerFactor * nominalVoltage)',
  compute: ({ groupActivePower, powerFactor, groupLineShare, nominalVoltage }) =>
    (groupActivePower * groupLineShare) / (powerFactor * nominalVoltage),
  valid: { powerFactor: { above: 0 } },
  source: { document: 'definition of the power factor', provenance: 'definition' },
});

/**
 * Demand of many like consumers from a coincidence that falls with the root of their number. Network design practice,
 * g = g_∞ + (1 − g_∞)/√N.
 */
export const rootCoincidence = /* @__PURE__ */ formula({
  id: 'root-coincidence',
  title: 'Coincidence that falls with the root of the number',
  inputs: ['dwellings', 'largestPower', 'coincidenceLimit'],
  output: 'groupActivePower',
  expression: 'dwellings * largestPower * (coincidenceLimit + (1 - coincidenceLimit) / sqrt(dwellings))',
  compute: ({ dwellings, largestPower, coincidenceLimit }) =>
    dwellings * largestPower * (coincidenceLimit + (1 - coincidenceLimit) / Math.sqrt(dwellings)),
  source: {
    document: 'network design practice',
    clause: 'g = g_∞ + (1 − g_∞)/√N',
    provenance: 'memory',
    note: 'the form is recalled; every constant is the user’s',
  },
});

/**
 * Probability that a charge point charges at the busiest instant, for arrivals spread evenly over a window. Uniform
 * arrivals of fixed duration.
 */
export const chargingProbability = /* @__PURE__ */ formula({
  id: 'charging-probability',
  title: 'Probability of charging at the busiest instant',
  inputs: ['participation', 'sessionDuration', 'arrivalWindow'],
  output: 'chargeProbability',
  expression: 'participation * min(1, sessionDuration / arrivalWindow)',
  compute: ({ participation, sessionDuration, arrivalWindow }) =>
    participation * Math.min(1, sessionDuration / arrivalWindow),
  source: { document: 'uniform arrivals of fixed duration', provenance: 'derived' },
});

import { formula } from '../../core/index.js';

/**
 * Demand of dwellings on one riser by a simultaneity factor. NF C 14-100, as reproduced in an installation handbook.
 */
export const riserDemand = /* @__PURE__ */ formula({
  id: 'riser-demand',
  title: 'Demand of dwellings on one riser',
  inputs: ['dwellings', 'dwellingPower', 'simultaneityFactor'],
  output: 'groupPower',
  expression: 'dwellings * dwellingPower * simultaneityFactor',
  compute: ({ dwellings, dwellingPower, simultaneityFactor }) => dwellings * dwellingPower * simultaneityFactor,
  source: { document: 'NF C 14-100', clause: 'as reproduced in an installation handbook', provenance: 'one-source' },
});

/**
 * Demand of many like dwellings from their demand after diversity and a constant term, both the user's. British
 * network design practice, N·ADMD·(1 + P_c/(N·ADMD)).
 */
export const afterDiversityGroup = /* @__PURE__ */ formula({
  id: 'after-diversity-group',
  title: 'Demand after diversity with a constant term',
  inputs: ['dwellings', 'afterDiversityDemand', 'groupConstant', 'unbalanceAllowance'],
  output: 'groupActivePower',
  expression: 'unbalanceAllowance * (dwellings * afterDiversityDemand + groupConstant)',
  compute: ({ dwellings, afterDiversityDemand, groupConstant, unbalanceAllowance }) =>
    unbalanceAllowance * (dwellings * afterDiversityDemand + groupConstant),
  source: {
    document: 'British network design practice',
    clause: 'N·ADMD·(1 + P_c/(N·ADMD))',
    provenance: 'memory',
    note: 'the form is recalled; every constant is the user’s',
  },
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
 * Demand of many consumers from the energy that they use in a year. Nordic network design practice, P = k_1·W +
 * k_2·√W.
 */
export const energyToPeak = /* @__PURE__ */ formula({
  id: 'energy-to-peak',
  title: 'Peak from the energy of a year',
  inputs: ['annualEnergy', 'linearCoefficient', 'rootCoefficient'],
  output: 'groupActivePower',
  expression:
    '(linearCoefficient * (annualEnergy / kilowattHour) + rootCoefficient * sqrt(annualEnergy / kilowattHour)) * kilowatt',
  constants: { kilowattHour: [1000, 'Wh'], kilowatt: [1000, 'W'] },
  compute: ({ annualEnergy, linearCoefficient, rootCoefficient }) =>
    (linearCoefficient * (annualEnergy / 1000) + rootCoefficient * Math.sqrt(annualEnergy / 1000)) * 1000,
  source: {
    document: 'Nordic network design practice',
    clause: 'P = k_1·W + k_2·√W',
    provenance: 'memory',
    note: 'the form is recalled; both coefficients are the user’s',
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

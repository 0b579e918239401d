import { advice, rule, type Source } from '../../core/index.js';

/** The process of the distributors for charge points and heat pumps. */
export const connectionProcess: Source = {
  document: 'ENA process for charge points and heat pumps',
  clause: 'application form and flow chart',
  provenance: 'two-sources',
};
const oneText = (clause: string): Source => ({
  document: 'ENA process for charge points and heat pumps',
  clause,
  provenance: 'one-source',
});

/** The demand is at most 60 A a line. ENA process for charge points and heat pumps, application form and flow chart. */
export const demandForNotice = /* @__PURE__ */ rule({
  id: 'demand-for-notice',
  title: 'Maximum demand with the charge points is at most 60 A',
  of: ['demand', 'at-most', 'notifyThreshold'],
  source: connectionProcess,
});

/**
 * The demand of a single-phase supply is at most 13.8 kVA. ENA process for charge points and heat pumps, application
 * form and flow chart.
 */
export const powerForNotice = /* @__PURE__ */ rule({
  id: 'power-for-notice',
  title: 'Maximum demand of a single-phase supply is at most 13.8 kVA',
  of: ['demandPower', 'at-most', 'notifyThresholdPower'],
  source: connectionProcess,
});

/**
 * The demand is at most the rating of the cut-out. ENA process for charge points and heat pumps, application form and
 * flow chart.
 */
export const cutOutForNotice = /* @__PURE__ */ rule({
  id: 'cut-out-for-notice',
  title: 'Maximum demand is at most the rating of the cut-out, which is known',
  of: ['demand', 'at-most', 'cutOutRating'],
  source: connectionProcess,
});

/** Cut-out and service are sound. ENA process for charge points and heat pumps, application form and flow chart. */
export const cutOutIsSound = /* @__PURE__ */ rule({
  id: 'cut-out-is-sound',
  title: 'The cut-out and its service are sound',
  source: connectionProcess,
  caution: 'An unsafe cut-out is reported to the distributor at once, charge point or not.',
});

/** The service is not looped. ENA process for charge points and heat pumps, application form and flow chart. */
export const serviceNotLooped = /* @__PURE__ */ rule({
  id: 'service-not-looped',
  title: 'The service is not looped with a neighbour’s',
  source: connectionProcess,
});

/** The supply is metered. ENA process for charge points and heat pumps, unmetered supplies. */
export const supplyIsMetered = /* @__PURE__ */ rule({
  id: 'supply-is-metered',
  title: 'The supply is metered',
  source: /* @__PURE__ */ oneText('unmetered supplies'),
});

/**
 * It is not one of several installations planned close together. ENA process for charge points and heat pumps, planned
 * programmes.
 */
export const singleInstallation = /* @__PURE__ */ advice({
  id: 'single-installation',
  title: 'The work is not one of several installations planned close together',
  source: /* @__PURE__ */ oneText('planned programmes'),
});

/**
 * The operator has nothing to change at the supply. ENA process for charge points and heat pumps, upgrades that are
 * certainly needed.
 */
export const supplyStays = /* @__PURE__ */ rule({
  id: 'supply-stays',
  title: 'The supply stays as it is',
  source: /* @__PURE__ */ oneText('upgrades that are certainly needed'),
});

/** All generation and storage together is at most 16 A a line. ENA EREC G98, scope; above it G99. */
export const sourcesForNotice = /* @__PURE__ */ rule({
  id: 'sources-for-notice',
  title: 'Generation and storage together are at most 16 A a line',
  of: ['sourceCurrent', 'at-most', 'sourceCurrentLimit'],
  source: { document: 'ENA EREC G98', clause: 'scope; above it G99', provenance: 'two-sources' },
  caution: 'Above it permission is needed before installing (G99).',
});

/**
 * Generation and storage with a charge point that feeds back stay within what its form serves. ENA process for charge
 * points and heat pumps, charge points that feed back: 17 kW single-phase, 50 kW three-phase.
 */
export const sourcesForOneForm = /* @__PURE__ */ rule({
  id: 'sources-for-one-form',
  title: 'Generation and storage, vehicles that feed back included, are at most what the form for charge points serves',
  of: ['sourcePower', 'at-most', 'sourcePowerLimit'],
  source: /* @__PURE__ */ oneText('charge points that feed back: 17 kW single-phase, 50 kW three-phase'),
});

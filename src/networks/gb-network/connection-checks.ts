import { comparison, type Source, statement } from '../../core/index.js';

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
export const demandForNotice = /* @__PURE__ */ comparison({
  id: 'demand-for-notice',
  title: 'Maximum demand with the charge points is at most 60 A',
  kind: 'at-most',
  value: 'demand',
  limit: 'notifyThreshold',
  weight: 'rule',
  source: connectionProcess,
});

/**
 * The demand of a single-phase supply is at most 13.8 kVA. ENA process for charge points and heat pumps, application
 * form and flow chart.
 */
export const powerForNotice = /* @__PURE__ */ comparison({
  id: 'power-for-notice',
  title: 'Maximum demand of a single-phase supply is at most 13.8 kVA',
  kind: 'at-most',
  value: 'demandPower',
  limit: 'notifyThresholdPower',
  weight: 'rule',
  source: connectionProcess,
});

/**
 * The demand is at most the rating of the cut-out. ENA process for charge points and heat pumps, application form and
 * flow chart.
 */
export const cutOutForNotice = /* @__PURE__ */ comparison({
  id: 'cut-out-for-notice',
  title: 'Maximum demand is at most the rating of the cut-out, which is known',
  kind: 'at-most',
  value: 'demand',
  limit: 'cutOutRating',
  weight: 'rule',
  source: connectionProcess,
});

/** Cut-out and service are sound. ENA process for charge points and heat pumps, application form and flow chart. */
export const cutOutIsSound = /* @__PURE__ */ statement({
  id: 'cut-out-is-sound',
  title: 'The cut-out and its service are sound',
  weight: 'rule',
  source: connectionProcess,
  caution: 'An unsafe cut-out is reported to the distributor at once, charge point or not.',
});

/** The service is not looped. ENA process for charge points and heat pumps, application form and flow chart. */
export const serviceNotLooped = /* @__PURE__ */ statement({
  id: 'service-not-looped',
  title: 'The service is not looped with a neighbour’s',
  weight: 'rule',
  source: connectionProcess,
});

/** The supply is metered. ENA process for charge points and heat pumps, unmetered supplies. */
export const supplyIsMetered = /* @__PURE__ */ statement({
  id: 'supply-is-metered',
  title: 'The supply is metered',
  weight: 'rule',
  source: /* @__PURE__ */ oneText('unmetered supplies'),
});

/**
 * It is not one of several installations planned close together. ENA process for charge points and heat pumps, planned
 * programmes.
 */
export const singleInstallation = /* @__PURE__ */ statement({
  id: 'single-installation',
  title: 'The work is not one of several installations planned close together',
  weight: 'advice',
  source: /* @__PURE__ */ oneText('planned programmes'),
});

/**
 * The operator has nothing to change at the supply. ENA process for charge points and heat pumps, upgrades that are
 * certainly needed.
 */
export const supplyStays = /* @__PURE__ */ statement({
  id: 'supply-stays',
  title: 'The supply stays as it is',
  weight: 'rule',
  source: /* @__PURE__ */ oneText('upgrades that are certainly needed'),
});

/** All generation and storage together is at most 16 A a line. ENA EREC G98, scope; above it G99. */
export const sourcesForNotice = /* @__PURE__ */ comparison({
  id: 'sources-for-notice',
  title: 'Generation and storage together are at most 16 A a line',
  kind: 'at-most',
  value: 'sourceCurrent',
  limit: 'sourceCurrentLimit',
  weight: 'rule',
  source: { document: 'ENA EREC G98', clause: 'scope; above it G99', provenance: 'two-sources' },
  caution: 'Above it permission is needed before installing (G99).',
});

/**
 * Generation and storage with a charge point that feeds back stay within what its form serves. ENA process for charge
 * points and heat pumps, charge points that feed back: 17 kW single-phase, 50 kW three-phase.
 */
export const sourcesForOneForm = /* @__PURE__ */ comparison({
  id: 'sources-for-one-form',
  title: 'Generation and storage, vehicles that feed back included, are at most what the form for charge points serves',
  kind: 'at-most',
  value: 'sourcePower',
  limit: 'sourcePowerLimit',
  weight: 'rule',
  source: /* @__PURE__ */ oneText('charge points that feed back: 17 kW single-phase, 50 kW three-phase'),
});

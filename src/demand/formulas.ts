import { added, formula, multiplied, procedure } from '../core/index.js';

/** Current of a load after its share is taken. Definition of a demand factor. */
export const shareOfCurrent = /* @__PURE__ */ multiplied({
  id: 'share-of-current',
  title: 'Share of a connected current',
  times: ['connectedCurrent', 'demandFactor'],
  output: 'demand',
  source: { document: 'definition of a demand factor', provenance: 'definition' },
});

/** Apparent power of one line at the nominal voltage. Definition of apparent power. */
export const demandPowerOfLine = /* @__PURE__ */ multiplied({
  id: 'demand-power-of-line',
  title: 'Apparent power of one line',
  times: ['demand', 'nominalVoltage'],
  output: 'demandPower',
  source: { document: 'definition of apparent power', provenance: 'definition' },
});

/** Mean power over a metering interval; kWh of a half-hour times two are kW. Definition of power. */
export const meteredPowerOfInterval = /* @__PURE__ */ formula({
  id: 'metered-power-of-interval',
  title: 'Mean power over a metering interval',
  inputs: ['meteredEnergy', 'meteringInterval'],
  output: 'meteredPower',
  expression: 'meteredEnergy / meteringInterval',
  compute: ({ meteredEnergy, meteringInterval }) => (meteredEnergy * 3600) / meteringInterval,
  source: { document: 'definition of power', provenance: 'definition' },
});

/** Current of a metered power at a power factor of 1, on one line. Definition of power. */
export const meteredCurrentOfLine = /* @__PURE__ */ multiplied({
  id: 'metered-current-of-line',
  title: 'Current of a metered power, power factor 1, one line',
  times: ['meteredPower'],
  over: ['nominalVoltage'],
  output: 'meteredCurrent',
  source: { document: 'definition of power', provenance: 'definition' },
});

/**
 * Demand taken from a metered current, with a margin for what half-hour means hide and the season did not show.
 * Estimate from metered peaks.
 */
export const meteredDemandWithMargin = /* @__PURE__ */ formula({
  id: 'metered-demand-with-margin',
  title: 'Metered current with a margin',
  inputs: ['meteredCurrent', 'demandMargin'],
  output: 'existingDemand',
  expression: 'meteredCurrent * (1 + demandMargin)',
  compute: ({ meteredCurrent, demandMargin }) => meteredCurrent * (1 + demandMargin),
  source: { document: 'estimate from metered peaks', provenance: 'common-practice' },
});

/**
 * Demand of a load through the utilisation and simultaneity factors between it and the origin. IEC 60364 practice,
 * factors k_u and k_s.
 */
export const factorChain = /* @__PURE__ */ multiplied({
  id: 'factor-chain',
  title: 'Load times utilisation and simultaneity factors',
  times: ['connectedCurrent', 'utilisationFactor', 'simultaneityFactor'],
  output: 'existingDemand',
  source: { document: 'IEC 60364 practice', clause: 'factors k_u and k_s', provenance: 'one-source' },
});

/** Current that is left up to the rating of the cut-out. Difference. */
export const headroomOfLine = /* @__PURE__ */ added({
  id: 'headroom-of-line',
  title: 'Headroom up to the cut-out',
  plus: ['cutOutRating'],
  minus: ['demand'],
  output: 'headroom',
  signed: true,
  source: { document: 'difference', provenance: 'definition' },
});

/** Current that is left for one charge point on a line. Definition. Difference. */
export const headroomForPoint = /* @__PURE__ */ added({
  id: 'headroom-for-point',
  title: 'Current that is left for one charge point',
  plus: ['controlLimit'],
  minus: ['existingDemand', 'chargeCurrent'],
  output: 'headroom',
  signed: true,
  source: { document: 'difference', provenance: 'definition' },
});

/** What the search for a setting needs. */
export interface SettingSearch {
  /** What is left without the point, A, on each line that it uses. */
  readonly headrooms: readonly number[];
  /** Smallest running current, A. */
  readonly least: number;
  /** Largest setting that is looked for, A. */
  readonly most: number;
}

/**
 * Largest whole-ampere setting of a charge point that fits on every line it uses; 0 when not even the smallest does.
 * IEC 61851-1, smallest running current 6 A.
 */
export const largestFittingSetting = /* @__PURE__ */ procedure({
  id: 'largest-fitting-setting',
  title: 'Largest setting that fits',
  output: 'largestSetting',
  method:
    'the smallest headroom of the lines that the point uses, rounded down to whole amperes, not above the largest setting; nothing below the smallest running current',
  source: { document: 'IEC 61851-1', clause: 'smallest running current 6 A', provenance: 'two-sources' },
  run: ({ headrooms, least, most }: SettingSearch) => {
    const fits = Math.floor(Math.min(most, ...headrooms) + 1e-9);
    return fits >= least ? fits : 0;
  },
});

import { advice, alternatives, rule } from '../../core/index.js';
import { shockCaution } from './disconnection-checks.js';
import { bs } from './source.js';

/** Heat of a fault, said with every verdict on it. */
const heatCaution =
  'A conductor that does not withstand the fault burns its insulation or parts before the device has cleared: the next fault is then without protection.';

/** Withstand of the line conductor, k²S² >= I²t. BS 7671, 434.5.2. */
export const lineWithstands = /* @__PURE__ */ rule({
  id: 'line-conductor-adiabatic',
  title: 'The line conductor withstands the energy that the device lets through',
  of: ['withstandEnergy', 'at-least', 'letThrough'],
  source: /* @__PURE__ */ bs('434.5.2'),
  caution: heatCaution,
});

/** By 435.1, behind a device that protects against overload and breaks the fault, line conductors count as protected. */
export const lineProtectedByOverload = /* @__PURE__ */ rule({
  id: 'line-conductor-behind-overload-device',
  title: 'The device protects the line conductor against overload and breaks the fault current',
  of: ['deviceRating', 'at-most', 'capacity'],
  source: /* @__PURE__ */ bs('435.1', 'one-source'),
});

/** Either way. BS 7671, 434.5.2, 435.1. */
export const lineWithstandCheck = /* @__PURE__ */ alternatives({
  id: 'line-withstand',
  title: 'The line conductor is protected against fault current',
  weight: 'rule',
  source: /* @__PURE__ */ bs('434.5.2, 435.1'),
  caution: heatCaution,
});

/** The smallest line-neutral fault current operates the overcurrent device within 5 s. BS 7671, 434.5.2. */
export const lineNeutralClears = /* @__PURE__ */ advice({
  id: 'line-neutral-fault-clears',
  title: 'The smallest line-neutral fault current operates the overcurrent device within 5 s',
  of: ['minimumFaultCurrent', 'at-least', 'operatingCurrent'],
  source: /* @__PURE__ */ bs('434.5.2', 'one-source'),
  caution: 'A residual current device does not see a fault between line and neutral.',
});

/** S >= √(I²t)/k for the protective conductor. BS 7671, 543.1.3. */
export const protectiveWithstands = /* @__PURE__ */ rule({
  id: 'protective-conductor-adiabatic',
  title: 'The protective conductor is at least as large as the adiabatic equation asks',
  of: ['protectiveArea', 'at-least', 'minimumProtectiveArea'],
  source: /* @__PURE__ */ bs('543.1.3'),
  caution: shockCaution,
});

/** S >= S of Table 54.7. BS 7671, 543.1.4, Table 54.7. */
export const protectiveByTable = /* @__PURE__ */ rule({
  id: 'protective-conductor-by-table',
  title: 'The protective conductor is at least as large as the table asks',
  of: ['protectiveArea', 'at-least', 'minimumProtectiveArea'],
  source: /* @__PURE__ */ bs('543.1.4, Table 54.7'),
});

/** Either way. BS 7671, 543.1.1. */
export const protectiveConductorCheck = /* @__PURE__ */ alternatives({
  id: 'protective-conductor',
  title: 'The protective conductor is large enough',
  weight: 'rule',
  source: /* @__PURE__ */ bs('543.1.1'),
  caution: shockCaution,
});

/** A protective conductor that is neither in a cable nor enclosed: 4 mm², so that it lasts. BS 7671, 543.1.1. */
export const separateProtectiveLarge = /* @__PURE__ */ rule({
  id: 'separate-protective-conductor',
  title: 'A protective conductor of its own is large enough to last',
  of: ['protectiveArea', 'at-least', 'minimumProtectiveArea'],
  source: /* @__PURE__ */ bs('543.1.1'),
});

/** Conductors in parallel withstand a fault in one of them, fed from both of its ends. BS 7671 434.4. */
export const parallelConductorsWithstand = /* @__PURE__ */ rule({
  id: 'parallel-conductors-under-fault',
  title: 'Each of the conductors in parallel withstands a fault, fed from both of its ends',
  source: /* @__PURE__ */ bs('434.4', 'memory'),
  caution: 'A fault in one of several conductors in parallel is fed by the others from its far end as well.',
});

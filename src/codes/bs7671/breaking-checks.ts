import { advice, alternatives, rule } from '../../core/index.js';
import { bs } from './source.js';

/** I_cn >= I_pf. BS 7671, 434.5.1. */
export const ownBreakingCapacity = /* @__PURE__ */ rule({
  id: 'own-breaking-capacity',
  title: 'The device breaks the prospective current at its place by itself',
  of: ['breakingCapacity', 'at-least', 'maximumFaultCurrent'],
  source: /* @__PURE__ */ bs('434.5.1'),
});

/** Conditional rating of the assembly, or back-up by the device ahead. BS 7671, 434.5.1, 536.5. */
export const conditionalBreakingCapacity = /* @__PURE__ */ rule({
  id: 'conditional-breaking-capacity',
  title: 'The assembly, or the device ahead as back-up, is declared for the prospective current',
  of: ['breakingLimit', 'at-least', 'maximumFaultCurrent'],
  source: /* @__PURE__ */ bs('434.5.1, 536.5'),
});

/** By itself or with what stands ahead. BS 7671, 434.5.1. */
export const breakingCapacityCheck = /* @__PURE__ */ alternatives({
  id: 'breaking-capacity',
  title: 'The prospective current at the device is broken safely',
  weight: 'rule',
  source: /* @__PURE__ */ bs('434.5.1'),
  caution:
    'A device that breaks more than it is made for can burst. The motor contribution of connected machines is not counted.',
});

/** The fuse ahead holds while the circuit-breaker of the circuit trips. BS 7671, 536.4. */
export const discriminationCheck = /* @__PURE__ */ advice({
  id: 'discrimination-with-cut-out',
  title: 'A fault in the circuit does not melt the fuse ahead',
  of: ['maximumFaultCurrent', 'at-most', 'fuseHoldCurrent'],
  source: /* @__PURE__ */ bs('536.4', 'one-source'),
});

/** The device of a feeder ahead holds while the circuit-breaker of the circuit trips. BS 7671, 536.4. */
export const discriminationWithFeeder = /* @__PURE__ */ advice({
  id: 'discrimination-with-feeder-device',
  title: 'A fault in the circuit does not trip the device of the feeder ahead',
  of: ['maximumFaultCurrent', 'at-most', 'fuseHoldCurrent'],
  source: /* @__PURE__ */ bs('536.4', 'one-source'),
});

import { by, choose, derive, open, same, set, when } from '../../calculation/index.js';
import type { OvercurrentKind } from '../../installation/index.js';
import { operatingCurrentFromMultiple } from '../../physics/definitions.js';
import { ggGates } from '../../products/bs88/gg-gates.js';
import { oldInstantaneousBands } from '../../products/bs3871/instantaneous-bands.js';
import { instantaneousBands } from '../../products/en60898/instantaneous-bands.js';

/** Kind of an overcurrent device, by the way in which its operating current is found. */
export const familyOf = (kind: OvercurrentKind) => {
  if (kind.standard === 'BS 3871') return 'old circuit-breaker';
  return 'type' in kind ? 'circuit-breaker' : 'fuse';
};
/** Type of a circuit-breaker. */
export const typeOf = (kind: OvercurrentKind) => ('type' in kind ? kind.type : 'none');
/** Whether the standard of a fuse has gates; those of BS 1361, BS 1362 and BS 3036 have none. */
export const hasGates = ({ standard }: OvercurrentKind): boolean => standard === 'BS 88-2' || standard === 'BS 88-3';
/** The current at a gate that a fuse does not have. */
export const noGate = /* @__PURE__ */ open({ kind: 'fact', fact: 'gate of the fuse' });

/** How the overcurrent device of the circuit opens at once, by its standard. */
export const overcurrentDevice = () => ({
  circuit: {
    deviceFamily: derive(['deviceKind'], ({ deviceKind }) => familyOf(deviceKind)),
    tripType: derive(['deviceKind'], ({ deviceKind }) => typeOf(deviceKind)),
    gated: derive(['deviceKind'], ({ deviceKind }) => hasGates(deviceKind)),
    instantaneousTrip: choose('deviceFamily', {
      'circuit-breaker': by(operatingCurrentFromMultiple, undefined, {
        deviceMultiple: by(instantaneousBands, undefined, { edge: set('upper'), type: 'tripType' }),
      }),
      'old circuit-breaker': by(operatingCurrentFromMultiple, undefined, {
        deviceMultiple: by(oldInstantaneousBands, undefined, { edge: set('upper'), type: 'tripType' }),
      }),
      fuse: open({ kind: 'fact', fact: 'instantaneous trip', obtain: 'a fuse has none' }),
    }),
    clearingCurrent: choose('deviceFamily', {
      'circuit-breaker': same('instantaneousTrip'),
      'old circuit-breaker': same('instantaneousTrip'),
      fuse: when('gated', by(ggGates, undefined, { gate: set('most-0.1s') }), noGate),
    }),
  },
});

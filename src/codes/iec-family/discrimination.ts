import { by, choose, derive, set, weigh, when } from '../../calculation/index.js';
import { isMissing, missing } from '../../core/index.js';
import { operatingCurrentFromMultiple } from '../../physics/definitions.js';
import { ggGates } from '../../products/bs88/gg-gates.js';
import { oldInstantaneousBands } from '../../products/bs3871/instantaneous-bands.js';
import { instantaneousBands } from '../../products/en60898/instantaneous-bands.js';
import { familyOf, hasGates, noGate, typeOf } from './overcurrent-device.js';
import { ofAhead, ofCircuit } from './places.js';

/** What decides on discrimination where the standards do not. */
export const data = (obtain: string) => missing({ kind: 'fact', fact: 'discrimination with the device ahead', obtain });
const noGates =
  'the pre-arcing energy of the one ahead against the total energy of the other, from their makers: fuses to BS 1361, BS 1362 and BS 3036 have no gates';
const notAccepted = 'tables of the makers; the gates of gG fuses here are recalled figures and have to be accepted';

/**
 * Whether a device ahead holds while that of the circuit clears the largest fault: certain where the one needs at least
 * 0.1 s and the other less.
 */
export const discrimination = () => ({
  circuit: {
    acceptsMemory: ofCircuit((c) => c.options.acceptMemoryFigures === true),
    // not by the largest current: a feeder of which the length is not known may leave less
    opensAtOnce: derive(
      ['prospectiveAtOrigin', 'clearingCurrent'],
      ({ prospectiveAtOrigin, clearingCurrent }) => prospectiveAtOrigin >= clearingCurrent,
      { direction: { prospectiveAtOrigin: 1, clearingCurrent: -1 } },
    ),
  },
  ahead: {
    aheadKind: ofAhead((a) => a.device.kind, { called: 'kind of the device ahead' }),
    aheadRating: ofAhead((a) => a.device.rating, { called: 'rating of the device ahead' }),
    aheadFamily: derive(['aheadKind'], ({ aheadKind }) => familyOf(aheadKind)),
    aheadGated: derive(['aheadKind'], ({ aheadKind }) => hasGates(aheadKind)),
    aheadType: derive(['aheadKind'], ({ aheadKind }) => typeOf(aheadKind)),
    fuseHoldCurrent: choose('aheadFamily', {
      'circuit-breaker': by(operatingCurrentFromMultiple, undefined, {
        deviceMultiple: by(instantaneousBands, undefined, { edge: set('lower'), type: 'aheadType' }),
        deviceRating: 'aheadRating',
      }),
      'old circuit-breaker': by(operatingCurrentFromMultiple, undefined, {
        deviceMultiple: by(oldInstantaneousBands, undefined, { edge: set('lower'), type: 'aheadType' }),
        deviceRating: 'aheadRating',
      }),
      fuse: when(
        'aheadGated',
        by(ggGates, undefined, { gate: set('least-0.1s'), deviceRating: 'aheadRating' }),
        noGate,
      ),
    }),
    discriminationKnown: weigh(
      ['deviceKind', 'aheadKind', 'deviceRating', 'aheadRating', 'acceptsMemory', 'fuseHoldCurrent', 'clearingCurrent'],
      (v) => {
        if (isMissing(v.deviceKind)) return v.deviceKind;
        if (isMissing(v.aheadKind)) return v.aheadKind;
        if (isMissing(v.deviceRating)) return v.deviceRating;
        if (isMissing(v.aheadRating)) return v.aheadRating;
        const fuses = [v.deviceKind, v.aheadKind].filter((kind) => familyOf(kind) === 'fuse');
        if (!fuses.every(hasGates)) return data(noGates);
        if (fuses.length > 0 && v.acceptsMemory !== true) return data(notAccepted);
        if (isMissing(v.fuseHoldCurrent) || isMissing(v.clearingCurrent))
          return data('a rating without a gate here: tables of the makers');
        return true as const;
      },
      { direction: { deviceRating: 1, aheadRating: 1, fuseHoldCurrent: 1, clearingCurrent: 1 } },
    ),
    discriminationRests: derive(['deviceFamily', 'aheadFamily'], ({ deviceFamily, aheadFamily }) =>
      [
        'Weaker faults and overloads are not judged: compare the curves of the makers.',
        deviceFamily === 'fuse' || aheadFamily === 'fuse'
          ? 'Rests on gates of gG fuses from memory (grade C).'
          : 'Rests on the edges of the instantaneous bands of both devices.',
      ].join(' '),
    ),
  },
});

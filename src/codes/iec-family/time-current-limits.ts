import { ggEnvelope } from '../../products/bs88/gg-envelope.js';
import { ggGates } from '../../products/bs88/gg-gates.js';
import { breakerEnvelope } from '../../products/en60898/envelope.js';
import type { WiringCode } from '../wiring-code.js';

/** Limits between which the product standard of a device lets it operate. */
export const timeCurrentLimits: WiringCode['timeCurrentLimits'] = ({ kind: fact, rating }) => {
  if (fact.state !== 'known' || rating.state !== 'known') return undefined;
  const kind = fact.value;
  if (kind.standard === 'EN 60898' || kind.standard === 'EN 61009') return breakerEnvelope(kind.type, rating.value);
  // small and odd ratings have no gates
  const gated = kind.standard === 'BS 88-2' && ggGates.offers('deviceRating').includes(rating.value);
  return gated ? ggEnvelope(rating.value) : undefined;
};

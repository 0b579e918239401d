import type { DemandMethod } from '../method.js';
import { boardFactor, connectedLoad, utilisationChain } from './factors.js';
import { halfHourReadings, meteredPeak } from './measured.js';

/** Methods that belong to no guide, asked of every installation after those of the rules, in this order. */
export const generalMethods: readonly DemandMethod[] = [
  halfHourReadings,
  meteredPeak,
  boardFactor,
  utilisationChain,
  connectedLoad,
];

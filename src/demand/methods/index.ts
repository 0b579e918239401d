import type { DemandMethod } from '../method.js';
import { boardFactor, connectedLoad, utilisationChain } from './factors.js';
import { halfHourReadings, meteredPeak } from './measured.js';
import { guideDwelling, guideHotel, guideShop, guideShopRecalled } from './on-site-guide.js';
import { oneLineRule } from './one-line-rule.js';

/** Every method for one installation, in the order in which results are listed. */
export const demandMethods: readonly DemandMethod[] = [
  guideDwelling,
  guideShop,
  guideShopRecalled,
  guideHotel,
  oneLineRule,
  halfHourReadings,
  meteredPeak,
  boardFactor,
  utilisationChain,
  connectedLoad,
];

import type { Amperes, Ratio, VoltAmperes, Watts } from '../../units/index.js';
import type { Terms } from './term.js';

/** Roles of demand and supply adequacy. */
export interface DemandTerms {
  /** Connected load of a group I_con, A, 0 and up. */
  connectedCurrent: Amperes;
  /** Maximum demand I_d, A, 0 and up. */
  demand: Amperes;
  /** Maximum demand as apparent power S_d, VA, 0 and up. */
  demandPower: VoltAmperes;
  /** Demand of the installation without the charge points I_d,0, A, 0 and up. */
  existingDemand: Amperes;
  /** Current of the charge points I_ev, A, 0 and up. */
  chargeCurrent: Amperes;
  /** Power of the charge point P_ev, W, 0 and up. */
  chargePower: Watts;
  /** Demand factor k_d, 1, 0 to 1. */
  demandFactor: Ratio;
  /** Current limit of a load control I_lim, A, above 0. */
  controlLimit: Amperes;
}

/** Symbols, units and ranges of the roles of demand. */
export const demandTerms: Terms<DemandTerms> = {
  connectedCurrent: { symbol: 'I_con', unit: 'A', least: 0, words: 'connected load of a group' },
  demand: { symbol: 'I_d', unit: 'A', least: 0, words: 'maximum demand' },
  demandPower: { symbol: 'S_d', unit: 'VA', least: 0, words: 'maximum demand as apparent power' },
  existingDemand: {
    symbol: 'I_d,0',
    unit: 'A',
    least: 0,
    words: 'demand of the installation without the charge points',
  },
  chargeCurrent: { symbol: 'I_ev', unit: 'A', least: 0, words: 'current of the charge points' },
  chargePower: { symbol: 'P_ev', unit: 'W', least: 0, words: 'power of the charge point' },
  demandFactor: { symbol: 'k_d', unit: '1', least: 0, most: 1, words: 'demand factor' },
  controlLimit: { symbol: 'I_lim', unit: 'A', above: 0, words: 'current limit of a load control' },
};

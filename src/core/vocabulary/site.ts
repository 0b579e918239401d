import type { Metres, OhmMetres, Ratio, Seconds, SquareMillimetres, WattHours, Watts } from '../../units/index.js';
import type { Terms } from './term.js';

/** Roles of the whole job: quantities, hours, the vehicle's need. */
export interface SiteTerms {
  /** Energy that a vehicle needs E, Wh, 0 and up. */
  energyNeeded: WattHours;
  /** Share of the energy taken from the supply that reaches the battery η, 1, above 0 to 1. */
  chargeEfficiency: Ratio;
  /** Power available for charging P, W, 0 and up. */
  availablePower: Watts;
  /** Time to charge t_ch, s, 0 and up. */
  chargeTime: Seconds;
  /** Length of cable to order L_q, m, 0 and up. */
  cableQuantity: Metres;
  /** Share added to a length for waste w, 1, 0 to 1. */
  wasteShare: Ratio;
  /** Length added for terminations L_t, m, 0 and up. */
  terminationLength: Metres;
  /** Labour of a task t_w, s, 0 and up. */
  labour: Seconds;
  /** Number of things n, 1, 0 and up. */
  count: Ratio;
  /** Spacing of fixings d_f, m, above 0. */
  fixingSpacing: Metres;
  /** Cross-section of the meter tails S_tails, mm², above 0. */
  tailsArea: SquareMillimetres;
  /** Depth below the surface d, m, 0 to 10. */
  depth: Metres;
  /** Resistivity of the soil ρ, Ω·m, above 0. */
  earthResistivity: OhmMetres;
}

/** Symbols, units and ranges of the roles of the whole job. */
export const siteTerms: Terms<SiteTerms> = {
  energyNeeded: { symbol: 'E', unit: 'Wh', least: 0, words: 'energy that a vehicle needs' },
  chargeEfficiency: {
    symbol: 'η',
    unit: '1',
    above: 0,
    most: 1,
    words: 'share of the energy taken from the supply that reaches the battery',
  },
  availablePower: { symbol: 'P', unit: 'W', least: 0, words: 'power available for charging' },
  chargeTime: { symbol: 't_ch', unit: 's', least: 0, words: 'time to charge' },
  cableQuantity: { symbol: 'L_q', unit: 'm', least: 0, words: 'length of cable to order' },
  wasteShare: { symbol: 'w', unit: '1', least: 0, most: 1, words: 'share added to a length for waste' },
  terminationLength: { symbol: 'L_t', unit: 'm', least: 0, words: 'length added for terminations' },
  labour: { symbol: 't_w', unit: 's', least: 0, words: 'labour of a task' },
  count: { symbol: 'n', unit: '1', least: 0, words: 'number of things' },
  fixingSpacing: { symbol: 'd_f', unit: 'm', above: 0, words: 'spacing of fixings' },
  tailsArea: { symbol: 'S_tails', unit: 'mm²', above: 0, words: 'cross-section of the meter tails' },
  depth: { symbol: 'd', unit: 'm', least: 0, most: 10, words: 'depth below the surface' },
  earthResistivity: { symbol: 'ρ', unit: 'Ω·m', above: 0, words: 'resistivity of the soil' },
};

import type { Roles } from './term.js';

/** Roles of the whole job: quantities, hours, the vehicle's need. */
export const siteTerms = {
  /** Energy that a vehicle needs E, Wh, 0 and up. */
  energyNeeded: { symbol: 'E', unit: 'Wh', least: 0, words: 'energy that a vehicle needs' },
  /** Energy that a battery holds when full E_B, Wh, above 0. */
  batteryEnergy: { symbol: 'E_B', unit: 'Wh', above: 0, words: 'energy that a battery holds when full' },
  /** Share of the energy taken from the supply that reaches the battery η, 1, above 0 to 1. */
  chargeEfficiency: {
    symbol: 'η',
    unit: '1',
    above: 0,
    most: 1,
    words: 'share of the energy taken from the supply that reaches the battery',
  },
  /** Power available for charging P, W, 0 and up. */
  availablePower: { symbol: 'P', unit: 'W', least: 0, words: 'power available for charging' },
  /** Time to charge t_ch, s, 0 and up. */
  chargeTime: { symbol: 't_ch', unit: 's', least: 0, words: 'time to charge' },
  /** Length of cable to order L_q, m, 0 and up. */
  cableQuantity: { symbol: 'L_q', unit: 'm', least: 0, words: 'length of cable to order' },
  /** Share added to a length for waste w, 1, 0 to 1. */
  wasteShare: { symbol: 'w', unit: '1', least: 0, most: 1, words: 'share added to a length for waste' },
  /** Length added for terminations L_t, m, 0 and up. */
  terminationLength: { symbol: 'L_t', unit: 'm', least: 0, words: 'length added for terminations' },
  /** Labour of a task t_w, s, 0 and up. */
  labour: { symbol: 't_w', unit: 's', least: 0, words: 'labour of a task' },
  /** Number of things n, 1, 0 and up. */
  count: { symbol: 'n', unit: '1', least: 0, words: 'number of things' },
  /** Spacing of fixings d_f, m, above 0. */
  fixingSpacing: { symbol: 'd_f', unit: 'm', above: 0, words: 'spacing of fixings' },
  /** Cross-section of the meter tails S_tails, mm², above 0. */
  tailsArea: { symbol: 'S_tails', unit: 'mm²', above: 0, words: 'cross-section of the meter tails' },
  /** Depth below the surface d, m, 0 to 10. */
  depth: { symbol: 'd', unit: 'm', least: 0, most: 10, words: 'depth below the surface' },
  /** Term for the space of a cable, a conduit or trunking n_t, 1, above 0. */
  spaceTerm: { symbol: 'n_t', unit: '1', above: 0, words: 'term for the space of a cable, a conduit or trunking' },
  /** Diameter of a conduit d_co, mm, above 0. */
  conduitDiameter: { symbol: 'd_co', unit: 'mm', above: 0, words: 'diameter of a conduit' },
  /** Bends of a conduit between two places to draw in n_b, 1, 0 to 4. */
  bends: { symbol: 'n_b', unit: '1', least: 0, most: 4, words: 'bends of a conduit between two places to draw in' },
} satisfies Roles;

import { aboveZero, fromZero, part, type Roles, share } from './term.js';

/** Roles of the whole job: quantities, hours, the vehicle's need. */
export const siteTerms = {
  /** Energy that a vehicle needs E, Wh, 0 and up. */
  energyNeeded: ['E', 'Wh', fromZero, 'energy that a vehicle needs'],
  /** Energy that a battery holds when full E_B, Wh, above 0. */
  batteryEnergy: ['E_B', 'Wh', aboveZero, 'energy that a battery holds when full'],
  /** Share of the energy taken from the supply that reaches the battery η, 1, above 0 to 1. */
  chargeEfficiency: ['η', '1', part, 'share of the energy taken from the supply that reaches the battery'],
  /** Power available for charging P, W, 0 and up. */
  availablePower: ['P', 'W', fromZero, 'power available for charging'],
  /** Time to charge t_ch, s, 0 and up. */
  chargeTime: ['t_ch', 's', fromZero, 'time to charge'],
  /** Length of cable to order L_q, m, 0 and up. */
  cableQuantity: ['L_q', 'm', fromZero, 'length of cable to order'],
  /** Share added to a length for waste w, 1, 0 to 1. */
  wasteShare: ['w', '1', share, 'share added to a length for waste'],
  /** Length added for terminations L_t, m, 0 and up. */
  terminationLength: ['L_t', 'm', fromZero, 'length added for terminations'],
  /** Labour of a task t_w, s, 0 and up. */
  labour: ['t_w', 's', fromZero, 'labour of a task'],
  /** Number of things n, 1, 0 and up. */
  count: ['n', '1', fromZero, 'number of things'],
  /** Spacing of fixings d_f, m, above 0. */
  fixingSpacing: ['d_f', 'm', aboveZero, 'spacing of fixings'],
  /** Cross-section of the meter tails S_tails, mm², above 0. */
  tailsArea: ['S_tails', 'mm²', aboveZero, 'cross-section of the meter tails'],
  /** Depth below the surface d, m, 0 to 10. */
  depth: ['d', 'm', { least: 0, most: 10 }, 'depth below the surface'],
  /** Term for the space of a cable, a conduit or trunking n_t, 1, above 0. */
  spaceTerm: ['n_t', '1', aboveZero, 'term for the space of a cable, a conduit or trunking'],
  /** Diameter of a conduit d_co, mm, above 0. */
  conduitDiameter: ['d_co', 'mm', aboveZero, 'diameter of a conduit'],
  /** Bends of a conduit between two places to draw in n_b, 1, 0 to 4. */
  bends: ['n_b', '1', { least: 0, most: 4 }, 'bends of a conduit between two places to draw in'],
} satisfies Roles;

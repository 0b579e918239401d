import { aboveZero, fromZero, type Roles, share } from './term.js';

/** Roles of the supply. */
export const supplyTerms = {
  /** Nominal voltage line to earth U_0, V, above 0. */
  nominalVoltage: ['U_0', 'V', aboveZero, 'nominal voltage line to earth'],
  /** Nominal voltage between lines U, V, above 0. */
  lineVoltage: ['U', 'V', aboveZero, 'nominal voltage between lines'],
  /** Voltage of the supply as it may really stand U_s, V, above 0. */
  supplyVoltage: ['U_s', 'V', aboveZero, 'voltage of the supply as it may really stand'],
  /** Nominal frequency f, Hz, above 0. */
  frequency: ['f', 'Hz', aboveZero, 'nominal frequency'],
  /** Number of line conductors of the circuit n_ph, 1, 1 to 3. */
  phases: ['n_ph', '1', { least: 1, most: 3 }, 'number of line conductors of the circuit'],
  /** External earth fault loop impedance Z_e, Ω, 0 and up. */
  externalImpedance: ['Z_e', 'Ω', fromZero, 'external earth fault loop impedance'],
  /** Prospective fault current I_pf, A, 0 and up. */
  prospectiveCurrent: ['I_pf', 'A', fromZero, 'prospective fault current'],
  /** Rating of the service cut-out fuse I_co, A, above 0. */
  cutOutRating: ['I_co', 'A', aboveZero, 'rating of the service cut-out fuse'],
  /** Power factor cos φ, 1, 0 to 1. */
  powerFactor: ['cos φ', '1', share, 'power factor'],
} satisfies Roles;

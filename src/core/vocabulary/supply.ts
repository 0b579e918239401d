import type { Roles } from './term.js';

/** Roles of the supply. */
export const supplyTerms = {
  /** Nominal voltage line to earth U_0, V, above 0. */
  nominalVoltage: { symbol: 'U_0', unit: 'V', above: 0, words: 'nominal voltage line to earth' },
  /** Nominal voltage between lines U, V, above 0. */
  lineVoltage: { symbol: 'U', unit: 'V', above: 0, words: 'nominal voltage between lines' },
  /** Voltage of the supply as it may really stand U_s, V, above 0. */
  supplyVoltage: { symbol: 'U_s', unit: 'V', above: 0, words: 'voltage of the supply as it may really stand' },
  /** Nominal frequency f, Hz, above 0. */
  frequency: { symbol: 'f', unit: 'Hz', above: 0, words: 'nominal frequency' },
  /** Number of line conductors of the circuit n_ph, 1, 1 to 3. */
  phases: { symbol: 'n_ph', unit: '1', least: 1, most: 3, words: 'number of line conductors of the circuit' },
  /** External earth fault loop impedance Z_e, Ω, 0 and up. */
  externalImpedance: { symbol: 'Z_e', unit: 'Ω', least: 0, words: 'external earth fault loop impedance' },
  /** Prospective fault current I_pf, A, 0 and up. */
  prospectiveCurrent: { symbol: 'I_pf', unit: 'A', least: 0, words: 'prospective fault current' },
  /** Rating of the service cut-out fuse I_co, A, above 0. */
  cutOutRating: { symbol: 'I_co', unit: 'A', above: 0, words: 'rating of the service cut-out fuse' },
  /** Power factor cos φ, 1, 0 to 1. */
  powerFactor: { symbol: 'cos φ', unit: '1', least: 0, most: 1, words: 'power factor' },
} satisfies Roles;

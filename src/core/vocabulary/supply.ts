import type { Amperes, Hertz, Ohms, Ratio, Volts } from '../../units/index.js';
import type { Terms } from './term.js';

/** Roles of the supply. */
export interface SupplyTerms {
  /** Nominal voltage line to earth U_0, V, above 0. */
  nominalVoltage: Volts;
  /** Nominal voltage between lines U, V, above 0. */
  lineVoltage: Volts;
  /** Voltage of the supply as it may really stand U_s, V, above 0. */
  supplyVoltage: Volts;
  /** Nominal frequency f, Hz, above 0. */
  frequency: Hertz;
  /** Number of line conductors of the circuit n_ph, 1 to 3. */
  phases: Ratio;
  /** External earth fault loop impedance Z_e, Ω, 0 and up. */
  externalImpedance: Ohms;
  /** Prospective fault current I_pf, A, 0 and up. */
  prospectiveCurrent: Amperes;
  /** Rating of the service cut-out fuse I_co, A, above 0. */
  cutOutRating: Amperes;
  /** Power factor cos φ, 1, 0 to 1. */
  powerFactor: Ratio;
}

/** Symbols, units and ranges of the roles of the supply. */
export const supplyTerms: Terms<SupplyTerms> = {
  nominalVoltage: { symbol: 'U_0', unit: 'V', above: 0, words: 'nominal voltage line to earth' },
  lineVoltage: { symbol: 'U', unit: 'V', above: 0, words: 'nominal voltage between lines' },
  supplyVoltage: { symbol: 'U_s', unit: 'V', above: 0, words: 'voltage of the supply as it may really stand' },
  frequency: { symbol: 'f', unit: 'Hz', above: 0, words: 'nominal frequency' },
  phases: { symbol: 'n_ph', unit: '1', least: 1, most: 3, words: 'number of line conductors of the circuit' },
  externalImpedance: { symbol: 'Z_e', unit: 'Ω', least: 0, words: 'external earth fault loop impedance' },
  prospectiveCurrent: { symbol: 'I_pf', unit: 'A', least: 0, words: 'prospective fault current' },
  cutOutRating: { symbol: 'I_co', unit: 'A', above: 0, words: 'rating of the service cut-out fuse' },
  powerFactor: { symbol: 'cos φ', unit: '1', least: 0, most: 1, words: 'power factor' },
};

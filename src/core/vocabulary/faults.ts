import type {
  AdiabaticFactor,
  AmpereSquaredSeconds,
  Amperes,
  Ohms,
  Ratio,
  Seconds,
  SquareMillimetres,
  Volts,
} from '../../units/index.js';
import type { Terms } from './term.js';

/** Roles of faults and protection against shock. */
export interface FaultTerms {
  /** Earth fault loop impedance at the far end Z_s, Ω, 0 and up. */
  loopImpedance: Ohms;
  /** Largest earth fault loop impedance for the disconnection time Z_s,max, Ω, above 0. */
  loopImpedanceLimit: Ohms;
  /** Resistance of line and protective conductor of the circuit R_1+R_2, Ω, 0 and up. */
  lineAndProtectiveResistance: Ohms;
  /** Minimum voltage factor C_min, 1, above 0 to 1. */
  minimumVoltageFactor: Ratio;
  /** Maximum voltage factor C_max, 1, 1 to 1.2. */
  maximumVoltageFactor: Ratio;
  /** Current that operates the device in the required time I_a, A, above 0. */
  operatingCurrent: Amperes;
  /** Disconnection time required t_max, s, above 0. */
  requiredTime: Seconds;
  /** Disconnection time achieved t, s, 0 and up. */
  disconnectionTime: Seconds;
  /** Earth fault current I_f, A, 0 and up. */
  earthFaultCurrent: Amperes;
  /** Let-through energy of the device I²t, A²s, 0 and up. */
  letThrough: AmpereSquaredSeconds;
  /** Energy the conductor withstands k²S², A²s, 0 and up. */
  withstandEnergy: AmpereSquaredSeconds;
  /** Factor of the adiabatic equation k, A·√s/mm², above 0. */
  adiabaticFactor: AdiabaticFactor;
  /** Cross-sectional area of the protective conductor S_pe, mm², above 0. */
  protectiveArea: SquareMillimetres;
  /** Smallest area of the protective conductor S_pe,min, mm², 0 and up. */
  minimumProtectiveArea: SquareMillimetres;
  /** Rated residual operating current I_Δn, A, above 0. */
  residualOperatingCurrent: Amperes;
  /** Resistance of the earth electrode and the protective conductor R_A, Ω, 0 and up. */
  electrodeResistance: Ohms;
  /** Touch voltage U_t, V, 0 and up. */
  touchVoltage: Volts;
  /** Limit of the touch voltage U_L, V, above 0. */
  touchVoltageLimit: Volts;
  /** Rated breaking capacity of the device I_cn, A, above 0. */
  breakingCapacity: Amperes;
  /** Conventional operating current of the device I_2, A, above 0. */
  conventionalOperatingCurrent: Amperes;
}

/** Symbols, units and ranges of the roles of faults. */
export const faultTerms: Terms<FaultTerms> = {
  loopImpedance: { symbol: 'Z_s', unit: 'Ω', least: 0, words: 'earth fault loop impedance at the far end' },
  loopImpedanceLimit: {
    symbol: 'Z_s,max',
    unit: 'Ω',
    above: 0,
    words: 'largest earth fault loop impedance for the disconnection time',
  },
  lineAndProtectiveResistance: {
    symbol: 'R_1+R_2',
    unit: 'Ω',
    least: 0,
    words: 'resistance of line and protective conductor of the circuit',
  },
  minimumVoltageFactor: { symbol: 'C_min', unit: '1', above: 0, most: 1, words: 'minimum voltage factor' },
  maximumVoltageFactor: { symbol: 'C_max', unit: '1', least: 1, most: 1.2, words: 'maximum voltage factor' },
  operatingCurrent: {
    symbol: 'I_a',
    unit: 'A',
    above: 0,
    words: 'current that operates the device in the required time',
  },
  requiredTime: { symbol: 't_max', unit: 's', above: 0, words: 'disconnection time required' },
  disconnectionTime: { symbol: 't', unit: 's', least: 0, words: 'disconnection time achieved' },
  earthFaultCurrent: { symbol: 'I_f', unit: 'A', least: 0, words: 'earth fault current' },
  letThrough: { symbol: 'I²t', unit: 'A²s', least: 0, words: 'let-through energy of the device' },
  withstandEnergy: { symbol: 'k²S²', unit: 'A²s', least: 0, words: 'energy the conductor withstands' },
  adiabaticFactor: { symbol: 'k', unit: 'A·√s/mm²', above: 0, words: 'factor of the adiabatic equation' },
  protectiveArea: { symbol: 'S_pe', unit: 'mm²', above: 0, words: 'cross-sectional area of the protective conductor' },
  minimumProtectiveArea: {
    symbol: 'S_pe,min',
    unit: 'mm²',
    least: 0,
    words: 'smallest area of the protective conductor',
  },
  residualOperatingCurrent: { symbol: 'I_Δn', unit: 'A', above: 0, words: 'rated residual operating current' },
  electrodeResistance: {
    symbol: 'R_A',
    unit: 'Ω',
    least: 0,
    words: 'resistance of the earth electrode and the protective conductor',
  },
  touchVoltage: { symbol: 'U_t', unit: 'V', least: 0, words: 'touch voltage' },
  touchVoltageLimit: { symbol: 'U_L', unit: 'V', above: 0, words: 'limit of the touch voltage' },
  breakingCapacity: { symbol: 'I_cn', unit: 'A', above: 0, words: 'rated breaking capacity of the device' },
  conventionalOperatingCurrent: {
    symbol: 'I_2',
    unit: 'A',
    above: 0,
    words: 'conventional operating current of the device',
  },
};

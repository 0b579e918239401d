import type {
  Amperes,
  Celsius,
  KelvinMetresPerWatt,
  Metres,
  Ohms,
  OhmsPerMetre,
  Ratio,
  SquareMillimetres,
  Volts,
  VoltsPerAmpereMetre,
} from '../../units/index.js';
import type { Terms } from './term.js';

/** Roles of cables: rating, factors, voltage drop. */
export interface CableTerms {
  /** Design current of the circuit I_b, A, 0 and up. */
  designCurrent: Amperes;
  /** Rated current or setting of the overcurrent device I_n, A, above 0. */
  deviceRating: Amperes;
  /** Current-carrying capacity for continuous service as installed I_z, A, 0 and up. */
  capacity: Amperes;
  /** Tabulated current-carrying capacity I_t, A, above 0. */
  tabulatedCapacity: Amperes;
  /** Tabulated capacity that the circuit requires I_t,min, A, 0 and up. */
  requiredCapacity: Amperes;
  /** Rating factor for ambient temperature C_a, 1, above 0. */
  ambientFactor: Ratio;
  /** Rating factor for grouping C_g, 1, above 0. */
  groupFactor: Ratio;
  /** Rating factor for thermal insulation C_i, 1, above 0 to 1. */
  insulationFactor: Ratio;
  /** Rating factor for soil thermal resistivity C_s, 1, above 0. */
  soilFactor: Ratio;
  /** Rating factor for the kind of overload device and burial C_c, 1, above 0 to 1. */
  deviceFactor: Ratio;
  /** Cross-sectional area of a conductor S, mm², above 0. */
  conductorArea: SquareMillimetres;
  /** Length of route one way L, m, 0 and up. */
  length: Metres;
  /** Length of cable in thermal insulation L_i, m, 0 and up. */
  insulatedLength: Metres;
  /** Ambient temperature of air θ_a, °C, -40 to 100. */
  ambientTemperature: Celsius;
  /** Temperature of the ground θ_g, °C, -40 to 100. */
  groundTemperature: Celsius;
  /** Thermal resistivity of the soil ρ_s, K·m/W, above 0. */
  soilResistivity: KelvinMetresPerWatt;
  /** Number of circuits or multicore cables in a group N_g, 1, 1 and up. */
  circuitsInGroup: Ratio;
  /** Largest operating temperature of the conductor θ_p, °C, 30 to 250. */
  operatingTemperature: Celsius;
  /** Temperature of the conductor θ, °C, -60 to 1200. */
  conductorTemperature: Celsius;
  /** Tabulated drop per ampere and metre (mV/A/m), V/(A·m), 0 and up. */
  dropRate: VoltsPerAmpereMetre;
  /** Voltage drop of one run ΔU, V, 0 and up. */
  voltageDrop: Volts;
  /** Voltage drop from the origin to the point ΔU_tot, V, 0 and up. */
  totalDrop: Volts;
  /** Voltage drop as a ratio of the nominal voltage ΔU/U_0, 1, 0 and up. */
  dropRatio: Ratio;
  /** Limit of the voltage drop as a ratio Δu_max, 1, above 0. */
  dropLimit: Ratio;
  /** Resistance per length at 20 °C r_20, Ω/m, 0 and up. */
  resistancePerMetre20: OhmsPerMetre;
  /** Resistance per length at the temperature considered r_θ, Ω/m, 0 and up. */
  resistancePerMetre: OhmsPerMetre;
  /** Reactance per length x, Ω/m, 0 and up. */
  reactancePerMetre: OhmsPerMetre;
  /** Rating factor for a semi-enclosed fuse C_f, 1, above 0 to 1. */
  fuseFactor: Ratio;
  /** Number of loaded cores in one cable n_c, 1, 1 and up. */
  loadedCores: Ratio;
  /** Coefficient of a power law a, 1. */
  lawCoefficient: Ratio;
  /** Resistance R, Ω, 0 and up. */
  resistance: Ohms;
  /** Reactance X, Ω, 0 and up. */
  reactance: Ohms;
}

/** Symbols, units and ranges of the roles of cables. */
export const cableTerms: Terms<CableTerms> = {
  designCurrent: { symbol: 'I_b', unit: 'A', least: 0, words: 'design current of the circuit' },
  deviceRating: { symbol: 'I_n', unit: 'A', above: 0, words: 'rated current or setting of the overcurrent device' },
  capacity: {
    symbol: 'I_z',
    unit: 'A',
    least: 0,
    words: 'current-carrying capacity for continuous service as installed',
  },
  tabulatedCapacity: { symbol: 'I_t', unit: 'A', above: 0, words: 'tabulated current-carrying capacity' },
  requiredCapacity: { symbol: 'I_t,min', unit: 'A', least: 0, words: 'tabulated capacity that the circuit requires' },
  ambientFactor: { symbol: 'C_a', unit: '1', above: 0, words: 'rating factor for ambient temperature' },
  groupFactor: { symbol: 'C_g', unit: '1', above: 0, words: 'rating factor for grouping' },
  insulationFactor: { symbol: 'C_i', unit: '1', above: 0, most: 1, words: 'rating factor for thermal insulation' },
  soilFactor: { symbol: 'C_s', unit: '1', above: 0, words: 'rating factor for soil thermal resistivity' },
  deviceFactor: {
    symbol: 'C_c',
    unit: '1',
    above: 0,
    most: 1,
    words: 'rating factor for the kind of overload device and burial',
  },
  conductorArea: { symbol: 'S', unit: 'mm²', above: 0, words: 'cross-sectional area of a conductor' },
  length: { symbol: 'L', unit: 'm', least: 0, words: 'length of route one way' },
  insulatedLength: { symbol: 'L_i', unit: 'm', least: 0, words: 'length of cable in thermal insulation' },
  ambientTemperature: { symbol: 'θ_a', unit: '°C', least: -40, most: 100, words: 'ambient temperature of air' },
  groundTemperature: { symbol: 'θ_g', unit: '°C', least: -40, most: 100, words: 'temperature of the ground' },
  soilResistivity: { symbol: 'ρ_s', unit: 'K·m/W', above: 0, words: 'thermal resistivity of the soil' },
  circuitsInGroup: { symbol: 'N_g', unit: '1', least: 1, words: 'number of circuits or multicore cables in a group' },
  operatingTemperature: {
    symbol: 'θ_p',
    unit: '°C',
    least: 30,
    most: 250,
    words: 'largest operating temperature of the conductor',
  },
  conductorTemperature: { symbol: 'θ', unit: '°C', least: -60, most: 1200, words: 'temperature of the conductor' },
  dropRate: { symbol: '(mV/A/m)', unit: 'V/(A·m)', least: 0, words: 'tabulated drop per ampere and metre' },
  voltageDrop: { symbol: 'ΔU', unit: 'V', least: 0, words: 'voltage drop of one run' },
  totalDrop: { symbol: 'ΔU_tot', unit: 'V', least: 0, words: 'voltage drop from the origin to the point' },
  dropRatio: { symbol: 'ΔU/U_0', unit: '1', least: 0, words: 'voltage drop as a ratio of the nominal voltage' },
  dropLimit: { symbol: 'Δu_max', unit: '1', above: 0, words: 'limit of the voltage drop as a ratio' },
  resistancePerMetre20: { symbol: 'r_20', unit: 'Ω/m', least: 0, words: 'resistance per length at 20 °C' },
  resistancePerMetre: {
    symbol: 'r_θ',
    unit: 'Ω/m',
    least: 0,
    words: 'resistance per length at the temperature considered',
  },
  reactancePerMetre: { symbol: 'x', unit: 'Ω/m', least: 0, words: 'reactance per length' },
  fuseFactor: { symbol: 'C_f', unit: '1', above: 0, most: 1, words: 'rating factor for a semi-enclosed fuse' },
  loadedCores: { symbol: 'n_c', unit: '1', least: 1, words: 'number of loaded cores in one cable' },
  lawCoefficient: { symbol: 'a', unit: '1', words: 'coefficient of a power law' },
  resistance: { symbol: 'R', unit: 'Ω', least: 0, words: 'resistance' },
  reactance: { symbol: 'X', unit: 'Ω', least: 0, words: 'reactance' },
};

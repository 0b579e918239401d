import type { Roles } from './term.js';

/** Roles of cables: rating, factors, voltage drop. */
export const cableTerms = {
  /** Design current of the circuit I_b, A, 0 and up. */
  designCurrent: { symbol: 'I_b', unit: 'A', least: 0, words: 'design current of the circuit' },
  /** Rated current or setting of the overcurrent device I_n, A, above 0. */
  deviceRating: { symbol: 'I_n', unit: 'A', above: 0, words: 'rated current or setting of the overcurrent device' },
  /** Current-carrying capacity for continuous service as installed I_z, A, 0 and up. */
  capacity: {
    symbol: 'I_z',
    unit: 'A',
    least: 0,
    words: 'current-carrying capacity for continuous service as installed',
  },
  /** Tabulated current-carrying capacity I_t, A, above 0. */
  tabulatedCapacity: { symbol: 'I_t', unit: 'A', above: 0, words: 'tabulated current-carrying capacity' },
  /** Current that sources feed into the circuit I_g, A, 0 and up. */
  generationCurrent: { symbol: 'I_g', unit: 'A', least: 0, words: 'current that sources feed into the circuit' },
  /** Tabulated capacity that the circuit requires I_t,min, A, 0 and up. */
  requiredCapacity: { symbol: 'I_t,min', unit: 'A', least: 0, words: 'tabulated capacity that the circuit requires' },
  /** Tabulated capacity that the load alone requires I_t,b, A, 0 and up. */
  requiredByLoad: { symbol: 'I_t,b', unit: 'A', least: 0, words: 'tabulated capacity that the load alone requires' },
  /** Tabulated capacity that one circuit in overload requires I_t,n, A, 0 and up. */
  requiredByOverload: {
    symbol: 'I_t,n',
    unit: 'A',
    least: 0,
    words: 'tabulated capacity that one circuit in overload requires',
  },
  /** Share of the capacity that is required I_t,min/I_t, 1, 0 and up. */
  capacityUse: { symbol: 'I_t,min/I_t', unit: '1', least: 0, words: 'share of the capacity that is required' },
  /** Rating factor for ambient temperature C_a, 1, above 0. */
  ambientFactor: { symbol: 'C_a', unit: '1', above: 0, words: 'rating factor for ambient temperature' },
  /** Rating factor for grouping C_g, 1, above 0. */
  groupFactor: { symbol: 'C_g', unit: '1', above: 0, words: 'rating factor for grouping' },
  /** Rating factor for thermal insulation C_i, 1, above 0 to 1. */
  insulationFactor: { symbol: 'C_i', unit: '1', above: 0, most: 1, words: 'rating factor for thermal insulation' },
  /** Tabulated current-carrying capacity clipped direct I_t,C, A, above 0. */
  clippedCapacity: {
    symbol: 'I_t,C',
    unit: 'A',
    above: 0,
    words: 'tabulated current-carrying capacity clipped direct',
  },
  /** Rating factor for thermal insulation on the capacity clipped direct C_i,C, 1, above 0 to 1. */
  surroundFactor: {
    symbol: 'C_i,C',
    unit: '1',
    above: 0,
    most: 1,
    words: 'rating factor for thermal insulation on the capacity clipped direct',
  },
  /** Rating factor for soil thermal resistivity C_s, 1, above 0. */
  soilFactor: { symbol: 'C_s', unit: '1', above: 0, words: 'rating factor for soil thermal resistivity' },
  /** Rating factor for the kind of overload device and burial C_c, 1, above 0 to 1. */
  deviceFactor: {
    symbol: 'C_c',
    unit: '1',
    above: 0,
    most: 1,
    words: 'rating factor for the kind of overload device and burial',
  },
  /** Cross-sectional area of a conductor S, mm², above 0. */
  conductorArea: { symbol: 'S', unit: 'mm²', above: 0, words: 'cross-sectional area of a conductor' },
  /** Length of route one way L, m, 0 and up. */
  length: { symbol: 'L', unit: 'm', least: 0, words: 'length of route one way' },
  /** Length of cable in thermal insulation L_i, m, 0 and up. */
  insulatedLength: { symbol: 'L_i', unit: 'm', least: 0, words: 'length of cable in thermal insulation' },
  /** Ambient temperature of air θ_a, °C, -40 to 100. */
  ambientTemperature: { symbol: 'θ_a', unit: '°C', least: -40, most: 100, words: 'ambient temperature of air' },
  /** Temperature of the ground θ_g, °C, -40 to 100. */
  groundTemperature: { symbol: 'θ_g', unit: '°C', least: -40, most: 100, words: 'temperature of the ground' },
  /** Thermal resistivity of the soil ρ_s, K·m/W, above 0. */
  soilResistivity: { symbol: 'ρ_s', unit: 'K·m/W', above: 0, words: 'thermal resistivity of the soil' },
  /** Number of circuits or multicore cables in a group N_g, 1, 1 and up. */
  circuitsInGroup: { symbol: 'N_g', unit: '1', least: 1, words: 'number of circuits or multicore cables in a group' },
  /** Largest operating temperature of the conductor θ_p, °C, 30 to 250. */
  operatingTemperature: {
    symbol: 'θ_p',
    unit: '°C',
    least: 30,
    most: 250,
    words: 'largest operating temperature of the conductor',
  },
  /** Temperature of the conductor θ, °C, -60 to 1200. */
  conductorTemperature: { symbol: 'θ', unit: '°C', least: -60, most: 1200, words: 'temperature of the conductor' },
  /** Tabulated drop per ampere and metre (mV/A/m), V/(A·m), 0 and up. */
  dropRate: { symbol: '(mV/A/m)', unit: 'V/(A·m)', least: 0, words: 'tabulated drop per ampere and metre' },
  /** Voltage drop of one run ΔU, V, 0 and up. */
  voltageDrop: { symbol: 'ΔU', unit: 'V', least: 0, words: 'voltage drop of one run' },
  /** Voltage drop from the origin to the point ΔU_tot, V, 0 and up. */
  totalDrop: { symbol: 'ΔU_tot', unit: 'V', least: 0, words: 'voltage drop from the origin to the point' },
  /** Voltage drop as a ratio of the nominal voltage ΔU/U_0, 1, 0 and up. */
  dropRatio: { symbol: 'ΔU/U_0', unit: '1', least: 0, words: 'voltage drop as a ratio of the nominal voltage' },
  /** Limit of the voltage drop as a ratio Δu_max, 1, above 0. */
  dropLimit: { symbol: 'Δu_max', unit: '1', above: 0, words: 'limit of the voltage drop as a ratio' },
  /** Resistance per length at 20 °C r_20, Ω/m, 0 and up. */
  resistancePerMetre20: { symbol: 'r_20', unit: 'Ω/m', least: 0, words: 'resistance per length at 20 °C' },
  /** Resistance per length at the temperature considered r_θ, Ω/m, 0 and up. */
  resistancePerMetre: {
    symbol: 'r_θ',
    unit: 'Ω/m',
    least: 0,
    words: 'resistance per length at the temperature considered',
  },
  /** Reactance per length x, Ω/m, 0 and up. */
  reactancePerMetre: { symbol: 'x', unit: 'Ω/m', least: 0, words: 'reactance per length' },
  /** Rating factor for a semi-enclosed fuse C_f, 1, above 0 to 1. */
  fuseFactor: { symbol: 'C_f', unit: '1', above: 0, most: 1, words: 'rating factor for a semi-enclosed fuse' },
  /** Smallest capacity that a ring final circuit may have I_z,ring, A, above 0. */
  ringCapacity: {
    symbol: 'I_z,ring',
    unit: 'A',
    above: 0,
    words: 'smallest capacity that a ring final circuit may have',
  },
  /** Number of loaded cores in one cable n_c, 1, 1 and up. */
  loadedCores: { symbol: 'n_c', unit: '1', least: 1, words: 'number of loaded cores in one cable' },
  /** Rating factor for more than four loaded cores C_n, 1, above 0 to 1. */
  coresFactor: {
    symbol: 'C_n',
    unit: '1',
    above: 0,
    most: 1,
    words: 'rating factor for more than four loaded cores',
  },
  /** Rating factor for cable on a drum C_d, 1, above 0 to 1. */
  drumFactor: { symbol: 'C_d', unit: '1', above: 0, most: 1, words: 'rating factor for cable on a drum' },
  /** Rating factor for third harmonics F_h, 1, above 0 to 1. */
  harmonicFactor: { symbol: 'F_h', unit: '1', above: 0, most: 1, words: 'rating factor for third harmonics' },
  /** Current of the neutral conductor I_N, A, 0 and up. */
  harmonicNeutralCurrent: { symbol: 'I_N', unit: 'A', least: 0, words: 'current of the neutral conductor' },
  /** Line conductors in the way of a current: 2 for go and return, sqrt(3) between lines b, 1, above 0. */
  wayFactor: {
    symbol: 'b',
    unit: '1',
    above: 0,
    words: 'line conductors in the way of a current: 2 for go and return, sqrt(3) between lines',
  },
  /** Resistivity of a conductor in normal service ρ_1, Ω·mm, above 0. */
  serviceResistivity: {
    symbol: 'ρ_1',
    unit: 'Ω·mm',
    above: 0,
    words: 'resistivity of a conductor in normal service',
  },
  /** Coefficient of a power law a, 1, any. */
  lawCoefficient: { symbol: 'a', unit: '1', words: 'coefficient of a power law' },
  /** Resistance R, Ω, 0 and up. */
  resistance: { symbol: 'R', unit: 'Ω', least: 0, words: 'resistance' },
  /** Reactance X, Ω, 0 and up. */
  reactance: { symbol: 'X', unit: 'Ω', least: 0, words: 'reactance' },
  /** Largest rated current that the cable allows I_n,max, A, 0 and up. */
  deviceLimit: { symbol: 'I_n,max', unit: 'A', least: 0, words: 'largest rated current that the cable allows' },
  /** Largest conventional operating current that the cable allows 1.45 I_z, A, 0 and up. */
  overloadLimit: {
    symbol: '1.45 I_z',
    unit: 'A',
    least: 0,
    words: 'largest conventional operating current that the cable allows',
  },
  /** Rated current that a group of devices may carry continuously I_n,eff, A, above 0. */
  deviceShare: {
    symbol: 'I_n,eff',
    unit: 'A',
    above: 0,
    words: 'rated current that a group of devices may carry continuously',
  },
  /** Rating factor of grouped, continuously loaded devices k_g, 1, above 0 to 1. */
  deviceGroupFactor: {
    symbol: 'k_g',
    unit: '1',
    above: 0,
    most: 1,
    words: 'rating factor of grouped, continuously loaded devices',
  },
  /** Conventional operating current as a multiple of the rated current I_2/I_n, 1, above 0. */
  conventionalMultiple: {
    symbol: 'I_2/I_n',
    unit: '1',
    above: 0,
    words: 'conventional operating current as a multiple of the rated current',
  },
  /** Third-harmonic current as a ratio of the line current h_3, 1, 0 to 1. */
  thirdHarmonic: {
    symbol: 'h_3',
    unit: '1',
    least: 0,
    most: 1,
    words: 'third-harmonic current as a ratio of the line current',
  },
  /** Current from which the cable is chosen with third harmonics I_h, A, 0 and up. */
  harmonicCurrent: {
    symbol: 'I_h',
    unit: 'A',
    least: 0,
    words: 'current from which the cable is chosen with third harmonics',
  },
  /** Number of circuits of unequal size in a bunch n_u, 1, 1 and up. */
  groupedCircuits: { symbol: 'n_u', unit: '1', least: 1, words: 'number of circuits of unequal size in a bunch' },
  /** Current of the line conductor that is followed I_own, A, 0 and up. */
  ownLineCurrent: { symbol: 'I_own', unit: 'A', least: 0, words: 'current of the line conductor that is followed' },
  /** Sum of the currents of the other two line conductors I_oth, A, 0 and up. */
  otherLineCurrents: {
    symbol: 'I_oth',
    unit: 'A',
    least: 0,
    words: 'sum of the currents of the other two line conductors',
  },
  /** Voltage drop of one run, line to neutral ΔU_ph, V, 0 and up. */
  phaseDrop: { symbol: 'ΔU_ph', unit: 'V', least: 0, words: 'voltage drop of one run, line to neutral' },
  /** Correction of the tabulated drop for the real conductor temperature C_t, 1, above 0. */
  temperatureCorrection: {
    symbol: 'C_t',
    unit: '1',
    above: 0,
    words: 'correction of the tabulated drop for the real conductor temperature',
  },
  /** Resistive part of the tabulated drop (mV/A/m)_r, V/(A·m), 0 and up. */
  resistiveRate: { symbol: '(mV/A/m)_r', unit: 'V/(A·m)', least: 0, words: 'resistive part of the tabulated drop' },
  /** Reactive part of the tabulated drop (mV/A/m)_x, V/(A·m), 0 and up. */
  reactiveRate: { symbol: '(mV/A/m)_x', unit: 'V/(A·m)', least: 0, words: 'reactive part of the tabulated drop' },
  /** Sine of the phase angle, negative when leading sin φ, 1, -1 to 1. */
  reactiveFactor: {
    symbol: 'sin φ',
    unit: '1',
    least: -1,
    most: 1,
    words: 'sine of the phase angle, negative when leading',
  },
  /** Voltage at the point U_p, V, 0 and up. */
  pointVoltage: { symbol: 'U_p', unit: 'V', least: 0, words: 'voltage at the point' },
  /** Voltage at the point at the smallest supply voltage U_p,min, V, 0 and up. */
  voltageAtLowestSupply: {
    symbol: 'U_p,min',
    unit: 'V',
    least: 0,
    words: 'voltage at the point at the smallest supply voltage',
  },
  /** Voltage at the point at the largest supply voltage U_p,max, V, 0 and up. */
  voltageAtHighestSupply: {
    symbol: 'U_p,max',
    unit: 'V',
    least: 0,
    words: 'voltage at the point at the largest supply voltage',
  },
  /** Smallest supply voltage to be counted with U_s,min, V, above 0. */
  lowestSupply: { symbol: 'U_s,min', unit: 'V', above: 0, words: 'smallest supply voltage to be counted with' },
  /** Largest supply voltage to be counted with U_s,max, V, above 0. */
  highestSupply: { symbol: 'U_s,max', unit: 'V', above: 0, words: 'largest supply voltage to be counted with' },
  /** Smallest voltage that a voltage-window device accepts U_min, V, above 0. */
  windowLow: { symbol: 'U_min', unit: 'V', above: 0, words: 'smallest voltage that a voltage-window device accepts' },
  /** Largest voltage that a voltage-window device accepts U_max, V, above 0. */
  windowHigh: { symbol: 'U_max', unit: 'V', above: 0, words: 'largest voltage that a voltage-window device accepts' },
  /** Angle by which a load current lags its voltage φ, 1, -4 to 4. */
  loadAngle: {
    symbol: 'φ',
    unit: '1',
    least: -4,
    most: 4,
    words: 'angle by which a load current lags its voltage',
  },
  /** Active power of a load P, W, any. */
  activePower: { symbol: 'P', unit: 'W', words: 'active power of a load' },
  /** Reactive power of a load, positive when lagging Q, var, any. */
  reactivePower: { symbol: 'Q', unit: 'var', words: 'reactive power of a load, positive when lagging' },
  /** Design current in relation to the grouped tabulated capacity I_b/(I_t C_g), 1, 0 and up. */
  groupShare: {
    symbol: 'I_b/(I_t C_g)',
    unit: '1',
    least: 0,
    words: 'design current in relation to the grouped tabulated capacity',
  },
  /** Number of equal loads spaced equally along a run N, 1, 1 and up. */
  tapCount: { symbol: 'N', unit: '1', least: 1, words: 'number of equal loads spaced equally along a run' },
  /** Place of a load on a ring as a share of its length x, 1, 0 to 1. */
  ringPosition: {
    symbol: 'x',
    unit: '1',
    least: 0,
    most: 1,
    words: 'place of a load on a ring as a share of its length',
  },
  /** Largest conductor temperature that the terminals allow θ_term, °C, 30 to 250. */
  terminalTemperature: {
    symbol: 'θ_term',
    unit: '°C',
    least: 30,
    most: 250,
    words: 'largest conductor temperature that the terminals allow',
  },
  /** Temperature of the conductor where it is hottest θ_max, °C, -60 to 1200. */
  hottestConductor: {
    symbol: 'θ_max',
    unit: '°C',
    least: -60,
    most: 1200,
    words: 'temperature of the conductor where it is hottest',
  },
  /** Smallest permitted conductor area S_min, mm², above 0. */
  minimumArea: { symbol: 'S_min', unit: 'mm²', above: 0, words: 'smallest permitted conductor area' },
} satisfies Roles;

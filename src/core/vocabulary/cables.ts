import { aboveZero, anyNumber, fromZero, part, type Roles, share } from './term.js';

/** Roles of cables: rating, factors, voltage drop. */
export const cableTerms = {
  /** Design current of the circuit I_b, A, 0 and up. */
  designCurrent: ['I_b', 'A', fromZero, 'design current of the circuit'],
  /** Rated current or setting of the overcurrent device I_n, A, above 0. */
  deviceRating: ['I_n', 'A', aboveZero, 'rated current or setting of the overcurrent device'],
  /** Current-carrying capacity for continuous service as installed I_z, A, 0 and up. */
  capacity: ['I_z', 'A', fromZero, 'current-carrying capacity for continuous service as installed'],
  /** Tabulated current-carrying capacity I_t, A, above 0. */
  tabulatedCapacity: ['I_t', 'A', aboveZero, 'tabulated current-carrying capacity'],
  /** Current that sources feed into the circuit I_g, A, 0 and up. */
  generationCurrent: ['I_g', 'A', fromZero, 'current that sources feed into the circuit'],
  /** Tabulated capacity that the circuit requires I_t,min, A, 0 and up. */
  requiredCapacity: ['I_t,min', 'A', fromZero, 'tabulated capacity that the circuit requires'],
  /** Tabulated capacity that the load alone requires I_t,b, A, 0 and up. */
  requiredByLoad: ['I_t,b', 'A', fromZero, 'tabulated capacity that the load alone requires'],
  /** Tabulated capacity that one circuit in overload requires I_t,n, A, 0 and up. */
  requiredByOverload: ['I_t,n', 'A', fromZero, 'tabulated capacity that one circuit in overload requires'],
  /** Share of the capacity that is required I_t,min/I_t, 1, 0 and up. */
  capacityUse: ['I_t,min/I_t', '1', fromZero, 'share of the capacity that is required'],
  /** Rating factor for ambient temperature C_a, 1, above 0. */
  ambientFactor: ['C_a', '1', aboveZero, 'rating factor for ambient temperature'],
  /** Rating factor for grouping C_g, 1, above 0. */
  groupFactor: ['C_g', '1', aboveZero, 'rating factor for grouping'],
  /** Rating factor for thermal insulation C_i, 1, above 0 to 1. */
  insulationFactor: ['C_i', '1', part, 'rating factor for thermal insulation'],
  /** Tabulated current-carrying capacity clipped direct I_t,C, A, above 0. */
  clippedCapacity: ['I_t,C', 'A', aboveZero, 'tabulated current-carrying capacity clipped direct'],
  /** Rating factor for thermal insulation on the capacity clipped direct C_i,C, 1, above 0 to 1. */
  surroundFactor: ['C_i,C', '1', part, 'rating factor for thermal insulation on the capacity clipped direct'],
  /** Rating factor for soil thermal resistivity C_s, 1, above 0. */
  soilFactor: ['C_s', '1', aboveZero, 'rating factor for soil thermal resistivity'],
  /** Rating factor for the kind of overload device and burial C_c, 1, above 0 to 1. */
  deviceFactor: ['C_c', '1', part, 'rating factor for the kind of overload device and burial'],
  /** Cross-sectional area of a conductor S, mm², above 0. */
  conductorArea: ['S', 'mm²', aboveZero, 'cross-sectional area of a conductor'],
  /** Length of route one way L, m, 0 and up. */
  length: ['L', 'm', fromZero, 'length of route one way'],
  /** Length of cable in thermal insulation L_i, m, 0 and up. */
  insulatedLength: ['L_i', 'm', fromZero, 'length of cable in thermal insulation'],
  /** Ambient temperature of air θ_a, °C, -40 to 100. */
  ambientTemperature: ['θ_a', '°C', { least: -40, most: 100 }, 'ambient temperature of air'],
  /** Temperature of the ground θ_g, °C, -40 to 100. */
  groundTemperature: ['θ_g', '°C', { least: -40, most: 100 }, 'temperature of the ground'],
  /** Thermal resistivity of the soil ρ_s, K·m/W, above 0. */
  soilResistivity: ['ρ_s', 'K·m/W', aboveZero, 'thermal resistivity of the soil'],
  /** Number of circuits or multicore cables in a group N_g, 1, 1 and up. */
  circuitsInGroup: ['N_g', '1', { least: 1 }, 'number of circuits or multicore cables in a group'],
  /** Largest operating temperature of the conductor θ_p, °C, 30 to 250. */
  operatingTemperature: ['θ_p', '°C', { least: 30, most: 250 }, 'largest operating temperature of the conductor'],
  /** Temperature of the conductor θ, °C, -60 to 1200. */
  conductorTemperature: ['θ', '°C', { least: -60, most: 1200 }, 'temperature of the conductor'],
  /** Tabulated drop per ampere and metre (mV/A/m), V/(A·m), 0 and up. */
  dropRate: ['(mV/A/m)', 'V/(A·m)', fromZero, 'tabulated drop per ampere and metre'],
  /** Voltage drop of one run ΔU, V, 0 and up. */
  voltageDrop: ['ΔU', 'V', fromZero, 'voltage drop of one run'],
  /** Voltage drop from the origin to the point ΔU_tot, V, 0 and up. */
  totalDrop: ['ΔU_tot', 'V', fromZero, 'voltage drop from the origin to the point'],
  /** Voltage drop as a ratio of the nominal voltage ΔU/U_0, 1, 0 and up. */
  dropRatio: ['ΔU/U_0', '1', fromZero, 'voltage drop as a ratio of the nominal voltage'],
  /** Limit of the voltage drop as a ratio Δu_max, 1, above 0. */
  dropLimit: ['Δu_max', '1', aboveZero, 'limit of the voltage drop as a ratio'],
  /** Resistance per length at 20 °C r_20, Ω/m, 0 and up. */
  resistancePerMetre20: ['r_20', 'Ω/m', fromZero, 'resistance per length at 20 °C'],
  /** Resistance per length at the temperature considered r_θ, Ω/m, 0 and up. */
  resistancePerMetre: ['r_θ', 'Ω/m', fromZero, 'resistance per length at the temperature considered'],
  /** Reactance per length x, Ω/m, 0 and up. */
  reactancePerMetre: ['x', 'Ω/m', fromZero, 'reactance per length'],
  /** Rating factor for a semi-enclosed fuse C_f, 1, above 0 to 1. */
  fuseFactor: ['C_f', '1', part, 'rating factor for a semi-enclosed fuse'],
  /** Smallest capacity that a ring final circuit may have I_z,ring, A, above 0. */
  ringCapacity: ['I_z,ring', 'A', aboveZero, 'smallest capacity that a ring final circuit may have'],
  /** Number of loaded cores in one cable n_c, 1, 1 and up. */
  loadedCores: ['n_c', '1', { least: 1 }, 'number of loaded cores in one cable'],
  /** Rating factor for more than four loaded cores C_n, 1, above 0 to 1. */
  coresFactor: ['C_n', '1', part, 'rating factor for more than four loaded cores'],
  /** Rating factor for cable on a drum C_d, 1, above 0 to 1. */
  drumFactor: ['C_d', '1', part, 'rating factor for cable on a drum'],
  /** Rating factor for third harmonics F_h, 1, above 0 to 1. */
  harmonicFactor: ['F_h', '1', part, 'rating factor for third harmonics'],
  /** Current of the neutral conductor I_N, A, 0 and up. */
  harmonicNeutralCurrent: ['I_N', 'A', fromZero, 'current of the neutral conductor'],
  /** Line conductors in the way of a current: 2 for go and return, sqrt(3) between lines b, 1, above 0. */
  wayFactor: [
    'b',
    '1',
    aboveZero,
    'line conductors in the way of a current: 2 for go and return, sqrt(3) between lines',
  ],
  /** Resistivity of a conductor in normal service ρ_1, Ω·mm, above 0. */
  serviceResistivity: ['ρ_1', 'Ω·mm', aboveZero, 'resistivity of a conductor in normal service'],
  /** Coefficient of a power law a, 1, any. */
  lawCoefficient: ['a', '1', anyNumber, 'coefficient of a power law'],
  /** Resistance R, Ω, 0 and up. */
  resistance: ['R', 'Ω', fromZero, 'resistance'],
  /** Reactance X, Ω, 0 and up. */
  reactance: ['X', 'Ω', fromZero, 'reactance'],
  /** Largest rated current that the cable allows I_n,max, A, 0 and up. */
  deviceLimit: ['I_n,max', 'A', fromZero, 'largest rated current that the cable allows'],
  /** Largest conventional operating current that the cable allows 1.45 I_z, A, 0 and up. */
  overloadLimit: ['1.45 I_z', 'A', fromZero, 'largest conventional operating current that the cable allows'],
  /** Rated current that a group of devices may carry continuously I_n,eff, A, above 0. */
  deviceShare: ['I_n,eff', 'A', aboveZero, 'rated current that a group of devices may carry continuously'],
  /** Rating factor of grouped, continuously loaded devices k_g, 1, above 0 to 1. */
  deviceGroupFactor: ['k_g', '1', part, 'rating factor of grouped, continuously loaded devices'],
  /** Conventional operating current as a multiple of the rated current I_2/I_n, 1, above 0. */
  conventionalMultiple: [
    'I_2/I_n',
    '1',
    aboveZero,
    'conventional operating current as a multiple of the rated current',
  ],
  /** Third-harmonic current as a ratio of the line current h_3, 1, 0 to 1. */
  thirdHarmonic: ['h_3', '1', share, 'third-harmonic current as a ratio of the line current'],
  /** Current from which the cable is chosen with third harmonics I_h, A, 0 and up. */
  harmonicCurrent: ['I_h', 'A', fromZero, 'current from which the cable is chosen with third harmonics'],
  /** Number of circuits of unequal size in a bunch n_u, 1, 1 and up. */
  groupedCircuits: ['n_u', '1', { least: 1 }, 'number of circuits of unequal size in a bunch'],
  /** Current of the line conductor that is followed I_own, A, 0 and up. */
  ownLineCurrent: ['I_own', 'A', fromZero, 'current of the line conductor that is followed'],
  /** Sum of the currents of the other two line conductors I_oth, A, 0 and up. */
  otherLineCurrents: ['I_oth', 'A', fromZero, 'sum of the currents of the other two line conductors'],
  /** Voltage drop of one run, line to neutral ΔU_ph, V, 0 and up. */
  phaseDrop: ['ΔU_ph', 'V', fromZero, 'voltage drop of one run, line to neutral'],
  /** Correction of the tabulated drop for the real conductor temperature C_t, 1, above 0. */
  temperatureCorrection: ['C_t', '1', aboveZero, 'correction of the tabulated drop for the real conductor temperature'],
  /** Resistive part of the tabulated drop (mV/A/m)_r, V/(A·m), 0 and up. */
  resistiveRate: ['(mV/A/m)_r', 'V/(A·m)', fromZero, 'resistive part of the tabulated drop'],
  /** Reactive part of the tabulated drop (mV/A/m)_x, V/(A·m), 0 and up. */
  reactiveRate: ['(mV/A/m)_x', 'V/(A·m)', fromZero, 'reactive part of the tabulated drop'],
  /** Sine of the phase angle, negative when leading sin φ, 1, -1 to 1. */
  reactiveFactor: ['sin φ', '1', { least: -1, most: 1 }, 'sine of the phase angle, negative when leading'],
  /** Voltage at the point U_p, V, 0 and up. */
  pointVoltage: ['U_p', 'V', fromZero, 'voltage at the point'],
  /** Voltage at the point at the smallest supply voltage U_p,min, V, 0 and up. */
  voltageAtLowestSupply: ['U_p,min', 'V', fromZero, 'voltage at the point at the smallest supply voltage'],
  /** Voltage at the point at the largest supply voltage U_p,max, V, 0 and up. */
  voltageAtHighestSupply: ['U_p,max', 'V', fromZero, 'voltage at the point at the largest supply voltage'],
  /** Smallest supply voltage to be counted with U_s,min, V, above 0. */
  lowestSupply: ['U_s,min', 'V', aboveZero, 'smallest supply voltage to be counted with'],
  /** Largest supply voltage to be counted with U_s,max, V, above 0. */
  highestSupply: ['U_s,max', 'V', aboveZero, 'largest supply voltage to be counted with'],
  /** Smallest voltage that a voltage-window device accepts U_min, V, above 0. */
  windowLow: ['U_min', 'V', aboveZero, 'smallest voltage that a voltage-window device accepts'],
  /** Largest voltage that a voltage-window device accepts U_max, V, above 0. */
  windowHigh: ['U_max', 'V', aboveZero, 'largest voltage that a voltage-window device accepts'],
  /** Angle by which a load current lags its voltage φ, 1, -4 to 4. */
  loadAngle: ['φ', '1', { least: -4, most: 4 }, 'angle by which a load current lags its voltage'],
  /** Active power of a load P, W, any. */
  activePower: ['P', 'W', anyNumber, 'active power of a load'],
  /** Reactive power of a load, positive when lagging Q, var, any. */
  reactivePower: ['Q', 'var', anyNumber, 'reactive power of a load, positive when lagging'],
  /** Design current in relation to the grouped tabulated capacity I_b/(I_t C_g), 1, 0 and up. */
  groupShare: ['I_b/(I_t C_g)', '1', fromZero, 'design current in relation to the grouped tabulated capacity'],
  /** Number of equal loads spaced equally along a run N, 1, 1 and up. */
  tapCount: ['N', '1', { least: 1 }, 'number of equal loads spaced equally along a run'],
  /** Place of a load on a ring as a share of its length x, 1, 0 to 1. */
  ringPosition: ['x', '1', share, 'place of a load on a ring as a share of its length'],
  /** Largest conductor temperature that the terminals allow θ_term, °C, 30 to 250. */
  terminalTemperature: [
    'θ_term',
    '°C',
    { least: 30, most: 250 },
    'largest conductor temperature that the terminals allow',
  ],
  /** Temperature of the conductor where it is hottest θ_max, °C, -60 to 1200. */
  hottestConductor: ['θ_max', '°C', { least: -60, most: 1200 }, 'temperature of the conductor where it is hottest'],
  /** Smallest permitted conductor area S_min, mm², above 0. */
  minimumArea: ['S_min', 'mm²', aboveZero, 'smallest permitted conductor area'],
} satisfies Roles;

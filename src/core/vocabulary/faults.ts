import { aboveZero, fromZero, part, type Roles, share } from './term.js';

/** Roles of faults and protection against shock. */
export const faultTerms = {
  /** Earth fault loop impedance at the far end Z_s, Ω, 0 and up. */
  loopImpedance: ['Z_s', 'Ω', fromZero, 'earth fault loop impedance at the far end'],
  /** Largest earth fault loop impedance for the disconnection time Z_s,max, Ω, above 0. */
  loopImpedanceLimit: ['Z_s,max', 'Ω', aboveZero, 'largest earth fault loop impedance for the disconnection time'],
  /** Resistance of line and protective conductor of the circuit R_1+R_2, Ω, 0 and up. */
  lineAndProtectiveResistance: ['R_1+R_2', 'Ω', fromZero, 'resistance of line and protective conductor of the circuit'],
  /** Minimum voltage factor C_min, 1, above 0 to 1. */
  minimumVoltageFactor: ['C_min', '1', part, 'minimum voltage factor'],
  /** Maximum voltage factor C_max, 1, 1 to 1.2. */
  maximumVoltageFactor: ['C_max', '1', { least: 1, most: 1.2 }, 'maximum voltage factor'],
  /** Current that operates the device in the required time I_a, A, above 0. */
  operatingCurrent: ['I_a', 'A', aboveZero, 'current that operates the device in the required time'],
  /** Current that operates the fuse within 0.4 s I_0.4, A, above 0. */
  quickOperatingCurrent: ['I_0.4', 'A', aboveZero, 'current that operates the fuse within 0.4 s'],
  /** Current that operates the fuse within 5 s I_5, A, above 0. */
  slowOperatingCurrent: ['I_5', 'A', aboveZero, 'current that operates the fuse within 5 s'],
  /** Largest earth fault loop impedance as printed Z_s,print, Ω, above 0. */
  printedImpedanceLimit: ['Z_s,print', 'Ω', aboveZero, 'largest earth fault loop impedance as printed'],
  /** Disconnection time required t_max, s, above 0. */
  requiredTime: ['t_max', 's', aboveZero, 'disconnection time required'],
  /** Disconnection time achieved t, s, 0 and up. */
  disconnectionTime: ['t', 's', fromZero, 'disconnection time achieved'],
  /** Earth fault current I_f, A, 0 and up. */
  earthFaultCurrent: ['I_f', 'A', fromZero, 'earth fault current'],
  /** Let-through energy of the device I²t, A²s, 0 and up. */
  letThrough: ['I²t', 'A²s', fromZero, 'let-through energy of the device'],
  /** Energy the conductor withstands k²S², A²s, 0 and up. */
  withstandEnergy: ['k²S²', 'A²s', fromZero, 'energy the conductor withstands'],
  /** Factor of the adiabatic equation k, A·√s/mm², above 0. */
  adiabaticFactor: ['k', 'A·√s/mm²', aboveZero, 'factor of the adiabatic equation'],
  /** Cross-sectional area of the protective conductor S_pe, mm², above 0. */
  protectiveArea: ['S_pe', 'mm²', aboveZero, 'cross-sectional area of the protective conductor'],
  /** Smallest area of the protective conductor S_pe,min, mm², 0 and up. */
  minimumProtectiveArea: ['S_pe,min', 'mm²', fromZero, 'smallest area of the protective conductor'],
  /** Rated residual operating current I_Δn, A, above 0. */
  residualOperatingCurrent: ['I_Δn', 'A', aboveZero, 'rated residual operating current'],
  /** Resistance of the earth electrode and the protective conductor R_A, Ω, 0 and up. */
  electrodeResistance: ['R_A', 'Ω', fromZero, 'resistance of the earth electrode and the protective conductor'],
  /** Touch voltage U_t, V, 0 and up. */
  touchVoltage: ['U_t', 'V', fromZero, 'touch voltage'],
  /** Limit of the touch voltage U_L, V, above 0. */
  touchVoltageLimit: ['U_L', 'V', aboveZero, 'limit of the touch voltage'],
  /** Rated breaking capacity of the device I_cn, A, above 0. */
  breakingCapacity: ['I_cn', 'A', aboveZero, 'rated breaking capacity of the device'],
  /** Conventional operating current of the device I_2, A, above 0. */
  conventionalOperatingCurrent: ['I_2', 'A', aboveZero, 'conventional operating current of the device'],
  /** Impedance of the circuit from the origin, line and protective conductors Z_c, Ω, 0 and up. */
  circuitImpedance: ['Z_c', 'Ω', fromZero, 'impedance of the circuit from the origin, line and protective conductors'],
  /** Impedance of the feeders ahead, line and protective conductors Z_f, Ω, 0 and up. */
  feederImpedance: ['Z_f', 'Ω', fromZero, 'impedance of the feeders ahead, line and protective conductors'],
  /** Impedance of one run, line and protective conductor Z_seg, Ω, 0 and up. */
  segmentImpedance: ['Z_seg', 'Ω', fromZero, 'impedance of one run, line and protective conductor'],
  /** Earth fault loop impedance at the origin of the run Z_o, Ω, 0 and up. */
  originImpedance: ['Z_o', 'Ω', fromZero, 'earth fault loop impedance at the origin of the run'],
  /** Resistance of the line conductor R_1, Ω, 0 and up. */
  lineResistance: ['R_1', 'Ω', fromZero, 'resistance of the line conductor'],
  /** Resistance of the neutral conductor R_n, Ω, 0 and up. */
  neutralResistance: ['R_n', 'Ω', fromZero, 'resistance of the neutral conductor'],
  /** Resistance of the protective conductor R_2, Ω, 0 and up. */
  protectiveResistance: ['R_2', 'Ω', fromZero, 'resistance of the protective conductor'],
  /** Resistance by which a fault returns to earth, armour counted wherever there is one R_ret, Ω, 0 and up. */
  earthReturnResistance: [
    'R_ret',
    'Ω',
    fromZero,
    'resistance by which a fault returns to earth, armour counted wherever there is one',
  ],
  /** Least impedance by which a fault in a run returns Z_min, Ω, 0 and up. */
  leastImpedance: ['Z_min', 'Ω', fromZero, 'least impedance by which a fault in a run returns'],
  /** Resistance of the armour R_arm, Ω, above 0. */
  armourResistance: ['R_arm', 'Ω', aboveZero, 'resistance of the armour'],
  /** Resistance of a protective conductor beside the armour or conduit R_sep, Ω, above 0. */
  separateResistance: ['R_sep', 'Ω', aboveZero, 'resistance of a protective conductor beside the armour or conduit'],
  /** Impedance of the line-neutral loop Z_ln, Ω, 0 and up. */
  lineNeutralImpedance: ['Z_ln', 'Ω', fromZero, 'impedance of the line-neutral loop'],
  /** Impedance of the source per line conductor or loop Z_src, Ω, 0 and up. */
  sourceImpedance: ['Z_src', 'Ω', fromZero, 'impedance of the source per line conductor or loop'],
  /** Loop impedance as measured Z_m, Ω, 0 and up. */
  measuredImpedance: ['Z_m', 'Ω', fromZero, 'loop impedance as measured'],
  /** Smallest loop impedance that can be read Z_m,min, Ω, 0 and up. */
  measuredLeast: ['Z_m,min', 'Ω', fromZero, 'smallest loop impedance that can be read'],
  /** Largest loop impedance that may be read Z_m,max, Ω, above 0. */
  measuredLimit: ['Z_m,max', 'Ω', aboveZero, 'largest loop impedance that may be read'],
  /** Conductors in parallel per line n_par, 1, 1 and up. */
  parallelConductors: ['n_par', '1', { least: 1 }, 'conductors in parallel per line'],
  /** Temperature coefficient of resistance at 20 °C α_20, 1/K, above 0. */
  temperatureCoefficient: ['α_20', '1/K', aboveZero, 'temperature coefficient of resistance at 20 °C'],
  /** Temperature of the conductors at the test θ_t, °C, -40 to 100. */
  testTemperature: ['θ_t', '°C', { least: -40, most: 100 }, 'temperature of the conductors at the test'],
  /** Resistance at the temperature considered over that at 20 °C F_θ, 1, above 0. */
  temperatureFactor: ['F_θ', '1', aboveZero, 'resistance at the temperature considered over that at 20 °C'],
  /** Multiple of the rated current m, 1, above 0. */
  deviceMultiple: ['m', '1', aboveZero, 'multiple of the rated current'],
  /** Multiple of the rated residual operating current m_Δ, 1, above 0. */
  residualMultiple: ['m_Δ', '1', aboveZero, 'multiple of the rated residual operating current'],
  /** Time in which a device operates t_op, s, above 0. */
  operatingTime: ['t_op', 's', aboveZero, 'time in which a device operates'],
  /** Fault current I_k, A, 0 and up. */
  faultCurrent: ['I_k', 'A', fromZero, 'fault current'],
  /** Smallest fault current, conductors hot, at the far end I_k,min, A, 0 and up. */
  minimumFaultCurrent: ['I_k,min', 'A', fromZero, 'smallest fault current, conductors hot, at the far end'],
  /** Largest prospective current where the cable changes I_p,c, A, 0 and up. */
  currentAtChange: ['I_p,c', 'A', fromZero, 'largest prospective current where the cable changes'],
  /** Largest fault current, conductors cold, at the origin of the run I_k,max, A, 0 and up. */
  maximumFaultCurrent: ['I_k,max', 'A', fromZero, 'largest fault current, conductors cold, at the origin of the run'],
  /** Factor of the peak current κ, 1, 1 to 2. */
  peakFactor: ['κ', '1', { least: 1, most: 2 }, 'factor of the peak current'],
  /** Peak of the fault current i_p, A, 0 and up. */
  peakCurrent: ['i_p', 'A', fromZero, 'peak of the fault current'],
  /** Factor for the heat of the direct-current component m_dc, 1, 0 and up. */
  thermalFactor: ['m_dc', '1', fromZero, 'factor for the heat of the direct-current component'],
  /** Duration of the fault current t_k, s, above 0. */
  faultTime: ['t_k', 's', aboveZero, 'duration of the fault current'],
  /** Longest time that the conductor withstands the fault current t_k,max, s, 0 and up. */
  maximumFaultTime: ['t_k,max', 's', fromZero, 'longest time that the conductor withstands the fault current'],
  /** Temperature of the conductor before the fault θ_i, °C, -60 to 500. */
  initialTemperature: ['θ_i', '°C', { least: -60, most: 500 }, 'temperature of the conductor before the fault'],
  /** Largest temperature of the conductor at the end of the fault θ_f, °C, 0 to 1200. */
  finalTemperature: [
    'θ_f',
    '°C',
    { least: 0, most: 1200 },
    'largest temperature of the conductor at the end of the fault',
  ],
  /** Material constant of the adiabatic equation K, A·√s/mm², above 0. */
  materialFactor: ['K', 'A·√s/mm²', aboveZero, 'material constant of the adiabatic equation'],
  /** Volumetric heat capacity of the conductor at 20 °C Q_c, J/(K·mm³), above 0. */
  conductorHeatCapacity: ['Q_c', 'J/(K·mm³)', aboveZero, 'volumetric heat capacity of the conductor at 20 °C'],
  /** Resistivity of the conductor at 20 °C ρ_20, Ω·mm, above 0. */
  conductorResistivity: ['ρ_20', 'Ω·mm', aboveZero, 'resistivity of the conductor at 20 °C'],
  /** Reciprocal of the temperature coefficient at 0 °C β, K, above 0. */
  reciprocalCoefficient: ['β', 'K', aboveZero, 'reciprocal of the temperature coefficient at 0 °C'],
  /** Factor k of the line conductor k_1, A·√s/mm², above 0. */
  lineFactor: ['k_1', 'A·√s/mm²', aboveZero, 'factor k of the line conductor'],
  /** Factor k of the protective conductor k_2, A·√s/mm², above 0. */
  protectiveFactor: ['k_2', 'A·√s/mm²', aboveZero, 'factor k of the protective conductor'],
  /** Protective conductor by the table for the same material S_54.7, mm², 0 and up. */
  tabulatedProtectiveArea: ['S_54.7', 'mm²', fromZero, 'protective conductor by the table for the same material'],
  /** Cross-sectional area of a bonding conductor S_b, mm², 0 and up. */
  bondingArea: ['S_b', 'mm²', fromZero, 'cross-sectional area of a bonding conductor'],
  /** Smallest area of a bonding conductor S_b,min, mm², above 0. */
  minimumBondingArea: ['S_b,min', 'mm²', aboveZero, 'smallest area of a bonding conductor'],
  /** Least that is ever asked of a bonding conductor S_b,0, mm², above 0. */
  leastBondingArea: ['S_b,0', 'mm²', aboveZero, 'least that is ever asked of a bonding conductor'],
  /** Smallest area asked of this bonding conductor S_b,min, mm², above 0. */
  bondingAreaAsked: ['S_b,min', 'mm²', aboveZero, 'smallest area asked of this bonding conductor'],
  /** Cross-sectional area of the earthing conductor S_e, mm², above 0. */
  earthingConductorArea: ['S_e', 'mm²', aboveZero, 'cross-sectional area of the earthing conductor'],
  /** Smallest area of the earthing conductor S_e,min, mm², 0 and up. */
  minimumEarthingArea: ['S_e,min', 'mm²', fromZero, 'smallest area of the earthing conductor'],
  /** Copper-equivalent area of the neutral of the supply S_n, mm², above 0. */
  supplyNeutralArea: ['S_n', 'mm²', aboveZero, 'copper-equivalent area of the neutral of the supply'],
  /** Cross-sectional area of the armour S_arm, mm², above 0. */
  armourArea: ['S_arm', 'mm²', aboveZero, 'cross-sectional area of the armour'],
  /** Number of cores of the cable n_c, 1, 1 to 5. */
  cores: ['n_c', '1', { least: 1, most: 5 }, 'number of cores of the cable'],
  /** Rated power of the transformer S_rT, VA, above 0. */
  transformerRating: ['S_rT', 'VA', aboveZero, 'rated power of the transformer'],
  /** Rated voltage of the transformer on its low side, between lines U_rT, V, above 0. */
  transformerVoltage: ['U_rT', 'V', aboveZero, 'rated voltage of the transformer on its low side, between lines'],
  /** Impedance voltage of the transformer u_k, 1, above 0 to 1. */
  transformerImpedanceVoltage: ['u_k', '1', part, 'impedance voltage of the transformer'],
  /** Loss of the transformer at rated current P_kT, W, 0 and up. */
  transformerLoss: ['P_kT', 'W', fromZero, 'loss of the transformer at rated current'],
  /** Impedance of the transformer per line conductor Z_T, Ω, above 0. */
  transformerImpedance: ['Z_T', 'Ω', aboveZero, 'impedance of the transformer per line conductor'],
  /** Resistance of the transformer per line conductor R_T, Ω, 0 and up. */
  transformerResistance: ['R_T', 'Ω', fromZero, 'resistance of the transformer per line conductor'],
  /** Relative reactance of the transformer x_T, 1, 0 to 1. */
  transformerReactanceRatio: ['x_T', '1', share, 'relative reactance of the transformer'],
  /** Correction factor of the transformer impedance K_T, 1, above 0 to 1.2. */
  transformerFactor: ['K_T', '1', { above: 0, most: 1.2 }, 'correction factor of the transformer impedance'],
  /** Voltage factor c, 1, above 0 to 1.2. */
  voltageFactor: ['c', '1', { above: 0, most: 1.2 }, 'voltage factor'],
  /** Nominal voltage of the grid at its connection point, between lines U_Q, V, above 0. */
  gridVoltage: ['U_Q', 'V', aboveZero, 'nominal voltage of the grid at its connection point, between lines'],
  /** Initial three-phase fault current of the grid at its connection point I_kQ, A, above 0. */
  gridFaultCurrent: ['I_kQ', 'A', aboveZero, 'initial three-phase fault current of the grid at its connection point'],
  /** Impedance of the grid referred to the low side Z_Q, Ω, 0 and up. */
  gridImpedance: ['Z_Q', 'Ω', fromZero, 'impedance of the grid referred to the low side'],
  /** Smallest insulation resistance R_iso,min, Ω, above 0. */
  insulationResistanceLimit: ['R_iso,min', 'Ω', aboveZero, 'smallest insulation resistance'],
  /** Voltage of the insulation test, d.c. U_iso, V, above 0. */
  insulationTestVoltage: ['U_iso', 'V', aboveZero, 'voltage of the insulation test, d.c.'],
  /** End-to-end resistance of the line conductor of a ring r_1, Ω, 0 and up. */
  ringLineResistance: ['r_1', 'Ω', fromZero, 'end-to-end resistance of the line conductor of a ring'],
  /** End-to-end resistance of the neutral conductor of a ring r_n, Ω, 0 and up. */
  ringNeutralResistance: ['r_n', 'Ω', fromZero, 'end-to-end resistance of the neutral conductor of a ring'],
  /** End-to-end resistance of the protective conductor of a ring r_2, Ω, 0 and up. */
  ringProtectiveResistance: ['r_2', 'Ω', fromZero, 'end-to-end resistance of the protective conductor of a ring'],
  /** Reading at a point of a cross-connected ring R_x, Ω, 0 and up. */
  crossConnectedResistance: ['R_x', 'Ω', fromZero, 'reading at a point of a cross-connected ring'],
  /** Voltage at the point under load U_l, V, above 0. */
  loadedVoltage: ['U_l', 'V', aboveZero, 'voltage at the point under load'],
  /** Conditional short-circuit rating I_cc, A, above 0. */
  breakingLimit: ['I_cc', 'A', aboveZero, 'conditional short-circuit rating'],
  /** Resistance of the earth electrode alone R_E, Ω, 0 and up. */
  earthElectrode: ['R_E', 'Ω', fromZero, 'resistance of the earth electrode alone'],
  /** Earth fault path of the network without the electrode of the installation R_B, Ω, 0 and up. */
  networkEarth: ['R_B', 'Ω', fromZero, 'earth fault path of the network without the electrode of the installation'],
  /** Resistance of the protective conductors from the origin R_2,tot, Ω, 0 and up. */
  circuitProtectiveResistance: ['R_2,tot', 'Ω', fromZero, 'resistance of the protective conductors from the origin'],
  /** Resistance above which an electrode may not be stable R_A,st, Ω, above 0. */
  electrodeStability: ['R_A,st', 'Ω', aboveZero, 'resistance above which an electrode may not be stable'],
  /** Share of the fault current that a path takes p, 1, 0 to 1. */
  pathShare: ['p', '1', share, 'share of the fault current that a path takes'],
  /** Current at which the device ahead holds while the other clears I_hold, A, above 0. */
  fuseHoldCurrent: ['I_hold', 'A', aboveZero, 'current at which the device ahead holds while the other clears'],
  /** Resistance expected at the test R_exp, Ω, 0 and up. */
  continuityExpected: ['R_exp', 'Ω', fromZero, 'resistance expected at the test'],
  /** Smallest resistance that passes at the test R_exp,min, Ω, 0 and up. */
  continuityLeast: ['R_exp,min', 'Ω', fromZero, 'smallest resistance that passes at the test'],
  /** Largest resistance that passes at the test R_exp,max, Ω, 0 and up. */
  continuityMost: ['R_exp,max', 'Ω', fromZero, 'largest resistance that passes at the test'],
  /** Difference of two readings on a ring Δr, Ω, 0 and up. */
  ringDifference: ['Δr', 'Ω', fromZero, 'difference of two readings on a ring'],
  /** Longest break time of a residual current device at the test t_Δ,max, s, above 0. */
  residualTimeLimit: ['t_Δ,max', 's', aboveZero, 'longest break time of a residual current device at the test'],
  /** Shortest break time of a selective device at the test t_Δ,min, s, 0 and up. */
  residualTimeLeast: ['t_Δ,min', 's', fromZero, 'shortest break time of a selective device at the test'],
  /** Direct residual current at which a detector must not trip I_dc,min, A, above 0. */
  directTripLeast: ['I_dc,min', 'A', aboveZero, 'direct residual current at which a detector must not trip'],
  /** Direct residual current at which a detector must have tripped I_dc,max, A, above 0. */
  directTripMost: ['I_dc,max', 'A', aboveZero, 'direct residual current at which a detector must have tripped'],
  /** Smallest voltage that is permitted at the point U_min, V, above 0. */
  loadedVoltageLeast: ['U_min', 'V', aboveZero, 'smallest voltage that is permitted at the point'],
  /** Largest voltage that is permitted at the point U_max, V, above 0. */
  loadedVoltageMost: ['U_max', 'V', aboveZero, 'largest voltage that is permitted at the point'],
  /** Resistance at the test over that in normal operation F_t/F_p, 1, above 0. */
  temperatureRatio: ['F_t/F_p', '1', aboveZero, 'resistance at the test over that in normal operation'],
  /** Multiple of the rated current that flowed before m_0, 1, 0 and up. */
  preloadMultiple: ['m_0', '1', fromZero, 'multiple of the rated current that flowed before'],
  /** Multiple of the rated current that the device carries for ever m_t, 1, above 0. */
  thresholdMultiple: ['m_t', '1', aboveZero, 'multiple of the rated current that the device carries for ever'],
  /** Time constant of a thermal trip τ, s, above 0. */
  thermalTimeConstant: ['τ', 's', aboveZero, 'time constant of a thermal trip'],
  /** Time multiplier of a relay TMS, 1, above 0. */
  timeMultiplier: ['TMS', '1', aboveZero, 'time multiplier of a relay'],
  /** Constant of an inverse-time relay k_rel, s, above 0. */
  inverseConstant: ['k_rel', 's', aboveZero, 'constant of an inverse-time relay'],
  /** Added time of an inverse-time relay c_rel, s, 0 and up. */
  inverseOffset: ['c_rel', 's', fromZero, 'added time of an inverse-time relay'],
  /** Exponent of an inverse-time relay a_rel, 1, above 0. */
  inverseExponent: ['a_rel', '1', aboveZero, 'exponent of an inverse-time relay'],
  /** Least impedance of the distribution circuits ahead, conductors cold Z_f,min, Ω, 0 and up. */
  leastFeederImpedance: [
    'Z_f,min',
    'Ω',
    fromZero,
    'least impedance of the distribution circuits ahead, conductors cold',
  ],
  /** Prospective current at the origin of the run, every run ahead counted I_pf, A, 0 and up. */
  prospectiveAtOrigin: ['I_pf', 'A', fromZero, 'prospective current at the origin of the run, every run ahead counted'],
  /** Current at which a circuit-breaker trips at once, at the latest I_t, A, above 0. */
  instantaneousTrip: ['I_t', 'A', aboveZero, 'current at which a circuit-breaker trips at once, at the latest'],
  /** Current at which the device of the circuit clears in less than 0.1 s I_0.1, A, above 0. */
  clearingCurrent: ['I_0.1', 'A', aboveZero, 'current at which the device of the circuit clears in less than 0.1 s'],
  /** Rated current of the device ahead I_n,a, A, above 0. */
  aheadRating: ['I_n,a', 'A', aboveZero, 'rated current of the device ahead'],
  /** Fault current, or the prospective current where that is larger I_k,g, A, 0 and up. */
  guardedCurrent: ['I_k,g', 'A', fromZero, 'fault current, or the prospective current where that is larger'],
  /** Current at which the residual current device clears in its shortest time 5 I_Δn, A, above 0. */
  residualClearing: [
    '5 I_Δn',
    'A',
    aboveZero,
    'current at which the residual current device clears in its shortest time',
  ],
  /** Bound of the let-through energy of a fault cleared in less than 0.1 s I²t_0.1, A²s, 0 and up. */
  boundedEnergy: ['I²t_0.1', 'A²s', fromZero, 'bound of the let-through energy of a fault cleared in less than 0.1 s'],
  /** Limit of the let-through energy by the class of the circuit-breaker I²t_class, A²s, 0 and up. */
  classEnergy: ['I²t_class', 'A²s', fromZero, 'limit of the let-through energy by the class of the circuit-breaker'],
  /** Factor k of the armour k_arm, A·√s/mm², above 0. */
  armourFactor: ['k_arm', 'A·√s/mm²', aboveZero, 'factor k of the armour'],
  /** Largest earth fault current, conductors cold, at the origin of the run I_f,max, A, 0 and up. */
  largestEarthFaultCurrent: [
    'I_f,max',
    'A',
    fromZero,
    'largest earth fault current, conductors cold, at the origin of the run',
  ],
} satisfies Roles;

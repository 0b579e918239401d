import type { Roles } from './term.js';

/** Roles of faults and protection against shock. */
export const faultTerms = {
  /** Earth fault loop impedance at the far end Z_s, Ω, 0 and up. */
  loopImpedance: { symbol: 'Z_s', unit: 'Ω', least: 0, words: 'earth fault loop impedance at the far end' },
  /** Largest earth fault loop impedance for the disconnection time Z_s,max, Ω, above 0. */
  loopImpedanceLimit: {
    symbol: 'Z_s,max',
    unit: 'Ω',
    above: 0,
    words: 'largest earth fault loop impedance for the disconnection time',
  },
  /** Resistance of line and protective conductor of the circuit R_1+R_2, Ω, 0 and up. */
  lineAndProtectiveResistance: {
    symbol: 'R_1+R_2',
    unit: 'Ω',
    least: 0,
    words: 'resistance of line and protective conductor of the circuit',
  },
  /** Minimum voltage factor C_min, 1, above 0 to 1. */
  minimumVoltageFactor: { symbol: 'C_min', unit: '1', above: 0, most: 1, words: 'minimum voltage factor' },
  /** Maximum voltage factor C_max, 1, 1 to 1.2. */
  maximumVoltageFactor: { symbol: 'C_max', unit: '1', least: 1, most: 1.2, words: 'maximum voltage factor' },
  /** Current that operates the device in the required time I_a, A, above 0. */
  operatingCurrent: {
    symbol: 'I_a',
    unit: 'A',
    above: 0,
    words: 'current that operates the device in the required time',
  },
  /** Current that operates the fuse within 0.4 s I_0.4, A, above 0. */
  quickOperatingCurrent: {
    symbol: 'I_0.4',
    unit: 'A',
    above: 0,
    words: 'current that operates the fuse within 0.4 s',
  },
  /** Current that operates the fuse within 5 s I_5, A, above 0. */
  slowOperatingCurrent: { symbol: 'I_5', unit: 'A', above: 0, words: 'current that operates the fuse within 5 s' },
  /** Largest earth fault loop impedance as printed Z_s,print, Ω, above 0. */
  printedImpedanceLimit: {
    symbol: 'Z_s,print',
    unit: 'Ω',
    above: 0,
    words: 'largest earth fault loop impedance as printed',
  },
  /** Disconnection time required t_max, s, above 0. */
  requiredTime: { symbol: 't_max', unit: 's', above: 0, words: 'disconnection time required' },
  /** Disconnection time achieved t, s, 0 and up. */
  disconnectionTime: { symbol: 't', unit: 's', least: 0, words: 'disconnection time achieved' },
  /** Earth fault current I_f, A, 0 and up. */
  earthFaultCurrent: { symbol: 'I_f', unit: 'A', least: 0, words: 'earth fault current' },
  /** Let-through energy of the device I²t, A²s, 0 and up. */
  letThrough: { symbol: 'I²t', unit: 'A²s', least: 0, words: 'let-through energy of the device' },
  /** Energy the conductor withstands k²S², A²s, 0 and up. */
  withstandEnergy: { symbol: 'k²S²', unit: 'A²s', least: 0, words: 'energy the conductor withstands' },
  /** Factor of the adiabatic equation k, A·√s/mm², above 0. */
  adiabaticFactor: { symbol: 'k', unit: 'A·√s/mm²', above: 0, words: 'factor of the adiabatic equation' },
  /** Cross-sectional area of the protective conductor S_pe, mm², above 0. */
  protectiveArea: { symbol: 'S_pe', unit: 'mm²', above: 0, words: 'cross-sectional area of the protective conductor' },
  /** Smallest area of the protective conductor S_pe,min, mm², 0 and up. */
  minimumProtectiveArea: {
    symbol: 'S_pe,min',
    unit: 'mm²',
    least: 0,
    words: 'smallest area of the protective conductor',
  },
  /** Rated residual operating current I_Δn, A, above 0. */
  residualOperatingCurrent: { symbol: 'I_Δn', unit: 'A', above: 0, words: 'rated residual operating current' },
  /** Resistance of the earth electrode and the protective conductor R_A, Ω, 0 and up. */
  electrodeResistance: {
    symbol: 'R_A',
    unit: 'Ω',
    least: 0,
    words: 'resistance of the earth electrode and the protective conductor',
  },
  /** Touch voltage U_t, V, 0 and up. */
  touchVoltage: { symbol: 'U_t', unit: 'V', least: 0, words: 'touch voltage' },
  /** Limit of the touch voltage U_L, V, above 0. */
  touchVoltageLimit: { symbol: 'U_L', unit: 'V', above: 0, words: 'limit of the touch voltage' },
  /** Rated breaking capacity of the device I_cn, A, above 0. */
  breakingCapacity: { symbol: 'I_cn', unit: 'A', above: 0, words: 'rated breaking capacity of the device' },
  /** Conventional operating current of the device I_2, A, above 0. */
  conventionalOperatingCurrent: {
    symbol: 'I_2',
    unit: 'A',
    above: 0,
    words: 'conventional operating current of the device',
  },
  /** Impedance of the circuit from the origin, line and protective conductors Z_c, Ω, 0 and up. */
  circuitImpedance: {
    symbol: 'Z_c',
    unit: 'Ω',
    least: 0,
    words: 'impedance of the circuit from the origin, line and protective conductors',
  },
  /** Impedance of the feeders ahead, line and protective conductors Z_f, Ω, 0 and up. */
  feederImpedance: {
    symbol: 'Z_f',
    unit: 'Ω',
    least: 0,
    words: 'impedance of the feeders ahead, line and protective conductors',
  },
  /** Impedance of one run, line and protective conductor Z_seg, Ω, 0 and up. */
  segmentImpedance: {
    symbol: 'Z_seg',
    unit: 'Ω',
    least: 0,
    words: 'impedance of one run, line and protective conductor',
  },
  /** Earth fault loop impedance at the origin of the run Z_o, Ω, 0 and up. */
  originImpedance: { symbol: 'Z_o', unit: 'Ω', least: 0, words: 'earth fault loop impedance at the origin of the run' },
  /** Resistance of the line conductor R_1, Ω, 0 and up. */
  lineResistance: { symbol: 'R_1', unit: 'Ω', least: 0, words: 'resistance of the line conductor' },
  /** Resistance of the neutral conductor R_n, Ω, 0 and up. */
  neutralResistance: { symbol: 'R_n', unit: 'Ω', least: 0, words: 'resistance of the neutral conductor' },
  /** Resistance of the protective conductor R_2, Ω, 0 and up. */
  protectiveResistance: { symbol: 'R_2', unit: 'Ω', least: 0, words: 'resistance of the protective conductor' },
  /** Resistance by which a fault returns to earth, armour counted wherever there is one R_ret, Ω, 0 and up. */
  earthReturnResistance: {
    symbol: 'R_ret',
    unit: 'Ω',
    least: 0,
    words: 'resistance by which a fault returns to earth, armour counted wherever there is one',
  },
  /** Least impedance by which a fault in a run returns Z_min, Ω, 0 and up. */
  leastImpedance: { symbol: 'Z_min', unit: 'Ω', least: 0, words: 'least impedance by which a fault in a run returns' },
  /** Resistance of the armour R_arm, Ω, above 0. */
  armourResistance: { symbol: 'R_arm', unit: 'Ω', above: 0, words: 'resistance of the armour' },
  /** Resistance of a protective conductor beside the armour or conduit R_sep, Ω, above 0. */
  separateResistance: {
    symbol: 'R_sep',
    unit: 'Ω',
    above: 0,
    words: 'resistance of a protective conductor beside the armour or conduit',
  },
  /** Impedance of the line-neutral loop Z_ln, Ω, 0 and up. */
  lineNeutralImpedance: { symbol: 'Z_ln', unit: 'Ω', least: 0, words: 'impedance of the line-neutral loop' },
  /** Impedance of the source per line conductor or loop Z_src, Ω, 0 and up. */
  sourceImpedance: {
    symbol: 'Z_src',
    unit: 'Ω',
    least: 0,
    words: 'impedance of the source per line conductor or loop',
  },
  /** Loop impedance as measured Z_m, Ω, 0 and up. */
  measuredImpedance: { symbol: 'Z_m', unit: 'Ω', least: 0, words: 'loop impedance as measured' },
  /** Smallest loop impedance that can be read Z_m,min, Ω, 0 and up. */
  measuredLeast: { symbol: 'Z_m,min', unit: 'Ω', least: 0, words: 'smallest loop impedance that can be read' },
  /** Largest loop impedance that may be read Z_m,max, Ω, above 0. */
  measuredLimit: { symbol: 'Z_m,max', unit: 'Ω', above: 0, words: 'largest loop impedance that may be read' },
  /** Conductors in parallel per line n_par, 1, 1 and up. */
  parallelConductors: { symbol: 'n_par', unit: '1', least: 1, words: 'conductors in parallel per line' },
  /** Temperature coefficient of resistance at 20 °C α_20, 1/K, above 0. */
  temperatureCoefficient: {
    symbol: 'α_20',
    unit: '1/K',
    above: 0,
    words: 'temperature coefficient of resistance at 20 °C',
  },
  /** Temperature of the conductors at the test θ_t, °C, -40 to 100. */
  testTemperature: {
    symbol: 'θ_t',
    unit: '°C',
    least: -40,
    most: 100,
    words: 'temperature of the conductors at the test',
  },
  /** Resistance at the temperature considered over that at 20 °C F_θ, 1, above 0. */
  temperatureFactor: {
    symbol: 'F_θ',
    unit: '1',
    above: 0,
    words: 'resistance at the temperature considered over that at 20 °C',
  },
  /** Multiple of the rated current m, 1, above 0. */
  deviceMultiple: { symbol: 'm', unit: '1', above: 0, words: 'multiple of the rated current' },
  /** Multiple of the rated residual operating current m_Δ, 1, above 0. */
  residualMultiple: { symbol: 'm_Δ', unit: '1', above: 0, words: 'multiple of the rated residual operating current' },
  /** Time in which a device operates t_op, s, above 0. */
  operatingTime: { symbol: 't_op', unit: 's', above: 0, words: 'time in which a device operates' },
  /** Fault current I_k, A, 0 and up. */
  faultCurrent: { symbol: 'I_k', unit: 'A', least: 0, words: 'fault current' },
  /** Smallest fault current, conductors hot, at the far end I_k,min, A, 0 and up. */
  minimumFaultCurrent: {
    symbol: 'I_k,min',
    unit: 'A',
    least: 0,
    words: 'smallest fault current, conductors hot, at the far end',
  },
  /** Largest prospective current where the cable changes I_p,c, A, 0 and up. */
  currentAtChange: {
    symbol: 'I_p,c',
    unit: 'A',
    least: 0,
    words: 'largest prospective current where the cable changes',
  },
  /** Largest fault current, conductors cold, at the origin of the run I_k,max, A, 0 and up. */
  maximumFaultCurrent: {
    symbol: 'I_k,max',
    unit: 'A',
    least: 0,
    words: 'largest fault current, conductors cold, at the origin of the run',
  },
  /** Factor of the peak current κ, 1, 1 to 2. */
  peakFactor: { symbol: 'κ', unit: '1', least: 1, most: 2, words: 'factor of the peak current' },
  /** Peak of the fault current i_p, A, 0 and up. */
  peakCurrent: { symbol: 'i_p', unit: 'A', least: 0, words: 'peak of the fault current' },
  /** Factor for the heat of the direct-current component m_dc, 1, 0 and up. */
  thermalFactor: { symbol: 'm_dc', unit: '1', least: 0, words: 'factor for the heat of the direct-current component' },
  /** Duration of the fault current t_k, s, above 0. */
  faultTime: { symbol: 't_k', unit: 's', above: 0, words: 'duration of the fault current' },
  /** Longest time that the conductor withstands the fault current t_k,max, s, 0 and up. */
  maximumFaultTime: {
    symbol: 't_k,max',
    unit: 's',
    least: 0,
    words: 'longest time that the conductor withstands the fault current',
  },
  /** Temperature of the conductor before the fault θ_i, °C, -60 to 500. */
  initialTemperature: {
    symbol: 'θ_i',
    unit: '°C',
    least: -60,
    most: 500,
    words: 'temperature of the conductor before the fault',
  },
  /** Largest temperature of the conductor at the end of the fault θ_f, °C, 0 to 1200. */
  finalTemperature: {
    symbol: 'θ_f',
    unit: '°C',
    least: 0,
    most: 1200,
    words: 'largest temperature of the conductor at the end of the fault',
  },
  /** Material constant of the adiabatic equation K, A·√s/mm², above 0. */
  materialFactor: { symbol: 'K', unit: 'A·√s/mm²', above: 0, words: 'material constant of the adiabatic equation' },
  /** Volumetric heat capacity of the conductor at 20 °C Q_c, J/(K·mm³), above 0. */
  conductorHeatCapacity: {
    symbol: 'Q_c',
    unit: 'J/(K·mm³)',
    above: 0,
    words: 'volumetric heat capacity of the conductor at 20 °C',
  },
  /** Resistivity of the conductor at 20 °C ρ_20, Ω·mm, above 0. */
  conductorResistivity: { symbol: 'ρ_20', unit: 'Ω·mm', above: 0, words: 'resistivity of the conductor at 20 °C' },
  /** Reciprocal of the temperature coefficient at 0 °C β, K, above 0. */
  reciprocalCoefficient: {
    symbol: 'β',
    unit: 'K',
    above: 0,
    words: 'reciprocal of the temperature coefficient at 0 °C',
  },
  /** Factor k of the line conductor k_1, A·√s/mm², above 0. */
  lineFactor: { symbol: 'k_1', unit: 'A·√s/mm²', above: 0, words: 'factor k of the line conductor' },
  /** Factor k of the protective conductor k_2, A·√s/mm², above 0. */
  protectiveFactor: { symbol: 'k_2', unit: 'A·√s/mm²', above: 0, words: 'factor k of the protective conductor' },
  /** Protective conductor by the table for the same material S_54.7, mm², 0 and up. */
  tabulatedProtectiveArea: {
    symbol: 'S_54.7',
    unit: 'mm²',
    least: 0,
    words: 'protective conductor by the table for the same material',
  },
  /** Cross-sectional area of a bonding conductor S_b, mm², 0 and up. */
  bondingArea: { symbol: 'S_b', unit: 'mm²', least: 0, words: 'cross-sectional area of a bonding conductor' },
  /** Smallest area of a bonding conductor S_b,min, mm², above 0. */
  minimumBondingArea: { symbol: 'S_b,min', unit: 'mm²', above: 0, words: 'smallest area of a bonding conductor' },
  /** Least that is ever asked of a bonding conductor S_b,0, mm², above 0. */
  leastBondingArea: {
    symbol: 'S_b,0',
    unit: 'mm²',
    above: 0,
    words: 'least that is ever asked of a bonding conductor',
  },
  /** Smallest area asked of this bonding conductor S_b,min, mm², above 0. */
  bondingAreaAsked: {
    symbol: 'S_b,min',
    unit: 'mm²',
    above: 0,
    words: 'smallest area asked of this bonding conductor',
  },
  /** Cross-sectional area of the earthing conductor S_e, mm², above 0. */
  earthingConductorArea: {
    symbol: 'S_e',
    unit: 'mm²',
    above: 0,
    words: 'cross-sectional area of the earthing conductor',
  },
  /** Smallest area of the earthing conductor S_e,min, mm², 0 and up. */
  minimumEarthingArea: { symbol: 'S_e,min', unit: 'mm²', least: 0, words: 'smallest area of the earthing conductor' },
  /** Copper-equivalent area of the neutral of the supply S_n, mm², above 0. */
  supplyNeutralArea: {
    symbol: 'S_n',
    unit: 'mm²',
    above: 0,
    words: 'copper-equivalent area of the neutral of the supply',
  },
  /** Cross-sectional area of the armour S_arm, mm², above 0. */
  armourArea: { symbol: 'S_arm', unit: 'mm²', above: 0, words: 'cross-sectional area of the armour' },
  /** Number of cores of the cable n_c, 1, 1 to 5. */
  cores: { symbol: 'n_c', unit: '1', least: 1, most: 5, words: 'number of cores of the cable' },
  /** Rated power of the transformer S_rT, VA, above 0. */
  transformerRating: { symbol: 'S_rT', unit: 'VA', above: 0, words: 'rated power of the transformer' },
  /** Rated voltage of the transformer on its low side, between lines U_rT, V, above 0. */
  transformerVoltage: {
    symbol: 'U_rT',
    unit: 'V',
    above: 0,
    words: 'rated voltage of the transformer on its low side, between lines',
  },
  /** Impedance voltage of the transformer u_k, 1, above 0 to 1. */
  transformerImpedanceVoltage: {
    symbol: 'u_k',
    unit: '1',
    above: 0,
    most: 1,
    words: 'impedance voltage of the transformer',
  },
  /** Loss of the transformer at rated current P_kT, W, 0 and up. */
  transformerLoss: { symbol: 'P_kT', unit: 'W', least: 0, words: 'loss of the transformer at rated current' },
  /** Impedance of the transformer per line conductor Z_T, Ω, above 0. */
  transformerImpedance: {
    symbol: 'Z_T',
    unit: 'Ω',
    above: 0,
    words: 'impedance of the transformer per line conductor',
  },
  /** Resistance of the transformer per line conductor R_T, Ω, 0 and up. */
  transformerResistance: {
    symbol: 'R_T',
    unit: 'Ω',
    least: 0,
    words: 'resistance of the transformer per line conductor',
  },
  /** Relative reactance of the transformer x_T, 1, 0 to 1. */
  transformerReactanceRatio: {
    symbol: 'x_T',
    unit: '1',
    least: 0,
    most: 1,
    words: 'relative reactance of the transformer',
  },
  /** Correction factor of the transformer impedance K_T, 1, above 0 to 1.2. */
  transformerFactor: {
    symbol: 'K_T',
    unit: '1',
    above: 0,
    most: 1.2,
    words: 'correction factor of the transformer impedance',
  },
  /** Voltage factor c, 1, above 0 to 1.2. */
  voltageFactor: { symbol: 'c', unit: '1', above: 0, most: 1.2, words: 'voltage factor' },
  /** Nominal voltage of the grid at its connection point, between lines U_Q, V, above 0. */
  gridVoltage: {
    symbol: 'U_Q',
    unit: 'V',
    above: 0,
    words: 'nominal voltage of the grid at its connection point, between lines',
  },
  /** Initial three-phase fault current of the grid at its connection point I_kQ, A, above 0. */
  gridFaultCurrent: {
    symbol: 'I_kQ',
    unit: 'A',
    above: 0,
    words: 'initial three-phase fault current of the grid at its connection point',
  },
  /** Impedance of the grid referred to the low side Z_Q, Ω, 0 and up. */
  gridImpedance: { symbol: 'Z_Q', unit: 'Ω', least: 0, words: 'impedance of the grid referred to the low side' },
  /** Smallest insulation resistance R_iso,min, Ω, above 0. */
  insulationResistanceLimit: { symbol: 'R_iso,min', unit: 'Ω', above: 0, words: 'smallest insulation resistance' },
  /** Voltage of the insulation test, d.c. U_iso, V, above 0. */
  insulationTestVoltage: { symbol: 'U_iso', unit: 'V', above: 0, words: 'voltage of the insulation test, d.c.' },
  /** End-to-end resistance of the line conductor of a ring r_1, Ω, 0 and up. */
  ringLineResistance: {
    symbol: 'r_1',
    unit: 'Ω',
    least: 0,
    words: 'end-to-end resistance of the line conductor of a ring',
  },
  /** End-to-end resistance of the neutral conductor of a ring r_n, Ω, 0 and up. */
  ringNeutralResistance: {
    symbol: 'r_n',
    unit: 'Ω',
    least: 0,
    words: 'end-to-end resistance of the neutral conductor of a ring',
  },
  /** End-to-end resistance of the protective conductor of a ring r_2, Ω, 0 and up. */
  ringProtectiveResistance: {
    symbol: 'r_2',
    unit: 'Ω',
    least: 0,
    words: 'end-to-end resistance of the protective conductor of a ring',
  },
  /** Reading at a point of a cross-connected ring R_x, Ω, 0 and up. */
  crossConnectedResistance: {
    symbol: 'R_x',
    unit: 'Ω',
    least: 0,
    words: 'reading at a point of a cross-connected ring',
  },
  /** Voltage at the point under load U_l, V, above 0. */
  loadedVoltage: { symbol: 'U_l', unit: 'V', above: 0, words: 'voltage at the point under load' },
  /** Conditional short-circuit rating I_cc, A, above 0. */
  breakingLimit: { symbol: 'I_cc', unit: 'A', above: 0, words: 'conditional short-circuit rating' },
  /** Resistance of the earth electrode alone R_E, Ω, 0 and up. */
  earthElectrode: { symbol: 'R_E', unit: 'Ω', least: 0, words: 'resistance of the earth electrode alone' },
  /** Earth fault path of the network without the electrode of the installation R_B, Ω, 0 and up. */
  networkEarth: {
    symbol: 'R_B',
    unit: 'Ω',
    least: 0,
    words: 'earth fault path of the network without the electrode of the installation',
  },
  /** Resistance of the protective conductors from the origin R_2,tot, Ω, 0 and up. */
  circuitProtectiveResistance: {
    symbol: 'R_2,tot',
    unit: 'Ω',
    least: 0,
    words: 'resistance of the protective conductors from the origin',
  },
  /** Resistance above which an electrode may not be stable R_A,st, Ω, above 0. */
  electrodeStability: {
    symbol: 'R_A,st',
    unit: 'Ω',
    above: 0,
    words: 'resistance above which an electrode may not be stable',
  },
  /** Share of the fault current that a path takes p, 1, 0 to 1. */
  pathShare: { symbol: 'p', unit: '1', least: 0, most: 1, words: 'share of the fault current that a path takes' },
  /** Current at which the device ahead holds while the other clears I_hold, A, above 0. */
  fuseHoldCurrent: {
    symbol: 'I_hold',
    unit: 'A',
    above: 0,
    words: 'current at which the device ahead holds while the other clears',
  },
  /** Resistance expected at the test R_exp, Ω, 0 and up. */
  continuityExpected: { symbol: 'R_exp', unit: 'Ω', least: 0, words: 'resistance expected at the test' },
  /** Smallest resistance that passes at the test R_exp,min, Ω, 0 and up. */
  continuityLeast: { symbol: 'R_exp,min', unit: 'Ω', least: 0, words: 'smallest resistance that passes at the test' },
  /** Largest resistance that passes at the test R_exp,max, Ω, 0 and up. */
  continuityMost: { symbol: 'R_exp,max', unit: 'Ω', least: 0, words: 'largest resistance that passes at the test' },
  /** Difference of two readings on a ring Δr, Ω, 0 and up. */
  ringDifference: { symbol: 'Δr', unit: 'Ω', least: 0, words: 'difference of two readings on a ring' },
  /** Longest break time of a residual current device at the test t_Δ,max, s, above 0. */
  residualTimeLimit: {
    symbol: 't_Δ,max',
    unit: 's',
    above: 0,
    words: 'longest break time of a residual current device at the test',
  },
  /** Shortest break time of a selective device at the test t_Δ,min, s, 0 and up. */
  residualTimeLeast: {
    symbol: 't_Δ,min',
    unit: 's',
    least: 0,
    words: 'shortest break time of a selective device at the test',
  },
  /** Direct residual current at which a detector must not trip I_dc,min, A, above 0. */
  directTripLeast: {
    symbol: 'I_dc,min',
    unit: 'A',
    above: 0,
    words: 'direct residual current at which a detector must not trip',
  },
  /** Direct residual current at which a detector must have tripped I_dc,max, A, above 0. */
  directTripMost: {
    symbol: 'I_dc,max',
    unit: 'A',
    above: 0,
    words: 'direct residual current at which a detector must have tripped',
  },
  /** Smallest voltage that is permitted at the point U_min, V, above 0. */
  loadedVoltageLeast: {
    symbol: 'U_min',
    unit: 'V',
    above: 0,
    words: 'smallest voltage that is permitted at the point',
  },
  /** Largest voltage that is permitted at the point U_max, V, above 0. */
  loadedVoltageMost: { symbol: 'U_max', unit: 'V', above: 0, words: 'largest voltage that is permitted at the point' },
  /** Resistance at the test over that in normal operation F_t/F_p, 1, above 0. */
  temperatureRatio: {
    symbol: 'F_t/F_p',
    unit: '1',
    above: 0,
    words: 'resistance at the test over that in normal operation',
  },
  /** Multiple of the rated current that flowed before m_0, 1, 0 and up. */
  preloadMultiple: { symbol: 'm_0', unit: '1', least: 0, words: 'multiple of the rated current that flowed before' },
  /** Multiple of the rated current that the device carries for ever m_t, 1, above 0. */
  thresholdMultiple: {
    symbol: 'm_t',
    unit: '1',
    above: 0,
    words: 'multiple of the rated current that the device carries for ever',
  },
  /** Time constant of a thermal trip τ, s, above 0. */
  thermalTimeConstant: { symbol: 'τ', unit: 's', above: 0, words: 'time constant of a thermal trip' },
  /** Time multiplier of a relay TMS, 1, above 0. */
  timeMultiplier: { symbol: 'TMS', unit: '1', above: 0, words: 'time multiplier of a relay' },
  /** Constant of an inverse-time relay k_rel, s, above 0. */
  inverseConstant: { symbol: 'k_rel', unit: 's', above: 0, words: 'constant of an inverse-time relay' },
  /** Added time of an inverse-time relay c_rel, s, 0 and up. */
  inverseOffset: { symbol: 'c_rel', unit: 's', least: 0, words: 'added time of an inverse-time relay' },
  /** Exponent of an inverse-time relay a_rel, 1, above 0. */
  inverseExponent: { symbol: 'a_rel', unit: '1', above: 0, words: 'exponent of an inverse-time relay' },
  /** Least impedance of the distribution circuits ahead, conductors cold Z_f,min, Ω, 0 and up. */
  leastFeederImpedance: {
    symbol: 'Z_f,min',
    unit: 'Ω',
    least: 0,
    words: 'least impedance of the distribution circuits ahead, conductors cold',
  },
  /** Prospective current at the origin of the run, every run ahead counted I_pf, A, 0 and up. */
  prospectiveAtOrigin: {
    symbol: 'I_pf',
    unit: 'A',
    least: 0,
    words: 'prospective current at the origin of the run, every run ahead counted',
  },
  /** Current at which a circuit-breaker trips at once, at the latest I_t, A, above 0. */
  instantaneousTrip: {
    symbol: 'I_t',
    unit: 'A',
    above: 0,
    words: 'current at which a circuit-breaker trips at once, at the latest',
  },
  /** Current at which the device of the circuit clears in less than 0.1 s I_0.1, A, above 0. */
  clearingCurrent: {
    symbol: 'I_0.1',
    unit: 'A',
    above: 0,
    words: 'current at which the device of the circuit clears in less than 0.1 s',
  },
  /** Rated current of the device ahead I_n,a, A, above 0. */
  aheadRating: { symbol: 'I_n,a', unit: 'A', above: 0, words: 'rated current of the device ahead' },
  /** Fault current, or the prospective current where that is larger I_k,g, A, 0 and up. */
  guardedCurrent: {
    symbol: 'I_k,g',
    unit: 'A',
    least: 0,
    words: 'fault current, or the prospective current where that is larger',
  },
  /** Current at which the residual current device clears in its shortest time 5 I_Δn, A, above 0. */
  residualClearing: {
    symbol: '5 I_Δn',
    unit: 'A',
    above: 0,
    words: 'current at which the residual current device clears in its shortest time',
  },
  /** Bound of the let-through energy of a fault cleared in less than 0.1 s I²t_0.1, A²s, 0 and up. */
  boundedEnergy: {
    symbol: 'I²t_0.1',
    unit: 'A²s',
    least: 0,
    words: 'bound of the let-through energy of a fault cleared in less than 0.1 s',
  },
  /** Limit of the let-through energy by the class of the circuit-breaker I²t_class, A²s, 0 and up. */
  classEnergy: {
    symbol: 'I²t_class',
    unit: 'A²s',
    least: 0,
    words: 'limit of the let-through energy by the class of the circuit-breaker',
  },
  /** Factor k of the armour k_arm, A·√s/mm², above 0. */
  armourFactor: { symbol: 'k_arm', unit: 'A·√s/mm²', above: 0, words: 'factor k of the armour' },
  /** Largest earth fault current, conductors cold, at the origin of the run I_f,max, A, 0 and up. */
  largestEarthFaultCurrent: {
    symbol: 'I_f,max',
    unit: 'A',
    least: 0,
    words: 'largest earth fault current, conductors cold, at the origin of the run',
  },
} satisfies Roles;

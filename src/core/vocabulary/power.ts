import type { Roles } from './term.js';

/** Roles of transformers, motors, capacitors and harmonics. */
export const powerTerms = {
  /** Rated current of the transformer on its low side I_rT, A, above 0. */
  transformerCurrent: {
    symbol: 'I_rT',
    unit: 'A',
    above: 0,
    words: 'rated current of the transformer on its low side',
  },
  /** Loss of the transformer without load P_0, W, 0 and up. */
  noLoadLoss: { symbol: 'P_0', unit: 'W', least: 0, words: 'loss of the transformer without load' },
  /** Load over rated power or current x, 1, 0 and up. */
  loadShare: { symbol: 'x', unit: '1', least: 0, words: 'load over rated power or current' },
  /** Losses of the transformer at its load P_T, W, 0 and up. */
  transformerLosses: { symbol: 'P_T', unit: 'W', least: 0, words: 'losses of the transformer at its load' },
  /** Load at which a transformer is most efficient, over its rated power x_b, 1, 0 and up. */
  bestLoadShare: {
    symbol: 'x_b',
    unit: '1',
    least: 0,
    words: 'load at which a transformer is most efficient, over its rated power',
  },
  /** Power that leaves the transformer over power that enters it η_T, 1, 0 to 1. */
  transformerEfficiency: {
    symbol: 'η_T',
    unit: '1',
    least: 0,
    most: 1,
    words: 'power that leaves the transformer over power that enters it',
  },
  /** Resistive part of the impedance voltage u_r, 1, 0 to 1. */
  resistiveVoltage: { symbol: 'u_r', unit: '1', least: 0, most: 1, words: 'resistive part of the impedance voltage' },
  /** Reactive part of the impedance voltage u_x, 1, 0 to 1. */
  reactiveVoltage: { symbol: 'u_x', unit: '1', least: 0, most: 1, words: 'reactive part of the impedance voltage' },
  /** Drop of the voltage of the transformer by its load, over its rated voltage Δu_T, 1, any. */
  regulation: {
    symbol: 'Δu_T',
    unit: '1',
    words: 'drop of the voltage of the transformer by its load, over its rated voltage',
  },
  /** Three-phase fault level of the grid at its connection point S_kQ, VA, above 0. */
  gridFaultPower: {
    symbol: 'S_kQ',
    unit: 'VA',
    above: 0,
    words: 'three-phase fault level of the grid at its connection point',
  },
  /** Impedance of the second transformer per line conductor Z_T2, Ω, above 0. */
  secondTransformerImpedance: {
    symbol: 'Z_T2',
    unit: 'Ω',
    above: 0,
    words: 'impedance of the second transformer per line conductor',
  },
  /** Difference of the voltages of two transformers without load, over the rated voltage Δa, 1, 0 to 1. */
  tapDifference: {
    symbol: 'Δa',
    unit: '1',
    least: 0,
    most: 1,
    words: 'difference of the voltages of two transformers without load, over the rated voltage',
  },
  /** Current between transformers without load I_circ, A, 0 and up. */
  circulatingCurrent: { symbol: 'I_circ', unit: 'A', least: 0, words: 'current between transformers without load' },
  /** Load that transformers in parallel carry together S_par, VA, 0 and up. */
  parallelLoad: { symbol: 'S_par', unit: 'VA', least: 0, words: 'load that transformers in parallel carry together' },
  /** Loss at rated current over loss without load R, 1, 0 and up. */
  lossRatio: { symbol: 'R', unit: '1', least: 0, words: 'loss at rated current over loss without load' },
  /** Rise of the top oil above the ambient at rated load Δθ_or, K, above 0. */
  ratedOilRise: { symbol: 'Δθ_or', unit: 'K', above: 0, words: 'rise of the top oil above the ambient at rated load' },
  /** Rise of the top oil above the ambient Δθ_o, K, 0 and up. */
  oilRise: { symbol: 'Δθ_o', unit: 'K', least: 0, words: 'rise of the top oil above the ambient' },
  /** Exponent of the losses in the rise of the oil x_o, 1, above 0 to 2. */
  oilExponent: { symbol: 'x_o', unit: '1', above: 0, most: 2, words: 'exponent of the losses in the rise of the oil' },
  /** Rise of the hot spot above the top oil at rated load Δθ_hr, K, above 0. */
  ratedHotSpotGradient: {
    symbol: 'Δθ_hr',
    unit: 'K',
    above: 0,
    words: 'rise of the hot spot above the top oil at rated load',
  },
  /** Rise of the hot spot above the top oil Δθ_h, K, 0 and up. */
  hotSpotGradient: { symbol: 'Δθ_h', unit: 'K', least: 0, words: 'rise of the hot spot above the top oil' },
  /** Exponent of the current in the rise of the hot spot y_w, 1, above 0 to 4. */
  windingExponent: {
    symbol: 'y_w',
    unit: '1',
    above: 0,
    most: 4,
    words: 'exponent of the current in the rise of the hot spot',
  },
  /** Temperature of the hot spot of the winding θ_h, °C, -50 to 300. */
  hotSpotTemperature: {
    symbol: 'θ_h',
    unit: '°C',
    least: -50,
    most: 300,
    words: 'temperature of the hot spot of the winding',
  },
  /** Rate at which insulation ages, over the normal one V, 1, 0 and up. */
  ageingRate: { symbol: 'V', unit: '1', least: 0, words: 'rate at which insulation ages, over the normal one' },
  /** Activation energy of the ageing of insulation over the Boltzmann constant B, K, above 0. */
  activationTemperature: {
    symbol: 'B',
    unit: 'K',
    above: 0,
    words: 'activation energy of the ageing of insulation over the Boltzmann constant',
  },
  /** Rated power of a motor at its shaft P_rM, W, above 0. */
  motorPower: { symbol: 'P_rM', unit: 'W', above: 0, words: 'rated power of a motor at its shaft' },
  /** Efficiency of a motor at rated load η_M, 1, above 0 to 1. */
  motorEfficiency: { symbol: 'η_M', unit: '1', above: 0, most: 1, words: 'efficiency of a motor at rated load' },
  /** Largest direct-current power of a charge point P_dc, W, 0 and up. */
  directOutputPower: {
    symbol: 'P_dc',
    unit: 'W',
    least: 0,
    words: 'largest direct-current power of a charge point',
  },
  /** Efficiency of a rectifier at full load η_R, 1, above 0 to 1. */
  rectifierEfficiency: { symbol: 'η_R', unit: '1', above: 0, most: 1, words: 'efficiency of a rectifier at full load' },
  /** Current that a rectifier takes on a line at its largest power I_R, A, 0 and up. */
  rectifierCurrent: {
    symbol: 'I_R',
    unit: 'A',
    least: 0,
    words: 'current that a rectifier takes on a line at its largest power',
  },
  /** Rated apparent power of a motor S_rM, VA, above 0. */
  motorRating: { symbol: 'S_rM', unit: 'VA', above: 0, words: 'rated apparent power of a motor' },
  /** Rated voltage of a motor between lines U_rM, V, above 0. */
  motorVoltage: { symbol: 'U_rM', unit: 'V', above: 0, words: 'rated voltage of a motor between lines' },
  /** Rated current of a motor I_rM, A, 0 and up. */
  motorCurrent: { symbol: 'I_rM', unit: 'A', least: 0, words: 'rated current of a motor' },
  /** Current of a motor at standstill over its rated current k_LR, 1, above 0. */
  startMultiple: {
    symbol: 'k_LR',
    unit: '1',
    above: 0,
    words: 'current of a motor at standstill over its rated current',
  },
  /** Current that a starter leaves of the direct starting current k_st, 1, above 0 to 1. */
  startReduction: {
    symbol: 'k_st',
    unit: '1',
    above: 0,
    most: 1,
    words: 'current that a starter leaves of the direct starting current',
  },
  /** Starting current I_st, A, 0 and up. */
  startCurrent: { symbol: 'I_st', unit: 'A', least: 0, words: 'starting current' },
  /** Impedance of a motor at a fault, per line conductor Z_M, Ω, above 0. */
  motorImpedance: { symbol: 'Z_M', unit: 'Ω', above: 0, words: 'impedance of a motor at a fault, per line conductor' },
  /** Current that a motor feeds into a three-phase fault at its terminals I_kM, A, 0 and up. */
  motorFaultCurrent: {
    symbol: 'I_kM',
    unit: 'A',
    least: 0,
    words: 'current that a motor feeds into a three-phase fault at its terminals',
  },
  /** Apparent power of a start at nominal voltage S_st, VA, 0 and up. */
  startPower: { symbol: 'S_st', unit: 'VA', least: 0, words: 'apparent power of a start at nominal voltage' },
  /** Three-phase fault level S_k, VA, above 0. */
  faultPower: { symbol: 'S_k', unit: 'VA', above: 0, words: 'three-phase fault level' },
  /** Change of the voltage by a start, over the nominal voltage d, 1, 0 and up. */
  voltageDip: { symbol: 'd', unit: '1', least: 0, words: 'change of the voltage by a start, over the nominal voltage' },
  /** Largest change of the voltage by a start that is permitted, over the nominal voltage d_max, 1, above 0 to 1. */
  dipLimit: {
    symbol: 'd_max',
    unit: '1',
    above: 0,
    most: 1,
    words: 'largest change of the voltage by a start that is permitted, over the nominal voltage',
  },
  /** Largest starting current that is permitted I_st,max, A, 0 and up. */
  largestStartCurrent: { symbol: 'I_st,max', unit: 'A', least: 0, words: 'largest starting current that is permitted' },
  /** Current while an intermittent load works I_w, A, 0 and up. */
  workingCurrent: { symbol: 'I_w', unit: 'A', least: 0, words: 'current while an intermittent load works' },
  /** Share of the time in which an intermittent load works D_w, 1, 0 to 1. */
  workingShare: {
    symbol: 'D_w',
    unit: '1',
    least: 0,
    most: 1,
    words: 'share of the time in which an intermittent load works',
  },
  /** Steady current of the same heat as an intermittent load I_eq, A, 0 and up. */
  equivalentCurrent: {
    symbol: 'I_eq',
    unit: 'A',
    least: 0,
    words: 'steady current of the same heat as an intermittent load',
  },
  /** Cycles of the supply that a weld lasts n_c, 1, above 0. */
  weldCycles: { symbol: 'n_c', unit: '1', above: 0, words: 'cycles of the supply that a weld lasts' },
  /** Time from a weld to the next t_w, s, above 0. */
  weldTime: { symbol: 't_w', unit: 's', above: 0, words: 'time from a weld to the next' },
  /** Power factor that is aimed at cos φ_2, 1, above 0 to 1. */
  targetPowerFactor: { symbol: 'cos φ_2', unit: '1', above: 0, most: 1, words: 'power factor that is aimed at' },
  /** Reactive power of capacitors Q_c, var, 0 and up. */
  capacitorPower: { symbol: 'Q_c', unit: 'var', least: 0, words: 'reactive power of capacitors' },
  /** Apparent power with capacitors S_2, VA, 0 and up. */
  correctedPower: { symbol: 'S_2', unit: 'VA', least: 0, words: 'apparent power with capacitors' },
  /** Power factor with capacitors cos φ_c, 1, 0 to 1. */
  correctedPowerFactor: { symbol: 'cos φ_c', unit: '1', least: 0, most: 1, words: 'power factor with capacitors' },
  /** Current with capacitors over that without I_2/I_1, 1, 0 and up. */
  currentReduction: { symbol: 'I_2/I_1', unit: '1', least: 0, words: 'current with capacitors over that without' },
  /** Rise of the voltage by capacitors, over the nominal voltage Δu_c, 1, 0 and up. */
  capacitorRise: {
    symbol: 'Δu_c',
    unit: '1',
    least: 0,
    words: 'rise of the voltage by capacitors, over the nominal voltage',
  },
  /** Current of capacitors I_c, A, 0 and up. */
  capacitorCurrent: { symbol: 'I_c', unit: 'A', least: 0, words: 'current of capacitors' },
  /** Order of the harmonic at which capacitors and supply resonate h_r, 1, 0 and up. */
  resonanceOrder: {
    symbol: 'h_r',
    unit: '1',
    least: 0,
    words: 'order of the harmonic at which capacitors and supply resonate',
  },
  /** Reactance of a detuning reactor over that of its capacitors p, 1, above 0 to 0.5. */
  reactorShare: {
    symbol: 'p',
    unit: '1',
    above: 0,
    most: 0.5,
    words: 'reactance of a detuning reactor over that of its capacitors',
  },
  /** Voltage of capacitors behind a detuning reactor U_C, V, above 0. */
  capacitorVoltage: { symbol: 'U_C', unit: 'V', above: 0, words: 'voltage of capacitors behind a detuning reactor' },
  /** Factor of the eddy losses by harmonics K, 1, 0 and up. */
  harmonicLossFactor: { symbol: 'K', unit: '1', least: 0, words: 'factor of the eddy losses by harmonics' },
  /** Factor by which harmonics reduce the load of a transformer K_h, 1, 0 to 1. */
  harmonicDerating: {
    symbol: 'K_h',
    unit: '1',
    least: 0,
    most: 1,
    words: 'factor by which harmonics reduce the load of a transformer',
  },
  /** Root of the squares of all harmonics over the fundamental THD, 1, 0 and up. */
  distortion: {
    symbol: 'THD',
    unit: '1',
    least: 0,
    words: 'root of the squares of all harmonics over the fundamental',
  },
  /** Unbalance of three voltages u_2, 1, 0 and up. */
  voltageUnbalance: { symbol: 'u_2', unit: '1', least: 0, words: 'unbalance of three voltages' },
  /** Load on one line or between two S_1ph, VA, 0 and up. */
  singlePhaseLoad: { symbol: 'S_1ph', unit: 'VA', least: 0, words: 'load on one line or between two' },
  /** Starting kVA of a motor for each horsepower k_L, 1, above 0. */
  letterFactor: {
    symbol: 'k_L',
    unit: '1',
    above: 0,
    words: 'starting kVA of a motor for each horsepower',
  },
  /** Impedance under which equipment was tested Z_test, Ω, above 0. */
  testImpedance: { symbol: 'Z_test', unit: 'Ω', above: 0, words: 'impedance under which equipment was tested' },
  /** Flicker of equipment as tested P_st, 1, above 0. */
  flicker: { symbol: 'P_st', unit: '1', above: 0, words: 'flicker of equipment as tested' },
  /** Largest impedance of the supply that is permitted Z_max, Ω, above 0. */
  largestImpedance: {
    symbol: 'Z_max',
    unit: 'Ω',
    above: 0,
    words: 'largest impedance of the supply that is permitted',
  },
  /** Rated apparent power of equipment, all lines together S_equ, VA, above 0. */
  equipmentRating: {
    symbol: 'S_equ',
    unit: 'VA',
    above: 0,
    words: 'rated apparent power of equipment, all lines together',
  },
  /** Fault level over the power of equipment R_sce, 1, 0 and up. */
  shortCircuitRatio: { symbol: 'R_sce', unit: '1', least: 0, words: 'fault level over the power of equipment' },
  /** Order of a harmonic h, 1, 2 and up. */
  harmonicOrder: { symbol: 'h', unit: '1', least: 2, words: 'order of a harmonic' },
  /** Largest current of a harmonic that equipment may draw I_h,max, A, 0 and up. */
  harmonicLimit: {
    symbol: 'I_h,max',
    unit: 'A',
    least: 0,
    words: 'largest current of a harmonic that equipment may draw',
  },
  /** Largest current of a harmonic over the reference current of equipment i_h,max, 1, 0 and up. */
  relativeHarmonicLimit: {
    symbol: 'i_h,max',
    unit: '1',
    least: 0,
    words: 'largest current of a harmonic over the reference current of equipment',
  },
} satisfies Roles;

import { aboveZero, anyNumber, fromZero, part, type Roles, share } from './term.js';

/** Roles of transformers, motors, capacitors and harmonics. */
export const powerTerms = {
  /** Rated current of the transformer on its low side I_rT, A, above 0. */
  transformerCurrent: ['I_rT', 'A', aboveZero, 'rated current of the transformer on its low side'],
  /** Loss of the transformer without load P_0, W, 0 and up. */
  noLoadLoss: ['P_0', 'W', fromZero, 'loss of the transformer without load'],
  /** Load over rated power or current x, 1, 0 and up. */
  loadShare: ['x', '1', fromZero, 'load over rated power or current'],
  /** Losses of the transformer at its load P_T, W, 0 and up. */
  transformerLosses: ['P_T', 'W', fromZero, 'losses of the transformer at its load'],
  /** Load at which a transformer is most efficient, over its rated power x_b, 1, 0 and up. */
  bestLoadShare: ['x_b', '1', fromZero, 'load at which a transformer is most efficient, over its rated power'],
  /** Power that leaves the transformer over power that enters it η_T, 1, 0 to 1. */
  transformerEfficiency: ['η_T', '1', share, 'power that leaves the transformer over power that enters it'],
  /** Resistive part of the impedance voltage u_r, 1, 0 to 1. */
  resistiveVoltage: ['u_r', '1', share, 'resistive part of the impedance voltage'],
  /** Reactive part of the impedance voltage u_x, 1, 0 to 1. */
  reactiveVoltage: ['u_x', '1', share, 'reactive part of the impedance voltage'],
  /** Drop of the voltage of the transformer by its load, over its rated voltage Δu_T, 1, any. */
  regulation: ['Δu_T', '1', anyNumber, 'drop of the voltage of the transformer by its load, over its rated voltage'],
  /** Three-phase fault level of the grid at its connection point S_kQ, VA, above 0. */
  gridFaultPower: ['S_kQ', 'VA', aboveZero, 'three-phase fault level of the grid at its connection point'],
  /** Impedance of the second transformer per line conductor Z_T2, Ω, above 0. */
  secondTransformerImpedance: ['Z_T2', 'Ω', aboveZero, 'impedance of the second transformer per line conductor'],
  /** Difference of the voltages of two transformers without load, over the rated voltage Δa, 1, 0 to 1. */
  tapDifference: [
    'Δa',
    '1',
    share,
    'difference of the voltages of two transformers without load, over the rated voltage',
  ],
  /** Current between transformers without load I_circ, A, 0 and up. */
  circulatingCurrent: ['I_circ', 'A', fromZero, 'current between transformers without load'],
  /** Load that transformers in parallel carry together S_par, VA, 0 and up. */
  parallelLoad: ['S_par', 'VA', fromZero, 'load that transformers in parallel carry together'],
  /** Loss at rated current over loss without load R, 1, 0 and up. */
  lossRatio: ['R', '1', fromZero, 'loss at rated current over loss without load'],
  /** Rise of the top oil above the ambient at rated load Δθ_or, K, above 0. */
  ratedOilRise: ['Δθ_or', 'K', aboveZero, 'rise of the top oil above the ambient at rated load'],
  /** Rise of the top oil above the ambient Δθ_o, K, 0 and up. */
  oilRise: ['Δθ_o', 'K', fromZero, 'rise of the top oil above the ambient'],
  /** Exponent of the losses in the rise of the oil x_o, 1, above 0 to 2. */
  oilExponent: ['x_o', '1', { above: 0, most: 2 }, 'exponent of the losses in the rise of the oil'],
  /** Rise of the hot spot above the top oil at rated load Δθ_hr, K, above 0. */
  ratedHotSpotGradient: ['Δθ_hr', 'K', aboveZero, 'rise of the hot spot above the top oil at rated load'],
  /** Rise of the hot spot above the top oil Δθ_h, K, 0 and up. */
  hotSpotGradient: ['Δθ_h', 'K', fromZero, 'rise of the hot spot above the top oil'],
  /** Exponent of the current in the rise of the hot spot y_w, 1, above 0 to 4. */
  windingExponent: ['y_w', '1', { above: 0, most: 4 }, 'exponent of the current in the rise of the hot spot'],
  /** Temperature of the hot spot of the winding θ_h, °C, -50 to 300. */
  hotSpotTemperature: ['θ_h', '°C', { least: -50, most: 300 }, 'temperature of the hot spot of the winding'],
  /** Rate at which insulation ages, over the normal one V, 1, 0 and up. */
  ageingRate: ['V', '1', fromZero, 'rate at which insulation ages, over the normal one'],
  /** Activation energy of the ageing of insulation over the Boltzmann constant B, K, above 0. */
  activationTemperature: [
    'B',
    'K',
    aboveZero,
    'activation energy of the ageing of insulation over the Boltzmann constant',
  ],
  /** Rated power of a motor at its shaft P_rM, W, above 0. */
  motorPower: ['P_rM', 'W', aboveZero, 'rated power of a motor at its shaft'],
  /** Efficiency of a motor at rated load η_M, 1, above 0 to 1. */
  motorEfficiency: ['η_M', '1', part, 'efficiency of a motor at rated load'],
  /** Largest direct-current power of a charge point P_dc, W, 0 and up. */
  directOutputPower: ['P_dc', 'W', fromZero, 'largest direct-current power of a charge point'],
  /** Efficiency of a rectifier at full load η_R, 1, above 0 to 1. */
  rectifierEfficiency: ['η_R', '1', part, 'efficiency of a rectifier at full load'],
  /** Current that a rectifier takes on a line at its largest power I_R, A, 0 and up. */
  rectifierCurrent: ['I_R', 'A', fromZero, 'current that a rectifier takes on a line at its largest power'],
  /** Rated apparent power of a motor S_rM, VA, above 0. */
  motorRating: ['S_rM', 'VA', aboveZero, 'rated apparent power of a motor'],
  /** Rated voltage of a motor between lines U_rM, V, above 0. */
  motorVoltage: ['U_rM', 'V', aboveZero, 'rated voltage of a motor between lines'],
  /** Rated current of a motor I_rM, A, 0 and up. */
  motorCurrent: ['I_rM', 'A', fromZero, 'rated current of a motor'],
  /** Current of a motor at standstill over its rated current k_LR, 1, above 0. */
  startMultiple: ['k_LR', '1', aboveZero, 'current of a motor at standstill over its rated current'],
  /** Current that a starter leaves of the direct starting current k_st, 1, above 0 to 1. */
  startReduction: ['k_st', '1', part, 'current that a starter leaves of the direct starting current'],
  /** Starting current I_st, A, 0 and up. */
  startCurrent: ['I_st', 'A', fromZero, 'starting current'],
  /** Impedance of a motor at a fault, per line conductor Z_M, Ω, above 0. */
  motorImpedance: ['Z_M', 'Ω', aboveZero, 'impedance of a motor at a fault, per line conductor'],
  /** Current that a motor feeds into a three-phase fault at its terminals I_kM, A, 0 and up. */
  motorFaultCurrent: ['I_kM', 'A', fromZero, 'current that a motor feeds into a three-phase fault at its terminals'],
  /** Apparent power of a start at nominal voltage S_st, VA, 0 and up. */
  startPower: ['S_st', 'VA', fromZero, 'apparent power of a start at nominal voltage'],
  /** Three-phase fault level S_k, VA, above 0. */
  faultPower: ['S_k', 'VA', aboveZero, 'three-phase fault level'],
  /** Change of the voltage by a start, over the nominal voltage d, 1, 0 and up. */
  voltageDip: ['d', '1', fromZero, 'change of the voltage by a start, over the nominal voltage'],
  /** Largest change of the voltage by a start that is permitted, over the nominal voltage d_max, 1, above 0 to 1. */
  dipLimit: [
    'd_max',
    '1',
    part,
    'largest change of the voltage by a start that is permitted, over the nominal voltage',
  ],
  /** Largest starting current that is permitted I_st,max, A, 0 and up. */
  largestStartCurrent: ['I_st,max', 'A', fromZero, 'largest starting current that is permitted'],
  /** Current while an intermittent load works I_w, A, 0 and up. */
  workingCurrent: ['I_w', 'A', fromZero, 'current while an intermittent load works'],
  /** Share of the time in which an intermittent load works D_w, 1, 0 to 1. */
  workingShare: ['D_w', '1', share, 'share of the time in which an intermittent load works'],
  /** Steady current of the same heat as an intermittent load I_eq, A, 0 and up. */
  equivalentCurrent: ['I_eq', 'A', fromZero, 'steady current of the same heat as an intermittent load'],
  /** Cycles of the supply that a weld lasts n_c, 1, above 0. */
  weldCycles: ['n_c', '1', aboveZero, 'cycles of the supply that a weld lasts'],
  /** Time from a weld to the next t_w, s, above 0. */
  weldTime: ['t_w', 's', aboveZero, 'time from a weld to the next'],
  /** Power factor that is aimed at cos φ_2, 1, above 0 to 1. */
  targetPowerFactor: ['cos φ_2', '1', part, 'power factor that is aimed at'],
  /** Reactive power of capacitors Q_c, var, 0 and up. */
  capacitorPower: ['Q_c', 'var', fromZero, 'reactive power of capacitors'],
  /** Apparent power with capacitors S_2, VA, 0 and up. */
  correctedPower: ['S_2', 'VA', fromZero, 'apparent power with capacitors'],
  /** Power factor with capacitors cos φ_c, 1, 0 to 1. */
  correctedPowerFactor: ['cos φ_c', '1', share, 'power factor with capacitors'],
  /** Current with capacitors over that without I_2/I_1, 1, 0 and up. */
  currentReduction: ['I_2/I_1', '1', fromZero, 'current with capacitors over that without'],
  /** Rise of the voltage by capacitors, over the nominal voltage Δu_c, 1, 0 and up. */
  capacitorRise: ['Δu_c', '1', fromZero, 'rise of the voltage by capacitors, over the nominal voltage'],
  /** Current of capacitors I_c, A, 0 and up. */
  capacitorCurrent: ['I_c', 'A', fromZero, 'current of capacitors'],
  /** Order of the harmonic at which capacitors and supply resonate h_r, 1, 0 and up. */
  resonanceOrder: ['h_r', '1', fromZero, 'order of the harmonic at which capacitors and supply resonate'],
  /** Reactance of a detuning reactor over that of its capacitors p, 1, above 0 to 0.5. */
  reactorShare: ['p', '1', { above: 0, most: 0.5 }, 'reactance of a detuning reactor over that of its capacitors'],
  /** Voltage of capacitors behind a detuning reactor U_C, V, above 0. */
  capacitorVoltage: ['U_C', 'V', aboveZero, 'voltage of capacitors behind a detuning reactor'],
  /** Factor of the eddy losses by harmonics K, 1, 0 and up. */
  harmonicLossFactor: ['K', '1', fromZero, 'factor of the eddy losses by harmonics'],
  /** Factor by which harmonics reduce the load of a transformer K_h, 1, 0 to 1. */
  harmonicDerating: ['K_h', '1', share, 'factor by which harmonics reduce the load of a transformer'],
  /** Root of the squares of all harmonics over the fundamental THD, 1, 0 and up. */
  distortion: ['THD', '1', fromZero, 'root of the squares of all harmonics over the fundamental'],
  /** Unbalance of three voltages u_2, 1, 0 and up. */
  voltageUnbalance: ['u_2', '1', fromZero, 'unbalance of three voltages'],
  /** Load on one line or between two S_1ph, VA, 0 and up. */
  singlePhaseLoad: ['S_1ph', 'VA', fromZero, 'load on one line or between two'],
  /** Starting kVA of a motor for each horsepower k_L, 1, above 0. */
  letterFactor: ['k_L', '1', aboveZero, 'starting kVA of a motor for each horsepower'],
  /** Impedance under which equipment was tested Z_test, Ω, above 0. */
  testImpedance: ['Z_test', 'Ω', aboveZero, 'impedance under which equipment was tested'],
  /** Flicker of equipment as tested P_st, 1, above 0. */
  flicker: ['P_st', '1', aboveZero, 'flicker of equipment as tested'],
  /** Largest impedance of the supply that is permitted Z_max, Ω, above 0. */
  largestImpedance: ['Z_max', 'Ω', aboveZero, 'largest impedance of the supply that is permitted'],
  /** Rated apparent power of equipment, all lines together S_equ, VA, above 0. */
  equipmentRating: ['S_equ', 'VA', aboveZero, 'rated apparent power of equipment, all lines together'],
  /** Fault level over the power of equipment R_sce, 1, 0 and up. */
  shortCircuitRatio: ['R_sce', '1', fromZero, 'fault level over the power of equipment'],
  /** Order of a harmonic h, 1, 2 and up. */
  harmonicOrder: ['h', '1', { least: 2 }, 'order of a harmonic'],
  /** Largest current of a harmonic that equipment may draw I_h,max, A, 0 and up. */
  harmonicLimit: ['I_h,max', 'A', fromZero, 'largest current of a harmonic that equipment may draw'],
  /** Largest current of a harmonic over the reference current of equipment i_h,max, 1, 0 and up. */
  relativeHarmonicLimit: [
    'i_h,max',
    '1',
    fromZero,
    'largest current of a harmonic over the reference current of equipment',
  ],
} satisfies Roles;

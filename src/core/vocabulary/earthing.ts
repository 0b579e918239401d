import type { Roles } from './term.js';

/** Roles of earthing, electrodes and residual current. */
export const earthingTerms = {
  /** Current of the loads on L1 at nominal voltage I_L1, A, 0 and up. */
  lineCurrent1: { symbol: 'I_L1', unit: 'A', least: 0, words: 'current of the loads on L1 at nominal voltage' },
  /** Current of the loads on L2 at nominal voltage I_L2, A, 0 and up. */
  lineCurrent2: { symbol: 'I_L2', unit: 'A', least: 0, words: 'current of the loads on L2 at nominal voltage' },
  /** Current of the loads on L3 at nominal voltage I_L3, A, 0 and up. */
  lineCurrent3: { symbol: 'I_L3', unit: 'A', least: 0, words: 'current of the loads on L3 at nominal voltage' },
  /** Vector sum of the line currents, the neutral current I_N, A, 0 and up. */
  vectorSumCurrent: {
    symbol: 'I_N',
    unit: 'A',
    least: 0,
    words: 'vector sum of the line currents, the neutral current',
  },
  /** Arithmetic sum of the line currents ΣI, A, above 0. */
  arithmeticSumCurrent: { symbol: 'ΣI', unit: 'A', above: 0, words: 'arithmetic sum of the line currents' },
  /** Current of the installation behind an open PEN conductor at nominal voltage I, A, above 0. */
  installationCurrent: {
    symbol: 'I',
    unit: 'A',
    above: 0,
    words: 'current of the installation behind an open PEN conductor at nominal voltage',
  },
  /** Power that a load holds whatever its voltage P, W, above 0. */
  heldPower: { symbol: 'P', unit: 'W', above: 0, words: 'power that a load holds whatever its voltage' },
  /** Source voltage over nominal voltage c, 1, above 0 to 1.2. */
  sourceFactor: { symbol: 'c', unit: '1', above: 0, most: 1.2, words: 'source voltage over nominal voltage' },
  /** Resistance of the electrodes on the healthy side of the break R_B, Ω, 0 and up. */
  sourceElectrodeResistance: {
    symbol: 'R_B',
    unit: 'Ω',
    least: 0,
    words: 'resistance of the electrodes on the healthy side of the break',
  },
  /** Resistance of the electrode of the charge point R_A,p, Ω, 0 and up. */
  pointElectrodeResistance: {
    symbol: 'R_A,p',
    unit: 'Ω',
    least: 0,
    words: 'resistance of the electrode of the charge point',
  },
  /** Largest electrode resistance that keeps the touch voltage R_A,max, Ω, above 0. */
  electrodeLimit: {
    symbol: 'R_A,max',
    unit: 'Ω',
    above: 0,
    words: 'largest electrode resistance that keeps the touch voltage',
  },
  /** Electrode resistance above which a held power has no operating point R_c, Ω, above 0. */
  collapseResistance: {
    symbol: 'R_c',
    unit: 'Ω',
    above: 0,
    words: 'electrode resistance above which a held power has no operating point',
  },
  /** Current to earth through the electrode I_E, A, 0 and up. */
  earthCurrent: { symbol: 'I_E', unit: 'A', least: 0, words: 'current to earth through the electrode' },
  /** Voltage of the source neutral to earth U_N, V, 0 and up. */
  sourceNeutralVoltage: { symbol: 'U_N', unit: 'V', least: 0, words: 'voltage of the source neutral to earth' },
  /** Upper limit of the line-neutral voltage window U_hi, V, above 0. */
  windowUpper: { symbol: 'U_hi', unit: 'V', above: 0, words: 'upper limit of the line-neutral voltage window' },
  /** Lower limit of the line-neutral voltage window U_lo, V, above 0. */
  windowLower: { symbol: 'U_lo', unit: 'V', above: 0, words: 'lower limit of the line-neutral voltage window' },
  /** Limit of the line-neutral voltage window U_w, V, above 0. */
  windowLimit: { symbol: 'U_w', unit: 'V', above: 0, words: 'limit of the line-neutral voltage window' },
  /** Largest voltage of exposed metal that a line-neutral monitor cannot see U_und, V, 0 and up. */
  undetectedVoltage: {
    symbol: 'U_und',
    unit: 'V',
    least: 0,
    words: 'largest voltage of exposed metal that a line-neutral monitor cannot see',
  },
  /** Voltage that may be lost before the lower limit of the window ΔU_w, V, any. */
  windowMargin: { symbol: 'ΔU_w', unit: 'V', words: 'voltage that may be lost before the lower limit of the window' },
  /** Lowest voltage of the supply U_min, V, above 0. */
  minimumSupplyVoltage: { symbol: 'U_min', unit: 'V', above: 0, words: 'lowest voltage of the supply' },
  /** Resistivity of the soil ρ, Ω·m, above 0. */
  earthResistivity: { symbol: 'ρ', unit: 'Ω·m', above: 0, words: 'resistivity of the soil' },
  /** Length of the electrode in the soil L_E, m, above 0. */
  electrodeLength: { symbol: 'L_E', unit: 'm', above: 0, words: 'length of the electrode in the soil' },
  /** Diameter of the electrode d_E, m, above 0. */
  electrodeDiameter: { symbol: 'd_E', unit: 'm', above: 0, words: 'diameter of the electrode' },
  /** Depth of burial h, m, above 0. */
  burialDepth: { symbol: 'h', unit: 'm', above: 0, words: 'depth of burial' },
  /** Spacing of the rods s, m, above 0. */
  rodSpacing: { symbol: 's', unit: 'm', above: 0, words: 'spacing of the rods' },
  /** Number of rods n_r, 1, 1 and up. */
  rodCount: { symbol: 'n_r', unit: '1', least: 1, words: 'number of rods' },
  /** Factor of the arrangement of rods λ, 1, 0 and up. */
  rodFactor: { symbol: 'λ', unit: '1', least: 0, words: 'factor of the arrangement of rods' },
  /** Ratio of spacing resistance to rod resistance α_r, 1, 0 and up. */
  spacingRatio: { symbol: 'α_r', unit: '1', least: 0, words: 'ratio of spacing resistance to rod resistance' },
  /** Area of one face of a plate, or area that a grid covers A, m², above 0. */
  plateArea: { symbol: 'A', unit: 'm²', above: 0, words: 'area of one face of a plate, or area that a grid covers' },
  /** Width of a strip w_s, m, above 0. */
  stripWidth: { symbol: 'w_s', unit: 'm', above: 0, words: 'width of a strip' },
  /** Diameter of a ring D, m, above 0. */
  ringDiameter: { symbol: 'D', unit: 'm', above: 0, words: 'diameter of a ring' },
  /** Resistance of one rod alone R_r, Ω, above 0. */
  singleRodResistance: { symbol: 'R_r', unit: 'Ω', above: 0, words: 'resistance of one rod alone' },
  /** Resistance of the first electrode alone R_E1, Ω, above 0. */
  firstElectrodeResistance: { symbol: 'R_E1', unit: 'Ω', above: 0, words: 'resistance of the first electrode alone' },
  /** Resistance of the second electrode alone R_E2, Ω, above 0. */
  secondElectrodeResistance: { symbol: 'R_E2', unit: 'Ω', above: 0, words: 'resistance of the second electrode alone' },
  /** Mutual resistance of two electrodes R_m, Ω, 0 and up. */
  mutualResistance: { symbol: 'R_m', unit: 'Ω', least: 0, words: 'mutual resistance of two electrodes' },
  /** Distance to the nearest metal that is earthed to another system d_sep, m, 0 and up. */
  earthSeparation: {
    symbol: 'd_sep',
    unit: 'm',
    least: 0,
    words: 'distance to the nearest metal that is earthed to another system',
  },
  /** Distance required from metal that is earthed to another system d_req, m, 0 and up. */
  requiredSeparation: {
    symbol: 'd_req',
    unit: 'm',
    least: 0,
    words: 'distance required from metal that is earthed to another system',
  },
  /** Largest rated residual operating current permitted I_Δn,max, A, above 0. */
  residualLimit: {
    symbol: 'I_Δn,max',
    unit: 'A',
    above: 0,
    words: 'largest rated residual operating current permitted',
  },
  /** Rated residual operating current of a device that may give additional protection I_Δn,p, A, above 0. */
  protectingCurrent: {
    symbol: 'I_Δn,p',
    unit: 'A',
    above: 0,
    words: 'rated residual operating current of a device that may give additional protection',
  },
  /** Rated residual operating current of the device ahead I_Δn,a, A, above 0. */
  aheadResidualCurrent: {
    symbol: 'I_Δn,a',
    unit: 'A',
    above: 0,
    words: 'rated residual operating current of the device ahead',
  },
  /** Rated current of the residual current device I_n,RCD, A, above 0. */
  residualRatedCurrent: {
    symbol: 'I_n,RCD',
    unit: 'A',
    above: 0,
    words: 'rated current of the residual current device',
  },
  /** Rated currents of the overcurrent devices that it serves, together ΣI_n,s, A, 0 and up. */
  servedRating: {
    symbol: 'ΣI_n,s',
    unit: 'A',
    least: 0,
    words: 'rated currents of the overcurrent devices that it serves, together',
  },
  /** Largest current that can flow through the residual current device I_RCD, A, 0 and up. */
  residualLoad: {
    symbol: 'I_RCD',
    unit: 'A',
    least: 0,
    words: 'largest current that can flow through the residual current device',
  },
  /** Smooth direct residual current that may stand I_dc, A, 0 and up. */
  smoothResidualCurrent: {
    symbol: 'I_dc',
    unit: 'A',
    least: 0,
    words: 'smooth direct residual current that may stand',
  },
  /** Sum of the smooth direct residual currents that may stand ΣI_dc, A, 0 and up. */
  smoothResidualSum: {
    symbol: 'ΣI_dc',
    unit: 'A',
    least: 0,
    words: 'sum of the smooth direct residual currents that may stand',
  },
  /** Smooth direct residual current that the device works with I_dc,w, A, 0 and up. */
  smoothResidualWithstand: {
    symbol: 'I_dc,w',
    unit: 'A',
    least: 0,
    words: 'smooth direct residual current that the device works with',
  },
  /** Standing protective-conductor current of one item I_pc, A, 0 and up. */
  standingCurrent: { symbol: 'I_pc', unit: 'A', least: 0, words: 'standing protective-conductor current of one item' },
  /** Sum of the standing protective-conductor currents ΣI_pc, A, 0 and up. */
  standingCurrentSum: {
    symbol: 'ΣI_pc',
    unit: 'A',
    least: 0,
    words: 'sum of the standing protective-conductor currents',
  },
  /** Largest standing protective-conductor current through the device I_pc,max, A, above 0. */
  standingCurrentLimit: {
    symbol: 'I_pc,max',
    unit: 'A',
    above: 0,
    words: 'largest standing protective-conductor current through the device',
  },
  /** Residual current below which the device must not operate, over its rated one k_lo, 1, 0 and up. */
  residualLowerBand: {
    symbol: 'k_lo',
    unit: '1',
    least: 0,
    words: 'residual current below which the device must not operate, over its rated one',
  },
  /** Residual current at which the device must operate, over its rated one k_hi, 1, above 0. */
  residualUpperBand: {
    symbol: 'k_hi',
    unit: '1',
    above: 0,
    words: 'residual current at which the device must operate, over its rated one',
  },
  /** Limit of the band of operating current, over the rated residual current k_Δ, 1, 0 and up. */
  bandLimit: {
    symbol: 'k_Δ',
    unit: '1',
    least: 0,
    words: 'limit of the band of operating current, over the rated residual current',
  },
  /** Rated current of the assembly I_nA, A, above 0. */
  boardRating: { symbol: 'I_nA', unit: 'A', above: 0, words: 'rated current of the assembly' },
  /** Ratings of everything that can feed the assembly, together ΣI_in, A, 0 and up. */
  boardInfeed: {
    symbol: 'ΣI_in',
    unit: 'A',
    least: 0,
    words: 'ratings of everything that can feed the assembly, together',
  },
} satisfies Roles;

import { aboveZero, anyNumber, fromZero, type Roles } from './term.js';

/** Roles of earthing, electrodes and residual current. */
export const earthingTerms = {
  /** Current of the loads on L1 at nominal voltage I_L1, A, 0 and up. */
  lineCurrent1: ['I_L1', 'A', fromZero, 'current of the loads on L1 at nominal voltage'],
  /** Current of the loads on L2 at nominal voltage I_L2, A, 0 and up. */
  lineCurrent2: ['I_L2', 'A', fromZero, 'current of the loads on L2 at nominal voltage'],
  /** Current of the loads on L3 at nominal voltage I_L3, A, 0 and up. */
  lineCurrent3: ['I_L3', 'A', fromZero, 'current of the loads on L3 at nominal voltage'],
  /** Vector sum of the line currents, the neutral current I_N, A, 0 and up. */
  vectorSumCurrent: ['I_N', 'A', fromZero, 'vector sum of the line currents, the neutral current'],
  /** Arithmetic sum of the line currents ΣI, A, above 0. */
  arithmeticSumCurrent: ['ΣI', 'A', aboveZero, 'arithmetic sum of the line currents'],
  /** Current of the installation behind an open PEN conductor at nominal voltage I, A, above 0. */
  installationCurrent: [
    'I',
    'A',
    aboveZero,
    'current of the installation behind an open PEN conductor at nominal voltage',
  ],
  /** Power that a load holds whatever its voltage P, W, above 0. */
  heldPower: ['P', 'W', aboveZero, 'power that a load holds whatever its voltage'],
  /** Source voltage over nominal voltage c, 1, above 0 to 1.2. */
  sourceFactor: ['c', '1', { above: 0, most: 1.2 }, 'source voltage over nominal voltage'],
  /** Resistance of the electrodes on the healthy side of the break R_B, Ω, 0 and up. */
  sourceElectrodeResistance: ['R_B', 'Ω', fromZero, 'resistance of the electrodes on the healthy side of the break'],
  /** Resistance of the electrode of the charge point R_A,p, Ω, 0 and up. */
  pointElectrodeResistance: ['R_A,p', 'Ω', fromZero, 'resistance of the electrode of the charge point'],
  /** Largest electrode resistance that keeps the touch voltage R_A,max, Ω, above 0. */
  electrodeLimit: ['R_A,max', 'Ω', aboveZero, 'largest electrode resistance that keeps the touch voltage'],
  /** Electrode resistance above which a held power has no operating point R_c, Ω, above 0. */
  collapseResistance: ['R_c', 'Ω', aboveZero, 'electrode resistance above which a held power has no operating point'],
  /** Current to earth through the electrode I_E, A, 0 and up. */
  earthCurrent: ['I_E', 'A', fromZero, 'current to earth through the electrode'],
  /** Voltage of the source neutral to earth U_N, V, 0 and up. */
  sourceNeutralVoltage: ['U_N', 'V', fromZero, 'voltage of the source neutral to earth'],
  /** Upper limit of the line-neutral voltage window U_hi, V, above 0. */
  windowUpper: ['U_hi', 'V', aboveZero, 'upper limit of the line-neutral voltage window'],
  /** Lower limit of the line-neutral voltage window U_lo, V, above 0. */
  windowLower: ['U_lo', 'V', aboveZero, 'lower limit of the line-neutral voltage window'],
  /** Limit of the line-neutral voltage window U_w, V, above 0. */
  windowLimit: ['U_w', 'V', aboveZero, 'limit of the line-neutral voltage window'],
  /** Largest voltage of exposed metal that a line-neutral monitor cannot see U_und, V, 0 and up. */
  undetectedVoltage: [
    'U_und',
    'V',
    fromZero,
    'largest voltage of exposed metal that a line-neutral monitor cannot see',
  ],
  /** Voltage that may be lost before the lower limit of the window ΔU_w, V, any. */
  windowMargin: ['ΔU_w', 'V', anyNumber, 'voltage that may be lost before the lower limit of the window'],
  /** Lowest voltage of the supply U_min, V, above 0. */
  minimumSupplyVoltage: ['U_min', 'V', aboveZero, 'lowest voltage of the supply'],
  /** Resistivity of the soil ρ, Ω·m, above 0. */
  earthResistivity: ['ρ', 'Ω·m', aboveZero, 'resistivity of the soil'],
  /** Length of the electrode in the soil L_E, m, above 0. */
  electrodeLength: ['L_E', 'm', aboveZero, 'length of the electrode in the soil'],
  /** Diameter of the electrode d_E, m, above 0. */
  electrodeDiameter: ['d_E', 'm', aboveZero, 'diameter of the electrode'],
  /** Depth of burial h, m, above 0. */
  burialDepth: ['h', 'm', aboveZero, 'depth of burial'],
  /** Spacing of the rods s, m, above 0. */
  rodSpacing: ['s', 'm', aboveZero, 'spacing of the rods'],
  /** Number of rods n_r, 1, 1 and up. */
  rodCount: ['n_r', '1', { least: 1 }, 'number of rods'],
  /** Factor of the arrangement of rods λ, 1, 0 and up. */
  rodFactor: ['λ', '1', fromZero, 'factor of the arrangement of rods'],
  /** Ratio of spacing resistance to rod resistance α_r, 1, 0 and up. */
  spacingRatio: ['α_r', '1', fromZero, 'ratio of spacing resistance to rod resistance'],
  /** Area of one face of a plate, or area that a grid covers A, m², above 0. */
  plateArea: ['A', 'm²', aboveZero, 'area of one face of a plate, or area that a grid covers'],
  /** Width of a strip w_s, m, above 0. */
  stripWidth: ['w_s', 'm', aboveZero, 'width of a strip'],
  /** Diameter of a ring D, m, above 0. */
  ringDiameter: ['D', 'm', aboveZero, 'diameter of a ring'],
  /** Resistance of one rod alone R_r, Ω, above 0. */
  singleRodResistance: ['R_r', 'Ω', aboveZero, 'resistance of one rod alone'],
  /** Resistance of the first electrode alone R_E1, Ω, above 0. */
  firstElectrodeResistance: ['R_E1', 'Ω', aboveZero, 'resistance of the first electrode alone'],
  /** Resistance of the second electrode alone R_E2, Ω, above 0. */
  secondElectrodeResistance: ['R_E2', 'Ω', aboveZero, 'resistance of the second electrode alone'],
  /** Mutual resistance of two electrodes R_m, Ω, 0 and up. */
  mutualResistance: ['R_m', 'Ω', fromZero, 'mutual resistance of two electrodes'],
  /** Distance to the nearest metal that is earthed to another system d_sep, m, 0 and up. */
  earthSeparation: ['d_sep', 'm', fromZero, 'distance to the nearest metal that is earthed to another system'],
  /** Distance required from metal that is earthed to another system d_req, m, 0 and up. */
  requiredSeparation: ['d_req', 'm', fromZero, 'distance required from metal that is earthed to another system'],
  /** Largest rated residual operating current permitted I_Δn,max, A, above 0. */
  residualLimit: ['I_Δn,max', 'A', aboveZero, 'largest rated residual operating current permitted'],
  /** Rated residual operating current of a device that may give additional protection I_Δn,p, A, above 0. */
  protectingCurrent: [
    'I_Δn,p',
    'A',
    aboveZero,
    'rated residual operating current of a device that may give additional protection',
  ],
  /** Rated residual operating current of the device ahead I_Δn,a, A, above 0. */
  aheadResidualCurrent: ['I_Δn,a', 'A', aboveZero, 'rated residual operating current of the device ahead'],
  /** Rated current of the residual current device I_n,RCD, A, above 0. */
  residualRatedCurrent: ['I_n,RCD', 'A', aboveZero, 'rated current of the residual current device'],
  /** Rated currents of the overcurrent devices that it serves, together ΣI_n,s, A, 0 and up. */
  servedRating: ['ΣI_n,s', 'A', fromZero, 'rated currents of the overcurrent devices that it serves, together'],
  /** Largest current that can flow through the residual current device I_RCD, A, 0 and up. */
  residualLoad: ['I_RCD', 'A', fromZero, 'largest current that can flow through the residual current device'],
  /** Smooth direct residual current that may stand I_dc, A, 0 and up. */
  smoothResidualCurrent: ['I_dc', 'A', fromZero, 'smooth direct residual current that may stand'],
  /** Sum of the smooth direct residual currents that may stand ΣI_dc, A, 0 and up. */
  smoothResidualSum: ['ΣI_dc', 'A', fromZero, 'sum of the smooth direct residual currents that may stand'],
  /** Smooth direct residual current that the device works with I_dc,w, A, 0 and up. */
  smoothResidualWithstand: ['I_dc,w', 'A', fromZero, 'smooth direct residual current that the device works with'],
  /** Standing protective-conductor current of one item I_pc, A, 0 and up. */
  standingCurrent: ['I_pc', 'A', fromZero, 'standing protective-conductor current of one item'],
  /** Sum of the standing protective-conductor currents ΣI_pc, A, 0 and up. */
  standingCurrentSum: ['ΣI_pc', 'A', fromZero, 'sum of the standing protective-conductor currents'],
  /** Largest standing protective-conductor current through the device I_pc,max, A, above 0. */
  standingCurrentLimit: [
    'I_pc,max',
    'A',
    aboveZero,
    'largest standing protective-conductor current through the device',
  ],
  /** Residual current below which the device must not operate, over its rated one k_lo, 1, 0 and up. */
  residualLowerBand: [
    'k_lo',
    '1',
    fromZero,
    'residual current below which the device must not operate, over its rated one',
  ],
  /** Residual current at which the device must operate, over its rated one k_hi, 1, above 0. */
  residualUpperBand: ['k_hi', '1', aboveZero, 'residual current at which the device must operate, over its rated one'],
  /** Limit of the band of operating current, over the rated residual current k_Δ, 1, 0 and up. */
  bandLimit: ['k_Δ', '1', fromZero, 'limit of the band of operating current, over the rated residual current'],
  /** Rated current of the assembly I_nA, A, above 0. */
  boardRating: ['I_nA', 'A', aboveZero, 'rated current of the assembly'],
  /** Ratings of everything that can feed the assembly, together ΣI_in, A, 0 and up. */
  boardInfeed: ['ΣI_in', 'A', fromZero, 'ratings of everything that can feed the assembly, together'],
} satisfies Roles;

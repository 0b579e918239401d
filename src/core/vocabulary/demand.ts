import { aboveZero, anyNumber, fromZero, part, type Roles, share } from './term.js';

/** Roles of demand, supply adequacy and notification. */
export const demandTerms = {
  /** Connected load of a group I_con, A, 0 and up. */
  connectedCurrent: ['I_con', 'A', fromZero, 'connected load of a group'],
  /** Maximum demand I_d, A, 0 and up. */
  demand: ['I_d', 'A', fromZero, 'maximum demand'],
  /** Maximum demand as apparent power S_d, VA, 0 and up. */
  demandPower: ['S_d', 'VA', fromZero, 'maximum demand as apparent power'],
  /** Demand of the installation without the charge points I_d,0, A, 0 and up. */
  existingDemand: ['I_d,0', 'A', fromZero, 'demand of the installation without the charge points'],
  /** Current of the charge points I_ev, A, 0 and up. */
  chargeCurrent: ['I_ev', 'A', fromZero, 'current of the charge points'],
  /** Power of the charge point P_ev, W, 0 and up. */
  chargePower: ['P_ev', 'W', fromZero, 'power of the charge point'],
  /** Demand factor k_d, 1, 0 to 1. */
  demandFactor: ['k_d', '1', share, 'demand factor'],
  /** Current limit of a load control I_lim, A, above 0. */
  controlLimit: ['I_lim', 'A', aboveZero, 'current limit of a load control'],
  /** Demand of what a load control does not see I_d,r, A, 0 and up. */
  restDemand: ['I_d,r', 'A', fromZero, 'demand of what a load control does not see'],
  /** Current that a demand table takes in full I_al, A, 0 and up. */
  allowanceCurrent: ['I_al', 'A', fromZero, 'current that a demand table takes in full'],
  /** Part of the current of a group that is taken in full I_1, A, 0 and up. */
  firstCurrent: ['I_1', 'A', fromZero, 'part of the current of a group that is taken in full'],
  /** Addition for socket-outlets in cooker units I_so, A, 0 and up. */
  socketAllowance: ['I_so', 'A', fromZero, 'addition for socket-outlets in cooker units'],
  /** Current of the largest circuit I_max, A, 0 and up. */
  largestCurrent: ['I_max', 'A', fromZero, 'current of the largest circuit'],
  /** Sum of the currents of all circuits ΣI, A, 0 and up. */
  allCurrents: ['ΣI', 'A', fromZero, 'sum of the currents of all circuits'],
  /** Current that is left up to a rating; negative where it is exceeded I_h, A, any. */
  headroom: ['I_h', 'A', anyNumber, 'current that is left up to a rating; negative where it is exceeded'],
  /** Largest setting of a charge point that fits I_set, A, 0 and up. */
  largestSetting: ['I_set', 'A', fromZero, 'largest setting of a charge point that fits'],
  /** Rated current of the main switch I_ms, A, above 0. */
  mainSwitchRating: ['I_ms', 'A', aboveZero, 'rated current of the main switch'],
  /** Current that the meter tails carry I_ta, A, above 0. */
  tailsCapacity: ['I_ta', 'A', aboveZero, 'current that the meter tails carry'],
  /** Demand up to which notice after connection is enough I_not, A, above 0. */
  notifyThreshold: ['I_not', 'A', aboveZero, 'demand up to which notice after connection is enough'],
  /** Apparent power up to which notice after connection is enough S_not, VA, above 0. */
  notifyThresholdPower: ['S_not', 'VA', aboveZero, 'apparent power up to which notice after connection is enough'],
  /** Largest energy metered in one interval E_m, Wh, 0 and up. */
  meteredEnergy: ['E_m', 'Wh', fromZero, 'largest energy metered in one interval'],
  /** Length of a metering interval t_m, s, above 0. */
  meteringInterval: ['t_m', 's', aboveZero, 'length of a metering interval'],
  /** Largest power metered, mean over an interval P_m, W, 0 and up. */
  meteredPower: ['P_m', 'W', fromZero, 'largest power metered, mean over an interval'],
  /** Largest current metered, per line I_m, A, 0 and up. */
  meteredCurrent: ['I_m', 'A', fromZero, 'largest current metered, per line'],
  /** Smallest running current of a charge point I_least, A, above 0. */
  leastSetting: ['I_least', 'A', aboveZero, 'smallest running current of a charge point'],
  /** Margin added to a metered demand m, 1, 0 to 2. */
  demandMargin: ['m', '1', { least: 0, most: 2 }, 'margin added to a metered demand'],
  /** Utilisation factor of a load k_u, 1, 0 to 1. */
  utilisationFactor: ['k_u', '1', share, 'utilisation factor of a load'],
  /** Simultaneity factor of a board or a riser k_s, 1, 0 to 1. */
  simultaneityFactor: ['k_s', '1', share, 'simultaneity factor of a board or a riser'],
  /** Number of dwellings N, 1, 1 and up. */
  dwellings: ['N', '1', { least: 1 }, 'number of dwellings'],
  /** Share of the demand of a group that the most loaded line takes a_L, 1, 0 to 1. */
  groupLineShare: ['a_L', '1', share, 'share of the demand of a group that the most loaded line takes'],
  /** Demand of a group of consumers as apparent power S_N, VA, 0 and up. */
  groupPower: ['S_N', 'VA', fromZero, 'demand of a group of consumers as apparent power'],
  /** Demand of one dwelling as apparent power S_1, VA, 0 and up. */
  dwellingPower: ['S_1', 'VA', fromZero, 'demand of one dwelling as apparent power'],
  /** Demand of a group of consumers P_N, W, 0 and up. */
  groupActivePower: ['P_N', 'W', fromZero, 'demand of a group of consumers'],
  /** Largest demand of one consumer of a group P_max, W, 0 and up. */
  largestPower: ['P_max', 'W', fromZero, 'largest demand of one consumer of a group'],
  /** Demand of one of very many dwellings after diversity ADMD, W, above 0. */
  afterDiversityDemand: ['ADMD', 'W', aboveZero, 'demand of one of very many dwellings after diversity'],
  /** Constant term of a group formula P_c, W, 0 and up. */
  groupConstant: ['P_c', 'W', fromZero, 'constant term of a group formula'],
  /** Allowance for unbalance between lines a_u, 1, 1 to 3. */
  unbalanceAllowance: ['a_u', '1', { least: 1, most: 3 }, 'allowance for unbalance between lines'],
  /** Coincidence of very many consumers g_∞, 1, 0 to 1. */
  coincidenceLimit: ['g_∞', '1', share, 'coincidence of very many consumers'],
  /** Energy used in a year W_a, Wh, 0 and up. */
  annualEnergy: ['W_a', 'Wh', fromZero, 'energy used in a year'],
  /** Coefficient of the annual energy in kWh, giving kW k_1, 1, 0 and up. */
  linearCoefficient: ['k_1', '1', fromZero, 'coefficient of the annual energy in kWh, giving kW'],
  /** Coefficient of the root of the annual energy in kWh, giving kW k_2, 1, 0 and up. */
  rootCoefficient: ['k_2', '1', fromZero, 'coefficient of the root of the annual energy in kWh, giving kW'],
  /** Number of charge points n_p, 1, 0 and up. */
  pointCount: ['n_p', '1', fromZero, 'number of charge points'],
  /** Number of charge points that charge together k, 1, 0 and up. */
  coincidentPoints: ['k', '1', fromZero, 'number of charge points that charge together'],
  /** Probability that a charge point charges at the busiest instant p, 1, 0 to 1. */
  chargeProbability: ['p', '1', share, 'probability that a charge point charges at the busiest instant'],
  /** Share of charge points that are used on the busiest evening p_0, 1, 0 to 1. */
  participation: ['p_0', '1', share, 'share of charge points that are used on the busiest evening'],
  /** Duration of a charging session t_s, s, 0 and up. */
  sessionDuration: ['t_s', 's', fromZero, 'duration of a charging session'],
  /** Window in which vehicles arrive t_w, s, above 0. */
  arrivalWindow: ['t_w', 's', aboveZero, 'window in which vehicles arrive'],
  /** Percentile that a demand is stated for q, 1, above 0 to 1. */
  percentile: ['q', '1', part, 'percentile that a demand is stated for'],
  /** Power of the charge points that charge together P_k, W, 0 and up. */
  coincidentPower: ['P_k', 'W', fromZero, 'power of the charge points that charge together'],
  /** Current of all generation and storage, per line I_src, A, 0 and up. */
  sourceCurrent: ['I_src', 'A', fromZero, 'current of all generation and storage, per line'],
  /** Current of generation up to which notice after connection is enough I_src,lim, A, above 0. */
  sourceCurrentLimit: [
    'I_src,lim',
    'A',
    aboveZero,
    'current of generation up to which notice after connection is enough',
  ],
  /** Power of all generation and storage S_src, VA, 0 and up. */
  sourcePower: ['S_src', 'VA', fromZero, 'power of all generation and storage'],
  /** Power of generation and storage up to which one form serves S_src,lim, VA, above 0. */
  sourcePowerLimit: ['S_src,lim', 'VA', aboveZero, 'power of generation and storage up to which one form serves'],
  /** Rated power of charging equipment S_r, VA, 0 and up. */
  equipmentPower: ['S_r', 'VA', fromZero, 'rated power of charging equipment'],
  /** Rated power of charging equipment up to which a duty does not arise S_r,lim, VA, above 0. */
  equipmentPowerLimit: [
    'S_r,lim',
    'VA',
    aboveZero,
    'rated power of charging equipment up to which a duty does not arise',
  ],
  /** Difference between the currents of two lines ΔI, A, 0 and up. */
  unbalance: ['ΔI', 'A', fromZero, 'difference between the currents of two lines'],
  /** Largest permitted difference between the currents of two lines ΔI_lim, A, above 0. */
  unbalanceLimit: ['ΔI_lim', 'A', aboveZero, 'largest permitted difference between the currents of two lines'],
  /** Height above the ground h, mm, 0 and up. */
  mountingHeight: ['h', 'mm', fromZero, 'height above the ground'],
  /** Smallest permitted height above the ground h_min, mm, 0 and up. */
  leastHeight: ['h_min', 'mm', fromZero, 'smallest permitted height above the ground'],
  /** Greatest permitted height above the ground h_max, mm, 0 and up. */
  greatestHeight: ['h_max', 'mm', fromZero, 'greatest permitted height above the ground'],
  /** Distance from a gas meter d_g, mm, 0 and up. */
  gasMeterDistance: ['d_g', 'mm', fromZero, 'distance from a gas meter'],
  /** Smallest permitted distance from a gas meter d_g,min, mm, 0 and up. */
  gasMeterClearance: ['d_g,min', 'mm', fromZero, 'smallest permitted distance from a gas meter'],
} satisfies Roles;

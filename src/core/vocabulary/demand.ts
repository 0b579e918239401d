import type { Roles } from './term.js';

/** Roles of demand, supply adequacy and notification. */
export const demandTerms = {
  /** Connected load of a group I_con, A, 0 and up. */
  connectedCurrent: { symbol: 'I_con', unit: 'A', least: 0, words: 'connected load of a group' },
  /** Maximum demand I_d, A, 0 and up. */
  demand: { symbol: 'I_d', unit: 'A', least: 0, words: 'maximum demand' },
  /** Maximum demand as apparent power S_d, VA, 0 and up. */
  demandPower: { symbol: 'S_d', unit: 'VA', least: 0, words: 'maximum demand as apparent power' },
  /** Demand of the installation without the charge points I_d,0, A, 0 and up. */
  existingDemand: {
    symbol: 'I_d,0',
    unit: 'A',
    least: 0,
    words: 'demand of the installation without the charge points',
  },
  /** Current of the charge points I_ev, A, 0 and up. */
  chargeCurrent: { symbol: 'I_ev', unit: 'A', least: 0, words: 'current of the charge points' },
  /** Power of the charge point P_ev, W, 0 and up. */
  chargePower: { symbol: 'P_ev', unit: 'W', least: 0, words: 'power of the charge point' },
  /** Demand factor k_d, 1, 0 to 1. */
  demandFactor: { symbol: 'k_d', unit: '1', least: 0, most: 1, words: 'demand factor' },
  /** Current limit of a load control I_lim, A, above 0. */
  controlLimit: { symbol: 'I_lim', unit: 'A', above: 0, words: 'current limit of a load control' },
  /** Demand of what a load control does not see I_d,r, A, 0 and up. */
  restDemand: { symbol: 'I_d,r', unit: 'A', least: 0, words: 'demand of what a load control does not see' },
  /** Current that a demand table takes in full I_al, A, 0 and up. */
  allowanceCurrent: { symbol: 'I_al', unit: 'A', least: 0, words: 'current that a demand table takes in full' },
  /** Part of the current of a group that is taken in full I_1, A, 0 and up. */
  firstCurrent: { symbol: 'I_1', unit: 'A', least: 0, words: 'part of the current of a group that is taken in full' },
  /** Addition for socket-outlets in cooker units I_so, A, 0 and up. */
  socketAllowance: { symbol: 'I_so', unit: 'A', least: 0, words: 'addition for socket-outlets in cooker units' },
  /** Current of the largest circuit I_max, A, 0 and up. */
  largestCurrent: { symbol: 'I_max', unit: 'A', least: 0, words: 'current of the largest circuit' },
  /** Sum of the currents of all circuits ΣI, A, 0 and up. */
  allCurrents: { symbol: 'ΣI', unit: 'A', least: 0, words: 'sum of the currents of all circuits' },
  /** Current that is left up to a rating; negative where it is exceeded I_h, A, any. */
  headroom: { symbol: 'I_h', unit: 'A', words: 'current that is left up to a rating; negative where it is exceeded' },
  /** Largest setting of a charge point that fits I_set, A, 0 and up. */
  largestSetting: { symbol: 'I_set', unit: 'A', least: 0, words: 'largest setting of a charge point that fits' },
  /** Rated current of the main switch I_ms, A, above 0. */
  mainSwitchRating: { symbol: 'I_ms', unit: 'A', above: 0, words: 'rated current of the main switch' },
  /** Current that the meter tails carry I_ta, A, above 0. */
  tailsCapacity: { symbol: 'I_ta', unit: 'A', above: 0, words: 'current that the meter tails carry' },
  /** Demand up to which notice after connection is enough I_not, A, above 0. */
  notifyThreshold: {
    symbol: 'I_not',
    unit: 'A',
    above: 0,
    words: 'demand up to which notice after connection is enough',
  },
  /** Apparent power up to which notice after connection is enough S_not, VA, above 0. */
  notifyThresholdPower: {
    symbol: 'S_not',
    unit: 'VA',
    above: 0,
    words: 'apparent power up to which notice after connection is enough',
  },
  /** Largest energy metered in one interval E_m, Wh, 0 and up. */
  meteredEnergy: { symbol: 'E_m', unit: 'Wh', least: 0, words: 'largest energy metered in one interval' },
  /** Length of a metering interval t_m, s, above 0. */
  meteringInterval: { symbol: 't_m', unit: 's', above: 0, words: 'length of a metering interval' },
  /** Largest power metered, mean over an interval P_m, W, 0 and up. */
  meteredPower: { symbol: 'P_m', unit: 'W', least: 0, words: 'largest power metered, mean over an interval' },
  /** Largest current metered, per line I_m, A, 0 and up. */
  meteredCurrent: { symbol: 'I_m', unit: 'A', least: 0, words: 'largest current metered, per line' },
  /** Smallest running current of a charge point I_least, A, above 0. */
  leastSetting: { symbol: 'I_least', unit: 'A', above: 0, words: 'smallest running current of a charge point' },
  /** Margin added to a metered demand m, 1, 0 to 2. */
  demandMargin: { symbol: 'm', unit: '1', least: 0, most: 2, words: 'margin added to a metered demand' },
  /** Utilisation factor of a load k_u, 1, 0 to 1. */
  utilisationFactor: { symbol: 'k_u', unit: '1', least: 0, most: 1, words: 'utilisation factor of a load' },
  /** Simultaneity factor of a board or a riser k_s, 1, 0 to 1. */
  simultaneityFactor: {
    symbol: 'k_s',
    unit: '1',
    least: 0,
    most: 1,
    words: 'simultaneity factor of a board or a riser',
  },
  /** Number of dwellings N, 1, 1 and up. */
  dwellings: { symbol: 'N', unit: '1', least: 1, words: 'number of dwellings' },
  /** Share of the demand of a group that the most loaded line takes a_L, 1, 0 to 1. */
  groupLineShare: {
    symbol: 'a_L',
    unit: '1',
    least: 0,
    most: 1,
    words: 'share of the demand of a group that the most loaded line takes',
  },
  /** Demand of a group of consumers as apparent power S_N, VA, 0 and up. */
  groupPower: { symbol: 'S_N', unit: 'VA', least: 0, words: 'demand of a group of consumers as apparent power' },
  /** Demand of one dwelling as apparent power S_1, VA, 0 and up. */
  dwellingPower: { symbol: 'S_1', unit: 'VA', least: 0, words: 'demand of one dwelling as apparent power' },
  /** Demand of a group of consumers P_N, W, 0 and up. */
  groupActivePower: { symbol: 'P_N', unit: 'W', least: 0, words: 'demand of a group of consumers' },
  /** Largest demand of one consumer of a group P_max, W, 0 and up. */
  largestPower: { symbol: 'P_max', unit: 'W', least: 0, words: 'largest demand of one consumer of a group' },
  /** Demand of one of very many dwellings after diversity ADMD, W, above 0. */
  afterDiversityDemand: {
    symbol: 'ADMD',
    unit: 'W',
    above: 0,
    words: 'demand of one of very many dwellings after diversity',
  },
  /** Constant term of a group formula P_c, W, 0 and up. */
  groupConstant: { symbol: 'P_c', unit: 'W', least: 0, words: 'constant term of a group formula' },
  /** Allowance for unbalance between lines a_u, 1, 1 to 3. */
  unbalanceAllowance: { symbol: 'a_u', unit: '1', least: 1, most: 3, words: 'allowance for unbalance between lines' },
  /** Coincidence of very many consumers g_∞, 1, 0 to 1. */
  coincidenceLimit: { symbol: 'g_∞', unit: '1', least: 0, most: 1, words: 'coincidence of very many consumers' },
  /** Energy used in a year W_a, Wh, 0 and up. */
  annualEnergy: { symbol: 'W_a', unit: 'Wh', least: 0, words: 'energy used in a year' },
  /** Coefficient of the annual energy in kWh, giving kW k_1, 1, 0 and up. */
  linearCoefficient: {
    symbol: 'k_1',
    unit: '1',
    least: 0,
    words: 'coefficient of the annual energy in kWh, giving kW',
  },
  /** Coefficient of the root of the annual energy in kWh, giving kW k_2, 1, 0 and up. */
  rootCoefficient: {
    symbol: 'k_2',
    unit: '1',
    least: 0,
    words: 'coefficient of the root of the annual energy in kWh, giving kW',
  },
  /** Number of charge points n_p, 1, 0 and up. */
  pointCount: { symbol: 'n_p', unit: '1', least: 0, words: 'number of charge points' },
  /** Number of charge points that charge together k, 1, 0 and up. */
  coincidentPoints: { symbol: 'k', unit: '1', least: 0, words: 'number of charge points that charge together' },
  /** Probability that a charge point charges at the busiest instant p, 1, 0 to 1. */
  chargeProbability: {
    symbol: 'p',
    unit: '1',
    least: 0,
    most: 1,
    words: 'probability that a charge point charges at the busiest instant',
  },
  /** Share of charge points that are used on the busiest evening p_0, 1, 0 to 1. */
  participation: {
    symbol: 'p_0',
    unit: '1',
    least: 0,
    most: 1,
    words: 'share of charge points that are used on the busiest evening',
  },
  /** Duration of a charging session t_s, s, 0 and up. */
  sessionDuration: { symbol: 't_s', unit: 's', least: 0, words: 'duration of a charging session' },
  /** Window in which vehicles arrive t_w, s, above 0. */
  arrivalWindow: { symbol: 't_w', unit: 's', above: 0, words: 'window in which vehicles arrive' },
  /** Percentile that a demand is stated for q, 1, above 0 to 1. */
  percentile: { symbol: 'q', unit: '1', above: 0, most: 1, words: 'percentile that a demand is stated for' },
  /** Power of the charge points that charge together P_k, W, 0 and up. */
  coincidentPower: { symbol: 'P_k', unit: 'W', least: 0, words: 'power of the charge points that charge together' },
  /** Current of all generation and storage, per line I_src, A, 0 and up. */
  sourceCurrent: { symbol: 'I_src', unit: 'A', least: 0, words: 'current of all generation and storage, per line' },
  /** Current of generation up to which notice after connection is enough I_src,lim, A, above 0. */
  sourceCurrentLimit: {
    symbol: 'I_src,lim',
    unit: 'A',
    above: 0,
    words: 'current of generation up to which notice after connection is enough',
  },
  /** Power of all generation and storage S_src, VA, 0 and up. */
  sourcePower: { symbol: 'S_src', unit: 'VA', least: 0, words: 'power of all generation and storage' },
  /** Power of generation and storage up to which one form serves S_src,lim, VA, above 0. */
  sourcePowerLimit: {
    symbol: 'S_src,lim',
    unit: 'VA',
    above: 0,
    words: 'power of generation and storage up to which one form serves',
  },
  /** Rated power of charging equipment S_r, VA, 0 and up. */
  equipmentPower: { symbol: 'S_r', unit: 'VA', least: 0, words: 'rated power of charging equipment' },
  /** Rated power of charging equipment up to which a duty does not arise S_r,lim, VA, above 0. */
  equipmentPowerLimit: {
    symbol: 'S_r,lim',
    unit: 'VA',
    above: 0,
    words: 'rated power of charging equipment up to which a duty does not arise',
  },
  /** Difference between the currents of two lines ΔI, A, 0 and up. */
  unbalance: { symbol: 'ΔI', unit: 'A', least: 0, words: 'difference between the currents of two lines' },
  /** Largest permitted difference between the currents of two lines ΔI_lim, A, above 0. */
  unbalanceLimit: {
    symbol: 'ΔI_lim',
    unit: 'A',
    above: 0,
    words: 'largest permitted difference between the currents of two lines',
  },
  /** Height above the ground h, mm, 0 and up. */
  mountingHeight: { symbol: 'h', unit: 'mm', least: 0, words: 'height above the ground' },
  /** Smallest permitted height above the ground h_min, mm, 0 and up. */
  leastHeight: { symbol: 'h_min', unit: 'mm', least: 0, words: 'smallest permitted height above the ground' },
  /** Greatest permitted height above the ground h_max, mm, 0 and up. */
  greatestHeight: { symbol: 'h_max', unit: 'mm', least: 0, words: 'greatest permitted height above the ground' },
  /** Distance from a gas meter d_g, mm, 0 and up. */
  gasMeterDistance: { symbol: 'd_g', unit: 'mm', least: 0, words: 'distance from a gas meter' },
  /** Smallest permitted distance from a gas meter d_g,min, mm, 0 and up. */
  gasMeterClearance: { symbol: 'd_g,min', unit: 'mm', least: 0, words: 'smallest permitted distance from a gas meter' },
} satisfies Roles;

import type { Amperes, Millimetres, Ratio, Seconds, VoltAmperes, WattHours, Watts } from '../../units/index.js';
import type { Terms } from './term.js';

/** Roles of demand, supply adequacy and notification. */
export interface DemandTerms {
  /** Connected load of a group I_con, A, 0 and up. */
  connectedCurrent: Amperes;
  /** Maximum demand I_d, A, 0 and up. */
  demand: Amperes;
  /** Maximum demand as apparent power S_d, VA, 0 and up. */
  demandPower: VoltAmperes;
  /** Demand of the installation without the charge points I_d,0, A, 0 and up. */
  existingDemand: Amperes;
  /** Current of the charge points I_ev, A, 0 and up. */
  chargeCurrent: Amperes;
  /** Power of the charge point P_ev, W, 0 and up. */
  chargePower: Watts;
  /** Demand factor k_d, 1, 0 to 1. */
  demandFactor: Ratio;
  /** Current limit of a load control I_lim, A, above 0. */
  controlLimit: Amperes;
  /** Demand of what a load control does not see I_d,r, A, 0 and up. */
  restDemand: Amperes;
  /** Current that a demand table takes in full I_al, A, 0 and up. */
  allowanceCurrent: Amperes;
  /** Part of the current of a group that is taken in full I_1, A, 0 and up. */
  firstCurrent: Amperes;
  /** Addition for socket-outlets in cooker units I_so, A, 0 and up. */
  socketAllowance: Amperes;
  /** Current of the largest circuit I_max, A, 0 and up. */
  largestCurrent: Amperes;
  /** Sum of the currents of all circuits ΣI, A, 0 and up. */
  allCurrents: Amperes;
  /** Current that is left up to a rating; negative where it is exceeded I_h, A, any. */
  headroom: Amperes;
  /** Largest setting of a charge point that fits I_set, A, 0 and up. */
  largestSetting: Amperes;
  /** Rated current of the main switch I_ms, A, above 0. */
  mainSwitchRating: Amperes;
  /** Current that the meter tails carry I_ta, A, above 0. */
  tailsCapacity: Amperes;
  /** Demand up to which notice after connection is enough I_not, A, above 0. */
  notifyThreshold: Amperes;
  /** Apparent power up to which notice after connection is enough S_not, VA, above 0. */
  notifyThresholdPower: VoltAmperes;
  /** Largest energy metered in one interval E_m, Wh, 0 and up. */
  meteredEnergy: WattHours;
  /** Length of a metering interval t_m, s, above 0. */
  meteringInterval: Seconds;
  /** Largest power metered, mean over an interval P_m, W, 0 and up. */
  meteredPower: Watts;
  /** Largest current metered, per line I_m, A, 0 and up. */
  meteredCurrent: Amperes;
  /** Smallest running current of a charge point I_least, A, above 0. */
  leastSetting: Amperes;
  /** Margin added to a metered demand m, 1, 0 to 2. */
  demandMargin: Ratio;
  /** Utilisation factor of a load k_u, 1, 0 to 1. */
  utilisationFactor: Ratio;
  /** Simultaneity factor of a board or a riser k_s, 1, 0 to 1. */
  simultaneityFactor: Ratio;
  /** Number of dwellings N, 1, 1 and up. */
  dwellings: Ratio;
  /** Demand of a group of consumers as apparent power S_N, VA, 0 and up. */
  groupPower: VoltAmperes;
  /** Demand of one dwelling as apparent power S_1, VA, 0 and up. */
  dwellingPower: VoltAmperes;
  /** Demand of a group of consumers P_N, W, 0 and up. */
  groupActivePower: Watts;
  /** Largest demand of one consumer of a group P_max, W, 0 and up. */
  largestPower: Watts;
  /** Demand of one of very many dwellings after diversity ADMD, W, above 0. */
  afterDiversityDemand: Watts;
  /** Constant term of a group formula P_c, W, 0 and up. */
  groupConstant: Watts;
  /** Allowance for unbalance between lines a_u, 1, 1 to 3. */
  unbalanceAllowance: Ratio;
  /** Coincidence of very many consumers g_∞, 1, 0 to 1. */
  coincidenceLimit: Ratio;
  /** Energy used in a year W_a, Wh, 0 and up. */
  annualEnergy: WattHours;
  /** Coefficient of the annual energy in kWh, giving kW k_1, 1, 0 and up. */
  linearCoefficient: Ratio;
  /** Coefficient of the root of the annual energy in kWh, giving kW k_2, 1, 0 and up. */
  rootCoefficient: Ratio;
  /** Number of charge points n_p, 1, 0 and up. */
  pointCount: Ratio;
  /** Number of charge points that charge together k, 1, 0 and up. */
  coincidentPoints: Ratio;
  /** Probability that a charge point charges at the busiest instant p, 1, 0 to 1. */
  chargeProbability: Ratio;
  /** Share of charge points that are used on the busiest evening p_0, 1, 0 to 1. */
  participation: Ratio;
  /** Duration of a charging session t_s, s, 0 and up. */
  sessionDuration: Seconds;
  /** Window in which vehicles arrive t_w, s, above 0. */
  arrivalWindow: Seconds;
  /** Percentile that a demand is stated for q, 1, above 0 to 1. */
  percentile: Ratio;
  /** Power of the charge points that charge together P_k, W, 0 and up. */
  coincidentPower: Watts;
  /** Current of all generation and storage, per line I_src, A, 0 and up. */
  sourceCurrent: Amperes;
  /** Current of generation up to which notice after connection is enough I_src,lim, A, above 0. */
  sourceCurrentLimit: Amperes;
  /** Power of all generation and storage S_src, VA, 0 and up. */
  sourcePower: VoltAmperes;
  /** Power of generation and storage up to which one form serves S_src,lim, VA, above 0. */
  sourcePowerLimit: VoltAmperes;
  /** Rated power of charging equipment S_r, VA, 0 and up. */
  equipmentPower: VoltAmperes;
  /** Rated power of charging equipment up to which a duty does not arise S_r,lim, VA, above 0. */
  equipmentPowerLimit: VoltAmperes;
  /** Difference between the currents of two lines ΔI, A, 0 and up. */
  unbalance: Amperes;
  /** Largest permitted difference between the currents of two lines ΔI_lim, A, above 0. */
  unbalanceLimit: Amperes;
  /** Height above the ground h, mm, 0 and up. */
  mountingHeight: Millimetres;
  /** Smallest permitted height above the ground h_min, mm, 0 and up. */
  leastHeight: Millimetres;
  /** Greatest permitted height above the ground h_max, mm, 0 and up. */
  greatestHeight: Millimetres;
  /** Distance from a gas meter d_g, mm, 0 and up. */
  gasMeterDistance: Millimetres;
  /** Smallest permitted distance from a gas meter d_g,min, mm, 0 and up. */
  gasMeterClearance: Millimetres;
}

/** Symbols, units and ranges of the roles of demand. */
export const demandTerms: Terms<DemandTerms> = {
  connectedCurrent: { symbol: 'I_con', unit: 'A', least: 0, words: 'connected load of a group' },
  demand: { symbol: 'I_d', unit: 'A', least: 0, words: 'maximum demand' },
  demandPower: { symbol: 'S_d', unit: 'VA', least: 0, words: 'maximum demand as apparent power' },
  existingDemand: {
    symbol: 'I_d,0',
    unit: 'A',
    least: 0,
    words: 'demand of the installation without the charge points',
  },
  chargeCurrent: { symbol: 'I_ev', unit: 'A', least: 0, words: 'current of the charge points' },
  chargePower: { symbol: 'P_ev', unit: 'W', least: 0, words: 'power of the charge point' },
  demandFactor: { symbol: 'k_d', unit: '1', least: 0, most: 1, words: 'demand factor' },
  controlLimit: { symbol: 'I_lim', unit: 'A', above: 0, words: 'current limit of a load control' },
  restDemand: { symbol: 'I_d,r', unit: 'A', least: 0, words: 'demand of what a load control does not see' },
  allowanceCurrent: { symbol: 'I_al', unit: 'A', least: 0, words: 'current that a demand table takes in full' },
  firstCurrent: { symbol: 'I_1', unit: 'A', least: 0, words: 'part of the current of a group that is taken in full' },
  socketAllowance: { symbol: 'I_so', unit: 'A', least: 0, words: 'addition for socket-outlets in cooker units' },
  largestCurrent: { symbol: 'I_max', unit: 'A', least: 0, words: 'current of the largest circuit' },
  allCurrents: { symbol: 'ΣI', unit: 'A', least: 0, words: 'sum of the currents of all circuits' },
  headroom: { symbol: 'I_h', unit: 'A', words: 'current that is left up to a rating; negative where it is exceeded' },
  largestSetting: { symbol: 'I_set', unit: 'A', least: 0, words: 'largest setting of a charge point that fits' },
  mainSwitchRating: { symbol: 'I_ms', unit: 'A', above: 0, words: 'rated current of the main switch' },
  tailsCapacity: { symbol: 'I_ta', unit: 'A', above: 0, words: 'current that the meter tails carry' },
  notifyThreshold: {
    symbol: 'I_not',
    unit: 'A',
    above: 0,
    words: 'demand up to which notice after connection is enough',
  },
  notifyThresholdPower: {
    symbol: 'S_not',
    unit: 'VA',
    above: 0,
    words: 'apparent power up to which notice after connection is enough',
  },
  meteredEnergy: { symbol: 'E_m', unit: 'Wh', least: 0, words: 'largest energy metered in one interval' },
  meteringInterval: { symbol: 't_m', unit: 's', above: 0, words: 'length of a metering interval' },
  meteredPower: { symbol: 'P_m', unit: 'W', least: 0, words: 'largest power metered, mean over an interval' },
  meteredCurrent: { symbol: 'I_m', unit: 'A', least: 0, words: 'largest current metered, per line' },
  leastSetting: { symbol: 'I_least', unit: 'A', above: 0, words: 'smallest running current of a charge point' },
  demandMargin: { symbol: 'm', unit: '1', least: 0, most: 2, words: 'margin added to a metered demand' },
  utilisationFactor: { symbol: 'k_u', unit: '1', least: 0, most: 1, words: 'utilisation factor of a load' },
  simultaneityFactor: {
    symbol: 'k_s',
    unit: '1',
    least: 0,
    most: 1,
    words: 'simultaneity factor of a board or a riser',
  },
  dwellings: { symbol: 'N', unit: '1', least: 1, words: 'number of dwellings' },
  groupPower: { symbol: 'S_N', unit: 'VA', least: 0, words: 'demand of a group of consumers as apparent power' },
  dwellingPower: { symbol: 'S_1', unit: 'VA', least: 0, words: 'demand of one dwelling as apparent power' },
  groupActivePower: { symbol: 'P_N', unit: 'W', least: 0, words: 'demand of a group of consumers' },
  largestPower: { symbol: 'P_max', unit: 'W', least: 0, words: 'largest demand of one consumer of a group' },
  afterDiversityDemand: {
    symbol: 'ADMD',
    unit: 'W',
    above: 0,
    words: 'demand of one of very many dwellings after diversity',
  },
  groupConstant: { symbol: 'P_c', unit: 'W', least: 0, words: 'constant term of a group formula' },
  unbalanceAllowance: { symbol: 'a_u', unit: '1', least: 1, most: 3, words: 'allowance for unbalance between lines' },
  coincidenceLimit: { symbol: 'g_∞', unit: '1', least: 0, most: 1, words: 'coincidence of very many consumers' },
  annualEnergy: { symbol: 'W_a', unit: 'Wh', least: 0, words: 'energy used in a year' },
  linearCoefficient: {
    symbol: 'k_1',
    unit: '1',
    least: 0,
    words: 'coefficient of the annual energy in kWh, giving kW',
  },
  rootCoefficient: {
    symbol: 'k_2',
    unit: '1',
    least: 0,
    words: 'coefficient of the root of the annual energy in kWh, giving kW',
  },
  pointCount: { symbol: 'n_p', unit: '1', least: 0, words: 'number of charge points' },
  coincidentPoints: { symbol: 'k', unit: '1', least: 0, words: 'number of charge points that charge together' },
  chargeProbability: {
    symbol: 'p',
    unit: '1',
    least: 0,
    most: 1,
    words: 'probability that a charge point charges at the busiest instant',
  },
  participation: {
    symbol: 'p_0',
    unit: '1',
    least: 0,
    most: 1,
    words: 'share of charge points that are used on the busiest evening',
  },
  sessionDuration: { symbol: 't_s', unit: 's', least: 0, words: 'duration of a charging session' },
  arrivalWindow: { symbol: 't_w', unit: 's', above: 0, words: 'window in which vehicles arrive' },
  percentile: { symbol: 'q', unit: '1', above: 0, most: 1, words: 'percentile that a demand is stated for' },
  coincidentPower: { symbol: 'P_k', unit: 'W', least: 0, words: 'power of the charge points that charge together' },
  sourceCurrent: { symbol: 'I_src', unit: 'A', least: 0, words: 'current of all generation and storage, per line' },
  sourceCurrentLimit: {
    symbol: 'I_src,lim',
    unit: 'A',
    above: 0,
    words: 'current of generation up to which notice after connection is enough',
  },
  sourcePower: { symbol: 'S_src', unit: 'VA', least: 0, words: 'power of all generation and storage' },
  sourcePowerLimit: {
    symbol: 'S_src,lim',
    unit: 'VA',
    above: 0,
    words: 'power of generation and storage up to which one form serves',
  },
  equipmentPower: { symbol: 'S_r', unit: 'VA', least: 0, words: 'rated power of charging equipment' },
  equipmentPowerLimit: {
    symbol: 'S_r,lim',
    unit: 'VA',
    above: 0,
    words: 'rated power of charging equipment up to which a duty does not arise',
  },
  unbalance: { symbol: 'ΔI', unit: 'A', least: 0, words: 'difference between the currents of two lines' },
  unbalanceLimit: {
    symbol: 'ΔI_lim',
    unit: 'A',
    above: 0,
    words: 'largest permitted difference between the currents of two lines',
  },
  mountingHeight: { symbol: 'h', unit: 'mm', least: 0, words: 'height above the ground' },
  leastHeight: { symbol: 'h_min', unit: 'mm', least: 0, words: 'smallest permitted height above the ground' },
  greatestHeight: { symbol: 'h_max', unit: 'mm', least: 0, words: 'greatest permitted height above the ground' },
  gasMeterDistance: { symbol: 'd_g', unit: 'mm', least: 0, words: 'distance from a gas meter' },
  gasMeterClearance: { symbol: 'd_g,min', unit: 'mm', least: 0, words: 'smallest permitted distance from a gas meter' },
};

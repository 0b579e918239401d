/** Tables of BS 7671 by the words of the trade, beside their numbers. */
import {
  fuseOperatingCurrents,
  table4B1,
  table4B2,
  table4B3,
  table4C1,
  table4C2,
  table4C3Multicore,
  table4C3SingleCore,
  table4D1A,
  table4D1B,
  table4D2A,
  table4D2B,
  table4D4A,
  table4D4B,
  table4D5,
  table4D5Drop,
  table4E1A,
  table4E1B,
  table4E2A,
  table4E2B,
  table4E4A,
  table4E4B,
  table4J4A,
  table4J4B,
  table52_2,
  table411,
  table412,
  table413,
  table414,
  table542,
  table543,
  table544,
} from './tables/index.js';

/** Tables of current-carrying capacity, by cable; copper where no metal is named. */
export const capacityTables = {
  twinAndEarth: table4D5,
  singleCoreThermoplastic: table4D1A,
  multicoreThermoplastic: table4D2A,
  armouredThermoplastic: table4D4A,
  singleCoreThermosetting: table4E1A,
  multicoreThermosetting: table4E2A,
  armouredThermosetting: table4E4A,
  armouredAluminium: table4J4A,
} as const;

/** Tables of voltage drop per ampere and metre, by cable; copper where no metal is named. */
export const voltageDropTables = {
  twinAndEarth: table4D5Drop,
  singleCoreThermoplastic: table4D1B,
  multicoreThermoplastic: table4D2B,
  armouredThermoplastic: table4D4B,
  singleCoreThermosetting: table4E1B,
  multicoreThermosetting: table4E2B,
  armouredThermosetting: table4E4B,
  armouredAluminium: table4J4B,
} as const;

/** Tables of rating factors, by what they are for. */
export const correctionFactorTables = {
  ambientAir: table4B1,
  groundTemperature: table4B2,
  soilResistivity: table4B3,
  grouping: table4C1,
  groupingInGround: table4C2,
  groupingOnTraysMulticore: table4C3Multicore,
  groupingOnTraysSingleCore: table4C3SingleCore,
  thermalInsulation: table52_2,
} as const;

/** Tables of maximum Zs, of disconnection times and of the currents behind them. */
export const faultProtectionTables = {
  disconnectionTimes: table411,
  maxZsOfBreakers: table413,
  maxZsOfFusesIn400ms: table412,
  maxZsOfFusesIn5s: table414,
  operatingCurrentsOfFuses: fuseOperatingCurrents,
} as const;

/** Tables of k for the adiabatic equation, by where the protective conductor is. */
export const adiabaticFactorTables = {
  separateConductor: table542,
  coreOfCable: table543,
  armourOrSheath: table544,
} as const;

/** Formulas, procedures and tables of the heat of cables. */
export * from './ac-resistance.js';
export * from './air.js';
export * from './armour.js';
export * from './duct.js';
export * from './geometry.js';
export * from './ground.js';
export * from './rating.js';
export * from './sheathed.js';
export * from './tables/air-dissipation.js';
export * from './tables/duct-gap.js';
export * from './tables/temperature-coefficients.js';
export * from './tables/thermal-resistivities.js';
export * from './tables/volume-heat-capacities.js';
export * from './thermal-resistance.js';
export { ageingByArrhenius, ageingByTenKelvin, ageingOfCableDay } from './transient/ageing.js';
export {
  cyclicCapacityOf,
  cyclicFactorOf,
  emergencyFactorOf,
  groupDiameterOf,
  lossLoadFactorByRule,
  lossLoadFactorOf,
  soilDiffusivityOf,
  soilHeatCapacityOf,
  superposedCyclicFactor,
} from './transient/cyclic.js';
export { temperatureAfterLoad } from './transient/load.js';
export * from './transient/step.js';

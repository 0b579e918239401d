/**
 * Current ratings of cables from the balance of their heat, in air, in the ground and in ducts; for steady loads and for loads that vary.
 *
 * @module ohmwright/heat
 */
export * from './ac-resistance.js';
export * from './air.js';
export * from './armour.js';
export { type HeatBalance, heatBalance } from './balance.js';
export type { HeatCable, HeatCase, HeatSurroundings } from './cable.js';
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
export type { BuriedBody, CableStore, StepInput, ThermalNeighbour } from './transient/buried-body.js';
export {
  type CyclicLoad,
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
export * from './transient/load.js';
export * from './transient/step.js';

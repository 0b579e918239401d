/**
 * Current ratings of cables from the balance of their heat, in air, in the ground and in ducts; for steady loads and for loads that vary.
 *
 * @module ohmwright/heat
 */
export { type HeatBalance, heatBalance } from './balance.js';
export type { HeatCable, HeatCase, HeatSurroundings } from './cable.js';
export * from './collections.js';
export {
  type BuriedCable,
  type BuriedCase,
  buriedCable,
  type CyclicRating,
  cyclicRating,
  overloadCurrent,
} from './transient/load.js';

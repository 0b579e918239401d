/**
 * Supplies of sites: transformers, networks of any shape, motors and their starts, welders, capacitors, harmonics and
 * unbalance.
 *
 * @module ohmwright/power
 */
export { distributionTransformer } from './ageing.js';
export { alongTaps, type TappedRun } from './busbar.js';
export { capacitorPowerOf, correctedPowerFactorOf } from './capacitors.js';
export * from './collections.js';
export { type FaultNetwork, type FaultPlace, faultContributions, impedanceAt } from './fault-network.js';
export { type LoadNetwork, type LoadSolution, solveNetwork } from './load-network.js';
export { motorCurrentOf, startCurrentOf, voltageDipOf } from './motors.js';
export { type ParallelTransformer, parallelShares } from './parallel.js';
export { type TransformerSupply, type TransformerSupplyInput, transformerSupply } from './transformer-supply.js';
export { regulationOf, transformerCurrentOf, transformerEfficiencyOf, transformerLossesOf } from './transformers.js';
export { type Phasor, type SymmetricalComponents, symmetricalComponents } from './unbalance.js';

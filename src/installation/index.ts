export * from './assumed.js';
export {
  type Assumption,
  type AssumptionSet,
  aroundOf,
  assume,
  assumeRun,
  assumptionProblems,
  refuseAssumptions,
} from './assumptions.js';
export * from './cable.js';
export * from './device.js';
export * from './labels.js';
export * from './load.js';
export * from './load-current.js';
export * from './problems.js';
export * from './ranges.js';
export * from './residual-upstream.js';
export * from './shapes.js';
export * from './supply.js';
export * from './tree.js';
export { isRecord, roleProblem, shown } from './values.js';

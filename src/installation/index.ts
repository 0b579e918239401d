export * from './assumed.js';
export {
  type Assumption,
  type AssumptionSet,
  aroundOf,
  assume,
  assumeRun,
  assumptionProblems,
  isUnknown,
  refuseAssumptions,
} from './assumptions.js';
export { byCable, cableOfSection, isJoined, wasThere } from './by-cable.js';
export * from './cable.js';
export * from './device.js';
export { aroundProblems } from './facts/around-problems.js';
export { type FactId, factIdOf } from './facts/fact-ids.js';
export * from './facts/questionnaire.js';
export { type Choice, choicesOf, type FactEntry, factRegister, placeOf, type Whom } from './facts/register.js';
export { fieldOf } from './facts/survey-shapes.js';
export * from './labels.js';
export * from './load.js';
export * from './load-current.js';
export * from './problems.js';
export * from './ranges.js';
export { factProblems, NOT_COVERED, problemAt, recordProblems, type Say } from './record-problems.js';
export * from './residual-upstream.js';
export { coresProblem, runProblems } from './run-problems.js';
export * from './shapes.js';
export * from './supply.js';
export * from './tree.js';
export { isRecord, roleProblem, valueProblem, valueProblemId } from './values.js';

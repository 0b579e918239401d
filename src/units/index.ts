export * from './algebra.js';
export * from './constructors.js';
export {
  type Bounds,
  CalculationError,
  type CorrectionPlace,
  type ErrorCode,
  type ErrorDetails,
  hasCode,
  invalidInput,
  type Problem,
  type ProblemId,
  pathText,
  problemIds,
  shown,
} from './error.js';
export * from './quantity.js';
export * from './readers.js';
export { type CanonicalUnit, type Spelling, spellings } from './spellings.js';
export * from './text.js';

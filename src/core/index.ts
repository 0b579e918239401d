export * from './arithmetic.js';
export * from './attested.js';
export * from './check.js';
export * from './check-forms.js';
export * from './conditional.js';
export { evaluate } from './evaluate.js';
export * from './fact.js';
export * from './formula.js';
export * from './provenance.js';
export { outOfRange, rangeGap, thrownGap } from './range.js';
export { type Basis, type BasisFact, basisOf, type RestsOn, restsOn } from './rests-on.js';
export * from './sheet.js';
export * from './sheet-lines.js';
export * from './source.js';
export * from './stated.js';
export * from './table.js';
export {
  factWords,
  type Name,
  type Term,
  termOf,
  type Vocabulary,
  vocabulary,
  within,
} from './vocabulary/index.js';
export * from './write.js';

export * from './check.js';
export * from './fact.js';
export * from './formula.js';
export * from './provenance.js';
export * from './sheet.js';
export * from './source.js';
export * from './table.js';
export { type Name, type Term, type Terms, termOf, type Vocabulary, vocabulary } from './vocabulary/index.js';
export * from './write.js';

/**
 * Electrical installation calculations with typed units.
 * @module ohmwright
 */

// figures compared with the print by those who hold it
export type { Attestation, Attestations } from './core/attested.js';
// checks, and formulas, tables and procedures below
export {
  type Alternatives,
  type Amount,
  alternatives,
  type Check,
  type CheckResult,
  type Comparison,
  comparison,
  judge,
  type Overall,
  overall,
  reaches,
  type Statement,
  span,
  statement,
  type Verdict,
} from './core/check.js';
export { onConditions } from './core/conditional.js';
// facts
export {
  between,
  type Fact,
  factValue,
  type Gap,
  isMissing,
  type Known,
  known,
  type Missing,
  missing,
  unknown,
} from './core/fact.js';
export {
  type Formula,
  type FormulaDefinition,
  formula,
  type Procedure,
  type ProcedureDefinition,
  procedure,
  type Relation,
  type RelationDefinition,
  relation,
} from './core/formula.js';
export { type RestsOn, restsOn } from './core/rests-on.js';
// sheets
export { evaluate, Recorder, recorder, type Sheet, silent } from './core/sheet.js';
export type { SheetDocument, SheetLine } from './core/sheet-lines.js';
export { citation, type Provenance, type Source } from './core/source.js';
export { type Table, type TableDefinition, table } from './core/table.js';
export { type Name, termOf, type Vocabulary, vocabulary } from './core/vocabulary/index.js';
export { writeSheet } from './core/write.js';
// assessment of a circuit
export * from './design/assess.js';
export type { Assessment } from './design/assessment.js';
export * from './design/circuit-case.js';
export type { Condition } from './design/conditions.js';
export {
  cheapestFirst,
  type Design,
  type DesignChoices,
  type DesignOptions,
  design,
  type SearchOrder,
} from './design/design.js';
export { type Judgement, judgeReadings, type Readings } from './design/judge-readings.js';
export * from './design/permitted.js';
export { type TestSheet, testSheet } from './design/test-sheet.js';
// the installation
export { type Assumption, type AssumptionSet, assume, assumptionProblems } from './installation/assumptions.js';
export type { Cable, Group, Insulation, Stretch } from './installation/cable.js';
export type { OvercurrentDevice, ResidualDevice } from './installation/device.js';
export type { ChargePoint, Dwellings, Line, Load, Purpose } from './installation/load.js';
export { dwellingsAtOnce } from './installation/load-current.js';
export type { Electrode, Supply, SupplyTransformer } from './installation/supply.js';
export {
  type Board,
  type Installation,
  type Outlet,
  type Path,
  pathsOf,
  pathTo,
  type Run,
} from './installation/tree.js';
// units
export {
  atLeast,
  atMost,
  larger,
  minus,
  over,
  plus,
  ratioOf,
  scaled,
  smaller,
  times,
} from './units/algebra.js';
export * from './units/constructors.js';
export { CalculationError, type ErrorCode, hasCode, type Problem, pathText } from './units/error.js';
export * from './units/quantity.js';
export * from './units/readers.js';
export type { CanonicalUnit } from './units/spellings.js';
export { format, formatIn, formatPercent, parseQuantity } from './units/text.js';

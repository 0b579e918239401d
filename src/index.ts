/**
 * Electrical installation calculations with typed units.
 * @module ohmwright
 */

// figures compared with the print by those who hold it
export type { Attestations } from './core/attested.js';
// checks, and formulas, tables and procedures below
export {
  alternatives,
  type Check,
  type CheckResult,
  type Comparison,
  comparison,
  judge,
  type Overall,
  overall,
  span,
  statement,
  type Verdict,
} from './core/check.js';
// sheets
export { evaluate } from './core/evaluate.js';
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
  formula,
  type Procedure,
  procedure,
  type Relation,
  relation,
} from './core/formula.js';
export { type RestsOn, restsOn } from './core/rests-on.js';
export { Recorder, recorder, type Sheet, silent } from './core/sheet.js';
export type { SheetDocument, SheetLine } from './core/sheet-lines.js';
export { citation, type Provenance, type Source } from './core/source.js';
export { type Table, table } from './core/table.js';
export { type Name, termOf, type Vocabulary, vocabulary } from './core/vocabulary/index.js';
export { writeSheet } from './core/write.js';
// assessment of a circuit
export { type Aspect, assess, type CircuitFigures, type WiringCode } from './design/assess.js';
export type { Assessment } from './design/assessment.js';
export * from './design/circuit-case.js';
export type { Condition } from './design/conditions.js';
export {
  cheapestFirst,
  type Design,
  type DesignChoices,
  type DesignOptions,
  design,
} from './design/design.js';
export { type Judgement, judgeReadings, type Readings } from './design/judge-readings.js';
export { type Permitted, permitted } from './design/permitted.js';
export { type TestSheet, testSheet } from './design/test-sheet.js';
// the installation
export { type AssumptionSet, assume } from './installation/assumptions.js';
export type { Cable, Group, Insulation, Stretch } from './installation/cable.js';
export type { OvercurrentDevice, ResidualDevice } from './installation/device.js';
export type { ChargePoint, Line, Load, Purpose } from './installation/load.js';
export type { Electrode, Supply } from './installation/supply.js';
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
  minus,
  over,
  plus,
  ratioOf,
  scaled,
  times,
} from './units/algebra.js';
export * from './units/constructors.js';
export {
  CalculationError,
  type ErrorCode,
  hasCode,
  type Problem,
  type ProblemId,
  pathText,
  problemIds,
} from './units/error.js';
export type {
  AdiabaticFactor,
  AmpereSquaredSeconds,
  Amperes,
  AmperesPerSecond,
  Celsius,
  Days,
  Degrees,
  HeatCapacity,
  Hertz,
  KelvinMetresPerWatt,
  Kelvins,
  Metres,
  Millimetres,
  OhmMetres,
  OhmMillimetres,
  Ohms,
  OhmsPerMetre,
  PerKelvin,
  Quantity,
  Ratio,
  Seconds,
  SquareMetres,
  SquareMetresPerSecond,
  SquareMillimetres,
  Vars,
  VoltAmperes,
  Volts,
  VoltsPerAmpereMetre,
  WattHours,
  Watts,
  WattsPerMetre,
} from './units/quantity.js';
export * from './units/readers.js';
export { format, formatIn, formatPercent, parseQuantity } from './units/text.js';

export * from './assess.js';
export type {
  AspectVerdict,
  Assessment,
  IntervalEnd,
  PermittedInterval,
  RangedCheck,
  RangedFact,
  RangeReport,
} from './assess-at.js';
export * from './circuit-case.js';
export * from './design.js';
export * from './judge-readings.js';
export * from './permitted.js';
export type { PlannedReading, ReadingLimit, TestSheetInput } from './planned-reading.js';
export { type Range, rangesOf } from './ranges.js';
export * from './test-sheet.js';
export type { Question } from './vary.js';

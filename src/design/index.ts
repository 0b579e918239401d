export * from './assess.js';
export * from './circuit-case.js';
export * from './judge-readings.js';
export type { PlannedReading, ReadingLimit, TestSheetInput } from './test-readings.js';
export * from './test-sheet.js';

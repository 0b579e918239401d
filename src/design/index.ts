export * from './judge-readings.js';
export * from './test-sheet.js';

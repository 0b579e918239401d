/**
 * The whole job, from the survey to options, quantities and records.
 *
 * @module
 */
export * from './formulas.js';
export * from './hours.js';
export * from './price.js';
export * from './quantities.js';
export * from './survey.js';
export { labourTable } from './tables/labour.js';
export * from './work-rules.js';

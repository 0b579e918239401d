/**
 * The whole job, from the survey to options, quantities and records.
 *
 * @module ohmwright/site
 */
export type * from './applicable.js';
export * from './charge-time.js';
export * from './definitions.js';
export * from './hours.js';
export * from './installed.js';
export * from './night.js';
export * from './option-survey.js';
export * from './picture-data.js';
export * from './plan.js';
export * from './plan-of.js';
export * from './price.js';
export * from './quantities.js';
export * from './records.js';
export * from './survey.js';
export * from './unknown-facts.js';
export * from './work-rules.js';

/**
 * Documents in and out: schemas, versions, and every problem of a document with its path.
 *
 * @module
 */
export { surveyJsonSchema } from './json-schema.js';
export { currentFormat, migrate } from './migrate.js';
export { readPriceBook, readWorkRules } from './prices.js';
export { parseSurvey, readSurvey } from './read-survey.js';

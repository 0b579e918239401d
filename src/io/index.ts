/**
 * Documents in and out: schemas, versions, and every problem of a document with its path.
 *
 * @module ohmwright/io
 */
export { readAttestations, readTicks } from './attestations.js';
export { readEdition } from './edition.js';
export { surveyJsonSchema } from './json-schema.js';
export { currentFormat, migrate } from './migrate.js';
export { priceBookJsonSchema, readPriceBook, readWorkRules, workRulesJsonSchema } from './prices.js';
export { parseSurvey, readSurvey } from './read-survey.js';

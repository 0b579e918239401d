/**
 * Documents in and out: schemas, versions, and every problem of a document with its path.
 *
 * @module ohmwright/io
 */

export { type Question, questionnaire, questionOf } from '../installation/facts/questionnaire.js';
export { readAssumptions } from './assumptions.js';
export { readAttestations, readTicks } from './attestations.js';
export type { Answer, Written } from './brief/answers.js';
export { type FirmDefaults, readDefaults, usualDefaults } from './brief/defaults.js';
export { type BriefSurvey, blankSurvey, readBrief } from './brief/expand.js';
export {
  type ExistingCircuit,
  existingCircuit,
  type FactDocument,
  type RouteSection,
  rcbo,
  routeSection,
  usualCables,
} from './brief/parts.js';
export { briefColumns, readBriefRows } from './brief/rows.js';
export { briefJsonSchema } from './brief/schema.js';
export { csvText, parseCsv } from './csv.js';
export { readEdition } from './edition.js';
export { surveyJsonSchema } from './json-schema.js';
export { currentFormat, migrate } from './migrate.js';
export { priceBookJsonSchema, readPriceBook, readWorkRules, workRulesJsonSchema } from './prices.js';
export { parseSurvey, readSurvey } from './read-survey.js';
export { readSharedJson, sharedJson } from './shared-json.js';

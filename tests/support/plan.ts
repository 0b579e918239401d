import { inGreatBritain } from '../../src/great-britain.js';
import { readSurvey } from '../../src/io/index.js';
import { type Plan, type PlanOptions, planOf, type Survey } from '../../src/site/index.js';
import { surveyDocument } from './surveys.js';

/** The plan of a survey in Great Britain, by the edition that it names, with all that is sought unasked. */
export const wholePlanInBritain = (survey: Survey, options: Partial<PlanOptions> = {}): Plan =>
  planOf(survey, { ...inGreatBritain(survey.code.edition), ...options });

/** The same without a search for remedies, which takes most of its time: for tests of what the survey itself comes to. */
export const planInBritain = (survey: Survey, options: Partial<PlanOptions> = {}): Plan =>
  wholePlanInBritain(survey, { remedies: false, ...options });

const examples = new Map<string, Plan>();

/** The plan of one of the invented surveys, without lengths and remedies, made once for all tests of a worker. */
export function examplePlan(name: string): Plan {
  const plan =
    examples.get(name) ?? planInBritain(readSurvey(surveyDocument(name)), { lengths: false, sheets: 'first' });
  examples.set(name, plan);
  return plan;
}

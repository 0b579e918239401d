import { inGreatBritain } from '../../src/great-britain.js';
import { type Plan, type PlanOptions, planOf, type Survey } from '../../src/site/index.js';

/** The plan of a survey in Great Britain, by the edition that it names, with all that is sought unasked. */
export const wholePlanInBritain = (survey: Survey, options: Partial<PlanOptions> = {}): Plan =>
  planOf(survey, { ...inGreatBritain(survey.code.edition), ...options });

/** The same without a search for remedies, which takes most of its time: for tests of what the survey itself comes to. */
export const planInBritain = (survey: Survey, options: Partial<PlanOptions> = {}): Plan =>
  wholePlanInBritain(survey, { remedies: false, ...options });

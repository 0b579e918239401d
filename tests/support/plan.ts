import { inGreatBritain } from '../../src/great-britain.js';
import { type Plan, type PlanOptions, planOf, type Survey } from '../../src/site/index.js';

/** The plan of a survey in Great Britain, by the edition that it names. */
export const planInBritain = (survey: Survey, options: Partial<PlanOptions> = {}): Plan =>
  planOf(survey, { ...inGreatBritain(survey.code.edition), ...options });

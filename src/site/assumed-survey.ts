import { type AssumptionSet, aroundOf, assume, assumeRun } from '../installation/index.js';
import { boardsOf } from './option-survey.js';
import type { Survey } from './survey.js';

/**
 * A survey in which facts that nobody looked at are taken from a set of assumptions, each marked; those of the circuits that
 * are wanted as well.
 * @param survey the survey
 * @param set the assumptions
 * @returns a new survey; the given one is not changed
 * @throws CalculationError `invalid-input` with the path of each problem of the set
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { ordinaryHome } from 'ohmwright/great-britain';
 * import { readSurvey } from 'ohmwright/io';
 * import { assumeSurvey } from 'ohmwright/site';
 *
 * assumeSurvey(readSurvey(survey), ordinaryHome).about.title; // => 'Larch Cottage (invented): one 7 kW point on the drive'
 * ```
 */
export function assumeSurvey(survey: Survey, set: AssumptionSet): Survey {
  const installation = assume(survey.installation, set);
  const boards = new Map(boardsOf(installation.board).map((board) => [board.id, board]));
  return {
    ...survey,
    installation,
    wanted: survey.wanted.map((wanted) => {
      const board = boards.get(wanted.from);
      const around = { ...aroundOf(installation), ...(board ? { board: { ...board } } : {}) };
      return { ...wanted, run: assumeRun(set, wanted.run, around) };
    }),
  };
}

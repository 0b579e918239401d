import { type AssumptionSet, aroundOf, assume, assumeRun, isUnknown } from '../installation/index.js';
import { boardsOf } from './option-survey.js';
import type { Survey } from './survey.js';

/**
 * What a plan assumes of every load control of which nobody states it, whoever plans: that it pauses the charge points once
 * it has lost its sensor. What rests on it is conditional.
 */
export const controlsPause: AssumptionSet = {
  format: 'assumptions/1',
  id: 'load-control',
  title: 'Load controls',
  by: 'the plan',
  entries: [
    {
      id: 'pauses-without-its-sensor',
      fact: 'control.fallback',
      value: 0,
      source: { document: 'common practice of load control', provenance: 'common-practice' },
      confirm:
        'Read in the instructions of the load control that the charge points pause once it has lost its sensor or its link, or draw no more than is left beside everything else.',
    },
  ],
};

/** A survey with what is assumed of it: by the set of whoever plans, where there is one, and of its load controls. */
export function asAssumed(survey: Survey, set: AssumptionSet | undefined): Survey {
  const assumed = set ? assumeSurvey(survey, set) : survey;
  const open = boardsOf(assumed.installation.board).some((b) => b.control && isUnknown(b.control.fallback));
  return open ? assumeSurvey(assumed, controlsPause) : assumed;
}

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

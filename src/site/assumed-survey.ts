import { mayFeedBack } from '../installation/feeds-back.js';
import { type AssumptionSet, aroundOf, assume, assumeRun, everythingBelow, isUnknown } from '../installation/index.js';
import { boardsOf } from './option-survey.js';
import { withBoards } from './remedies/remedy.js';
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

/** What a plan assumes of every board whose rating nobody read, as a condition: its value is that of its main switch. */
export const boardsAsSwitches: AssumptionSet = {
  format: 'assumptions/1',
  id: 'board',
  title: 'Boards',
  by: 'the plan',
  entries: [
    {
      id: 'rated-as-its-main-switch',
      fact: 'board.rating',
      source: { document: 'common practice of consumer units', provenance: 'common-practice' },
      confirm: 'Read the rated current off the board; where it has no other marking, that of its main switch.',
    },
  ],
};

/** The same survey with the rating of such boards taken; not where a source feeds in, for which the board itself is asked. */
function withBoardsAsSwitches(survey: Survey): Survey {
  const below = [...everythingBelow(survey.installation.board), ...survey.wanted.flatMap((w) => w.run.feeds)];
  if (below.some((o) => o.kind !== 'board' && mayFeedBack(o))) return survey;
  return withBoards(survey, (board) => {
    const rating = board.mainSwitch?.rating;
    if (!isUnknown(board.rating) || rating === undefined || rating.state === 'unknown') return board;
    return { ...board, rating: { ...rating, by: 'assumed', assumed: 'board/rated-as-its-main-switch' } };
  });
}

/** A survey with what is assumed of it: by the set of whoever plans, where there is one, of its boards and its load controls. */
export function asAssumed(survey: Survey, set: AssumptionSet | undefined): Survey {
  const assumed = withBoardsAsSwitches(set ? assumeSurvey(survey, set) : survey);
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

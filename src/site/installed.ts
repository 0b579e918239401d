import { known } from '../core/index.js';
import {
  type Board,
  type Cable,
  type Installation,
  type Outlet,
  pathsOf,
  type Run,
  withRun,
} from '../installation/index.js';
import type { Amperes, SquareMillimetres } from '../units/index.js';
import type { Survey, WantedPoint, WorkFacts } from './survey.js';

/** An installation with its new circuits decided, and the work that goes with it. */
export interface Built {
  readonly installation: Installation;
  readonly work: WorkFacts;
  /** Names of the circuits that are wanted. */
  readonly wanted: readonly string[];
}

/**
 * The installation with a run added to the board of this name.
 * @param installation the installation
 * @param boardId name of the board
 * @param run the run to add
 * @returns a new installation; the given one is not changed
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { pathsOf } from 'ohmwright';
 * import { readSurvey } from 'ohmwright/io';
 * import { withAddedRun } from 'ohmwright/site';
 *
 * const { installation, wanted } = readSurvey(survey);
 * const run = wanted[0]?.run;
 * run && pathsOf(withAddedRun(installation, 'consumer unit', run)).length; // => 5
 * ```
 */
export const withAddedRun = (installation: Installation, boardId: string, run: Run): Installation =>
  withAddedRuns(installation, boardId, [run]);

function withAddedRuns(installation: Installation, boardId: string, runs: readonly Run[]): Installation {
  const add = (board: Board): Board => ({ ...board, runs: [...board.runs, ...runs] });
  if (installation.board.id === boardId) return { ...installation, board: add(installation.board) };
  const isIt = (o: Outlet): o is Board => o.kind === 'board' && o.id === boardId;
  const feeder = pathsOf(installation).find((p) => p.run.feeds.some(isIt));
  if (!feeder) return installation;
  return withRun(installation, feeder.run.id, (r) => ({ ...r, feeds: r.feeds.map((o) => (isIt(o) ? add(o) : o)) }));
}

/**
 * The installation of a survey with all that is wanted in its place, sizes and ratings still open.
 * @param survey the survey
 * @returns a new installation; that of the survey is not changed
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { pathsOf } from 'ohmwright';
 * import { readSurvey } from 'ohmwright/io';
 * import { withAllWanted } from 'ohmwright/site';
 *
 * pathsOf(withAllWanted(readSurvey(survey))).length; // => 5
 * ```
 */
export function withAllWanted(survey: Survey): Installation {
  const before = installedOf.get(survey);
  if (before) return before;
  const byBoard = new Map<string, Run[]>();
  for (const { from, run } of survey.wanted) byBoard.set(from, [...(byBoard.get(from) ?? []), run]);
  const installation = [...byBoard].reduce((i, [board, runs]) => withAddedRuns(i, board, runs), survey.installation);
  installedOf.set(survey, installation);
  return installation;
}

/** Installations of surveys that were put together already: neither is changed afterwards. */
const installedOf = /* @__PURE__ */ new WeakMap<Survey, Installation>();

/**
 * A wanted run with its cable, size and device rating decided.
 * @param wanted what is wanted
 * @param cable the cable chosen
 * @param area size of its line conductors, mm², above 0
 * @param rating rated current of its device, A, above 0
 * @returns the run, ready to be assessed
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { amperes, squareMillimetres } from 'ohmwright';
 * import { readSurvey } from 'ohmwright/io';
 * import { decidedRun } from 'ohmwright/site';
 *
 * const [wanted] = readSurvey(survey).wanted;
 * const run = wanted && decidedRun(wanted, wanted.run.cable, squareMillimetres(6), amperes(32));
 * run?.cable.area; // => { state: 'known', value: 6, by: 'design' }
 * ```
 */
export const decidedRun = (wanted: WantedPoint, cable: Cable, area: SquareMillimetres, rating: Amperes): Run => ({
  ...wanted.run,
  cable: { ...cable, area: known(area, 'design') },
  device: { ...wanted.run.device, rating: known(rating, 'design') },
});

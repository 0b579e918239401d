import type { WiringCode } from '../../codes/wiring-code.js';
import { type CheckResult, endsOf, type Fact } from '../../core/index.js';
import { type Board, type Installation, pathTo, type Run, type Stretch, withRun } from '../../installation/index.js';
import type { TradeWords } from '../applicable.js';
import { withAllWanted } from '../installed.js';
import type { Item } from '../item.js';
import type { OptionPlan } from '../plan.js';
import type { Survey, WantedPoint } from '../survey.js';
import type { Task } from '../work-rules.js';

/** One way to apply a remedy: the survey as it would be then, in words, and what it costs beside the circuits themselves. */
export interface Change {
  readonly survey: Survey;
  /** What is done, such as `earthing conductor of 16 mm²`. */
  readonly what: string;
  /** Material that the circuits of the points do not count themselves. */
  readonly items?: readonly Item[];
  /** Tasks that they do not count themselves, each with how often it occurs. */
  readonly tasks?: readonly (readonly [task: Task, times: number])[];
}

/** What a remedy is asked of: an option as it was assessed, and the result that stands in its way. */
export interface Situation {
  readonly survey: Survey;
  /** The option as it was assessed before any remedy. */
  readonly plan: OptionPlan;
  /** The result that is to be cured. */
  readonly result: CheckResult;
  readonly code: WiringCode;
  readonly words: TradeWords;
}

/** A change of the installation, or of what is known of it, that may cure what fails. */
export interface SurveyRemedy {
  /** Stable identifier, kebab-case. */
  readonly id: string;
  readonly title: string;
  /** Identifiers of the checks that it may cure. */
  readonly checks: readonly string[];
  /** Whether it is applied as well where a check could only not be judged: the work costs less than to find out. */
  readonly whenOpen?: true;
  /** Ways to apply it, cheapest first; none where there is nothing to change. */
  ways(at: Situation): readonly Change[];
}

/** Who says so of what a remedy puts there. */
export const PUT_THERE = 'to be installed so';

/** A fact that is known and has this value, or may have it. */
export const isKnown = <T>(fact: Fact<T> | undefined, value: T): boolean =>
  fact?.state === 'known' && fact.value === value;

/** The smallest that a fact may be; undefined where nothing is known of it. */
export const leastOf = (fact: Fact<number> | undefined): number | undefined => endsOf(fact)?.[0];

/** The smallest of several sizes that is at least what is asked. */
export const sizeFrom = (sizes: readonly number[], least: number): number | undefined =>
  sizes.find((size) => size >= least - 1e-9);

/** A survey with its supply, its first board, its wanted points, or its work changed. */
export const withSupply = (survey: Survey, change: Partial<Installation['supply']>): Survey => ({
  ...survey,
  installation: { ...survey.installation, supply: { ...survey.installation.supply, ...change } },
});
export const withFirstBoard = (survey: Survey, change: Partial<Installation['board']>): Survey => ({
  ...survey,
  installation: { ...survey.installation, board: { ...survey.installation.board, ...change } },
});
/** A survey with each of its boards changed, the one at the origin first, then what is left below it. */
export function withBoards(survey: Survey, change: (board: Board) => Board): Survey {
  const inBoard = (board: Board): Board => {
    const next = change(board);
    const feedsOf = ({ feeds }: Run) => feeds.map((o) => (o.kind === 'board' ? inBoard(o) : o));
    return { ...next, runs: next.runs.map((run) => ({ ...run, feeds: feedsOf(run) })) };
  };
  return { ...survey, installation: { ...survey.installation, board: inBoard(survey.installation.board) } };
}
export const withEachWanted = (survey: Survey, change: (wanted: WantedPoint) => WantedPoint): Survey => ({
  ...survey,
  wanted: survey.wanted.map(change),
});
export const withWantedRuns = (survey: Survey, change: (run: Run, wanted: WantedPoint) => Run): Survey =>
  withEachWanted(survey, (w) => ({ ...w, run: change(w.run, w) }));
export const withExistingRun = (survey: Survey, id: string, change: (run: Run) => Run): Survey => ({
  ...survey,
  installation: withRun(survey.installation, id, change),
});

/** A section of one new cable that is laid all the way: nothing of what was there, and no joint. */
export const laidAnew = ({ cable: _cable, existing: _existing, jointAccessible: _joint, ...rest }: Stretch): Stretch =>
  rest;

/** Feeders on the way to the wanted points, each once. */
export function feedersTo(survey: Survey): readonly Run[] {
  const installation = withAllWanted(survey);
  const found = survey.wanted.flatMap((w) => pathTo(installation, w.run.id)?.feeders ?? []);
  return [...new Map(found.map((f) => [f.id, f])).values()];
}

/** Names of the boards on the way to the wanted points. */
export function boardsTo(survey: Survey): ReadonlySet<string> {
  const installation = withAllWanted(survey);
  return new Set(survey.wanted.flatMap((w) => pathTo(installation, w.run.id)?.boards.map((b) => b.id) ?? []));
}

/** An item of material that a remedy needs. */
export const item = (key: string, words: string, quantity = 1, unit: Item['unit'] = 'each'): Item => ({
  key,
  words,
  quantity,
  unit,
  rule: 'the remedy asks for it',
});

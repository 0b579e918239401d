import { type CheckResult, type Fact, isMissing, overall, type Sheet, silent } from '../core/index.js';
import { adequacyAsSaid } from '../demand/adequacy.js';
import { routeOnceConfirmed } from '../demand/connection.js';
import { feederDemandAsSaid, feederDemandOf } from '../demand/feeder.js';
import {
  type Adequacy,
  adequacyOf,
  type Demand,
  demandOf,
  existingOnLines,
  mountingResults,
  type Notification,
  notificationOf,
} from '../demand/index.js';
import { notificationAsSaid } from '../demand/notification.js';
import { resultsAsSaid } from '../design/assess.js';
import { assess } from '../design/index.js';
import { asOneWay } from '../installation/beside.js';
import { conditionally, type Installation, pathsOf } from '../installation/index.js';
import { amperes, type Millimetres, millimetres } from '../units/index.js';
import { alikeRuns } from './alike.js';
import { runsOf } from './alike-plans.js';
import type { Applicable } from './applicable.js';
import { atItsDemand } from './at-its-demand.js';
import { controlResults } from './control-results.js';
import { demandOptions } from './demand-options.js';
import { feederPlan, feedersIn } from './feeder-plan.js';
import type { Built } from './installed.js';
import { type MeasureFirst, measuredFirst } from './measure.js';
import { boardsOf } from './option-survey.js';
import type { FeederPlan, OptionPlan } from './plan.js';
import type { Survey, WorkFacts } from './survey.js';
import { waysResults } from './ways.js';
import type { WorkRules } from './work-rules.js';

/** What is judged beside the new circuits themselves. */
export interface JudgedAround {
  readonly supply: Adequacy;
  readonly measure: readonly MeasureFirst[];
  readonly control: readonly CheckResult[];
  readonly feeders: readonly FeederPlan[];
  /** All results in the order of a plan. */
  readonly results: readonly CheckResult[];
}

const inMillimetres = (metres: number) => millimetres(metres * 1000);

/** Results of heights of the outlet; of one that is known within a range they are open. */
function heightResults(
  { mounting }: Applicable,
  { outletHeight: said }: WorkFacts,
  sheet: Sheet,
): readonly CheckResult[] {
  if (!said) return [];
  const outlet: Fact<Millimetres> =
    said.state === 'known'
      ? { ...said, value: inMillimetres(said.value) }
      : said.state === 'between'
        ? { ...said, least: inMillimetres(said.least), most: inMillimetres(said.most) }
        : said;
  return mountingResults(mounting, { outlet }, sheet.part('Mounting'));
}

const controlled = ({ board }: Installation): boolean => boardsOf(board).some((b) => b.control);

/** Results of every load control, at the origin behind the fuse of the supply, and below it behind the device of a feeder. */
function ofControls(
  { code, demand: rules }: Applicable,
  survey: Survey,
  installation: Installation,
  demand: Demand,
  sheet: Sheet,
): readonly CheckResult[] {
  const { supply, board: origin } = installation;
  const lines = existingOnLines(demand);
  const existing = isMissing(lines) ? lines : amperes(Math.max(...lines));
  const below = pathsOf(installation).flatMap(({ run }) =>
    run.feeds.flatMap((board) => (board.kind === 'board' && board.control ? [{ run, board }] : [])),
  );
  return [
    ...controlResults(code, { board: origin, ahead: supply.cutOut, aheadWords: 'the main fuse', existing }, sheet),
    ...below.flatMap(({ run, board }) => {
      const found = feederDemandAsSaid(
        rules,
        installation,
        run.id,
        demandOptions(survey, installation),
        sheet.silent(),
      );
      const aheadWords = `the device of ${run.id}`;
      return controlResults(
        code,
        { board, ahead: asOneWay(run).device, aheadWords, existing: found.existing },
        sheet.part(board.id),
      );
    }),
  ];
}

/**
 * Judges what is there beside the new circuits: supply, load control, service, heights, ways, feeders.
 * @param by what applies where the premises stand, with the rules of the work
 * @param survey the survey; of its installation and its work those of `built` count
 * @param built the installation with the new circuits decided
 * @param notification what the network operator's rules say of it
 * @param sheet where it is written, the supply on a part of its own
 */
export function judgedAround(
  by: Applicable & { readonly rules: WorkRules },
  survey: Survey,
  { installation, work, wanted }: Built,
  notification: Notification,
  sheet: Sheet,
  ofSupply: Sheet = sheet.part('Supply'),
): JudgedAround {
  const { code, demand, rules } = by;
  const built = { installation, work, wanted };
  const { supply, measure, control, mounting, ways } = judgedAtSupply(
    by,
    survey,
    built,
    notification,
    sheet,
    ofSupply,
    onConditions,
  );
  const feeders = alikeRuns(survey, installation, feedersIn(installation, wanted)).map(([first = '', ...alike]) => ({
    ...feederPlan({ code, demand }, { ...survey, work }, installation, first, rules, sheet),
    ...(alike.length > 0 ? { alike } : {}),
  }));
  return {
    supply,
    measure,
    control,
    feeders,
    results: [
      ...supply.results,
      ...control,
      ...ofService(by, notification),
      ...mounting,
      ...ways,
      ...feeders.flatMap((f) => [...f.demand.results, ...f.assessment.results]),
    ],
  };
}

/** How assumed facts count: what passes by them alone is conditional; or, where it is asked what fails, like known ones. */
interface Counting {
  readonly adequacy: typeof adequacyAsSaid;
  readonly notification: typeof notificationAsSaid;
  readonly feederDemand: typeof feederDemandAsSaid;
  readonly circuit: typeof resultsAsSaid;
  readonly conditionally: typeof conditionally;
}
const onConditions: Counting = {
  adequacy: adequacyOf,
  notification: notificationOf,
  feederDemand: feederDemandOf,
  circuit: (...of) => assess(...of).results,
  conditionally,
};
const asSaid: Counting = {
  adequacy: adequacyAsSaid,
  notification: notificationAsSaid,
  feederDemand: feederDemandAsSaid,
  circuit: resultsAsSaid,
  conditionally: (_tree, said) => said,
};

/** Whether one has to ask first is no matter of passing; an unsafe service is. */
const ofService = ({ network }: Applicable, { decision }: Notification): readonly CheckResult[] =>
  decision.results.filter((r) => network.safety.includes(r.check));

/** What is judged but for feeders. */
function judgedAtSupply(
  by: Applicable,
  survey: Survey,
  { installation, work, wanted }: Built,
  notification: Notification,
  sheet: Sheet,
  ofSupply: Sheet,
  counting: Counting,
) {
  const { code, demand, network } = by;
  const options = demandOptions(survey, installation);
  const mounting = heightResults(by, work, sheet);
  const { ownWay } = code;
  const waysOf = (of: Installation, on: Sheet) =>
    ownWay ? waysResults(ownWay, { installation: of, work, wanted }, on) : [];
  const ways = counting.conditionally(
    installation,
    ownWay ? waysOf(installation, sheet.part('Ways for the new circuits')) : [],
    (bare) => waysOf(bare, sheet.silent()),
  );
  // main switch and tails count the devices of the new circuits, which are chosen by now
  const found = counting.adequacy(demand, installation, options, ofSupply);
  const { results: measured, measure } = measuredFirst(
    demand,
    installation,
    found,
    routeOnceConfirmed(notification.decision) === 'notify-after' ? network.noticeUpTo : undefined,
  );
  const supply = measure.length > 0 ? { ...found, results: measured, overall: overall(measured) } : found;
  const control = controlled(installation)
    ? counting.conditionally(
        installation,
        ofControls(by, survey, installation, supply.demand, sheet.part('Load control')),
        (bare) => ofControls(by, survey, bare, demandOf(demand, bare, options, sheet.silent()), sheet.silent()),
      )
    : [];
  return { supply, measure, control, mounting, ways };
}

/** A survey with the choices of an option of its plan. */
const asJudged = (survey: Survey, { judgedBy: { governing, ...choices } = {} }: OptionPlan): Survey => ({
  ...survey,
  options: { ...survey.options, ...choices },
  ...(governing === undefined ? {} : { demand: { ...survey.demand, governing } }),
});

function again(
  counting: Counting,
  by: Applicable,
  surveyed: Survey,
  option: OptionPlan,
  installation: Installation,
): readonly CheckResult[] {
  const { points, work } = option;
  const survey = asJudged(surveyed, option);
  const { code, demand, network } = by;
  const sheet = silent(code.attested?.tables);
  const options = demandOptions(survey, installation);
  const wanted = points.flatMap(runsOf);
  const notification = counting.notification(demand, network, installation, options, sheet);
  const built = { installation, work, wanted };
  const { supply, control, mounting, ways } = judgedAtSupply(by, survey, built, notification, sheet, sheet, counting);
  const ofFeeder = (id: string) => {
    const found = counting.feederDemand(demand, installation, id, options, sheet);
    return [...found.results, ...counting.circuit(code, installation, id, atItsDemand(survey, found))];
  };
  return [
    ...supply.results,
    ...control,
    ...ofService(by, notification),
    ...mounting,
    ...ways,
    ...alikeRuns(survey, installation, feedersIn(installation, wanted)).flatMap(([first = '']) => ofFeeder(first)),
    ...points.flatMap((p) => [
      ...p.cableResults,
      // what was alike need not be any more; each run counts, however many one calculation serves
      ...alikeRuns(survey, installation, runsOf(p)).flatMap((alike) => {
        const results = counting.circuit(code, installation, alike[0] ?? p.run.id, survey.options);
        return alike.flatMap(() => results);
      }),
    ]),
  ];
}

/**
 * All results of an option with another installation in the place of its own: what was found, or what might be answered.
 * @param by what applies where the premises stand
 * @param survey the survey that the plan was made from
 * @param option an option of the plan, which says what is built and worked
 * @param installation its installation with other facts
 */
export const judgedAgain = (by: Applicable, survey: Survey, option: OptionPlan, installation: Installation) =>
  again(onConditions, by, survey, option, installation);

/** The same by the facts as they are said, assumed ones like known ones: enough where it is asked what fails. */
export const judgedAgainAsSaid = (by: Applicable, survey: Survey, option: OptionPlan, installation: Installation) =>
  again(asSaid, by, survey, option, installation);

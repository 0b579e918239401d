import { type CheckResult, overall, recorder, type SheetDocument, silent, writeSheet } from '../core/index.js';
import { feederDemandOf } from '../demand/feeder.js';
import { adequacyOf, type NotificationOptions, notificationOf } from '../demand/index.js';
import { rangesOf } from '../design/index.js';
import { type AssumptionSet, isRecord, lineConductors, outletsBelow, type Purpose } from '../installation/index.js';
import { invalidInput } from '../units/index.js';
import { alikeIn, FEW } from './alike.js';
import { decidedAlike, eachFeeder, workOf } from './alike-plans.js';
import type { Applicable } from './applicable.js';
import { assumeSurvey } from './assumed-survey.js';
import { beforeWorkOf } from './before-work.js';
import { toConfirm, withLimits } from './conditions.js';
import { demandOptions } from './demand-options.js';
import { feedersOf } from './feeder-plan.js';
import { inAll } from './hours.js';
import { withAllWanted } from './installed.js';
import { judgedAround } from './judged.js';
import { isEstimated } from './measure.js';
import { nightOf } from './night.js';
import { observationsOf } from './observations.js';
import type { BaseOptionId, OptionId } from './option-id.js';
import { type OptionSurvey, optionSurveys } from './option-survey.js';
import type { DiscardedOption, OptionPlan, Plan, PointPlan } from './plan.js';
import { pointPlan } from './point-plan.js';
import { basisCautions } from './recalled.js';
import type { AppliedRemedy } from './remedies/offer.js';
import { seekRemedies } from './remedies/search.js';
import { sanityQuestions } from './sanity.js';
import { stagesOf } from './stages.js';
import type { Survey, WantedPoint } from './survey.js';
import { surveyProblems } from './survey-problems.js';
import { withTransformer } from './transformer.js';
import { unknownFacts } from './unknown-facts.js';
import { commonPractice, type WorkRules } from './work-rules.js';

/** How options are ranked. */
export interface Ranking {
  readonly words: string;
  /** Below zero when the first goes before the second. */
  compare(a: OptionPlan, b: OptionPlan): number;
}

/** What a plan rests on beside the survey: what applies where the premises stand, and choices. */
export interface PlanOptions extends Applicable {
  /** Rules for quantities and hours; common practice when absent. */
  readonly rules?: WorkRules;
  /** How options are ranked; `simplestFirst` when absent. */
  readonly ranking?: Ranking;
  /** Which options keep their calculation sheet; the first when absent. */
  readonly sheets?: 'first' | 'all' | 'none';
  /** Whether permitted lengths of the route are worked out, which takes many assessments; for up to three points when absent. */
  readonly lengths?: boolean;
  /** Whether the limits of the conditions of the best option are worked out, which takes many assessments; they are when absent. */
  readonly limits?: boolean;
  /** What stands in for facts that nobody looked at; what passes by it passes on conditions. Nothing when absent. */
  readonly assumptions?: AssumptionSet;
  /** Whether remedies are sought for what does not pass, each assessed anew; where no fact runs over a range when absent. */
  readonly remedies?: boolean;
  /** What the notification needs and the survey does not hold, such as the day of completion. */
  readonly notification?: Pick<NotificationOptions, 'completed' | 'programme' | 'particulars'>;
}

/** What is said with every plan. */
const planCaution =
  'This is a calculation from a survey, not an installation. It has to be checked on site and carried out, tested and certified by competent persons, to the edition in force, the network operator’s conditions and local rules.';

const supplyChangeWords = {
  'larger-fuse': 'the operator is asked for a larger fuse',
  'three-phase': 'the operator is asked for a three-phase supply',
  'own-service': 'the operator is asked for a service of its own',
} as const;
const verdictRank = { pass: 0, conditional: 1, 'not-determined': 2, fail: 3 } as const;
const effort: Readonly<Record<BaseOptionId, number>> = {
  'as-wanted': 0,
  'with-limiter': 1,
  'lower-setting': 2,
  'larger-supply-fuse': 3,
  'three-phase-supply': 4,
};

const effortOf = ({ id }: OptionPlan): number => effort[id.split('+')[0] as BaseOptionId];

const passing = ({ overall: { verdict } }: OptionPlan) => verdict === 'pass' || verdict === 'conditional';

/** Whether the operator is only told, once what was assumed has been confirmed. */
const toldOnly = ({ notification: { decision } }: OptionPlan) => {
  const route = decision.onceConfirmed ?? decision.route;
  return route === 'notify-after' || route === 'no-duty';
};
/** For how many reasons the operator has to be asked before the work. */
const askedFor = ({ notification: { decision } }: OptionPlan) =>
  new Set(decision.results.flatMap((r) => (r.verdict === 'fail' && r.weight === 'rule' ? [r.check] : []))).size;

/** Whether no vehicle still charges when it has to leave: alone at full current, and with the others, all else at rest. */
const readyInTime = ({ points, night }: OptionPlan) =>
  points.every((p) => p.chargeTime?.inTime !== false) &&
  (night?.vehicles ?? []).every((v) => v.quiet.after !== undefined);

/** The largest reading by which an option is possible, where its demand has to be measured first, A. */
const roomOf = ({ measure = [] }: OptionPlan): number =>
  Math.min(Number.POSITIVE_INFINITY, ...measure.map((m) => m.mostRead));

/** Whether a point gets less than was wanted. */
const lowers = ({ id }: OptionPlan): number => Number(id.startsWith('lower-setting'));

/** How much of the supply itself is asked for: a larger fuse, or three phases. */
const changesSupply = ({ id, work: { supplyChange } }: OptionPlan): number =>
  id.startsWith('three-phase')
    ? 2
    : Number(id.startsWith('larger-supply-fuse') || supplyChange === 'larger-fuse' || id.includes('larger-fuse'));

/** What leaves a measurement more room goes first. */
const compareRoom = (a: OptionPlan, b: OptionPlan): number => {
  const [one, other] = [roomOf(a), roomOf(b)];
  return one === other ? 0 : other - one;
};

/**
 * What passes before what passes on conditions, before what is open, before what fails; then what needs no consent before what does; then what has every
 * vehicle ready in time; then less change, then fewer hours.
 */
export const simplestFirst: Ranking = {
  words:
    'options that pass before those that pass on conditions, before those that are open, before those that fail; then those that the operator is only told of; then those in which every vehicle can be ready in time; then those that leave the supply as it is; then those for which there are fewer reasons to ask the operator; then, where the demand has to be measured, what leaves it more room; then without remedies before with them, of these at the wanted setting and fewer hours first; then as wanted, limiter, lower setting, larger fuse, three phases; then fewer hours',
  compare: (a, b) =>
    verdictRank[a.overall.verdict] - verdictRank[b.overall.verdict] ||
    Number(!toldOnly(a)) - Number(!toldOnly(b)) ||
    Number(!readyInTime(a)) - Number(!readyInTime(b)) ||
    (a.remedies || b.remedies
      ? 0
      : changesSupply(a) - changesSupply(b) || askedFor(a) - askedFor(b) || compareRoom(a, b)) ||
    Number(!!a.remedies) - Number(!!b.remedies) ||
    (a.remedies && b.remedies
      ? changesSupply(a) - changesSupply(b) || lowers(a) - lowers(b) || a.hours.typical - b.hours.typical
      : 0) ||
    effortOf(a) - effortOf(b) ||
    a.hours.typical - b.hours.typical,
};

/** What cannot be or is not covered is refused; a plan by another code, or by the rules of another country, than the survey names is none for it. */
function refuseOthers(survey: Survey, { code, network }: Applicable): void {
  const wrong = surveyProblems(survey);
  if (wrong.length > 0) throw invalidInput('the survey', wrong);
  const { code: asked, about } = survey;
  const problems = [
    ...(asked.id === code.name && asked.edition === code.edition
      ? []
      : [
          { path: ['code'], message: `is ${asked.id}:${asked.edition}, but ${code.name}:${code.edition} is handed in` },
        ]),
    ...(about.country === network.country
      ? []
      : [
          {
            path: ['about', 'country'],
            message: `is ${about.country}, but the rules of network operators in ${network.country} are handed in`,
          },
        ]),
  ];
  if (problems.length > 0) throw invalidInput('the survey', problems);
}

/** The method by which the largest half hour that a meter saw is the demand. */
const HALF_HOURS = 'metered-peak';

interface WorkedPlan {
  readonly survey: Survey;
  readonly plan: OptionPlan;
  readonly sheet: SheetDocument;
}

/**
 * A largest half hour that was only assumed governs nothing by itself: the survey without it, and the survey by it, where
 * nobody named another method.
 */
function withHalfHours(survey: Survey): { readonly survey: Survey; readonly byHalfHours?: Survey } {
  const { meteredDemand, ...supply } = survey.installation.supply;
  const current = meteredDemand?.current;
  if (!current || current.state === 'unknown' || current.assumed === undefined) return { survey };
  const governing = survey.demand?.governing;
  const without = { ...survey, installation: { ...survey.installation, supply } };
  if ((governing !== undefined && governing !== HALF_HOURS) || survey.demand?.readings) return { survey: without };
  return { survey: without, byHalfHours: { ...survey, demand: { ...survey.demand, governing: HALF_HOURS } } };
}

/** Purposes of appliances that run at their full current, all of it at once. */
const inFullAtOnce: readonly Purpose[] = [
  'instantaneous-water-heating',
  'cooking',
  'heat-pump',
  'space-heating',
  'motor',
];

/**
 * Half hours hide what lasts for minutes: where the two largest appliances together are more than the fuse and the main switch
 * carry, no customary half hour says that the supply holds.
 */
function shortPeaksFit({ installation: { supply, board } }: Survey): boolean {
  const ratings = [supply.cutOut.rating, board.mainSwitch?.rating].flatMap((r) =>
    r?.state === 'known' ? [r.value] : r?.state === 'between' ? [r.least] : [],
  );
  return lineConductors.every((line) => {
    const currents = outletsBelow(board).flatMap((o) =>
      o.kind === 'load' && inFullAtOnce.includes(o.purpose) && o.lines.includes(line)
        ? [o.current.state === 'known' ? o.current.value : o.current.state === 'between' ? o.current.most : 0]
        : [],
    );
    const [one = 0, two = 0] = currents.sort((a, b) => b - a);
    return one + two <= Math.min(...ratings);
  });
}

const obstacles = ({ overall: { failed, undetermined } }: OptionPlan): number => failed.length + undetermined.length;

/** Whether an option by half hours is better than by an estimate: its verdict, or what is told the operator and what stands in the way. */
function lifts(measured: OptionPlan, estimated: OptionPlan): boolean {
  const better = verdictRank[estimated.overall.verdict] - verdictRank[measured.overall.verdict];
  if (better !== 0) return better > 0;
  const fewer = obstacles(estimated) - obstacles(measured);
  return fewer > 0 || (fewer === 0 && toldOnly(measured) && !toldOnly(estimated));
}

/** The ways to answer a survey by name; of a limiter the one for the notice first, then the one at the least rating. */
function optionsOf(survey: Survey, options: PlanOptions): ReadonlyMap<BaseOptionId, readonly OptionSurvey[]> {
  const { code, demand, network, words } = options;
  const wantedIn = withAllWanted(survey);
  const sheet = () => silent(code.attested?.tables);
  const asWanted = adequacyOf(demand, wantedIn, demandOptions(survey), sheet());
  const feeders = feedersOf(survey).map((id) => feederDemandOf(demand, wantedIn, id, demandOptions(survey), sheet()));
  const rules = { estimated: isEstimated(demand, asWanted) };
  // elsewhere vehicles stand there while the rest is busy: less than is wanted is no way to stay with the notice
  const noticeUpTo = survey.about.premises === 'dwelling' ? network.noticeUpTo : undefined;
  const found = new Map<BaseOptionId, OptionSurvey[]>();
  for (const by of noticeUpTo === undefined ? [rules] : [{ ...rules, noticeUpTo }, rules])
    for (const way of optionSurveys(survey, asWanted, feeders, words, by)) {
      const before = found.get(way.id);
      if (!before) found.set(way.id, [way]);
      else if (way.id === 'with-limiter') before.push(way);
    }
  return found;
}

/** The first of several ways that can be worked out; a later one where by it every vehicle is ready in time, or it passes, and by the first not. */
function bestOf(
  ways: readonly OptionSurvey[],
  work: (way: OptionSurvey) => WorkedPlan | undefined,
): WorkedPlan | undefined {
  let best: WorkedPlan | undefined;
  for (const way of ways) {
    if (best && passing(best.plan) && readyInTime(best.plan)) return best;
    const next = work(way);
    if (!best) best = next;
    else if (next) {
      const better = (passing(next.plan) && !passing(best.plan)) || (readyInTime(next.plan) && !readyInTime(best.plan));
      if (better) best = next;
    }
  }
  return best;
}

/**
 * Plans the charge points of a survey: several complete options, ranked.
 * @param surveyed the survey, as `readSurvey` gives it
 * @param options what applies where the premises stand, such as `inGreatBritain` gives; rules of the firm, ranking and
 * what the notification needs
 * @returns plain, JSON-ready data; an unknown fact ends in `not-determined`
 * @throws CalculationError `invalid-input` where the survey names another code, edition or country than is handed in, or
 * with the path of each problem of an installation that cannot be or is not covered
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { inGreatBritain } from 'ohmwright/great-britain';
 * import { readSurvey } from 'ohmwright/io';
 * import { planOf } from 'ohmwright/site';
 *
 * planOf(readSurvey(survey), inGreatBritain('2018+A2:2022')).options[0]?.title; // => 'As wanted, with a load limiter that holds the charge points back'
 * ```
 */
export function planOf(surveyed: Survey, options: PlanOptions): Plan {
  if (!isRecord(options) || !isRecord(options.code) || !isRecord(options.demand) || !isRecord(options.network))
    throw invalidInput('the options of a plan', [{ path: [], message: 'name no code, demand and network rules' }]);
  refuseOthers(surveyed, options);
  const { code, words, assumptions } = options;
  // what an option leaves open anew, as a new supply does, is assumed like the rest
  const assumed = (open: Survey) => (assumptions ? assumeSurvey(open, assumptions) : open);
  const { survey, byHalfHours } = withHalfHours(assumed(withTransformer(surveyed)));
  const ranking = options.ranking ?? simplestFirst;
  const wantedIn = withAllWanted(survey);
  const waysOf = (of: Survey): ReadonlyMap<BaseOptionId, readonly OptionSurvey[]> => optionsOf(of, options);
  const ofEstimate = waysOf(survey);
  const ofHalfHours = byHalfHours && waysOf(byHalfHours);
  const discarded: DiscardedOption[] = [];
  const worked: WorkedPlan[] = [];
  for (const [id, ways] of ofEstimate) {
    const work = (way: OptionSurvey): WorkedPlan | undefined => {
      if ('discarded' in way) return undefined;
      // an estimate stands where it was not set aside for half hours
      const open = withHalfHours(assumed(way.survey));
      const half = way.survey.demand?.governing === HALF_HOURS ? open.byHalfHours : undefined;
      if (half && !shortPeaksFit(half)) return undefined;
      const of = half ?? open.survey;
      return { ...optionPlan(of, way, options), survey: of };
    };
    const [first] = ways;
    const found = bestOf(ways, work);
    // where an estimate stands in the way, or keeps the operator from being only told, half hours may do
    const measured =
      found && passing(found.plan) && toldOnly(found.plan) ? undefined : bestOf(ofHalfHours?.get(id) ?? [], work);
    const kept = !measured || (found && !lifts(measured.plan, found.plan)) ? found : measured;
    if (kept) worked.push(kept);
    else if (first && 'discarded' in first)
      discarded.push({
        id,
        title: first.title,
        because: first.discarded,
        ...(first.subjectTo ? { subjectTo: true } : {}),
      });
  }
  const sought = options.remedies ?? rangesOf(wantedIn).length === 0;
  const sheetsOfRemedied = new Map<OptionPlan, SheetDocument>();
  const found = seekRemedies(sought ? worked : [], {
    survey,
    code,
    words,
    rules: options.rules ?? commonPractice,
    budget: survey.wanted.length <= FEW ? 12 : 4,
    assess: ({ plan: { id, title, changes } }, changed, remedies) => {
      const put = remedies.map((r) => r.what);
      const option = {
        id: `${id}+${remedies.map((r) => r.id).join('+')}` as OptionId,
        title: `${title}; ${put.join('; ')}`,
        changes: [...changes, ...put],
        remedies,
      };
      const { plan, sheet } = optionPlan(assumed(changed), option, { ...options, lengths: false }, true);
      sheetsOfRemedied.set(plan, sheet);
      return plan;
    },
  });
  for (const { plan, survey: changed } of found.options)
    worked.push({ survey: changed, plan, sheet: sheetsOfRemedied.get(plan) as SheetDocument });
  worked.sort((a, b) => ranking.compare(a.plan, b.plan));
  const [best] = worked;
  if (best?.plan.overall.verdict === 'conditional' && options.limits !== false)
    worked[0] = {
      ...best,
      plan: { ...best.plan, conditions: withLimits(code, best.survey, options.rules ?? commonPractice, best.plan) },
    };
  const keep = options.sheets ?? 'first';
  return {
    format: 'plan/1',
    about: survey.about,
    code: {
      name: code.name,
      edition: code.edition,
      standing: code.standing,
      onSurveyDay: code.inForce(survey.about.date),
    },
    words,
    ...(assumptions ? { assumptions } : {}),
    options: worked.map(({ plan, sheet }, i) =>
      keep === 'all' || (keep === 'first' && i === 0) ? { ...plan, sheet } : plan,
    ),
    rankedBy: ranking.words,
    discarded,
    remedies: found.offers,
    questions: sanityQuestions(survey),
    observations: observationsOf(options, survey, feedersOf(survey)),
  };
}

const remedyHours = (remedies: readonly AppliedRemedy[] = []) => remedies.map((r) => r.hours);

function optionPlan(
  survey: Survey,
  option: Pick<OptionPlan, 'id' | 'title' | 'changes' | 'remedies'>,
  options: PlanOptions,
  passingOnly = false,
) {
  const sheet = recorder(`${survey.about.title}: ${option.title}`, options.code.attested?.tables);
  const { code, demand, network, rules = commonPractice } = options;
  const wantedIn = withAllWanted(survey);
  const ofSupply = sheet.part('Supply');
  const changed = survey.work.supplyChange;
  const notification = notificationOf(
    demand,
    network,
    wantedIn,
    { ...options.notification, ...demandOptions(survey), ...(changed && { supplyChange: supplyChangeWords[changed] }) },
    sheet.part('Network operator'),
  );
  // many assessments each: for few points, and not where every one runs over ranges
  const lengths = (options.lengths ?? survey.wanted.length <= FEW) && rangesOf(wantedIn).length === 0;
  const inOption = { ...options, survey, installation: wantedIn, rules, lengths, passingOnly, sheet };
  const alike = alikeIn(survey, wantedIn);
  const points = alike.map(([first, ...others]) => pointPlan(inOption, first as WantedPoint, others));
  const decided = new Map(
    alike.flatMap((all, i) =>
      all.map(
        (w, k) => [w, k === 0 ? (points[i] as PointPlan).run : decidedAlike(w.run, points[i] as PointPlan)] as const,
      ),
    ),
  );
  const built = withAllWanted({
    ...survey,
    wanted: survey.wanted.map((w) => ({ ...w, run: decided.get(w) ?? w.run })),
  });
  const { work } = survey;
  const wanted = survey.wanted.map((w) => w.run.id);
  const around = judgedAround(
    { ...options, rules },
    survey,
    { installation: built, work, wanted },
    notification,
    sheet,
    ofSupply,
  );
  const { supply, measure, control, feeders } = around;
  const feedersEach = eachFeeder(feeders);
  const night = nightOf(
    survey,
    built,
    supply,
    feedersEach.map((f) => f.demand),
  );
  const stages = stagesOf(
    demand,
    survey,
    built,
    feedersEach.map((f) => f.demand),
  );
  const results: readonly CheckResult[] = [
    ...around.results,
    ...points.flatMap((p) => [...p.cableResults, ...p.assessment.results]),
  ];
  const told = [...results, ...notification.decision.results].flatMap((r) =>
    r.caution && r.verdict !== 'not-required' ? [r.caution] : [],
  );
  const written = writeSheet(sheet);
  const plan: OptionPlan = {
    ...option,
    installation: built,
    work,
    supply,
    ...(measure.length > 0 ? { measure } : {}),
    control,
    notification,
    feeders,
    ...(stages.length > 0 ? { stages } : {}),
    points,
    ...(night ? { night } : {}),
    overall: overall(results),
    conditions: toConfirm(built, results, options.assumptions),
    unknown: unknownFacts([...new Set([...results, ...notification.decision.results])]),
    beforeWork: beforeWorkOf(work),
    hours: inAll([
      ...[...workOf(points), ...feedersEach].flatMap((p) => p.hours ?? []),
      ...remedyHours(option.remedies),
    ]),
    cautions: [
      ...new Set([planCaution, ...supply.demand.cautions, ...notification.decision.cautions, ...told]),
      ...basisCautions(written),
      ...(code.attested?.remarks ?? []),
    ],
  };
  return { plan, sheet: written, survey };
}

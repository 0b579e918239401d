import { type CheckResult, isMissing, known, overall, type Recorder, recorder, writeSheet } from '../core/index.js';
import {
  adequacyOf,
  type DemandOptions,
  feederDemandOf,
  mountingResults,
  type NotificationOptions,
  notificationOf,
  type Premises,
} from '../demand/index.js';
import { assess, circuitCase, type Design, design, rangesOf, type SearchOrder, testSheet } from '../design/index.js';
import { type ChargePoint, type Installation, pathsOf, pathTo, type Run, withRun } from '../installation/index.js';
import { bs7671 } from '../standards/bs7671/code.js';
import { earthingOptions } from '../standards/bs7671/earthing-options.js';
import { testPlan } from '../standards/bs7671/test-plan.js';
import type { WiringCode } from '../standards/wiring-code.js';
import { type Amperes, celsius, millimetres } from '../units/index.js';
import { chargeTimeOf } from './charge-time.js';
import { feederHoursOf, hoursOf } from './hours.js';
import { decidedRun, withAllWanted } from './installed.js';
import { optionSurveys } from './option-survey.js';
import { timeCurrentOf, voltageAlongOf } from './picture-data.js';
import type { DiscardedOption, FeederPlan, OptionId, OptionPlan, Plan, PointPlan } from './plan.js';
import { feederQuantitiesOf, quantitiesOf } from './quantities.js';
import type { Survey, WantedPoint } from './survey.js';
import { unknownFacts } from './unknown-facts.js';
import { commonPractice, type WorkRules } from './work-rules.js';

/** How options are ranked. */
export interface Ranking {
  /** The rule, in words. */
  readonly words: string;
  /** Below zero when the first goes before the second. */
  compare(a: OptionPlan, b: OptionPlan): number;
}

/** What a plan rests on beside the survey. */
export interface PlanOptions {
  /** Rules for quantities and hours; common practice when absent. */
  readonly rules?: WorkRules;
  /** How options are ranked; `simplestFirst` when absent. */
  readonly ranking?: Ranking;
  /** Which options keep their calculation sheet; the first when absent. */
  readonly sheets?: 'first' | 'all' | 'none';
  /** Whether permitted lengths of the route are worked out, which takes many assessments; for up to three points when absent. */
  readonly lengths?: boolean;
  /** What the notification needs and the survey does not hold, such as the day of completion. */
  readonly notification?: Pick<NotificationOptions, 'completed' | 'programme' | 'particulars'>;
}

/** What is said with every plan. */
export const planCaution =
  'This is a calculation from a survey, not an installation. It has to be checked on site and carried out, tested and certified by competent persons, to the edition in force, the network operator’s conditions and local rules.';

const verdictRank = { pass: 0, 'not-determined': 1, fail: 2 } as const;
const effort: Readonly<Record<OptionId, number>> = {
  'as-wanted': 0,
  'with-limiter': 1,
  'lower-setting': 2,
  'larger-supply-fuse': 3,
  'three-phase-supply': 4,
};

const toldOnly = (o: OptionPlan) =>
  o.notification.decision.route === 'notify-after' || o.notification.decision.route === 'no-duty';

/** What passes before what is open, before what fails; then what needs no consent before what does; then less change, then fewer hours. */
export const simplestFirst: Ranking = {
  words:
    'options that pass before those that are open, before those that fail; then those that the operator is only told of; then as wanted, limiter, lower setting, larger fuse, three phases; then fewer hours',
  compare: (a, b) =>
    verdictRank[a.overall.verdict] - verdictRank[b.overall.verdict] ||
    Number(!toldOnly(a)) - Number(!toldOnly(b)) ||
    effort[a.id] - effort[b.id] ||
    a.hours - b.hours,
};

/** Cables in the order in which they are preferred, in each the smallest size, with it the smallest rating. */
const preferredFirst: SearchOrder = {
  words: 'cables in the order in which they are preferred; then smaller conductor, then smaller rating of the device',
  compare: (a, b) => a.choice - b.choice || a.area - b.area || a.rating - b.rating,
};

/** The premises as the guide tables of demand name them. */
const demandPremises: Readonly<Record<Survey['about']['premises'], Premises>> = {
  dwelling: 'dwelling',
  'small-shop': 'small-shop',
  hotel: 'small-hotel',
  workplace: 'other',
  flats: 'other',
};

const demandOptions = (survey: Survey): DemandOptions => ({
  premises: demandPremises[survey.about.premises],
  ...(survey.demand?.meteredMargin === undefined ? {} : { meteredMargin: survey.demand.meteredMargin }),
  ...(survey.demand?.governing === undefined ? {} : { governing: survey.demand.governing }),
});

/** Edition of the initial tests that goes with an edition of the code. */
const testEdition = (edition: string) => (/A[2-9]/.test(edition) ? '2018+A2' : '2018');

/**
 * Plans the charge points of a survey: several complete options, ranked.
 * @param survey the survey, as `readSurvey` gives it
 * @param options rules, ranking and what the notification needs
 * @returns plain, JSON-ready data; an unknown fact ends in `not-determined`
 * @throws CalculationError `unknown-definition` for an edition that is not entered
 */
export function planOf(survey: Survey, options: PlanOptions = {}): Plan {
  const code = bs7671(survey.code.edition);
  const ranking = options.ranking ?? simplestFirst;
  const asWanted = adequacyOf(withAllWanted(survey), demandOptions(survey));
  const feeders = feedersOf(survey).map((id) => feederDemandOf(withAllWanted(survey), id, demandOptions(survey)));
  const discarded: DiscardedOption[] = [];
  const worked: { readonly plan: OptionPlan; readonly sheet: Recorder }[] = [];
  for (const option of optionSurveys(survey, asWanted, feeders)) {
    if ('discarded' in option) discarded.push({ id: option.id, title: option.title, because: option.discarded });
    else worked.push(optionPlan(code, option.survey, option, options));
  }
  worked.sort((a, b) => ranking.compare(a.plan, b.plan));
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
    options: worked.map(({ plan, sheet }, i) =>
      keep === 'all' || (keep === 'first' && i === 0) ? { ...plan, sheet: writeSheet(sheet) } : plan,
    ),
    rankedBy: ranking.words,
    discarded,
  };
}

function optionPlan(
  code: WiringCode,
  survey: Survey,
  option: { readonly id: OptionId; readonly title: string; readonly changes: readonly string[] },
  options: PlanOptions,
) {
  const sheet = recorder(`${survey.about.title}: ${option.title}`);
  const rules = options.rules ?? commonPractice;
  const wantedIn = withAllWanted(survey);
  const { country } = survey.about;
  const supply = adequacyOf(wantedIn, demandOptions(survey), sheet.part('Supply'));
  const notification = notificationOf(
    wantedIn,
    { ...options.notification, ...demandOptions(survey), country },
    sheet.part('Network operator'),
  );
  // many assessments each: for few points, and not where every one runs over ranges
  const lengths = (options.lengths ?? survey.wanted.length <= 3) && rangesOf(wantedIn).length === 0;
  const points = survey.wanted.map((w) => pointPlan(code, survey, wantedIn, w, rules, lengths, sheet));
  const outlet = survey.work.outletHeight;
  const height =
    outlet?.state === 'known'
      ? known(millimetres(outlet.value * 1000), outlet.by)
      : outlet?.state === 'unknown'
        ? outlet
        : undefined;
  const mounting = height ? mountingResults({ outlet: height }, 'general', sheet.part('Mounting')) : [];
  const built = points.reduce((i, p) => withRun(i, p.run.id, () => p.run), wantedIn);
  const feeders = feedersOf(survey).map((id) => feederPlan(code, survey, built, id, rules, sheet));
  const results: readonly CheckResult[] = [
    ...supply.results,
    ...mounting,
    ...feeders.flatMap((f) => [...f.demand.results, ...f.assessment.results]),
    ...points.flatMap((p) => p.assessment.results),
  ];
  const told = [...results, ...notification.decision.results].flatMap((r) =>
    r.caution && r.verdict !== 'not-required' ? [r.caution] : [],
  );
  const plan: OptionPlan = {
    ...option,
    installation: built,
    supply,
    notification,
    feeders,
    points,
    overall: overall(results),
    unknown: unknownFacts([...results, ...notification.decision.results]),
    hours: [...points, ...feeders].reduce((sum, p) => sum + (p.hours?.typical ?? 0), 0),
    cautions: [...new Set([planCaution, ...supply.demand.cautions, ...notification.decision.cautions, ...told])],
  };
  return { plan, sheet };
}

/** Names of the feeders on the way to the points, in the order of the tree. */
function feedersOf(survey: Survey): readonly string[] {
  const installation = withAllWanted(survey);
  const onTheWay = new Set(
    survey.wanted.flatMap((w) => pathTo(installation, w.run.id)?.feeders ?? []).map((feeder) => feeder.id),
  );
  return pathsOf(installation).flatMap(({ run }) => (onTheWay.has(run.id) ? [run.id] : []));
}

/** A feeder at the demand of what is below it: new points may ask more of it than it carries. */
function feederPlan(
  code: WiringCode,
  survey: Survey,
  installation: Installation,
  id: string,
  rules: WorkRules,
  sheet: Recorder,
): FeederPlan {
  const part = sheet.part(`Feeder ${id}`);
  const demand = feederDemandOf(installation, id, demandOptions(survey), part.part('Demand'));
  const declared: Readonly<Record<string, Amperes>> = isMissing(demand.worst)
    ? { ...survey.options.feederDemand }
    : { ...survey.options.feederDemand, [id]: demand.worst };
  const assessment = assess(code, installation, id, { ...survey.options, feederDemand: declared }, part);
  const run = pathTo(installation, id)?.run;
  return {
    run: id,
    demand,
    assessment,
    ...(run?.existing === false
      ? { items: feederQuantitiesOf(run, rules, sheet.part(`Quantities of ${id}`)), hours: feederHoursOf(run, rules) }
      : {}),
    overall: overall([...demand.results, ...assessment.results]),
  };
}

/**
 * The run that a design chose. Where no candidate remains: the first that meets everything but what the largest still
 * fails, so that the report shows the real obstacle and not a cable that is too small besides.
 */
function chosenRun(wanted: WantedPoint, found: Design): Run {
  const lasting = found.passedOver.at(-1)?.check.check;
  const candidate = found.chosen ?? found.passedOver.find((p) => p.check.check === lasting)?.candidate;
  return candidate ? decidedRun(wanted, candidate.cable, candidate.area, candidate.rating) : wanted.run;
}

const isWanted = (survey: Survey, id: string) => survey.wanted.some((w) => w.run.feeds.some((o) => o.id === id));

function pointPlan(
  code: WiringCode,
  survey: Survey,
  installation: Installation,
  wanted: WantedPoint,
  rules: WorkRules,
  lengths: boolean,
  sheet: Recorder,
): PointPlan {
  // a device rated below the setting of the point is no candidate; an open setting leaves all of them
  const setting = wanted.run.feeds.find((o): o is ChargePoint => o.kind === 'charge-point')?.setting;
  const load = setting?.state === 'known' ? setting.value : setting?.state === 'between' ? setting.most : 0;
  const choices = { cables: wanted.cables, ratings: code.ratingsFor(wanted.run).filter((r) => r >= load) };
  const found = design(code, installation, wanted.run.id, choices, {
    ...survey.options,
    order: preferredFirst,
    lengths,
  });
  const run = chosenRun(wanted, found);
  const built = withRun(installation, run.id, () => run);
  const assessment = assess(code, built, run.id, survey.options, sheet.part(run.id));
  const point = run.feeds.find((o): o is ChargePoint => o.kind === 'charge-point') as ChargePoint;
  const { supply } = installation;
  const tests = testSheet({
    circuit: circuitCase(built, run.id, survey.options),
    findings: assessment.findings,
    plan: testPlan(testEdition(code.edition)),
    standing: code.standing,
    testTemperature: survey.options.testTemperature ?? celsius(20),
    electronics: 'disconnected',
  });
  const path = pathTo(built, run.id);
  const needs = {
    electrode: survey.work.electrode === true || (point.earthing === 'tt-island' && supply.electrode === undefined),
    surgeProtection:
      survey.wanted.find((w) => w.from === wanted.from) === wanted &&
      assessment.results.some((r) => r.check.startsWith('surge') && r.verdict === 'fail'),
    // each control is counted with the first point that it holds
    loadControl: (path?.boards ?? []).filter((b) => b.control?.controls.find((id) => isWanted(survey, id)) === point.id)
      .length,
    first: wanted === survey.wanted[0],
  };
  const timeCurrent = timeCurrentOf(run, supply, assessment.findings);
  const voltageAlong = voltageAlongOf(run, supply, assessment.findings);
  return {
    point: point.id,
    run,
    design: found,
    assessment,
    earthing: earthingOptions({
      supply,
      point,
      ...(survey.options.loadStates ? { loadStates: survey.options.loadStates } : {}),
      ...(survey.options.pointNeverAlone ? { pointNeverAlone: survey.options.pointNeverAlone } : {}),
    }),
    tests,
    items: quantitiesOf(run, survey.work, rules, needs, sheet.part(`Quantities of ${point.id}`)),
    hours: hoursOf(run, survey.work, rules, needs),
    ...(wanted.vehicle
      ? {
          chargeTime: chargeTimeOf(
            point,
            wanted.vehicle,
            supply.nominalVoltage,
            sheet.part(`Time to charge at ${point.id}`),
          ),
        }
      : {}),
    ...(timeCurrent ? { timeCurrent } : {}),
    ...(voltageAlong ? { voltageAlong } : {}),
  };
}

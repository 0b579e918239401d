import { type SheetDocument, silent } from '../core/index.js';
import { feederDemandOf } from '../demand/feeder.js';
import { adequacyOf } from '../demand/index.js';
import { rangesOf } from '../design/index.js';
import { isRecord } from '../installation/index.js';
import { invalidInput } from '../units/index.js';
import { FEW } from './alike.js';
import type { Applicable } from './applicable.js';
import { asAssumed } from './assumed-survey.js';
import { withLimits } from './conditions.js';
import { demandOptions } from './demand-options.js';
import { feedersOf } from './feeder-plan.js';
import { HALF_HOURS, shortPeaksFit, withHalfHours } from './half-hours.js';
import { withAllWanted } from './installed.js';
import { isEstimated } from './measure.js';
import { observationsOf } from './observations.js';
import type { BaseOptionId, OptionId } from './option-id.js';
import { type OptionSurvey, optionSurveys } from './option-survey.js';
import type { DiscardedOption, OptionPlan, Plan } from './plan.js';
import type { PlanOptions } from './plan-options.js';
import { lifts, passing, readyInTime, simplestFirst, toldOnly } from './ranking.js';
import { seekRemedies } from './remedies/search.js';
import { sanityQuestions } from './sanity.js';
import type { Survey } from './survey.js';
import { surveyProblems } from './survey-problems.js';
import { withTransformer } from './transformer.js';
import { fairOptionPlan } from './withheld.js';
import { commonPractice } from './work-rules.js';

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

interface WorkedPlan {
  readonly survey: Survey;
  readonly plan: OptionPlan;
  readonly sheet: () => SheetDocument;
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
  const assumed = (open: Survey) => asAssumed(open, assumptions);
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
      return fairOptionPlan(of, way, options);
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
  const sheetsOfRemedied = new Map<OptionPlan, () => SheetDocument>();
  const found = seekRemedies(sought ? worked : [], {
    survey,
    code,
    words,
    rules: options.rules ?? commonPractice,
    budget: survey.wanted.length <= FEW ? 12 : 4,
    ranking,
    assess: ({ plan: { id, title, changes } }, changed, remedies) => {
      const put = remedies.map((r) => r.what);
      const option = {
        id: `${id}+${remedies.map((r) => r.id).join('+')}` as OptionId,
        title: `${title}; ${put.join('; ')}`,
        changes: [...changes, ...put],
        remedies,
      };
      const { plan, sheet } = fairOptionPlan(assumed(changed), option, { ...options, lengths: false }, true);
      sheetsOfRemedied.set(plan, sheet);
      return plan;
    },
  });
  for (const { plan, survey: changed } of found.options)
    worked.push({ survey: changed, plan, sheet: sheetsOfRemedied.get(plan) as () => SheetDocument });
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
    // what was left until it is asked for is worked out here
    options: worked.map(({ plan, sheet }, i) => ({
      ...plan,
      ...(keep === 'all' || (keep === 'first' && i === 0) ? { sheet: sheet() } : {}),
    })),
    rankedBy: ranking.words,
    discarded,
    remedies: found.offers,
    questions: sanityQuestions(survey),
    observations: observationsOf(options, survey, feedersOf(survey)),
  };
}

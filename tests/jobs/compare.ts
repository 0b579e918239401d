import { inGreatBritain, ordinaryHome } from '../../src/great-britain.js';
import { type Cable, hasCode } from '../../src/index.js';
import { readSurvey } from '../../src/io/index.js';
import { nextQuestions, type OptionPlan, type Plan, type PointPlan, type Survey } from '../../src/site/index.js';
import { wholePlanInBritain } from '../support/plan.js';
import { surveyOf } from './base.js';
import type { Decision, Job } from './jobs.js';

/** Why a job is not planned at all. */
interface Refused {
  readonly refused: string;
}
const surveyedOf = (job: Job): Survey => readSurvey(surveyOf(job.title, job.survey));

/** The plan of a job, or why it is refused. */
export function plannedJob(job: Job): Plan | Refused {
  try {
    return wholePlanInBritain(surveyedOf(job), {
      sheets: 'none',
      lengths: false,
      // what photographs do not show is taken from what is customary in an ordinary home
      ...(job.survey.base === 'by photograph' ? { assumptions: ordinaryHome } : {}),
    });
  } catch (error) {
    if (!hasCode(error, 'not-covered')) throw error;
    return { refused: error.message };
  }
}

const kindOf = ({ construction, cores }: Cable): string =>
  construction === 'flat-twin-and-earth' ? 'twin and earth' : `${construction} ${cores}-core`;
const knownOr = <T>(fact: { readonly state: string; readonly value?: T } | undefined): T | undefined =>
  fact?.state === 'known' ? fact.value : undefined;

/** The measure that a point is planned with: the one stated, or its own device, unless the code refuses it. */
function earthingOf({ run, earthing }: PointPlan): string {
  const [point] = run.feeds;
  if (point?.kind !== 'charge-point') throw new Error(`${run.id} feeds no charge point`);
  if (earthing.length === 0) return 'supply-earth';
  const measure = point.earthing ?? knownOr(point.openPenDevice) ?? 'none';
  return earthing.find((e) => e.arrangement === measure)?.possible === 'fail' ? 'none' : measure;
}

/** How a plan says what the trade would put right: a way of answering the survey, a remedy, or a measurement first. */
const offersOf: Readonly<Record<string, readonly string[]>> = {
  limiter: ['with-limiter', 'limiter-for-notice', 'larger-fuse-and-limiter'],
  'larger-fuse': ['larger-supply-fuse', 'larger-fuse-and-limiter'],
  'lower-setting': ['lower-setting'],
  'measure-demand': ['measure'],
  'main-bonding': ['main-bonding'],
  'earthing-conductor': ['earthing-conductor'],
  tails: ['tails'],
  unloop: ['own-service'],
  electrode: ['electrode'],
  'residual-selective': ['residual-selective'],
  'main-switch': ['main-switch'],
  'small-board': ['second-board'],
  'residual-type': ['residual-type-a', 'residual-type-b', 'direct-current-detection'],
  'own-residual-device': ['own-residual-device', 'ahead-of-residual-device'],
  'point-with-open-pen-detection': ['charge-point-earthing', 'mode-3-point'],
  'tt-earthing': ['charge-point-earthing'],
  'bidirectional-device': ['both-ways'],
  'feeder-replacement': ['larger-feeder', 'own-circuit'],
  'cut-out': ['sound-cut-out'],
  'remove-load': ['way-given-up'],
  'supply-earth': ['charge-point-earthing'],
  'mode-3-point': ['mode-3-point'],
  'new-cable': ['new-cable'],
  'limiter-fallback': ['limiter-that-pauses'],
  isolator: ['isolator'],
  route: ['clear-of-insulation'],
  // sources on a board of their own do the same
  'smaller-fuse-ahead': ['fuse-ahead', 'own-board-for-sources'],
  'outbuilding-bonding': ['outbuilding-bonding'],
  'double-pole': ['double-pole'],
  'other-line': ['other-line'],
};

/** The way that an option answers the survey in, whatever is put right beside it. */
const wayOf = ({ id }: OptionPlan): string => id.split('+')[0] as string;

/** Keys of what was decided to be put right and the plan does not offer. */
function notOffered(remedies: Decision['remedies'], plan: Plan): string {
  const offered = new Set([
    ...plan.options.map(wayOf),
    ...plan.options.flatMap((o) => [...(o.remedies ?? []).map((r) => r.id), ...(o.measure ? ['measure'] : [])]),
    ...plan.remedies.flatMap((offer) => offer.remedies.map((r) => r.id)),
    ...plan.options.flatMap((o) => o.beforeWork.flatMap((b) => (b.id === 'isolator' ? [b.id] : []))),
    // one that lies there and is passed over for another
    ...plan.options.flatMap((o) => o.points.flatMap((p) => (p.cableKept || !p.design.chosen ? [] : ['new-cable']))),
  ]);
  const missing = Object.keys(remedies).filter((key) => !offersOf[key]?.some((id) => offered.has(id)));
  return missing.length === 0 ? 'all offered' : `not offered: ${missing.join(', ')}`;
}

/** How a plan names what the trade confirms on site: facts that it leaves open or rests on. */
const factsOf: Readonly<Record<string, RegExp>> = {
  'external-impedance': /^external earth fault loop impedance/,
  'prospective-current': /^prospective fault current/,
  'supply-neutral': /neutral of the supply/,
  'standing-leakage': /^standing/,
  looped: /looped/,
  'metered-demand': /^demand$|^half-hour-readings$/,
  'building-control': /^building-rules$/,
  'limiter-fallback': /^limiter-fallback$/,
  'cut-out-rating': /cut-out fuse/,
  'cut-out-sound': /^whether the cut-out/,
  'electrode-resistance': /electrode/,
  'distance-to-metal': /^distance to metal/,
  'open-pen-device': /^earthing arrangement of the charge point|^open-PEN/,
  'board-rating': /^boardRating|^rated current of the assembly/,
  'owner-consent': /^owner-consent$/,
  'operator-consent': /^generation-permission$/,
  system: /^earthing system of the supply/,
  bonding: /bond|^area$/,
};

/** Keys of what was decided to be confirmed and the plan does not ask for. */
function notAsked(decidedOn: Decision['conditions'], option: OptionPlan, plan: Plan): string {
  const { unknown, conditions, measure, beforeWork, notification } = option;
  const measured = measure ? ['demand'] : [];
  // what the operator puts right is seen again
  const seenAgain = plan.remedies.some((o) => o.remedies.some((r) => r.id === 'sound-cut-out'));
  const asked = [
    ...unknown.map((u) => u.fact),
    ...conditions.flatMap((c) => c.facts),
    ...measured,
    ...beforeWork.map((b) => b.id),
    ...notification.decision.duties.map((d) => d.id),
    ...(seenAgain ? ['whether the cut-out is sound'] : []),
  ];
  const missing = Object.keys(decidedOn).filter((key) => !asked.some((fact) => factsOf[key]?.test(fact)));
  return missing.length === 0 ? 'all asked' : `not asked: ${missing.join(', ')}`;
}

/** Questions by the place of the fact in the installation. */
const placeOf: Readonly<Record<string, RegExp>> = {
  'cut-out-rating': /^supply\.cutOut\.rating$/,
  'cut-out-sound': /^supply\.cutOutSound$/,
  'board-rating': /\.rating$/,
  'distance-to-metal': /electrode\.separation$/,
  'electrode-resistance': /electrode\.resistance$/,
  'external-impedance': /^supply\.externalImpedance$/,
  looped: /^supply\.looped$/,
  'metered-demand': /^supply\.meteredDemand/,
  system: /^supply\.system$/,
  bonding: /bonding/,
  'standing-leakage': /standingLeakage$/,
  'open-pen-device': /openPenDevice$/,
};

/**
 * The fact that is asked next where something is open: the demand before anything is sized by it; then what decides most;
 * of what rests on assumptions alone the measurement on the day; and whose consent is needed.
 */
function nextOf(job: Job, option: OptionPlan): string {
  const { unknown, overall, measure, beforeWork } = option;
  const consent = beforeWork.find((b) => b.id === 'owner-consent' && job.survey.work?.tenure !== undefined);
  if (overall.verdict === 'pass') return consent ? consent.id : 'none';
  // a fact that nobody knows stands in the way of what is measured as well, but for readings of the day of the work
  const onTheDay = /^measured demand|electrode|impedance|prospective/;
  const known = !unknown.some((u) => u.decides && !onTheDay.test(u.fact));
  if (known && (measure || beforeWork.some((b) => b.id === 'half-hour-readings'))) return 'metered-demand';
  const of = (places: Readonly<Record<string, RegExp>>, what: string) =>
    Object.keys(places).find((key) => places[key]?.test(what)) ?? what;
  if (overall.verdict === 'conditional' && consent) return consent.id;
  const [question] = nextQuestions(surveyedOf(job), option, inGreatBritain(job.survey.edition ?? '2018+A2:2022'), 1);
  if (question) return of(placeOf, question.path.join('.'));
  return of(factsOf, unknown.find((u) => u.decides)?.fact ?? 'none');
}

/** What the plan says where the decision says something, by what is compared. */
function told(job: Job, plan: Plan | Refused): Readonly<Record<string, string>> {
  if ('refused' in plan) return { plan: `refused, ${plan.refused}` };
  const { decision } = job;
  const [first] = plan.options;
  if (!first) throw new Error(`${job.name} has no plan`);
  const option: OptionPlan =
    plan.options.find((o) => o.id === decision.option) ?? plan.options.find((o) => !o.remedies) ?? first;
  const { points } = option;
  // a measure that is put right is the one that is decided
  const putRight = plan.options.find((o) => wayOf(o) === wayOf(option)) ?? option;
  const earthed = [option, putRight].map((o) => [...new Set(o.points.map(earthingOf))].join(', '));
  const each = (of: (p: PointPlan) => string) => [...new Set(points.map(of))].join(', ');
  return {
    option: wayOf(first),
    verdict: option.overall.verdict,
    remedies: notOffered(decision.remedies, plan),
    conditions: notAsked(decision.conditions, option, plan),
    next: nextOf(job, option),
    cable: each(({ run }) => kindOf(run.cable)),
    area: each(({ run }) => `${knownOr(run.cable.area) ?? '?'} mm²`),
    rating: each(({ run }) => `${knownOr(run.device.rating) ?? '?'} A`),
    curve: each(({ run }) => {
      const kind = knownOr(run.device.kind);
      return kind && 'type' in kind ? kind.type : '?';
    }),
    earthing: earthed.includes(decision.earthing ?? '') ? (decision.earthing as string) : (earthed[0] as string),
    // the decision is of the job as confirmed; what was assumed decides no route before
    operator: option.notification.decision.onceConfirmed ?? option.notification.decision.route,
  };
}

/** What is compared and says something else, with what the decision accepts and what the plan says. */
export function differences(
  job: Job,
  plan: Plan | Refused,
): readonly (readonly [what: string, decided: string, told: string])[] {
  const says = told(job, plan);
  if (says.plan) return [['plan', 'planned', says.plan]];
  return Object.entries(decided(job)).flatMap(([what, accepted]) => {
    const said = says[what] as string;
    return accepted.includes(said) ? [] : [[what, accepted[0] as string, said] as const];
  });
}

/** What was decided, by what is compared: every value that is accepted. */
function decided({ decision }: Job): Readonly<Record<string, readonly string[]>> {
  const { option, verdict, cable, device, earthing, operator, next } = decision;
  const all: Readonly<Record<string, readonly string[] | undefined>> = {
    option: option === undefined ? undefined : [option],
    verdict: [verdict],
    remedies: ['all offered'],
    conditions: ['all asked'],
    next: Object.keys(next).length > 0 ? Object.keys(next) : undefined,
    cable: cable && [cable.kind],
    area: cable?.area,
    rating: device?.rating,
    curve: device && [device.curve],
    earthing: earthing === undefined ? undefined : [earthing],
    operator: operator === undefined ? undefined : [operator],
  };
  return Object.fromEntries(Object.entries(all).filter(([, v]) => v !== undefined)) as Record<
    string,
    readonly string[]
  >;
}

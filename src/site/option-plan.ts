import { LEAST_CURRENT } from '../charging/network/network.js';
import { type CheckResult, endsOf, isMissing, overall, recorder, stated, writeSheet } from '../core/index.js';
import { once } from '../core/once.js';
import { type Adequacy, notificationOf } from '../demand/index.js';
import { rangesOf } from '../design/index.js';
import { type Installation, outletsBelow } from '../installation/index.js';
import { alikeIn, FEW } from './alike.js';
import { decidedAlike, eachFeeder, workOf } from './alike-plans.js';
import { beforeWorkOf, type LimiterAsked } from './before-work.js';
import { toConfirm } from './conditions.js';
import { demandOptions } from './demand-options.js';
import { inAll } from './hours.js';
import { withAllWanted } from './installed.js';
import { judgedAround } from './judged.js';
import { isEstimated } from './measure.js';
import { nightOf } from './night.js';
import { boardsOf } from './option-survey.js';
import type { OptionPlan, PointPlan } from './plan.js';
import type { PlanOptions } from './plan-options.js';
import { pointPlan } from './point-plan.js';
import { basisCautions } from './recalled.js';
import type { AppliedRemedy } from './remedies/offer.js';
import { stagesOf } from './stages.js';
import type { Survey, WantedPoint } from './survey.js';
import { unknownFacts } from './unknown-facts.js';
import { commonPractice } from './work-rules.js';

/** What is said with every plan. */
const planCaution =
  'This is a calculation from a survey, not an installation. It has to be checked on site and carried out, tested and certified by competent persons, to the edition in force, the network operator’s conditions and local rules.';

const supplyChangeWords = {
  'larger-fuse': 'the operator is asked for a larger fuse',
  'three-phase': 'the operator is asked for a three-phase supply',
  'own-service': 'the operator is asked for a service of its own',
  'sound-cut-out': 'the operator puts the cut-out right',
} as const;
const remedyHours = (remedies: readonly AppliedRemedy[] = []) => remedies.map((r) => r.hours);

/** What is to be asked about the load limiters of an option; of the one at the origin also what an estimate leaves the points. */
function limitersAsked(
  { demand: rules }: PlanOptions,
  installation: Installation,
  supply: Adequacy,
): readonly LimiterAsked[] {
  const { demand } = supply;
  const estimated = isEstimated(rules, supply);
  return boardsOf(installation.board).flatMap(({ id, control }) => {
    if (!control) return [];
    const limit = id === installation.board.id && estimated ? endsOf(control.limit)?.[0] : undefined;
    const rooms = demand.governing.lines.flatMap(({ line, existing }) => {
      const held = outletsBelow(installation.board).filter(
        (o) => o.kind === 'charge-point' && o.lines.includes(line) && control.controls.includes(o.id),
      );
      return limit === undefined || isMissing(existing) || held.length === 0
        ? []
        : [{ left: limit - existing, least: held.length * LEAST_CURRENT }];
    });
    const [room] = rooms.sort((a, b) => a.left - a.least - (b.left - b.least));
    return [
      {
        name: control.name,
        ...(room ? { room } : {}),
        fallbackOpen: !control.fallback || 'assumed' in control.fallback,
      },
    ];
  });
}

/**
 * An option worked out whole: its circuits designed, everything beside them judged, material and hours counted.
 * @param passingOnly whether circuits are only to pass, and not to be the cheapest that do
 */
export function optionPlan(
  survey: Survey,
  option: Pick<OptionPlan, 'id' | 'title' | 'changes' | 'remedies'>,
  options: PlanOptions,
  passingOnly = false,
) {
  const sheet = recorder(`${survey.about.title}: ${option.title}`, options.code.attested?.tables);
  const { code, demand, network, words, rules = commonPractice } = options;
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
  // of many ways few are kept: what the others rest on nobody asks
  const written = once(() => writeSheet(sheet));
  const cautions = once(() => [
    ...new Set([planCaution, ...supply.demand.cautions, ...notification.decision.cautions, ...told]),
    code.notJudged,
    ...basisCautions(written()),
    ...(code.attested?.remarks ?? []),
  ]);
  const judgedBy = stated({
    governing: survey.demand?.governing,
    dropTemperature: survey.options.dropTemperature,
  });
  const plan: OptionPlan = {
    ...option,
    ...(Object.keys(judgedBy).length > 0 ? { judgedBy } : {}),
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
    beforeWork: beforeWorkOf(work, {
      kept: points.flatMap((p) => (p.cableKept || p.run.stretches.some((s) => s.existing) ? [p.run.id] : [])),
      ends: points.flatMap(({ run }) => {
        const area = endsOf(run.cable.area)?.[1];
        return area === undefined ? [] : [{ run: run.id, area }];
      }),
      limiters: limitersAsked(options, built, supply),
      buildingRules: ['dwelling', 'flats'].includes(survey.about.premises) ? words.circuitInDwelling : undefined,
    }),
    hours: inAll([
      ...[...workOf(points), ...feedersEach].flatMap((p) => p.hours ?? []),
      ...remedyHours(option.remedies),
    ]),
    get cautions() {
      return cautions();
    },
  };
  return { plan, sheet: written, survey };
}

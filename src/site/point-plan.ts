import { type CheckResult, overall, type Recorder } from '../core/index.js';
import { resultsAsSaid } from '../design/assess.js';
import {
  type Assessment,
  assess,
  type Candidate,
  circuitCase,
  type Design,
  design,
  type SearchOrder,
  testSheet,
} from '../design/index.js';
import { writeAssessed } from '../design/write-assessed.js';
import { type Cable, type ChargePoint, type Installation, pathTo, type Run, withRun } from '../installation/index.js';
import { celsius, squareMillimetres } from '../units/index.js';
import type { Applicable } from './applicable.js';
import { cablesFor, noCableResult } from './cables.js';
import { chargeTimeOf } from './charge-time.js';
import { hoursOf } from './hours.js';
import { decidedRun } from './installed.js';
import type { ItemFacts } from './item.js';
import { letThroughFirst } from './let-through-first.js';
import { timeCurrentOf, voltageAlongOf } from './picture-data.js';
import type { PointPlan } from './plan.js';
import { quantitiesOf } from './quantities.js';
import type { Survey, WantedPoint } from './survey.js';
import { settledWork } from './ways.js';
import type { WorkRules } from './work-rules.js';

/** Cables in the order in which they are preferred, in each the smallest size, with it the smallest rating. */
const preferredFirst: SearchOrder = {
  words: 'cables in the order in which they are preferred; then smaller conductor, then smaller rating of the device',
  compare: (a, b) => a.choice - b.choice || a.area - b.area || a.rating - b.rating,
};

/**
 * The run that a design chose. Where no candidate remains: of those that come furthest in the order of the checks, which
 * is the order of the work, the one with the fewest rules not met, or open, so that the report shows the real obstacle and not a
 * cable that is too small besides. Where load, device and cable could not be judged, the size stays open: the first of
 * many that nobody judged is no design.
 */
function chosenRun(
  wanted: WantedPoint,
  found: Design,
  resultsOf: (candidate: Candidate) => readonly CheckResult[],
  passingOnly: boolean,
): Run {
  const decided = ({ cable, area, rating }: Candidate) => decidedRun(wanted, cable, area, rating);
  if (found.chosen) {
    const judged = found.assessment?.aspects.find((a) => a.aspect === 'coordination')?.verdict;
    return judged === 'pass' || judged === 'conditional' ? decided(found.chosen) : wanted.run;
  }
  const last = found.passedOver.at(-1);
  if (!last) return wanted.run;
  const order = resultsOf(last.candidate).map((r) => r.check);
  const furthest = Math.max(...found.passedOver.map((p) => order.indexOf(p.check.check)));
  const furthestOn = found.passedOver.filter((p) => order.indexOf(p.check.check) === furthest);
  const [first = last] = furthestOn;
  if (passingOnly) return decided(first.candidate);
  // what stays open beside them tells those apart that fail in the same
  const failuresOf = (candidate: Candidate) => {
    const { failed, undetermined } = overall(resultsOf(candidate));
    const count = (of: typeof failed) => new Set(of.map((r) => r.check)).size;
    return count(failed) + count(undetermined) / 1000;
  };
  const least = failuresOf((furthestOn.at(-1) ?? last).candidate);
  let best: { readonly candidate: Candidate; readonly failures: number } | undefined;
  for (const { candidate } of furthestOn) {
    const failures = failuresOf(candidate);
    if (best === undefined || failures < best.failures) best = { candidate, failures };
    if (failures <= least) break;
  }
  return decided((best ?? first).candidate);
}

/** Checks that advise, and that a larger conductor cures: whoever buys takes the next size then. */
const curedBySize: readonly string[] = ['line-neutral-window-margin'];

const isAdvised = (assessment: Assessment): boolean =>
  assessment.overall.advice.some((r) => curedBySize.includes(r.check) && r.verdict === 'fail');

/** Sizes beyond the smallest that holds which are tried for advice: common practice, no source. */
const SIZES_FOR_ADVICE = 2;

/** The design; up to two sizes more of the same cable where the chosen one is advised against and that one is not. */
function advisedDesign(option: OptionCase, wanted: WantedPoint, suited: readonly Cable[]): Design {
  const { code, installation } = option;
  const first = designedFor(option, wanted, installation, suited);
  const { chosen, assessment, outcome } = first;
  if (!chosen || !assessment || outcome === 'not-determined' || !isAdvised(assessment)) return first;
  const larger = code.sizesFor({ ...wanted.run, cable: chosen.cable }).filter((size) => size.area > chosen.area);
  for (const { area } of larger.slice(0, SIZES_FOR_ADVICE)) {
    const next = designedFor(option, wanted, installation, suited, area);
    const same = next.outcome === outcome && next.chosen?.choice === chosen.choice && next.chosen.area === area;
    if (same && next.assessment && !isAdvised(next.assessment)) return next;
  }
  return first;
}

/** What an option has settled before its points are planned. */
export interface OptionCase extends Pick<Applicable, 'code' | 'words'> {
  readonly survey: Survey;
  /** The installation with all that is wanted, sizes and ratings still open. */
  readonly installation: Installation;
  readonly rules: WorkRules;
  /** Whether permitted lengths are worked out. */
  readonly lengths: boolean;
  /** Whether only what passes is of interest: where no candidate does, the largest stands for all of them. */
  readonly passingOnly?: boolean;
  readonly sheet: Recorder;
}

/** Open candidates after which a search for what passes gives a circuit up. */
const MOST_OPEN = 12;

/** Designs the circuit of one charge point among the cables that it may have. */
export function designedFor(
  {
    code,
    survey,
    lengths,
    passingOnly,
    rules: { smallestSizes, smallestRating },
  }: Pick<OptionCase, 'code' | 'survey' | 'lengths' | 'passingOnly' | 'rules'>,
  wanted: WantedPoint,
  installation: Installation,
  suited: readonly Cable[] = cablesFor(code, wanted).suited,
  atLeast = 0,
): Design {
  // a device rated below the setting of the point is no candidate; an open setting leaves all of them
  const setting = wanted.run.feeds.find((o): o is ChargePoint => o.kind === 'charge-point')?.setting;
  const load = setting?.state === 'known' ? setting.value : setting?.state === 'between' ? setting.most : 0;
  // what lies there already may want a smaller one
  const bought = wanted.cables.some((c) => c.area.state === 'known') ? 0 : smallestRating;
  const ratings = code.ratingsFor(wanted.run).filter((r) => r >= Math.max(load, bought));
  const [least = load] = ratings;
  const floor = smallestSizes.find((s) => least <= s.upTo)?.area ?? 0;
  const choices = { cables: suited, keepKnown: true, ratings, from: squareMillimetres(Math.max(floor, atLeast)) };
  return design(code, installation, wanted.run.id, choices, {
    ...survey.options,
    order: preferredFirst,
    lengths,
    ...(passingOnly ? { mostOpen: MOST_OPEN } : {}),
  });
}

/** What occurs once for a job, a board or a load control, of all that these points are first for. */
function onceWith(
  survey: Survey,
  among: readonly WantedPoint[],
  installation: Installation,
): Pick<ItemFacts, 'limiters'> & { readonly first: boolean; readonly firstOnBoard: boolean } {
  const ids = new Set(survey.wanted.flatMap((w) => w.run.feeds.map((o) => o.id)));
  const own = new Set(among.flatMap((w) => w.run.feeds.map((o) => o.id)));
  // each control is counted with one charge point that it holds, in whatever order they are listed
  const ways = new Map<string, readonly Run[]>();
  for (const w of among) {
    const path = pathTo(installation, w.run.id);
    for (const [i, b] of (path?.boards ?? []).entries())
      if (!ways.has(b.id) && own.has(b.control?.controls.filter((id) => ids.has(id)).sort()[0] ?? ''))
        ways.set(b.id, path?.feeders.slice(i) ?? []);
  }
  return {
    firstOnBoard: among.includes(survey.wanted.find((w) => w.from === among[0]?.from) as WantedPoint),
    limiters: [...ways.values()],
    first: among.includes(survey.wanted[0] as WantedPoint),
  };
}

/**
 * Plans one charge point: its circuit, earthing, tests, material, hours and time to charge.
 * @param option what the option has settled
 * @param wanted the point
 * @param others points that are alike in every fact but their names, to which all of it applies
 */
export function pointPlan(option: OptionCase, wanted: WantedPoint, others: readonly WantedPoint[] = []): PointPlan {
  const { code, words, survey, installation, rules, passingOnly, sheet } = option;
  const { suited, unsuitable } = cablesFor(code, wanted);
  const found = advisedDesign(option, wanted, suited);
  const withDecided = (run: Run) => withRun(installation, run.id, () => run);
  const resultsOf = ({ cable, area, rating }: Candidate) =>
    resultsAsSaid(code, withDecided(decidedRun(wanted, cable, area, rating)), wanted.run.id, survey.options);
  const run = chosenRun(wanted, found, resultsOf, passingOnly === true);
  const built = withDecided(run);
  const written = sheet.part(run.id);
  // a design has assessed what it chose
  const designed = found.chosen && run !== wanted.run ? found.assessment : undefined;
  if (designed) writeAssessed(code, built, designed, survey.options, written);
  const assessment = designed ?? assess(code, built, run.id, survey.options, written);
  const work = settledWork(survey, installation);
  const point = run.feeds.find((o): o is ChargePoint => o.kind === 'charge-point') as ChargePoint;
  const { supply } = installation;
  const circuit = circuitCase(built, run.id, survey.options);
  const tests = testSheet({
    code,
    circuit,
    testTemperature: survey.options.testTemperature ?? celsius(20),
    electronics: 'disconnected',
  });
  const { firstOnBoard, limiters, first } = onceWith(survey, [wanted, ...others], built);
  const failing = (check: string) => assessment.results.filter((r) => r.check === check && r.verdict === 'fail');
  const kept = suited[found.chosen?.choice ?? -1];
  const needs = {
    cableKept: kept?.area.state === 'known',
    electrode: survey.work.electrode === true || (point.earthing === 'tt-earthing' && supply.electrode === undefined),
    surgeProtection:
      firstOnBoard && assessment.results.some((r) => r.check.startsWith('surge') && r.verdict === 'fail'),
    limiters,
    bonding: failing('main-bonding-conductor').map((r) => r.because ?? 'as found'),
    earthingConductor: failing('earthing-conductor').length > 0,
    first,
  };
  const ofOthers: ItemFacts = { ...needs, surgeProtection: false, limiters: [], first: false };
  const askFirst = letThroughFirst(found);
  const timeCurrent = timeCurrentOf(code, run, supply, assessment);
  const voltageAlong = voltageAlongOf(built, run.id, assessment.figures);
  return {
    point: point.id,
    run,
    ...(needs.cableKept ? { cableKept: true } : {}),
    design: found,
    ...(askFirst ? { letThroughFirst: askFirst } : {}),
    assessment,
    ...(unsuitable.length > 0 ? { unsuitable } : {}),
    cableResults: suited.length === 0 ? noCableResult(code, unsuitable, sheet.part(`Cables for ${point.id}`)) : [],
    earthing: code.earthingOptions(circuit, point),
    tests,
    items: quantitiesOf(run, work, rules, needs, words, sheet.part(`Quantities of ${point.id}`)),
    hours: hoursOf(run, work, rules, needs),
    ...(others.length > 0
      ? {
          alike: {
            points: others.map((o) => ({ point: o.run.feeds[0]?.id ?? o.run.id, run: o.run.id })),
            items: quantitiesOf(run, work, rules, ofOthers, words, sheet.part(`Quantities of each like ${point.id}`)),
            hours: hoursOf(run, work, rules, ofOthers),
          },
        }
      : {}),
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

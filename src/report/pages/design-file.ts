import type { CheckResult } from '../../core/index.js';
import type { AspectVerdict } from '../../design/assessment.js';
import { pathTo } from '../../installation/index.js';
import type { Plan } from '../../site/index.js';
import { wholeJob } from '../../site/whole-job.js';
import { type Block, type Cell, grid, heading, list, paragraph } from '../block.js';
import { answerBlock, diagramOf, disagreements, type PlanReportOptions, toDecideBlocks } from '../plan.js';
import { checkRow, resultWords, titleOf } from '../plan-checks.js';
import {
  cableOf,
  candidates,
  circuitWords,
  earthingBlocks,
  protectionOf,
  timeCurrent,
  voltageAlong,
} from '../plan-circuits.js';
import { chargeBlocks, nightBlocks } from '../plan-night.js';
import { stageBlocks } from '../plan-stages.js';
import { ampsOf, demandFigure, demandTable } from '../plan-supply.js';
import { hoursTable } from '../plan-work.js';
import { comparisonWords, sheetBlocks } from '../sheet.js';
import type { ReportWords } from '../words/pages.js';
import { type Alike, alike, namesOf, type Page, page, worstOfEach } from './parts.js';

const judged = (r: CheckResult): boolean => r.verdict !== 'not-required';
const passes = (r: CheckResult): boolean => r.verdict === 'pass';

/** Requirements that are met in a line: how many, and the one that is nearest to its limit. */
function metLine(title: string, met: readonly CheckResult[], w: ReportWords): readonly (readonly Cell[])[] {
  const [tightest] = [...met].sort(
    (a, b) => (a.margin ?? Number.POSITIVE_INFINITY) - (b.margin ?? Number.POSITIVE_INFINITY),
  );
  if (!tightest) return [];
  const figures = tightest.margin === undefined ? '' : resultWords(tightest, w);
  return [[{ verdict: 'pass' }, title, w.long.met(met.length, figures), '']];
}

/** Results by group: what passes as one line a group, everything else in full; of several sections the worst. */
function folded(
  groups: readonly { readonly title: string; readonly results: readonly CheckResult[] }[],
  w: ReportWords,
): readonly Block[] {
  const rows = (weight: CheckResult['weight']) =>
    groups.flatMap(({ title, results }) => {
      const worst = worstOfEach(results.filter((r) => r.weight === weight && judged(r)));
      return [
        ...worst.filter((r) => !passes(r)).map((r) => checkRow(r, w)),
        ...metLine(title, worst.filter(passes), w),
      ];
    });
  const open = rows('advice').filter(([verdict]) => typeof verdict === 'object' && verdict.verdict !== 'pass');
  return [...grid(w.long.worst, w.long.head, rows('rule')), ...grid(w.long.advice, w.long.head, open)];
}

/** Results of circuits by the groups of the wiring code. */
function byAspect(aspects: readonly AspectVerdict[], results: readonly CheckResult[], w: ReportWords) {
  return aspects.map(({ aspect, checks }) => ({
    title: w.long.aspects[aspect],
    results: results.filter((r) => checks.includes(r.check)),
  }));
}

function supply({ option, words: w }: Page): readonly Block[] {
  const { demand, limiter, results, overall } = option.supply;
  const { supply: words } = w.long;
  const { governing } = demand;
  return [
    heading(2, words.title),
    { kind: 'verdict', verdict: overall.verdict, text: words.carries },
    paragraph(
      `${words.takenBy(w.said(governing.title, `method:${governing.method}`))} ${words.limiter(w.said(limiter.because, 'limiter'))}`,
    ),
    ...demandTable(option, w),
    ...demandFigure(option, w),
    ...folded(
      [
        { title: words.title, results },
        { title: words.control, results: option.control },
      ],
      w,
    ),
  ];
}

function operator({ option, words: w }: Page): readonly Block[] {
  const { decision } = option.notification;
  const { operator: words } = w.long;
  const open = worstOfEach(decision.results.filter((r) => judged(r) && !passes(r)));
  const met = worstOfEach(decision.results).filter(passes).length;
  return [
    heading(2, words.title),
    paragraph(`${words.route(w.long.label(decision.route))} ${words.entries}`),
    ...grid(
      words.decidesMet(met),
      words.head,
      open.map((r) => [words.judged[r.verdict], ...checkRow(r, w).slice(1)]),
    ),
  ];
}

type Feeder = Page['option']['feeders'][number];

/** Feeders that are built alike and end alike, together. */
function alikeFeeders({ option, words }: Page): readonly (readonly Feeder[])[] {
  const found = new Map<string, Feeder[]>();
  for (const f of option.feeders) {
    const run = pathTo(option.installation, f.run)?.run;
    const key = JSON.stringify([
      run && [cableOf(run, words), protectionOf(run, words), run.lines],
      f.assessment.aspects,
      f.overall.verdict,
    ]);
    found.set(key, [...(found.get(key) ?? []), f]);
  }
  return [...found.values()];
}

/** What feeders carry, and whether they are in order with the charge points behind them. */
function feeders(of: Page): readonly Block[] {
  const { words: w } = of;
  const { feeder: words } = w.long;
  return alikeFeeders(of).flatMap((kind) => {
    const [first] = kind as [Feeder];
    const names = kind.flatMap((f) => [f.run, ...(f.alike ?? [])]);
    const assessed = kind.flatMap((f) => f.assessment.results);
    return [
      heading(2, words.title(names.join(', '))),
      {
        kind: 'verdict',
        verdict: first.overall.verdict,
        text: names.length > 1 ? words.eachCarries : words.carries,
      } as const,
      ...list(
        kind.map(({ run, demand }) =>
          words.loaded(run, ampsOf(demand.worst, w), ampsOf(demand.existing, w), ampsOf(demand.limit, w)),
        ),
      ),
      ...folded(
        [
          { title: words.demand, results: kind.flatMap((f) => f.demand.results) },
          ...byAspect(first.assessment.aspects, assessed, w),
        ],
        w,
      ),
    ];
  });
}

/** Charge points that are alike: the circuit of the one that is nearest to a limit stands for them. */
function chapter({ points }: Alike, { option, words: w }: Page): readonly Block[] {
  const tightest = (r: readonly CheckResult[]): number =>
    Math.min(...r.map((x) => x.margin ?? Number.POSITIVE_INFINITY));
  const drop = (p: Alike['first']): number => {
    const { totalDrop } = p.assessment.figures;
    return typeof totalDrop === 'number' ? totalDrop : Number.NEGATIVE_INFINITY;
  };
  const [worst] = [...points].sort(
    (a, b) => drop(b) - drop(a) || tightest(a.assessment.results) - tightest(b.assessment.results),
  ) as [Alike['first']];
  const names = points.map((p) => p.point);
  const assessed = points.flatMap((p) => p.assessment.results);
  return [
    heading(2, namesOf(names, w)),
    { kind: 'verdict', verdict: worst.assessment.overall.verdict, text: circuitWords(worst, w) },
    ...(points.length > 1 ? [paragraph(w.long.point.figuresOf(worst.point))] : []),
    ...chargeBlocks(worst, option.night, w),
    ...folded(
      [
        { title: w.long.point.cables, results: points.flatMap((p) => p.cableResults) },
        ...byAspect(worst.assessment.aspects, assessed, w),
      ],
      w,
    ),
    ...voltageAlong(worst, w),
    ...timeCurrent(worst, w),
    ...candidates(worst, w),
    ...earthingBlocks(worst, w),
  ];
}

/**
 * The design file behind the four pages: contents, what to do next, the ways to do it, and the reasoning: what passes in a
 * line for each group, of several sections and of charge points that are alike the worst, each caution once.
 * @param plan a plan
 * @param options which option, and whether the calculation sheet is printed as well
 * @returns blocks, for any of the renderers
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { inGreatBritain } from 'ohmwright/great-britain';
 * import { readSurvey } from 'ohmwright/io';
 * import { designFile } from 'ohmwright/report';
 * import { planOf } from 'ohmwright/site';
 *
 * const plan = planOf(readSurvey(survey), { ...inGreatBritain('2018+A2:2022'), lengths: false, remedies: false });
 * designFile(plan).some((block) => block.kind === 'contents'); // => true
 * ```
 */
export function designFile(plan: Plan, options: PlanReportOptions = {}): readonly Block[] {
  return page(
    plan,
    options,
    ({ long }) => long.title,
    ({ option, words }) => answerBlock(option, words),
    (of) => {
      const { option, words: w } = of;
      const { long } = w;
      return [
        { kind: 'contents', title: long.contents },
        ...disagreements(option, w),
        ...list(worstOfEach(option.overall.failed).map((r) => long.notMet(titleOf(r, w), comparisonWords(r, w)))),
        ...toDecideBlocks(plan, option, w),
        ...supply(of),
        ...stageBlocks(option, w),
        ...operator(of),
        diagramOf(plan, option, w),
        ...feeders(of),
        ...nightBlocks(option.night, w),
        ...alike(option.points).flatMap((kind) => chapter(kind, of)),
        heading(2, long.work.hours),
        ...hoursTable(
          { ...option.hours, tasks: wholeJob(option).hours.tasks },
          w,
          long.work.hoursHead.slice(0, 2),
          () => [],
        ),
        heading(2, long.cautions),
        ...list(option.cautions.map((c) => w.said(c, 'caution'))),
        ...(options.sheet && option.sheet ? sheetBlocks(option.sheet, 2, w) : []),
      ];
    },
  );
}

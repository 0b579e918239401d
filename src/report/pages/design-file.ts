import type { CheckResult } from '../../core/index.js';
import { type AspectVerdict, aspectTitles } from '../../design/assessment.js';
import { pathTo } from '../../installation/index.js';
import { deviceWords } from '../../installation/ordering.js';
import { runsOf } from '../../site/alike-plans.js';
import type { Plan } from '../../site/index.js';
import { wholeJob } from '../../site/whole-job.js';
import { type Block, type Cell, grid, heading, list, paragraph } from '../block.js';
import { answerBlock, disagreements, type PlanReportOptions, toDecideBlocks } from '../plan.js';
import { checkRow } from '../plan-checks.js';
import { cableOf, candidates, circuitWords, earthingBlocks, timeCurrent, voltageAlong } from '../plan-circuits.js';
import { chargeBlocks, nightBlocks } from '../plan-night.js';
import { stageBlocks } from '../plan-stages.js';
import { ampsOf, conditionWords, demandFigure } from '../plan-supply.js';
import { hoursWords } from '../plan-work.js';
import { comparisonWords, sheetBlocks } from '../sheet.js';
import { oneLineDiagram } from '../svg/index.js';
import { type Alike, alike, capital, namesOf, type Page, page, worstOfEach } from './parts.js';

const HEAD = ['verdict', 'requirement', 'figures', 'where it stands'];
const judged = (r: CheckResult): boolean => r.verdict !== 'not-required';
const passes = (r: CheckResult): boolean => r.verdict === 'pass';

/** Requirements that are met in a line: how many, and the one that is nearest to its limit. */
function metLine(title: string, met: readonly CheckResult[]): readonly (readonly Cell[])[] {
  const [tightest] = [...met].sort(
    (a, b) => (a.margin ?? Number.POSITIVE_INFINITY) - (b.margin ?? Number.POSITIVE_INFINITY),
  );
  if (!tightest) return [];
  const figures = tightest.margin === undefined ? '' : `${tightest.title}: ${comparisonWords(tightest)}`;
  return [[{ verdict: 'pass' }, title, `${met.length} met${figures ? `; nearest to its limit: ${figures}` : ''}`, '']];
}

/** Results by group: what passes as one line a group, everything else in full; of several sections the worst. */
function folded(
  groups: readonly { readonly title: string; readonly results: readonly CheckResult[] }[],
): readonly Block[] {
  const rows = (weight: CheckResult['weight'], full: (r: CheckResult) => boolean) =>
    groups.flatMap(({ title, results }) => {
      const worst = worstOfEach(results.filter((r) => r.weight === weight && judged(r)));
      return [...worst.filter((r) => !passes(r) && full(r)).map(checkRow), ...metLine(title, worst.filter(passes))];
    });
  return [
    ...grid(
      'Rules; of several sections or circuits the worst',
      HEAD,
      rows('rule', () => true),
    ),
    ...grid(
      'Advice',
      HEAD,
      rows('advice', () => true).filter(([verdict]) => typeof verdict === 'object' && verdict.verdict !== 'pass'),
    ),
  ];
}

/** Results of circuits by the groups of the wiring code. */
function byAspect(aspects: readonly AspectVerdict[], results: readonly CheckResult[]) {
  return aspects.map(({ aspect, checks }) => ({
    title: aspectTitles[aspect],
    results: results.filter((r) => checks.includes(r.check)),
  }));
}

function supply({ option }: Page): readonly Block[] {
  const { demand, limiter, results, overall } = option.supply;
  const known = demand.methods.filter((m) => m.lines.length > 0);
  const without = demand.methods.length - known.length;
  return [
    heading(2, 'Supply'),
    { kind: 'verdict', verdict: overall.verdict, text: 'the supply carries house and charge points' },
    paragraph(`The demand is taken by: ${demand.governing.title}. Load limiter: ${limiter.because}.`),
    ...grid(
      `Maximum demand${without > 0 ? `; ${without} more methods do not apply here` : ''}`,
      ['method', 'line', 'without charge points', 'with charge points'],
      known.flatMap((m) => m.lines.map((l) => [m.title, l.line, ampsOf(l.existing), ampsOf(l.demand)])),
      [2, 3],
    ),
    ...demandFigure(option),
    ...folded([
      { title: 'Supply', results },
      { title: 'Load control at the origin', results: option.control },
    ]),
  ];
}

function operator({ option }: Page): readonly Block[] {
  const { decision } = option.notification;
  const open = worstOfEach(decision.results.filter((r) => judged(r) && !passes(r)));
  const met = worstOfEach(decision.results).filter(passes).length;
  return [
    heading(2, 'Network operator'),
    paragraph(`Route: ${decision.route.replaceAll('-', ' ')}. The entries of its form are on the operator’s page.`),
    ...grid(
      `What decides the route; ${met} more conditions are met`,
      ['', 'condition', 'figures', 'where it stands'],
      open.map((r) => [conditionWords[r.verdict], ...checkRow(r).slice(1)]),
    ),
  ];
}

type Feeder = Page['option']['feeders'][number];

/** Feeders that are built alike and end alike, together. */
function alikeFeeders({ option }: Page): readonly (readonly Feeder[])[] {
  const found = new Map<string, Feeder[]>();
  for (const f of option.feeders) {
    const run = pathTo(option.installation, f.run)?.run;
    const key = JSON.stringify([
      run && [cableOf(run), deviceWords(run), run.lines],
      f.assessment.aspects,
      f.overall.verdict,
    ]);
    found.set(key, [...(found.get(key) ?? []), f]);
  }
  return [...found.values()];
}

/** What feeders carry, and whether they are in order with the charge points behind them. */
function feeders(of: Page): readonly Block[] {
  return alikeFeeders(of).flatMap((kind) => {
    const [first] = kind as [Feeder];
    const names = kind.flatMap((f) => [f.run, ...(f.alike ?? [])]).join(', ');
    return [
      heading(2, /^feeder\b/i.test(names) ? capital(names) : `Feeder ${names}`),
      {
        kind: 'verdict',
        verdict: first.overall.verdict,
        text: `carries what it feeds, new charge points included${names.includes(', ') ? ': each of them' : ''}`,
      } as const,
      ...list(
        kind.map(
          ({ run, demand }) =>
            `${capital(run)}: ${ampsOf(demand.worst)} on its most loaded line, ${ampsOf(demand.existing)} of it without the charge points; it carries ${ampsOf(demand.limit)}.`,
        ),
      ),
      ...folded([
        { title: 'Demand', results: kind.flatMap((f) => f.demand.results) },
        ...byAspect(
          first.assessment.aspects,
          kind.flatMap((f) => f.assessment.results),
        ),
      ]),
    ];
  });
}

/** Charge points that are alike: the circuit of the one that is nearest to a limit stands for them. */
function chapter({ points }: Alike, { option, words }: Page): readonly Block[] {
  const tightest = (r: readonly CheckResult[]): number =>
    Math.min(...r.map((x) => x.margin ?? Number.POSITIVE_INFINITY));
  const drop = (p: Alike['first']): number => {
    const { totalDrop } = p.assessment.figures;
    return typeof totalDrop === 'number' ? totalDrop : Number.NEGATIVE_INFINITY;
  };
  const [worst] = [...points].sort(
    (a, b) => drop(b) - drop(a) || tightest(a.assessment.results) - tightest(b.assessment.results),
  ) as [Alike['first']];
  return [
    heading(
      2,
      namesOf(
        points.map((p) => p.point),
        words,
      ),
    ),
    { kind: 'verdict', verdict: worst.assessment.overall.verdict, text: circuitWords(worst) },
    ...(points.length > 1
      ? [paragraph(`Figures and pictures of ‘${worst.point}’, which has the largest voltage drop; verdicts of all.`)]
      : []),
    ...chargeBlocks(worst, option.night),
    ...folded([
      { title: 'Cables that may be used', results: points.flatMap((p) => p.cableResults) },
      ...byAspect(
        worst.assessment.aspects,
        points.flatMap((p) => p.assessment.results),
      ),
    ]),
    ...voltageAlong(worst),
    ...timeCurrent(worst),
    ...candidates(worst),
    ...earthingBlocks(worst),
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
    options.option === undefined ? {} : { option: options.option },
    () => (job) => `Design file: ${job}`,
    ({ option }) => answerBlock(option),
    (of) => {
      const { option } = of;
      return [
        { kind: 'contents', title: 'Contents' },
        ...disagreements(option),
        ...list(worstOfEach(option.overall.failed).map((r) => `Not met: ${r.title} (${comparisonWords(r)})`)),
        ...toDecideBlocks(plan, option),
        ...supply(of),
        ...stageBlocks(option),
        ...operator(of),
        {
          kind: 'figure',
          svg: oneLineDiagram(
            option.installation,
            `${plan.about.title}: one-line diagram`,
            option.points.flatMap(runsOf),
          ),
          caption: 'One-line diagram; what is new is framed.',
        },
        ...feeders(of),
        ...nightBlocks(option.night),
        ...alike(option.points).flatMap((kind) => chapter(kind, of)),
        heading(2, 'Hours'),
        ...grid(
          'Likely, and least to most. Common practice, no source; a firm replaces it with its own',
          ['task', 'hours'],
          [
            ...wholeJob(option).hours.tasks.map((t) => [t.task, t.gaps ? 'open' : hoursWords(t)]),
            [option.hours.complete ? 'in all' : 'in all, what is open left out', hoursWords(option.hours)],
          ],
          [1],
        ),
        heading(2, 'Cautions'),
        ...list(option.cautions),
        ...(options.sheet && option.sheet ? sheetBlocks(option.sheet) : []),
      ];
    },
  );
}

import { runsOf } from '../site/alike-plans.js';
import type { OptionPlan, Plan } from '../site/index.js';
import type { UnknownItem } from '../site/unknown-facts.js';
import { type Block, cautionsOnce, dayWords, grid, heading, list, paragraph, worded } from './block.js';
import { cautionOf, checkRow, titleOf } from './plan-checks.js';
import { feederBlocks, pointBlocks } from './plan-circuits.js';
import { conditionBlocks } from './plan-conditions.js';
import { longestCharge, nightBlocks } from './plan-night.js';
import { remedyBlocks } from './plan-remedies.js';
import { stageBlocks } from './plan-stages.js';
import { nextSteps } from './plan-steps.js';
import { supplyBlocks } from './plan-supply.js';
import { hoursWords } from './plan-work.js';
import { comparisonWords, sheetBlocks } from './sheet.js';
import { oneLineDiagram } from './svg/index.js';
import { factOf, obtainOf } from './unknown.js';
import { englishWords, type ReportWords } from './words/pages.js';

/** What the report shows beside the plan. */
export interface PlanReportOptions {
  /** Place of the option that is printed in full, from 0; the first when absent. */
  readonly option?: number;
  /** Whether the calculation sheet is printed as well. */
  readonly sheet?: boolean;
  /** Words of the report; English when absent. */
  readonly words?: ReportWords;
}

/** The rules that an option does not meet, or else those that could not be judged: the first, and how many more. */
function obstacles({ overall }: OptionPlan, w: ReportWords): string {
  const rules = overall.failed.length > 0 ? overall.failed : overall.undetermined.filter((r) => r.weight === 'rule');
  const [first, ...more] = [...new Set(rules.map((r) => titleOf(r, w)))];
  return first === undefined ? '' : more.length > 0 ? w.long.andMore(first, more.length) : first;
}

/** What is seen of existing circuits, apart from the verdict on the new work. */
function observationBlocks({ observations }: Plan, w: ReportWords): readonly Block[] {
  if (observations.length === 0) return [];
  const { seen, seenWords, seenHead } = w.long;
  return [
    heading(2, seen),
    paragraph(seenWords),
    ...grid(
      '',
      seenHead,
      observations.flatMap(({ run, failed }) => failed.map((r) => [run, ...checkRow(r, w).slice(1)])),
    ),
  ];
}

const disagreeing = ({ unknown }: OptionPlan) => unknown.filter((u) => u.disagree);

/** Facts that cannot be true together. */
export const disagreements = (option: OptionPlan, w: ReportWords): readonly Block[] =>
  list(disagreeing(option).map((u) => w.long.disagree(factOf(u, w), obtainOf(u, w) ?? w.long.lookAgain)));

/** What an option comes to. */
export function answerBlock(option: OptionPlan, w: ReportWords): Extract<Block, { kind: 'answer' }> {
  const { verdict } = option.overall;
  const { contradiction, answers } = w.long;
  return {
    kind: 'answer',
    verdict,
    words: w.installer.answer[verdict],
    text: [
      ...(disagreeing(option).length > 0 ? [contradiction] : []),
      `${w.said(option.title, `option:${option.id}`)}.`,
      answers[verdict],
    ].join(' '),
  };
}

/** Facts that are not known, how to obtain each, and what waits for it. */
function unknownBlocks({ unknown }: OptionPlan, w: ReportWords): readonly Block[] {
  if (unknown.length === 0) return [];
  const { unknown: title, unknownHead, adviceOnly } = w.long;
  const blocksOf = (u: UnknownItem) => u.blocks.map((b) => w.said(b, 'check')).join('; ');
  return [
    heading(2, title),
    ...grid(
      '',
      unknownHead,
      unknown.map((u) => [factOf(u, w), obtainOf(u, w) ?? '', u.decides ? blocksOf(u) : adviceOnly(blocksOf(u))]),
    ),
  ];
}

/** Ways to do it, ranked, and those that are not offered. */
function optionTable(plan: Plan, w: ReportWords): readonly Block[] {
  const { long } = w;
  const others = (open: boolean) =>
    plan.discarded.flatMap((d) =>
      (d.subjectTo === true) === open ? [[w.said(d.title, `option:${d.id}`), w.said(d.because, 'because')]] : [],
    );
  return [
    heading(2, long.ways),
    ...grid(
      long.ranked(w.said(plan.rankedBy, 'ranked')),
      long.waysHead,
      plan.options.map((o) => [
        { verdict: o.overall.verdict },
        w.said(o.title, `option:${o.id}`),
        o.changes.map((c) => w.said(c, 'change')).join('; ') || long.none,
        obstacles(o, w),
        long.label(o.notification.decision.route),
        longestCharge(o, w),
        hoursWords(o.hours, w),
      ]),
    ),
    ...grid(long.subject, long.subjectHead, others(true)),
    ...grid(long.notOffered, long.notOfferedHead, others(false)),
  ];
}

/** What somebody does and decides next with an option: steps, other ways, conditions, remedies, what is asked and open. */
export const toDecideBlocks = (plan: Plan, option: OptionPlan, w: ReportWords): readonly Block[] => [
  ...nextSteps(option, w),
  ...optionTable(plan, w),
  ...conditionBlocks(option, w),
  ...remedyBlocks(plan, w),
  ...list(plan.questions.map((q) => w.said(q.question, 'question'))),
  ...unknownBlocks(option, w),
  ...observationBlocks(plan, w),
];

/** The installation as a diagram. */
export const diagramOf = (plan: Plan, option: OptionPlan, w: ReportWords): Block => ({
  kind: 'figure',
  svg: oneLineDiagram(option.installation, w.long.diagram(plan.about.title), option.points.flatMap(runsOf), w.pictures),
  caption: w.long.diagramNote,
});

/**
 * A plan as blocks: the answer, what to do next and the ways to do it first, then one option in full: what is not known,
 * the supply, each charge point, each caution once where it matters, and the sheet on request.
 * @param plan a plan
 * @param options what else is printed
 * @returns blocks, for any of the renderers
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { inGreatBritain } from 'ohmwright/great-britain';
 * import { readSurvey } from 'ohmwright/io';
 * import { planBlocks } from 'ohmwright/report';
 * import { planOf } from 'ohmwright/site';
 *
 * planBlocks(planOf(readSurvey(survey), inGreatBritain('2018+A2:2022')))[0]?.kind; // => 'heading'
 * ```
 */
export function planBlocks(plan: Plan, options: PlanReportOptions = {}): readonly Block[] {
  const { about, code } = plan;
  const w = options.words ?? englishWords;
  const { long } = w;
  const option = plan.options[options.option ?? 0];
  const standing = long.standings[code.onSurveyDay] ?? long.standingOpen;
  const top: Block[] = [
    heading(1, about.title),
    ...(about.invented ? [paragraph(long.invented)] : []),
    paragraph(long.judged(dayWords(about.date, w), about.reference, `${code.name}:${code.edition}`, standing)),
    cautionOf(code.standing, w),
  ];
  if (!option) return worded(top, w);
  const cautions = option.cautions.map((c) => cautionOf(c, w));
  const blocks = cautionsOnce([
    ...top,
    ...disagreements(option, w),
    answerBlock(option, w),
    ...cautions.slice(0, 1),
    ...list(option.overall.failed.slice(0, 12).map((r) => long.notMet(titleOf(r, w), comparisonWords(r, w)))),
    ...toDecideBlocks(plan, option, w),
    ...supplyBlocks(option, w),
    diagramOf(plan, option, w),
    ...stageBlocks(option, w),
    ...option.feeders.flatMap((f) => feederBlocks(f, w)),
    ...nightBlocks(option.night, w),
    ...option.points.flatMap((point) => pointBlocks(point, option.night, w)),
    ...cautions, // those that stood nowhere yet
    ...(options.sheet && option.sheet ? sheetBlocks(option.sheet, 2, w) : []),
  ]);
  return worded(blocks, w);
}

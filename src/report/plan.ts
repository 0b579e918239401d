import { runsOf } from '../site/alike-plans.js';
import type { OptionPlan, Plan } from '../site/index.js';
import { type Block, caution, cautionsOnce, grid, heading, list, paragraph, verdictWords } from './block.js';
import { checkRow } from './plan-checks.js';
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

const answers = {
  pass: 'Every rule that was judged is met.',
  conditional:
    'Every rule that was judged is met, on conditions: facts that nobody has looked at were assumed, and have to be confirmed.',
  fail: 'At least one rule is not met: the work must not go ahead as described.',
  'not-determined': 'Not decided: facts are missing, and nothing is guessed in their place.',
} as const;

const contradiction = 'Some of what is stated cannot be true together, and nothing that rests on it is decided.';

const standings: Readonly<Record<string, string>> = {
  'in-force': 'which was in force on that day',
  withdrawn: 'which was already withdrawn on that day',
  'not-yet': 'which was not yet in force on that day',
};

/** What the report shows beside the plan. */
export interface PlanReportOptions {
  /** Place of the option that is printed in full, from 0; the first when absent. */
  readonly option?: number;
  /** Whether the calculation sheet is printed as well. */
  readonly sheet?: boolean;
}

/** The rules that an option does not meet, or else those that could not be judged: the first, and how many more. */
function obstacles({ overall }: OptionPlan): string {
  const rules = overall.failed.length > 0 ? overall.failed : overall.undetermined.filter((r) => r.weight === 'rule');
  const [first, ...more] = [...new Set(rules.map((r) => r.title))];
  return first === undefined ? '' : `${first}${more.length > 0 ? `, and ${more.length} more` : ''}`;
}

/** What is seen of existing circuits, apart from the verdict on the new work. */
function observationBlocks({ observations }: Plan): readonly Block[] {
  if (observations.length === 0) return [];
  return [
    heading(2, 'Seen on existing circuits'),
    paragraph(
      'These do not meet rules of today and are no part of the new work: tell the owner, and have them looked at by a competent person.',
    ),
    ...grid(
      '',
      ['circuit', 'requirement', 'figures', 'where it stands'],
      observations.flatMap(({ run, failed }) => failed.map((r) => [run, ...checkRow(r).slice(1)])),
    ),
  ];
}

const disagreeing = ({ unknown }: OptionPlan) => unknown.filter((u) => u.disagree);

/** Facts that cannot be true together. */
export const disagreements = (option: OptionPlan): readonly Block[] =>
  list(disagreeing(option).map((u) => `These do not agree: ${u.fact}: ${u.obtain ?? 'look again'}`));

/** What an option comes to. */
export const answerBlock = (option: OptionPlan): Extract<Block, { kind: 'answer' }> => ({
  kind: 'answer',
  verdict: option.overall.verdict,
  words: verdictWords(option.overall.verdict),
  text: `${disagreeing(option).length > 0 ? `${contradiction} ` : ''}${option.title}. ${answers[option.overall.verdict]}`,
});

/** Facts that are not known, how to obtain each, and what waits for it. */
function unknownBlocks({ unknown }: OptionPlan): readonly Block[] {
  if (unknown.length === 0) return [];
  return [
    heading(2, 'What is not known, and what it blocks'),
    ...grid(
      '',
      ['fact', 'how to obtain it', 'blocks'],
      unknown.map((u) => [u.fact, u.obtain ?? '', `${u.decides ? '' : 'advice only: '}${u.blocks.join('; ')}`]),
    ),
  ];
}

/** Ways to do it, ranked, and those that are not offered. */
function optionTable(plan: Plan): readonly Block[] {
  return [
    heading(2, 'Ways to do it'),
    ...grid(
      `Ranked: ${plan.rankedBy}`,
      [
        'verdict',
        'option',
        'changes',
        'not met, or open',
        'operator',
        'time to charge',
        'hours: likely (least to most)',
      ],
      plan.options.map((o) => [
        { verdict: o.overall.verdict },
        o.title,
        o.changes.join('; ') || 'none',
        obstacles(o),
        o.notification.decision.route.replaceAll('-', ' '),
        longestCharge(o),
        hoursWords(o.hours),
      ]),
    ),
    ...grid(
      'Subject to what is not known yet',
      ['option', 'open'],
      plan.discarded.flatMap((d) => (d.subjectTo ? [[d.title, d.because]] : [])),
    ),
    ...grid(
      'Not offered',
      ['option', 'because'],
      plan.discarded.flatMap((d) => (d.subjectTo ? [] : [[d.title, d.because]])),
    ),
  ];
}

/** What somebody does and decides next with an option: steps, other ways, conditions, remedies, what is asked and open. */
export const toDecideBlocks = (plan: Plan, option: OptionPlan): readonly Block[] => [
  ...nextSteps(option),
  ...optionTable(plan),
  ...conditionBlocks(option),
  ...remedyBlocks(plan),
  ...list(plan.questions.map((q) => q.question)),
  ...unknownBlocks(option),
  ...observationBlocks(plan),
];

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
  const option = plan.options[options.option ?? 0];
  const top: Block[] = [
    heading(1, about.title),
    ...(about.invented ? [paragraph('Invented example: no such premises exist.')] : []),
    paragraph(
      `Surveyed on ${about.date}${about.reference ? `, reference ${about.reference}` : ''}. Judged by ${code.name}:${code.edition}, ${standings[code.onSurveyDay] ?? 'whose standing on that day is not known'}.`,
    ),
    caution(code.standing),
  ];
  if (!option) return top;
  return cautionsOnce([
    ...top,
    ...disagreements(option),
    answerBlock(option),
    ...option.cautions.slice(0, 1).map(caution),
    ...list(option.overall.failed.slice(0, 12).map((r) => `Not met: ${r.title} (${comparisonWords(r)})`)),
    ...toDecideBlocks(plan, option),
    ...supplyBlocks(option),
    {
      kind: 'figure',
      svg: oneLineDiagram(option.installation, `${about.title}: one-line diagram`, option.points.flatMap(runsOf)),
      caption: 'One-line diagram; what is new is framed.',
    },
    ...stageBlocks(option),
    ...option.feeders.flatMap(feederBlocks),
    ...nightBlocks(option.night),
    ...option.points.flatMap((point) => pointBlocks(point, option.night)),
    ...option.cautions.map(caution), // those that stood nowhere yet
    ...(options.sheet && option.sheet ? sheetBlocks(option.sheet) : []),
  ]);
}

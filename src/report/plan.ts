import type { CheckResult } from '../core/index.js';
import type { Plan, PointPlan } from '../site/index.js';
import { formatIn } from '../units/index.js';
import { type Block, caution, grid, heading, list, paragraph } from './block.js';
import { comparisonWords, sheetBlocks } from './sheet.js';
import { oneLineDiagram, timeCurrentPicture } from './svg/index.js';
import { testSheetBlocks } from './test-sheet.js';

const answers = {
  pass: 'Every rule that was judged is met.',
  fail: 'At least one rule is not met: the work must not go ahead as described.',
  'not-determined': 'Not decided: facts are missing, and nothing is guessed in their place.',
} as const;

const figure = (fact: { readonly state: string; readonly value?: number }, unit: string): string =>
  fact.state === 'known' && fact.value !== undefined ? formatIn(fact.value, unit) : 'open';

const circuitWords = ({ run }: PointPlan): string =>
  `${run.cable.construction.replaceAll('-', ' ')} cable, ${run.cable.cores}-core, ${figure(run.cable.area, 'mm²')} ${run.cable.material}, behind ${figure(run.device.rating, 'A')} ${
    run.device.kind.state === 'known'
      ? `${run.device.kind.value.standard}${'type' in run.device.kind.value ? ` type ${run.device.kind.value.type}` : ''}`
      : 'device of a kind not known'
  }`;

const checkRow = (r: CheckResult) => [
  { verdict: r.verdict },
  r.title,
  comparisonWords(r),
  [r.source.document, r.source.clause].filter(Boolean).join(' '),
];

function checks(results: readonly CheckResult[]): readonly Block[] {
  const rules = results.filter((r) => r.verdict !== 'not-required' && r.weight === 'rule');
  const advice = results.filter((r) => r.verdict !== 'not-required' && r.weight === 'advice');
  const head = ['verdict', 'requirement', 'figures', 'where it stands'];
  return [...grid('Rules', head, rules.map(checkRow)), ...grid('Advice', head, advice.map(checkRow))];
}

function candidates(point: PointPlan): readonly Block[] {
  const tried = point.choice.candidates.filter((c) => c.verdict !== 'pass');
  return grid(
    'Smaller candidates, and the first requirement that each does not meet',
    ['cable', 'size', 'device', 'verdict', 'because'],
    tried
      .map((c) => [
        c.cable.replaceAll('-', ' '),
        formatIn(c.area, 'mm²'),
        formatIn(c.rating, 'A'),
        { verdict: c.verdict },
        c.firstObstacle ? `${c.firstObstacle.title}: ${comparisonWords(c.firstObstacle)}` : '',
      ])
      .slice(0, 24),
  );
}

const hours = (h: number): string => `${(Math.round(h * 4) / 4).toString()} h`;

const timeCurrent = ({ point, timeCurrent: data }: PointPlan): readonly Block[] =>
  data
    ? [
        {
          kind: 'figure',
          svg: timeCurrentPicture({ title: `Devices and fault currents of ${point}`, ...data }),
          caption: 'Bands between the gates of the product standards: a device may operate anywhere inside its band.',
        },
      ]
    : [];

function pointBlocks(point: PointPlan): readonly Block[] {
  const { chargeTime } = point;
  return [
    heading(2, `Charge point ${point.point}`),
    { kind: 'verdict', verdict: point.assessment.overall.verdict, text: circuitWords(point) },
    ...(point.assessment.findings.governingStretch
      ? [paragraph(`The stretch that decides the size: ${point.assessment.findings.governingStretch}.`)]
      : []),
    ...(chargeTime?.seconds === undefined
      ? []
      : [
          paragraph(
            `Time to charge: ${formatIn(chargeTime.seconds, 's')} of ${formatIn(chargeTime.window, 's')} between plugging in and leaving (${chargeTime.about}).`,
          ),
        ]),
    ...checks(point.assessment.results),
    ...timeCurrent(point),
    ...candidates(point),
    heading(3, 'Earthing of the point'),
    ...grid(
      '',
      ['verdict', 'arrangement', 'because'],
      point.earthing.map((e) => [{ verdict: e.possible }, e.arrangement.replaceAll('-', ' '), e.because]),
    ),
    ...testSheetBlocks(point.tests, 3),
    heading(3, 'Material'),
    ...grid(
      '',
      ['quantity', 'item', 'rule'],
      point.items.map((i) => [
        i.quantity === undefined ? 'open' : i.unit === 'each' ? `${i.quantity}` : `${i.quantity} ${i.unit}`,
        i.words,
        i.rule,
      ]),
      [0],
    ),
    heading(3, 'Hours'),
    ...grid(
      'Common practice, no source; a firm replaces it with its own',
      ['task', 'low', 'typical', 'high'],
      [
        ...point.hours.tasks.map((t) => [t.task, hours(t.low), hours(t.typical), hours(t.high)]),
        ['in all', hours(point.hours.low), hours(point.hours.typical), hours(point.hours.high)],
      ],
      [1, 2, 3],
    ),
  ];
}

/** What the report shows beside the plan. */
export interface PlanReportOptions {
  /** Whether the calculation sheet is printed as well. */
  readonly sheet?: boolean;
}

/**
 * A plan as blocks: the answer first, then each charge point, what is not known, the cautions, and the sheet on request.
 * @param plan a plan
 * @param options what else is printed
 */
export function planBlocks(plan: Plan, options: PlanReportOptions = {}): readonly Block[] {
  const { about, code } = plan;
  return [
    heading(1, about.title),
    ...(about.invented ? [paragraph('Invented example: no such premises exist.')] : []),
    paragraph(
      `Surveyed on ${about.date}${about.reference ? `, reference ${about.reference}` : ''}. Judged by ${code.name}:${code.edition}, which was ${code.onSurveyDay.replace('-', ' ')} on that day.`,
    ),
    caution(code.standing),
    { kind: 'verdict', verdict: plan.overall.verdict, text: answers[plan.overall.verdict] },
    ...list(plan.overall.failed.slice(0, 12).map((r) => `Not met: ${r.title} (${comparisonWords(r)})`)),
    ...(plan.unknown.length > 0
      ? [
          heading(2, 'What is not known, and what it blocks'),
          ...grid(
            '',
            ['fact', 'how to obtain it', 'blocks'],
            plan.unknown.map((u) => [
              u.fact,
              u.obtain ?? '',
              `${u.decides ? '' : 'advice only: '}${u.blocks.join('; ')}`,
            ]),
          ),
        ]
      : []),
    {
      kind: 'figure',
      svg: oneLineDiagram(
        plan.installation,
        `${about.title}: one-line diagram`,
        plan.points.map((p) => p.run.id),
      ),
      caption: 'One-line diagram; what is new is framed.',
    },
    ...plan.points.flatMap(pointBlocks),
    heading(2, 'Cautions'),
    ...plan.cautions.map(caution),
    ...(options.sheet ? sheetBlocks(plan.sheet) : []),
  ];
}

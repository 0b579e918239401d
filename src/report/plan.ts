import type { CheckResult } from '../core/index.js';
import type { PassedOver } from '../design/index.js';
import type { FeederPlan, Hours, Item, OptionPlan, Plan, PointPlan } from '../site/index.js';
import { formatIn } from '../units/index.js';
import { type Block, caution, cautionsOnce, grid, heading, list, paragraph } from './block.js';
import { comparisonWords, gapWords, sheetBlocks } from './sheet.js';
import { demandPicture, oneLineDiagram, timeCurrentPicture, voltageProfilePicture } from './svg/index.js';
import { testSheetBlocks } from './test-sheet.js';

const answers = {
  pass: 'Every rule that was judged is met.',
  fail: 'At least one rule is not met: the work must not go ahead as described.',
  'not-determined': 'Not decided: facts are missing, and nothing is guessed in their place.',
} as const;

/** A condition that is not met sends the notice another way: it is no fault of the work. */
const conditionWords = {
  pass: 'met',
  fail: 'not met',
  'not-determined': 'open',
  'not-required': 'does not apply',
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
  return [
    ...grid('Rules', head, rules.map(checkRow)),
    ...grid('Advice', head, advice.map(checkRow)),
    ...cautionsOf(results),
  ];
}

/** What a person has to be told with results that were judged. */
const cautionsOf = (results: readonly CheckResult[]): readonly Block[] =>
  results.flatMap((r) => (r.caution && r.verdict !== 'not-required' ? [caution(r.caution)] : []));

const cableWords = (c: PassedOver['candidate']['cable']): string =>
  [c.construction.replaceAll('-', ' '), `${c.cores}-core`, c.material, c.insulation.replaceAll('-', ' ')].join(', ');

/** Candidates of one cable and size that fail in the same requirement, one after the other. */
interface Band {
  readonly first: PassedOver;
  readonly ratings: readonly number[];
}

function bandsOf(passedOver: readonly PassedOver[]): readonly Band[] {
  const bands: { first: PassedOver; ratings: number[] }[] = [];
  for (const p of passedOver) {
    const last = bands.at(-1);
    const { first } = last ?? {};
    const same =
      first !== undefined &&
      cableWords(first.candidate.cable) === cableWords(p.candidate.cable) &&
      first.candidate.area === p.candidate.area &&
      first.check.check === p.check.check &&
      first.verdict === p.verdict;
    if (last && same) last.ratings.push(p.candidate.rating);
    else bands.push({ first: p, ratings: [p.candidate.rating] });
  }
  return bands;
}

function candidates({ design: found }: PointPlan): readonly Block[] {
  const lengths = found.lengths?.intervals ?? [];
  return [
    ...grid(
      'Candidates before it, and the first requirement that each does not meet',
      ['cable', 'size', 'device', 'verdict', 'because, at the smallest device'],
      bandsOf(found.passedOver).map(({ first: { candidate, verdict, check }, ratings }) => [
        cableWords(candidate.cable),
        formatIn(candidate.area, 'mm²'),
        ratings.map((r) => formatIn(r, 'A')).join(', '),
        { verdict },
        `${check.title}: ${comparisonWords(check)}`,
      ]),
    ),
    ...lengths.map((l) =>
      paragraph(
        `Permitted length of the route: ${formatIn(l.from.value, 'm')} to ${formatIn(l.to.value, 'm')}${l.to.beyond ? `; beyond it: ${l.to.beyond.check.title}` : ''}.`,
      ),
    ),
  ];
}

const ampsOf = (value: unknown): string => (typeof value === 'number' ? formatIn(value, 'A') : 'not known');

function supplyBlocks({ supply, notification }: OptionPlan): readonly Block[] {
  const { demand } = supply;
  const bars = demand.methods.flatMap((m) => {
    const worst = Math.max(...m.lines.map((l) => (typeof l.demand === 'number' ? l.demand : Number.NEGATIVE_INFINITY)));
    return Number.isFinite(worst)
      ? [{ name: m.title, current: worst, governs: m.method === demand.governing.method }]
      : [];
  });
  const limits = [
    ...new Map(
      supply.results.flatMap((r) =>
        r.limit && r.limit.unit === 'A'
          ? [[`${r.limit.name} ${r.limit.value}`, { name: words(r.limit.name), current: r.limit.value }] as const]
          : [],
      ),
    ).values(),
  ];
  const { decision } = notification;
  return [
    heading(2, 'Supply'),
    { kind: 'verdict', verdict: supply.overall.verdict, text: 'the supply carries house and charge points' },
    paragraph(`${demand.governing.title} governs: ${demand.governedBy}.`),
    paragraph(`Load limiter: ${supply.limiter.because}.`),
    ...grid(
      'Maximum demand by each method',
      ['method', 'line', 'without points', 'with points', 'what it takes for granted'],
      demand.methods.flatMap((m) =>
        m.lines.length > 0
          ? m.lines.map((l) => [m.title, l.line, ampsOf(l.existing), ampsOf(l.demand), m.assumption])
          : [[m.title, '', '', m.verdict.replace('-', ' '), m.because ?? (m.gaps ?? []).map(gapWords).join('; ')]],
      ),
      [2, 3],
    ),
    ...demand.cautions.map(caution),
    ...(bars.length > 0
      ? [
          {
            kind: 'figure' as const,
            svg: demandPicture({ title: 'Maximum demand by method, worst line', bars, limits }),
            caption: 'The governing method is marked.',
          },
        ]
      : []),
    ...checks(supply.results),
    ...list(
      supply.settings
        .map((s) => `Largest setting of ${s.point} that fits without a load control: ${ampsOf(s.setting)}`)
        .slice(0, 6),
    ),
    heading(2, 'Network operator'),
    paragraph(`Route: ${decision.route.replaceAll('-', ' ')}.${decision.meanwhile ? ` ${decision.meanwhile}` : ''}`),
    ...grid(
      'What decides the route',
      ['', 'condition', 'figures', 'where it stands'],
      decision.results.map((r) => [conditionWords[r.verdict], ...checkRow(r).slice(1)]),
    ),
    ...decision.cautions.map(caution),
    ...cautionsOf(decision.results),
    ...list(decision.duties.map((d) => `${d.what}, ${d.due ? `by ${d.due}` : d.when}`)),
    ...grid(
      'For the form, in a layout of our own',
      ['field', 'entry'],
      notification.fields.map((f) => [f.title, 'missing' in f ? `missing: ${f.missing}` : fieldValue(f.value, f.unit)]),
    ),
  ];
}

/** Material and hours. */
const workBlocks = (items: readonly Item[], work: Hours): readonly Block[] => [
  heading(3, 'Material'),
  ...grid(
    '',
    ['quantity', 'item', 'rule'],
    items.map((i) => [
      i.quantity === undefined ? 'open' : i.unit === 'each' ? `${i.quantity}` : `${i.quantity} ${i.unit}`,
      i.words,
      i.rule,
    ]),
    [0],
  ),
  heading(3, 'Hours'),
  ...grid(
    'Common practice, no source; a firm replaces it with its own',
    ['task', 'low', 'typical', 'high', 'rule'],
    [
      ...work.tasks.map((t) => [t.task, hours(t.low), hours(t.typical), hours(t.high), t.rule]),
      ['in all', hours(work.low), hours(work.typical), hours(work.high), ''],
    ],
    [1, 2, 3],
  ),
];

/** What a feeder on the way carries, and whether it is still in order with the new points behind it. */
function feederBlocks({ run, demand, assessment, overall, items, hours: work }: FeederPlan): readonly Block[] {
  const { governing } = demand.demand;
  return [
    heading(2, `Feeder ${run}`),
    { kind: 'verdict', verdict: overall.verdict, text: 'the feeder carries what is below it, new points included' },
    paragraph(
      `${ampsOf(demand.worst)} on its most loaded line, ${ampsOf(demand.existing)} of it without the points; ${governing.title}. It carries ${ampsOf(demand.limit)}: the least of its device and the main switches that it feeds.`,
    ),
    ...checks([...demand.results, ...assessment.results]),
    ...(items && work ? workBlocks(items, work) : []),
  ];
}

const fieldValue = (value: string | number | boolean, unit?: string): string =>
  typeof value === 'number' ? formatIn(value, unit ?? '') : typeof value === 'boolean' ? (value ? 'yes' : 'no') : value;
const words = (name: string): string => name.replace(/([A-Z])/g, ' $1').toLowerCase();

const hours = (h: number): string => `${(Math.round(h * 100) / 100).toString()} h`;

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

const voltageAlong = ({ point, voltageAlong: data }: PointPlan): readonly Block[] =>
  data
    ? [
        {
          kind: 'figure',
          svg: voltageProfilePicture({ title: `Voltage along the route to ${point}`, ...data }),
          caption: 'By the tabulated drop, every cable taken as warm as it may become; to neutral.',
        },
      ]
    : [];

function earthingBlocks({ earthing, assessment }: PointPlan): readonly Block[] {
  const waived = assessment.results.find((r) => r.check === 'charge-point-earthing' && r.verdict === 'not-required');
  return [
    heading(3, 'Earthing of the point'),
    ...(waived?.because ? [paragraph(waived.because)] : []),
    ...grid(
      '',
      ['verdict', 'arrangement', 'because'],
      earthing.map((e) => [{ verdict: e.possible }, e.arrangement.replaceAll('-', ' '), e.because]),
    ),
  ];
}

/** How long charging takes: with all else at rest, and with all else at its most. */
function chargeWords({ chargeTime: time }: PointPlan): string {
  if (time?.seconds === undefined) return '';
  const busy =
    time.slowest === undefined
      ? time.pauses
        ? '; less than 6 A is left while all else draws its most: charging then pauses'
        : ''
      : `; ${formatIn(time.slowest, 's')} while all else draws its most`;
  return `${formatIn(time.seconds, 's')} of ${formatIn(time.window, 's')}${time.inTime ? '' : ', longer than the vehicle stands there'}${busy}`;
}

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
          paragraph(`Time to charge, of the time between plugging in and leaving: ${chargeWords(point)}.`),
          paragraph(`It rests on ${chargeTime.about}.`),
        ]),
    ...checks(point.assessment.results),
    ...voltageAlong(point),
    ...timeCurrent(point),
    ...candidates(point),
    ...earthingBlocks(point),
    ...testSheetBlocks(point.tests, 3),
    ...workBlocks(point.items, point.hours),
  ];
}

/** What the report shows beside the plan. */
export interface PlanReportOptions {
  /** Place of the option that is printed in full, from 0; the first when absent. */
  readonly option?: number;
  /** Whether the calculation sheet is printed as well. */
  readonly sheet?: boolean;
}

/** Of several points the one that takes longest against the time that its vehicle stands there. */
function longestCharge(points: readonly PointPlan[]): string {
  const timed = points.filter((p) => p.chargeTime?.seconds !== undefined);
  const strain = ({ chargeTime: t }: PointPlan) => (t?.slowest ?? t?.seconds ?? 0) / (t?.window ?? 1);
  const [worst] = [...timed].sort((a, b) => strain(b) - strain(a));
  return worst ? chargeWords(worst) : '';
}

function optionTable(plan: Plan): readonly Block[] {
  return [
    heading(2, 'Ways to do it'),
    ...grid(
      `Ranked: ${plan.rankedBy}`,
      ['verdict', 'option', 'changes', 'operator', 'time to charge', 'hours'],
      plan.options.map((o) => [
        { verdict: o.overall.verdict },
        o.title,
        o.changes.join('; ') || 'none',
        o.notification.decision.route.replaceAll('-', ' '),
        longestCharge(o.points),
        hours(o.hours),
      ]),
    ),
    ...grid(
      'Not offered',
      ['option', 'because'],
      plan.discarded.map((d) => [d.title, d.because]),
    ),
  ];
}

/**
 * A plan as blocks: the answer and the ways to do it first, then one option in full: what is not known, the supply, each
 * charge point, each caution once where it matters, and the sheet on request.
 * @param plan a plan
 * @param options what else is printed
 * @returns blocks, for any of the renderers
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { readSurvey } from 'ohmwright/io';
 * import { planBlocks } from 'ohmwright/report';
 * import { planOf } from 'ohmwright/site';
 *
 * planBlocks(planOf(readSurvey(survey)))[0]?.kind; // => 'heading'
 * ```
 */
export function planBlocks(plan: Plan, options: PlanReportOptions = {}): readonly Block[] {
  const { about, code } = plan;
  const option = plan.options[options.option ?? 0];
  const top: Block[] = [
    heading(1, about.title),
    ...(about.invented ? [paragraph('Invented example: no such premises exist.')] : []),
    paragraph(
      `Surveyed on ${about.date}${about.reference ? `, reference ${about.reference}` : ''}. Judged by ${code.name}:${code.edition}, which was ${code.onSurveyDay.replace('-', ' ')} on that day.`,
    ),
    caution(code.standing),
  ];
  if (!option) return top;
  return cautionsOnce([
    ...top,
    { kind: 'verdict', verdict: option.overall.verdict, text: `${option.title}. ${answers[option.overall.verdict]}` },
    ...option.cautions.slice(0, 1).map(caution),
    ...list(option.overall.failed.slice(0, 12).map((r) => `Not met: ${r.title} (${comparisonWords(r)})`)),
    ...optionTable(plan),
    ...(option.unknown.length > 0
      ? [
          heading(2, 'What is not known, and what it blocks'),
          ...grid(
            '',
            ['fact', 'how to obtain it', 'blocks'],
            option.unknown.map((u) => [
              u.fact,
              u.obtain ?? '',
              `${u.decides ? '' : 'advice only: '}${u.blocks.join('; ')}`,
            ]),
          ),
        ]
      : []),
    ...supplyBlocks(option),
    {
      kind: 'figure',
      svg: oneLineDiagram(
        option.installation,
        `${about.title}: one-line diagram`,
        option.points.map((p) => p.run.id),
      ),
      caption: 'One-line diagram; what is new is framed.',
    },
    ...option.feeders.flatMap(feederBlocks),
    ...option.points.flatMap(pointBlocks),
    ...option.cautions.map(caution), // those that stood nowhere yet
    ...(options.sheet && option.sheet ? sheetBlocks(option.sheet) : []),
  ]);
}

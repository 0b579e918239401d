import type { PassedOver } from '../design/index.js';
import type { Run } from '../installation/index.js';
import { sizeWords } from '../installation/marking.js';
import { deviceWords } from '../installation/ordering.js';
import type { PointPlan } from '../site/index.js';
import type { Night } from '../site/night.js';
import type { FeederPlan } from '../site/plan.js';
import { formatIn } from '../units/index.js';
import { type Block, grid, heading, paragraph } from './block.js';
import { checks } from './plan-checks.js';
import { chargeBlocks } from './plan-night.js';
import { ampsOf } from './plan-supply.js';
import { hoursWords, workBlocks } from './plan-work.js';
import { comparisonWords } from './sheet.js';
import { timeCurrentPicture, voltageDropPicture } from './svg/index.js';
import { testSheetBlocks } from './test-sheet.js';

/** What a feeder on the way carries, and whether it is still in order with the new points behind it. */
export function feederBlocks({
  run,
  alike = [],
  demand,
  assessment,
  overall,
  items,
  hours: work,
}: FeederPlan): readonly Block[] {
  const { governing } = demand.demand;
  return [
    heading(2, `Feeder ${run}`),
    ...(alike.length > 0
      ? [
          paragraph(
            `The same for ${alike.length} more, alike in every fact but names, each with this material and these hours: ${alike.join(', ')}.`,
          ),
        ]
      : []),
    { kind: 'verdict', verdict: overall.verdict, text: 'the feeder carries what it feeds, new charge points included' },
    paragraph(
      `${ampsOf(demand.worst)} on its most loaded line, ${ampsOf(demand.existing)} of it without the charge points; ${governing.title}. It carries ${ampsOf(demand.limit)}: the least of its device and the main switches that it feeds.`,
    ),
    ...checks([...demand.results, ...assessment.results]),
    ...(items && work ? workBlocks(items, work) : []),
  ];
}

/** Cable and device of a charge point in a line. */
export const circuitWords = ({ run }: PointPlan): string => `${cableOf(run)}; protected by ${deviceWords(run)}`;

/** Cable of a run in a line. */
export const cableOf = ({ cable }: Run): string =>
  `${cable.construction.replaceAll('-', ' ')} cable, ${cable.cores}-core, ${sizeWords(cable) ?? 'size to be decided'}, ${cable.material}`;

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

export function candidates({ design: found }: PointPlan): readonly Block[] {
  const lengths = found.lengths?.intervals ?? [];
  return [
    ...grid(
      'Cables and devices that were tried before, and the first requirement that each does not meet',
      ['cable', 'size', 'device', 'verdict', 'because, at the smallest device'],
      bandsOf(found.passedOver).map(({ first: { candidate, verdict, check }, ratings }) => [
        cableWords(candidate.cable),
        sizeWords(candidate.cable) ?? '',
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

export const timeCurrent = ({ point, timeCurrent: data }: PointPlan): readonly Block[] =>
  data
    ? [
        {
          kind: 'figure',
          svg: timeCurrentPicture({ title: `Devices and fault currents of charge point ‘${point}’`, ...data }),
          caption: 'Bands between the gates of the product standards: a device may operate anywhere inside its band.',
        },
      ]
    : [];

export const voltageAlong = ({ point, voltageAlong: data }: PointPlan): readonly Block[] =>
  data
    ? [
        {
          kind: 'figure',
          svg: voltageDropPicture({ title: `Voltage drop to charge point ‘${point}’`, ...data }),
          caption: 'By the tabulated drop, every cable taken as warm as it may become; to neutral.',
        },
      ]
    : [];

export function earthingBlocks({ earthing, assessment }: PointPlan): readonly Block[] {
  // where there is no choice, the result says why: nothing to decide, or nothing entered of the code
  const settled =
    earthing.length === 0 ? assessment.results.find((r) => r.check.startsWith('charge-point-earthing')) : undefined;
  return [
    heading(3, 'Earthing of the charge point'),
    ...(settled ? [paragraph(comparisonWords(settled))] : []),
    ...grid(
      '',
      ['verdict', 'arrangement', 'because'],
      earthing.map((e) => [{ verdict: e.possible }, e.title, e.because]),
    ),
  ];
}

/** One charge point: its circuit, how it was chosen, its earthing, its tests and the work. */
export function pointBlocks(point: PointPlan, night: Night | undefined): readonly Block[] {
  return [
    heading(2, `Charge point ‘${point.point}’`),
    ...(point.alike
      ? [
          paragraph(
            `The same for ${point.alike.points.length} more, alike in every fact: ${point.alike.points.map((p) => p.point).join(', ')}. Their names stand in place of this one’s; material and hours are those of this one, and of each of the others below.`,
          ),
        ]
      : []),
    { kind: 'verdict', verdict: point.assessment.overall.verdict, text: circuitWords(point) },
    ...(point.assessment.figures.governingStretch
      ? [paragraph(`The stretch that decides the size: ${point.assessment.figures.governingStretch}.`)]
      : []),
    ...chargeBlocks(point, night),
    ...checks(point.assessment.results),
    ...voltageAlong(point),
    ...timeCurrent(point),
    ...candidates(point),
    ...earthingBlocks(point),
    ...testSheetBlocks(point.tests, 3),
    ...workBlocks(point.items, point.hours),
    ...(point.alike
      ? [paragraph(`Each of the ${point.alike.points.length} others: ${hoursWords(point.alike.hours)}.`)]
      : []),
  ];
}

import type { PassedOver } from '../design/index.js';
import { byCable, type ChargePoint, type Run } from '../installation/index.js';
import { earthingWords, sizeWords } from '../installation/marking.js';
import { deviceWords } from '../installation/ordering.js';
import type { PointPlan } from '../site/index.js';
import type { Night } from '../site/night.js';
import type { FeederPlan } from '../site/plan.js';
import { formatIn } from '../units/index.js';
import { type Block, grid, heading, paragraph } from './block.js';
import { checks, resultWords } from './plan-checks.js';
import { chargeBlocks } from './plan-night.js';
import { ampsOf } from './plan-supply.js';
import { hoursWords, workBlocks } from './plan-work.js';
import { comparisonWords } from './sheet.js';
import { timeCurrentPicture, voltageDropPicture } from './svg/index.js';
import { testSheetBlocks } from './test-sheet.js';
import type { ReportWords } from './words/pages.js';

/** What a feeder on the way carries, and whether it is still in order with the new points behind it. */
export function feederBlocks(
  { run, alike = [], demand, assessment, overall, items, hours: work }: FeederPlan,
  w: ReportWords,
): readonly Block[] {
  const { governing } = demand.demand;
  const { feeder } = w.long;
  const method = w.said(governing.title, `method:${governing.method}`);
  return [
    heading(2, feeder.title(run)),
    ...(alike.length > 0 ? [paragraph(feeder.same(alike))] : []),
    { kind: 'verdict', verdict: overall.verdict, text: feeder.carries },
    paragraph(feeder.why(ampsOf(demand.worst, w), ampsOf(demand.existing, w), method, ampsOf(demand.limit, w))),
    ...checks([...demand.results, ...assessment.results], w),
    ...(items && work ? workBlocks(items, work, w) : []),
  ];
}

/** Cable and device of a charge point in a line. */
export const circuitWords = ({ run }: PointPlan, w: ReportWords): string =>
  w.long.point.circuit(cableOf(run, w), protectionOf(run, w));

/** Device of a run in a line. */
export const protectionOf = (run: Run, w: ReportWords): string => w.said(deviceWords(run), 'device');

/** Cable of a run in a line. */
export const cableOf = (run: Run, w: ReportWords): string => {
  const { label, point } = w.long;
  return byCable(run)
    .map(({ cable }) =>
      point.cable(label(cable.construction), cable.cores, sizeWords(cable) ?? point.sizeOpen, label(cable.material)),
    )
    .join(' + ');
};

/** How a charge point is earthed, in words: what is chosen, or built in; undefined where it is still to be chosen. */
export function earthingOf({ run }: Pick<PointPlan, 'run'>, w: ReportWords): string | undefined {
  const words = (way: keyof typeof earthingWords) => w.said(earthingWords[way], `earthing:${way}`);
  const points = run.feeds.filter((o): o is ChargePoint => o.kind === 'charge-point');
  for (const { earthing, openPenDevice: built } of points) {
    if (earthing) return words(earthing);
    if (built?.state === 'known' && built.value !== 'none') return w.long.builtIn(words(built.value));
  }
  return undefined;
}

const triedCable = (
  { construction, cores, material, insulation }: PassedOver['candidate']['cable'],
  w: ReportWords,
) => {
  const { label, point } = w.long;
  return point.triedCable(label(construction), cores, label(material), label(insulation));
};

/** Candidates of one cable and size that fail in the same requirement, one after the other. */
interface Band {
  readonly first: PassedOver;
  readonly ratings: readonly number[];
}

const alikeCables = (a: PassedOver['candidate']['cable'], b: PassedOver['candidate']['cable']): boolean =>
  a.construction === b.construction &&
  a.cores === b.cores &&
  a.material === b.material &&
  a.insulation === b.insulation;

function bandsOf(passedOver: readonly PassedOver[]): readonly Band[] {
  const bands: { first: PassedOver; ratings: number[] }[] = [];
  for (const p of passedOver) {
    const last = bands.at(-1);
    const { first } = last ?? {};
    const same =
      first !== undefined &&
      alikeCables(first.candidate.cable, p.candidate.cable) &&
      first.candidate.area === p.candidate.area &&
      first.check.check === p.check.check &&
      first.verdict === p.verdict;
    if (last && same) last.ratings.push(p.candidate.rating);
    else bands.push({ first: p, ratings: [p.candidate.rating] });
  }
  return bands;
}

export function candidates({ design: found }: PointPlan, w: ReportWords): readonly Block[] {
  const lengths = found.lengths?.intervals ?? [];
  const { point } = w.long;
  return [
    ...grid(
      point.tried,
      point.triedHead,
      bandsOf(found.passedOver).map(({ first: { candidate, verdict, check }, ratings }) => [
        triedCable(candidate.cable, w),
        sizeWords(candidate.cable) ?? '',
        ratings.map((r) => formatIn(r, 'A')).join(', '),
        { verdict },
        resultWords(check, w),
      ]),
    ),
    ...lengths.map((l) =>
      paragraph(
        point.lengths(
          formatIn(l.from.value, 'm'),
          formatIn(l.to.value, 'm'),
          l.to.beyond && w.said(l.to.beyond.check.title, `check:${l.to.beyond.check.check}`),
        ),
      ),
    ),
  ];
}

export const timeCurrent = ({ point, timeCurrent: data }: PointPlan, w: ReportWords): readonly Block[] =>
  data
    ? [
        {
          kind: 'figure',
          svg: timeCurrentPicture({
            title: w.long.point.times(point),
            series: data.series.map((s) => ({ ...s, name: w.said(s.name, 'device') })),
            marks: data.marks.map((m) => ({ ...m, name: w.said(m.name, 'mark') })),
            times: data.times.map((t) => ({ ...t, name: w.said(t.name, 'mark') })),
            words: w.pictures,
          }),
          caption: w.long.point.timesNote,
        },
      ]
    : [];

export const voltageAlong = ({ point, voltageAlong: data }: PointPlan, w: ReportWords): readonly Block[] =>
  data
    ? [
        {
          kind: 'figure',
          svg: voltageDropPicture({ title: w.long.point.drop(point), ...data, words: w.pictures }),
          caption: w.long.point.dropNote,
        },
      ]
    : [];

export function earthingBlocks({ earthing, assessment }: PointPlan, w: ReportWords): readonly Block[] {
  const { point } = w.long;
  // where there is no choice, the result says why: nothing to decide, or nothing entered of the code
  const settled =
    earthing.length === 0 ? assessment.results.find((r) => r.check.startsWith('charge-point-earthing')) : undefined;
  return [
    heading(3, point.earthing),
    ...(settled ? [paragraph(comparisonWords(settled, w))] : []),
    ...grid(
      '',
      point.earthingHead,
      earthing.map((e) => [
        { verdict: e.possible },
        w.said(e.title, `earthing:${e.arrangement}`),
        w.said(e.because, 'earthing'),
      ]),
    ),
  ];
}

/** One charge point: its circuit, how it was chosen, its earthing, its tests and the work. */
export function pointBlocks(plan: PointPlan, night: Night | undefined, w: ReportWords): readonly Block[] {
  const { point: words } = w.long;
  const { alike } = plan;
  const { governingStretch: stretch } = plan.assessment.figures;
  return [
    heading(2, words.title(plan.point)),
    ...(alike ? [paragraph(words.same(alike.points.map((p) => p.point)))] : []),
    { kind: 'verdict', verdict: plan.assessment.overall.verdict, text: circuitWords(plan, w) },
    ...(typeof stretch === 'string' ? [paragraph(words.stretch(stretch))] : []),
    ...chargeBlocks(plan, night, w),
    ...checks(plan.assessment.results, w),
    ...voltageAlong(plan, w),
    ...timeCurrent(plan, w),
    ...candidates(plan, w),
    ...earthingBlocks(plan, w),
    ...testSheetBlocks(plan.tests, 3, w),
    ...workBlocks(plan.items, plan.hours, w),
    ...(alike ? [paragraph(words.others(alike.points.length, hoursWords(alike.hours, w)))] : []),
  ];
}

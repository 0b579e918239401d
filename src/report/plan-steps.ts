import { pointsOfPlan } from '../site/alike-plans.js';
import type { OptionPlan, PointPlan } from '../site/index.js';
import { formatIn } from '../units/index.js';
import { type Block, heading, list } from './block.js';
import { dutyWords } from './plan-checks.js';
import { circuitWords, earthingOf } from './plan-circuits.js';
import { factOf, obtainOf } from './unknown.js';
import type { ReportWords } from './words/pages.js';

/** Charge points that are named one by one; more of one kind are counted. */
const NAMED = 4;
/** Facts that are named at the top; the table below has them all. */
const FACTS = 8;

/** Circuit of a charge point, with how it is earthed where that has to be decided. */
function circuitOf(point: PointPlan, w: ReportWords): string {
  const { steps } = w.long;
  const circuit = circuitWords(point, w);
  return point.earthing.length === 0 ? circuit : steps.earthing(circuit, earthingOf(point, w) ?? steps.earthingOpen);
}

/** Equal circuits once, with the charge points that they feed. */
function circuits(points: readonly PointPlan[], w: ReportWords): readonly string[] {
  const { steps } = w.long;
  const alike = new Map<string, string[]>();
  for (const point of points) {
    const words = circuitOf(point, w);
    alike.set(words, [...(alike.get(words) ?? []), ...pointsOfPlan(point)]);
  }
  return [...alike].map(([words, names]) =>
    steps.install(names.length > NAMED ? steps.manyPoints(names.length) : steps.points(names), words),
  );
}

/**
 * What a person does next with an option: what to find out, whom to ask or tell, and, where nothing fails, what to
 * install.
 */
export function nextSteps(
  { unknown, notification, changes, points, overall, measure = [], conditions, beforeWork }: OptionPlan,
  w: ReportWords,
): readonly Block[] {
  const { steps: words } = w.long;
  const open = unknown.filter((u) => u.decides);
  const measured = measure.map((m) =>
    words.measure(
      measure.length > 1 ? m.line : undefined,
      formatIn(m.mostRead, 'A'),
      formatIn(m.most, 'A'),
      formatIn(m.estimated, 'A'),
    ),
  );
  const facts = open.slice(0, FACTS).map((u) => words.findOut(factOf(u, w), obtainOf(u, w)));
  const asked = points.flatMap(({ point, letThroughFirst: ask }) =>
    ask
      ? [
          words.letThrough(
            point,
            formatIn(ask.rating, 'A'),
            w.said(ask.obtain, 'obtain:letThrough'),
            formatIn(ask.area, 'mm²'),
          ),
        ]
      : [],
  );
  const titles = [...new Set(conditions.map((c) => w.said(c.title, 'condition')))];
  const confirmed =
    titles.length > 0 ? [words.confirm(titles.slice(0, FACTS).join(', '), Math.max(0, titles.length - FACTS))] : [];
  const duties = notification.decision.duties.map((d) => dutyWords(d, w));
  const work =
    overall.verdict === 'fail'
      ? []
      : [
          ...(changes.length > 0 ? [words.beside(changes.map((c) => w.said(c, 'change')).join('; '))] : []),
          ...circuits(points, w),
        ];
  const before = (state: 'open' | 'in-the-way') =>
    beforeWork.filter((b) => b.state === state).map((b) => w.said(b.words, `before:${b.id}`));
  const steps = [
    ...before('in-the-way'),
    ...measured,
    ...facts,
    ...(open.length > FACTS ? [words.findOutMore(open.length - FACTS)] : []),
    ...confirmed,
    ...duties,
    ...asked,
    ...before('open'),
    ...work,
  ];
  return steps.length > 0 ? [heading(2, words.title), ...list(steps)] : [];
}

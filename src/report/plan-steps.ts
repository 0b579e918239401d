import { earthingWords } from '../installation/marking.js';
import { pointsOfPlan } from '../site/alike-plans.js';
import type { OptionPlan, PointPlan } from '../site/index.js';
import { formatIn } from '../units/index.js';
import { type Block, heading, list } from './block.js';
import { dutyWords } from './plan-checks.js';
import { circuitWords } from './plan-circuits.js';

/** Charge points that are named one by one; more of one kind are counted. */
const NAMED = 4;
/** Facts that are named at the top; the table below has them all. */
const FACTS = 8;

/** A charge point by its name. */
const chargePoints = (names: readonly string[]): string =>
  `charge point${names.length > 1 ? 's' : ''} ${names.map((name) => `‘${name}’`).join(', ')}`;

/** How a charge point is earthed, where that has to be decided. */
function earthingOf({ earthing, run }: PointPlan): string {
  if (earthing.length === 0) return '';
  const settled = run.feeds.flatMap((o) => {
    if (o.kind !== 'charge-point') return [];
    const { earthing: chosen, openPenDevice: built } = o;
    if (chosen) return [earthingWords[chosen]];
    return built?.state === 'known' && built.value !== 'none' ? [`${earthingWords[built.value]}, built in`] : [];
  });
  return settled.length > 0 ? `; earthing: ${settled.join(', ')}` : '; earthing: to be chosen from the ways below';
}

/** Equal circuits once, with the charge points that they feed. */
function circuits(points: readonly PointPlan[]): readonly string[] {
  const alike = new Map<string, string[]>();
  for (const point of points) {
    const words = `${circuitWords(point)}${earthingOf(point)}`;
    alike.set(words, [...(alike.get(words) ?? []), ...pointsOfPlan(point)]);
  }
  return [...alike].map(
    ([words, names]) =>
      `Install ${names.length > NAMED ? `${names.length} charge points` : chargePoints(names)}: ${words}`,
  );
}

/**
 * What a person does next with an option: what to find out, whom to ask or tell, and, where nothing fails, what to
 * install.
 */
export function nextSteps({
  unknown,
  notification,
  changes,
  points,
  overall,
  measure = [],
  conditions,
  beforeWork,
}: OptionPlan): readonly Block[] {
  const open = unknown.filter((u) => u.decides);
  const measured = measure.map(
    (m) =>
      `Measure the demand first${measure.length > 1 ? ` on ${m.line}` : ''}: at most ${m.mostRead} A read, without the charge points, leaves room (${m.most} A with the customary margin on top); the estimate says ${formatIn(m.estimated, 'A')}`,
  );
  const facts = open.slice(0, FACTS).map((u) => `Find out ${u.fact}${u.obtain ? `: ${u.obtain}` : ''}`);
  const asked = points.flatMap(({ point, letThroughFirst: ask }) =>
    ask
      ? [
          `Before a larger cable for charge point ‘${point}’ is bought, ask for the let-through energy of the ${ask.rating} A device (${ask.obtain}): with it ${ask.area} mm² may do`,
        ]
      : [],
  );
  const titles = [...new Set(conditions.map((c) => c.title))];
  const more = titles.length > FACTS ? `, and ${titles.length - FACTS} more` : '';
  const confirmed =
    titles.length > 0
      ? [`Confirm on site before anything is installed: ${titles.slice(0, FACTS).join(', ')}${more}, as listed below`]
      : [];
  const duties = notification.decision.duties.map(dutyWords);
  const work =
    overall.verdict === 'fail'
      ? []
      : [...(changes.length > 0 ? [`Beside the charge points: ${changes.join('; ')}`] : []), ...circuits(points)];
  const steps = [
    ...beforeWork.filter((b) => b.state === 'in-the-way').map((b) => b.words),
    ...measured,
    ...facts,
    ...(open.length > FACTS ? [`Find out ${open.length - FACTS} facts more, listed below`] : []),
    ...confirmed,
    ...duties,
    ...asked,
    ...beforeWork.filter((b) => b.state === 'open').map((b) => b.words),
    ...work,
  ];
  return steps.length > 0 ? [heading(2, 'What to do next'), ...list(steps)] : [];
}

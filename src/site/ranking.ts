import { routeOnceConfirmed } from '../demand/connection.js';
import type { BaseOptionId } from './option-id.js';
import type { OptionPlan } from './plan.js';

/** How options are ranked. */
export interface Ranking {
  readonly words: string;
  /** Below zero when the first goes before the second. */
  compare(a: OptionPlan, b: OptionPlan): number;
}

/** Verdicts from the best. */
export const verdictRank = { pass: 0, conditional: 1, 'not-determined': 2, fail: 3 } as const;
const effort: Readonly<Record<BaseOptionId, number>> = {
  'as-wanted': 0,
  'with-limiter': 1,
  'lower-setting': 2,
  'larger-supply-fuse': 3,
  'three-phase-supply': 4,
};

const effortOf = ({ id }: OptionPlan): number => effort[id.split('+')[0] as BaseOptionId];

/** Whether an option passes, on conditions or without. */
export const passing = ({ overall: { verdict } }: OptionPlan) => verdict === 'pass' || verdict === 'conditional';

/** Whether the operator is only told, once what was assumed has been confirmed. */
export const toldOnly = ({ notification: { decision } }: OptionPlan) => {
  const route = routeOnceConfirmed(decision);
  return route === 'notify-after' || route === 'no-duty';
};
/** For how many reasons the operator has to be asked before the work. */
const askedFor = ({ notification: { decision } }: OptionPlan) =>
  new Set(decision.results.flatMap((r) => (r.verdict === 'fail' && r.weight === 'rule' ? [r.check] : []))).size;

/** Whether no vehicle still charges when it has to leave: alone at full current, and with the others, all else at rest. */
export const readyInTime = ({ points, night }: OptionPlan) =>
  points.every((p) => p.chargeTime?.inTime !== false) &&
  (night?.vehicles ?? []).every((v) => v.quiet.after !== undefined);

/** The largest reading by which an option is possible, where its demand has to be measured first, A. */
const roomOf = ({ measure = [] }: OptionPlan): number =>
  Math.min(Number.POSITIVE_INFINITY, ...measure.map((m) => m.mostRead));

/** Whether a point gets less than was wanted. */
const lowers = ({ id, remedies = [] }: OptionPlan): number =>
  Number(id.startsWith('lower-setting') || remedies.some((r) => r.id === 'lower-setting'));

/** How much of the supply itself is asked for: a larger fuse, or three phases. */
const changesSupply = ({ id, work: { supplyChange } }: OptionPlan): number =>
  id.startsWith('three-phase')
    ? 2
    : Number(id.startsWith('larger-supply-fuse') || supplyChange === 'larger-fuse' || id.includes('larger-fuse'));

/** Whether something is put right beside what is wanted; another line for a point is no work. */
const putsRight = ({ remedies = [] }: OptionPlan): boolean => remedies.some((r) => r.id !== 'other-line');

/** What leaves a measurement more room goes first. */
const compareRoom = (a: OptionPlan, b: OptionPlan): number => {
  const [one, other] = [roomOf(a), roomOf(b)];
  return one === other ? 0 : other - one;
};

/**
 * What passes before what passes on conditions, before what is open, before what fails; then what has every
 * vehicle ready in time, then what needs no consent before what does; then less change, then fewer hours.
 */
export const simplestFirst: Ranking = {
  words:
    'options that pass before those that pass on conditions, before those that are open, before those that fail; then those in which every vehicle can be ready in time; then those that the operator is only told of; then those that leave the supply as it is; then those for which there are fewer reasons to ask the operator; then, where the demand has to be measured, what leaves it more room; then without remedies before with them, of these at the wanted setting and fewer hours first; then as wanted, limiter, lower setting, larger fuse, three phases; then fewer hours',
  compare: (a, b) =>
    verdictRank[a.overall.verdict] - verdictRank[b.overall.verdict] ||
    Number(!readyInTime(a)) - Number(!readyInTime(b)) ||
    Number(!toldOnly(a)) - Number(!toldOnly(b)) ||
    (putsRight(a) || putsRight(b)
      ? 0
      : changesSupply(a) - changesSupply(b) || askedFor(a) - askedFor(b) || compareRoom(a, b)) ||
    Number(putsRight(a)) - Number(putsRight(b)) ||
    (putsRight(a) && putsRight(b)
      ? changesSupply(a) - changesSupply(b) || lowers(a) - lowers(b) || a.hours.typical - b.hours.typical
      : 0) ||
    effortOf(a) - effortOf(b) ||
    a.hours.typical - b.hours.typical,
};

const obstacles = ({ overall: { failed, undetermined } }: OptionPlan): number => failed.length + undetermined.length;

/** Whether an option by half hours is better than by an estimate: its verdict, or what is told the operator and what stands in the way. */
export function lifts(measured: OptionPlan, estimated: OptionPlan): boolean {
  const better = verdictRank[estimated.overall.verdict] - verdictRank[measured.overall.verdict];
  if (better !== 0) return better > 0;
  const fewer = obstacles(estimated) - obstacles(measured);
  return fewer > 0 || (fewer === 0 && toldOnly(measured) && !toldOnly(estimated));
}

import { type Moment, type TreeOrder, takeLoad } from '../network/tree-order.js';
import { type CurrentProfile, type StepClock, valueInStep } from './profiles.js';

/** What moves other load, limits and room on from step to step. */
export interface Clockwork {
  /** Sets them to a step, counted from 0 at the begin; says whether anything differs from the step set before. */
  set(step: number): boolean;
}

/**
 * Moves the other load of a moment and the limits of an order on from step to step. A profile takes the place of what the
 * network states at its node.
 */
export function clockworkOf(
  order: TreeOrder,
  moment: Moment,
  clock: StepClock,
  load: readonly CurrentProfile[],
  limits: readonly CurrentProfile[],
): Clockwork {
  const place = new Map(order.nodes.map((node, v) => [node.id, v]));
  const flat = (profiles: readonly CurrentProfile[]) =>
    profiles.map((profile) => ({
      at: 3 * place.get(profile.node)!,
      index: valueInStep(profile, clock),
      values: Float64Array.from(profile.values.flatMap((v) => [...v])),
      now: -1,
    }));
  const [loads, tops] = [flat(load), flat(limits)];
  const own = new Float64Array(moment.base.length);
  order.nodes.forEach((node, v) => {
    node.load?.forEach((value, p) => {
      own[3 * v + p] = value;
    });
  });
  const moves = (profile: (typeof loads)[number], step: number): boolean => {
    const [a, b] = [3 * profile.index(step), 3 * profile.now];
    profile.now = a / 3;
    const { values } = profile;
    return values[a] !== values[b] || values[a + 1] !== values[b + 1] || values[a + 2] !== values[b + 2];
  };
  let begun = false;
  return {
    set(step) {
      let changed = !begun;
      begun = true;
      for (const profile of loads) changed = moves(profile, step) || changed;
      for (const profile of tops) changed = moves(profile, step) || changed;
      if (!changed) return false;
      for (const { at, now, values } of tops) for (let p = 0; p < 3; p++) order.limit[at + p] = values[3 * now + p]!;
      moment.base.set(own);
      for (const { at, now, values } of loads) for (let p = 0; p < 3; p++) moment.base[at + p] = values[3 * now + p]!;
      takeLoad(order, moment);
      return true;
    },
  };
}

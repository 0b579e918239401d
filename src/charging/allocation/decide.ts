import { LINE_BIT, type Moment, type TreeOrder } from '../network/tree-order.js';
import type { SharingRule, WaitingRule } from './policy.js';
import { fillProgressively } from './progressive-filling.js';
import { shareProportionally } from './proportional-fairness.js';
import { wholeSteps, wholeStepsUp } from './steps.js';
import { EXACT_UNBALANCE_POINTS, lowerToBalance, raiseTogether } from './unbalance.js';
import { admit, queueOf } from './waiting.js';
import { roundToSteps } from './whole-steps.js';

/** A policy with nothing left open. */
export interface Ruling {
  readonly rule: SharingRule;
  readonly waiting: WaitingRule;
  /** Whether each gets nothing or at least its smallest current. */
  readonly floors: boolean;
  /** Unit of the currents, A; 0 for any current. */
  readonly step: number;
  /** What happens with the remainders. */
  readonly remainder: 'share' | 'leave';
}

/** Weight with which a point rises: per kilowatt, one on three lines rises a third as fast. */
const rates = (order: TreeOrder, moment: Moment, rule: SharingRule): Float64Array =>
  rule === 'max-min-kilowatts' ? moment.weight.map((w, i) => w / order.lines[i]!) : moment.weight;

/** Currents by point, A: shares the current of one moment by the ruling. The whole engine, on arrays. */
export function decide(order: TreeOrder, moment: Moment, ruling: Ruling): Float64Array {
  const n = order.points.length;
  const x = new Float64Array(n);
  const { step } = ruling;
  const least = step > 0 ? moment.least.map((a) => wholeStepsUp(a, step)) : moment.least;
  const most = step > 0 ? moment.most.map((a) => wholeSteps(a, step)) : moment.most;
  const weight = rates(order, moment, ruling.rule);
  // what a point cannot take in whole steps is left to others from the start
  const share = { x, room: moment.room.slice(), weight, most };
  const balanced = order.allBalances.length > 0;
  const remainder = ruling.rule === 'equal-share' ? 'leave' : ruling.remainder;
  const round = (members: Iterable<number>, room: Float64Array) =>
    roundToSteps(order, moment, { x, members, room, step, remainder, least, most, weight });
  // what rounding leaves of one class is the next one's, unless conductors have to balance: then all are rounded together
  const byClass = step > 0 && ruling.rule === 'strict-priority' && !balanced;

  if (ruling.rule === 'equal-share') {
    shareEqually(order, moment, x);
    for (let i = 0; i < n; i++) if (ruling.floors && x[i]! + 1e-9 < least[i]!) x[i] = 0;
  } else if (ruling.rule === 'strict-priority') {
    for (const peers of classes(moment, queueOf(order, moment, ruling.waiting))) {
      const before = byClass ? share.room.slice() : share.room;
      const able = ruling.floors ? peers.filter((i) => most[i]! >= least[i]!) : peers;
      const served = ruling.floors ? admit(order, moment, able, share.room, x, least) : able.slice().sort();
      fillProgressively(order, { ...share, members: served });
      if (!byClass) continue;
      round(served, before);
      share.room.set(before);
    }
  } else {
    const served = ruling.floors
      ? admit(
          order,
          moment,
          queueOf(order, moment, ruling.waiting).filter((i) => most[i]! >= least[i]!),
          share.room,
          x,
          least,
        )
      : allThatWant(moment);
    const filling = { ...share, members: served };
    if (ruling.rule === 'proportional-fairness' && (balanced || served.some((i) => order.lines[i]! > 1)))
      shareProportionally(order, moment, filling);
    else if (balanced && served.length <= EXACT_UNBALANCE_POINTS) raiseTogether(order, moment, filling);
    else fillProgressively(order, filling);
  }
  if (balanced)
    lowerToBalance(order, moment, x, { weight, floor: ruling.floors ? least : new Float64Array(n), step: 0 });
  if (step > 0 && !byClass) round(x.keys(), moment.room.slice());
  return x;
}

const allThatWant = ({ wants }: Moment): Int32Array => {
  const members: number[] = [];
  for (let i = 0; i < wants.length; i++) if (wants[i]) members.push(i);
  return new Int32Array(members);
};

/** A queue in parts of equal priority, first come first. */
function classes({ priority, held }: Moment, queue: Int32Array): Int32Array[] {
  const byPriority = new Map<number, number[]>();
  for (const i of queue) {
    const rank = held[i] ? Number.NEGATIVE_INFINITY : priority[i]!;
    const peers = byPriority.get(rank);
    if (peers) peers.push(i);
    else byPriority.set(rank, [i]);
  }
  return [...byPriority.entries()].sort(([a], [b]) => a - b).map(([, peers]) => Int32Array.from(peers));
}

/** Divides each limit by the number of points wired to its line, and gives each the smallest share on its way. */
function shareEqually(order: TreeOrder, moment: Moment, x: Float64Array): void {
  const { node, wired, mask, parent, limit } = order;
  const points = new Float64Array(moment.room.length);
  for (let i = 0; i < x.length; i++)
    for (let p = 0; p < 3; p++) if (wired[i]! & LINE_BIT[p]!) points[3 * node[i]! + p] = points[3 * node[i]! + p]! + 1;
  for (let v = parent.length - 1; v > 0; v--)
    for (let p = 0; parent[v]! >= 0 && p < 3; p++)
      points[3 * parent[v]! + p] = points[3 * parent[v]! + p]! + points[3 * v + p]!;
  const share = new Float64Array(moment.room.length).fill(Number.POSITIVE_INFINITY);
  for (let v = 0; v < parent.length; v++)
    for (let p = 0; p < 3; p++) {
      const c = 3 * v + p;
      const above = parent[v]! < 0 ? Number.POSITIVE_INFINITY : share[3 * parent[v]! + p]!;
      share[c] = limit[c] === Number.POSITIVE_INFINITY ? above : Math.min(above, moment.room[c]! / points[c]!);
    }
  for (let i = 0; i < x.length; i++) {
    if (!moment.wants[i]) continue;
    let own = moment.most[i]!;
    for (let p = 0; p < 3; p++) if (mask[i]! & LINE_BIT[p]!) own = Math.min(own, share[3 * node[i]! + p]!);
    x[i] = own;
  }
}

import { LINE_BIT, type TreeOrder, wayOf } from '../network/tree-order.js';
import { levelHeap } from './level-heap.js';

/** What is shared out, and among whom. Currents already in `x` are floors: `room` is what is left beside them. */
export interface Filling {
  /** Points that take part, in order. */
  readonly members: Int32Array;
  /** Current of each point, A: floors on entry, the allocation afterwards. */
  readonly x: Float64Array;
  /** What the limits leave by node and line, A; reduced by what is given. */
  readonly room: Float64Array;
  /** Largest current of each point, A. */
  readonly most: Float64Array;
  /** Weight of each point: its current at level 1, A. */
  readonly weight: Float64Array;
}

/** First place in a rising list whose value is not below the given one. */
function lowerBound(list: Int32Array, value: number): number {
  let low = 0;
  let high = list.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (list[middle]! < value) low = middle + 1;
    else high = middle;
  }
  return low;
}

/**
 * Weighted max-min fairness by progressive filling: the level of all rises together, a point joins when the level
 * reaches its floor, and stops at its own maximum or when a limit on its way is reached. With limits on sums of currents
 * only, the result is the lexicographic optimum of current over weight, exact but for rounding.
 *
 * Each line of each node is handled once when it is full; between events only the next one is looked for, so the time
 * grows as the number of points times depth and logarithm.
 */
export function fillProgressively(order: TreeOrder, filling: Filling): void {
  const { mask, first, end } = order;
  const { members, x, room, most, weight } = filling;
  const size = members.length;
  if (size === 0) return;
  if (size === 1) {
    fillOne(order, filling, members[0]!);
    return;
  }
  const [RISES, STOPPED] = [1, 2];
  const state = new Uint8Array(size); // all wait
  const rate = new Float64Array(room.length); // sum of the weights that rise
  const rising = new Int32Array(room.length);
  const heap = levelHeap();
  let level = 0;

  const byLevel = (of: (i: number) => number) => {
    const [levels, ranks] = [new Float64Array(size), new Uint32Array(size)];
    let ordered = true;
    for (let k = 0; k < size; k++) {
      levels[k] = of(members[k]!);
      ranks[k] = k;
      if (k > 0 && levels[k]! < levels[k - 1]!) ordered = false;
    }
    return { levels, ranks: ordered ? ranks : ranks.sort((a, b) => levels[a]! - levels[b]! || a - b) };
  };
  const joins = byLevel((i) => x[i]! / weight[i]!);
  const stops = byLevel((i) => most[i]! / weight[i]!);

  /** A point begins (sign 1) or ceases (sign -1) to rise; `room` is kept as if those that rise had nothing. */
  const turn = (k: number, sign: 1 | -1, current: number) => {
    const i = members[k]!;
    const w = weight[i]!;
    state[k] = sign === 1 ? RISES : STOPPED;
    const way = wayOf(order, i);
    for (let at = 0; at < way.length; at++) {
      const c = way[at]!;
      room[c] = room[c]! + sign * current;
      rate[c] = rate[c]! + sign * w;
      rising[c] = rising[c]! + sign;
    }
    if (sign === -1) x[i] = current;
  };

  const touched = new Uint8Array(room.length);
  const queue: number[] = [];
  let [joined, stopped] = [0, 0];
  for (;;) {
    while (stopped < size && state[stops.ranks[stopped]!] === STOPPED) stopped++;
    const joinAt = joined < size ? joins.levels[joins.ranks[joined]!]! : Number.POSITIVE_INFINITY;
    const stopAt = stopped < size ? stops.levels[stops.ranks[stopped]!]! : Number.POSITIVE_INFINITY;
    const fullAt = heap.lowest();
    if (joinAt <= stopAt && joinAt <= fullAt && joined < size) {
      level = Math.max(level, joinAt);
      while (joined < size && joins.levels[joins.ranks[joined]!]! <= joinAt) {
        const k = joins.ranks[joined++]!;
        turn(k, 1, x[members[k]!]!);
        for (const c of wayOf(order, members[k]!)) {
          if (touched[c]) continue;
          touched[c] = 1;
          queue.push(c);
        }
      }
      for (const c of queue) {
        touched[c] = 0;
        heap.push(Math.max(level, room[c]! / rate[c]!), c);
      }
      queue.length = 0;
    } else if (stopAt <= fullAt && stopped < size) {
      level = Math.max(level, stopAt);
      const k = stops.ranks[stopped++]!;
      turn(k, -1, most[members[k]!]!);
    } else if (fullAt < Number.POSITIVE_INFINITY) {
      const c = heap.pop();
      if (rising[c] === 0) continue;
      const now = room[c]! / rate[c]!;
      if (now > fullAt) {
        heap.push(now, c); // others on this line have stopped since: it fills later
        continue;
      }
      level = Math.max(level, fullAt);
      const v = Math.floor(c / 3);
      const bit = LINE_BIT[c - 3 * v]!;
      const to = lowerBound(members, end[v]!);
      for (let k = lowerBound(members, first[v]!); k < to; k++) {
        const i = members[k]!;
        if (state[k] === RISES && mask[i]! & bit) turn(k, -1, Math.min(most[i]!, weight[i]! * level));
      }
    } else return;
  }
}

/** A single point takes what its way leaves. */
function fillOne(order: TreeOrder, { x, room, most }: Filling, i: number): void {
  let rise = most[i]! - x[i]!;
  const way = wayOf(order, i);
  for (const c of way) rise = Math.min(rise, room[c]!);
  rise = Math.max(0, rise);
  for (const c of way) room[c] = room[c]! - rise;
  x[i] = x[i]! + rise;
}

import { balanceRoom, balanceSum } from '../network/balance.js';
import { LINE_BIT, type Moment, type TreeOrder, wayOf } from '../network/tree-order.js';
import type { WaitingRule } from './policy.js';

const TOLERANCE = 1e-9;

/** Points that want current, in the order in which they are served under a waiting rule. */
export function queueOf(order: TreeOrder, moment: Moment, waiting: WaitingRule): Int32Array {
  const { wants, waitingSince, received, priority, held } = moment;
  const queue: number[] = [];
  for (let i = 0; i < wants.length; i++) if (wants[i]) queue.push(i);
  const { points } = order;
  const byName = (a: number, b: number) => (points[a]!.id < points[b]!.id ? -1 : 1);
  if (typeof waiting === 'object') {
    const turn = Math.floor(waiting.now / waiting.rotation);
    const place = new Float64Array(wants.length);
    const seen = new Map<number, number>();
    const total = new Map<number, number>();
    for (const i of queue) total.set(order.node[i]!, (total.get(order.node[i]!) ?? 0) + 1);
    for (const i of queue) {
      const rank = seen.get(order.node[i]!) ?? 0;
      seen.set(order.node[i]!, rank + 1);
      const count = total.get(order.node[i]!)!;
      place[i] = (((rank - turn) % count) + count) % count;
    }
    queue.sort((a, b) => place[a]! - place[b]! || byName(a, b));
  } else if (waiting === 'least-energy') queue.sort((a, b) => received[a]! - received[b]! || byName(a, b));
  else if (waiting === 'priority')
    queue.sort((a, b) => priority[a]! - priority[b]! || waitingSince[a]! - waitingSince[b]! || byName(a, b));
  else queue.sort((a, b) => waitingSince[a]! - waitingSince[b]! || byName(a, b));
  // who runs and is not to be paused yet, in the same order
  const first = queue.filter((i) => held[i]);
  return new Int32Array(first.length > 0 ? [...first, ...queue.filter((i) => !held[i])] : queue);
}

/**
 * Reserves the smallest current for everybody in the order of the queue whose smallest current still fits beside those
 * before. Nobody is passed over who could be served: the set of those served is the first in the order of the queue.
 * @param room what the limits leave, by node and line; reduced by what is reserved
 * @param x receives the reserved currents
 * @returns those served, in the order of the network
 */
export function admit(
  order: TreeOrder,
  moment: Moment,
  queue: Int32Array,
  room: Float64Array,
  x: Float64Array,
  least: Float64Array,
): Int32Array {
  const { node, mask, balances } = order;
  const fits = (i: number): boolean => {
    for (const c of wayOf(order, i)) if (room[c]! + TOLERANCE < least[i]!) return false;
    return true;
  };
  const lead = order.allBalances.length > 0 ? new Float64Array(3 * order.nodes.length) : undefined;
  const balanced = (i: number): boolean => {
    if (!lead) return true;
    for (let v = node[i]!; v >= 0; v = order.parent[v]!)
      for (const balance of balances[v]!) {
        const by = balance.lean[mask[i]!]!;
        if (by > 0 && balanceSum(balance, lead) + by * least[i]! > balanceRoom(balance, moment.base) + TOLERANCE)
          return false;
      }
    return true;
  };
  const served: number[] = [];
  let ahead = queue;
  for (;;) {
    const before = served.length;
    const behind: number[] = [];
    for (const i of ahead) {
      if (!fits(i)) continue;
      if (!balanced(i)) {
        behind.push(i);
        continue;
      }
      served.push(i);
      x[i] = least[i]!;
      for (const c of wayOf(order, i)) room[c] = room[c]! - least[i]!;
      if (lead)
        for (let v = node[i]!; v >= 0; v = order.parent[v]!)
          for (let p = 0; p < 3; p++) if (mask[i]! & LINE_BIT[p]!) lead[3 * v + p] = lead[3 * v + p]! + least[i]!;
    }
    // whoever runs on another line may have made room for the balance of those passed over
    if (behind.length === 0 || served.length === before) break;
    ahead = new Int32Array(behind);
  }
  return new Int32Array(served).sort();
}

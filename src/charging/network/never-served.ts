import { lineConductors } from '../../installation/index.js';
import type { Problem } from '../../units/index.js';
import { LEAST_CURRENT } from './network.js';
import { LINE_BIT, type TreeOrder } from './tree-order.js';

/**
 * Points that get nothing whatever happens, because a limit on their way is below their smallest current even without any
 * other load. Each is told with its path in the network.
 */
export function neverServed(order: TreeOrder): Problem[] {
  const told: Problem[] = [];
  // the lowest limit of any kind on the way of each node: above the smallest current there is nothing to look for
  const lowest = new Float64Array(order.nodes.length);
  for (let v = 0; v < lowest.length; v++) {
    const above = order.parent[v]! < 0 ? Number.POSITIVE_INFINITY : lowest[order.parent[v]!]!;
    const { limit, nodes } = order;
    const { unbalance = Number.POSITIVE_INFINITY, neutralLimit = Number.POSITIVE_INFINITY } = nodes[v]!;
    lowest[v] = Math.min(above, unbalance, neutralLimit, limit[3 * v]!, limit[3 * v + 1]!, limit[3 * v + 2]!);
  }
  order.points.forEach((point, i) => {
    const least = point.least ?? LEAST_CURRENT;
    if (lowest[order.node[i]!]! >= least) return;
    const tell = (cap: number, what: string) => {
      told.push({
        path: ['points', order.input[i]!],
        message: `'${point.id}' never charges: ${what}, ${cap} A, is below its smallest current, ${least} A`,
      });
    };
    for (let v = order.gate[order.node[i]!]!; v >= 0; v = order.next[v]!) {
      const { id, unbalance = Number.POSITIVE_INFINITY, neutralLimit = Number.POSITIVE_INFINITY } = order.nodes[v]!;
      for (let p = 0; p < 3; p++)
        if (order.mask[i]! & LINE_BIT[p]! && order.limit[3 * v + p]! < least)
          tell(order.limit[3 * v + p]!, `the limit of '${id}' on ${lineConductors[p]!}`);
      // on three lines it is in balance by itself
      if (order.mask[i]! !== 7 && unbalance < least) tell(unbalance, `the limit of unbalance of '${id}'`);
      if (order.mask[i]! !== 7 && neutralLimit < least) tell(neutralLimit, `the limit of the neutral of '${id}'`);
    }
  });
  return told.sort((a, b) => Number(a.path[1]) - Number(b.path[1]));
}

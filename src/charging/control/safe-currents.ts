import { lineConductors } from '../../installation/index.js';
import { type Amperes, amperes, type Problem } from '../../units/index.js';
import { allocate } from '../allocation/allocate.js';
import type { ChargingNetwork, NetworkNode, PerLine } from '../network/network.js';
import { chargingByNode, momentOf, orderOf, type TreeOrder } from '../network/tree-order.js';

/** Current of each point without word from meter or controller, A, by name. @inline */
export type SafeCurrents = Readonly<Record<string, Amperes>>;

/** A network beside the worst of its other load, and the metered nodes of which nobody has stated it. */
export interface WorstCase {
  readonly network: ChargingNetwork;
  readonly notes: readonly Problem[];
}

/**
 * A network beside its worst other load, every point with the largest vehicle that it is wired for. Where the worst load
 * of a metered node is not stated, nothing is left for charging there, nor at the nodes that feed it and do not state
 * their own.
 * @param metered names of the nodes with a meter
 */
export function worstCase(network: ChargingNetwork, metered: ReadonlySet<string>): WorstCase {
  const order = orderOf(network);
  const m = order.nodes.length;
  const total = new Float64Array(3 * m);
  const own = new Float64Array(3 * m);
  const unknown = new Uint8Array(m);
  const notes: Problem[] = [];
  for (let v = m - 1; v >= 0; v--) {
    const node = order.nodes[v]!;
    const up = order.parent[v]!;
    if (node.worst) unknown[v] = 0;
    else if (metered.has(node.id) && !node.load) {
      unknown[v] = 1;
      notes.push({
        path: ['nodes', network.nodes.indexOf(node), 'worst'],
        message: `the worst load of '${node.id}' is not stated: nothing behind it gets current while its meter is silent; state the largest load there without the points`,
      });
    }
    for (let p = 0; p < 3; p++) {
      const c = 3 * v + p;
      const behind = total[c]!;
      // generation may fail together with the meter: it leaves no room
      const here = Math.max(0, node.load?.[p] ?? 0);
      total[c] = node.worst ? Math.max(node.worst[p]!, here) : behind + here;
      own[c] = total[c]! - behind;
      if (up >= 0) total[3 * up + p] = total[3 * up + p]! + total[c]!;
    }
    if (up >= 0 && unknown[v]) unknown[up] = 1;
  }
  const at = (values: Float64Array, v: number): PerLine => [
    amperes(values[3 * v]!),
    amperes(values[3 * v + 1]!),
    amperes(values[3 * v + 2]!),
  ];
  const none: PerLine = [amperes(0), amperes(0), amperes(0)];
  const nodes = order.nodes.map(
    (node, v): NetworkNode => ({
      ...node,
      load: at(own, v),
      ...(unknown[v] ? { limit: none } : {}),
    }),
  );
  const points = network.points.map(({ vehicleLines: _, connected: __, ...point }) => point);
  return { network: { nodes, points }, notes: notes.reverse() };
}

/**
 * Current to which each point falls when the meter or the controller is silent, so that all together stay within every
 * limit beside the worst other load: equal parts, in whole steps, on every line that a point is wired to, with or
 * without a vehicle. Where a part would be under the smallest current, points late in the order of waiting get nothing.
 */
export function safeCurrents({ network }: WorstCase, resolution: Amperes = amperes(1)): SafeCurrents {
  const { nodes, points } = network;
  // with nobody's maximum above the smallest current, those who run are those for whom it fits
  const least = allocate(
    { nodes, points: points.map((p) => ({ ...p, most: p.least ?? amperes(Math.min(6, p.most)) })) },
    { rule: 'max-min-amperes', stage: 'zero-or-least' },
  ).points;
  const able = points.filter((_, i) => least[i]!.current > 0);
  const shares = allocate({ nodes, points: able }, { rule: 'equal-share', resolution }).points;
  const safe: Record<string, Amperes> = {};
  for (const p of points) safe[p.id] = amperes(0);
  for (const p of shares) safe[p.id] = p.current;
  return safe;
}

/** Where safe currents that are given do not fit beside the worst other load. */
export function misfits({ network }: WorstCase, safe: SafeCurrents): Problem[] {
  const order: TreeOrder = orderOf(network);
  const { room } = momentOf(order);
  const sums = chargingByNode(
    order,
    Float64Array.from(order.points, (p) => safe[p.id] ?? 0),
  );
  return order.nodes.flatMap((node, v) =>
    [0, 1, 2].flatMap((p) =>
      sums[3 * v + p]! > room[3 * v + p]! + 1e-9
        ? [
            {
              path: ['safe'],
              message: `${sums[3 * v + p]} A together at '${node.id}' on ${lineConductors[p]}, where the worst other load leaves ${room[3 * v + p]} A`,
            },
          ]
        : [],
    ),
  );
}

import { type Line, lineConductors } from '../../installation/index.js';
import { type Balance, balancesOf } from './balance.js';
import { type ChargingNetwork, LEAST_CURRENT, type NetworkNode, type NetworkPoint } from './network.js';
import { inspection, inspectNetwork } from './refuse.js';

/**
 * A network as arrays. Nodes stand in the order of the tree, each before what it feeds and sisters by name; points stand
 * by node and name, so that the points behind a node are one stretch and the order of the input does not matter. Entry
 * `3·node + line` of an array belongs to one line of one node.
 */
export interface TreeOrder {
  readonly network: ChargingNetwork;
  readonly nodes: readonly NetworkNode[];
  readonly points: readonly NetworkPoint[];
  /** Place in the input of each point. */
  readonly input: Int32Array;
  /** Node that feeds a node, or -1. */
  readonly parent: Int32Array;
  /** First point behind a node. */
  readonly first: Int32Array;
  /** After the last point behind a node. */
  readonly end: Int32Array;
  /** The node itself, or the nearest above it, that limits anything; -1 when none does. */
  readonly gate: Int32Array;
  /** The nearest gate strictly above a node, or -1. */
  readonly next: Int32Array;
  /** Limit by node and line, A; infinite where there is none. */
  readonly limit: Float64Array;
  /** Limits of how far lines may differ, and of neutrals, by node. */
  readonly balances: readonly (readonly Balance[])[];
  /** All of them. */
  readonly allBalances: readonly Balance[];
  /** Node of each point. */
  readonly node: Int32Array;
  /** Lines that the vehicle at each point uses: 1 for L1, 2 for L2, 4 for L3, added. */
  readonly mask: Uint8Array;
  /** How many lines the vehicle at each point uses. */
  readonly lines: Uint8Array;
  /** Lines that each point is wired to, as `mask`. */
  readonly wired: Uint8Array;
  /** What `wayOf` has found, by `8·node + mask`. */
  readonly ways: (Int32Array | undefined)[];
}

/** What the points want and what the limits leave: the arrays that change from one moment to the next. */
export interface Moment {
  /** Other load by node and line, everything behind the node included, A. */
  readonly base: Float64Array;
  /** What the limits leave for charging by node and line, A; 0 where the other load alone exceeds the limit. */
  readonly room: Float64Array;
  readonly wants: Uint8Array;
  /** Largest current of each point, A. */
  readonly most: Float64Array;
  /** Smallest current of each point, A. */
  readonly least: Float64Array;
  /** Weight of each point. */
  readonly weight: Float64Array;
  /** Order of service of each point. */
  readonly priority: Float64Array;
  /** Clock value since which each point waits, s. */
  readonly waitingSince: Float64Array;
  /** Energy that each point has received, Wh. */
  readonly received: Float64Array;
  /** Points that run and are not to be paused yet: ahead of all others. */
  readonly held: Uint8Array;
}

/** Bits of the lines in a mask, by place. */
export const LINE_BIT = [1, 2, 4] as const;

/** Mask of the first `count` of these lines. */
export const maskOf = (lines: readonly Line[], count: number): number => {
  let mask = 0;
  for (let k = 0; k < count; k++) mask |= LINE_BIT[lineConductors.indexOf(lines[k]!)]!;
  return mask;
};

const byId = (a: { readonly id: string }, b: { readonly id: string }): number =>
  a.id < b.id ? -1 : a.id > b.id ? 1 : 0;

/**
 * Puts a network in the order of its tree.
 * @throws CalculationError `invalid-input` with everything that is wrong
 */
export function treeOrder(network: ChargingNetwork): TreeOrder {
  const found = inspection();
  inspectNetwork(network, found);
  found.refuse('The charging network');
  return orderOf(network);
}

/** Puts a network that has been inspected in the order of its tree. */
export function orderOf(network: ChargingNetwork): TreeOrder {
  const children = new Map<string | undefined, NetworkNode[]>();
  for (const node of network.nodes) {
    const sisters = children.get(node.parent);
    if (sisters) sisters.push(node);
    else children.set(node.parent, [node]);
  }
  for (const sisters of children.values()) sisters.sort(byId);
  const nodes: NetworkNode[] = [];
  const ahead = [...(children.get(undefined) ?? [])].reverse();
  for (let node = ahead.pop(); node; node = ahead.pop()) {
    nodes.push(node);
    ahead.push(...[...(children.get(node.id) ?? [])].reverse());
  }
  const place = new Map(nodes.map((node, v) => [node.id, v]));

  const at: number[][] = nodes.map(() => []);
  network.points.forEach((p, i) => {
    at[place.get(p.node) as number]!.push(i);
  });
  const n = network.points.length;
  const input = new Int32Array(n);
  const m = nodes.length;
  const [first, end, parent] = [new Int32Array(m), new Int32Array(m), new Int32Array(m).fill(-1)];
  let count = 0;
  nodes.forEach((node, v) => {
    if (node.parent !== undefined) parent[v] = place.get(node.parent) as number;
    first[v] = count;
    at[v]!.sort((a, b) => byId(network.points[a]!, network.points[b]!));
    for (const i of at[v]!) input[count++] = i;
    end[v] = count;
  });
  for (let v = m - 1; v > 0; v--) {
    const up = parent[v]!;
    if (up >= 0 && end[v]! > end[up]!) end[up] = end[v]!;
  }

  const limit = new Float64Array(3 * m).fill(Number.POSITIVE_INFINITY);
  const [gate, next] = [new Int32Array(m), new Int32Array(m)];
  nodes.forEach((node, v) => {
    node.limit?.forEach((value, p) => {
      limit[3 * v + p] = value;
    });
    next[v] = parent[v]! < 0 ? -1 : gate[parent[v]!]!;
    gate[v] = node.limit || node.unbalance !== undefined || node.neutralLimit !== undefined ? v : next[v]!;
  });

  const points = Array.from(input, (i) => network.points[i]!);
  const node = new Int32Array(n);
  const [mask, lines, wired] = [new Uint8Array(n), new Uint8Array(n), new Uint8Array(n)];
  for (let v = 0; v < m; v++) {
    const own = at[v]!.length;
    for (let k = 0; k < own; k++) node[first[v]! + k] = v;
  }
  points.forEach((point, i) => {
    const used = point.vehicleLines ?? point.lines.length;
    lines[i] = used;
    mask[i] = maskOf(point.lines, used);
    wired[i] = maskOf(point.lines, point.lines.length);
  });
  const balances = nodes.map(balancesOf);
  return {
    network,
    nodes,
    points,
    input,
    parent,
    first,
    end,
    gate,
    next,
    limit,
    balances,
    allBalances: balances.flat(),
    node,
    mask,
    lines,
    wired,
    ways: [],
  };
}

/** The limits on the way of a point, its own first: entries `3·node + line` of the lines that its vehicle uses. */
export function wayOf(order: TreeOrder, i: number): Int32Array {
  const { node, mask, gate, next, limit, ways } = order;
  const place = 8 * node[i]! + mask[i]!;
  const found = ways[place];
  if (found) return found;
  const way: number[] = [];
  for (let v = gate[node[i]!]!; v >= 0; v = next[v]!)
    for (let p = 0; p < 3; p++)
      if (mask[i]! & LINE_BIT[p]! && limit[3 * v + p]! < Number.POSITIVE_INFINITY) way.push(3 * v + p);
  const made = Int32Array.from(way);
  ways[place] = made;
  return made;
}

/** What the points of a network want, and what its limits leave beside the other load that it states. */
export function momentOf(order: TreeOrder): Moment {
  const { nodes, points } = order;
  const base = new Float64Array(3 * nodes.length);
  nodes.forEach((node, v) => {
    node.load?.forEach((value, p) => {
      base[3 * v + p] = value;
    });
  });
  const n = points.length;
  const moment: Moment = {
    base,
    room: new Float64Array(base.length),
    wants: new Uint8Array(n),
    most: new Float64Array(n),
    least: new Float64Array(n),
    weight: new Float64Array(n),
    priority: new Float64Array(n),
    waitingSince: new Float64Array(n),
    received: new Float64Array(n),
    held: new Uint8Array(n),
  };
  for (let i = 0; i < n; i++) {
    const p = points[i]!;
    moment.wants[i] = p.connected === false ? 0 : 1;
    moment.most[i] = p.most;
    moment.least[i] = p.least ?? LEAST_CURRENT;
    moment.weight[i] = p.weight ?? 1;
    moment.priority[i] = p.priority ?? 1;
    moment.waitingSince[i] = p.waitingSince ?? 0;
    moment.received[i] = p.received ?? 0;
  }
  takeLoad(order, moment);
  return moment;
}

/** Sums the other load, which stands in `base` node by node, up the tree, and sets the room that it leaves. */
export function takeLoad(order: TreeOrder, { base, room }: Moment): void {
  const { parent, limit } = order;
  for (let v = parent.length - 1; v > 0; v--) {
    const up = parent[v]!;
    if (up < 0) continue;
    for (let p = 0; p < 3; p++) base[3 * up + p] = base[3 * up + p]! + base[3 * v + p]!;
  }
  for (let c = 0; c < room.length; c++) room[c] = Math.max(0, limit[c]! - base[c]!);
}

/** Sum of the currents of the points by node and line, A. */
export function chargingByNode(order: TreeOrder, x: Float64Array): Float64Array {
  const { node, mask, parent } = order;
  const sum = new Float64Array(3 * parent.length);
  for (let i = 0; i < x.length; i++)
    for (let p = 0; p < 3; p++) if (mask[i]! & LINE_BIT[p]!) sum[3 * node[i]! + p] = sum[3 * node[i]! + p]! + x[i]!;
  for (let v = parent.length - 1; v > 0; v--) {
    const up = parent[v]!;
    if (up < 0) continue;
    for (let p = 0; p < 3; p++) sum[3 * up + p] = sum[3 * up + p]! + sum[3 * v + p]!;
  }
  return sum;
}

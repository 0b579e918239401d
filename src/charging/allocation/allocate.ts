import { type Line, lineConductors } from '../../installation/index.js';
import { type Amperes, amperes, type Problem } from '../../units/index.js';
import { isOfLines, neutralOf } from '../network/balance.js';
import type { ChargingNetwork, PerLine } from '../network/network.js';
import { neverServed } from '../network/never-served.js';
import { inspection, inspectNetwork } from '../network/refuse.js';
import { chargingByNode, type Moment, momentOf, orderOf, type TreeOrder, wayOf } from '../network/tree-order.js';
import type { NotPromised } from '../not-promised.js';
import { decide, type Ruling } from './decide.js';
import { type AllocationPolicy, inspectPolicy } from './policy.js';
import { TOLERANCE } from './steps.js';
import { exceededBalance, type NeutralExcess, neutralsAlone, type Unbalance, unbalancedAlone } from './unbalance.js';

/** What keeps a point from more current. @inline */
export type Binding =
  /** No vehicle wants current there. */
  | { readonly kind: 'no-vehicle' }
  /** The setting, the cable or the vehicle. */
  | { readonly kind: 'own-maximum' }
  /** A limit of a node on a line; `waits` when not even the smallest current fits. */
  | { readonly kind: 'limit' | 'waits'; readonly node: string; readonly line: Line }
  /** Other load alone exceeds the limit of a node on a line: everything behind it pauses. */
  | { readonly kind: 'overloaded'; readonly node: string; readonly line: Line }
  /** The limit of a node on the difference between lines. */
  | { readonly kind: 'unbalance'; readonly node: string }
  /** The limit of the neutral of a node. */
  | { readonly kind: 'neutral'; readonly node: string }
  /** The policy itself: an equal share, a remainder that is left, a smallest current above the largest in whole steps. */
  | { readonly kind: 'policy' };

/** What a point gets. @inline */
export interface PointAllocation {
  readonly id: string;
  /** Current on each line that the vehicle uses, A. */
  readonly current: Amperes;
  readonly lines: readonly Line[];
  /** What keeps it from more. */
  readonly binding: Binding;
}

/** What comes together at a node. @inline */
export interface NodeAllocation {
  readonly id: string;
  /** Current on each line, other load and charging, A; negative when it exports. */
  readonly current: PerLine;
  /** Current of the charging alone on each line, A. */
  readonly charging: PerLine;
  /** Current of the neutral at unity power factor, with the third harmonics of the node, A. */
  readonly neutral: Amperes;
  /** Whether the neutral carries more than the node's limit for it; absent without one. */
  readonly neutralExceeded?: boolean;
  /** Largest difference between two lines, A. */
  readonly unbalance: Amperes;
}

/** A limit that other load alone exceeds. @inline */
export interface Overload {
  readonly node: string;
  readonly line: Line;
  /** Other load above the limit, A. */
  readonly excess: Amperes;
}

/** Who gets what, and why not more: plain, JSON-ready. */
export interface Allocation {
  /** Points, in the order of the input. */
  readonly points: readonly PointAllocation[];
  /** Nodes, each before those that it feeds. */
  readonly nodes: readonly NodeAllocation[];
  /** Limits that other load alone exceeds: every point behind them pauses. */
  readonly overloaded: readonly Overload[];
  /** Limits on unbalance that other load alone exceeds. */
  readonly unbalanced: readonly Unbalance[];
  /** Limits of neutrals that other load alone exceeds. */
  readonly neutrals: readonly NeutralExcess[];
  /** Points that get nothing whatever happens, because a limit on their way is below their smallest current. */
  readonly neverServed: readonly Problem[];
  /** What this policy does not promise; in words under `notPromisedWords`. */
  readonly notPromised: readonly NotPromised[];
}

/** A policy that has been inspected, with nothing left open. */
export function rulingOf(policy: AllocationPolicy): Ruling {
  const stage = policy.stage ?? 'whole-steps';
  return {
    rule: policy.rule,
    waiting: policy.waiting ?? (policy.rule === 'strict-priority' ? 'priority' : 'longest-waiting'),
    floors: stage !== 'continuous',
    step: stage === 'whole-steps' ? (policy.resolution ?? 1) : 0,
    remainder: policy.remainder ?? 'share',
  };
}

/**
 * Shares the current of a network among its charge points at one moment.
 *
 * The continuous stage of max-min is the lexicographic optimum of current (or power) over weight. Then, where the policy
 * says so, each gets nothing or at least its smallest current, admitted in the order of the waiting rule, and the rest
 * is shared anew; then currents are rounded to whole steps by the largest remainder. No limit is ever exceeded by
 * charging; where other load alone exceeds one, everything behind it on that line pauses.
 *
 * @param network limits, other load and points; currents in A
 * @param policy rule of sharing, rule of waiting, stage and resolution
 * @returns the current of every point, A, with what limits it; the load of every node; what is not promised
 * @throws CalculationError `invalid-input` with everything that is wrong with the network or the policy
 * @example
 * ```ts
 * import { amperes } from 'ohmwright';
 * import { allocate } from 'ohmwright/charging';
 *
 * const intake = { id: 'intake', limit: [amperes(80), amperes(0), amperes(0)] } as const;
 * const point = (id: string, most: number) => ({ id, node: 'intake', lines: ['L1'], most: amperes(most) }) as const;
 * const network = { nodes: [intake], points: [point('a', 32), point('b', 32), point('c', 16), point('d', 10), point('e', 6)] };
 * allocate(network, { rule: 'max-min-amperes' }).points.map((p) => p.current); // => [24, 24, 16, 10, 6]
 * ```
 */
export function allocate(network: ChargingNetwork, policy: AllocationPolicy): Allocation {
  const found = inspection();
  inspectPolicy(policy, found);
  inspectNetwork(network, found);
  found.refuse('The allocation');
  const ruling = rulingOf(policy);
  const order = orderOf(network);
  const moment = momentOf(order);
  return describe(order, moment, ruling, decide(order, moment, ruling));
}

const perLine = (values: Float64Array, v: number): PerLine => [
  amperes(values[3 * v]!),
  amperes(values[3 * v + 1]!),
  amperes(values[3 * v + 2]!),
];

/** A decision in words and names. */
function describe(order: TreeOrder, moment: Moment, ruling: Ruling, x: Float64Array): Allocation {
  const charging = chargingByNode(order, x);
  const total = charging.map((value, c) => value + moment.base[c]!);
  const points: PointAllocation[] = new Array(order.points.length);
  order.points.forEach((point, i) => {
    points[order.input[i]!] = {
      id: point.id,
      current: amperes(x[i]!),
      lines: point.lines.slice(0, order.lines[i]),
      binding: bindingOf(order, moment, ruling, x, charging, i),
    };
  });
  const nodes = order.nodes.map((node, v): NodeAllocation => {
    const current = perLine(total, v);
    const neutral = amperes(neutralOf(...current, node.thirdHarmonic));
    return {
      id: node.id,
      current,
      charging: perLine(charging, v),
      neutral,
      ...(node.neutralLimit === undefined ? {} : { neutralExceeded: neutral > node.neutralLimit + TOLERANCE }),
      unbalance: amperes(Math.max(...current) - Math.min(...current)),
    };
  });
  const overloaded: Overload[] = [];
  order.nodes.forEach((node, v) => {
    for (let p = 0; p < 3; p++) {
      const excess = moment.base[3 * v + p]! - order.limit[3 * v + p]!;
      if (excess > 0) overloaded.push({ node: node.id, line: lineConductors[p]!, excess: amperes(excess) });
    }
  });
  return {
    points,
    nodes,
    overloaded,
    unbalanced: unbalancedAlone(order, moment),
    neutrals: neutralsAlone(order, moment),
    neverServed: neverServed(order),
    notPromised: notPromised(order, ruling),
  };
}

function bindingOf(
  order: TreeOrder,
  moment: Moment,
  ruling: Ruling,
  x: Float64Array,
  charging: Float64Array,
  i: number,
): Binding {
  if (!moment.wants[i]) return { kind: 'no-vehicle' };
  const step = ruling.step;
  if (x[i]! + Math.max(step, 1e-7) > moment.most[i]! + 1e-9) return { kind: 'own-maximum' };
  let [tightest, at] = [Number.POSITIVE_INFINITY, -1];
  for (const c of wayOf(order, i)) {
    const left = moment.room[c]! - charging[c]!;
    if (left < tightest) {
      tightest = left;
      at = c;
    }
  }
  const node = order.nodes[Math.floor(at / 3)]?.id ?? '';
  const line = lineConductors[at % 3] ?? lineConductors[0];
  const wanted = x[i] === 0 && ruling.floors ? moment.least[i]! : Math.max(step, 1e-7);
  if (tightest < wanted - 1e-9) {
    if (x[i] === 0 && moment.base[at]! > order.limit[at]!) return { kind: 'overloaded', node, line };
    return { kind: x[i] === 0 ? 'waits' : 'limit', node, line };
  }
  if (order.allBalances.length > 0) {
    const more = x.slice();
    more[i] = more[i]! + wanted;
    const over = exceededBalance(order, moment, more)?.balance;
    if (over) return { kind: isOfLines(over.of) ? 'unbalance' : 'neutral', node: order.nodes[over.v]!.id };
  }
  return { kind: 'policy' };
}

function notPromised(order: TreeOrder, ruling: Ruling): readonly NotPromised[] {
  const rows = new Set(order.node).size;
  const mixed = order.mask.some((mask) => mask !== order.mask[0]);
  const several = order.lines.some((count) => count > 1);
  return [
    ...(ruling.floors && ruling.rule !== 'equal-share' ? (['own-current-may-fall-when-capacity-rises'] as const) : []),
    ...(order.nodes.length > 1 && ruling.rule !== 'equal-share'
      ? (['neighbours-may-get-less-when-one-limit-rises'] as const)
      : []),
    ...(several && mixed && ruling.rule !== 'equal-share'
      ? (['others-may-get-less-when-a-vehicle-leaves'] as const)
      : []),
    ...(ruling.floors && rows > 1 && typeof ruling.waiting === 'object'
      ? (['turns-differ-between-rows'] as const)
      : []),
    ...(ruling.floors && several && mixed && ruling.rule !== 'equal-share'
      ? (['not-the-largest-number-served'] as const)
      : []),
    ...(order.allBalances.length > 0 ? (['unbalance-lowers-without-optimum'] as const) : []),
    ...(ruling.rule === 'equal-share' ? (['unused-shares-are-lost'] as const) : []),
  ];
}

import { type Line, lineConductors } from '../../installation/index.js';
import { type Amperes, amperes } from '../../units/index.js';
import { chargingByNode, LINE_BIT, type Moment, type TreeOrder, unbalanceRoom } from '../network/tree-order.js';
import { programme, type Row } from '../optimum/lexicographic-simplex.js';
import { stepFrom, TOLERANCE } from './steps.js';

/** Points up to which the max-min optimum under limits on unbalance is found exactly. */
export const EXACT_UNBALANCE_POINTS = 200;

/** A limit on unbalance: the charging on line p may exceed that on line q behind the node by `room`. */
interface Pair {
  readonly v: number;
  readonly p: number;
  readonly q: number;
  readonly room: number;
}

function pairsOf(order: TreeOrder, moment: Moment): Pair[] {
  return order.unbalanced.flatMap((v) =>
    [0, 1, 2].flatMap((p) =>
      [0, 1, 2].filter((q) => q !== p).map((q) => ({ v, p, q, room: unbalanceRoom(order, moment, v, p, q) })),
    ),
  );
}

/** A limit on unbalance that other load alone exceeds: charging does not worsen it and cannot mend it. @inline */
export interface Unbalance {
  readonly node: string;
  /** The line that leads, and the one that it leads by too much. */
  readonly lines: readonly [Line, Line];
  /** How much above the limit, A. */
  readonly excess: Amperes;
}

/** The limits on unbalance that other load alone exceeds. */
export function unbalancedAlone(order: TreeOrder, { base }: Moment): Unbalance[] {
  return order.unbalanced.flatMap((v) =>
    [0, 1, 2].flatMap((p) =>
      [0, 1, 2].flatMap((q): Unbalance[] => {
        const excess = base[3 * v + p]! - base[3 * v + q]! - order.unbalance[v]!;
        const lines = [lineConductors[p]!, lineConductors[q]!] as const;
        return excess > TOLERANCE ? [{ node: order.nodes[v]!.id, lines, excess: amperes(excess) }] : [];
      }),
    ),
  );
}

/** 1, -1 or 0: what a point adds to line p less line q. */
const lean = (mask: number, p: number, q: number): number =>
  (mask & LINE_BIT[p]! ? 1 : 0) - (mask & LINE_BIT[q]! ? 1 : 0);

/** The first limit on unbalance that these currents exceed, with the excess. */
export function exceededPair(
  order: TreeOrder,
  moment: Moment,
  x: Float64Array,
): { readonly v: number; readonly p: number; readonly q: number; readonly excess: number } | undefined {
  if (order.unbalanced.length === 0) return undefined;
  const sums = chargingByNode(order, x);
  for (const { v, p, q, room } of pairsOf(order, moment)) {
    const excess = sums[3 * v + p]! - sums[3 * v + q]! - room;
    if (excess > TOLERANCE) return { v, p, q, excess };
  }
  return undefined;
}

/**
 * Weighted max-min fairness where limits on unbalance count too. They are no packing constraints: raising one line may
 * make room on another, so filling alone is not optimal. The level of all is raised by linear programming, the points
 * that stand in the way are fixed, and so on: the lexicographic optimum.
 */
export function raiseTogether(
  order: TreeOrder,
  moment: Moment,
  filling: {
    readonly members: Int32Array;
    readonly x: Float64Array;
    readonly weight: Float64Array;
    readonly most: Float64Array;
  },
): void {
  const { members, x, weight, most } = filling;
  const floors = chargingByNode(order, x);
  const upper = Float64Array.from(members, (i) => most[i]! - x[i]!);
  const size = members.length;
  const level = { upper: Float64Array.from([...upper]), rows: [] as Row[] };
  // current = floor + variable; each point's own row: level · weight - variable <= floor
  for (let k = 0; k < size; k++) level.rows.push({ variables: [k], coefficients: [-1], most: x[members[k]!]! });
  const behind = (v: number) =>
    [...members.keys()].filter((k) => members[k]! >= order.first[v]! && members[k]! < order.end[v]!);
  for (let v = 0; v < order.nodes.length; v++) {
    const here = behind(v);
    for (let p = 0; p < 3; p++) {
      const users = here.filter((k) => order.mask[members[k]!]! & LINE_BIT[p]!);
      const room = moment.room[3 * v + p]! - floors[3 * v + p]!;
      if (users.length === 0 || users.reduce((sum, k) => sum + upper[k]!, 0) <= room) continue;
      level.rows.push({ variables: users, coefficients: users.map(() => 1), most: Math.max(0, room) });
    }
  }
  for (const { v, p, q, room } of pairsOf(order, moment)) {
    const leaning = behind(v).filter((k) => lean(order.mask[members[k]!]!, p, q) !== 0);
    if (leaning.length === 0) continue;
    level.rows.push({
      variables: leaning,
      coefficients: leaning.map((k) => lean(order.mask[members[k]!]!, p, q)),
      most: Math.max(0, room - floors[3 * v + p]! + floors[3 * v + q]!),
    });
  }
  const lp = programme(level.upper, level.rows, size + 1);
  lp.raiseLevels(
    [...members.keys()],
    Float64Array.from(members, (i) => weight[i]!),
  );
  const raised = lp.solution();
  for (let k = 0; k < size; k++) x[members[k]!] = x[members[k]!]! + raised[k]!;
}

/**
 * Lowers currents until no limit on unbalance is exceeded: each time on the line that leads, the points with the highest
 * current over weight first, down to their floor and, if that is not enough, to nothing.
 * @param step unit in which currents go down, A; 0 for any amount
 */
export function lowerToBalance(
  order: TreeOrder,
  moment: Moment,
  x: Float64Array,
  { weight, floor, step }: { weight: Float64Array; floor: Float64Array; step: number },
): void {
  for (let over = exceededPair(order, moment, x); over; over = exceededPair(order, moment, x)) {
    const { v, p, q } = over;
    const rank: number[] = [];
    for (let i = order.first[v]!; i < order.end[v]!; i++) if (x[i]! > 0 && lean(order.mask[i]!, p, q) > 0) rank.push(i);
    if (rank.length === 0) return; // only the other load leans: charging cannot mend it and does not worsen it
    const above = rank.filter((i) => x[i]! > floor[i]! + TOLERANCE);
    const from = above.length > 0 ? above : rank;
    const top = from.reduce((a, b) => (x[b]! / weight[b]! > x[a]! / weight[a]! + 1e-12 ? b : a));
    if (above.length === 0) x[top] = 0;
    else if (step > 0) x[top] = Math.max(floor[top]!, stepFrom(x[top]!, step, -1));
    else lowerLevel(x, above, weight, floor, over.excess);
  }
}

/** Lowers the highest of the given points, level with each other, by an amount in all, or to their floors. */
function lowerLevel(x: Float64Array, which: number[], weight: Float64Array, floor: Float64Array, amount: number): void {
  const at = (level: number) =>
    which.map((i) => Math.max(Math.min(x[i]!, weight[i]! * level), Math.min(x[i]!, floor[i]!)));
  const total = which.reduce((sum, i) => sum + x[i]!, 0);
  let [low, high] = [0, Math.max(...which.map((i) => x[i]! / weight[i]!))];
  for (let k = 0; k < 100; k++) {
    const middle = (low + high) / 2;
    if (at(middle).reduce((a, b) => a + b, 0) > total - amount) high = middle;
    else low = middle;
  }
  at(low).forEach((value, k) => {
    x[which[k]!] = value;
  });
}

import { CalculationError } from '../../units/index.js';
import { type Balance, balanceRoom, balanceSum, leansOf } from '../network/balance.js';
import { chargingByNode, type Moment, type TreeOrder } from '../network/tree-order.js';
import { programme } from '../optimum/lexicographic-simplex.js';
import { factor, frontsOf, solveFactored } from '../optimum/tree-elimination.js';
import type { Filling } from './progressive-filling.js';
import { EXACT_UNBALANCE_POINTS, INTERIOR, takeBack, withSides } from './unbalance.js';

/** A limit behind one node: what an ampere counts by its lines, and what all may come to beside the floors. */
interface Limit {
  readonly v: number;
  readonly lean: Float64Array;
  /** Whether it is one of how lines may differ, or of a neutral. */
  readonly balance: boolean;
  readonly most: number;
}

const ofLines = /* @__PURE__ */ (() => [leansOf([1, 0, 0]), leansOf([0, 1, 0]), leansOf([0, 0, 1])])();

/** A point that cannot get this much, A, gets nothing. */
const SHUT = 1e-5;

const sign = (mask: number, { lean }: Pick<Limit, 'lean'>): number => lean[mask]!;

/**
 * Weighted proportional fairness: maximises the sum of weight times logarithm of current, under all limits, those on
 * unbalance included. A primal-dual interior-point method whose linear system has the shape of the tree, so an iteration
 * costs as much as a pass over the points. At the result, each point's weight over its current equals the sum of the
 * prices of the limits on its way, and only limits that are reached have a price.
 */
export function shareProportionally(order: TreeOrder, moment: Moment, filling: Filling): void {
  const floor = filling.x.slice();
  withSides(order, moment, filling.x, (balances) => shareWithin(order, moment, filling, balances));
  takeBack(order, moment, filling, floor);
}

function shareWithin(order: TreeOrder, moment: Moment, filling: Filling, balances: readonly Balance[]): void {
  const { x, most } = filling;
  const floors = chargingByNode(order, x);
  let members = filling.members;
  let limits: Limit[] = [];
  // points for which a limit leaves nothing have no logarithm: they stay at their floor
  for (;;) {
    limits = limitsOf(order, moment, filling, members, floors, balances);
    const shut = shutOut(order, limits, filling, members);
    for (const i of members) if (most[i]! - x[i]! < 1e-9) shut.add(i);
    if (shut.size === 0) break;
    members = members.filter((i) => !shut.has(i));
  }
  if (members.length > 0) interiorPoint(order, limits, { ...filling, members });
}

/** Points for which the limits leave nothing whatever the others do. */
function shutOut(order: TreeOrder, limits: readonly Limit[], { x, most }: Filling, members: Int32Array): Set<number> {
  const behind = (v: number) =>
    [...members.keys()].filter((k) => members[k]! >= order.first[v]! && members[k]! < order.end[v]!);
  const shut = new Set<number>();
  if (order.allBalances.length === 0 || members.length > EXACT_UNBALANCE_POINTS) {
    for (const limit of limits) {
      if (limit.most > 2 * INTERIOR) continue;
      const here = behind(limit.v).map((k) => members[k]!);
      if (here.some((i) => sign(order.mask[i]!, limit) < 0)) continue;
      for (const i of here) if (sign(order.mask[i]!, limit) > 0) shut.add(i);
    }
    return shut;
  }
  // limits on unbalance bind lines together: raise those that have nothing yet until nobody gets anything any more
  const rows = limits.map((limit) => {
    const variables = behind(limit.v).filter((k) => sign(order.mask[members[k]!]!, limit) !== 0);
    return {
      variables,
      coefficients: variables.map((k) => sign(order.mask[members[k]!]!, limit)),
      most: Math.max(0, limit.most - (limit.balance ? INTERIOR : 0)),
    };
  });
  const width = Float64Array.from(members, (i) => most[i]! - x[i]!);
  let open = [...members.keys()];
  for (;;) {
    const lp = programme(width, rows);
    lp.maximise(Float64Array.from(width, (_, k) => (open.includes(k) ? 1 : 0)));
    const found = lp.solution();
    const still = open.filter((k) => found[k]! < SHUT);
    if (still.length === open.length || still.length === 0) return new Set(still.map((k) => members[k]!));
    open = still;
  }
}

function limitsOf(
  order: TreeOrder,
  moment: Moment,
  filling: Filling,
  members: Int32Array,
  floors: Float64Array,
  balances: readonly Balance[],
): Limit[] {
  const { x, most } = filling;
  const risen = x.slice();
  for (const i of members) risen[i] = most[i]!;
  const full = chargingByNode(order, risen);
  const limits: Limit[] = [];
  for (let v = 0; v < order.nodes.length; v++) {
    for (let p = 0; p < 3; p++) {
      const room = moment.room[3 * v + p]!;
      if (full[3 * v + p]! > room)
        limits.push({ v, lean: ofLines[p]!, balance: false, most: room - floors[3 * v + p]! });
    }
    for (const balance of balances) {
      if (balance.v !== v) continue;
      const room = balanceRoom(balance, moment.base) - balanceSum(balance, floors);
      if (members.some((i) => i >= order.first[v]! && i < order.end[v]! && sign(order.mask[i]!, balance) > 0))
        limits.push({ v, lean: balance.lean, balance: true, most: room + INTERIOR });
    }
  }
  return limits;
}

function interiorPoint(order: TreeOrder, limits: readonly Limit[], filling: Filling): void {
  const { members, x, most } = filling;
  const n = members.length;
  const m = order.nodes.length;
  const rows = new Int32Array(m);
  for (const { v } of limits) rows[v] = rows[v]! + 1;
  const from = new Int32Array(m + 1);
  for (let v = 0; v < m; v++) from[v + 1] = from[v]! + rows[v]!;
  const system = { rows, parent: order.parent };
  const fronts = frontsOf(system);
  const count = limits.length;

  // the rows of a front, own first: place in `limits` of each
  const frontRows = Array.from({ length: m }, (): number[] => []);
  for (let v = 0; v < m; v++) {
    const up = order.parent[v]!;
    const own = Array.from({ length: rows[v]! }, (_, k) => from[v]! + k);
    frontRows[v] = up < 0 ? own : [...own, ...frontRows[up]!];
  }
  const classes = n > 0 ? [1, 2, 3, 4, 5, 6, 7] : [];
  const signs = frontRows.map((list) => classes.map((mask) => Float64Array.from(list, (r) => sign(mask, limits[r]!))));

  const y = Float64Array.from(members, (i) => (most[i]! - x[i]!) / 2); // rise above the floor
  const width = Float64Array.from(members, (i) => most[i]! - x[i]!);
  // only how weights stand to each other counts: what is small is measured against the largest
  const heaviest = members.reduce((w, i) => Math.max(w, filling.weight[i]!), 0);
  const weight = Float64Array.from(members, (i) => filling.weight[i]! / heaviest);
  const floor = Float64Array.from(members, (i) => x[i]!);
  const scale = Math.max(...limits.map((l) => l.most), 1);
  // begin low enough to be inside every limit where that is possible
  const sums = sumRows(order, limits, members, y);
  let shrink = 1;
  limits.forEach((l, r) => {
    if (!l.balance && sums[r]! > 0) shrink = Math.min(shrink, (0.9 * Math.max(l.most, 1e-6)) / sums[r]!);
  });
  for (let k = 0; k < n; k++) y[k] = y[k]! * shrink;
  // kept on its own: of what nearly reaches its maximum the difference is no figure any more
  const above = Float64Array.from(width, (w, k) => w - y[k]!);

  const slack = Float64Array.from(limits, (l, r) => Math.max(l.most - shrink * sums[r]!, 1e-3 * scale));
  const price = Float64Array.from(slack, (s) => 1 / s);
  const capPrice = Float64Array.from(above, (a) => 1 / a);
  const floorPrice = Float64Array.from(y, (value, k) => (floor[k]! > 0 ? 1 / value : 0));

  const [dy, dPrice, rhs] = [new Float64Array(n), new Float64Array(count), new Float64Array(count)];
  const [inverse, pull] = [new Float64Array(n), new Float64Array(n)];
  const byClass = new Float64Array(m * 8);
  const pullByClass = new Float64Array(m * 8);
  const goal = 1e-13;
  const lightest = weight.reduce((least, w) => Math.min(least, w), Number.POSITIVE_INFINITY);
  let step = 1;

  for (let iteration = 0; ; iteration++) {
    let gap = 0;
    let pairs = count;
    for (let r = 0; r < count; r++) gap += slack[r]! * price[r]!;
    for (let k = 0; k < n; k++) {
      gap += capPrice[k]! * above[k]! + floorPrice[k]! * y[k]!;
      pairs += floor[k]! > 0 ? 2 : 1;
    }
    const inside = sumRows(order, limits, members, y);
    let off = 0;
    limits.forEach((l, r) => {
      off = Math.max(off, Math.abs(inside[r]! + slack[r]! - l.most));
    });
    let tilt = 0;
    const prices = sumPrices(order, signs, frontRows, price);
    for (let k = 0; k < n; k++) {
      const i = members[k]!;
      const current = floor[k]! + y[k]!;
      const grad = weight[k]! / current - prices[order.node[i]! * 8 + order.mask[i]!]!;
      tilt = Math.max(tilt, (Math.abs(grad - capPrice[k]! + floorPrice[k]!) * current) / weight[k]!);
    }
    const mu = gap / pairs;
    if (mu < goal && off < 1e-9 * scale && tilt < 1e-9) break;
    if (iteration > 200)
      throw new CalculationError('not-converged', `proportional fairness: gap ${mu} after ${iteration} steps`, {
        method: 'interior-point method',
        iterations: iteration,
        residual: mu,
      });
    // products of slack and price go down no faster than the conditions are met, or the steps become short
    const target = Math.max(mu * (step < 0.5 ? 0.8 : 0.1), Math.min(mu, 1e-3 * lightest * (tilt + off / scale)));

    byClass.fill(0);
    pullByClass.fill(0);
    for (let k = 0; k < n; k++) {
      const i = members[k]!;
      const current = floor[k]! + y[k]!;
      const gapUp = above[k]!;
      const lower = floor[k]! > 0;
      const d = weight[k]! / current ** 2 + capPrice[k]! / gapUp + (lower ? floorPrice[k]! / y[k]! : 0);
      const at = order.node[i]! * 8 + order.mask[i]!;
      const g = weight[k]! / current - prices[at]! - target / gapUp + (lower ? target / y[k]! : 0);
      inverse[k] = 1 / d;
      pull[k] = g / d;
      byClass[at] = byClass[at]! + 1 / d;
      pullByClass[at] = pullByClass[at]! + g / d;
    }
    fronts.matrix.fill(0);
    fronts.vector.fill(0);
    for (let v = 0; v < m; v++) {
      const f = fronts.size[v]!;
      const [at, to] = [fronts.matrixAt[v]!, fronts.vectorAt[v]!];
      for (const mask of classes) {
        const a = byClass[v * 8 + mask]!;
        if (a === 0) continue;
        const s = signs[v]![mask - 1]!;
        for (let i = 0; i < f; i++) {
          if (s[i] === 0) continue;
          fronts.vector[to + i] = fronts.vector[to + i]! + s[i]! * pullByClass[v * 8 + mask]!;
          for (let j = 0; j <= i; j++)
            fronts.matrix[at + i * f + j] = fronts.matrix[at + i * f + j]! + a * s[i]! * s[j]!;
        }
      }
      for (let k = 0; k < rows[v]!; k++) {
        const r = from[v]! + k;
        fronts.matrix[at + k * f + k] = fronts.matrix[at + k * f + k]! + slack[r]! / price[r]!;
        rhs[r] = target / price[r]! - slack[r]! + (inside[r]! + slack[r]! - limits[r]!.most);
        fronts.vector[to + k] = fronts.vector[to + k]! + rhs[r]!;
      }
    }
    factor(system, fronts);
    solveFactored(system, fronts, dPrice);

    const change = sumPrices(order, signs, frontRows, dPrice);
    let [primal, dual] = [1, 1];
    const shorten = (value: number, by: number) => (by < 0 ? (0.99 * value) / -by : 1);
    for (let k = 0; k < n; k++) {
      const i = members[k]!;
      dy[k] = pull[k]! - inverse[k]! * change[order.node[i]! * 8 + order.mask[i]!]!;
      primal = Math.min(primal, shorten(y[k]!, dy[k]!), shorten(above[k]!, -dy[k]!));
    }
    for (let r = 0; r < count; r++) {
      const dSlack = (target - slack[r]! * price[r]! - slack[r]! * dPrice[r]!) / price[r]!;
      rhs[r] = dSlack;
      primal = Math.min(primal, shorten(slack[r]!, dSlack));
      dual = Math.min(dual, shorten(price[r]!, dPrice[r]!));
    }
    for (let k = 0; k < n; k++) {
      const gapUp = above[k]!;
      const dCap = target / gapUp - capPrice[k]! + (capPrice[k]! * dy[k]!) / gapUp;
      dual = Math.min(dual, shorten(capPrice[k]!, dCap));
      if (floor[k]! > 0)
        dual = Math.min(
          dual,
          shorten(floorPrice[k]!, target / y[k]! - floorPrice[k]! - (floorPrice[k]! * dy[k]!) / y[k]!),
        );
    }
    step = Math.min(primal, dual); // one length for both: the logarithm couples them
    for (let k = 0; k < n; k++) {
      const gapUp = above[k]!;
      const dCap = target / gapUp - capPrice[k]! + (capPrice[k]! * dy[k]!) / gapUp;
      capPrice[k] = capPrice[k]! + step * dCap;
      if (floor[k]! > 0)
        floorPrice[k] = floorPrice[k]! + step * (target / y[k]! - floorPrice[k]! - (floorPrice[k]! * dy[k]!) / y[k]!);
      y[k] = y[k]! + step * dy[k]!;
      above[k] = gapUp - step * dy[k]!;
    }
    for (let r = 0; r < count; r++) {
      slack[r] = slack[r]! + step * rhs[r]!;
      price[r] = price[r]! + step * dPrice[r]!;
    }
  }
  for (let k = 0; k < n; k++) x[members[k]!] = floor[k]! + Math.min(y[k]!, width[k]!);
}

/** Sum of the rises behind each limit. */
function sumRows(order: TreeOrder, limits: readonly Limit[], members: Int32Array, y: Float64Array): Float64Array {
  const all = new Float64Array(order.node.length);
  for (let k = 0; k < members.length; k++) all[members[k]!] = y[k]!;
  const byNode = chargingByNode(order, all);
  return Float64Array.from(limits, (limit) => balanceSum(limit, byNode));
}

/** Sum of the prices on the way of a point, by node and set of lines. */
function sumPrices(
  order: TreeOrder,
  signs: readonly Float64Array[][],
  frontRows: readonly number[][],
  price: Float64Array,
): Float64Array {
  const sums = new Float64Array(order.nodes.length * 8);
  for (let v = 0; v < order.nodes.length; v++) {
    const list = frontRows[v]!;
    for (let mask = 1; mask < 8; mask++) {
      const s = signs[v]![mask - 1]!;
      let sum = 0;
      for (let k = 0; k < list.length; k++) if (s[k] !== 0) sum += s[k]! * price[list[k]!]!;
      sums[v * 8 + mask] = sum;
    }
  }
  return sums;
}

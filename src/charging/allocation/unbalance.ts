import { type Line, lineConductors } from '../../installation/index.js';
import { type Amperes, amperes } from '../../units/index.js';
import { type Balance, balanceRoom, balanceSum, isOfLines, neutralOf } from '../network/balance.js';
import { chargingByNode, LINE_BIT, type Moment, type TreeOrder } from '../network/tree-order.js';
import { programme, type Row } from '../optimum/lexicographic-simplex.js';
import { stepFrom, TOLERANCE } from './steps.js';

/** Points up to which the max-min optimum under limits on unbalance is found exactly. */
export const EXACT_UNBALANCE_POINTS = 200;

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
  return order.allBalances.flatMap((balance): Unbalance[] => {
    if (!isOfLines(balance.of)) return [];
    const excess = balanceSum(balance, base) - balance.most;
    const [lead, led] = balance.of;
    const lines = [lineConductors[lead]!, lineConductors[led]!] as const;
    return excess > TOLERANCE ? [{ node: order.nodes[balance.v]!.id, lines, excess: amperes(excess) }] : [];
  });
}

/** A limit of a neutral that other load alone exceeds: charging does not worsen it but by the sides of its polygon. @inline */
export interface NeutralExcess {
  readonly node: string;
  /** How much above the limit, A. */
  readonly excess: Amperes;
}

/** The limits of neutrals that other load alone exceeds. */
export function neutralsAlone(order: TreeOrder, { base }: Moment): NeutralExcess[] {
  return order.nodes.flatMap((node, v): NeutralExcess[] => {
    if (node.neutralLimit === undefined) return [];
    const already = neutralOf(base[3 * v]!, base[3 * v + 1]!, base[3 * v + 2]!, node.thirdHarmonic);
    const excess = already - node.neutralLimit;
    return excess > TOLERANCE ? [{ node: node.id, excess: amperes(excess) }] : [];
  });
}

/** The first balance that these currents exceed, or the one that they exceed most, with the excess. */
export function exceededBalance(
  order: TreeOrder,
  moment: Moment,
  x: Float64Array,
  worst = false,
): { readonly balance: Balance; readonly excess: number } | undefined {
  if (order.allBalances.length === 0) return undefined;
  const sums = chargingByNode(order, x);
  let found: { readonly balance: Balance; readonly excess: number } | undefined;
  for (const balance of order.allBalances) {
    const excess = balanceSum(balance, sums) - balanceRoom(balance, moment.base);
    if (excess <= Math.max(TOLERANCE, found?.excess ?? 0)) continue;
    found = { balance, excess };
    if (!worst) break;
  }
  return found;
}

/**
 * Shares with as few sides of the limits of neutrals as are needed: those that the currents found exceed are added, at each node the
 * one that is exceeded most, until none is. What is optimal with those is optimal with all.
 * @param share gives `x` its currents, from where they stand, within these balances
 */
export function withSides(
  order: TreeOrder,
  moment: Moment,
  x: Float64Array,
  share: (balances: readonly Balance[]) => void,
): void {
  const begin = x.slice();
  const counted = new Set(order.allBalances.filter(({ of }) => isOfLines(of)));
  for (;;) {
    x.set(begin);
    share([...counted]);
    const sums = chargingByNode(order, x);
    let found = false;
    for (const here of order.balances) {
      let [worst, most] = [undefined as Balance | undefined, TOLERANCE];
      for (const balance of here) {
        if (counted.has(balance)) continue;
        const excess = balanceSum(balance, sums) - balanceRoom(balance, moment.base);
        if (excess > most) [worst, most] = [balance, excess];
      }
      if (!worst) continue;
      counted.add(worst);
      found = true;
    }
    if (!found) return;
  }
}

/**
 * Weighted max-min fairness where limits on unbalance and of neutrals count too. They are no packing constraints: raising one line may
 * make room on another, so filling alone is not optimal. The level of all is raised by linear programming, the points
 * that stand in the way are fixed, and so on: the lexicographic optimum.
 */
export const raiseTogether = (order: TreeOrder, moment: Moment, filling: Raising): void =>
  withSides(order, moment, filling.x, (balances) => raiseWithin(order, moment, filling, balances));

/** What is raised, and how. */
interface Raising {
  readonly members: Int32Array;
  readonly x: Float64Array;
  readonly weight: Float64Array;
  readonly most: Float64Array;
}

const behindOf =
  ({ first, end }: TreeOrder, members: Int32Array) =>
  (v: number) =>
    [...members.keys()].filter((k) => members[k]! >= first[v]! && members[k]! < end[v]!);

/** What balances leave for rises above floors, as far as they can be exceeded. */
function balanceRows(
  order: TreeOrder,
  moment: Moment,
  { members }: Pick<Raising, 'members'>,
  balances: readonly Balance[],
  floors: Float64Array,
  upper: Float64Array,
): Row[] {
  const behind = behindOf(order, members);
  return balances.flatMap((balance): Row[] => {
    const lean = (k: number) => balance.lean[order.mask[members[k]!]!]!;
    const leaning = behind(balance.v).filter((k) => lean(k) !== 0);
    const room = Math.max(0, balanceRoom(balance, moment.base) - balanceSum(balance, floors));
    if (leaning.reduce((sum, k) => sum + Math.max(0, lean(k)) * upper[k]!, 0) <= room) return [];
    return [{ variables: leaning, coefficients: leaning.map(lean), most: room }];
  });
}

/**
 * Takes back, of currents that a method of sharing has raised above floors, what balances are exceeded by: so that the least is lost of
 * the sum of weight times logarithm.
 * @param floor currents before they were raised, within all balances
 */
export function takeBack(order: TreeOrder, moment: Moment, raising: Raising, floor: Float64Array): void {
  const { members, x, weight } = raising;
  if (members.length > EXACT_UNBALANCE_POINTS || !exceededBalance(order, moment, x)) return;
  const floors = chargingByNode(order, floor);
  withSides(order, moment, x, (balances) => {
    const upper = Float64Array.from(members, (i) => x[i]! - floor[i]!);
    const lp = programme(upper, balanceRows(order, moment, raising, balances, floors, upper));
    lp.maximise(Float64Array.from(members, (i) => (x[i]! > floor[i]! ? weight[i]! / x[i]! : 0)));
    const kept = lp.solution();
    for (let k = 0; k < members.length; k++) x[members[k]!] = floor[members[k]!]! + kept[k]!;
  });
}

function raiseWithin(order: TreeOrder, moment: Moment, filling: Raising, balances: readonly Balance[]): void {
  const { members, x, weight, most } = filling;
  const floors = chargingByNode(order, x);
  const upper = Float64Array.from(members, (i) => most[i]! - x[i]!);
  const size = members.length;
  const level = { upper: Float64Array.from([...upper]), rows: [] as Row[] };
  // current = floor + variable; each point's own row: level · weight - variable <= floor
  for (let k = 0; k < size; k++) level.rows.push({ variables: [k], coefficients: [-1], most: x[members[k]!]! });
  const behind = behindOf(order, members);
  for (let v = 0; v < order.nodes.length; v++) {
    const here = behind(v);
    for (let p = 0; p < 3; p++) {
      const users = here.filter((k) => order.mask[members[k]!]! & LINE_BIT[p]!);
      const room = moment.room[3 * v + p]! - floors[3 * v + p]!;
      if (users.length === 0 || users.reduce((sum, k) => sum + upper[k]!, 0) <= room) continue;
      level.rows.push({ variables: users, coefficients: users.map(() => 1), most: Math.max(0, room) });
    }
  }
  level.rows.push(...balanceRows(order, moment, filling, balances, floors, upper));
  const lp = programme(level.upper, level.rows, size + 1);
  lp.raiseLevels(
    [...members.keys()],
    Float64Array.from(members, (i) => weight[i]!),
  );
  const raised = lp.solution();
  for (let k = 0; k < size; k++) x[members[k]!] = x[members[k]!]! + raised[k]!;
}

/** Limits on unbalance that leave nothing either way have no inside for the method of sharing: they get this much, A. */
export const INTERIOR = 1e-7;

/** Rounds in which currents are lowered by no more than what is exceeded. */
const PATIENCE = 200;

/**
 * Lowers currents until no limit on unbalance nor of a neutral is exceeded: each time on the line that leads, the points
 * with the highest current over weight first, down to their floor and, if that is not enough, to nothing.
 * @param step unit in which currents go down, A; 0 for any amount
 */
export function lowerToBalance(
  order: TreeOrder,
  moment: Moment,
  x: Float64Array,
  { weight, floor, step }: { weight: Float64Array; floor: Float64Array; step: number },
): void {
  let rounds = 0;
  const exceeded = () => exceededBalance(order, moment, x, step === 0 && rounds >= PATIENCE);
  for (let over = exceeded(); over; over = exceeded()) {
    // limits of several nodes may each lead to the next, for ever, by what the method of sharing leaves open
    if (++rounds > PATIENCE && step === 0 && over.excess <= 2 * INTERIOR) return;
    const { v, lean } = over.balance;
    const leaning: number[] = [];
    for (let i = order.first[v]!; i < order.end[v]!; i++) if (x[i]! > 0 && lean[order.mask[i]!]! > 0) leaning.push(i);
    const lead = leaning.reduce((most, i) => Math.max(most, lean[order.mask[i]!]!), 0);
    const rank = leaning.filter((i) => lean[order.mask[i]!]! >= lead / 2);
    if (rank.length === 0) return; // only the other load leans: charging cannot mend it and does not worsen it
    const above = rank.filter((i) => x[i]! > floor[i]! + TOLERANCE);
    const from = above.length > 0 ? above : rank;
    const top = from.reduce((a, b) => (x[b]! / weight[b]! > x[a]! / weight[a]! + 1e-12 ? b : a));
    if (above.length === 0) x[top] = 0;
    else if (step > 0) x[top] = Math.max(floor[top]!, stepFrom(x[top]!, step, -1));
    else {
      const by = above.map((i) => lean[order.mask[i]!]!);
      // and where it is more, by more at a time
      const more = 2 ** Math.max(0, Math.floor((rounds - PATIENCE) / (4 * order.allBalances.length)));
      lowerLevel({ x, which: above, weight, floor }, by, over.excess * more);
    }
  }
}

/** Lowers the highest of the given points, level with each other, until their sum by the given factors is less by an amount, or to their floors. */
function lowerLevel(
  { x, which, weight, floor }: { x: Float64Array; which: number[]; weight: Float64Array; floor: Float64Array },
  by: readonly number[],
  amount: number,
): void {
  const sumOf = (currents: readonly number[]) => currents.reduce((sum, current, k) => sum + by[k]! * current, 0);
  const at = (level: number) =>
    which.map((i) => Math.max(Math.min(x[i]!, weight[i]! * level), Math.min(x[i]!, floor[i]!)));
  const total = sumOf(which.map((i) => x[i]!));
  let [low, high] = [0, Math.max(...which.map((i) => x[i]! / weight[i]!))];
  for (let k = 0; k < 100; k++) {
    const middle = (low + high) / 2;
    if (sumOf(at(middle)) > total - amount) high = middle;
    else low = middle;
  }
  at(low).forEach((value, k) => {
    x[which[k]!] = value;
  });
}

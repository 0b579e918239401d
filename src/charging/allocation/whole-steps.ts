import { type Moment, type TreeOrder, wayOf } from '../network/tree-order.js';
import { stepFrom, TOLERANCE, wholeSteps } from './steps.js';
import { exceededBalance, lowerToBalance } from './unbalance.js';

/** What is to be rounded. */
export interface Rounding {
  /** Currents, A, rounded in place. */
  readonly x: Float64Array;
  /** Points whose currents are rounded. */
  readonly members: Iterable<number>;
  /** What the others leave by conductor, A; what the rounded ones take is taken off. */
  readonly room: Float64Array;
  /** Unit of the result, A. */
  readonly step: number;
  /** Whether what rounding down leaves is given away again. */
  readonly remainder: 'share' | 'leave';
  /** Smallest current of each point, in whole steps. */
  readonly least: Float64Array;
  /** Largest current of each point. */
  readonly most: Float64Array;
  /** Weight of each point. */
  readonly weight: Float64Array;
}

/**
 * Rounds currents to whole steps: all down, then one step more to the largest remainder for which it fits, and so on;
 * what then still fits goes on in the same way, so that in the end no current can be raised by a step alone. No limit is
 * exceeded, whatever the steps.
 */
export function roundToSteps(order: TreeOrder, moment: Moment, rounding: Rounding): void {
  const { x, members, room, step, least, most, weight } = rounding;
  const wanted = x.slice();
  const running: number[] = [];
  const move = (i: number, by: number) => {
    for (const c of wayOf(order, i)) room[c] = room[c]! - by;
  };
  for (const i of members) {
    if (x[i]! === 0) continue;
    x[i] = wholeSteps(x[i]!, step);
    if (x[i]! < least[i]! - TOLERANCE) x[i] = 0;
    if (x[i]! > 0) running.push(i);
  }
  if (order.allBalances.length > 0) lowerToBalance(order, moment, x, { weight, floor: least, step });
  for (const i of running) move(i, x[i]!);
  if (rounding.remainder === 'leave') return;

  const fits = (i: number): boolean => {
    if (x[i]! === 0 || x[i]! + step > most[i]! + TOLERANCE) return false;
    for (const c of wayOf(order, i)) if (room[c]! + TOLERANCE < step) return false;
    if (order.allBalances.length === 0) return true;
    const here = x[i]!;
    x[i] = here + step;
    const over = exceededBalance(order, moment, x);
    x[i] = here;
    return over === undefined;
  };
  const short = new Float64Array(x.length);
  let open = running;
  while (open.length > 0) {
    open = open.filter(fits);
    for (const i of open) short[i] = Math.round((wanted[i]! - x[i]!) * 1e9);
    open.sort((a, b) => short[b]! - short[a]! || x[a]! / weight[a]! - x[b]! / weight[b]! || a - b);
    for (const i of open) {
      if (!fits(i)) continue;
      x[i] = stepFrom(x[i]!, step, 1);
      move(i, step);
    }
  }
}

import { ratio } from '../../units/index.js';
import type { NetworkNode } from './network.js';

/** A limit on a sum of the line currents behind a node, each by a factor: of one line less another, or of a neutral. */
export interface Balance {
  /** Place of the node. */
  readonly v: number;
  /** What an ampere adds to the sum, by the mask of its lines. */
  readonly lean: Float64Array;
  /** Largest sum, A. */
  readonly most: number;
  /** The line that leads and the one that is led, or the neutral that it is a side of. */
  readonly of: readonly [lead: number, led: number] | Side;
}

/** A side of the figure that stands for the limit of a neutral. */
interface Side {
  /** Limit of the neutral, A. */
  readonly limit: number;
  /** Third harmonic over the line current. */
  readonly thirdHarmonic: number;
  /** Distance of the side over the limit. */
  readonly distance: number;
}

/** Whether a balance is one of lines, not a side of the limit of a neutral. */
export const isOfLines = (of: Balance['of']): of is readonly [number, number] => Array.isArray(of);

/** What an ampere on the lines of each mask adds where one on each line adds these. */
export const leansOf = (by: readonly [number, number, number]): Float64Array =>
  Float64Array.from({ length: 8 }, (_, mask) => {
    const sum = by.reduce((all, factor, p) => all + (mask & (1 << p) ? factor : 0), 0);
    // three lines alike cancel: rounding leaves a crumb
    return Math.abs(sum) < 1e-12 ? 0 : sum;
  });

const pair = (p: number, q: number): Float64Array => {
  const by: [number, number, number] = [0, 0, 0];
  by[p] = 1;
  by[q] = -1;
  return leansOf(by);
};

const SIDES = 24;
/** Half the angle of a side, π/24: corners lie where one line or two alike are loaded. */
const HALF = 0.1308996938995747;
/** Ends of the sides of a quarter circle of fundamental and third harmonic, π/6. */
const THIRD = 0.5235987755982988;

/**
 * Sides of a figure within the limit of a neutral: the sum of three currents a third of a period apart is within a
 * circle, with third harmonics, which add up, within an ellipsoid.
 */
function neutralBalances(v: number, limit: number, thirdHarmonic: number): readonly Balance[] {
  const sides = Array.from({ length: SIDES }, (_, k) => (2 * k + 1) * HALF);
  const rings = thirdHarmonic > 0 ? [0, THIRD / 2, (3 * THIRD) / 2, (5 * THIRD) / 2] : [0];
  return sides.flatMap((side) =>
    rings.map((ring): Balance => {
      const on = (turn: number) =>
        (Math.cos(ring) * Math.cos(side - turn)) / Math.cos(HALF) + Math.sin(ring) * thirdHarmonic;
      const third = (2 * Math.PI) / 3;
      const distance = ring > 0 ? Math.cos(THIRD / 2) : 1;
      const lean = leansOf([on(0), on(third), on(-third)]);
      return { v, lean, most: limit * distance, of: { limit, thirdHarmonic, distance } };
    }),
  );
}

/** The limits of how far the lines behind a node may differ, and of its neutral. */
export function balancesOf(
  { unbalance, neutralLimit, thirdHarmonic = ratio(0) }: NetworkNode,
  v: number,
): readonly Balance[] {
  const pairs =
    unbalance === undefined
      ? []
      : [0, 1, 2].flatMap((p) =>
          [0, 1, 2].filter((q) => q !== p).map((q): Balance => ({ v, lean: pair(p, q), most: unbalance, of: [p, q] })),
        );
  return [...pairs, ...(neutralLimit === undefined ? [] : neutralBalances(v, neutralLimit, thirdHarmonic))];
}

/** The sum of a balance from currents by line, A: of its node, where they are of all nodes. */
export const balanceSum = ({ v, lean }: Pick<Balance, 'v' | 'lean'>, sums: Float64Array): number => {
  const at = sums.length === 3 ? 0 : 3 * v;
  return lean[1]! * sums[at]! + lean[2]! * sums[at + 1]! + lean[4]! * sums[at + 2]!;
};

/** Current of a neutral from line currents at unity power factor, A: their phasors, and third harmonics, which add up. */
export function neutralOf(a: number, b: number, c: number, thirdHarmonic = 0): number {
  const fundamental = Math.sqrt(((a - b) ** 2 + (b - c) ** 2 + (c - a) ** 2) / 2);
  return Math.hypot(fundamental, thirdHarmonic * Math.max(0, a + b + c));
}

/**
 * What other load leaves of a balance for charging, A: charging never adds to what is exceeded already, and a neutral
 * that carries too much carries no more.
 */
export function balanceRoom(balance: Balance, base: Float64Array): number {
  const { v, most, of } = balance;
  const allowed = isOfLines(of)
    ? most
    : Math.max(most, of.distance * neutralOf(base[3 * v]!, base[3 * v + 1]!, base[3 * v + 2]!, of.thirdHarmonic));
  return Math.max(0, allowed - balanceSum(balance, base));
}

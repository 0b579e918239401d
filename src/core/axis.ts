import type { UnitOf } from '../units/index.js';
import type { Name, Vocabulary } from './vocabulary/index.js';

/** An axis of labels, in the order of the print. @inline */
export interface LabelAxis<L extends string = string> {
  readonly name: string;
  readonly labels: readonly L[];
}

/** An axis of numbers with a unit. @inline */
export interface NumberAxis<N extends Name = Name> {
  /** The role from the vocabulary that the numbers play. */
  readonly name: N;
  /** Canonical unit of that role. */
  readonly unit: UnitOf<Vocabulary[N]>;
  /** What may happen between two numbers: nothing, the next larger one counts, or a straight line. */
  readonly between: 'exact' | 'next-up' | 'linear';
  /** The clause that allows it, where it is not `exact`. */
  readonly allowedBy?: string;
  /** Below the first number the first one counts (a factor that may not rise beyond it). */
  readonly below?: 'first';
}

/** An axis of a table. @inline */
export type Axis = LabelAxis | NumberAxis;

/** Whether an axis is one of labels. */
export const isLabels = (axis: Axis): axis is LabelAxis => 'labels' in axis;

/**
 * Places on an axis whose cells a key draws on, with the weight of the second one; undefined beyond the axis.
 * @param keys what the axis offers, in order
 * @param places the place of each key that it offers
 */
export function placeOn(
  axis: Axis,
  key: string | number,
  keys: readonly (string | number)[],
  places: ReadonlyMap<string | number, number>,
) {
  const exact = places.get(key);
  if (exact !== undefined) return { low: exact, high: exact, weight: 0 };
  if (isLabels(axis) || typeof key !== 'number' || Number.isNaN(key)) return undefined;
  const high = keys.findIndex((k) => (k as number) > key);
  if (high === 0) return axis.below === 'first' ? { low: 0, high: 0, weight: 0 } : undefined;
  if (high < 0 || axis.between === 'exact') return undefined;
  if (axis.between === 'next-up') return { low: high, high, weight: 0 };
  const [a, b] = [keys[high - 1] as number, keys[high] as number];
  return { low: high - 1, high, weight: (key - a) / (b - a) };
}

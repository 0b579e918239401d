import type { Bounds, CanonicalUnit, Quantity } from '../../units/index.js';

/** What the vocabulary says of one role that a quantity plays. @inline */
export interface Term<U extends string = string> extends Bounds {
  /** Symbol as the trade writes it, `_` before a subscript: `I_b`. */
  readonly symbol: string;
  /** Canonical unit. */
  readonly unit: U;
  /** The role in a few words, lower case. */
  readonly words: string;
}

/** Roles of one topic, a row each. The doc comment repeats the row in words, since editors show it with every input. */
export type Roles = Readonly<
  Record<string, readonly [symbol: string, unit: CanonicalUnit, range: Bounds, words: string]>
>;

export const anyNumber: Bounds = {};
export const fromZero: Bounds = { least: 0 };
export const aboveZero: Bounds = { above: 0 };
/** From nothing to the whole. */
export const share: Bounds = { least: 0, most: 1 };
/** A share that is never nothing. */
export const part: Bounds = { above: 0, most: 1 };

/** The type of each role's values, from the unit of its term. */
export type Quantities<T extends Readonly<Record<keyof T, Term>>> = { [N in keyof T]: Quantity<T[N]['unit']> };

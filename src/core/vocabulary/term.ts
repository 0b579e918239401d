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

/** Roles of one topic. The doc comment of each repeats its entry in words, since editors show it with every input. */
export type Roles = Readonly<Record<string, Term<CanonicalUnit>>>;

/** The type of each role's values, from the unit of its entry. */
export type Quantities<R extends Roles> = { [N in keyof R]: Quantity<R[N]['unit']> };

import type { Bounds, Quantity, UnitOf } from '../../units/index.js';

/** What the glossary says of one role that a quantity plays. */
export interface Term<U extends string = string> extends Bounds {
  /** Symbol as the trade writes it, `_` before a subscript: `I_b`. */
  readonly symbol: string;
  /** Canonical unit. */
  readonly unit: U;
  /** The role in a few words, lower case. */
  readonly words: string;
}

/** The record that goes with an interface of roles: the compiler holds the two together. */
export type Terms<V> = { readonly [N in keyof V]: V[N] extends Quantity<string> ? Term<UnitOf<V[N]>> : never };

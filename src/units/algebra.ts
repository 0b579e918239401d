import { quantity } from './constructors.js';
import type { Quantity } from './quantity.js';

/**
 * What a product of two units is, in the canonical units of this trade. A pair that is not listed does not compile.
 * Read `Products['A']['Ω']` as "amperes times ohms are volts".
 */
export interface Products {
  /** Amperes times ... */
  readonly A: { readonly Ω: 'V'; readonly V: 'VA' };
  /** Volts times ... */
  readonly V: { readonly A: 'VA' };
  /** Ohms times ... */
  readonly Ω: { readonly A: 'V' };
  /** Ohms per metre times ... */
  readonly 'Ω/m': { readonly m: 'Ω' };
  /** Metres times ... */
  readonly m: { readonly 'Ω/m': 'Ω'; readonly 'W/m': 'W' };
  /** Watts per metre times ... */
  readonly 'W/m': { readonly m: 'W' };
}

/** What a quotient of two units is. A pair that is not listed does not compile. */
export interface Quotients {
  /** Volts over ... */
  readonly V: { readonly A: 'Ω'; readonly Ω: 'A' };
  /** Volt-amperes over ... */
  readonly VA: { readonly V: 'A'; readonly A: 'V' };
  /** Ohms over ... */
  readonly Ω: { readonly m: 'Ω/m'; readonly 'Ω/m': 'm' };
  /** Watts over ... */
  readonly W: { readonly m: 'W/m' };
}

// NoInfer on the second operand: without it the unit widens to a union and a mix compiles.

/** Sum of two quantities of one unit. */
export const plus = <U extends string>(a: Quantity<U>, b: NoInfer<Quantity<U>>): Quantity<U> => (a + b) as Quantity<U>;
/** Difference of two quantities of one unit. */
export const minus = <U extends string>(a: Quantity<U>, b: NoInfer<Quantity<U>>): Quantity<U> => (a - b) as Quantity<U>;
/** A quantity multiplied by a plain number or a ratio. */
export const scaled = <U extends string>(a: Quantity<U>, by: number): Quantity<U> => (a * by) as Quantity<U>;
/** The ratio of two quantities of one unit; throws `not-finite` when the second is zero. */
export const ratioOf = <U extends string>(a: Quantity<U>, b: NoInfer<Quantity<U>>): Quantity<'1'> =>
  quantity(a / b, '1');
/** Whether the first quantity is at most the second. */
export const atMost = <U extends string>(a: Quantity<U>, b: NoInfer<Quantity<U>>): boolean => a <= b;
/** Whether the first quantity is at least the second. */
export const atLeast = <U extends string>(a: Quantity<U>, b: NoInfer<Quantity<U>>): boolean => a >= b;
/** The larger of two quantities of one unit. */
export const larger = <U extends string>(a: Quantity<U>, b: NoInfer<Quantity<U>>): Quantity<U> => (a >= b ? a : b);
/** The smaller of two quantities of one unit. */
export const smaller = <U extends string>(a: Quantity<U>, b: NoInfer<Quantity<U>>): Quantity<U> => (a <= b ? a : b);

/**
 * The product of two quantities whose product the trade names, such as amperes times ohms.
 * @example
 * ```ts
 * import { amperes, ohms, times } from 'ohmwright';
 *
 * times(amperes(32), ohms(0.5)); // => 16
 * ```
 */
export function times<U extends keyof Products, V extends keyof Products[U] & string>(
  a: Quantity<U>,
  b: Quantity<V>,
): Quantity<Products[U][V] & string> {
  return (a * b) as Quantity<Products[U][V] & string>;
}

/**
 * The quotient of two quantities whose quotient the trade names, such as volts over ohms.
 * @throws CalculationError `not-finite` when the second quantity is zero
 * @example
 * ```ts
 * import { over, ohms, volts } from 'ohmwright';
 *
 * over(volts(230), ohms(0.5)); // => 460
 * ```
 */
export function over<U extends keyof Quotients, V extends keyof Quotients[U] & string>(
  a: Quantity<U>,
  b: Quantity<V>,
): Quantity<Quotients[U][V] & string> {
  return quantity(a / b, '') as Quantity<Quotients[U][V] & string>;
}

import { quantity } from './constructors.js';
import type { Quantity } from './quantity.js';

/**
 * What a product of two units is, in the canonical units of this trade. A pair that is not listed does not compile.
 * Read `Products['A']['Ω']` as "amperes times ohms are volts".
 */
export interface Products {
  readonly A: { readonly Ω: 'V'; readonly V: 'VA' };
  readonly V: { readonly A: 'VA' };
  readonly Ω: { readonly A: 'V' };
  readonly 'Ω/m': { readonly m: 'Ω' };
  readonly m: { readonly 'Ω/m': 'Ω'; readonly 'W/m': 'W' };
  readonly 'W/m': { readonly m: 'W' };
}

/** What a quotient of two units is. A pair that is not listed does not compile. */
export interface Quotients {
  readonly V: { readonly A: 'Ω'; readonly Ω: 'A' };
  readonly VA: { readonly V: 'A'; readonly A: 'V' };
  readonly Ω: { readonly m: 'Ω/m'; readonly 'Ω/m': 'm' };
  readonly W: { readonly m: 'W/m' };
}

// NoInfer on the second operand: without it the unit widens to a union and a mix compiles.

/**
 * Sum of two quantities of one unit.
 * @param a the first quantity
 * @param b the second, of the same unit
 * @returns the sum, in their unit
 * @throws CalculationError `not-finite` when the result is no finite number
 * @example
 * ```ts
 * import { amperes, plus } from 'ohmwright';
 *
 * plus(amperes(32), amperes(16)); // => 48
 * ```
 */
export const plus = <U extends string>(a: Quantity<U>, b: NoInfer<Quantity<U>>): Quantity<U> =>
  quantity(a + b, '') as unknown as Quantity<U>;
/**
 * Difference of two quantities of one unit.
 * @param a the first quantity
 * @param b what is taken from it, of the same unit
 * @returns the difference, in their unit
 * @throws CalculationError `not-finite` when the result is no finite number
 * @example
 * ```ts
 * import { amperes, minus } from 'ohmwright';
 *
 * minus(amperes(100), amperes(32)); // => 68
 * ```
 */
export const minus = <U extends string>(a: Quantity<U>, b: NoInfer<Quantity<U>>): Quantity<U> =>
  quantity(a - b, '') as unknown as Quantity<U>;
/**
 * A quantity multiplied by a plain number or a ratio.
 * @param a the quantity
 * @param by plain number, any finite one
 * @returns the product, in the unit of the quantity
 * @throws CalculationError `not-finite` when the result is no finite number
 * @example
 * ```ts
 * import { amperes, scaled } from 'ohmwright';
 *
 * scaled(amperes(40), 0.8); // => 32
 * ```
 */
export const scaled = <U extends string>(a: Quantity<U>, by: number): Quantity<U> =>
  quantity(a * by, '') as unknown as Quantity<U>;
/**
 * The ratio of two quantities of one unit.
 * @param a the first quantity
 * @param b the second, of the same unit, not 0
 * @returns the ratio, a plain number
 * @throws CalculationError `not-finite` when the second is 0
 * @example
 * ```ts
 * import { ratioOf, volts } from 'ohmwright';
 *
 * ratioOf(volts(6.9), volts(230)); // => 0.03
 * ```
 */
export const ratioOf = <U extends string>(a: Quantity<U>, b: NoInfer<Quantity<U>>): Quantity<'1'> =>
  quantity(a / b, '1');
/**
 * Whether the first quantity is at most the second.
 * @param a the first quantity
 * @param b the second, of the same unit
 * @returns true when the first is smaller or equal
 * @example
 * ```ts
 * import { amperes, atMost } from 'ohmwright';
 *
 * atMost(amperes(32), amperes(47)); // => true
 * ```
 */
export const atMost = <U extends string>(a: Quantity<U>, b: NoInfer<Quantity<U>>): boolean => a <= b;
/**
 * Whether the first quantity is at least the second.
 * @param a the first quantity
 * @param b the second, of the same unit
 * @returns true when the first is larger or equal
 * @example
 * ```ts
 * import { amperes, atLeast } from 'ohmwright';
 *
 * atLeast(amperes(32), amperes(47)); // => false
 * ```
 */
export const atLeast = <U extends string>(a: Quantity<U>, b: NoInfer<Quantity<U>>): boolean => a >= b;
/**
 * The larger of two quantities of one unit.
 * @param a the first quantity
 * @param b the second, of the same unit
 * @returns the larger one, in their unit
 */
export const larger = <U extends string>(a: Quantity<U>, b: NoInfer<Quantity<U>>): Quantity<U> => (a >= b ? a : b);
/**
 * The smaller of two quantities of one unit.
 * @param a the first quantity
 * @param b the second, of the same unit
 * @returns the smaller one, in their unit
 */
export const smaller = <U extends string>(a: Quantity<U>, b: NoInfer<Quantity<U>>): Quantity<U> => (a <= b ? a : b);

/**
 * The product of two quantities whose product the trade names, such as amperes times ohms.
 * @param a the first quantity
 * @param b the second, of a unit that `Products` lists beside the first
 * @returns the product, in the unit that `Products` names
 * @throws CalculationError `not-finite` when the result is no finite number
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
  return quantity(a * b, '') as Quantity<Products[U][V] & string>;
}

/**
 * The quotient of two quantities whose quotient the trade names, such as volts over ohms.
 * @param a the quantity that is divided
 * @param b the divisor, not 0, of a unit that `Quotients` lists beside the first
 * @returns the quotient, in the unit that `Quotients` names
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

import type { Source } from './source.js';
import { stated } from './stated.js';

/** What a survey knows: a value, and who says so. @inline */
export interface KnownFact<T> {
  readonly state: 'known';
  readonly value: T;
  /** Who or what says so: a label, a photograph, a letter, a measurement. */
  readonly by?: string;
  /** Set where nobody looked and it was taken from a set of assumptions: the set and its entry. What passes by it passes on condition. */
  readonly assumed?: string;
}

/** What a survey knows within a range. @inline */
export interface RangeFact<T> {
  readonly state: 'between';
  readonly least: T;
  readonly most: T;
  readonly by?: string;
  /** Set where nobody looked and it was taken from a set of assumptions: the set and its entry. */
  readonly assumed?: string;
}

/** What a survey does not know, and how it could be known. @inline */
export interface UnknownFact {
  readonly state: 'unknown';
  readonly obtain?: string;
  /** Set where things are said of it that cannot be true together. */
  readonly disagree?: true;
}

/** One type for everything that is surveyed. */
export type Fact<T> = KnownFact<T> | RangeFact<T> | UnknownFact;

/**
 * A fact that is known.
 * @param value the value
 * @param by who or what says so
 * @returns the fact, plain JSON
 * @example
 * ```ts
 * import { known } from 'ohmwright';
 *
 * known(32, 'label'); // => { state: 'known', value: 32, by: 'label' }
 * ```
 */
export const known = <const T>(value: T, by?: string): KnownFact<T> =>
  by === undefined ? { state: 'known', value } : { state: 'known', value, by };

/**
 * A fact known within a range, ends included.
 * @param least smallest value that is possible
 * @param most largest value that is possible
 * @param by who or what says so
 * @returns the fact, plain JSON
 * @example
 * ```ts
 * import { between, metres } from 'ohmwright';
 *
 * between(metres(20), metres(26), 'floor plan'); // => { state: 'between', least: 20, most: 26, by: 'floor plan' }
 * ```
 */
export const between = <T extends number>(least: T, most: NoInfer<T>, by?: string): RangeFact<T> =>
  by === undefined ? { state: 'between', least, most } : { state: 'between', least, most, by };

/**
 * A fact that is not known.
 * @param obtain how it could be obtained
 * @returns the fact, plain JSON
 * @example
 * ```ts
 * import { unknown } from 'ohmwright';
 *
 * unknown('read the label'); // => { state: 'unknown', obtain: 'read the label' }
 * ```
 */
export const unknown = (obtain?: string): UnknownFact =>
  obtain === undefined ? { state: 'unknown' } : { state: 'unknown', obtain };

/** Why a value could not be had. */
export type Gap =
  | {
      /** A surveyed fact is not known. */
      readonly kind: 'fact';
      /** Name of the fact, a role of the vocabulary or a path in the survey. */
      readonly fact: string;
      readonly obtain?: string;
      /** Set where things are said of it that cannot be true together. */
      readonly disagree?: true;
    }
  | {
      /** A table has no cell for what was asked. */
      readonly kind: 'cell';
      readonly table: string;
      /** What it has and what was asked, in words. */
      readonly explain: string;
      readonly source: Source;
    }
  | {
      /** A value lies outside the range of the formula that needs it, or the formula has no finite result. */
      readonly kind: 'range';
      readonly formula: string;
      /** Quantity, value with unit, permitted range and source, in words. */
      readonly explain: string;
    }
  | {
      /** The text of the edition that rules here was not available. */
      readonly kind: 'edition';
      readonly edition: string;
      readonly explain: string;
    };

/** A value that could not be had; it flows through the steps and ends in `not-determined`. */
export interface Missing {
  readonly missing: readonly Gap[];
}

/** A value, or the reasons why there is none. */
export type Known<T> = T | Missing;

/**
 * Whether a value could not be had.
 * @param value a value or the reasons why there is none
 * @returns true when it holds reasons in the place of a value
 * @example
 * ```ts
 * import { isMissing, missing } from 'ohmwright';
 *
 * isMissing(missing({ kind: 'fact', fact: 'rating' })); // => true
 * isMissing(32); // => false
 * ```
 */
export const isMissing = (value: unknown): value is Missing =>
  // read, not looked for by `in`: it is asked of every figure, and objects of many shapes answer a read many times faster
  typeof value === 'object' && value !== null && (value as Partial<Missing>).missing !== undefined;

/**
 * The reasons of one or several gaps as a missing value.
 * @param gaps what stands in the way
 * @returns a value that could not be had, with these reasons
 * @example
 * ```ts
 * import { missing } from 'ohmwright';
 *
 * missing({ kind: 'fact', fact: 'rating' }); // => { missing: [{ kind: 'fact', fact: 'rating' }] }
 * ```
 */
export const missing = (...gaps: Gap[]): Missing => ({ missing: gaps });

/**
 * A plain value of a fact: the value if known, the reasons if not. A range is no single value and must be resolved by
 * the caller first.
 * @param name what the fact is called in a list of missing facts
 * @param fact the fact
 * @returns the value, or the reasons why there is none
 * @example
 * ```ts
 * import { factValue, isMissing, known, unknown } from 'ohmwright';
 *
 * factValue('rating', known(32)); // => 32
 * isMissing(factValue('rating', unknown('read the label'))); // => true
 * ```
 */
export function factValue<T>(name: string, fact: Fact<T>): Known<T> {
  if (fact.state === 'known') return fact.value;
  if (fact.state === 'unknown')
    return missing({
      kind: 'fact',
      fact: name,
      ...stated({ obtain: fact.obtain || undefined, disagree: fact.disagree }),
    });
  return fact.least === fact.most
    ? fact.least
    : missing({ kind: 'fact', fact: name, obtain: `known only within a range, ${fact.least} to ${fact.most}` });
}

/** Least and most that a fact can be, the same where it is known; undefined where nothing is known of it. */
export const endsOf = <T extends number>(fact: Fact<T> | undefined): readonly [least: T, most: T] | undefined =>
  fact?.state === 'known'
    ? [fact.value, fact.value]
    : fact?.state === 'between'
      ? [fact.least as T, fact.most as T]
      : undefined;

/** The value of a fact that is known; undefined for any other. */
export const knownOf = <T>(fact: Fact<T> | undefined): T | undefined =>
  fact?.state === 'known' ? fact.value : undefined;

/** Applies a function when all its arguments could be had, and collects the reasons otherwise. */
export function whenKnown<const A extends readonly unknown[], R>(
  values: { readonly [K in keyof A]: Known<A[K]> },
  then: (...values: A) => R,
): R | Missing {
  const gaps: Gap[] = [];
  for (const v of values) if (isMissing(v)) gaps.push(...v.missing);
  return gaps.length > 0 ? { missing: gaps } : then(...(values as unknown as A));
}

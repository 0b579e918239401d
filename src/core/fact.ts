import type { Source } from './source.js';

/** What a survey knows: a value, and who says so. */
export interface KnownFact<T> {
  /** Tells the three kinds apart. */
  readonly state: 'known';
  /** The value. */
  readonly value: T;
  /** Who or what says so: a label, a photograph, a letter, a measurement. */
  readonly by?: string;
}

/** What a survey knows within a range. */
export interface RangeFact<T> {
  /** Tells the three kinds apart. */
  readonly state: 'between';
  /** Smallest value that is possible. */
  readonly least: T;
  /** Largest value that is possible. */
  readonly most: T;
  /** Who or what says so. */
  readonly by?: string;
}

/** What a survey does not know, and how it could be known. */
export interface UnknownFact {
  /** Tells the three kinds apart. */
  readonly state: 'unknown';
  /** How to obtain it. */
  readonly obtain?: string;
}

/** One type for everything that is surveyed. */
export type Fact<T> = KnownFact<T> | RangeFact<T> | UnknownFact;

/**
 * A fact that is known.
 * @param value the value
 * @param by who or what says so
 */
export const known = <const T>(value: T, by?: string): KnownFact<T> =>
  by === undefined ? { state: 'known', value } : { state: 'known', value, by };

/**
 * A fact known within a range, ends included.
 * @param least smallest value that is possible
 * @param most largest value that is possible
 * @param by who or what says so
 */
export const between = <T extends number>(least: T, most: NoInfer<T>, by?: string): RangeFact<T> =>
  by === undefined ? { state: 'between', least, most } : { state: 'between', least, most, by };

/**
 * A fact that is not known.
 * @param obtain how it could be obtained
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
      /** How to obtain it. */
      readonly obtain?: string;
    }
  | {
      /** A table has no cell for what was asked. */
      readonly kind: 'cell';
      /** Identifier of the table. */
      readonly table: string;
      /** What it has and what was asked, in words. */
      readonly explain: string;
      /** Where the table stands. */
      readonly source: Source;
    }
  | {
      /** A value lies outside the range of the formula that needs it, or the formula has no finite result. */
      readonly kind: 'range';
      /** Identifier of the formula. */
      readonly formula: string;
      /** Quantity, value with unit, permitted range and source, in words. */
      readonly explain: string;
    }
  | {
      /** The text of the edition that rules here was not available. */
      readonly kind: 'edition';
      /** The edition. */
      readonly edition: string;
      /** What is missing. */
      readonly explain: string;
    };

/** A value that could not be had; it flows through the steps and ends in `not-determined`. */
export interface Missing {
  /** Everything that stands in the way. */
  readonly missing: readonly Gap[];
}

/** A value, or the reasons why there is none. */
export type Known<T> = T | Missing;

/**
 * Whether a value could not be had.
 * @param value a value or the reasons why there is none
 */
export const isMissing = (value: unknown): value is Missing =>
  typeof value === 'object' && value !== null && 'missing' in value;

/**
 * The reasons of one or several gaps as a missing value.
 * @param gaps what stands in the way
 */
export const missing = (...gaps: Gap[]): Missing => ({ missing: gaps });

/**
 * A plain value of a fact: the value if known, the reasons if not. A range is no single value and must be resolved by
 * the caller first.
 * @param name what the fact is called in a list of missing facts
 * @param fact the fact
 */
export function factValue<T>(name: string, fact: Fact<T>): Known<T> {
  if (fact.state === 'known') return fact.value;
  if (fact.state === 'unknown')
    return missing({ kind: 'fact', fact: name, ...(fact.obtain ? { obtain: fact.obtain } : {}) });
  return fact.least === fact.most
    ? fact.least
    : missing({ kind: 'fact', fact: name, obtain: `known only within a range, ${fact.least} to ${fact.most}` });
}

/**
 * Applies a function when all its arguments could be had, and collects the reasons otherwise.
 * @param values arguments, each a value or the reasons why there is none
 * @param then what to do with them
 */
export function whenKnown<const A extends readonly unknown[], R>(
  values: { readonly [K in keyof A]: Known<A[K]> },
  then: (...values: A) => R,
): R | Missing {
  const gaps = values.flatMap((v) => (isMissing(v) ? v.missing : []));
  return gaps.length > 0 ? { missing: gaps } : then(...(values as unknown as A));
}

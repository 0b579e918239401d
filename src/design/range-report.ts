import type { Aspect } from '../codes/wiring-code.js';
import type { Overall, Verdict } from '../core/index.js';
import type { PermittedInterval } from './regions.js';

/** A fact that is known only within a range. */
export interface RangedFact {
  /** What it is, and of what. */
  readonly name: string;
  /** Role in the vocabulary, where its name says it. */
  readonly role?: string;
  /** Unit, where the role is known. */
  readonly unit?: string;
  /** Smallest value. */
  readonly least: number;
  /** Largest value. */
  readonly most: number;
}

/** How far a check holds over the ranges of the facts. */
export interface RangedCheck {
  /** Aspect that the check belongs to. */
  readonly aspect: Aspect;
  /** Identifier of the check. */
  readonly check: string;
  /** `pass` or `fail` for the whole range, or `depends` on where in the range the facts lie. */
  readonly verdict: Verdict | 'depends';
  /**
   * What the verdict rests on: every figure was bounded over the ranges as a whole, or the ranges were divided until
   * each part of them was decided.
   */
  readonly grounds: 'bounds' | 'divided';
  /** Of a check that depends: where it was found to be worst, by the names of the facts. */
  readonly worstAt?: Readonly<Record<string, number>>;
  /** Of a check that depends: for each fact that tells, the values for which it passes whatever the others are. */
  readonly holds?: readonly { readonly fact: string; readonly intervals: readonly PermittedInterval[] }[];
}

/** What an assessment over ranges rests on. */
export interface RangeReport {
  /** The facts. */
  readonly facts: readonly RangedFact[];
  /** `pass` when every rule passes over the whole range; `fail` when one fails over all of it. */
  readonly verdict: Overall['verdict'] | 'depends';
  /** How far each check holds. */
  readonly checks: readonly RangedCheck[];
}

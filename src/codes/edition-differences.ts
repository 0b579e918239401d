import type { Name } from '../core/index.js';
import type { Aspect } from './wiring-code.js';

/** A change that an edition makes, of one of the kinds that can be entered as data; each has its clause. @inline */
export type EditionChange =
  | {
      /** A printed figure: a cell of a table that the code reads, in the unit of the print. */
      readonly kind: 'figure';
      readonly clause: string;
      readonly table: string;
      readonly column: string;
      readonly row: string | number;
      readonly printed: number | null;
      /** Why the figure stands although it breaks a law of its table. */
      readonly despite?: string;
    }
  | {
      /** A limit or constant that the code states: what it was in the base, what it is, in the canonical unit. */
      readonly kind: 'limit';
      readonly clause: string;
      readonly entry: string;
      readonly was: number;
      readonly is: number;
    }
  | {
      /** A check that is no longer required. */
      readonly kind: 'falls-away';
      readonly clause: string;
      readonly check: string;
    }
  | {
      /** A new limit on a figure that is worked out of every circuit, in the canonical unit. */
      readonly kind: 'at-most' | 'at-least';
      readonly clause: string;
      readonly check: string;
      readonly title: string;
      /** Role of the figure, and a role of the same unit for its limit. */
      readonly value: Name;
      readonly limit: Name;
      readonly is: number;
      readonly weight: 'rule' | 'advice';
    }
  | {
      /** A new requirement that no figure decides: it stays open, and says what has to be confirmed. */
      readonly kind: 'to-confirm';
      readonly clause: string;
      readonly check: string;
      readonly title: string;
      readonly confirm: string;
      readonly weight: 'rule' | 'advice';
    };

/** What somebody entered of one aspect: the aspect was read in the edition, and this is all that differs from the base. @inline */
export interface EnteredAspect {
  /** Clauses that were read. */
  readonly read: string;
  readonly by: string;
  /** ISO day. */
  readonly on: string;
  /** What differs; nothing where it is as in the base. */
  readonly changes: readonly EditionChange[];
}

/**
 * The differences of an edition from one that is entered here, as somebody who holds its text wrote them down. An aspect
 * that is not among them stays open.
 */
export interface EditionDifferences {
  readonly format: 'edition/1';
  /** Document, as its results cite it. */
  readonly document: string;
  readonly edition: string;
  /** Edition that it differs from, which has to be entered here. */
  readonly base: string;
  /** What has to be said of this document wherever a verdict is printed. */
  readonly notice: string;
  readonly aspects: Readonly<Partial<Record<Aspect, EnteredAspect>>>;
}

import type { CheckResult, Overall, Verdict } from './check.js';
import type { Gap } from './fact.js';
import type { Constants } from './formula.js';
import type { Provenance, Source } from './source.js';

/** How values of several parts are brought together. */
export type Gathering = 'sum' | 'largest' | 'smallest';

/** A number with its role and unit, as a written line holds it. */
export interface Written {
  /** Role from the vocabulary, or name of a constant. */
  readonly name: string;
  readonly symbol: string;
  readonly value: number;
  readonly unit: string;
}

/** What a line gives, or the reasons why it gives nothing. */
export type Outcome = { readonly gives: Written } | { readonly blocked: readonly Gap[] };

/** A check that was due, and what it came to. @inline */
export interface Due {
  /** Identifier of the check. */
  readonly check: string;
  readonly verdict: Verdict;
}

/** A line of a written sheet: plain data. Where lines have identifiers, they name one another by them. */
export type SheetLine = {
  readonly id?: string;
  /** Clause of the code by which the figure is used. */
  readonly clause?: string;
  /** Identifiers of the lines that gave what this one uses, by role. */
  readonly ids?: Readonly<Record<string, string>>;
} & SheetLineOfKind;
type SheetLineOfKind =
  | ({
      readonly kind: 'given';
      readonly name: string;
      readonly words: string;
      readonly by?: string;
      /** Assumption that it was taken from, by set and entry. */
      readonly assumed?: string;
    } & Outcome)
  | {
      readonly kind: 'label';
      readonly name: string;
      readonly value?: string;
      readonly blocked?: readonly Gap[];
      readonly by?: string;
      /** Assumption that it was taken from, by set and entry. */
      readonly assumed?: string;
    }
  | ({
      readonly kind: 'look';
      readonly table: string;
      readonly title: string;
      readonly keys: Readonly<Record<string, string | number>>;
      readonly source: Source;
      /** How well the cells are known that were read. */
      readonly provenance?: Provenance;
      /** Who compared these cells with the print, when, and with which edition of it. */
      readonly attested?: string;
    } & Outcome)
  | ({
      readonly kind: 'step';
      readonly formula: string;
      readonly title: string;
      readonly expression: string;
      readonly uses: readonly Written[];
      readonly constants?: Constants;
      readonly source: Source;
    } & Outcome)
  | ({
      readonly kind: 'run';
      readonly procedure: string;
      readonly title: string;
      readonly method: string;
      readonly input: unknown;
      readonly source: Source;
    } & Outcome)
  | ({
      readonly kind: 'gather';
      readonly how: Gathering;
      readonly from: string;
      readonly to: string;
      /** Places of the parts, or identifiers of the lines. */
      readonly parts: readonly string[];
    } & Outcome)
  | ({
      /** Another figure under this name. */
      readonly kind: 'same';
      readonly name: string;
      readonly from: string;
    } & Outcome)
  | {
      readonly kind: 'check';
      readonly uses: readonly Written[];
      readonly holds?: boolean;
      readonly result: CheckResult;
    }
  | { readonly kind: 'result'; readonly result: CheckResult }
  | {
      /** What the results on a sheet and in its parts amount to; no result comes after it. */
      readonly kind: 'overall';
      readonly verdict: Overall['verdict'];
      /** The checks that are due, in their order: each has a result above, and no other counts. */
      readonly due: readonly Due[];
      /** Code by which a circuit is judged: what it always asks for is among them. */
      readonly code?: { readonly document: string; readonly edition: string };
      /** Assumptions by which facts were taken that nobody looked at; nothing passes by them but on condition. */
      readonly assumed?: readonly string[];
    }
  | { readonly kind: 'note'; readonly text: string }
  | { readonly kind: 'part'; readonly part: SheetDocument };

/** A calculation sheet as plain data: it can be stored, sent, printed, and verified by somebody else. */
export interface SheetDocument {
  readonly format: 'sheet/1';
  /** Place in the whole: empty for the sheet itself, `2.1` for the first part of its second part. */
  readonly place: string;
  readonly title: string;
  readonly lines: readonly SheetLine[];
}

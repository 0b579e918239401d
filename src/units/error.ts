/** A bound that a value must respect; absent ends are open. @inline */
export interface Bounds {
  readonly least?: number;
  readonly most?: number;
  /** The value must be greater than this. */
  readonly above?: number;
}

/** What can be wrong with an input. */
export const problemIds = [
  'missing',
  'empty',
  'unknown-key',
  'twice',
  'too-long',
  'too-large',
  'wrong-kind',
  'wrong-form',
  'not-allowed',
  'out-of-range',
  'wrong-order',
  'does-not-fit',
  'no-unit',
  'decimal-comma',
  'unit-spelling',
  'wrong-unit',
  'not-a-quantity',
  'not-a-day',
  'not-a-time',
  'not-json',
  'not-plain-data',
  'not-covered',
] as const;

/** Stable name of what is wrong with an input: one of `problemIds`. */
export type ProblemId = (typeof problemIds)[number];

/** One thing wrong with an input document or an engine's input, and where. */
export interface Problem {
  /** Where in the input, as keys and indices from its root. */
  readonly path: readonly (string | number)[];
  readonly message: string;
  /** Stable name of what is wrong, for a translation or a form; every problem of an `invalid-input` error has one. */
  readonly id?: ProblemId;
  /** What may stand there, where that is a list. */
  readonly allowed?: readonly (string | number | boolean)[];
  /** What is probably meant. */
  readonly write?: string | number | boolean;
}

/** A corrected cell: where it stands, what it was, what it is said to be. @inline */
export interface CorrectionPlace {
  readonly cell: string;
  readonly was: number | null;
  readonly printed: number | null;
}

/** What each error code carries. The keys are the closed union of codes; they are part of the public face. @inline */
export interface ErrorDetails {
  /** A number that is NaN or infinite was offered as a quantity. */
  readonly 'not-finite': { readonly unit: string; readonly value: number };
  /** A quantity lies outside what its role, or the formula that uses it, allows. */
  readonly 'out-of-range': {
    readonly quantity: string;
    readonly value: number;
    readonly unit: string;
    readonly bounds: Bounds;
    readonly source: string;
  };
  /** A table has no cell for these keys. */
  readonly 'no-cell': {
    readonly table: string;
    readonly keys: Readonly<Record<string, string | number>>;
    readonly offers: Readonly<Record<string, readonly (string | number)[]>>;
    readonly source: string;
  };
  /** A text is not a quantity of the unit that is due. */
  readonly 'unreadable-quantity': {
    readonly text: string;
    readonly expected: string;
    readonly spellings: readonly string[];
  };
  /** A document, or an engine's input, is malformed: all problems at once. */
  readonly 'invalid-input': { readonly problems: readonly Problem[] };
  /** An iteration did not reach its stated tolerance. */
  readonly 'not-converged': { readonly method: string; readonly iterations: number; readonly residual: number };
  /** The equations have no solution for these values, such as a load that the supply cannot serve. */
  readonly 'no-solution': { readonly method: string; readonly values: Readonly<Record<string, number>> };
  /** Something that this library does not cover was asked for; it is refused by name. */
  readonly 'not-covered': { readonly what: string };
  /** Two attestations say otherwise of one cell of a table. */
  readonly 'contradicting-attestations': {
    readonly table: string;
    readonly cell: string;
    readonly attested: readonly { readonly by: string; readonly on: string; readonly printed: number | null }[];
  };
  /** Cells that were corrected after the print break laws that the figures of the table obey. */
  readonly 'correction-breaks-law': {
    readonly table: string;
    readonly laws: readonly string[];
    readonly corrections: readonly CorrectionPlace[];
  };
  /** A formula, table, check or edition of this name does not exist. */
  readonly 'unknown-definition': { readonly kind: string; readonly id: string; readonly known: readonly string[] };
}

/** The closed union of stable error codes. */
export type ErrorCode = keyof ErrorDetails;

/**
 * The one error class of this library. Compare `code`, not the class: the ESM and the CommonJS build hold one each.
 *
 * @example
 * ```ts
 * import { amperes, hasCode } from 'ohmwright';
 *
 * let seen = '';
 * try {
 *   amperes(Number.NaN);
 * } catch (error) {
 *   if (hasCode(error, 'not-finite')) seen = error.detail.unit;
 * }
 * seen; // => 'A'
 * ```
 */
export class CalculationError<C extends ErrorCode = ErrorCode> extends Error {
  declare readonly code: C;
  /** The figures behind the message, by code. */
  declare readonly detail: ErrorDetails[C];

  /** @internal */
  constructor(code: C, message: string, detail: ErrorDetails[C]) {
    super(message);
    this.name = 'CalculationError';
    this.code = code;
    this.detail = detail;
  }
}

/**
 * Whether something thrown is this library's error with the given code.
 * @param error whatever was caught
 * @param code the code to compare with
 * @returns true when it is, and the error's `detail` then has its type
 * @example
 * ```ts
 * import { amperes, hasCode } from 'ohmwright';
 *
 * try {
 *   amperes(Number.NaN);
 * } catch (error) {
 *   hasCode(error, 'not-finite'); // => true
 * }
 * ```
 */
export function hasCode<C extends ErrorCode>(error: unknown, code: C): error is CalculationError<C> {
  return error instanceof Error && (error as { code?: unknown }).code === code && 'detail' in error;
}

/** The error for malformed input, with every problem in its message. */
export function invalidInput(what: string, problems: readonly Problem[]): CalculationError<'invalid-input'> {
  const lines = problems.map(({ path, message }) => `  ${path.length ? pathText(path) : '(the whole)'}: ${message}`);
  const many = problems.length === 1 ? 'a problem' : `${problems.length} problems`;
  return new CalculationError('invalid-input', `${what} has ${many}\n${lines.join('\n')}`, {
    // whoever names nothing more precise says that it does not fit what is due
    problems: problems.map((p) => (p.id === undefined ? { ...p, id: 'does-not-fit' } : p)),
  });
}

/** A value as an inspector of the input would read it back; an object may refuse to be made a text. */
export const shown = (value: unknown): string => {
  if (typeof value === 'string') return `'${value.slice(0, 60)}'`;
  if (Array.isArray(value)) return 'a list';
  return typeof value === 'object' && value !== null ? 'an object' : String(value);
};

/**
 * A path as text, such as `boards[0].ways[2].length`.
 * @param path keys and indices from the root
 * @returns keys with dots, indices in brackets
 * @example
 * ```ts
 * import { pathText } from 'ohmwright';
 *
 * pathText(['boards', 0, 'ways', 2, 'length']); // => 'boards[0].ways[2].length'
 * ```
 */
export function pathText(path: readonly (string | number)[]): string {
  return path.map((p, i) => (typeof p === 'number' ? `[${p}]` : i === 0 ? p : `.${p}`)).join('');
}

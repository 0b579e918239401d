import { type Bounds, CalculationError, invalidInput } from '../units/index.js';
import type { Source } from './source.js';
import type { Name, Vocabulary } from './vocabulary/index.js';

/** Named constants of an expression, each a number and its canonical unit. @inline */
export type Constants = Readonly<Record<string, readonly [value: number, unit: string]>>;

/** What a formula is, apart from its code. */
export interface FormulaDefinition<I extends Name = Name, O extends Name = Name> {
  /** Stable identifier, kebab-case. */
  readonly id: string;
  readonly title: string;
  readonly inputs: readonly I[];
  readonly output: O;
  /** The expression in the names of inputs and constants; temperatures stand as plain K, without offset. */
  readonly expression: string;
  readonly constants?: Constants;
  /**
   * Which way the result moves with each input over all that is valid: 1 up with it, -1 down, `either` up or down as the
   * other inputs have it; left out where it turns.
   */
  readonly direction?: { readonly [N in I]?: 1 | -1 | 'either' };
  /** Ranges narrower than the vocabulary's, for this formula only. */
  readonly valid?: { readonly [N in I]?: Bounds };
  /** Set where the result may lie below zero, as a temperature or what is left of something may; it is refused elsewhere. */
  readonly signed?: true;
  readonly source: Source;
}

/** A formula: call it with its inputs by name; its definition is on it. */
export interface Formula<I extends Name = Name, O extends Name = Name> extends FormulaDefinition<I, O> {
  /**
   * The result, always a finite number: throws a CalculationError `out-of-range` that names the input that is missing or no
   * finite number, or the output. `evaluate` guards every range besides.
   */
  (values: Pick<Vocabulary, I>): Vocabulary[O];
  readonly kind: 'formula';
}

/**
 * Defines a formula. Write `/* @__PURE__ *\/` before the call and only literals inside, so that a bundle drops it when
 * unused.
 * @param definition identifier, inputs, output, expression, source and the code that computes it
 * @returns the formula: a function of its inputs by name, with its definition on it
 * @throws CalculationError `out-of-range`, when the formula is called, for an input that is missing or no finite number, or a
 * result that is none
 * @example
 * ```ts
 * import { amperes, formula, volts } from 'ohmwright';
 *
 * const apparentPower = formula({
 *   id: 'apparent-power',
 *   title: 'Apparent power of one line',
 *   inputs: ['demand', 'nominalVoltage'],
 *   output: 'demandPower',
 *   expression: 'demand * nominalVoltage',
 *   compute: ({ demand, nominalVoltage }) => demand * nominalVoltage,
 *   source: { document: 'physics', provenance: 'definition' },
 * });
 * apparentPower({ demand: amperes(40), nominalVoltage: volts(230) }); // => 9200
 * ```
 */
export function formula<const I extends Name, O extends Name>(
  definition: FormulaDefinition<I, O> & { readonly compute: (values: Pick<Vocabulary, I>) => number },
): Formula<I, O>;
// Every page that imports one formula pays for these lines; a relation and a procedure are made by them too.
export function formula({ compute, ...about }: Guarded & { compute(values: unknown): number }): unknown {
  return Object.assign(
    (values: Readonly<Record<string, number>>): number => {
      const y = compute(values ?? {});
      if (y > 0 && y < Infinity) return y;
      // it is given on where it may be zero or below, else an error names the input that is no finite number, or the output
      const odd = about.inputs?.find((name) => !Number.isFinite(values?.[name]));
      const value = (odd ? values?.[odd] : y) as number;
      if (Number.isFinite(value) && (value >= 0 || about.signed)) return y;
      const quantity = odd ?? about.output;
      throw new CalculationError('out-of-range', `${quantity} is ${value}, which ${about.id} forbids`, {
        quantity,
        value,
        unit: '',
        bounds: {},
        source: about.id,
      });
    },
    about,
    { kind: 'formula' },
  );
}

/** What a definition says of itself to the guard of its results. */
interface Guarded {
  readonly id: string;
  readonly output: string;
  readonly inputs?: readonly string[];
  readonly signed?: true;
}
const guarded = <K extends string>(kind: K, compute: (values: never) => number, about: Guarded) =>
  Object.assign(formula({ ...about, compute } as never), { kind }) as never;

/** What a relation is, apart from its solver. */
export interface RelationDefinition<I extends Name = Name, O extends Name = Name>
  extends Omit<FormulaDefinition<I, O>, 'expression'> {
  /** Terms in the names of inputs, constants and output whose sum is zero at the solution; all of one unit. */
  readonly terms: readonly string[];
  /** What the sum of the terms may be, relative to the largest term. */
  readonly tolerance: number;
}

/** A relation: what is solved by iteration. It is proven by its residual. */
export interface Relation<I extends Name = Name, O extends Name = Name> extends RelationDefinition<I, O> {
  /** The solution; throws a CalculationError `no-solution`, `not-converged` or, as a formula does, `out-of-range`. */
  (values: Pick<Vocabulary, I>): Vocabulary[O];
  readonly kind: 'relation';
}

/**
 * Defines a relation.
 * @param definition identifier, inputs, output, terms that sum to zero, source and the solver
 * @returns the relation: a function of its inputs by name, with its definition on it
 * @throws CalculationError `out-of-range`, when the relation is called, as a formula does
 * @example
 * ```ts
 * import { ohms, relation } from 'ohmwright';
 *
 * const squared = relation({
 *   id: 'impedance-by-squares',
 *   title: 'Impedance whose square is that of resistance and reactance together',
 *   inputs: ['resistance', 'reactance'],
 *   output: 'segmentImpedance',
 *   terms: ['segmentImpedance^2', '-resistance^2', '-reactance^2'],
 *   tolerance: 1e-12,
 *   solve: ({ resistance, reactance }) => Math.hypot(resistance, reactance),
 *   source: { document: 'physics', provenance: 'definition' },
 * });
 * squared({ resistance: ohms(3), reactance: ohms(4) }); // => 5
 * ```
 */
export function relation<const I extends Name, O extends Name>(
  definition: RelationDefinition<I, O> & { readonly solve: (values: Pick<Vocabulary, I>) => number },
): Relation<I, O> {
  const { solve, ...about } = definition;
  return guarded('relation', solve, about);
}

/** What a procedure is, apart from its code. */
export interface ProcedureDefinition<O extends Name = Name> {
  /** Stable identifier, kebab-case. */
  readonly id: string;
  readonly title: string;
  readonly output: O;
  /** How the result is found, in words, for a reader of the sheet. */
  readonly method: string;
  /** Set where the result may lie below zero. */
  readonly signed?: true;
  readonly source: Source;
}

/**
 * A procedure: an algorithm over plain data (a list of loads, a network) whose single result a sheet quotes. A sheet
 * that quotes it keeps the input, and verification runs it again; its correctness is proven by tests of its own.
 */
export interface Procedure<In = unknown, O extends Name = Name> extends ProcedureDefinition<O> {
  (input: In): Vocabulary[O];
  readonly kind: 'procedure';
}

/**
 * Defines a procedure.
 * @param definition identifier, output, method in words, source and the code; its input must be plain JSON
 * @returns the procedure: a function of its input, with its definition on it
 * @throws CalculationError `out-of-range`, when the procedure is called, for a result that is no finite number or below zero
 * @example
 * ```ts
 * import { procedure } from 'ohmwright';
 *
 * const largestOf = procedure({
 *   id: 'largest-demand',
 *   title: 'Largest of several demands',
 *   output: 'demand',
 *   method: 'the largest of the list',
 *   source: { document: 'physics', provenance: 'definition' },
 *   run: (demands: readonly number[]) => Math.max(...demands),
 * });
 * largestOf([32, 40, 12]); // => 40
 * ```
 */
export function procedure<In, O extends Name>(
  definition: ProcedureDefinition<O> & { readonly run: (input: In) => number },
): Procedure<In, O> {
  const { run, ...about } = definition;
  const read = (input: In): number => {
    try {
      return run(input);
    } catch (error) {
      // what is no input at all is refused like one that is wrong
      if (!(error instanceof TypeError)) throw error;
      throw invalidInput(`the input of ${about.id}`, [{ path: [], message: `is not as it is due: ${error.message}` }]);
    }
  };
  return guarded('procedure', read, about);
}

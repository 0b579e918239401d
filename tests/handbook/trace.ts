/**
 * The core's `formula` and `relation`, but what is defined with them tells how it is called. The handbook is made from
 * the library with this module in place of `src/core/formula.ts`.
 */
import * as core from '../../src/core/formula.js';

/** One call of a formula. */
export interface Call {
  /** The formula. */
  readonly id: string;
  /** Its inputs in their canonical units. */
  readonly values: Readonly<Record<string, number>>;
  /** What it gave. */
  readonly result: number;
}

let heard: Call[] | undefined;

const heed =
  <V>(id: string, compute: (values: V) => number) =>
  (values: V): number => {
    const result = compute(values);
    heard?.push({ id, values: { ...values } as Readonly<Record<string, number>>, result });
    return result;
  };

/**
 * The calls of formulas while something runs.
 * @param run what runs
 */
export function callsOf<T>(run: () => T): { readonly value: T; readonly calls: readonly Call[] } {
  const calls: Call[] = [];
  heard = calls;
  try {
    return { value: run(), calls };
  } finally {
    heard = undefined;
  }
}

export const formula: typeof core.formula = (definition) =>
  core.formula({ ...definition, compute: heed(definition.id, definition.compute) });
export const relation: typeof core.relation = (definition) =>
  core.relation({ ...definition, solve: heed(definition.id, definition.solve) });
export const procedure = core.procedure;

import { own } from './own.js';

/** The members of a module that are of some kinds, by name. */
type OfKind<Module, Kind> = {
  readonly [N in keyof Module as Module[N] extends { readonly kind: Kind } ? N : never]: Module[N];
};

/** The tables of a module; those that have a number by it: `table4D5` is `'4D5'`. */
type Tables<Module> = {
  readonly [N in keyof Module as Module[N] extends { readonly kind: 'table' }
    ? N extends `table${infer Number}`
      ? Number
      : N
    : never]: Module[N];
};

const formulaKinds = ['formula', 'relation', 'procedure'] as const;
const checkKinds = ['at-most', 'at-least', 'within', 'holds', 'any-of'] as const;

const ofKind = (module: object, kinds: readonly unknown[]): [string, unknown][] =>
  Object.entries(module).filter(([, it]) => kinds.includes(own(it, 'kind')));

/** Formulas, relations and procedures among the definitions of a module. */
export const formulasIn = <M extends object>(module: M): OfKind<M, (typeof formulaKinds)[number]> =>
  Object.fromEntries(ofKind(module, formulaKinds)) as OfKind<M, (typeof formulaKinds)[number]>;

/** Checks among the definitions of a module. */
export const checksIn = <M extends object>(module: M): OfKind<M, (typeof checkKinds)[number]> =>
  Object.fromEntries(ofKind(module, checkKinds)) as OfKind<M, (typeof checkKinds)[number]>;

/** Tables among the definitions of a module; those that have a number by it. */
export const tablesIn = <M extends object>(module: M): Tables<M> =>
  Object.fromEntries(
    ofKind(module, ['table']).map(([name, it]) => [name.replace(/^table(?=[\dA-Z])/, ''), it]),
  ) as Tables<M>;

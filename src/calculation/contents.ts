import type { Gap, Source } from '../core/index.js';
import type { Judgement } from './judgement.js';
import type { Entries, Line, None } from './line.js';
import type { Lines, Scopes } from './lists.js';

/** Why a code has no check of a group. */
export interface NoRule {
  /** Why, in words. */
  readonly noRule: string;
  /** Where that is said, if anywhere. */
  readonly source?: Source;
}
/** What is not entered of a code, because its text was not available. */
export interface NotEntered {
  readonly notEntered: Gap;
  /** Where it would stand. */
  readonly source: Source;
}
/** The checks of a group, or why there are none. */
export type Group = readonly Judgement[] | NoRule | NotEntered;
/** The checks of each group. */
export type Groups = Readonly<Record<string, Group>>;

/** A contents list: where each figure of a circuit comes from, list by list, and the checks by group. */
export interface Contents<
  S extends Scopes = Scopes,
  F = { readonly [K in keyof S]?: Lines },
  G extends Groups = Groups,
> {
  /** The circuit and what it has several of. */
  readonly scopes: S;
  /** The lines of each scope, in the order in which an electrician works. */
  readonly figures: F;
  /** The checks by group, in the order in which they are reported. */
  readonly checks: G;
}

// ---- what the compiler checks: every need is given, and what is given has the unit of its role -------------------------------
type Above<S, K> = K extends keyof S
  ? S[K] extends { readonly within: infer W extends string }
    ? W | Above<S, W>
    : never
  : never;
/** Entries that the lines of a list can read by their own names. */
type Readable<S, F, K> = keyof F[K & keyof F] | { [A in Above<S, K>]: keyof F[A & keyof F] }[Above<S, K>];
/** Entries of the things of a list, as they are gathered. */
type Listed<F> = { [K in keyof F]: `${K & string}/${keyof F[K] & string}` }[keyof F];
type Needed<L> = { [R in keyof L]: L[R] extends Line<infer N, unknown> ? N : never }[keyof L];
type Lacking<S, F, K> = Exclude<Needed<F[K & keyof F]>, Readable<S, F, K> | Listed<F>>;
type NeedsOfChecks<G> = { [K in keyof G]: G[K] extends readonly Judgement<infer N>[] ? N : never }[keyof G];
type Inner<S, F> = { [K in keyof S]: `${K & string}~${(Readable<S, F, K> | Listed<F>) & string}` }[keyof S];
type LackingChecks<S, F, G> = Exclude<NeedsOfChecks<G>, Readable<S, F, RootOf<S>> | Listed<F> | Inner<S, F>>;
type RootOf<S> = { [K in keyof S]: S[K] extends { readonly within: string } ? never : K }[keyof S];
type Lack<S, F, G> = { [K in keyof F]: Lacking<S, F, K> }[keyof F] | LackingChecks<S, F, G>;
type Misfits<F> = {
  [K in keyof F]: {
    [R in keyof F[K]]: R extends keyof Entries
      ? F[K][R] extends Line<string, infer V>
        ? [V] extends [Entries[R]]
          ? never
          : R
        : R
      : never;
  }[keyof F[K]];
}[keyof F];
/** What the compiler says of a contents list that is not whole. */
type Whole<S, F, G> = [Lack<S, F, G>] extends [never]
  ? [Misfits<F>] extends [never]
    ? unknown
    : Misfits<F> extends infer M
      ? { readonly 'given in another unit or kind': M }
      : never
  : Lack<S, F, G> extends infer L
    ? { readonly 'nothing gives': L }
    : never;

/**
 * A contents list, checked by the compiler: every entry that a line or a check needs is given by a line, in its unit.
 * @param list scopes, figures and checks
 */
export const contents = <
  const S extends Scopes,
  const F extends { readonly [K in keyof S]?: Lines },
  const G extends Groups,
>(
  list: Contents<S, F, G> & Whole<S, F, G>,
): Contents<S, F, G> => list;

type Over<A, B> = Omit<A, keyof B> & B;
type OverLists<F, D> = { [K in keyof F]: K extends keyof D ? Over<F[K], D[K]> : F[K] };
/**
 * A contents list that differs from another in the lines and checks that are named, checked as a whole one is.
 * @param base what it differs from
 * @param differences lines and groups of checks that take the place of those of the same name, or are new
 */
export const differing = <
  S extends Scopes,
  F,
  G extends Groups,
  const D extends { readonly [K in keyof S]?: Lines } = None,
  const C extends Groups = None,
>(
  base: Contents<S, F, G>,
  differences: { readonly figures?: D; readonly checks?: C } & Whole<S, OverLists<F, D>, Over<G, C>>,
): Contents<S, OverLists<F, D>, Over<G, C>> => {
  const figures = { ...(base.figures as object) } as Record<string, object>;
  for (const [name, lines] of Object.entries(differences.figures ?? {})) figures[name] = { ...figures[name], ...lines };
  return { scopes: base.scopes, figures: figures as never, checks: { ...base.checks, ...differences.checks } as never };
};

type Joined<L> = L extends readonly [infer A, ...infer R] ? A & Joined<R> : unknown;
/**
 * The lines of several groups as one list, in their order.
 * @param groups lines by entry; what two of them give is refused when the list is made
 */
export function together<const L extends readonly Lines[]>(...groups: L): Joined<L> {
  const all: Record<string, Line> = {};
  for (const lines of groups)
    for (const [name, line] of Object.entries(lines)) {
      if (name in all) throw new Error(`two groups give ${name}`);
      all[name] = line;
    }
  return all as Joined<L>;
}

import type { Fact, Formula, Gap, Known, Name, Procedure, Relation, Table, Vocabulary } from '../core/index.js';
import type { Labels } from './labels.js';

/** Everything that a line may give or need, by name: quantities of the vocabulary, and labels. */
export interface Entries extends Vocabulary, Labels {}
/** Name of a quantity or label. */
export type Entry = keyof Entries & string;
/** What a line needs: an entry of its own list or of one above, an entry of the things of a list below, or another line. */
export type Part = string | Line;

/** Which way a result moves with each input: 1 up with it, -1 down; an input left out has no direction. */
export type Directions = Readonly<Record<string, 1 | -1 | 'either' | undefined>>;

/** How a line gives its figure. */
export type How =
  | { readonly kind: 'apply'; readonly by: Formula | Relation | Table; readonly from: readonly Part[] }
  | { readonly kind: 'set'; readonly value: unknown; readonly by?: string }
  | {
      readonly kind: 'fact';
      read(place: never): unknown;
      readonly called?: string | ((place: never) => string);
      readonly by?: string;
    }
  | {
      readonly kind: 'derive';
      readonly needs: readonly string[];
      give(values: never): unknown;
      readonly sees: 'values' | 'gaps';
      readonly direction?: Directions;
      readonly by?: string;
    }
  | {
      readonly kind: 'run';
      readonly procedure: Procedure;
      readonly needs: readonly string[];
      input(values: never): unknown;
      /** What it makes of its needs, by role, for the sheet. */
      writes?(input: never): readonly (readonly [role: Name, value: number, by: string])[];
    }
  | {
      readonly kind: 'gather';
      readonly how: 'sum' | 'smallest' | 'largest' | 'any' | 'list';
      readonly of: string;
      among?(thing: never, here: never): boolean;
      readonly empty?: unknown;
    }
  | {
      readonly kind: 'at';
      readonly how: 'smallest' | 'largest';
      readonly of: string;
      readonly take: string;
      among?(thing: never, here: never): boolean;
    }
  | { readonly kind: 'choose'; readonly on: Part; readonly of: Readonly<Record<string, Line>> }
  | { readonly kind: 'same'; readonly as: string }
  | { readonly kind: 'or-else'; readonly first: Part; readonly then: Line }
  | { readonly kind: 'between-steps'; readonly along: string; readonly steps: readonly string[]; readonly of: Line }
  /** Checks by what they are of, written by `judged`. */
  | { readonly kind: 'judged'; readonly of: Readonly<Record<string, readonly { readonly how: unknown }[]>> }
  | { readonly kind: 'open'; readonly gaps: readonly Gap[] };

/** A line of a contents list: where a figure comes from. `N` is what it needs, `V` what it gives. */
export interface Line<N extends string = string, V = unknown> {
  /** How it gives its figure. */
  readonly how: How;
  /** Clause of the code by which it does so. */
  readonly clause?: string;
  /** Types only. */
  readonly needs?: N;
  /** Types only. */
  readonly gives?: V;
}

/** Nothing said. */
export type None = Record<never, never>;
/** What a line, or a name in the place of one, needs. */
export type NeedsOf<P> = P extends string ? P : P extends Line<infer N, unknown> ? N : never;
type GivesOf<P> = P extends keyof Entries ? Entries[P] : P extends Line<string, infer V> ? V : unknown;
/** Values by name, as the function of a line sees them. */
export type Values<N extends string> = { readonly [K in N]: K extends keyof Entries ? Entries[K] : never };
/** The same where gaps are seen too. */
export type KnownValues<N extends string> = { readonly [K in N]: K extends keyof Entries ? Known<Entries[K]> : never };

/** A formula, relation or table as far as the types of a line look at it: comparing the whole of them is slow. */
interface FormulaLike {
  readonly kind: 'formula' | 'relation';
  readonly inputs: readonly string[];
  readonly output: string;
}
interface TableLike {
  readonly kind: 'table';
  readonly axes: readonly { readonly name: string }[];
  readonly cell: string;
}
type InputsOf<D> = D extends FormulaLike
  ? D['inputs'][number]
  : D extends TableLike
    ? D['axes'][number]['name']
    : never;
type OutputOf<D> = D extends FormulaLike
  ? Vocabulary[D['output'] & keyof Vocabulary]
  : D extends TableLike
    ? Vocabulary[D['cell'] & keyof Vocabulary]
    : never;
/** What plays the part of an input: the entry or line named for it, else the entry of its own name. */
type Played<I extends string, A> = { [K in I]: K extends keyof A ? NeedsOf<A[K]> : K }[I];
/** A renaming in which each part has the unit of the input that it plays; the labels of an axis are the table's own. */
type Fitting<A> = {
  readonly [K in keyof A]: K extends keyof Vocabulary
    ? GivesOf<A[K]> extends Vocabulary[K]
      ? A[K]
      : `${K & string} is played by something of another unit or kind`
    : A[K];
};

/**
 * A figure by a formula, a relation or a table.
 * @param by the definition
 * @param clause clause of the code by which it is used
 * @param as what plays the part of an input whose own name does not say it: another entry, or a line of its own
 */
export function by<D extends FormulaLike | TableLike, const A extends { readonly [K in InputsOf<D>]?: Part } = None>(
  by: D,
  clause?: string,
  as?: Fitting<A>,
): Line<Played<InputsOf<D>, A>, OutputOf<D>> {
  const d = by as unknown as Formula | Relation | Table;
  const names: readonly string[] = d.kind === 'table' ? d.axes.map((a) => a.name) : d.inputs;
  const roles = (as ?? {}) as Readonly<Record<string, Part>>;
  return line({ kind: 'apply', by: d, from: names.map((n) => roles[n] ?? n) }, clause);
}

function line<N extends string, V>(how: How, clause?: string): Line<N, V> {
  return clause ? { how, clause } : { how };
}

/** A constant of the code, with its clause or other source in words. */
export const set = <const V>(value: V, by?: string): Line<never, V> =>
  line({ kind: 'set', value, ...(by ? { by } : {}) });

/** How a fact is called among what is missing, where its role does not say it, and where it comes from. */
export interface FactWords<P = never> {
  readonly called?: string | ((place: P) => string);
  readonly by?: string;
}
/** A fact of the thing that the list is of. */
export const fact = <V, P = never>(read: (place: P) => Fact<V> | Known<V>, words: FactWords<P> = {}): Line<never, V> =>
  line({ kind: 'fact', read: read as never, ...(words as object) });
/** Facts of things of one scope: `fact` with the type of their place settled. */
export const factOf =
  <P>() =>
  <V>(read: (place: P) => Fact<V> | Known<V>, words?: FactWords<P>): Line<never, V> =>
    fact(read, words);

/** What a function gives of values that are all there; what is missing is passed on. */
export function derive<const N extends readonly string[], V>(
  needs: N,
  give: (values: Values<N[number]>) => Known<V>,
  about: { readonly by?: string; readonly direction?: { readonly [K in N[number]]?: 1 | -1 } } = {},
): Line<N[number], V> {
  return line({ kind: 'derive', needs, give: give as never, sees: 'values', ...(about as object) });
}
/** What a function gives of values or the reasons why they are missing. */
export const weigh = <const N extends readonly string[], V>(
  needs: N,
  give: (values: KnownValues<N[number]>) => Known<V>,
  about: { readonly by?: string; readonly direction?: { readonly [K in N[number]]?: 1 | -1 } } = {},
): Line<N[number], V> => line({ kind: 'derive', needs, give: give as never, sees: 'gaps', ...(about as object) });

/** A figure by a procedure over what a function puts together. */
export const run = <In, O extends Name, const N extends readonly string[]>(
  procedure: Procedure<In, O>,
  needs: N,
  input: (values: Values<N[number]>) => NoInfer<In>,
  writes?: (input: In) => readonly (readonly [role: Name, value: number, by: string])[],
): Line<N[number], Vocabulary[O]> =>
  line({
    kind: 'run',
    procedure: procedure as unknown as Procedure,
    needs,
    input: input as never,
    ...(writes ? { writes: writes as never } : {}),
  });

type InList<F> = F extends `${string}/${infer R}` ? (R extends keyof Entries ? Entries[R] : unknown) : never;
interface Gathered<P, H> {
  /** Which things count, by their places; `here` is the thing that gathers. */
  readonly among?: (thing: P, here: H) => boolean;
  readonly empty?: unknown;
  readonly clause?: string;
}
const gather =
  (how: 'sum' | 'smallest' | 'largest') =>
  <const F extends `${string}/${string}`, P = never, H = never>(
    of: F,
    { clause, ...about }: Gathered<P, H> = {},
  ): Line<F, InList<F>> =>
    line({ kind: 'gather', how, of, ...(about as object) }, clause);
/** The sum over the things of a list below, `list/entry`; 0 over none. */
export const sum = /* @__PURE__ */ gather('sum');
/** The smallest over the things of a list below. */
export const smallest = /* @__PURE__ */ gather('smallest');
/** The largest over the things of a list below. */
export const largest = /* @__PURE__ */ gather('largest');
/** The entries of the things of a list, in order, for a procedure; missing where one of them is. */
export const listOf = <const F extends `${string}/${string}`, P = never, H = never>(
  of: F,
  among?: (thing: P, here: H) => boolean,
): Line<F, readonly InList<F>[]> =>
  line({ kind: 'gather', how: 'list', of, ...(among ? { among: among as never } : {}) });

/** Whether a condition holds for any of the things of a list below. */
export const any = <const F extends `${string}/${string}`>(of: F): Line<F, boolean> =>
  line({ kind: 'gather', how: 'any', of });

const atWhich =
  (how: 'smallest' | 'largest') =>
  <const F extends `${string}/${string}`, const T extends string, P = never>(
    of: F,
    take: T,
    among?: (thing: P) => boolean,
  ): Line<
    F | (F extends `${infer S}/${string}` ? `${S}/${T}` : never),
    T extends keyof Entries ? Entries[T] : unknown
  > =>
    line({ kind: 'at', how, of, take, ...(among ? { among: among as never } : {}) });
/** An entry of that thing of a list of which another is largest; of the first whose other is not known. */
export const whereLargest = /* @__PURE__ */ atWhich('largest');
/** An entry of that thing of a list of which another is smallest; of the first whose other is not known. */
export const whereSmallest = /* @__PURE__ */ atWhich('smallest');

type LabelOf<P> = GivesOf<P> & (string | number | boolean);
type GivenBy<F> = { [K in keyof F]: F[K] extends Line<string, infer V> ? V : never }[keyof F];
/** One of several lines by a label: only the one that is taken is asked for what it needs. */
export const choose = <const O extends Part, const F extends { readonly [L in `${LabelOf<O>}`]: Line }>(
  on: O,
  of: F,
): Line<NeedsOf<O> | NeedsOf<F[keyof F]>, GivenBy<F>> => line({ kind: 'choose', on, of });
/** One of two lines by a condition. */
export const when = <const O extends Part, A extends Line, B extends Line>(
  on: O,
  then: A,
  otherwise: B,
): Line<NeedsOf<O> | NeedsOf<A> | NeedsOf<B>, GivesOf<A> | GivesOf<B>> =>
  line({ kind: 'choose', on, of: { true: then, false: otherwise } });

/** Another entry under this name. */
export const same = <const N extends string>(as: N): Line<N, N extends keyof Entries ? Entries[N] : unknown> =>
  line({ kind: 'same', as });
/** A line, or another where the first is missing; a figure that spans alone keep back is not missing. */
export const orElse = <const P extends Part, L extends Line>(
  first: P,
  then: L,
): Line<NeedsOf<P> | NeedsOf<L>, GivesOf<P> | GivesOf<L>> => line({ kind: 'or-else', first, then });
/**
 * A line that moves one way with an entry of its own list, but for figures at which it jumps: over a span it is worked
 * out at both ends and on both sides of each jump.
 */
export const betweenSteps = <const A extends string, const S extends readonly string[], L extends Line>(
  along: A,
  steps: S,
  of: L,
): Line<A | S[number] | NeedsOf<L>, GivesOf<L>> => line({ kind: 'between-steps', along, steps, of });
/** No figure, and why: where figures are gathered this one takes no part. */
export const none = (because: string): Line<never, never> => line({ kind: 'set', value: because });
/** What cannot be had, and why. */
export const open = (...gaps: Gap[]): Line<never, never> => line({ kind: 'open', gaps });

import type { Alternatives, Span as Between, Check, CheckResult, Comparison, Statement } from '../core/index.js';
import type { KnownValues, Line, NeedsOf, None, Part } from './line.js';

/** How a check of a contents list comes to its results. */
type How =
  | {
      readonly kind: 'judge';
      readonly check: Comparison | Between | Statement;
      readonly evidence: Readonly<Record<string, Part>>;
      readonly applies?: Part;
      readonly because?: Part;
    }
  | {
      readonly kind: 'any-of';
      readonly check: Alternatives;
      readonly of: readonly Judgement[];
      readonly applies?: Part;
      readonly because?: Part;
    }
  | { readonly kind: 'unjudged'; readonly check: Check; readonly why: Part }
  | { readonly kind: 'deciding'; readonly of: readonly Judgement[] }
  | { readonly kind: 'unless-failed'; readonly first: readonly Judgement[]; readonly then: readonly Judgement[] }
  | {
      readonly kind: 'each';
      readonly of: string;
      readonly judgements: readonly Judgement[];
      among?(thing: never): boolean;
    }
  | { readonly kind: 'choose'; readonly on: Part; readonly of: Readonly<Record<string, readonly Judgement[]>> }
  | {
      readonly kind: 'adjust';
      readonly of: Judgement;
      readonly needs: readonly string[];
      change(result: CheckResult, values: never): CheckResult | readonly CheckResult[];
    }
  | { readonly kind: 'results'; readonly needs: readonly string[]; judge(values: never): readonly CheckResult[] };

/** A check in a contents list, with what it draws on. `N` is what it needs. */
export interface Judgement<N extends string = string> {
  readonly how: How;
  /** Types only. */
  readonly needs?: N;
}
type JudgementNeeds<J> = J extends Judgement<infer N> ? N : J extends readonly Judgement<infer N>[] ? N : never;

/** When a check applies (`true`, or in words why it does not), and what its verdict rests on. */
interface About {
  readonly applies?: Part;
  readonly because?: Part;
}
type AboutNeeds<A> = { [K in keyof A]: NeedsOf<A[K]> }[keyof A];
const judgement = <N extends string>(how: How): Judgement<N> => ({ how });

/** A check that compares two figures, by their roles or by what plays their parts. */
export const compare = <
  const C extends { readonly kind: 'at-most' | 'at-least' | 'within'; readonly value: string },
  const A extends About & { readonly as?: { readonly [K in Roles<C>]?: Part } } = None,
>(
  by: C,
  about?: A,
): Judgement<Exclude<Roles<C>, keyof A['as']> | AboutNeeds<A['as']> | AboutNeeds<Pick<A, keyof A & keyof About>>> => {
  const { as = {}, ...rest } = (about ?? {}) as About & { as?: Readonly<Record<string, Part>> };
  const check = by as unknown as Comparison | Between;
  const roles = check.kind === 'within' ? [check.value, check.least, check.most] : [check.value, check.limit];
  const evidence = Object.fromEntries(roles.map((r) => [r, (as as Readonly<Record<string, Part>>)[r] ?? r]));
  return judgement({ kind: 'judge', check, evidence, ...rest });
};
type Roles<C> = C extends { readonly limit: infer L extends string; readonly value: infer V extends string }
  ? V | L
  : C extends {
        readonly value: infer V extends string;
        readonly least: infer L extends string;
        readonly most: infer M extends string;
      }
    ? V | L | M
    : never;

/** A check of a statement: whether it holds, and why, each an entry or a line. */
export const holds = <const H extends Part, const B extends Part, const A extends { readonly applies?: Part } = None>(
  check: Statement,
  whether: H,
  because: B,
  about?: A,
): Judgement<NeedsOf<H> | NeedsOf<B> | AboutNeeds<A>> =>
  judgement({ kind: 'judge', check, evidence: { holds: whether, because }, ...about });

/** A check that is not judged here: why nothing is required, in words, or what is missing. */
export const unjudged = <const W extends Part>(check: Check, why: W): Judgement<NeedsOf<W>> =>
  judgement({ kind: 'unjudged', check, why });

/** A check that passes when any of several does. */
export const anyOf = <const J extends readonly Judgement[], const A extends About = None>(
  check: Alternatives,
  of: J,
  about?: A,
): Judgement<JudgementNeeds<J[number]> | AboutNeeds<A>> => judgement({ kind: 'any-of', check, of, ...about });

/** Of several results the one that decides: the first that fails, else the first that is open, else the tightest. */
export const deciding = <const J extends readonly Judgement[]>(of: J): Judgement<JudgementNeeds<J[number]>> =>
  judgement({ kind: 'deciding', of });

/** Checks, and others that are asked only where none of them fails. */
export const unlessFailed = <const A extends readonly Judgement[], const B extends readonly Judgement[]>(
  first: A,
  then: B,
): Judgement<JudgementNeeds<A[number]> | JudgementNeeds<B[number]>> =>
  judgement({ kind: 'unless-failed', first, then });

/** The results of checks as an entry: what each of several ways would come to, so that lines and checks can weigh them. */
export const judged = <const F extends Readonly<Record<string, readonly Judgement[]>>>(
  of: F,
): Line<JudgementNeeds<F[keyof F][number]>, Readonly<Record<string, readonly CheckResult[]>>> => ({
  how: { kind: 'judged', of },
});

/** Needs of checks of things of a list; of those of a list further down they are that list's. */
type Within<S extends string, N extends string> = N extends `${string}~${string}` ? N : `${S}~${N}`;
/** Checks for each thing of a list below, in order. */
export const each = <const S extends string, const J extends readonly Judgement[], P = never>(
  of: S,
  judgements: J,
  among?: (thing: P) => boolean,
): Judgement<Within<S, JudgementNeeds<J[number]>>> =>
  judgement({ kind: 'each', of, judgements, ...(among ? { among: among as never } : {}) });

/** Checks by a label; where it is missing, those of the first way are open. */
export const chosen = <const O extends Part, const F extends Readonly<Record<string, readonly Judgement[]>>>(
  on: O,
  of: F,
): Judgement<NeedsOf<O> | JudgementNeeds<F[keyof F][number]>> => judgement({ kind: 'choose', on, of });

/** A result seen in the light of other figures: a bound that acquits but does not condemn, or with one that follows from it. */
export const adjusted = <J extends Judgement, const N extends readonly string[]>(
  of: J,
  needs: N,
  change: (result: CheckResult, values: KnownValues<N[number]>) => CheckResult | readonly CheckResult[],
): Judgement<JudgementNeeds<J> | N[number]> => judgement({ kind: 'adjust', of, needs, change: change as never });

/** Results that a function comes to from labels and from what is missing: for rules that read better so. */
export const results = <const N extends readonly string[]>(
  needs: N,
  judgeBy: (values: KnownValues<N[number]>) => readonly CheckResult[],
): Judgement<N[number]> => judgement({ kind: 'results', needs, judge: judgeBy as never });

/** The definitions of the checks of a group. */
export function checksOf(of: readonly Judgement[]): readonly Check[] {
  return of.flatMap(({ how }): readonly Check[] => {
    const own = 'check' in how ? [how.check as Check] : [];
    switch (how.kind) {
      case 'each':
        return checksOf(how.judgements);
      case 'adjust':
        return checksOf([how.of]);
      case 'choose':
        return checksOf(Object.values(how.of).flat());
      case 'unless-failed':
        return checksOf([...how.first, ...how.then]);
      case 'any-of':
      case 'deciding':
        return [...own, ...checksOf(how.of)];
      default:
        return own;
    }
  });
}

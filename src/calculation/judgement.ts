import { stands } from '../core/check.js';
import {
  type Alternatives,
  type Span as Between,
  type Check,
  type CheckResult,
  type Comparison,
  compared,
  type Gap,
  isMissing,
  judge,
  notDetermined,
  notRequired,
  type Statement,
} from '../core/index.js';
import type { Source, Sources } from './compile.js';
import type { KnownValues, Line, NeedsOf, None, Part } from './line.js';
import { type Judge, type List, type Note, type Thing, thingOf, thingsBelow } from './lists.js';
import { isBlind, isWideMissing, missingOf, onlyWithin, plain, Span, spanWords } from './value.js';

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

/** Checks for each thing of a list below, in order. */
export const each = <const S extends string, const J extends readonly Judgement[], P = never>(
  of: S,
  judgements: J,
  among?: (thing: P) => boolean,
): Judgement<`${S}~${JudgementNeeds<J[number]>}`> =>
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

/** Checks made ready for the things of a list, each in turn. */
export function compileJudgements(all: Sources, list: List, of: readonly Judgement[]): Judge {
  const judges = of.map((j) => compileJudgement(all, list, j));
  return (t, into, note) => {
    for (const j of judges) j(t, into, note);
  };
}

/** A check with what it draws on, for the things of a list. */
export function compileJudgement(all: Sources, list: List, judgement: Judgement): Judge {
  const how = 'check' in judgement.how ? citing(all, judgement.how) : judgement.how;
  const source = (part: Part, role: string) =>
    all.part(list, part, role, undefined, 'check' in how ? how.check.id : undefined);
  const inner = (of: readonly Judgement[], at = list) => compileJudgements(all, at, of);
  const seen = (needs: readonly string[]) => {
    const sources = needs.map((n) => all.source(list, n));
    return (t: Thing, rests: unknown[]) => {
      const values: Record<string, unknown> = {};
      for (const { name, get } of sources) {
        const value = plain(name, get(t));
        values[name] = value;
        rests.push(value);
      }
      return values as never;
    };
  };
  switch (how.kind) {
    case 'judge': {
      const { check } = how;
      const evidence = Object.entries(how.evidence).map(([role, part]) => [role, source(part, role)] as const);
      const numbers = check.kind === 'holds' ? [] : evidence;
      if (check.kind === 'at-most' || check.kind === 'at-least') {
        const [value, limit] = [check.value, check.limit].map(
          (r) => evidence.find(([role]) => role === r)?.[1].get as Get,
        ) as [Get, Get];
        return framed(all, list, how, numbers, (t, because) => {
          const v = value(t);
          const l = limit(t);
          if (typeof v === 'number' && typeof l === 'number') return compared(check, v, l, because);
          return judgeWide(check, { [check.value]: v, [check.limit]: l }, because);
        });
      }
      const whether = evidence.find(([role]) => role === 'holds')?.[1].get;
      const why = evidence.find(([role]) => role === 'because')?.[1].get;
      return framed(all, list, how, numbers, (t, because) => {
        if (check.kind === 'holds' && whether && why) {
          const holds = whether(t);
          const reason = why(t);
          if (typeof holds === 'boolean' && typeof reason === 'string') return stands(check, holds, reason);
        }
        const found = Object.fromEntries(evidence.map(([role, s]) => [role, s.get(t)]));
        // a statement that is open gives no reason why it holds
        return judgeWide(check, isMissing(found.holds) ? { holds: found.holds } : found, because);
      });
    }
    case 'unjudged':
      return framed(all, list, { check: how.check, applies: how.why }, [], () => {
        throw new Error(`${how.check.id} is judged where nothing says by what`);
      });
    case 'any-of': {
      const of = inner(how.of);
      return framed(all, list, how, [], (t, because, note) => {
        const own: CheckResult[] = [];
        of(t, own, note);
        return judge(how.check, { results: own }, because);
      });
    }
    case 'deciding': {
      const of = inner(how.of);
      return (t, into, note) => {
        const own: CheckResult[] = [];
        of(t, own, note);
        into.push(decidingResult(own));
      };
    }
    case 'unless-failed': {
      const [first, then] = [inner(how.first), inner(how.then)];
      return (t, into, note) => {
        const own: CheckResult[] = [];
        first(t, own, note);
        for (const r of own) into.push(r);
        if (!own.some((r) => r.weight === 'rule' && r.verdict === 'fail')) then(t, into, note);
      };
    }
    case 'each': {
      const below = all.lists.get(how.of) as List;
      const of = inner(how.judgements, below);
      return (t, into, note) => {
        for (const x of thingsBelow(t, below)) if (!how.among || how.among(x.place as never)) of(x, into, note);
      };
    }
    case 'choose': {
      const on = source(how.on, 'choice');
      const ways = new Map(Object.entries(how.of).map(([label, of]) => [label, inner(of)] as const));
      const [first] = ways.values();
      // what passes carries no caution, and what is open does
      const cautions = new Map(checksOf(Object.values(how.of)[0] ?? []).map((c) => [c.id, c.caution] as const));
      return (t, into, note) => {
        const label = plain(on.name, on.get(t));
        if (!isMissing(label)) return ways.get(String(label))?.(t, into, note);
        // which of the ways holds is not known: the checks of the first stay open
        const own: CheckResult[] = [];
        first?.(t, own);
        for (const { check, title, weight, source, caution = cautions.get(check) } of own) {
          const head = { check, title, weight, source, ...(caution === undefined ? {} : { caution }) };
          const open = marked({ ...head, verdict: 'not-determined', gaps: label.missing }, [label]);
          note?.(open, []);
          into.push(open);
        }
      };
    }
    case 'adjust': {
      const of = compileJudgement(all, list, how.of);
      const values = seen(how.needs);
      return (t, into, note) => {
        const own: CheckResult[] = [];
        of(t, own, note);
        for (const r of own) {
          const rests: unknown[] = [];
          const found = how.change(r, values(t, rests));
          if (isWide(r)) rests.push(onlyWithin('', new Span(0, 1)));
          for (const f of Array.isArray(found) ? (found as readonly CheckResult[]) : [found as CheckResult]) {
            const changed = markedAnew(all.cited(f), rests);
            if (changed !== r) note?.(changed, []);
            into.push(changed);
          }
        }
      };
    }
    case 'results': {
      const values = seen(how.needs);
      return (t, into, note) => {
        const rests: unknown[] = [];
        for (const found of how.judge(values(t, rests))) {
          const r = markedAnew(all.cited(found), rests);
          note?.(r, []);
          into.push(r);
        }
      };
    }
    default: {
      const never: never = how;
      return never;
    }
  }
}
const citing = <H extends { readonly check: Check }>(all: Sources, how: H): H => ({
  ...how,
  check: all.cited(how.check),
});
type Get = (thing: Thing) => unknown;

/** Asks first whether a check applies, and hands it what its verdict rests on. */
function framed(
  all: Sources,
  list: List,
  { check, applies, because }: { readonly check: Check; readonly applies?: Part; readonly because?: Part },
  evidence: readonly (readonly [role: string, source: Source])[],
  judged: (thing: Thing, because: string | undefined, note: Note | undefined) => CheckResult,
): Judge {
  const asked = applies === undefined ? undefined : all.part(list, applies, 'applies', undefined, check.id);
  const said = because === undefined ? undefined : all.part(list, because, 'because', undefined, check.id);
  return (t, into, note) => {
    const yes = asked ? plain(asked.name, asked.get(t)) : true;
    if (yes !== true) {
      const result = isMissing(yes)
        ? marked(notDetermined(check, ...yes.missing), [yes])
        : notRequired(check, 'not-applicable', String(yes));
      note?.(result, []);
      into.push(result);
      return;
    }
    const why = said?.get(t);
    const result = judged(t, typeof why === 'string' ? why : undefined, note);
    note?.(
      result,
      evidence.map(([role, s]) => [role, s.placed, thingOf(t, s.placed.list)] as const),
    );
    into.push(result);
  };
}

/** Of several results the one that decides; of those that hold the one with the least margin, else the last. */
export const decidingResult = (of: readonly CheckResult[]): CheckResult => {
  const margins = of.flatMap((r) => r.margin ?? []);
  return (
    of.find((r) => r.verdict === 'fail') ??
    of.find((r) => r.verdict === 'not-determined') ??
    of.find((r) => r.margin === Math.min(...margins)) ??
    (of.at(-1) as CheckResult)
  );
};

/** A result that may come to something else where figures are known better than within a span. */
export interface WideResult extends CheckResult {
  /** Whether its figures are bounded, or one is lacking because something behind it is known only within a span: `blind` where nothing takes the span. */
  readonly depends: 'bounded' | 'lacking' | 'blind';
}
export const isWide = (r: CheckResult): boolean => 'depends' in r || (r.alternatives?.some(isWide) ?? false);
/** Whether the figures of such a result are bounded: with narrower spans it comes nearer to a verdict. */
export const isBounded = (r: CheckResult): boolean =>
  'depends' in r ? (r as WideResult).depends === 'bounded' : (r.alternatives?.some(isBounded) ?? false);
/** Whether such a result stays open however narrow the spans become, short of single values. */
export const isBlindResult = (r: CheckResult): boolean =>
  'depends' in r
    ? (r as WideResult).depends === 'blind'
    : (r.alternatives ?? []).filter(isWide).length > 0 && (r.alternatives ?? []).filter(isWide).every(isBlindResult);
/** A result that is open because something is known only within a span. */
const marked = (result: CheckResult, rests: readonly unknown[]): CheckResult =>
  result.verdict === 'not-determined' && rests.some(isWideMissing)
    ? ({ ...result, depends: rests.some(isBlind) ? 'blind' : 'lacking' } as WideResult)
    : result;
/** The same of a result that is made of another: what its function could not see is not what keeps it open. */
const markedAnew = (result: CheckResult, rests: readonly unknown[]): CheckResult =>
  'depends' in result && (result as WideResult).depends === 'blind'
    ? result
    : result.verdict === 'not-determined' && rests.some(isWideMissing)
      ? ({ ...result, depends: 'lacking' } as WideResult)
      : result;

/** A check of figures that may be spans: what holds at the worse ends holds everywhere, what fails at the better ends fails everywhere. */
function judgeWide(
  check: Comparison | Between | Statement,
  evidence: Record<string, unknown>,
  because: string | undefined,
): CheckResult {
  const all = Object.values(evidence);
  if (!all.some((v) => v instanceof Span)) return marked(judge(check as Check, evidence as never, because), all);
  const gone = missingOf(Object.values(evidence)).missing;
  if (check.kind === 'holds' || gone.length > 0) return marked(notDetermined(check, ...(gone as Gap[])), all);
  const end = (role: string, most: boolean): number => {
    const v = evidence[role] as Span | number;
    return typeof v === 'number' ? v : most ? v.most : v.least;
  };
  const at = (worse: boolean): CheckResult => {
    const found =
      check.kind === 'within'
        ? {}
        : {
            [check.value]: end(check.value, (check.kind === 'at-most') === worse),
            [check.limit]: end(check.limit, (check.kind === 'at-least') === worse),
          };
    return judge(check, found as never, because);
  };
  if (check.kind === 'within') {
    const one = (value: boolean) =>
      judge(
        check,
        {
          [check.value]: end(check.value, value),
          [check.least]: end(check.least, true),
          [check.most]: end(check.most, false),
        } as never,
        because,
      );
    const [low, high] = [one(false), one(true)];
    if (low.verdict === 'pass' && high.verdict === 'pass') return high;
    const out = end(check.value, false) > end(check.most, true) || end(check.value, true) < end(check.least, false);
    return out ? (low.verdict === 'fail' ? low : high) : depends(check, evidence);
  }
  const worst = at(true);
  if (worst.verdict === 'pass') return worst;
  const best = at(false);
  return best.verdict === 'fail' ? best : depends(check, evidence);
}

const depends = (check: Check, evidence: Record<string, unknown>): WideResult => ({
  ...notDetermined(
    check,
    ...Object.entries(evidence).flatMap(([name, v]): Gap[] =>
      v instanceof Span ? [{ kind: 'fact', fact: name, obtain: spanWords(v) }] : [],
    ),
  ),
  depends: 'bounded',
});

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

import { stands } from '../core/check.js';
import { type Check, type CheckResult, compared, isMissing, judge, notDetermined, notRequired } from '../core/index.js';
import type { Sources } from './compile.js';
import { type Source, viewOf } from './evaluate.js';
import { checksOf, type Judgement } from './judgement.js';
import { fact, type Part } from './line.js';
import { type Judge, type List, labelled, type Note, type Thing, thingOf, thingsBelow } from './lists.js';
import { plain } from './value.js';
import { isWide, judgeWide, marked, markedAnew } from './wide.js';

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
    const values = viewOf(needs);
    return (t: Thing): never => {
      // worked out first: what that asks for may fill the same view
      for (const { get } of sources) get(t);
      for (const { name, get } of sources) values[name] = plain(name, get(t));
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
        const begin = into.length;
        of(t, into, note);
        if (into.length !== begin + 1) into.push(decidingResult(into.splice(begin)));
      };
    }
    case 'unless-failed': {
      const [first, then] = [inner(how.first), inner(how.then)];
      return (t, into, note) => {
        const begin = into.length;
        first(t, into, note);
        for (let i = begin; i < into.length; i++) if (isFailedRule(into[i] as CheckResult)) return;
        then(t, into, note);
      };
    }
    case 'each': {
      const below = all.lists.get(how.of) as List;
      const of = inner(how.judgements, below);
      // what a thing is, is a fact of it like others: a check is kept while it picks the same
      const picked = how.among && all.part(below, fact(how.among), 'picked').get;
      return (t, into, note) => {
        for (const x of thingsBelow(t, below)) if (picked?.(x) !== false) of(x, into, note);
      };
    }
    case 'choose': {
      const on = source(how.on, 'choice');
      const ways = new Map<unknown, Judge>(Object.entries(how.of).map(([label, of]) => [label, inner(of)] as const));
      const [first] = ways.values();
      // what passes carries no caution, and what is open does
      const cautions = new Map(checksOf(Object.values(how.of)[0] ?? []).map((c) => [c.id, c.caution] as const));
      return (t, into, note) => {
        const found = on.get(t);
        const way = ways.get(labelled(found));
        const label = way ? found : plain(on.name, found);
        if (!isMissing(label)) return way?.(t, into, note);
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
        const begin = into.length;
        of(t, into, note);
        const own = into.splice(begin);
        for (const r of own) {
          const seenHere = values(t);
          const found = how.change(r, seenHere);
          for (const f of Array.isArray(found) ? (found as readonly CheckResult[]) : [found as CheckResult]) {
            const changed = markedAnew(all.cited(f), seenHere, isWide(r));
            if (changed !== r) note?.(changed, []);
            into.push(changed);
          }
        }
      };
    }
    case 'results': {
      const values = seen(how.needs);
      return (t, into, note) => {
        const seenHere = values(t);
        for (const found of how.judge(seenHere)) {
          const r = markedAnew(all.cited(found), seenHere);
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

const isFailedRule = (r: CheckResult): boolean => r.weight === 'rule' && r.verdict === 'fail';

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

import {
  type Span as Between,
  type Check,
  type CheckResult,
  type Comparison,
  type Gap,
  judge,
  notDetermined,
  type Statement,
} from '../core/index.js';
import { isBlind, isWideMissing, missingOf, Span, spanWords } from './value.js';

/** A result that may come to something else where figures are known better than within a span. */
export interface WideResult extends CheckResult {
  /** Whether its figures are bounded, or one is lacking because something behind it is known only within a span: `blind` where nothing takes the span. */
  readonly depends: 'bounded' | 'lacking' | 'blind';
}
export const isWide = (r: CheckResult): boolean =>
  (r as Partial<WideResult>).depends !== undefined || (r.alternatives?.some(isWide) ?? false);
/** Whether the figures of such a result are bounded: with narrower spans it comes nearer to a verdict. */
export const isBounded = (r: CheckResult): boolean =>
  'depends' in r ? (r as WideResult).depends === 'bounded' : (r.alternatives?.some(isBounded) ?? false);
/** Whether such a result stays open however narrow the spans become, short of single values. */
export const isBlindResult = (r: CheckResult): boolean =>
  'depends' in r
    ? (r as WideResult).depends === 'blind'
    : (r.alternatives ?? []).filter(isWide).length > 0 && (r.alternatives ?? []).filter(isWide).every(isBlindResult);
/** A result that is open because something is known only within a span. */
export const marked = (result: CheckResult, rests: readonly unknown[]): CheckResult =>
  result.verdict === 'not-determined' && rests.some(isWideMissing)
    ? ({ ...result, depends: rests.some(isBlind) ? 'blind' : 'lacking' } as WideResult)
    : result;
/** The same of a result that is made of another: what its function could not see is not what keeps it open. */
export function markedAnew(result: CheckResult, seen: Readonly<Record<string, unknown>>, ofWide = false): CheckResult {
  if (result.verdict !== 'not-determined' || (result as Partial<WideResult>).depends === 'blind') return result;
  const wide = ofWide || Object.values(seen).some(isWideMissing);
  return wide ? ({ ...result, depends: 'lacking' } as WideResult) : result;
}

/** A check of figures that may be spans: what holds at the worse ends holds everywhere, what fails at the better ends fails everywhere. */
export function judgeWide(
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

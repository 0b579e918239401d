import type { CheckResult } from '../core/index.js';
import type { IntervalEnd, PermittedInterval } from './assess-at.js';

/** A value that was assessed. */
export interface Seen {
  readonly value: number;
  readonly verdict: 'pass' | 'fail' | 'not-determined';
  readonly check: CheckResult | undefined;
}

/** Halves the way between two values of different verdict until they are neighbours. */
function narrowed(look: (value: number) => Seen, left: Seen, right: Seen, close: number): readonly Seen[] {
  const seen: Seen[] = [left];
  let [a, b] = [left, right];
  while (b.value - a.value > close) {
    const middle = look((a.value + b.value) / 2);
    if (middle.value <= a.value || middle.value >= b.value) break;
    if (middle.verdict === a.verdict) a = middle;
    else if (middle.verdict === b.verdict) b = middle;
    // a third verdict between two: both its ends are sought
    else return [...seen, ...narrowed(look, a, middle, close), ...narrowed(look, middle, b, close), right];
  }
  return [left, a, b, right];
}

/**
 * Every value that was looked at, in ascending order, with neighbours at each change of verdict.
 * @param look assesses a value
 * @param values values to look at first, in ascending order
 * @param between how close neighbours are to be at a change; undefined where there is nothing between the values
 */
export function scan(
  look: (value: number) => Seen,
  values: readonly number[],
  between: number | undefined,
): readonly Seen[] {
  const rough = values.map(look);
  if (between === undefined) return rough;
  const all = rough.flatMap((s, i) => {
    const next = rough[i + 1];
    return next === undefined || next.verdict === s.verdict ? [s] : narrowed(look, s, next, between).slice(0, -1);
  });
  return all.filter((s, i) => i === 0 || s.value > (all[i - 1] as Seen).value);
}

/** The stretches of equal verdict in which nothing fails, with what tells their ends from their neighbours. */
export function intervalsOf(seen: readonly Seen[]): readonly PermittedInterval[] {
  const found: PermittedInterval[] = [];
  let start = 0;
  for (let i = 1; i <= seen.length; i++) {
    const first = seen[start] as Seen;
    const last = seen[i - 1] as Seen;
    if (i < seen.length && (seen[i] as Seen).verdict === first.verdict) continue;
    if (first.verdict !== 'fail')
      found.push({
        verdict: first.verdict,
        from: end(first, seen[start - 1]),
        to: end(last, seen[i]),
      });
    start = i;
  }
  return found;
}

// where a neighbour passes and this one is open, what is open here is what tells them apart
const end = (here: Seen, beyond: Seen | undefined): IntervalEnd => {
  const check = beyond?.check ?? here.check;
  return beyond === undefined || check === undefined
    ? { value: here.value }
    : { value: here.value, beyond: { value: beyond.value, check } };
};

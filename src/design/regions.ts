import type { CheckResult } from '../core/index.js';

/** One end of an interval: a value that was assessed and holds, and one just beyond that does not. */
export interface IntervalEnd {
  /** The last value inside; the circuit was assessed at it. */
  readonly value: number;
  /** The first value beyond and the check that no longer passes there; absent at the end of what was examined. */
  readonly beyond?: { readonly value: number; readonly check: CheckResult };
}

/** A run of values for which no rule fails. */
export interface PermittedInterval {
  /** Whether every rule passes, passes on conditions, or some could not be judged. */
  readonly verdict: 'pass' | 'conditional' | 'not-determined';
  /** Smallest value. */
  readonly from: IntervalEnd;
  /** Largest value. */
  readonly to: IntervalEnd;
}

/** A value, or a stretch of values, that was judged. */
export interface Seen {
  readonly verdict: 'pass' | 'fail' | 'not-determined';
  /** The check that fails or is open; what is left of it, or lacking, tells how far its end is. */
  readonly check?: CheckResult | undefined;
}
interface SeenAt extends Seen {
  readonly value: number;
}

/** What judges values. */
export interface Look {
  /** Judges one value. */
  at(value: number): Seen;
  /** Judges all values from one to another at once; undefined where they are not all alike, or cannot be told. */
  over?(least: number, most: number): Seen['verdict'] | undefined;
  /** What is left of a check at a value, as a share of its limit; negative where it fails. */
  marginAt?(check: string, value: number): number | undefined;
}

/** How often a stretch of values is halved that cannot be judged at once. */
const DEEPEST = 7;

/** Neighbours of different verdict between two values: by the margin of the check that fails, else by halving. */
function boundary(look: Look, left: SeenAt, right: SeenAt, close: number): readonly SeenAt[] {
  let [a, b] = [left, right];
  const failed = [a, b].find((s) => s.verdict === 'fail')?.check?.check;
  const margin = (s: SeenAt) =>
    failed === undefined ? undefined : s.check?.check === failed ? s.check.margin : look.marginAt?.(failed, s.value);
  let [ma, mb] = [margin(a), margin(b)];
  let kept = 0;
  while (b.value - a.value > close) {
    const guess = ma !== undefined && mb !== undefined ? a.value + ((b.value - a.value) * ma) / (ma - mb) : Number.NaN;
    // what only just passes may have a margin of nothing, or of less by the last digit
    const straight = kept < 3 && guess >= a.value - close && guess <= b.value + close;
    // a guess that is all but right is put just beyond the end, so that both sides close in
    const inside = Math.min(Math.max(guess, a.value + close / 2), b.value - close / 2);
    const value = straight ? inside : (a.value + b.value) / 2;
    if (value <= a.value || value >= b.value) break;
    const middle: SeenAt = { value, ...look.at(value) };
    if (middle.verdict !== a.verdict && middle.verdict !== b.verdict)
      return [...boundary(look, a, middle, close), ...boundary(look, middle, b, close)];
    const left = middle.verdict === a.verdict;
    kept = straight ? kept + 1 : 0;
    if (left) [a, ma] = [middle, margin(middle)];
    else [b, mb] = [middle, margin(middle)];
  }
  return [a, b];
}

/** Values between two ends with neighbours at each change of verdict; what lies between others is judged as a whole where that can be told. */
function between(look: Look, left: SeenAt, right: SeenAt, close: number, deep: number): readonly SeenAt[] {
  if (right.value - left.value <= close) return [left, right];
  const alike = left.verdict === right.verdict;
  if (alike && look.over?.(left.value, right.value) === left.verdict) return [left, right];
  if (!alike) {
    const found = boundary(look, left, right, close);
    const all = [left, ...found, right];
    const joined: SeenAt[] = [left];
    for (const [i, next] of all.entries()) {
      const last = all[i - 1];
      if (!last || next.value <= (joined.at(-1) as SeenAt).value) continue;
      joined.push(...(last.verdict === next.verdict ? between(look, last, next, close, deep) : [last, next]).slice(1));
    }
    return joined;
  }
  if (deep === 0) return [left, right];
  // lengths and loads span decades: the middle is where both halves have the same ratio
  const value = left.value > 0 ? Math.sqrt(left.value * right.value) : (left.value + right.value) / 2;
  const middle: SeenAt = { value, ...look.at(value) };
  return [...between(look, left, middle, close, deep - 1), ...between(look, middle, right, close, deep - 1).slice(1)];
}

/**
 * Values in ascending order with neighbours at each change of verdict.
 * @param look judges values
 * @param least smallest value
 * @param most largest value
 * @param close how close neighbours are to be at a change
 */
export function regions(look: Look, least: number, most: number, close: number): readonly SeenAt[] {
  const at = (value: number): SeenAt => ({ value, ...look.at(value) });
  return between(look, at(least), at(most), close, DEEPEST);
}

/** Separate values, each judged. */
export const each = (look: Look, values: readonly number[]): readonly SeenAt[] =>
  values.map((value) => ({ value, ...look.at(value) }));

/** The stretches of equal verdict in which nothing fails, with what tells their ends from their neighbours. */
export function intervalsOf(seen: readonly SeenAt[]): readonly PermittedInterval[] {
  const found: PermittedInterval[] = [];
  let start = 0;
  for (let i = 1; i <= seen.length; i++) {
    const first = seen[start] as SeenAt;
    const last = seen[i - 1] as SeenAt;
    if (i < seen.length && (seen[i] as SeenAt).verdict === first.verdict) continue;
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
const end = (here: SeenAt, beyond: SeenAt | undefined): IntervalEnd => {
  const check = beyond && beyond.verdict !== 'pass' ? beyond.check : here.check;
  return beyond === undefined || check === undefined
    ? { value: here.value }
    : { value: here.value, beyond: { value: beyond.value, check } };
};

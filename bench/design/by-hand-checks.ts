/** What the circuit judged by hand ends in, check by check. A figure that cannot be had is NaN and decides nothing. */

/** The result of a check: identifier, verdict, the figures compared and what is left. */
export interface Result {
  readonly check: string;
  readonly weight: 'rule' | 'advice';
  readonly verdict: 'pass' | 'fail' | 'not-determined' | 'not-required';
  readonly value?: number;
  readonly limit?: number;
  readonly most?: number;
  readonly margin?: number;
  readonly alternatives?: readonly Result[];
}

type Weight = Result['weight'];

const verdictOf = (fits: boolean) => (fits ? 'pass' : 'fail');

/** Whether a value is at least a limit, or misses it by the rounding of binary numbers. */
export const reaches = (value: number, limit: number) => value >= limit || limit - value <= 1e-12 * Math.abs(limit);

export const open = (check: string, weight: Weight = 'rule'): Result => ({ check, weight, verdict: 'not-determined' });

export const notRequired = (check: string): Result => ({ check, weight: 'rule', verdict: 'not-required' });

export const holds = (check: string, fits: boolean, weight: Weight = 'rule'): Result => ({
  check,
  weight,
  verdict: verdictOf(fits),
});

export function atMost(check: string, value: number, limit: number, weight: Weight = 'rule'): Result {
  if (!Number.isFinite(value) || !Number.isFinite(limit)) return open(check, weight);
  const fits = reaches(limit, value);
  const margin = (fits ? Math.max(0, limit - value) : limit - value) / limit;
  return { check, weight, verdict: verdictOf(fits), value, limit, margin };
}

export function atLeast(check: string, value: number, limit: number, weight: Weight = 'rule'): Result {
  if (!Number.isFinite(value) || !Number.isFinite(limit)) return open(check, weight);
  const fits = reaches(value, limit);
  const margin = (fits ? Math.max(0, value - limit) : value - limit) / limit;
  return { check, weight, verdict: verdictOf(fits), value, limit, margin };
}

export function within(check: string, value: number, limit: number, most: number, weight: Weight = 'rule'): Result {
  if (!Number.isFinite(value)) return open(check, weight);
  return { check, weight, verdict: verdictOf(reaches(value, limit) && reaches(most, value)), value, limit, most };
}

export function anyOf(check: string, alternatives: readonly Result[]): Result {
  let verdict: Result['verdict'] = 'fail';
  for (const a of alternatives)
    if (a.verdict === 'pass') verdict = 'pass';
    else if (a.verdict === 'not-determined' && verdict === 'fail') verdict = 'not-determined';
  return { check, weight: 'rule', verdict, alternatives };
}

/** Of two results that both have to pass, the one that decides. */
export function deciding(a: Result, b: Result): Result {
  if (a.verdict === 'fail') return a;
  if (b.verdict === 'fail') return b;
  if (a.verdict === 'not-determined') return a;
  if (b.verdict === 'not-determined') return b;
  return (b.margin ?? 0) < (a.margin ?? 0) ? b : a;
}

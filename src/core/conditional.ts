import type { CheckResult } from './check.js';

const isOpen = ({ verdict }: CheckResult): boolean => verdict === 'fail' || verdict === 'not-determined';

/** Results by identifier, those of one identifier in their order. */
function byCheck(results: readonly CheckResult[]): Map<string, CheckResult[]> {
  const found = new Map<string, CheckResult[]>();
  for (const r of results) {
    const before = found.get(r.check);
    if (before) before.push(r);
    else found.set(r.check, [r]);
  }
  return found;
}

/**
 * What results by assumed facts amount to: what passes, or is not required, by them alone is conditional. Nothing becomes
 * better: what fails or is open by assumed facts stays so.
 * @param assumed results by facts some of which are assumed
 * @param bare results of the same checks with those facts unknown, in the same order
 * @param conditions the assumed facts, by set and entry
 * @returns the results, those conditional that rest on the assumed facts; and at the end what is open without them and is
 * not asked with them
 */
export function onConditions(
  assumed: readonly CheckResult[],
  bare: readonly CheckResult[],
  conditions: readonly string[],
): readonly CheckResult[] {
  const left = byCheck(bare);
  const pairs = assumed.map((r) => [r, left.get(r.check)?.shift()] as const);
  const unasked = [...left.values()].flat().filter(isOpen);
  const now = pairs.map(([r, twin]): CheckResult => {
    if (isOpen(r) || r.verdict === 'conditional') return r;
    // what is asked with assumed facts alone is met by them where others are open in its place
    if (twin ? !isOpen(twin) : unasked.length === 0) return r;
    const { reason: _reason, alternatives, ...rest } = r;
    return {
      ...rest,
      verdict: 'conditional',
      conditions,
      ...(alternatives ? { alternatives: onConditions(alternatives, twin?.alternatives ?? [], conditions) } : {}),
    };
  });
  return [
    ...now,
    ...unasked.map(
      ({ gaps: _gaps, alternatives: _alternatives, margin: _margin, ...rest }): CheckResult => ({
        ...rest,
        verdict: 'conditional',
        conditions,
      }),
    ),
  ];
}

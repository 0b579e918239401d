import { type CheckResult, onConditions } from '../core/index.js';
import { stillSound } from './problems.js';
import { type AssumedFact, assumedIn, type FoundFact, withoutAssumed } from './ranges.js';

/** Facts of a tree that are assumed, by assumption. */
export function byAssumption(tree: unknown): ReadonlyMap<string, readonly FoundFact<AssumedFact>[]> {
  const found = new Map<string, FoundFact<AssumedFact>[]>();
  for (const one of assumedIn(tree)) {
    const { assumed } = one.fact;
    const before = found.get(assumed);
    if (before) before.push(one);
    else found.set(assumed, [one]);
  }
  return found;
}

const conditionalIn = (results: readonly CheckResult[]) => results.filter((r) => r.verdict === 'conditional');

/**
 * Results by facts some of which are assumed, seen against the same with those facts unknown: all of them, and one
 * assumption after the other. What passes by them alone is conditional, and names the assumptions that it rests on.
 * @param tree what the results are found from
 * @param said results by the assumed facts
 * @param find results of a tree
 */
export function conditionally<T>(
  tree: T,
  said: readonly CheckResult[],
  find: (tree: T) => readonly CheckResult[],
): readonly CheckResult[] {
  const all = [...byAssumption(tree).keys()];
  if (all.length === 0) return said;
  const without = (which?: (assumed: string) => boolean) => find(stillSound(tree, withoutAssumed(tree, which)));
  const whole = onConditions(said, without(), all);
  if (conditionalIn(whole).length === 0) return whole;
  const alone = all.map((id) =>
    conditionalIn(
      onConditions(
        said,
        without((a) => a === id),
        [id],
      ),
    ),
  );
  const now = whole.map((r): CheckResult => {
    const on = all.filter((_, i) => alone[i]?.some((c) => c.check === r.check));
    return r.verdict === 'conditional' && on.length > 0 ? { ...r, conditions: on } : r;
  });
  // of assumptions that stand in for each other none is missed alone: by those that are left they pass without the others
  const together = new Set(now.filter((r) => r.verdict === 'conditional' && r.conditions === all).map((r) => r.check));
  if (together.size === 0) return now;
  let left = all;
  for (const id of all) {
    const fewer = left.filter((a) => a !== id);
    const bare = without((a) => !fewer.includes(a));
    if (!conditionalIn(onConditions(said, bare, all)).some((r) => together.has(r.check))) left = fewer;
  }
  return now.map((r) => (r.conditions === all ? { ...r, conditions: left } : r));
}

import type { Aspect } from '../codes/wiring-code.js';
import type { CheckResult } from '../core/index.js';
import {
  type AssumedFact,
  assumedIn,
  byAssumption,
  conditionally,
  type FoundFact,
  type Installation,
} from '../installation/index.js';
import { called } from './ranges.js';
import type { AspectResults } from './working.js';

/** A fact that was assumed and that a verdict rests on: to be confirmed on site. */
export interface Condition {
  /** Assumption, by set and entry. */
  readonly assumption: string;
  /** The facts that were taken from it: what they are, and of what. */
  readonly facts: readonly string[];
  /** Role in the vocabulary, where the name of the fact says it. */
  readonly role?: string;
  /** Unit, where the role is known. */
  readonly unit?: string;
  /** What was assumed. */
  readonly value?: unknown;
  /** Smallest value that was assumed possible. */
  readonly least?: number;
  /** Largest value that was assumed possible. */
  readonly most?: number;
  /** Checks that pass by it, and would be open without it. */
  readonly checks: readonly string[];
}

function conditionOf(
  assumption: string,
  facts: readonly FoundFact<AssumedFact>[],
  checks: readonly string[],
): Condition {
  const [first] = facts as readonly [FoundFact<AssumedFact>];
  const { name: _name, ...role } = called(first);
  const { fact } = first;
  return {
    assumption,
    facts: [...new Set(facts.map((f) => called(f).name))],
    ...role,
    ...(fact.state === 'known' ? { value: fact.value } : { least: fact.least as number, most: fact.most as number }),
    checks,
  };
}

/**
 * The assumed facts that results rest on, in the order of the tree.
 * @param tree what the results were found from
 * @param results results, those conditional with the assumptions that they rest on
 */
export const conditionsOf = (tree: unknown, results: readonly CheckResult[]): readonly Condition[] =>
  [...byAssumption(tree)].flatMap(([id, facts]) => {
    const checks = [...new Set(results.flatMap((r) => (r.conditions?.includes(id) ? [r.check] : [])))];
    return checks.length > 0 ? [conditionOf(id, facts, checks)] : [];
  });

/** The results of a circuit, aspect by aspect: what passes by assumed facts alone is conditional. */
export function judgedConditionally(
  installation: Installation,
  said: readonly AspectResults[],
  find: (installation: Installation) => readonly AspectResults[],
): readonly AspectResults[] {
  if (assumedIn(installation).length === 0) return said;
  const marked = (judged: readonly AspectResults[]): readonly CheckResult[] =>
    judged.flatMap(({ aspect, results }) => results.map((r) => ({ ...r, check: `${aspect} ${r.check}` })));
  const aspects = new Map<Aspect, CheckResult[]>(said.map((s) => [s.aspect, []]));
  for (const r of conditionally(installation, marked(said), (i) => marked(find(i)))) {
    const [aspect, check] = r.check.split(' ') as [Aspect, string];
    aspects.get(aspect)?.push({ ...r, check });
  }
  return [...aspects].map(([aspect, results]) => ({ aspect, results }));
}

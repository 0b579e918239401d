import { together } from '../../calculation/index.js';

type Joined<G> = G extends readonly [infer A, ...infer R] ? Omit<A, 'checks'> & Joined<R> : unknown;

/**
 * The figures of several groups, scope by scope, in the order of the groups.
 * @param groups lines by scope and entry; the checks beside them are listed on their own
 */
export function figuresOf<const G extends readonly object[]>(...groups: G): Joined<G> {
  const lists = groups.flatMap((group) => Object.entries(group)).filter(([scope]) => scope !== 'checks');
  const of = (scope: string) => lists.flatMap(([name, lines]) => (name === scope ? [lines] : []));
  const scopes = [...new Set(lists.map(([scope]) => scope))];
  return Object.fromEntries(scopes.map((scope) => [scope, together(...of(scope))])) as Joined<G>;
}

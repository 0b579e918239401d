import { type Fact, isMissing, type Known, type KnownFact, type RangeFact } from '../core/index.js';
import { invalidInput } from '../units/index.js';

type Tree = Readonly<Record<string, unknown>>;

/** Whether a part of a tree is a fact of which only the ends are known. */
const isRange = (node: object): node is RangeFact<number> =>
  (node as { state?: unknown }).state === 'between' &&
  typeof (node as RangeFact<unknown>).least === 'number' &&
  typeof (node as RangeFact<unknown>).most === 'number';

/** A fact that is assumed. */
export type AssumedFact = (KnownFact<unknown> | RangeFact<unknown>) & { readonly assumed: string };

/** Whether a part of a tree is a fact that is assumed. */
const isAssumed = (node: object): node is AssumedFact =>
  'state' in node && typeof (node as { assumed?: unknown }).assumed === 'string';

/** A fact where it stands in a tree. */
export interface FoundFact<F> {
  readonly fact: F;
  /** Name of its property, and what the property belongs to. */
  readonly key: string;
  readonly parent: Tree;
  /** Name of the nearest thing above that has one. */
  readonly where: string;
}

/** A fact that is known only within a range, where it stands in a tree. */
export type FoundRange = FoundFact<RangeFact<number>>;

/** A part of a tree on the way to the facts in it, with its changed copy once there is one. */
interface Part {
  readonly node: object;
  readonly key: string;
  readonly above?: Part;
  readonly where: string;
  readonly depth: number;
  copy?: Record<string, unknown>;
}

/** Parts within parts beyond which a tree has no end: one that holds itself. */
const DEEPEST = 100_000;

/** The copy of a part in which something is changed, the parts above it copied likewise. */
function copied(part: Part): Record<string, unknown> {
  for (let at: Part | undefined = part; at && !at.copy; at = at.above)
    at.copy = (Array.isArray(at.node) ? [...at.node] : { ...at.node }) as Record<string, unknown>;
  for (let at = part; at.above?.copy && at.above.copy[at.key] !== at.copy; at = at.above)
    at.above.copy[at.key] = at.copy;
  return part.copy as Record<string, unknown>;
}

/**
 * A tree with something in the place of every fact of a kind; what it shares with the given one stays the same object.
 * @param tree an installation or a part of it
 * @param is which facts
 * @param meet what takes the place of one, asked in the order of the tree
 */
function replaceFacts<T, F extends object>(
  tree: T,
  is: (node: object) => node is F,
  meet: (found: FoundFact<F>) => unknown,
): T {
  if (typeof tree !== 'object' || tree === null) return tree;
  const open: Part[] = [];
  const enter = (node: object, key: string, where: string, above?: Part): void => {
    const name = Array.isArray(node) ? undefined : ((node as Tree).id ?? (node as Tree).name);
    const depth = above ? above.depth + 1 : 0;
    if (depth > DEEPEST) throw invalidInput('the installation', [{ path: [], message: 'holds itself' }]);
    open.push({ node, key, where: typeof name === 'string' ? name : where, depth, ...(above ? { above } : {}) });
  };
  const root: Part = { node: { tree }, key: '', where: '', depth: 0 };
  enter(tree, 'tree', '', root);
  for (let part = open.pop(); part; part = open.pop()) {
    const { node, key, where, above } = part;
    if (is(node)) {
      const parent = (above === root ? {} : above?.node) as Tree;
      const now = meet({ fact: node, key: above === root ? '' : key, parent, where: above?.where ?? where });
      if (now !== node && above) copied(above)[key] = now;
      continue;
    }
    const from = open.length;
    for (const k in node) {
      const value = (node as Tree)[k];
      if (typeof value === 'object' && value !== null) enter(value, k, where, part);
    }
    // the last one in is the first one out
    for (let i = from, j = open.length - 1; i < j; i++, j--) [open[i], open[j]] = [open[j] as Part, open[i] as Part];
  }
  return (root.copy?.tree ?? tree) as T;
}

/** A tree with something in the place of every range, in the order of the tree. */
const replaceRanges = <T>(tree: T, meet: (found: FoundRange) => unknown): T =>
  replaceFacts(tree, isRange, (found) => (found.fact.least < found.fact.most ? meet(found) : found.fact));

/** Parts of trees in which a kind of fact was looked for and is not: a changed installation shares most of them with the one before. */
const unassumed = /* @__PURE__ */ new WeakSet<object>();
const unranged = /* @__PURE__ */ new WeakSet<object>();

/** Whether a tree holds a fact of a kind; what was gone through in vain is not gone through again. */
function holdsAny(tree: unknown, is: (node: object) => boolean, without: WeakSet<object>): boolean {
  if (typeof tree !== 'object' || tree === null) return false;
  const met: object[] = [];
  const open: object[] = [tree];
  const depths: number[] = [0];
  for (let node = open.pop(); node; node = open.pop()) {
    const depth = depths.pop() as number;
    if (without.has(node)) continue;
    // a tree that holds itself has no end downwards, however wide others are: its faults are found elsewhere
    if (is(node) || depth > DEEPEST) return true;
    const before = open.length;
    for (const key in node) {
      const value = (node as Tree)[key];
      if (typeof value === 'object' && value !== null) {
        open.push(value);
        depths.push(depth + 1);
      }
    }
    // to look at one that holds nothing costs less than to keep it in mind
    if (open.length > before) met.push(node);
  }
  for (const node of met) without.add(node);
  return false;
}

/**
 * The facts of a tree that are assumed, in the order of the tree.
 * @param tree an installation or a part of it
 */
export function assumedIn(tree: unknown): readonly FoundFact<AssumedFact>[] {
  if (!holdsAny(tree, isAssumed, unassumed)) return [];
  const found: FoundFact<AssumedFact>[] = [];
  replaceFacts(tree, isAssumed, (one) => {
    found.push(one);
    return one.fact;
  });
  return found;
}

/**
 * A tree in which assumed facts are unknown, as they were before somebody assumed them.
 * @param tree an installation or a part of it
 * @param which which of the facts, by set and entry; all of them when absent
 */
export const withoutAssumed = <T>(tree: T, which?: (assumed: string) => boolean): T =>
  replaceFacts(tree, isAssumed, ({ fact }) =>
    which && !which(fact.assumed) ? fact : { state: 'unknown', obtain: `assumed (${fact.assumed}), nobody looked` },
  );

/**
 * A tree in which the facts taken from one assumption are others.
 * @param tree an installation or a part of it
 * @param assumption set and entry
 * @param fact the fact in their place
 */
export const withAssumption = <T>(tree: T, assumption: string, fact: unknown): T =>
  replaceFacts(tree, isAssumed, (found) => (found.fact.assumed === assumption ? fact : found.fact));

/** Whether a tree holds any fact that is known only within a range: the quick question before the long one. */
export const holdsRange = (tree: unknown): boolean =>
  holdsAny(tree, (node) => (node as { state?: unknown }).state === 'between', unranged);

/** The facts of a tree that are known only within a range, in the order of the tree. */
export function rangesIn(tree: unknown): readonly FoundRange[] {
  const found: FoundRange[] = [];
  replaceRanges(tree, (range) => {
    found.push(range);
    return range.fact;
  });
  return found;
}

/**
 * A tree with its ranges narrowed, in the order of the tree; what it shares with the given one stays the same object.
 * @param tree an installation or a part of it
 * @param ends smallest and largest value of each range
 */
export function narrowed<T>(tree: T, ends: readonly (readonly [least: number, most: number])[]): T {
  let next = 0;
  return replaceRanges(tree, ({ fact }) => {
    const [least, most] = ends[next++] as readonly [number, number];
    const { state: _state, least: _least, most: _most, ...said } = fact;
    return least === most ? { ...said, state: 'known', value: least } : { ...said, state: 'between', least, most };
  });
}

/**
 * What a function of facts that only rises with each of them gives: one value, or the ends that it lies between.
 * @param tree the part of an installation that it reads
 * @param read the function
 */
export function rising<T, V extends number>(tree: T, read: (tree: T) => Known<V>): Known<V> | Fact<V> {
  const ranges = holdsRange(tree) ? rangesIn(tree) : [];
  if (ranges.length === 0) return read(tree);
  const [least, most] = (['least', 'most'] as const).map((end) =>
    read(
      narrowed(
        tree,
        ranges.map(({ fact }) => [fact[end], fact[end]] as const),
      ),
    ),
  ) as [Known<V>, Known<V>];
  return isMissing(least) || isMissing(most) ? most : { state: 'between', least, most };
}

import { type Fact, isMissing, type Known, type RangeFact } from '../core/index.js';

type Tree = Readonly<Record<string, unknown>>;

/** Whether a part of a tree is a fact of which only the ends are known. */
const isRange = (node: unknown): node is RangeFact<number> =>
  typeof node === 'object' && node !== null && (node as { state?: unknown }).state === 'between';

/** A fact that is known only within a range, where it stands in a tree. */
export interface FoundRange {
  readonly fact: RangeFact<number>;
  /** Name of its property, and what the property belongs to. */
  readonly key: string;
  readonly parent: Tree;
  /** Name of the nearest thing above that has one. */
  readonly where: string;
}

/**
 * A tree with something in the place of every range; what it shares with the given one stays the same object.
 * @param tree an installation or a part of it
 * @param meet what takes the place of a range, asked in the order of the tree
 */
export function replaceRanges<T>(tree: T, meet: (found: FoundRange) => unknown): T {
  const into = (value: unknown, key: string, parent: Tree, where: string): unknown => {
    if (typeof value !== 'object' || value === null) return value;
    if (isRange(value)) return value.least < value.most ? meet({ fact: value, key, parent, where }) : value;
    if (Array.isArray(value)) {
      let changed = false;
      const items = value.map((item) => {
        const now = into(item, key, parent, where);
        if (now !== item) changed = true;
        return now;
      });
      return changed ? items : value;
    }
    const node = value as Tree;
    const name = node.id ?? node.name;
    const here = typeof name === 'string' ? name : where;
    let copy: Record<string, unknown> | undefined;
    for (const k in node) {
      const now = into(node[k], k, node, here);
      if (now === node[k]) continue;
      copy ??= { ...node };
      copy[k] = now;
    }
    return copy ?? node;
  };
  return into(tree, '', {}, '') as T;
}

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
  const ranges = rangesIn(tree);
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

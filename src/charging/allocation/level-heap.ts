/** A heap of numbered entries by level, lowest first. */
export interface LevelHeap {
  push(level: number, entry: number): void;
  /** Level of the lowest entry, or infinity when there is none. */
  lowest(): number;
  /** Takes the lowest entry. */
  pop(): number;
}

/** An empty heap; equal levels leave it by number, so that nothing depends on the order of arrival. */
export function levelHeap(): LevelHeap {
  const levels: number[] = [];
  const entries: number[] = [];
  const before = (l: number, e: number, k: number) => l < levels[k]! || (l === levels[k]! && e < entries[k]!);
  const put = (k: number, level: number, entry: number) => {
    levels[k] = level;
    entries[k] = entry;
  };
  return {
    push(level, entry) {
      let k = levels.length;
      put(k, level, entry);
      while (k > 0) {
        const up = (k - 1) >> 1;
        if (!before(level, entry, up)) break;
        put(k, levels[up]!, entries[up]!);
        k = up;
      }
      put(k, level, entry);
    },
    lowest: () => (levels.length === 0 ? Number.POSITIVE_INFINITY : levels[0]!),
    pop() {
      const top = entries[0]!;
      const level = levels.pop()!;
      const entry = entries.pop()!;
      const size = levels.length;
      if (size === 0) return top;
      let k = 0;
      for (;;) {
        let down = 2 * k + 1;
        if (down >= size) break;
        if (down + 1 < size && before(levels[down + 1]!, entries[down + 1]!, down)) down++;
        if (before(level, entry, down)) break;
        put(k, levels[down]!, entries[down]!);
        k = down;
      }
      put(k, level, entry);
      return top;
    },
  };
}

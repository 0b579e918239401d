/** Random numbers from a seed: the same seed gives the same numbers on every machine. */
export interface Random {
  /** Below one, from zero. */
  next(): number;
  /** A whole number below `n`. */
  below(n: number): number;
  /** Whether something of this probability happens. */
  chance(p: number): boolean;
  /** One of several. */
  pick<T>(of: readonly T[]): T;
}

/** A small generator of 32 bits (mulberry32), enough to choose mutations. */
export function randomOf(seed: number): Random {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const below = (n: number) => Math.floor(next() * n);
  return { next, below, chance: (p) => next() < p, pick: (of) => of[below(of.length)] as (typeof of)[number] };
}

/**
 * Our figures against those of another way of computing them, over many cases. Files named `*.cross.ts` beside the tests
 * export `crossChecks: readonly CrossCheck[]`; the accuracy report runs them.
 */
export interface CrossCheck {
  /** Unique, kebab-case. */
  readonly id: string;
  /** What is computed, in a few words. */
  readonly about: string;
  /** The other way, and whose it is. */
  readonly against: string;
  /** Trade topic: the name of a page of the handbook. */
  readonly topic: string;
  /** What counts as agreement, in words. */
  readonly demanded: string;
  /** Smallest share of the cases that has to agree. */
  readonly leastShare: number;
  /** Why no more than forty cases are compared, where each takes long. */
  readonly few?: string;
  /** Computes all cases, always the same ones. */
  readonly run: () => CrossResult;
}

/** What a cross-check came to. */
export interface CrossResult {
  /** How many cases were compared. */
  readonly compared: number;
  /** How many of them agree as demanded. */
  readonly agreed: number;
  /** Relative differences, ours over theirs less one, where they are more than rounding. */
  readonly differences?: readonly number[];
}

/**
 * Counts the cases that agree.
 * @param all the cases
 * @param agrees whether one agrees
 */
export const counted = <T>(all: readonly T[], agrees: (one: T) => boolean): CrossResult => ({
  compared: all.length,
  agreed: all.filter(agrees).length,
});

/**
 * Whether two numbers agree to a share of the second.
 * @param ours our figure
 * @param theirs the other
 * @param share relative difference that is allowed
 */
export const agree = (ours: number, theirs: number, share: number): boolean =>
  Math.abs(ours - theirs) <= share * Math.abs(theirs);

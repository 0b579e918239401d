/** One piece of work done in several ways. Every `*.bench.ts` file exports an array of these as its default. */
export interface Comparison {
  /** What is done, as the heading of its rows. */
  readonly title: string;
  /** The way whose time is 1: hand-written code, a sort, a general solver. */
  readonly anchor: string;
  /** How many pieces one call does; times are given for one piece. Default 1. */
  readonly per?: number;
  /** Set where other processes do the work: the clock on the wall counts, not the processor time of this one. */
  readonly processes?: boolean;
  /**
   * The ways, by name. A call does the work once and returns something that depends on all of it; `call` counts the
   * calls, so that inputs can vary. What takes nanoseconds belongs in a loop inside the way, with `per` as its count:
   * a call from the harness costs as much as a formula.
   */
  readonly ways: Readonly<Record<string, (call: number) => unknown>>;
}

/** Types a comparison, and refuses an anchor that is not among its ways. */
export const compare = <W extends string>(
  title: string,
  about: {
    readonly anchor: NoInfer<W>;
    readonly per?: number;
    readonly processes?: boolean;
    readonly ways: Readonly<Record<W, (call: number) => unknown>>;
  },
): Comparison => ({ title, ...about });

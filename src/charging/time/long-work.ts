/**
 * What long work tells while it goes on, and what cuts it short. The functions of this package return when they are done:
 * run them in a worker, so that a page goes on, and let its progress look at what the page has to say.
 */
export interface LongWork {
  /** Called now and then: how much is done, and of how much, in pieces of the work itself (steps, slots, objectives). */
  readonly progress?: (done: number, total: number) => void;
  /**
   * The signal of an `AbortController`, or anything that has its two properties. Looked at after each progress; once it is
   * aborted its reason is thrown and there is no result.
   */
  readonly signal?: { readonly aborted: boolean; readonly reason?: unknown };
}

/** Tells how much is done, and ends the work where that is wanted; nothing where nobody listens. */
export function telling({ progress, signal }: LongWork, total: number): ((done: number) => void) | undefined {
  if (!progress && !signal) return undefined;
  return (done) => {
    progress?.(done, total);
    if (signal?.aborted) throw signal.reason ?? new Error('aborted');
  };
}

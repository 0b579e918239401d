import { stated } from '../../core/index.js';
import { type ControlSettings, recoverAfterOf } from './settings.js';

/** How the stamps of measurements stand to the clock of the controller: plain, JSON-ready. @inline */
export interface Stamps {
  /** What is added to a stamp to make it a clock value, s. */
  readonly shift: number;
  /**
   * The last stamp, and the clock value at which it was new, s; doubtful when it was out of place then, or when the clock
   * has gone back since: how old it is nobody knows.
   */
  readonly seen?: { readonly at: number; readonly clock: number; readonly doubtful?: true };
  /** How far the clock was ahead of the running time when a stamp was last in its place, or out of it by a jump, s. */
  readonly ahead?: number;
  /** Since when stamps are out of place and yet run evenly with the clock (running time), and their smallest lag, s. */
  readonly wrong?: { readonly since: number; readonly lag: number };
}

/**
 * Looks at a stamp. One that is out of place, ahead of the clock or too old, is put right once it has run evenly with the
 * clock for the time of recovery, but only where a clock must have jumped: it is ahead, it went back, it is no further
 * behind than the controller's clock has jumped, or the clocks agree again as they were set, after a jump that was put right. A stamp that is late without a jump is what it says, late, for as long as
 * it lasts. A stamp that is ahead by no more than the
 * two periods is put right at once. The shortest delay seen counts as none.
 * @param now clock value and running time, s
 */
export function lookAt(
  stamps: Stamps,
  at: number | undefined,
  now: { readonly clock: number; readonly running: number },
  settings: ControlSettings,
): Stamps {
  const { shift, seen, wrong, ahead } = stamps;
  if (at === undefined || at === seen?.at) return stamps;
  const lag = now.clock - at - shift;
  const next = { shift, seen: { at, clock: now.clock }, ahead: now.clock - now.running };
  if (lag >= 0 && lag <= settings.staleAfter) return next;
  // a little ahead: the clocks differ, or the delay is shorter than it ever was
  const even = settings.meterPeriod + settings.controllerPeriod;
  if (lag < 0 && lag >= -even && !(seen && at < seen.at)) return { ...next, shift: shift + lag };
  const doubtful = { ...next.seen, doubtful: true } as const;
  const uneven = seen ? Math.abs(at - seen.at - (now.clock - seen.clock)) : 0;
  if (wrong && uneven <= even) {
    const least = Math.min(wrong.lag, lag);
    return now.running - wrong.since >= recoverAfterOf(settings)
      ? { ...next, shift: shift + least }
      : { ...next, seen: doubtful, wrong: { since: wrong.since, lag: least } };
  }
  const jumped = ahead === undefined ? 0 : next.ahead - ahead;
  const more = lag - (wrong?.lag ?? 0) - settings.staleAfter;
  const asSet = now.clock - at;
  const agree = shift !== 0 && asSet >= -even && asSet <= settings.staleAfter;
  const explained = lag < 0 || (seen !== undefined && at < seen.at) || more <= jumped || agree;
  return explained
    ? { ...next, seen: doubtful, wrong: { since: now.running, lag } }
    : { shift, seen: doubtful, ...stated({ ahead }) };
}

import { type ControlSettings, recoverAfterOf } from './settings.js';

/** How the stamps of measurements stand to the clock of the controller: plain, JSON-ready. */
export interface Stamps {
  /** What is added to a stamp to make it a clock value, s. */
  readonly shift: number;
  /** The last stamp, and the clock value at which it was new, s. */
  readonly seen?: { readonly at: number; readonly clock: number };
  /** How far the clock has jumped since the last new stamp, s. */
  readonly jumped?: number;
  /** Since when stamps are out of place and yet run evenly with the clock (running time), and their smallest lag, s. */
  readonly wrong?: { readonly since: number; readonly lag: number };
}

/** A moment of a controller, s. */
interface Now {
  readonly clock: number;
  readonly running: number;
  /** How far the clock has jumped in this step: back, or on by more than a measurement stays good. */
  readonly jumped: number;
}

/**
 * Looks at a stamp. One that is out of place, ahead of the clock or too old, is put right once it has run evenly with the
 * clock for the time of recovery, but only where a clock must have jumped: it is ahead, it went back, or it is as far
 * behind as the controller's clock jumped. A stamp that is late without a jump is what it says, late, for as long as it
 * lasts. The shortest delay seen counts as none.
 */
export function lookAt(stamps: Stamps, at: number | undefined, now: Now, settings: ControlSettings): Stamps {
  const jumped = (stamps.jumped ?? 0) + now.jumped;
  if (at === undefined || at === stamps.seen?.at) return { ...stamps, ...(jumped === 0 ? {} : { jumped }) };
  const { shift, seen, wrong } = stamps;
  const next = { shift, seen: { at, clock: now.clock } };
  const lag = now.clock - at - shift;
  if (lag >= 0 && lag <= settings.staleAfter) return next;
  const uneven = seen ? Math.abs(at - seen.at - (now.clock - seen.clock)) : 0;
  if (wrong && uneven <= settings.meterPeriod + settings.controllerPeriod) {
    const least = Math.min(wrong.lag, lag);
    if (now.running - wrong.since >= recoverAfterOf(settings)) return { ...next, shift: shift + least };
    return { ...next, wrong: { since: wrong.since, lag: least } };
  }
  const wentBack = seen !== undefined && at < seen.at;
  const explained = lag < 0 || wentBack || (jumped > 0 && Math.abs(lag - jumped) <= settings.staleAfter);
  return explained ? { ...next, wrong: { since: now.running, lag } } : next;
}

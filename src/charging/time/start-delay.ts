import { CalculationError, type Seconds, seconds } from '../../units/index.js';
import { inspection, isObject } from '../network/refuse.js';

/** What a random delay depends on. @inline */
export interface RandomDelay {
  /** Seed of the site: a whole number. Sites must not share one, or their vehicles start together. */
  readonly seed: number;
  /** Largest delay, s, 0 to 86 400. */
  readonly maximum: Seconds;
}

/** A number from 0 up to below 1 from a seed and an event: hashed (FNV-1a, 32 bits), its bits mixed twice. */
export function uniformOf(seed: number, event: string): number {
  let hash = 0x811c9dc5;
  const text = `${seed}/${event}`;
  for (let k = 0; k < text.length; k++) hash = Math.imul(hash ^ text.charCodeAt(k), 0x01000193);
  for (const factor of [0x85ebca6b, 0xc2b2ae35]) hash = Math.imul(hash ^ (hash >>> 15), factor);
  hash ^= hash >>> 16;
  return (hash >>> 0) / 2 ** 32;
}

/**
 * Delay of a start: a whole number of seconds from 0 to the maximum, each as likely as the others, the same for the same
 * seed and event. The text is hashed (FNV-1a, 32 bits) and its bits mixed twice; it is no cryptographic generator.
 * @param delay seed of the site and largest delay, s
 * @param event what starts: name of the point and time, for instance
 * @returns the delay, s
 * @throws CalculationError `out-of-range` for a maximum that is negative or beyond 86 400 s
 * @example
 * ```ts
 * import { seconds } from 'ohmwright';
 * import { startDelayOf } from 'ohmwright/charging';
 *
 * const delay = startDelayOf({ seed: 4711, maximum: seconds(600) }, 'drive, Monday 22:00');
 * delay >= 0 && delay <= 600; // => true
 * ```
 */
export function startDelayOf(delay: RandomDelay, event: string): Seconds {
  const found = inspection();
  found.when(!isObject(delay), ['delay'], 'must be a delay');
  found.when(typeof event !== 'string', ['event'], 'must be a name');
  found.refuse('a random delay');
  const { seed, maximum } = delay;
  found.number(seed, ['delay', 'seed'], {});
  found.number(maximum, ['delay', 'maximum'], {});
  found.refuse('a random delay');
  if (!(maximum >= 0 && maximum <= 86_400))
    throw new CalculationError('out-of-range', `largest delay is ${maximum} s; it lies between 0 s and 86 400 s`, {
      quantity: 'startDelay',
      value: maximum,
      unit: 's',
      bounds: { least: 0, most: 86_400 },
      source: 'a delay within a day',
    });
  return seconds(Math.floor(uniformOf(seed, event) * (Math.floor(maximum) + 1)));
}

import type { Envelope } from '../../physics/index.js';
import type { Amperes } from '../../units/index.js';
import { instantaneousBands } from './instantaneous-bands.js';
import { testMultiples, testTimes } from './test-currents.js';

/**
 * The gates of a circuit-breaker by its standard: never one curve. Between two gates the standard says only that a
 * larger current is not slower: `gateBounds` says what is certain there, lines between gates are for drawing.
 * @param type B, C or D
 * @param deviceRating rated current, A, up to 125
 * @returns points that bound the zone below and above
 * @throws CalculationError `no-cell` above 125 A
 * @example
 * ```ts
 * import { amperes } from 'ohmwright';
 * import { breakerEnvelope } from 'ohmwright/products';
 *
 * breakerEnvelope('B', amperes(32)).slow.length; // => 3
 * ```
 */
export function breakerEnvelope(type: 'B' | 'C' | 'D', deviceRating: Amperes): Envelope {
  const multiple = (test: 'a' | 'b' | 'c') => testMultiples.get({ basis: 'rated current', test }) * deviceRating;
  const time = (test: 'a' | 'b' | 'c') => testTimes.get({ test, deviceRating });
  const edge = (name: 'lower' | 'upper') => instantaneousBands.get({ edge: name, type }) * deviceRating;
  return {
    fast: [
      { current: multiple('a'), time: time('a') },
      { current: multiple('c'), time: 1 },
      { current: edge('lower'), time: 0.1 },
    ],
    slow: [
      { current: multiple('b'), time: time('b') },
      { current: multiple('c'), time: time('c') },
      { current: edge('upper'), time: 0.1 },
    ],
  };
}

import { choose, derive, type Line, same, when } from '../../calculation/index.js';
import { type Known, missing } from '../../core/index.js';
import type { Amperes } from '../../units/index.js';

/** Shortest time for which a circuit-breaker is bound by its standard, s. */
const shortestBreakerTime = 0.1;

/**
 * Current that operates the overcurrent device within the required time: of a circuit-breaker by the edge of its
 * instantaneous band.
 * @param fuse the current of a fuse, as the code reads it
 */
export const operatingCurrent = <L extends Line>(fuse: L) => {
  const notBound = derive(
    ['requiredTime'],
    ({ requiredTime }): Known<Amperes> =>
      missing({
        kind: 'fact',
        fact: 'time-current characteristic of the circuit-breaker',
        obtain: `the standard binds a circuit-breaker to less than 0.1 s; for ${requiredTime} s ask its maker`,
      }),
  );
  return {
    breakerBound: derive(['requiredTime'], ({ requiredTime }) => requiredTime >= shortestBreakerTime, {
      direction: { requiredTime: 1 },
    }),
    operatingCurrent: choose('deviceFamily', {
      'circuit-breaker': when('breakerBound', same('instantaneousTrip'), notBound),
      'old circuit-breaker': when('breakerBound', same('instantaneousTrip'), notBound),
      fuse,
    }),
  };
};

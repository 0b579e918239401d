import { choose, derive, type Line, same, when } from '../../calculation/index.js';
import { factValue, isMissing, type Known, missing, type Sheet } from '../../core/index.js';
import type { OvercurrentDevice } from '../../installation/index.js';
import { operatingCurrentFromMultiple } from '../../physics/index.js';
import { oldInstantaneousBands } from '../../products/bs3871/instantaneous-bands.js';
import { instantaneousBands } from '../../products/en60898/instantaneous-bands.js';
import type { Amperes, Seconds } from '../../units/index.js';

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

/** How a wiring code reads the current that operates a fuse: its tables belong to the code. */
export type FuseCurrent = (
  sheet: Sheet,
  device: OvercurrentDevice,
  standard: 'BS 88-2' | 'BS 88-3' | 'BS 1361' | 'BS 1362' | 'BS 3036',
  within: Known<Seconds>,
) => Known<Amperes>;

/** Writes the current that operates an overcurrent device within a time on a sheet. */
export function writeOperatingCurrent(
  sheet: Sheet,
  device: OvercurrentDevice,
  within: Known<Seconds>,
  fuseCurrent: FuseCurrent,
): Known<Amperes> {
  const kind = factValue('kind of the overcurrent device', device.kind);
  if (isMissing(kind)) return sheet.given('operatingCurrent', kind);
  switch (kind.standard) {
    case 'EN 60898':
    case 'EN 61009':
    case 'BS 3871': {
      if (typeof within === 'number' && within < shortestBreakerTime)
        return sheet.given(
          'operatingCurrent',
          missing({
            kind: 'fact',
            fact: 'time-current characteristic of the circuit-breaker',
            obtain: `the standard binds a circuit-breaker to less than 0.1 s; for ${within} s ask its maker`,
          }),
        );
      const edge = sheet.label('edge', 'upper');
      const old = kind.standard === 'BS 3871';
      const deviceMultiple = old
        ? sheet.look(oldInstantaneousBands, { edge, type: sheet.label('type', kind.type) })
        : sheet.look(instantaneousBands, { edge, type: sheet.label('type', kind.type) });
      const deviceRating = sheet.given('deviceRating', device.rating);
      return sheet.step(operatingCurrentFromMultiple, { deviceMultiple, deviceRating });
    }
    default:
      return fuseCurrent(sheet, device, kind.standard, within);
  }
}

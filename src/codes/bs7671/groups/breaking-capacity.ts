import { adjusted, anyOf, compare, each } from '../../../calculation/index.js';
import { type CheckResult, isMissing, notDetermined } from '../../../core/index.js';
import { breaking } from '../../iec-family/breaking-capacity.js';
import { data, discrimination } from '../../iec-family/discrimination.js';
import { overcurrentDevice } from '../../iec-family/overcurrent-device.js';
import type { AheadPlace } from '../../iec-family/places.js';
import {
  breakingCapacityCheck,
  conditionalBreakingCapacity,
  discriminationCheck,
  discriminationWithFeeder,
  ownBreakingCapacity,
} from '../breaking-checks.js';

type Discrimination = typeof discriminationCheck | typeof discriminationWithFeeder;

/** Above the gate the device ahead may still hold, and a weak fault opens nothing at once: the makers' tables decide. */
function certainOnly(check: Discrimination, result: CheckResult, opensAtOnce: unknown): CheckResult {
  const open = (obtain: string) => notDetermined(check, ...data(obtain).missing);
  if (result.verdict === 'fail')
    return open('above the certain range: tables of the makers at the prospective current');
  if (result.verdict !== 'pass' || opensAtOnce === true) return result;
  if (isMissing(opensAtOnce)) return notDetermined(check, ...opensAtOnce.missing);
  return open('the largest fault current is too small to open the device of the circuit at once: curves of the makers');
}

/** A fault in the circuit leaves the device ahead alone. */
const discriminates = (check: Discrimination) =>
  adjusted(
    compare(check, { applies: 'discriminationKnown', because: 'discriminationRests' }),
    ['opensAtOnce'],
    (result, { opensAtOnce }) => certainOnly(check, result, opensAtOnce),
  );

/** Breaking capacity at the place of the device, own or conditional; discrimination. BS 7671 434.5.1, 536. */
export const breakingCapacity = () => {
  const device = overcurrentDevice();
  const current = breaking();
  const ahead = discrimination();
  return {
    circuit: { ...device.circuit, ...current.circuit, ...ahead.circuit },
    conditionalRatings: current.conditionalRatings,
    ahead: ahead.ahead,
    checks: [
      // a feeder that is left out can acquit, not condemn
      adjusted(
        anyOf(
          breakingCapacityCheck,
          [
            compare(ownBreakingCapacity),
            each('conditionalRatings', [compare(conditionalBreakingCapacity, { applies: 'ratingDeclared' })]),
          ],
          { because: 'saidOfProspective' },
        ),
        ['feedersCounted'],
        (result, { feedersCounted }) =>
          result.verdict === 'fail' && isMissing(feedersCounted)
            ? notDetermined(breakingCapacityCheck, ...feedersCounted.missing)
            : result,
      ),
      each('ahead', [discriminates(discriminationCheck)], ({ cutOut }: AheadPlace) => cutOut),
      each('ahead', [discriminates(discriminationWithFeeder)], ({ cutOut }: AheadPlace) => !cutOut),
    ],
  };
};

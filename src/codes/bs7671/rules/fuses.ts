import { isMissing, type Known, type Sheet } from '../../../core/index.js';
import { currentOnCurve } from '../../../physics/index.js';
import { type Amperes, type Seconds, seconds } from '../../../units/index.js';
import type { FuseCurrent } from '../../iec-family/operating-current.js';
import type { CircuitCase } from '../../wiring-code.js';
import { fuseOperatingCurrents } from '../tables/fuse-operating-currents.js';

/**
 * How BS 7671 reads the current that operates a fuse of a circuit.
 * @param circuit the circuit, for the edition of its fuses
 */
export const fuseCurrentOf =
  (circuit: CircuitCase): FuseCurrent =>
  (sheet, device, standard, within) => {
    const edition = circuit.options.fuseEdition;
    if (standard === 'BS 88-2' && edition === undefined && circuit.run.existing === true)
      return eitherEdition(sheet, device, within);
    const name = standard === 'BS 88-2' && edition === '2008' ? 'BS 88-2.2' : standard;
    return readFuse(sheet, name, device, within);
  };

type FuseName = 'BS 88-2' | 'BS 88-2.2' | 'BS 88-3' | 'BS 1361' | 'BS 1362' | 'BS 3036';

/** Without its edition an existing fuse is judged by the heavier of both currents. */
function eitherEdition(sheet: Sheet, device: CircuitCase['run']['device'], within: Known<Seconds>): Known<Amperes> {
  const parts = (['BS 88-2', 'BS 88-2.2'] as const).map((name) => {
    const part = sheet.part(`Fuse to ${name}`);
    readFuse(part, name, device, within);
    return part;
  });
  sheet.note('Edition of the fuse not stated: the larger of both operating currents counts.');
  return sheet.gather('largest', 'operatingCurrent', 'operatingCurrent', parts);
}

function readFuse(
  sheet: Sheet,
  name: FuseName,
  device: CircuitCase['run']['device'],
  within: Known<Seconds>,
): Known<Amperes> {
  const at = (target: Sheet, time: Known<Seconds>) => {
    const label = target.label('device', name);
    const operatingTime = target.given('operatingTime', time);
    const deviceRating = target.given('deviceRating', device.rating);
    return target.look(fuseOperatingCurrents, { device: label, operatingTime, deviceRating });
  };
  if (isMissing(within) || within === 0.4 || within === 5 || within < 0.4 || within > 5) return at(sheet, within);
  const quick = at(sheet.part('0.4 s'), seconds(0.4));
  const slow = at(sheet.part('5 s'), seconds(5));
  if (isMissing(quick)) return sheet.given('operatingCurrent', quick);
  if (isMissing(slow)) return sheet.given('operatingCurrent', slow);
  return sheet.run(currentOnCurve, {
    points: [
      { current: quick as number, time: 0.4 },
      { current: slow as number, time: 5 },
    ],
    time: within as number,
  });
}

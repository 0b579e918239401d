import { differing } from '../../../calculation/index.js';
import { bs7671Contents } from '../contents.js';
import {
  balancedThreePhase,
  earthedBy,
  electrodeOfItsOwn,
  equalDevice,
  lowElectrode,
  separationForOneVehicle,
  touchVoltageDevice,
  windowDeviceOnOnePhase,
} from '../groups/earthing-arrangements.js';

/** The arrangements of 722.411.4.1: (iv) and (v) are new. */
export const a1Arrangements = () => ({
  'balanced-three-phase': balancedThreePhase(),
  'low-electrode': lowElectrode(),
  'touch-voltage-device': touchVoltageDevice(),
  'line-neutral-window-device': windowDeviceOnOnePhase(),
  'equal-device': equalDevice(),
  'tt-island': electrodeOfItsOwn(),
  'electrical-separation': separationForOneVehicle(),
});

/** A1:2020, which altered Section 722 alone. */
export const a1Contents = () => {
  const earthed = earthedBy(a1Arrangements());
  return differing(bs7671Contents(), {
    figures: { points: earthed.points },
    checks: { 'charge-point-earthing': earthed.checks },
  });
};

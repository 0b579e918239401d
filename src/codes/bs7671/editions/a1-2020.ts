import { differing } from '../../../calculation/index.js';
import { bs7671Contents } from '../contents.js';
import { additionalProtection } from '../groups/additional-protection.js';
import {
  balancedThreePhase,
  earthedBy,
  electrodeOfItsOwn,
  lowElectrode,
  openPenDetectionOther,
  openPenDetectionTouchVoltage,
  openPenDetectionWindowOnOnePhase,
  separationForOneVehicle,
} from '../groups/earthing-arrangements.js';
import { residualCurrent } from '../groups/residual-current.js';
import { oneDevicePerPointAdvised } from '../residual-checks.js';

/** The arrangements of 722.411.4.1: (iv) and (v) are new. */
export const a1Arrangements = () => ({
  'balanced-three-phase': balancedThreePhase(),
  'low-electrode': lowElectrode(),
  'open-pen-detection-touch-voltage': openPenDetectionTouchVoltage(),
  'open-pen-detection-window': openPenDetectionWindowOnOnePhase(),
  'open-pen-detection-other': openPenDetectionOther(),
  'tt-earthing': electrodeOfItsOwn(),
  'electrical-separation': separationForOneVehicle(),
});

/** A1:2020, which altered Section 722 alone. 722.531.3.101: "individually", which stood there in 2015, was left out. */
export const a1Contents = () => {
  const earthed = earthedBy(a1Arrangements());
  return differing(bs7671Contents(), {
    figures: { points: earthed.points },
    checks: {
      'charge-point-earthing': earthed.checks,
      'residual-current': [
        ...additionalProtection().checks,
        ...residualCurrent({ individually: oneDevicePerPointAdvised, generalPurposes: true }).checks,
      ],
    },
  });
};

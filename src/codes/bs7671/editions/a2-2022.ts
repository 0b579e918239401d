import { differing } from '../../../calculation/index.js';
import {
  earthedBy,
  electrodeOfItsOwn,
  equalDevice,
  lowElectrode,
  separationForOneVehicle,
  touchVoltageDevice,
  windowDevice,
} from '../groups/earthing-arrangements.js';
import { a1Contents } from './a1-2020.js';

/** A2:2022. 722.411.4.1: (i), the balanced three-phase load, is deleted; (iv) is no longer for a single phase alone. */
export const a2Contents = () => {
  const earthed = earthedBy({
    'low-electrode': lowElectrode(),
    'touch-voltage-device': touchVoltageDevice(),
    'line-neutral-window-device': windowDevice(),
    'equal-device': equalDevice(),
    'tt-island': electrodeOfItsOwn(),
    'electrical-separation': separationForOneVehicle(),
  });
  return differing(a1Contents(), {
    figures: { points: earthed.points },
    checks: { 'charge-point-earthing': earthed.checks },
  });
};

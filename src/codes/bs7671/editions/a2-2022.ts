import { differing } from '../../../calculation/index.js';
import { earthedBy, windowDevice } from '../groups/earthing-arrangements.js';
import { a1Arrangements, a1Contents } from './a1-2020.js';

/** A2:2022. 722.411.4.1: (i), the balanced three-phase load, is deleted; (iv) is no longer for a single phase alone. */
export const a2Contents = () => {
  const { 'balanced-three-phase': _deleted, ...kept } = a1Arrangements();
  const earthed = earthedBy({ ...kept, 'line-neutral-window-device': windowDevice() });
  return differing(a1Contents(), {
    figures: { points: earthed.points },
    checks: { 'charge-point-earthing': earthed.checks },
  });
};

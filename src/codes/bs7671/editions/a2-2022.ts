import { differing, together } from '../../../calculation/index.js';
import { additionalProtection } from '../groups/additional-protection.js';
import { arcDetectionByPremises } from '../groups/arc-detection.js';
import { earthedBy, openPenDetectionWindow } from '../groups/earthing-arrangements.js';
import { residualCurrent } from '../groups/residual-current.js';
import { a1Arrangements, a1Contents } from './a1-2020.js';

/**
 * A2:2022. 722.411.4.1: (i), the balanced three-phase load, is deleted; (iv) is no longer for a single phase alone.
 * 722.531.3.101: each charge point "individually" again. 531.3.3: type AC for
 * fixed equipment without direct current alone. 421.1.7: arc detection is required in some premises.
 */
export const a2Contents = () => {
  const arc = arcDetectionByPremises();
  const residual = residualCurrent();
  const { 'balanced-three-phase': _deleted, ...kept } = a1Arrangements();
  const earthed = earthedBy({ ...kept, 'open-pen-detection-window': openPenDetectionWindow() });
  return differing(a1Contents(), {
    figures: { points: earthed.points, circuit: together(arc.circuit, residual.circuit) },
    checks: {
      'charge-point-earthing': earthed.checks,
      'residual-current': [...additionalProtection().checks, ...residual.checks],
      'arc-detection': arc.checks,
    },
  });
};

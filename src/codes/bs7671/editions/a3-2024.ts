import { differing } from '../../../calculation/index.js';
import { additionalProtection } from '../groups/additional-protection.js';
import { residualCurrent } from '../groups/residual-current.js';
import { residualBothWays } from '../residual-checks.js';
import { a2Contents } from './a2-2022.js';

/** A3:2024. 530.3.201: devices through which power can flow both ways. */
export const a3Contents = () =>
  differing(a2Contents(), {
    checks: {
      'residual-current': [...additionalProtection().checks, ...residualCurrent({ bothWays: residualBothWays }).checks],
    },
  });

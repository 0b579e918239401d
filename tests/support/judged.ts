import type { Aspect, CircuitCase, Findings, WiringCode } from '../../src/codes/wiring-code.js';
import type { CheckResult, Sheet } from '../../src/core/index.js';
import { silent } from '../../src/core/index.js';
import { judgeAspect } from '../../src/design/assess-at.js';

/** The results of one group of checks of a code for one circuit, with what other groups have found. */
export const judged = (
  code: WiringCode,
  group: Aspect,
  circuit: CircuitCase,
  findings: Findings = {},
  sheet: Sheet = silent(),
): readonly CheckResult[] => judgeAspect(code, group, circuit, findings, sheet).results;

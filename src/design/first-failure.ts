import type { AssessmentOptions, Findings, WiringCode } from '../codes/wiring-code.js';
import { type CheckResult, silent } from '../core/index.js';
import type { Installation } from '../installation/index.js';
import { assess } from './assess.js';
import { type Assessment, assessmentOf, judgeAspects } from './assess-at.js';
import { rangesOf } from './ranges.js';

/**
 * The first rule that a circuit does not meet, or its whole assessment where no rule fails: for searches, which pass over
 * most of what they try.
 */
export function firstFailure(
  code: WiringCode,
  installation: Installation,
  runId: string,
  options: AssessmentOptions,
): CheckResult | Assessment {
  if (rangesOf(installation).length > 0) {
    const assessment = assess(code, installation, runId, options);
    return assessment.overall.failed[0] ?? assessment;
  }
  const findings: Findings = {};
  const judged = judgeAspects(code, installation, runId, options, silent(), findings, true);
  const failed = judged.at(-1)?.results.find((r) => r.weight === 'rule' && r.verdict === 'fail');
  return failed ?? assessmentOf(code, runId, judged, findings);
}

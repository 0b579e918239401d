import { checksOf } from '../calculation/index.js';
import type { Aspect, WiringCode } from '../codes/wiring-code.js';
import type { CheckResult } from '../core/index.js';
import { assess } from '../design/index.js';
import { pathsOf } from '../installation/index.js';
import { withAllWanted } from './installed.js';
import type { Survey } from './survey.js';

/** What an existing circuit does not meet of the rules of today; it stands apart from the verdict on the new work. @inline */
export interface Observation {
  /** Name of the run. */
  readonly run: string;
  /** The rules that are not met. What nobody surveyed is no observation. */
  readonly failed: readonly CheckResult[];
}

/** Aspects of the installation as a whole, which the new work is judged by itself. */
const ofAll: readonly Aspect[] = ['origin-facts', 'earthing-and-bonding', 'surge-protection'];

/**
 * Existing circuits that fail rules of today, as far as the survey shows it. Feeders on the way to a wanted point are left
 * out: the new work relies on them, so they are judged with it.
 */
export function observationsOf(code: WiringCode, survey: Survey, relied: readonly string[]): readonly Observation[] {
  const { checks } = code.calculator.contents;
  const installation = withAllWanted(survey);
  const apart = new Set(ofAll.flatMap((a) => (Array.isArray(checks[a]) ? checksOf(checks[a]) : []).map((c) => c.id)));
  return pathsOf(installation).flatMap(({ run }) => {
    if (run.existing !== true || relied.includes(run.id)) return [];
    const failed = assess(code, installation, run.id, survey.options).overall.failed.filter((r) => !apart.has(r.check));
    return failed.length > 0 ? [{ run: run.id, failed }] : [];
  });
}

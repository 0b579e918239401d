import { checksOf } from '../calculation/index.js';
import type { Aspect } from '../codes/wiring-code.js';
import { type CheckResult, silent } from '../core/index.js';
import { feederDemandOf } from '../demand/feeder.js';
import type { DemandRules } from '../demand/index.js';
import { resultsAsSaid } from '../design/assess.js';
import { isFailed } from '../design/working.js';
import { dwellingsBelow, type Installation, isFeeder, pathsOf, type Run } from '../installation/index.js';
import type { Applicable } from './applicable.js';
import { atItsDemand } from './at-its-demand.js';
import { demandOptions } from './demand-options.js';
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

/** Dwellings below a run do not all take their most at once: it is seen at their demand, where that is known. */
function optionsFor(rules: DemandRules, survey: Survey, installation: Installation, run: Run): Survey['options'] {
  if (!isFeeder(run) || dwellingsBelow(run) === 0) return survey.options;
  return atItsDemand(survey, feederDemandOf(rules, installation, run.id, demandOptions(survey), silent()));
}

/**
 * Existing circuits that fail rules of today, as far as the survey shows it. Feeders on the way to a wanted point are left
 * out: the new work relies on them, so they are judged with it.
 */
export function observationsOf(
  { code, demand }: Pick<Applicable, 'code' | 'demand'>,
  survey: Survey,
  relied: readonly string[],
): readonly Observation[] {
  const { checks } = code.calculator.contents;
  const installation = withAllWanted(survey);
  const apart = new Set(ofAll.flatMap((a) => (Array.isArray(checks[a]) ? checksOf(checks[a]) : []).map((c) => c.id)));
  return pathsOf(installation).flatMap(({ run }) => {
    if (run.existing !== true || relied.includes(run.id)) return [];
    const options = optionsFor(demand, survey, installation, run);
    const failed = resultsAsSaid(code, installation, run.id, options).filter((r) => isFailed(r) && !apart.has(r.check));
    return failed.length > 0 ? [{ run: run.id, failed }] : [];
  });
}

import { overall } from '../core/index.js';
import { byAssumption, type Installation, withAssumption, withoutAssumed } from '../installation/index.js';
import { stillSound } from '../installation/problems.js';
import { judgedAgainAsSaid } from './judged.js';
import { optionPlan } from './option-plan.js';
import type { OptionPlan } from './plan.js';
import type { PlanOptions } from './plan-options.js';
import type { Survey } from './survey.js';

/**
 * Assumptions by which alone an option fails: without them its rules are open. A demand that is assumed is not among them:
 * it has the estimate in its place.
 */
function failsBy(survey: Survey, plan: OptionPlan, options: PlanOptions): readonly string[] {
  const { installation } = plan;
  const taken = byAssumption(installation);
  const failed = plan.overall.failed.map((r) => r.check);
  if (failed.length === 0 || taken.size === 0) return [];
  const stillFails = (changed: Installation) =>
    new Set(
      overall(judgedAgainAsSaid(options, survey, plan, stillSound(installation, changed))).failed.map((r) => r.check),
    );
  const bare = stillFails(withoutAssumed(installation));
  const opened = failed.filter((check) => !bare.has(check));
  if (opened.length === 0) return [];
  return [...taken]
    .filter(([, facts]) => !facts.some((f) => f.key === 'current'))
    .map(([id]) => id)
    .filter((id) => {
      const without = stillFails(withoutAssumed(installation, (a) => a === id));
      return opened.some((check) => !without.has(check));
    });
}

/**
 * An option worked out, in which nothing fails by what was merely assumed: what would is open again, and is asked for.
 * @param passingOnly whether circuits are only to pass, and not to be the cheapest that do
 */
export function fairOptionPlan(
  survey: Survey,
  option: Pick<OptionPlan, 'id' | 'title' | 'changes' | 'remedies'>,
  options: PlanOptions,
  passingOnly = false,
): ReturnType<typeof optionPlan> {
  const said = optionPlan(survey, option, options, passingOnly);
  const { assumptions } = options;
  const withheld = assumptions ? failsBy(survey, said.plan, options) : [];
  if (withheld.length === 0) return said;
  const asked = withheld.reduce((open, assumption) => {
    const entry = assumptions?.entries.find((e) => `${assumptions.id}/${e.id}` === assumption);
    return withAssumption(open, assumption, { state: 'unknown', ...(entry ? { obtain: entry.confirm } : {}) });
  }, survey);
  return optionPlan(asked, option, options, passingOnly);
}

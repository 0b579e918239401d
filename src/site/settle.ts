import { known, type Overall, overall } from '../core/index.js';
import { byAssumption, byCable, type Installation, withAssumption } from '../installation/index.js';
import { invalidInput } from '../units/index.js';
import { asAssumed } from './assumed-survey.js';
import { toConfirm } from './conditions.js';
import { judgedAgain } from './judged.js';
import type { OptionPlan, Plan } from './plan.js';
import { planOf } from './plan-of.js';
import type { PlanOptions } from './plan-options.js';
import type { Survey } from './survey.js';
import type { ToConfirm } from './to-confirm.js';

/** What was found on site in the place of an assumption. @inline */
export interface Finding {
  /** The assumption, by set and entry, as the condition names it. */
  readonly assumption: string;
  /** What was found, in the canonical unit of the fact. */
  readonly value: unknown;
  /** Who or what says so. */
  readonly by: string;
  /** Whether a figure that is not customary was read once more, and confirmed by the network operator. */
  readonly confirmed?: true;
}

/** What findings make of an option that passed on conditions. */
export interface Settlement {
  /** Whether the option can be built as it was planned: it passes, or passes on the conditions that are left. */
  readonly stands: boolean;
  /** The option as planned, by what was found. */
  readonly overall: Overall;
  /** What is still to be confirmed. */
  readonly left: readonly ToConfirm[];
  /** The plan by what was found, where the option does not stand. */
  readonly instead?: Plan;
  /** What that plan changes of the circuits, in words. */
  readonly changes: readonly string[];
}

interface Found {
  readonly taken: ReturnType<typeof byAssumption>;
  readonly findings: readonly Finding[];
}

/** A tree with what was found in the place of what was assumed. */
const withFindings = <T>(tree: T, findings: readonly Finding[]): T =>
  findings.reduce(
    (now, { assumption, value, by }) => withAssumption(now, assumption, { state: 'known', value, by }),
    tree,
  );

/** An installation, with what the network operator confirmed of its supply. */
const withConfirmed = <T extends Installation>(installation: T, { taken, findings }: Found): T => {
  const found = findings.find(
    (f) => f.confirmed && taken.get(f.assumption)?.some((a) => a.key === 'externalImpedance'),
  );
  if (!found) return installation;
  const externalImpedanceConfirmed = known(true, found.by);
  return { ...installation, supply: { ...installation.supply, externalImpedanceConfirmed } };
};

/** Cable, device and earthing of a circuit, in a line. */
function circuitWords({ run, assessment }: OptionPlan['points'][number]): string {
  const cables = byCable(run).map(({ cable: { area, construction } }) => {
    const size = area.state === 'known' ? `${area.value} mm²` : 'of a size yet open';
    return `${construction.replaceAll('-', ' ')} ${size}`;
  });
  const { rating } = run.device;
  const device = rating.state === 'known' ? `${rating.value} A` : 'of a rating yet open';
  return `${run.id}: ${cables.join(' and ')} behind ${device}, ${assessment.overall.verdict.replaceAll('-', ' ')}`;
}

/**
 * Settles the conditions of a plan by what was found on site: whether its first option still stands, what is left to be
 * confirmed, and what changes where it does not stand.
 * @param survey the survey that the plan was made from
 * @param plan a plan with assumptions
 * @param findings what was found, by condition
 * @param options what the plan was made with
 * @returns plain, JSON-ready data
 * @throws CalculationError `invalid-input` for a finding that belongs to no assumption of the plan, or that cannot be
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { inGreatBritain, ordinaryHome } from 'ohmwright/great-britain';
 * import { readSurvey } from 'ohmwright/io';
 * import { planOf, settle } from 'ohmwright/site';
 *
 * const by = { ...inGreatBritain('2018+A2:2022'), assumptions: ordinaryHome };
 * const read = readSurvey(survey);
 * const home = { ...read, installation: { ...read.installation, supply: { ...read.installation.supply, externalImpedance: { state: 'unknown' as const } } } };
 * const plan = planOf(home, by);
 * plan.options[0]?.overall.verdict; // => 'conditional'
 * settle(home, plan, [{ assumption: 'ordinary-home/external-impedance-tn-c-s', value: 0.28, by: 'measured' }], by).overall.verdict; // => 'pass'
 * ```
 */
export function settle(survey: Survey, plan: Plan, findings: readonly Finding[], options: PlanOptions): Settlement {
  const [option] = plan.options;
  const { assumptions } = options;
  if (!option || (!assumptions && option.conditions.length === 0))
    throw invalidInput('the plan', [{ path: ['assumptions'], message: 'are none: there is nothing to settle' }]);
  const assumed = asAssumed(survey, assumptions);
  const taken = new Map([...byAssumption(option.installation), ...byAssumption(assumed)]);
  const problems = findings.flatMap(({ assumption }, i) =>
    taken.has(assumption) ? [] : [{ path: [i, 'assumption'], message: `is ${assumption}; nothing was taken from it` }],
  );
  if (problems.length > 0) throw invalidInput('the findings', problems);
  const installation = withConfirmed(withFindings(option.installation, findings), { taken, findings });
  const results = judgedAgain(options, survey, option, installation);
  const whole = overall(results);
  const stands = whole.verdict === 'pass' || whole.verdict === 'conditional';
  const left = toConfirm(installation, results, assumptions);
  if (stands) return { stands, overall: whole, left, changes: [] };
  const found = withFindings(assumed, findings);
  const instead = planOf({ ...found, installation: withConfirmed(found.installation, { taken, findings }) }, options);
  const before = option.points.map(circuitWords);
  const changes = (instead.options[0]?.points ?? []).map(circuitWords).filter((words) => !before.includes(words));
  return { stands, overall: whole, left, instead, changes };
}

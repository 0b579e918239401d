import type { CheckResult } from '../../core/index.js';
import { inAll } from '../hours.js';
import type { OptionPlan } from '../plan.js';
import { passing, type Ranking, toldOnly, verdictRank } from '../ranking.js';
import type { Survey } from '../survey.js';
import type { WorkRules } from '../work-rules.js';
import { allRemedies } from './all.js';
import { changesBetween } from './changes.js';
import type { AppliedRemedy, RemedyOffer } from './offer.js';
import type { Change, Situation, SurveyRemedy } from './remedy.js';

/** An option that has been worked out, with the survey that it is of. */
export interface WorkedOption {
  readonly survey: Survey;
  readonly plan: OptionPlan;
}

/** What a search works with. */
export interface Search extends Pick<Situation, 'code' | 'words'> {
  /** The survey as it was handed in. */
  readonly survey: Survey;
  readonly rules: WorkRules;
  /** Which of two options goes before the other, as those of the plan are ranked. */
  readonly ranking: Ranking;
  /** Assesses an option with remedies, by everything that a plan is judged by. */
  assess(of: WorkedOption, survey: Survey, remedies: readonly AppliedRemedy[]): OptionPlan;
  /** Assessments that may be made, all in all. */
  budget: number;
}

/** A remedy chosen for a check: which one, and which of its ways. */
interface Choice {
  readonly check: string;
  readonly remedy: SurveyRemedy;
  readonly way: number;
}

/** Rounds after which a search gives up: what is cured may uncover what it hid. */
const ROUNDS = 5;
/** Other remedies for a check that are assessed as well, of one option. */
const ALTERNATIVES = 2;

const applied = (
  { id, title }: SurveyRemedy,
  { what, items = [], tasks = [] }: Change,
  rules: WorkRules,
): AppliedRemedy => ({
  id,
  title,
  what,
  items,
  hours: inAll(
    tasks.map(([task, times]) => ({
      low: rules.hours[task].low * times,
      typical: rules.hours[task].typical * times,
      high: rules.hours[task].high * times,
    })),
  ),
});

/** The option with remedies applied in turn; one that those before it leave nothing to change is left out. */
function withChosen(
  of: WorkedOption,
  choices: readonly Choice[],
  results: ReadonlyMap<string, CheckResult>,
  s: Search,
) {
  let survey = of.survey;
  const remedies: AppliedRemedy[] = [];
  for (const { check, remedy, way } of choices) {
    const result = results.get(check) as CheckResult;
    const change = remedy.ways({ survey, plan: of.plan, result, code: s.code, words: s.words })[way];
    if (!change) continue;
    survey = change.survey;
    remedies.push(applied(remedy, change, s.rules));
  }
  return remedies.length > 0 ? { survey, remedies } : undefined;
}

/** Results that remedies are sought for: rules that fail, and open ones where work costs less than to find out. */
const obstaclesIn = ({ overall }: OptionPlan): readonly CheckResult[] => {
  const first = new Map<string, CheckResult>();
  for (const r of [...overall.failed, ...overall.undetermined]) if (!first.has(r.check)) first.set(r.check, r);
  return [...first.values()];
};

/** Every way of every remedy for a check, cheapest first. */
function choicesFor(result: CheckResult, of: WorkedOption, s: Search): readonly Choice[] {
  const situation = { survey: of.survey, plan: of.plan, result, code: s.code, words: s.words };
  return allRemedies
    .filter((r) => r.checks.includes(result.check) && (result.verdict === 'fail' || r.whenOpen))
    .flatMap((remedy) =>
      remedy.ways(situation).map((change, way) => ({
        choice: { check: result.check, remedy, way },
        hours: applied(remedy, change, s.rules).hours.typical,
        // of equal hours what asks nothing of the operator goes first
        asks: Number(change.survey.work.supplyChange !== of.survey.work.supplyChange),
      })),
    )
    .sort((a, b) => a.hours - b.hours || a.asks - b.asks)
    .map(({ choice }) => choice);
}

interface Found {
  readonly choices: readonly Choice[];
  readonly worked: WorkedOption & { readonly remedies: readonly AppliedRemedy[] };
}

const rankOf = ({ overall }: OptionPlan): number => verdictRank[overall.verdict];

class OptionSearch {
  private readonly results = new Map<string, CheckResult>();
  private readonly known = new Map<string, Found | undefined>();
  constructor(
    private readonly of: WorkedOption,
    private readonly s: Search,
    private readonly alternatives: boolean,
  ) {}

  /** Assesses a combination, each once. */
  private assessed(choices: readonly Choice[]): Found | undefined {
    const key = choices.map((c) => `${c.remedy.id}#${c.way}`).join('+');
    if (this.known.has(key)) return this.known.get(key);
    const changed = this.s.budget > 0 ? withChosen(this.of, choices, this.results, this.s) : undefined;
    let found: Found | undefined;
    if (changed) {
      this.s.budget -= 1;
      const plan = this.s.assess(this.of, changed.survey, changed.remedies);
      found = { choices, worked: { ...changed, plan } };
    }
    this.known.set(key, found);
    return found;
  }

  private better({ worked: { plan, survey } }: Found): boolean {
    const { overall } = this.of.plan;
    if (plan.overall.verdict === 'fail') return false;
    // of another supply everything is read anew: what waits for that does not count against it
    if (survey.work.supplyChange !== this.of.survey.work.supplyChange) {
      const before = new Set(overall.undetermined.map((r) => r.check));
      const left = new Set(plan.overall.undetermined.map((r) => r.check).filter((check) => before.has(check)));
      if (left.size < before.size) return true;
    }
    return passing(plan) || overall.failed.length > 0 || plan.overall.undetermined.length < overall.undetermined.length;
  }

  /** The cheapest remedy for every obstacle at once; the next one where it did not help, or led to what has none. */
  private first(): Found | undefined {
    const offered = new Map<string, readonly Choice[]>();
    const at = new Map<string, number>();
    let found: Found | undefined;
    let plan = this.of.plan;
    for (let round = 0; round < ROUNDS; round++) {
      const fresh = new Set<string>();
      let stuck = false;
      for (const result of obstaclesIn(plan)) {
        const { check } = result;
        if (!offered.has(check)) {
          this.results.set(check, result);
          offered.set(check, choicesFor(result, found?.worked ?? this.of, this.s));
        }
        const all = offered.get(check) as readonly Choice[];
        if ([...fresh].some((id) => all.some((c) => c.remedy.id === id))) continue;
        const next = (at.get(check) ?? -1) + 1;
        const choice = all[next];
        if (choice) {
          at.set(check, next);
          fresh.add(choice.remedy.id);
        } else if (result.verdict === 'fail') stuck = true;
        else at.delete(check);
      }
      if (stuck && !this.turned(at, offered)) return undefined;
      if (fresh.size === 0 && !stuck) break;
      const choices = [...at].flatMap(([check, i]) => offered.get(check)?.[i] ?? []);
      found = this.assessed(choices.filter((c, i) => choices.findIndex((d) => d.remedy === c.remedy) === i));
      if (!found) return undefined;
      plan = found.worked.plan;
    }
    return found && this.better(found) ? this.leaner(found) : undefined;
  }

  /** Goes back to the latest remedy that has another one in its place; what came after it is asked anew. */
  private turned(at: Map<string, number>, offered: Map<string, readonly Choice[]>): boolean {
    for (const [check, i] of [...at].reverse()) {
      if (offered.get(check)?.[i + 1]) {
        at.set(check, i + 1);
        return true;
      }
      at.delete(check);
      offered.delete(check);
    }
    return false;
  }

  /** Without the remedies that another one makes needless. */
  private leaner(found: Found): Found {
    let best = found;
    for (const choice of found.choices) {
      const others = best.choices.filter((c) => c !== choice);
      if (others.length === 0 || !others.some((c) => c.remedy.checks.includes(choice.check))) continue;
      const without = this.assessed(others);
      const rank = (f: Found) => rankOf(f.worked.plan);
      if (without && this.better(without) && rank(without) <= rank(best)) best = without;
    }
    return best;
  }

  /** What passes, or is open at least, cheapest first: the first found, and others in place of one of its remedies. */
  all(): readonly Found[] {
    const first = this.first();
    if (!first) return [];
    const found = [first];
    if (!this.alternatives) return found;
    let tried = 0;
    for (const [i, choice] of first.choices.entries()) {
      const result = this.results.get(choice.check) as CheckResult;
      for (const other of choicesFor(result, this.of, this.s)) {
        if (tried >= ALTERNATIVES || other.remedy === choice.remedy) continue;
        tried += 1;
        const next = this.assessed(first.choices.map((c, j) => (j === i ? other : c)));
        if (next && this.better(next)) found.push(next);
      }
    }
    return found;
  }
}

/** Only the limiter, or the limiter with the demand as metered: for options that pass and need consent. */
function forNotice(of: WorkedOption, s: Search): Found | undefined {
  const result = of.plan.notification.decision.results.find(
    (r) => r.verdict === 'fail' && allRemedies.some((m) => m.checks.includes(r.check)),
  );
  if (!result || !passing(of.plan)) return undefined;
  const results = new Map([[result.check, result]]);
  const choices = choicesFor(result, of, s);
  const measured = allRemedies.find((r) => r.id === 'metered-demand') as SurveyRemedy;
  for (const choice of choices)
    for (const chosen of [[choice], [{ check: result.check, remedy: measured, way: 0 }, choice]]) {
      const changed = s.budget > 0 ? withChosen(of, chosen, results, s) : undefined;
      if (!changed) continue;
      s.budget -= 1;
      const plan = s.assess(of, changed.survey, changed.remedies);
      if (passing(plan) && plan.notification.decision.route === 'notify-after')
        return { choices: chosen, worked: { ...changed, plan } };
    }
  return undefined;
}

/** Remedies that make a smaller cable do, where nothing but their checks asked for the larger one. */
const forSmaller = ['drop-temperature', 'clear-of-insulation'];

/** A smaller cable by the drop at the real temperature, or on another way. */
function smallerCable(of: WorkedOption, s: Search, id: string): Found | undefined {
  const remedy = allRemedies.find((r) => r.id === id) as SurveyRemedy;
  const passedOver = of.plan.points.flatMap(({ design: { chosen, passedOver: over } }) =>
    over.filter(
      ({ candidate: c, check }) =>
        chosen && remedy.checks.includes(check.check) && c.choice === chosen.choice && c.area < chosen.area,
    ),
  );
  const result = passedOver.at(-1)?.check;
  if (!result) return undefined;
  const choices: readonly Choice[] = [{ check: result.check, remedy, way: 0 }];
  const changed = s.budget > 0 ? withChosen(of, choices, new Map([[result.check, result]]), s) : undefined;
  if (!changed) return undefined;
  s.budget -= 1;
  const plan = s.assess(of, changed.survey, changed.remedies);
  const sizes = ({ points }: OptionPlan) => points.reduce((sum, p) => sum + (p.design.chosen?.area ?? 0), 0);
  return passing(plan) && sizes(plan) < sizes(of.plan) ? { choices, worked: { ...changed, plan } } : undefined;
}

/** Advice that is not followed by an option that passes, or is only open: each with the cheapest remedy, alone. */
function forAdvice(of: WorkedOption, s: Search): readonly Found[] {
  const advised = new Map<string, CheckResult>(
    of.plan.overall.advice.flatMap((r): [string, CheckResult][] => (r.verdict === 'fail' ? [[r.check, r]] : [])),
  );
  return [...advised].flatMap(([check, result]) => {
    const [choice] = choicesFor(result, of, s);
    const changed = choice && s.budget > 0 ? withChosen(of, [choice], advised, s) : undefined;
    if (!choice || !changed) return [];
    s.budget -= 1;
    const plan = s.assess(of, changed.survey, changed.remedies);
    const cured = !plan.overall.advice.some((r) => r.check === check && r.verdict === 'fail');
    const stands = verdictRank[plan.overall.verdict] <= verdictRank[of.plan.overall.verdict];
    return stands && cured ? [{ choices: [choice], worked: { ...changed, plan } }] : [];
  });
}

/** What was found: brief offers, and the options behind those that lift the best verdict. */
export interface Sought {
  readonly offers: readonly RemedyOffer[];
  readonly options: readonly (WorkedOption & { readonly remedies: readonly AppliedRemedy[] })[];
}

const verdictOf = ({ overall }: OptionPlan) => overall.verdict as RemedyOffer['verdict'];

/**
 * Seeks remedies for the options that do not pass, up to the first that does, and for that one where it needs consent.
 * @param worked the options in the order of their effort
 */
export function seekRemedies(worked: readonly WorkedOption[], s: Search): Sought {
  const offers: RemedyOffer[] = [];
  const options: Found['worked'][] = [];
  const best = worked.find((o) => passing(o.plan));
  const open = worked.find((o) => o.plan.overall.verdict === 'not-determined');
  // a limiter at that figure may be an option by itself
  const told = worked.some((o) => passing(o.plan) && toldOnly(o.plan) && o.plan.id === 'with-limiter');
  for (const of of worked) {
    const sound = passing(of.plan);
    // what passes with less effort needs no remedies of what takes more
    if (best && worked.indexOf(of) > worked.indexOf(best)) break;
    const found = sound
      ? of === best
        ? [
            told ? undefined : forNotice(of, s),
            ...forSmaller.map((id) => smallerCable(of, s, id)),
            ...forAdvice(of, s),
          ].flatMap((f) => f ?? [])
        : []
      : new OptionSearch(of, s, offers.length === 0).all();
    const advised = !best && of === open && found.length === 0 ? forAdvice(of, s) : [];
    const [lifted] = sound ? [] : found.map((f) => f.worked).sort((a, b) => s.ranking.compare(a.plan, b.plan));
    if (lifted) options.push(lifted);
    for (const { worked: then } of [...found, ...advised]) {
      offers.push({
        option: of.plan.id as RemedyOffer['option'],
        remedies: then.remedies,
        verdict: verdictOf(then.plan),
        subjectTo: then.plan.unknown.filter((u) => u.decides).map((u) => u.fact),
        hours: then.plan.hours,
        route: then.plan.notification.decision.route,
        routeBefore: of.plan.notification.decision.route,
        changes: changesBetween(s.survey, then.survey),
      });
    }
  }
  return { offers: offers.sort(byCost), options };
}

const byCost = (a: RemedyOffer, b: RemedyOffer): number =>
  verdictRank[a.verdict] - verdictRank[b.verdict] ||
  a.hours.typical - b.hours.typical ||
  a.remedies.length - b.remedies.length;

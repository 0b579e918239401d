import type { WiringCode } from '../codes/wiring-code.js';
import { factWords } from '../core/index.js';
import { type Condition, conditionsOf, type PermittedInterval, permitted } from '../design/index.js';
import {
  type AssumptionSet,
  byAssumption,
  type Choice,
  factRegister,
  isRecord,
  pathTo,
  withAssumption,
} from '../installation/index.js';
import { formatIn } from '../units/index.js';
import { boardsAsSwitches, controlsPause } from './assumed-survey.js';
import type { OptionPlan } from './plan.js';
import { designedFor } from './point-plan.js';
import type { Survey } from './survey.js';
import type { ConditionLimit, ToConfirm } from './to-confirm.js';
import type { WorkRules } from './work-rules.js';

/** What was assumed, as it is said: a quantity with its unit, a choice in its words. */
function assumedWords({ value, least, most }: Condition, unit = '', choices: readonly Choice[] = []): string {
  const said = (v: unknown): string => {
    if (typeof v === 'number') return formatIn(Number(v.toPrecision(4)), unit);
    if (typeof v === 'object') return 'as described';
    const chosen = choices.find((c) => c.value === v)?.words;
    return chosen ?? (v === true ? 'yes' : v === false ? 'no' : String(v));
  };
  return value === undefined ? `${said(least)} to ${said(most)}` : said(value);
}

/** What results of an option rest on, with how it is confirmed. */
export function toConfirm(
  installation: OptionPlan['installation'],
  results: Parameters<typeof conditionsOf>[1],
  set: AssumptionSet | undefined,
): readonly ToConfirm[] {
  return conditionsOf(installation, results).map((condition) => {
    const entry = [set, boardsAsSwitches, controlsPause]
      .flatMap((of) => of?.entries.filter((e) => `${of.id}/${e.id}` === condition.assumption) ?? [])
      .at(0);
    const { role, facts } = condition;
    const registered = factRegister().get(entry?.fact ?? '');
    // what was assumed as a whole is called so, and not by the role of one figure in it
    const whole = role === undefined || isRecord(entry?.value);
    const title = registered?.title ?? (whole ? facts.join(', ') : factWords(role));
    const unit = condition.unit ?? registered?.unit;
    return {
      ...condition,
      ...(unit === undefined ? {} : { unit }),
      title: `${title.charAt(0).toUpperCase()}${title.slice(1)}`,
      words: assumedWords(condition, unit, registered?.choices),
      confirm: entry?.confirm ?? 'Look, or measure.',
      ...(entry ? { source: entry.source } : {}),
    };
  });
}

/** The stretch of values around an assumed one in which a circuit passes. */
const around = (intervals: readonly PermittedInterval[], value: number) =>
  intervals.find((i) => i.verdict !== 'not-determined' && i.from.value <= value && value <= i.to.value);

/** Conditions of an option with the limits between which its design stands, and what would be built beyond them. */
export function withLimits(
  code: WiringCode,
  survey: Survey,
  rules: WorkRules,
  { installation, points, feeders, conditions }: OptionPlan,
): readonly ToConfirm[] {
  const runs = [...points, ...feeders].map((p) => p.assessment);
  return conditions.map((condition) => {
    const { assumption, value = condition.most } = condition;
    if (typeof value !== 'number') return condition;
    const endsBy = (advice: { advice?: true }) =>
      runs
        .filter((a) => a.overall.verdict === 'conditional' && a.conditions?.some((c) => c.assumption === assumption))
        .flatMap(({ run }) => {
          const question = { vary: 'assumed', assumption, ...advice } as const;
          const { intervals } = permitted(code, installation, run, question, survey.options);
          const held = around(intervals, value);
          return held ? [{ run, held }] : [];
        });
    const ends = endsBy({});
    let advised: typeof ends | undefined;
    const tightest = (of: typeof ends, end: 'from' | 'to') =>
      of
        .flatMap(({ run, held }) => {
          const { value: last, beyond } = held[end];
          return beyond ? [{ run, value: last, beyond: beyond.value, because: beyond.check.title }] : [];
        })
        .sort((a, b) => (end === 'to' ? a.value - b.value : b.value - a.value))[0];
    const limit = (end: 'from' | 'to'): ConditionLimit | undefined => {
      const found = tightest(ends, end);
      if (found) return { ...found, ...insteadBeyond(code, survey, rules, installation, assumption, found) };
      // nothing that was examined breaks a rule: what is advised may end somewhere
      const rests = runs.some((a) =>
        a.results.some((r) => r.weight === 'advice' && r.conditions?.includes(assumption)),
      );
      advised ??= rests ? endsBy({ advice: true }) : [];
      const soft = tightest(advised, end);
      return soft && { ...soft, advice: true };
    };
    const [atLeast, atMost] = [limit('from'), limit('to')];
    return { ...condition, ...(atLeast ? { atLeast } : {}), ...(atMost ? { atMost } : {}) };
  });
}

/** The cheapest circuit that passes beyond a limit, where it is one that is yet to be designed. */
function insteadBeyond(
  code: WiringCode,
  survey: Survey,
  rules: WorkRules,
  installation: OptionPlan['installation'],
  assumption: string,
  { run, beyond }: ConditionLimit,
): Pick<ConditionLimit, 'instead'> {
  const wanted = survey.wanted.find((w) => w.run.id === run);
  const [fact] = byAssumption(installation).get(assumption) ?? [];
  if (!wanted || !fact || !pathTo(installation, run)) return {};
  const changed = { state: 'known', value: beyond, by: 'beyond the limit', assumed: assumption };
  const found = designedFor(
    { code, survey, lengths: false, rules },
    { ...wanted, run: withAssumption(wanted.run, assumption, changed) },
    withAssumption(installation, assumption, changed),
  );
  const { chosen, outcome } = found;
  if (!chosen || (outcome !== 'accepted' && outcome !== 'conditional')) return {};
  return { instead: { construction: chosen.cable.construction, area: chosen.area, rating: chosen.rating } };
}

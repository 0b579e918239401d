import { type CheckResult, overall } from '../core/index.js';
import { denials } from '../installation/denied.js';
import {
  type Field,
  factRegister,
  type Installation,
  isRecord,
  isUnknown,
  pathTo,
  shapes,
  type Whom,
  withAssumption,
} from '../installation/index.js';
import { isKnownAs } from '../installation/values.js';
import { hasCode } from '../units/index.js';
import type { Applicable } from './applicable.js';
import { judgedAgain, judgedAgainAsSaid } from './judged.js';
import type { OptionPlan } from './plan.js';
import { withChanges } from './remedies/changes.js';
import { type Survey, TO_BE_DESIGNED } from './survey.js';
import { valuesOf } from './tried-values.js';
import { unknownFacts } from './unknown-facts.js';

type Verdict = OptionPlan['overall']['verdict'];
/** Keys and places in lists from the installation down. @inline */
type Path = readonly (string | number)[];

/** What one answer to a question would come to, with nothing else known besides. @inline */
export interface Answer {
  readonly value: unknown;
  /** What the option would come to. */
  readonly verdict: Verdict;
  /** Rules that are open now and would be no longer; of what passes on conditions those that rest on it, where the option stands by the answer. */
  readonly settles: number;
}

/** A fact that is not known, or only assumed, whom to ask, and what each answer would decide. */
export interface NextQuestion {
  /** Record and field, as the register of facts has them: `supply.looped`. */
  readonly fact: string;
  /** Place in the installation. */
  readonly path: Path;
  /** What it is a fact of, by its name; absent of the supply. */
  readonly of?: string;
  readonly title: string;
  /** The question, in words for the person to ask. */
  readonly question: string;
  readonly photo?: string;
  readonly whom: Whom;
  /** The assumption that stands in for it, by set and entry; the answer is for all that was taken from it. */
  readonly assumption?: string;
  /** Whether the option passes or fails whatever the answer is; of what passes on conditions, whether one of the answers undoes it. */
  readonly decides: boolean;
  /** Rules that are settled whatever the answer is; of what passes on conditions those that rest on it. */
  readonly settles: number;
  /** What each of the answers that were tried comes to. */
  readonly answers: readonly Answer[];
}

interface Open {
  readonly path: Path;
  readonly fact: string;
  readonly what: string;
  readonly of?: string;
  readonly value: unknown;
}
type IsOpen = (fact: unknown) => boolean;

/** Whether nobody looked at a fact; a size that is yet to be designed is none to look at. */
const isAsked: IsOpen = (fact) => isUnknown(fact) && !(isRecord(fact) && fact.obtain === TO_BE_DESIGNED);

const assumptionOf = (fact: unknown): string | undefined =>
  isRecord(fact) && typeof fact.assumed === 'string' ? fact.assumed : undefined;

type Tree = Readonly<Record<string | number, unknown>>;

/** Facts of a record that are open, such as those that nobody looked at, and of the records in it. */
function openIn(isOpen: IsOpen, shape: keyof typeof shapes, node: unknown, path: Path, name?: string): readonly Open[] {
  if (typeof node !== 'object' || node === null) return [];
  const record = node as Tree;
  const own = typeof record.id === 'string' ? record.id : typeof record.name === 'string' ? record.name : name;
  return Object.entries<Field>(shapes[shape]).flatMap(([key, [how, what]]): readonly Open[] => {
    const value = record[key];
    const at = [...path, key];
    // whether there is one is asked first
    const [none] = denials.find(([, described]) => described === key) ?? [];
    if (none && value === undefined && !isKnownAs(record[none], false)) return [];
    if (how.startsWith('fact'))
      return isOpen(value)
        ? [{ path: at, fact: `${shape}.${key}`, what, value, ...(own === undefined ? {} : { of: own }) }]
        : [];
    if (!(what in shapes) || value === undefined) return [];
    return Array.isArray(value)
      ? value.flatMap((v, i) => openIn(isOpen, what as keyof typeof shapes, v, [...at, i], own))
      : openIn(isOpen, what as keyof typeof shapes, value, at, own);
  });
}

/** Places of the boards on the way to the new circuits, and of these. */
function openFacts(installation: Installation, runs: readonly string[], isOpen: IsOpen): readonly Open[] {
  const onTheWay = new Set(runs.flatMap((id) => pathTo(installation, id)?.boards.map((b) => b.id) ?? []));
  const feeders = new Set(runs.flatMap((id) => pathTo(installation, id)?.feeders.map((f) => f.id) ?? []));
  const found: Open[] = [...openIn(isOpen, 'supply', installation.supply, ['supply'])];
  const visit = (board: Installation['board'], path: Path): void => {
    if (!onTheWay.has(board.id)) return;
    found.push(...openIn(isOpen, 'board', board, path));
    board.runs.forEach((run, i) => {
      const at = [...path, 'runs', i];
      if (runs.includes(run.id) || feeders.has(run.id)) found.push(...openIn(isOpen, 'run', run, at));
      run.feeds.forEach((outlet, j) => {
        const here = [...at, 'feeds', j];
        if (outlet.kind === 'board') visit(outlet, here);
        else if (outlet.kind === 'charge-point' && runs.includes(run.id))
          found.push(...openIn(isOpen, 'chargePoint', outlet, here));
      });
    });
  };
  visit(installation.board, ['board']);
  return found;
}

/** Whether it is found out only once the work is done: what a new rod will measure. */
const comesLater = ({ fact, path }: NextQuestion): boolean => fact === 'electrode.resistance' && path[0] !== 'supply';

/** Whether what was assumed can be learnt of the customer, without a visit. */
const fromAfar = ({ assumption, whom }: NextQuestion): boolean => assumption !== undefined && whom === 'customer';

const asked: readonly Whom[] = ['customer', 'maker', 'site', 'operator', 'firm'];

/**
 * The next questions of an option: the facts that nobody looked at, by what an answer would settle; where it passes on
 * conditions, what was assumed, by what an answer would undo. Every one of them is tried with values that surveys find, the
 * rest as it is, and judged.
 * @param survey the survey that the plan was made from
 * @param option an option of the plan
 * @param by what applies where the premises stand
 * @param most how many questions at most, from 1; 10 when absent
 * @returns questions in the order in which they should be asked: those that decide whatever the answer is, or that may undo
 * what passes on conditions, of these first what the customer can tell; then those that settle more rules whatever it is, then those that may settle more, then those
 * that the customer can answer, then what can be looked at before the work
 * @throws CalculationError as `assess` does, but for answers that cannot be, which are left out
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { inGreatBritain } from 'ohmwright/great-britain';
 * import { readSurvey } from 'ohmwright/io';
 * import { nextQuestions, planOf } from 'ohmwright/site';
 *
 * const by = inGreatBritain('2018+A2:2022');
 * const read = readSurvey(survey);
 * const home = { ...read, installation: { ...read.installation, supply: { ...read.installation.supply, looped: { state: 'unknown' as const } } } };
 * const [option] = planOf(home, by).options;
 * option && nextQuestions(home, option, by)[0]?.fact; // => 'supply.looped'
 * ```
 */
export function nextQuestions(survey: Survey, option: OptionPlan, by: Applicable, most = 10): readonly NextQuestion[] {
  const judged = (installation: Installation) => judgedAgain(by, survey, option, installation);
  const results = judged(option.installation);
  const now = overall(results);
  const questions =
    now.undetermined.length > 0
      ? ofOpen(option, judged, results)
      : now.verdict === 'conditional'
        ? ofAssumed(option, (installation) => judgedAgainAsSaid(by, survey, option, installation), now.conditional)
        : [];
  const best = (q: NextQuestion) => Math.max(...q.answers.map((a) => a.settles));
  return [...questions]
    .sort(
      (a, b) =>
        Number(b.decides) - Number(a.decides) ||
        Number(fromAfar(b)) - Number(fromAfar(a)) ||
        b.settles - a.settles ||
        best(b) - best(a) ||
        asked.indexOf(a.whom) - asked.indexOf(b.whom) ||
        Number(comesLater(a)) - Number(comesLater(b)),
    )
    .slice(0, most);
}

type Judge = (installation: Installation) => readonly CheckResult[];

/** What is asked of a fact, with the answers that were tried. */
function questionOf({ path, fact, of }: Open, answers: readonly Answer[], decides: boolean): NextQuestion {
  const entry = factRegister().get(fact);
  return {
    fact,
    path,
    ...(of === undefined || fact.startsWith('supply.') ? {} : { of }),
    title: entry?.title ?? fact,
    question: entry?.question ?? `What is ${fact}?`,
    ...(entry?.photo === undefined ? {} : { photo: entry.photo }),
    whom: entry?.whom ?? 'site',
    decides,
    settles: Math.min(...answers.map((a) => a.settles)),
    answers,
  };
}

/** What each value comes to; one that cannot be here nobody will answer. */
function tryEach(values: readonly unknown[], answer: (value: unknown) => Answer): readonly Answer[] {
  return values.flatMap((value): readonly Answer[] => {
    try {
      return [answer(value)];
    } catch (error) {
      if (hasCode(error, 'invalid-input') || hasCode(error, 'out-of-range')) return [];
      throw error;
    }
  });
}

/** Facts for which rules are open. */
const lackedBy = (results: readonly CheckResult[]): readonly string[] =>
  unknownFacts(results).flatMap((u) => (u.decides ? [u.fact] : []));

/**
 * Of facts that nobody looked at, by the rules that an answer settles; last those that by themselves settle none, while others
 * that are lacked cannot be told before them, as a demand cannot before all circuits are.
 */
function ofOpen(
  { installation, points }: OptionPlan,
  judged: Judge,
  now: readonly CheckResult[],
): readonly NextQuestion[] {
  const runs = points.map((p) => p.run.id);
  const before = overall(now).undetermined.length;
  const lacked = lackedBy(now);
  return openFacts(installation, runs, isAsked).flatMap((open): readonly NextQuestion[] => {
    let leadsOn = false;
    const answers = tryEach(valuesOf(open.what), (value) => {
      const said = { path: open.path, value: { state: 'known', value, by: 'tried' } };
      const results = judged(withChanges(installation, [said]));
      const { verdict, undetermined } = overall(results);
      const then = new Set(lackedBy(results));
      leadsOn ||= lacked.some((fact) => !then.has(fact));
      return { value, verdict, settles: before - undetermined.length };
    });
    if (!leadsOn && answers.every((a) => a.settles <= 0)) return [];
    return [
      questionOf(
        open,
        answers,
        answers.every((a) => a.verdict !== 'not-determined'),
      ),
    ];
  });
}

/** Of facts that were assumed, each assumption once, by whether an answer undoes what passes by it. */
function ofAssumed(
  { installation, points }: OptionPlan,
  judgedAsSaid: Judge,
  conditional: readonly CheckResult[],
): readonly NextQuestion[] {
  const runs = points.map((p) => p.run.id);
  const found = new Map<string, Open>();
  for (const open of openFacts(installation, runs, (fact) => assumptionOf(fact) !== undefined)) {
    const assumption = assumptionOf(open.value) as string;
    if (!found.has(assumption)) found.set(assumption, open);
  }
  return [...found].flatMap(([assumption, open]): readonly NextQuestion[] => {
    const rests = conditional.filter((r) => r.conditions?.includes(assumption)).length;
    if (rests === 0) return [];
    const answers = tryEach(valuesOf(open.what), (value) => {
      const said = { state: 'known', value, by: 'tried' } as const;
      const { verdict } = overall(judgedAsSaid(withAssumption(installation, assumption, said)));
      const stands = verdict === 'pass';
      return { value, verdict: stands && found.size > 1 ? 'conditional' : verdict, settles: stands ? rests : 0 };
    });
    if (answers.length === 0) return [];
    const undone = answers.some((a) => a.settles === 0);
    return [{ ...questionOf(open, answers, undone), assumption, settles: rests }];
  });
}

import { type CheckResult, type Name, overall, termOf } from '../core/index.js';
import {
  counts,
  type Field,
  factRegister,
  type Installation,
  isUnknown,
  labels,
  overcurrentTypes,
  pathTo,
  shapes,
  type Whom,
} from '../installation/index.js';
import { hasCode } from '../units/index.js';
import type { Applicable } from './applicable.js';
import { judgedAgain } from './judged.js';
import type { OptionPlan } from './plan.js';
import { withChanges } from './remedies/changes.js';
import type { Survey } from './survey.js';

type Verdict = OptionPlan['overall']['verdict'];
/** Keys and places in lists from the installation down. @inline */
type Path = readonly (string | number)[];

/** What one answer to a question would come to, with nothing else known besides. @inline */
export interface Answer {
  readonly value: unknown;
  /** What the option would come to. */
  readonly verdict: Verdict;
  /** Rules that are open now and would be no longer. */
  readonly settles: number;
}

/** A fact that is not known, whom to ask, and what each answer would decide. */
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
  /** Whether the option passes or fails whatever the answer is. */
  readonly decides: boolean;
  /** Rules that are settled whatever the answer is. */
  readonly settles: number;
  /** What each of the answers that were tried comes to. */
  readonly answers: readonly Answer[];
}

/** Values that are tried of a quantity: what surveys find, from small to large, in canonical units. */
const tried: Readonly<Record<string, readonly number[]>> = {
  externalImpedance: [0.1, 0.35, 0.8, 2],
  prospectiveCurrent: [300, 1500, 6000, 16_000],
  deviceRating: [60, 80, 100, 125],
  breakingCapacity: [3000, 6000, 10_000, 16_000],
  tailsArea: [16, 25],
  earthingConductorArea: [6, 10, 16],
  supplyNeutralArea: [25, 35, 70],
  bondingArea: [6, 10],
  length: [2, 15, 40],
  insulatedLength: [0, 0.2, 1],
  ambientTemperature: [20, 30, 40],
  soilResistivity: [1, 2.5, 3],
  depth: [0.02, 0.1, 0.6],
  terminalTemperature: [60, 70, 90],
  thirdHarmonic: [0, 0.1, 0.3],
  residualOperatingCurrent: [0.03, 0.1, 0.3],
  electrodeResistance: [20, 100, 300],
  chargeCurrent: [0.001, 0.0035, 0.01],
  disconnectionTime: [0, 0.04, 0.3],
  demand: [20, 50, 90],
  controlLimit: [40, 60, 80],
};
const triedCounts: Readonly<Record<string, readonly number[]>> = {
  coresLoaded: [2, 3, 4],
  circuits: [1, 2, 4],
  pieces: [0, 1, 2],
  groupingFactor: [0.8, 1],
};

function valuesOf(what: string): readonly unknown[] {
  if (what === 'yes') return [true, false];
  if (what === 'overcurrentKind')
    return Object.entries(overcurrentTypes).map(([standard, [type]]) => (type ? { standard, type } : { standard }));
  if (what in labels) return labels[what as keyof typeof labels];
  if (what in counts) return triedCounts[what] ?? [];
  return termOf(what as Name) ? (tried[what] ?? []) : [];
}

interface Open {
  readonly path: Path;
  readonly fact: string;
  readonly what: string;
  readonly of?: string;
}

type Tree = Readonly<Record<string | number, unknown>>;

/** Facts of a record that nobody looked at, and of the records in it. */
function openIn(shape: keyof typeof shapes, node: unknown, path: Path, name?: string): readonly Open[] {
  if (typeof node !== 'object' || node === null) return [];
  const record = node as Tree;
  const own = typeof record.id === 'string' ? record.id : typeof record.name === 'string' ? record.name : name;
  return Object.entries<Field>(shapes[shape]).flatMap(([key, [how, what]]): readonly Open[] => {
    const value = record[key];
    const at = [...path, key];
    if (how.startsWith('fact'))
      return isUnknown(value)
        ? [{ path: at, fact: `${shape}.${key}`, what, ...(own === undefined ? {} : { of: own }) }]
        : [];
    if (!(what in shapes) || value === undefined) return [];
    return Array.isArray(value)
      ? value.flatMap((v, i) => openIn(what as keyof typeof shapes, v, [...at, i], own))
      : openIn(what as keyof typeof shapes, value, at, own);
  });
}

/** Places of the boards on the way to the new circuits, and of these. */
function openFacts(installation: Installation, runs: readonly string[]): readonly Open[] {
  const onTheWay = new Set(runs.flatMap((id) => pathTo(installation, id)?.boards.map((b) => b.id) ?? []));
  const feeders = new Set(runs.flatMap((id) => pathTo(installation, id)?.feeders.map((f) => f.id) ?? []));
  const found: Open[] = [...openIn('supply', installation.supply, ['supply'])];
  const visit = (board: Installation['board'], path: Path): void => {
    if (!onTheWay.has(board.id)) return;
    found.push(...openIn('board', board, path));
    board.runs.forEach((run, i) => {
      const at = [...path, 'runs', i];
      if (runs.includes(run.id) || feeders.has(run.id)) found.push(...openIn('run', run, at));
      run.feeds.forEach((outlet, j) => {
        const here = [...at, 'feeds', j];
        if (outlet.kind === 'board') visit(outlet, here);
        else if (outlet.kind === 'charge-point' && runs.includes(run.id))
          found.push(...openIn('chargePoint', outlet, here));
      });
    });
  };
  visit(installation.board, ['board']);
  return found;
}

/** Whether it is found out only once the work is done: what a new rod will measure. */
const comesLater = ({ fact, path }: NextQuestion): boolean => fact === 'electrode.resistance' && path[0] !== 'supply';

const asked: readonly Whom[] = ['customer', 'maker', 'site', 'operator', 'firm'];

/**
 * The next questions of an option: the facts that nobody looked at, by what an answer would settle. Every one of them is
 * tried with values that surveys find, the rest as it is, and judged.
 * @param survey the survey that the plan was made from
 * @param option an option of the plan
 * @param by what applies where the premises stand
 * @param most how many questions at most, from 1; 10 when absent
 * @returns questions in the order in which they should be asked: those that decide whatever the answer is, then those that
 * settle more rules whatever it is, then those that may settle more, then those that the customer can answer,
 * then what can be looked at before the work
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
  const runs = option.points.map((p) => p.run.id);
  const judged = (installation: Installation) => judgedAgain(by, survey, option, installation);
  const openRules = (results: readonly CheckResult[]) => overall(results).undetermined.length;
  const before = openRules(judged(option.installation));
  if (before === 0) return [];
  const questions = openFacts(option.installation, runs).flatMap(
    ({ path, fact, what, of }): readonly NextQuestion[] => {
      const answers = valuesOf(what).flatMap((value): readonly Answer[] => {
        try {
          const said = { path, value: { state: 'known', value, by: 'tried' } };
          const results = judged(withChanges(option.installation, [said]));
          return [{ value, verdict: overall(results).verdict, settles: before - openRules(results) }];
        } catch (error) {
          // such a value cannot be here: nobody will answer it
          if (hasCode(error, 'invalid-input') || hasCode(error, 'out-of-range')) return [];
          throw error;
        }
      });
      const settled = answers.map((a) => a.settles);
      if (answers.length === 0 || Math.max(...settled) <= 0) return [];
      const entry = factRegister().get(fact);
      return [
        {
          fact,
          path,
          ...(of === undefined || fact.startsWith('supply.') ? {} : { of }),
          title: entry?.title ?? fact,
          question: entry?.question ?? `What is ${fact}?`,
          ...(entry?.photo === undefined ? {} : { photo: entry.photo }),
          whom: entry?.whom ?? 'site',
          decides: answers.every((a) => a.verdict !== 'not-determined'),
          settles: Math.min(...settled),
          answers,
        },
      ];
    },
  );
  const best = (q: NextQuestion) => Math.max(...q.answers.map((a) => a.settles));
  return questions
    .sort(
      (a, b) =>
        Number(b.decides) - Number(a.decides) ||
        b.settles - a.settles ||
        best(b) - best(a) ||
        asked.indexOf(a.whom) - asked.indexOf(b.whom) ||
        Number(comesLater(a)) - Number(comesLater(b)),
    )
    .slice(0, most);
}

import { isWide } from '../calculation/index.js';
import { noOptions, optionProblems } from '../codes/option-problems.js';
import type { AssessmentOptions, WiringCode } from '../codes/wiring-code.js';
import { type CheckResult, type Fact, type Gap, known, termOf } from '../core/index.js';
import {
  assumedIn,
  type Installation,
  isRecord,
  labels,
  refuseUnsound,
  withoutAssumed,
} from '../installation/index.js';
import { type Problem, shown } from '../units/index.js';
import { circuitCase } from './circuit-case.js';
import { each, type IntervalEnd, intervalsOf, type Look, type PermittedInterval, regions } from './regions.js';
import { type Question, type Variation, variationOf } from './vary.js';
import { Working } from './working.js';

/** The values of one quantity for which a circuit passes, everything else as surveyed: plain, JSON-ready. */
export interface Permitted {
  /** Name of the run. */
  readonly run: string;
  /** The code, as cited. */
  readonly code: string;
  /** Its edition. */
  readonly edition: string;
  /** What has to be said of the edition. */
  readonly standing: string;
  /** What was varied. */
  readonly question: Question;
  /** Role of the quantity in the vocabulary. */
  readonly name: string;
  /** Its unit. */
  readonly unit: string;
  /** The ends of what was examined. */
  readonly examined: { readonly least: number; readonly most: number };
  /** The intervals in ascending order; none when the circuit fails everywhere. */
  readonly intervals: readonly PermittedInterval[];
  /** Checks that fail first somewhere in what was examined, each once, in the order in which they appear. */
  readonly barredBy: readonly CheckResult[];
  /** Why the question could not be put. */
  readonly gaps: readonly Gap[];
}

/**
 * The values of one quantity for which a circuit passes, as intervals whose ends name the check that fails beyond:
 * permitted lengths, largest load, sizes, ratings, highest ambient temperature, largest grouping. Each end lies
 * between two values that were assessed, at most a millimetre, a milliampere or a hundredth of a kelvin apart; all values
 * between the ends of an interval are judged at once, because what passes need not be one interval.
 * @param code the wiring code
 * @param installation the installation
 * @param runId name of the run
 * @param question what is varied
 * @param options choices that change a figure
 * @returns intervals with their ends, plain data; what cannot be asked ends in `gaps`
 * @throws CalculationError `unknown-definition` when there is no such run, `invalid-input` with the path of each problem of
 * an installation that cannot be or is not covered
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { permitted } from 'ohmwright';
 * import { bs7671 } from 'ohmwright/bs7671';
 * import { readSurvey } from 'ohmwright/io';
 *
 * const { installation } = readSurvey(survey);
 * permitted(bs7671('2018+A2:2022'), installation, 'cooker', { vary: 'area' }).unit; // => 'mm²'
 * ```
 */
export function permitted(
  code: WiringCode,
  installation: Installation,
  runId: string,
  question: Question,
  options: AssessmentOptions = noOptions,
): Permitted {
  refuseUnsound(installation, [...questionProblems(question), ...optionProblems(options)]);
  return permittedOf(new Working(code, installation, runId, options), installation, question, options);
}

/** The same of a circuit that is at work with these facts already, and goes on with others. */
export function permittedOf(
  working: Working,
  installation: Installation,
  question: Question,
  options: AssessmentOptions,
): Permitted {
  const { code, run: runId } = working;
  const { run } = circuitCase(installation, runId, options);
  const variation = variationOf(code, installation, run, question, options);
  const { values, between } = variation;
  const [least, most] = [values[0] ?? 0, values.at(-1) ?? 0];
  const seen =
    variation.gaps.length > 0 || values.length === 0
      ? []
      : between === undefined
        ? each(looker(working, variation, question), values)
        : piecewise(looker(working, variation, question), values, between);
  const barred = new Map<string, CheckResult>();
  for (const s of seen)
    if (s.verdict === 'fail' && s.check && !barred.has(s.check.check)) barred.set(s.check.check, s.check);
  return {
    run: runId,
    code: code.name,
    edition: code.edition,
    standing: code.standing,
    question,
    name: variation.name,
    unit: termOf(variation.name)?.unit ?? '',
    examined: { least, most },
    intervals: onTheirConditions(code, installation, runId, question, options, intervalsOf(seen)),
    barredBy: [...barred.values()],
    gaps: variation.gaps,
  };
}

/** Values between the first and the last of a list, each of which is judged, with neighbours at each change of verdict. */
const piecewise = (look: Look, values: readonly number[], between: number) =>
  values.slice(1).flatMap((v, i) => regions(look, values[i] as number, v, between).slice(i === 0 ? 0 : 1));

/** Intervals that pass by assumed facts alone pass on conditions: at one of their ends at least nothing passes without. */
function onTheirConditions(
  code: WiringCode,
  installation: Installation,
  runId: string,
  question: Question,
  options: AssessmentOptions,
  intervals: readonly PermittedInterval[],
): readonly PermittedInterval[] {
  if (assumedIn(installation).length === 0) return intervals;
  const bare = withoutAssumed(installation);
  const { run } = circuitCase(bare, runId, options);
  const look = looker(new Working(code, bare, runId, options), variationOf(code, bare, run, question, options));
  const passes = ({ value }: IntervalEnd) => look.at(value).verdict === 'pass';
  return intervals.map((i) =>
    i.verdict === 'pass' && !(passes(i.from) && passes(i.to)) ? { ...i, verdict: 'conditional' } : i,
  );
}

const varied = ['length', 'load', 'area', 'rating', 'ambient', 'ground', 'grouping', 'assumed'];

/** What is wrong with a question. */
function questionProblems(question: Question): readonly Problem[] {
  if (!isRecord(question)) return [{ path: ['question'], message: `is ${shown(question)}; an object is due` }];
  const { vary, stretch, arrangement } = question as { [K in 'vary' | 'stretch' | 'arrangement']?: unknown };
  const problems: Problem[] = [];
  const known = (key: string, value: unknown, all: readonly string[]) => {
    if (!all.includes(value as string))
      problems.push({ path: ['question', key], message: `is ${shown(value)}; known are ${all.join(', ')}` });
  };
  known('vary', vary, varied);
  if (arrangement !== undefined) known('arrangement', arrangement, labels.arrangement);
  if (stretch !== undefined && typeof stretch !== 'string')
    problems.push({ path: ['question', 'stretch'], message: `is ${shown(stretch)}; it is the name of a stretch` });
  return problems;
}

/** Judges a circuit at values of what is varied, or over all values between two at once. */
function looker(working: Working, { at, lengths }: Variation, question?: Question): Look {
  // as it is assumed, before anything is varied
  const followed = new Set(
    question?.vary === 'assumed' && question.advice
      ? working.results().flatMap((r) => (r.weight === 'advice' && r.verdict === 'pass' ? [r.check] : []))
      : [],
  );
  const notFollowed = (results: readonly CheckResult[]) =>
    results.find((r) => r.verdict === 'fail' && followed.has(r.check));
  const change = (value: Fact<number>): boolean => {
    const varied = at(value);
    if (varied) working.change(...varied, lengths);
    return varied !== undefined;
  };
  // of values at which no rule fails, what is left is asked for again
  const unfailed = new Map<number, readonly CheckResult[]>();
  return {
    at(value) {
      change(known(value, 'varied'));
      const failed = working.firstFailure();
      if (failed) return { verdict: 'fail', check: failed };
      const results = working.results();
      const advised = notFollowed(results);
      if (advised) return { verdict: 'fail', check: advised };
      unfailed.set(value, results);
      const check = results.find((r) => r.weight === 'rule' && r.verdict === 'not-determined');
      return check ? { verdict: 'not-determined', check } : { verdict: 'pass' };
    },
    over(least, most) {
      if (!change({ state: 'between', least, most })) return undefined;
      if (working.firstFailure()) return 'fail';
      const results = working.results();
      if (notFollowed(results)) return 'fail';
      const rules = results.filter((r) => r.weight === 'rule' || followed.has(r.check));
      if (rules.some(isWide)) return undefined;
      return rules.some((r) => r.verdict === 'not-determined') ? 'not-determined' : 'pass';
    },
    marginAt(check, value) {
      let results = unfailed.get(value);
      if (!results) {
        change(known(value, 'varied'));
        results = working.results();
      }
      return results.find((r) => r.check === check)?.margin;
    },
  };
}

import { type CheckResult, type Gap, termOf } from '../core/index.js';
import type { Installation } from '../installation/index.js';
import type { AssessmentOptions, WiringCode } from '../standards/wiring-code.js';
import { assess } from './assess.js';
import { circuitCase } from './circuit-case.js';
import { type Question, type Variation, variationOf } from './vary.js';

/** One end of a permitted interval: a value that was assessed and holds, and one just beyond that does not. */
export interface IntervalEnd {
  /** The last value inside; the circuit was assessed at it. */
  readonly value: number;
  /** The first value beyond and the check that no longer passes there; absent at the end of what was examined. */
  readonly beyond?: { readonly value: number; readonly check: CheckResult };
}

/** A run of values for which no rule fails. */
export interface PermittedInterval {
  /** Whether every rule passes, or some could not be judged. */
  readonly verdict: 'pass' | 'not-determined';
  /** Smallest value. */
  readonly from: IntervalEnd;
  /** Largest value. */
  readonly to: IntervalEnd;
}

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
  /** What was examined: the ends, and how many values between them before the ends were narrowed down. */
  readonly examined: { readonly least: number; readonly most: number; readonly values: number };
  /** The intervals in ascending order; none when the circuit fails everywhere. */
  readonly intervals: readonly PermittedInterval[];
  /** Checks that fail first somewhere in what was examined, each once, in the order in which they appear. */
  readonly barredBy: readonly CheckResult[];
  /** Why the question could not be put. */
  readonly gaps: readonly Gap[];
}

interface Seen {
  readonly value: number;
  readonly verdict: 'pass' | 'fail' | 'not-determined';
  readonly check: CheckResult | undefined;
}

/** Halves the way between two values of different verdict until they are neighbours. */
function narrowed(look: (value: number) => Seen, left: Seen, right: Seen, close: number): readonly Seen[] {
  const seen: Seen[] = [left];
  let [a, b] = [left, right];
  while (b.value - a.value > close) {
    const middle = look((a.value + b.value) / 2);
    if (middle.value <= a.value || middle.value >= b.value) break;
    if (middle.verdict === a.verdict) a = middle;
    else if (middle.verdict === b.verdict) b = middle;
    // a third verdict between two: both its ends are sought
    else return [...seen, ...narrowed(look, a, middle, close), ...narrowed(look, middle, b, close), right];
  }
  return [left, a, b, right];
}

/** Every value that was looked at, in ascending order, with neighbours at each change of verdict. */
function scan(look: (value: number) => Seen, variation: Variation): readonly Seen[] {
  const rough = variation.values.map(look);
  const { between } = variation;
  if (between === undefined) return rough;
  const all = rough.flatMap((s, i) => {
    const next = rough[i + 1];
    return next === undefined || next.verdict === s.verdict ? [s] : narrowed(look, s, next, between).slice(0, -1);
  });
  return all.filter((s, i) => i === 0 || s.value > (all[i - 1] as Seen).value);
}

function intervalsOf(seen: readonly Seen[]): readonly PermittedInterval[] {
  const found: PermittedInterval[] = [];
  let start = 0;
  for (let i = 1; i <= seen.length; i++) {
    const first = seen[start] as Seen;
    const last = seen[i - 1] as Seen;
    if (i < seen.length && (seen[i] as Seen).verdict === first.verdict) continue;
    if (first.verdict !== 'fail')
      found.push({
        verdict: first.verdict,
        from: end(first, seen[start - 1]),
        to: end(last, seen[i]),
      });
    start = i;
  }
  return found;
}

// where a neighbour passes and this one is open, what is open here is what tells them apart
const end = (here: Seen, beyond: Seen | undefined): IntervalEnd => {
  const check = beyond?.check ?? here.check;
  return beyond === undefined || check === undefined
    ? { value: here.value }
    : { value: here.value, beyond: { value: beyond.value, check } };
};

/**
 * The values of one quantity for which a circuit passes, as intervals whose ends name the check that fails beyond:
 * permitted lengths, largest load, sizes, ratings, highest ambient temperature, largest grouping. The whole range is
 * scanned, because what passes need not be one interval; each end is then narrowed down between two assessed values.
 * @param code the wiring code
 * @param installation the installation
 * @param runId name of the run
 * @param question what is varied
 * @param options choices that change a figure
 * @returns intervals with their ends, plain data; what cannot be asked ends in `gaps`
 * @throws CalculationError `unknown-definition` when there is no such run
 */
export function permitted(
  code: WiringCode,
  installation: Installation,
  runId: string,
  question: Question,
  options: AssessmentOptions = {},
): Permitted {
  const { run } = circuitCase(installation, runId, options);
  const variation = variationOf(code, installation, run, question, options);
  const look = (value: number): Seen => {
    const [changed, chosen] = variation.at(value);
    const { overall } = assess(code, changed, runId, chosen);
    return { value, verdict: overall.verdict, check: overall.failed[0] ?? overall.undetermined[0] };
  };
  const seen = variation.gaps.length > 0 ? [] : scan(look, variation);
  const barred = new Map<string, CheckResult>();
  for (const s of seen)
    if (s.verdict === 'fail' && s.check && !barred.has(s.check.check)) barred.set(s.check.check, s.check);
  const { values } = variation;
  return {
    run: runId,
    code: code.name,
    edition: code.edition,
    standing: code.standing,
    question,
    name: variation.name,
    unit: termOf(variation.name)?.unit ?? '',
    examined: { least: values[0] ?? 0, most: values.at(-1) ?? 0, values: values.length },
    intervals: intervalsOf(seen),
    barredBy: [...barred.values()],
    gaps: variation.gaps,
  };
}

import type { AssessmentOptions, WiringCode } from '../codes/wiring-code.js';
import { type CheckResult, type Gap, termOf } from '../core/index.js';
import type { Installation } from '../installation/index.js';

import type { PermittedInterval } from './assess-at.js';
import { circuitCase } from './circuit-case.js';
import { firstFailure } from './first-failure.js';
import { intervalsOf, type Seen, scan } from './scan.js';
import { type Question, variationOf } from './vary.js';

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
  options: AssessmentOptions = {},
): Permitted {
  const { run } = circuitCase(installation, runId, options);
  const variation = variationOf(code, installation, run, question, options);
  const look = (value: number): Seen => {
    const [changed, chosen] = variation.at(value);
    const found = firstFailure(code, changed, runId, chosen);
    return 'verdict' in found
      ? { value, verdict: 'fail', check: found }
      : { value, verdict: found.overall.verdict, check: found.overall.undetermined[0] };
  };
  const seen = variation.gaps.length > 0 ? [] : scan(look, variation.values, variation.between);
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

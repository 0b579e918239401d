import { optionProblems } from '../codes/option-problems.js';
import type { AssessmentOptions, ConductorSize, WiringCode } from '../codes/wiring-code.js';
import { type CheckResult, type Gap, known, type Overall, overall } from '../core/index.js';
import { type Cable, type Installation, isRecord, type Run, refuseUnsound, withRun } from '../installation/index.js';
import { type Amperes, amperes, type SquareMillimetres, squareMillimetres } from '../units/index.js';
import { assess } from './assess.js';
import type { Assessment } from './assessment.js';
import { circuitCase } from './circuit-case.js';
import { type Permitted, permitted } from './permitted.js';
import { withArea } from './vary.js';
import { Working } from './working.js';

/** A circuit that could be built: a cable of one size behind a device of one rating. @inline */
export interface Candidate {
  /** Place of the cable among the choices, from 0. */
  readonly choice: number;
  /** The cable, its size filled in. */
  readonly cable: Cable;
  /** Cross-section of a line conductor, mm². */
  readonly area: SquareMillimetres;
  /** Rated current of the device, A. */
  readonly rating: Amperes;
}

/** A candidate that was not accepted. @inline */
export interface PassedOver {
  readonly candidate: Candidate;
  /** Whether it fails, or could not be judged. */
  readonly verdict: 'fail' | 'not-determined';
  /** The first check that it fails; of one that could not be judged, the first open one. */
  readonly check: CheckResult;
}

/** What the search may choose from. */
export interface DesignChoices {
  /** Cables, their areas to be filled in; the run's own cable when absent. */
  readonly cables?: readonly Cable[];
  /** Rated currents of the device, A; all that the code knows for its kind when absent. */
  readonly ratings?: readonly Amperes[];
  /** Sizes, mm²; all that the code's table for the cable has when absent. */
  readonly sizes?: readonly SquareMillimetres[];
}

/** The order in which candidates are tried; the first that passes, on conditions or without, is accepted. @inline */
export interface SearchOrder {
  readonly words: string;
  /** Below zero when the first is to be tried before the second. */
  compare(a: Candidate, b: Candidate): number;
}

/** Options of a design: those of an assessment, and the order of the search. */
export interface DesignOptions extends AssessmentOptions {
  /** Order of the search; smaller conductor, then smaller rating, then earlier choice when absent. */
  readonly order?: SearchOrder;
  /** Whether the permitted lengths of the route are worked out as well, which takes many assessments; they are when absent. */
  readonly lengths?: boolean;
  /** How many candidates may be open before the search ends without one that passes; every one is tried when absent. */
  readonly mostOpen?: number;
}

/** The design of one circuit: plain, JSON-ready. */
export interface Design {
  readonly run: string;
  readonly code: string;
  readonly edition: string;
  /** What has to be said of the edition beside every verdict. */
  readonly standing: string;
  /** Order in which the candidates were tried, in words. */
  readonly order: string;
  /** Whether a candidate passes, or passes on conditions, or the best one could only not be judged, or all fail. */
  readonly outcome: 'accepted' | 'conditional' | 'not-determined' | 'none';
  /** The candidate: the first that passes; else the first of which no rule fails. */
  readonly chosen?: Candidate;
  readonly assessment?: Assessment;
  /** Candidates ruled out before it, in order, each with its first failing or open check; all of them when none is chosen. */
  readonly passedOver: readonly PassedOver[];
  /** Lengths of the route for which the chosen candidate passes. */
  readonly lengths?: Permitted;
  /** What stands in the way of a verdict on the chosen candidate, or of any candidate at all. */
  readonly gaps: readonly Gap[];
  readonly cautions: readonly string[];
}

/** Copper counts in all conductors in parallel. */
const metalOf = (c: Candidate) => c.area * (c.cable.parallel ?? 1);

/** Smaller conductor first, then smaller rating, then earlier choice. */
export const cheapestFirst: SearchOrder = {
  words: 'smaller conductor first, then smaller rating of the device, then earlier cable in the list of choices',
  compare: (a, b) => metalOf(a) - metalOf(b) || a.rating - b.rating || a.choice - b.choice,
};

/** The run as a candidate has it. */
function asBuilt(run: Run, { cable, rating }: Candidate): Run {
  const same = run.device.rating.state === 'known' && run.device.rating.value === rating;
  return { ...run, cable, device: same ? run.device : { ...run.device, rating: known(rating, 'candidate') } };
}

function candidatesOf(code: WiringCode, run: Run, choices: DesignChoices): readonly Candidate[] {
  return (choices.cables ?? [run.cable]).flatMap((cable, choice) => {
    const withCable: Run = { ...run, cable };
    const own = run.device.rating.state === 'known' ? [run.device.rating.value] : [];
    const offered = choices.ratings ?? code.ratingsFor(withCable);
    const ratings = offered.length > 0 ? offered : own;
    const sizes = choices.sizes?.map((area) => ({ area })) ?? code.sizesFor(withCable);
    return sizes.flatMap(({ area: size, name }: ConductorSize) => {
      const area = squareMillimetres(size);
      const sized = {
        ...withArea(withCable, area, 'candidate').cable,
        ...(name === undefined ? {} : { sizeName: name }),
      };
      return ratings.map((rating): Candidate => ({ choice, cable: sized, area, rating: amperes(rating) }));
    });
  });
}

const nothingOffered = (run: Run): readonly Gap[] => [
  {
    kind: 'fact',
    fact: `sizes of cable and ratings of device for ${run.id}`,
    obtain: 'the code has no table for such a cable or knows no ratings of such a device: name sizes and ratings',
  },
];

/** What stands in the way of a candidate: nothing where it passes, by assumed facts or without. */
function verdictOf(working: Working, overRanges: () => Overall): Omit<PassedOver, 'candidate'> | undefined {
  const barred = working.firstFailure();
  if (barred) return { verdict: 'fail', check: barred };
  const bounded = overall(working.results());
  // over ranges a check that may turn is looked into before it stays open
  const { verdict, failed, undetermined } = working.calculation.meetsSpans() ? overRanges() : bounded;
  if (verdict === 'pass' || verdict === 'conditional') return undefined;
  const [first] = failed;
  return { verdict: first ? 'fail' : 'not-determined', check: first ?? (undetermined[0] as CheckResult) };
}

/**
 * Designs one circuit: scans every size of every cable on offer with every rating of its device, cheapest first, and
 * accepts the first that passes every rule. Nothing is skipped by bisection, because what passes need not be one
 * interval of sizes.
 * @param code the wiring code
 * @param installation the installation; the run's own size and rating do not matter
 * @param runId name of the run
 * @param choices what may be chosen from
 * @param options choices that change a figure, and the order of the search
 * @returns the accepted candidate with its assessment and permitted lengths, and every cheaper one with the check
 * that
 * it fails; where none passes, the first that could only not be judged, with what is missing; plain data
 * @throws CalculationError `unknown-definition` when there is no such run, `invalid-input` with the path of each problem of
 * an installation that cannot be or is not covered
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { design } from 'ohmwright';
 * import { bs7671 } from 'ohmwright/bs7671';
 * import { readSurvey } from 'ohmwright/io';
 * import { withAllWanted } from 'ohmwright/site';
 *
 * const installation = withAllWanted(readSurvey(survey));
 * design(bs7671('2018+A2:2022'), installation, 'drive circuit').outcome; // => 'accepted'
 * ```
 */
export function design(
  code: WiringCode,
  installation: Installation,
  runId: string,
  choices: DesignChoices = {},
  options: DesignOptions = {},
): Design {
  if (!isRecord(options)) refuseUnsound(installation, optionProblems(options));
  const { order = cheapestFirst, lengths = true, mostOpen = Number.POSITIVE_INFINITY, ...assessing } = options;
  const { run } = circuitCase(installation, runId, assessing);
  const candidates = [...candidatesOf(code, run, choices)].sort((a, b) => order.compare(a, b));
  const built = (c: Candidate) => withRun(installation, runId, (r) => asBuilt(r, c));
  const working = new Working(code, installation, runId, assessing);
  const passedOver: PassedOver[] = [];
  let open: number | undefined;
  let accepted = false;
  let opened = 0;
  for (const candidate of candidates) {
    working.change(built(candidate), assessing);
    const found = verdictOf(working, () => assess(code, built(candidate), runId, assessing).overall);
    if (found === undefined) {
      accepted = true;
      break;
    }
    if (found.verdict !== 'fail') {
      open ??= passedOver.length;
      opened += 1;
    }
    passedOver.push({ candidate, ...found });
    if (opened >= mostOpen) break;
  }
  const at = accepted ? passedOver.length : open;
  const chosen = at === undefined ? undefined : candidates[at];
  const assessment = chosen && assess(code, built(chosen), runId, assessing);
  const passes = assessment?.overall.verdict === 'pass' ? 'accepted' : 'conditional';
  return {
    run: runId,
    code: code.name,
    edition: code.edition,
    standing: code.standing,
    order: order.words,
    outcome: accepted ? passes : chosen ? 'not-determined' : 'none',
    ...(chosen && assessment
      ? {
          chosen,
          assessment,
          ...(lengths ? { lengths: permitted(code, built(chosen), runId, { vary: 'length' }, assessing) } : {}),
        }
      : {}),
    passedOver: passedOver.slice(0, at),
    gaps: assessment?.gaps ?? (candidates.length === 0 ? nothingOffered(run) : []),
    cautions: assessment?.cautions ?? [],
  };
}

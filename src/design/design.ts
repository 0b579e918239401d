import { isWide } from '../calculation/index.js';
import { optionProblems } from '../codes/option-problems.js';
import type { AssessmentOptions, ConductorSize, WiringCode } from '../codes/wiring-code.js';
import { type CheckResult, type Gap, known, type Overall, overall, stated } from '../core/index.js';
import {
  type Cable,
  holdsRange,
  type Installation,
  isRecord,
  narrowed,
  type Run,
  rangesIn,
  refuseUnsound,
  withRun,
} from '../installation/index.js';
import { type Amperes, amperes, type SquareMillimetres, squareMillimetres } from '../units/index.js';
import { assess } from './assess.js';
import type { Assessment } from './assessment.js';
import { circuitCase } from './circuit-case.js';
import { rulesOverRanges } from './over-ranges.js';
import { type Permitted, permittedOf } from './permitted.js';
import { rangesOf } from './ranges.js';
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
  /** Whether a cable whose size is known lies there already and keeps it; the sizes of all are searched when absent. */
  readonly keepKnown?: boolean;
  /** Smallest size that is bought, mm², of those that the code's table has; any when absent. */
  readonly from?: SquareMillimetres;
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
  /** The candidate: the first that passes; else, of those of which no rule fails, the first with the fewest open rules. */
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
    const { from = 0 } = choices;
    const sizes: readonly ConductorSize[] =
      choices.keepKnown && cable.area.state === 'known'
        ? [{ area: cable.area.value, ...stated({ name: cable.sizeName }) }]
        : (choices.sizes?.map((area) => ({ area })) ?? code.sizesFor(withCable).filter(({ area }) => area >= from));
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

/** Why a candidate is not accepted. */
type Barred = Omit<PassedOver, 'candidate'>;
/** The same, worked out when it is asked for, and how many rules are open where none fails and no range was looked into. */
interface Bar {
  readonly why: () => Barred;
  readonly open?: number;
}

const barredBy = ({ failed, undetermined }: Overall): Barred => {
  const [first] = failed;
  return { verdict: first ? 'fail' : 'not-determined', check: first ?? (undetermined[0] as CheckResult) };
};
const isOpenRule = (r: CheckResult): boolean => r.weight === 'rule' && r.verdict === 'not-determined';

/** Finds candidates that pass, by assumed facts or without, one after the other with what does not change kept. */
class Sieve {
  private readonly working: Working;
  private at?: Working;
  private readonly found = new Map<Candidate, Assessment>();

  constructor(
    private readonly code: WiringCode,
    private readonly installation: Installation,
    private readonly runId: string,
    private readonly options: AssessmentOptions,
  ) {
    this.working = new Working(code, installation, runId, options);
  }

  private built(c: Candidate): Installation {
    return withRun(this.installation, this.runId, (r) => asBuilt(r, c));
  }

  /** The whole assessment of a candidate. */
  assessed(c: Candidate): Assessment {
    let found = this.found.get(c);
    if (!found) {
      found = assess(this.code, this.built(c), this.runId, this.options);
      this.found.set(c, found);
    }
    return found;
  }

  /** Permitted lengths of a candidate. */
  lengths(c: Candidate): Permitted {
    const built = this.built(c);
    this.working.change(built, this.options);
    return permittedOf(this.working, built, { vary: 'length' }, this.options);
  }

  /**
   * What stands in the way of a candidate; nothing where it passes. Over ranges a check that may turn is looked into before
   * it stays open: where something else bars the candidate, only when it is asked which check does.
   */
  barred(c: Candidate): Bar | undefined {
    const built = this.built(c);
    this.working.change(built, this.options);
    const failed = this.working.firstFailure();
    if (failed) return { why: () => ({ verdict: 'fail', check: failed }) };
    const results = this.working.results();
    const bounded = overall(results);
    if (bounded.verdict === 'pass' || bounded.verdict === 'conditional') return undefined;
    const mayMeet = holdsRange(built) || holdsRange(this.options);
    if (!mayMeet || !this.working.calculation.meetsSpans())
      return { why: () => barredBy(bounded), open: new Set(bounded.undetermined.map((r) => r.check)).size };
    const { code, runId: run, options } = this;
    const whole = this.working.judged();
    let found: Overall | undefined;
    const looked = (): Overall => {
      found ??= overall(rulesOverRanges({ code, installation: built, run, options, ranges: rangesOf(built) }, whole));
      return found;
    };
    const why = () => barredBy(looked());
    if (results.some((r) => isOpenRule(r) && !isWide(r)) || !this.holdsAtTheEnds(built)) return { why };
    const { verdict } = looked();
    return verdict === 'pass' || verdict === 'conditional' ? undefined : { why };
  }

  /** Whether every rule is met where each range has its largest value, or its smallest: what passes over all of them passes there. */
  private holdsAtTheEnds(built: Installation): boolean {
    const ranges = rangesIn(built);
    return (['most', 'least'] as const).every((end) => {
      const at = narrowed(
        built,
        ranges.map(({ fact }) => [fact[end], fact[end]] as const),
      );
      if (this.at) this.at.change(at, this.options);
      else this.at = new Working(this.code, at, this.runId, this.options);
      return this.at.firstFailure() === undefined && !this.at.results().some(isOpenRule);
    });
  }
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
 * it fails; where none passes, the first of those with the fewest open rules, with what is missing; plain data
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
  const sieve = new Sieve(code, installation, runId, assessing);
  const passedOver: { readonly candidate: Candidate; readonly why: () => Barred }[] = [];
  let open: number | undefined;
  let fewest = Number.POSITIVE_INFINITY;
  let accepted = false;
  let opened = 0;
  for (const candidate of candidates) {
    const bar = sieve.barred(candidate);
    if (bar === undefined) {
      accepted = true;
      break;
    }
    const { why, open: rules = Number.POSITIVE_INFINITY } = bar;
    // once one is open, whether others are open or fail matters only where open ones are counted, or fewer rules are
    if ((open === undefined || Number.isFinite(mostOpen) || rules < fewest) && why().verdict !== 'fail') {
      if (open === undefined || rules < fewest) [open, fewest] = [passedOver.length, rules];
      opened += 1;
    }
    passedOver.push({ candidate, why });
    if (opened >= mostOpen) break;
  }
  const at = accepted ? passedOver.length : open;
  const chosen = at === undefined ? undefined : candidates[at];
  const assessment = chosen && sieve.assessed(chosen);
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
          ...(lengths ? { lengths: sieve.lengths(chosen) } : {}),
        }
      : {}),
    passedOver: passedOver.slice(0, at).map(({ candidate, why }) => ({ candidate, ...why() })),
    gaps: assessment?.gaps ?? (candidates.length === 0 ? nothingOffered(run) : []),
    cautions: assessment?.cautions ?? [],
  };
}

import type { CheckResult } from '../core/index.js';
import { assess } from '../design/index.js';
import { type Installation, type Run, withRun } from '../installation/index.js';
import type { AssessmentOptions, WiringCode } from '../standards/wiring-code.js';
import { decidedRun } from './installed.js';
import type { WantedPoint } from './survey.js';

/** A candidate and what stood in its way. */
export interface Candidate {
  /** Build of the cable. */
  readonly cable: string;
  /** Size of its line conductors, mm². */
  readonly area: number;
  /** Rated current of the device, A. */
  readonly rating: number;
  /** What its assessment amounts to. */
  readonly verdict: 'pass' | 'fail' | 'not-determined';
  /** The first requirement that it fails, or that cannot be judged; absent when it passes. */
  readonly firstObstacle?: CheckResult;
}

/** The circuit chosen, and the candidates that came before it. */
export interface CircuitChoice {
  /** Whether a candidate passes all rules, fails none but leaves some open, or none is free of failures. */
  readonly verdict: 'pass' | 'not-determined' | 'fail';
  /** The circuit with its size and rating. */
  readonly run: Run;
  /** The installation with that circuit in it. */
  readonly installation: Installation;
  /** Candidates in the order in which they were tried, smallest first. */
  readonly candidates: readonly Candidate[];
}

/**
 * Chooses cable, size and device for a wanted point: cables in the order of preference, in each every size from the
 * smallest and with it every rating from the smallest that carries the load, never skipping. The first candidate that
 * passes all rules is taken; failing that, the first that fails none; failing that, the first of those that fail least.
 * @param code the wiring code
 * @param installation the installation with the wanted run in it
 * @param wanted what is wanted
 * @param options choices that change figures
 */
export function chooseCircuit(
  code: WiringCode,
  installation: Installation,
  wanted: WantedPoint,
  options: AssessmentOptions,
): CircuitChoice {
  const candidates: Candidate[] = [];
  let open: { run: Run; installation: Installation } | undefined;
  let least = { failures: Number.POSITIVE_INFINITY, run: wanted.run, installation };
  const setting = wanted.run.feeds.find((o) => o.kind === 'charge-point')?.setting;
  const load = setting?.state === 'known' ? setting.value : setting?.state === 'between' ? setting.most : 0;
  const cables = wanted.cables.flatMap((cable) =>
    code.sizesFor({ ...wanted.run, cable }).map((area) => ({ cable, area })),
  );
  const ratings = code.ratingsFor(wanted.run).filter((r) => r >= load);
  for (const { cable, area } of cables) {
    for (const rating of ratings) {
      const run = decidedRun(wanted, cable, area, rating);
      const changed = withRun(installation, run.id, () => run);
      const { overall } = assess(code, changed, run.id, options);
      const firstObstacle = overall.failed[0] ?? overall.undetermined[0];
      candidates.push({
        cable: cable.construction,
        area,
        rating,
        verdict: overall.verdict,
        ...(firstObstacle ? { firstObstacle } : {}),
      });
      const decided = { run, installation: changed };
      if (overall.verdict === 'pass') return { verdict: 'pass', ...decided, candidates };
      if (overall.verdict === 'not-determined') open ??= decided;
      if (overall.failed.length < least.failures) least = { failures: overall.failed.length, ...decided };
      // a larger device cannot help a cable that this one already overloads
      if (overall.failed.some((r) => r.check === 'tabulated-capacity' || r.check === 'load-within-capacity')) break;
    }
  }
  return open
    ? { verdict: 'not-determined', ...open, candidates }
    : { verdict: 'fail', run: least.run, installation: least.installation, candidates };
}

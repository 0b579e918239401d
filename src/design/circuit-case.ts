import { feederProblems, noOptions, optionProblems } from '../codes/option-problems.js';
import type { AssessmentOptions, CircuitCase } from '../codes/wiring-code.js';
import { own } from '../core/own.js';
import {
  connectedCurrentOf,
  type Installation,
  isFeeder,
  leastCurrentOf,
  pathTo,
  refuseUnsound,
  rising,
  runNames,
} from '../installation/index.js';
import { amperes, CalculationError } from '../units/index.js';
import { upToTaps } from './up-to-tap.js';

export type { AssessmentOptions, CircuitCase };

/**
 * The case of one run, read from the tree: the way from the origin, along a riser no further than to where its board is tapped, its line conductors, and its design current by what
 * it feeds, between two ends where that is known only within a range. A feeder may have its demand declared in the options
 * instead, which counts for no less than its charge points or its largest load.
 * @param installation the installation
 * @param runId name of the run
 * @param options choices that change a figure
 * @returns the case, ready for the rules of any wiring code
 * @throws CalculationError `unknown-definition` when the installation has no run of that name, `invalid-input` with the path
 * of each problem of an installation that cannot be or is not covered
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { circuitCase } from 'ohmwright';
 * import { readSurvey } from 'ohmwright/io';
 * import { withAllWanted } from 'ohmwright/site';
 *
 * circuitCase(withAllWanted(readSurvey(survey)), 'drive circuit').designCurrent; // => 32
 * ```
 */
export function circuitCase(
  installation: Installation,
  runId: string,
  options: AssessmentOptions = noOptions,
): CircuitCase {
  refuseUnsound(installation, optionProblems(options));
  if (options.feederDemand || options.demandBeyond) refuseUnsound(installation, feederProblems(installation, options));
  const whole = pathTo(installation, runId);
  const path = whole && upToTaps(whole);
  const board = path?.boards.at(-1);
  if (!path || !board) {
    const known = runNames(installation);
    throw new CalculationError(
      'unknown-definition',
      `the installation has no run ${JSON.stringify(runId)}; it has ${known.join(', ') || 'none'}`,
      { kind: 'run', id: runId, known },
    );
  }
  const { run } = path;
  const declared = isFeeder(run) ? own(options.feederDemand, run.id) : undefined;
  const least = Math.max(0, ...run.lines.map((line) => leastCurrentOf(run, line)));
  const designCurrent = declared === undefined ? rising(run, connectedCurrentOf) : amperes(Math.max(declared, least));
  return {
    installation,
    path,
    run,
    board,
    phases: run.lines.length === 3 ? 3 : 1,
    designCurrent,
    nominalVoltage: installation.supply.nominalVoltage,
    feedsChargePoint: run.feeds.some((o) => o.kind === 'charge-point'),
    options,
  };
}

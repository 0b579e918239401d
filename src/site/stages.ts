import { isMissing, type Known, silent } from '../core/index.js';
import { type FeederDemand, feederAdvice, feederDemandOf } from '../demand/feeder.js';
import type { DemandRules } from '../demand/index.js';
import { dwellingsBelow, type Installation, isFeeder, pathsOf } from '../installation/index.js';
import type { Amperes } from '../units/index.js';
import { demandOptions } from './demand-options.js';
import type { Survey } from './survey.js';

/** What hangs below a riser, a floor or a feeder, and whether it carries that. @inline */
export interface StageDemand {
  /** Name of the run. */
  readonly run: string;
  /** Dwellings below it. */
  readonly dwellings: number;
  /** Charge points below it. */
  readonly points: number;
  /** Demand on its most loaded line, A, by the governing method, and by each other that applies. */
  readonly demand: Known<Amperes>;
  readonly byMethod: readonly { readonly title: string; readonly demand: Known<Amperes>; readonly governs: boolean }[];
  /** Demand on that line without the charge points, A. */
  readonly existing: Known<Amperes>;
  /** What it carries, A. */
  readonly limit: Known<Amperes>;
  /** Whether it carries that, and whether holding charge points back would cure it. */
  readonly advice: ReturnType<typeof feederAdvice>;
}

function stageOf(found: FeederDemand): StageDemand {
  const { governing, methods } = found.demand;
  const worst = (lines: readonly { readonly demand: Known<Amperes> }[]): Known<Amperes> | undefined => {
    const [first, ...more] = lines.map((l) => l.demand);
    return more.reduce((a, b) => (a === undefined || isMissing(a) ? a : isMissing(b) || b > a ? b : a), first);
  };
  return {
    run: found.run,
    dwellings: found.dwellings,
    points: found.points,
    demand: found.worst,
    byMethod: methods.flatMap((m) => {
      const demand = worst(m.lines);
      return demand === undefined ? [] : [{ title: m.title, demand, governs: m.method === governing.method }];
    }),
    existing: found.existing,
    limit: found.limit,
    advice: feederAdvice(found),
  };
}

/**
 * The demand by stage of the tree where dwellings are listed: of every run that feeds boards or dwellings, those that no
 * new charge point is on among them.
 * @param rules by what a demand is found
 * @param survey the survey, for its choices on demand
 * @param installation the installation with what is wanted
 * @param known feeders that have been found already
 */
export function stagesOf(
  rules: DemandRules,
  survey: Survey,
  installation: Installation,
  known: readonly FeederDemand[],
): readonly StageDemand[] {
  if (dwellingsBelow(installation.board) === 0) return [];
  const options = demandOptions(survey);
  return pathsOf(installation)
    .filter(({ run }) => isFeeder(run))
    .map(({ run }) =>
      stageOf(known.find((f) => f.run === run.id) ?? feederDemandOf(rules, installation, run.id, options, silent())),
    );
}

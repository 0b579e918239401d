import { isMissing, judge, type Known } from '../core/index.js';
import { type Amperes, amperes } from '../units/index.js';
import type { LineDemand } from './demand.js';
import type { DemandCase } from './loads.js';
import type { SupplyRules } from './rules.js';

/** What another supply would change. @inline */
export interface SupplyChange {
  readonly change: 'larger-fuse' | 'three-phase';
  /** Rating of the cut-out fuse, A. */
  readonly cutOutRating: Amperes;
  /** Largest demand on a line, A. */
  readonly demand: Amperes;
  /** Whether the demand is within the cut-out then. */
  readonly fits: boolean;
  /** What is taken for granted. */
  readonly because: string;
}

const fits = ({ cutOut }: SupplyRules, demand: Amperes, cutOutRating: Amperes): boolean =>
  judge(cutOut, { demand, cutOutRating }).verdict === 'pass';

/**
 * What a larger fuse or a three-phase service would change. Loads stay on the lines where they are; on a new three-phase
 * service single-phase points move to the lines that are free.
 */
export function changesOf(
  rules: SupplyRules,
  c: DemandCase,
  lines: readonly LineDemand[],
  cutOut: Known<Amperes>,
): readonly SupplyChange[] {
  const figures = lines.flatMap((l) => (isMissing(l.demand) || isMissing(l.existing) ? [] : [[l.demand, l.existing]]));
  if (isMissing(cutOut) || figures.length < lines.length || figures.length === 0) return [];
  const worst = amperes(Math.max(...figures.map(([demand]) => demand as number)));
  const { phases } = c.installation.supply;
  const larger = rules
    .services(lines.length === 1 ? 1 : 3)
    .filter((rating) => rating > cutOut)
    .map(
      (rating): SupplyChange => ({
        change: 'larger-fuse',
        cutOutRating: rating,
        demand: worst,
        fits: fits(rules, worst, rating),
        because: 'the distributor decides; main switch and tails have to carry it too',
      }),
    );
  return phases.state === 'known' && phases.value === 1
    ? [...larger, ...threePhase(rules, c, figures[0]?.[1] ?? worst)]
    : larger;
}

/** Single-phase points go in turn to the second and third line, where nothing else is. */
function threePhase(rules: SupplyRules, c: DemandCase, existing: Amperes): readonly SupplyChange[] {
  const settings = c.points.map((p) => (p.setting.state === 'known' ? p.setting.value : undefined));
  if (settings.includes(undefined)) return [];
  const loads = [existing as number, 0, 0];
  for (const setting of (settings as number[]).sort((a, b) => b - a)) {
    const free = loads.indexOf(Math.min(...loads));
    loads[free] = (loads[free] ?? 0) + setting;
  }
  const demand = amperes(Math.max(...loads));
  return rules.services(3).map((rating) => ({
    change: 'three-phase',
    cutOutRating: rating,
    demand,
    fits: fits(rules, demand, rating),
    because:
      'the house stays on one line and each charge point goes to the line with least on it, load controls left out; the distributor decides',
  }));
}

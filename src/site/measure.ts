import { LEAST_CURRENT } from '../charging/network/network.js';
import { type CheckResult, type Fact, isMissing } from '../core/index.js';
import { methodsOf } from '../demand/demand.js';
import type { Adequacy, DemandRules } from '../demand/index.js';
import { demandCase } from '../demand/loads.js';
import type { Installation, Line } from '../installation/index.js';
import type { Amperes } from '../units/index.js';
import { CUSTOMARY_MARGIN } from './demand-options.js';

/** What a measurement of the demand has to show on a line, so that what is wanted is possible. @inline */
export interface MeasureFirst {
  readonly line: Line;
  /** Demand that was estimated, or taken for customary, without the charge points, A. */
  readonly estimated: number;
  /** Largest demand without the charge points for which there is room, A, its margin included. */
  readonly most: number;
  /** Largest current that may be read, A, the customary margin on top. */
  readonly mostRead: number;
}

/** How the demand of premises is measured: common practice, no source. */
const HOW =
  'a logger on the tails for a week of the coldest season, evenings and hot water included, or the half-hour readings of a year';

const down = (amps: number): number => Math.floor(amps * 10 + 1e-9) / 10;
const mostOf = (fact: Fact<Amperes>): number =>
  fact.state === 'known' ? fact.value : fact.state === 'between' ? fact.most : Number.POSITIVE_INFINITY;

/** Current on a line of what no meter sees: charge points that no limiter at the origin holds, and loads yet to be connected. */
function unseenOn(installation: Installation, line: Line): number {
  const { loads, points, controls } = demandCase(installation);
  const held = new Set(
    controls.filter((c) => c.board === installation.board.id && c.limit.state === 'known').flatMap((c) => c.controls),
  );
  const counted = [
    ...points.filter((p) => !held.has(p.id)).map((p) => ({ lines: p.lines, current: p.setting })),
    ...loads.filter((l) => l.isNew),
  ];
  return counted.filter((o) => o.lines.includes(line)).reduce((sum, o) => sum + mostOf(o.current), 0);
}

/** Whether nobody measured the demand that governs. */
export const isEstimated = (rules: DemandRules, { demand }: Adequacy): boolean =>
  !methodsOf(rules).some((m) => m.id === demand.governing.method && m.metered);

/** Points on a line that a limiter at the origin holds: while the rest is busiest each still runs at its least current. */
function heldOn(installation: Installation, line: Line): number {
  const { points, controls } = demandCase(installation);
  const held = new Set(controls.filter((c) => c.board === installation.board.id).flatMap((c) => c.controls));
  return points.filter((p) => held.has(p.id) && p.lines.includes(line)).length;
}

/** Whether the half hours that a demand is taken from were only assumed. */
const isAssumed = ({ supply }: Installation): boolean => {
  const current = supply.meteredDemand?.current;
  return current !== undefined && current.state !== 'unknown' && current.assumed !== undefined;
};

/**
 * What half hours that were assumed may show at most once they are read, line by line, by the ratings in the way and what
 * the operator is only told of.
 */
function roomToMeasure(
  rules: DemandRules,
  installation: Installation,
  { demand: { governing }, results }: Adequacy,
  toldUpTo: number | undefined,
): readonly MeasureFirst[] {
  return governing.lines.flatMap(({ line, existing }) => {
    const limits = results.flatMap((r) =>
      ofDemand(rules).includes(r.check) && r.limit && (governing.lines.length === 1 || r.because === line)
        ? [r.limit.value]
        : [],
    );
    const limit = Math.min(...limits, toldUpTo ?? Number.POSITIVE_INFINITY);
    if (isMissing(existing) || !Number.isFinite(limit)) return [];
    const most = down(limit - unseenOn(installation, line) - heldOn(installation, line) * LEAST_CURRENT);
    return most > 0 ? [{ line, estimated: existing, most, mostRead: down(most / (1 + CUSTOMARY_MARGIN)) }] : [];
  });
}

/** Results that compare the demand with what carries it. */
const ofDemand = (rules: DemandRules): readonly string[] => [rules.supply.cutOut.id, rules.supply.mainSwitch.id];

/**
 * The supply of an option, its estimate taken for what it is: where a demand that nobody measured is above what carries
 * it, and a lower one that can be measured is not, the result is open, and says what the measurement has to show. Where
 * what is to be connected is above it alone, it fails.
 */
export function measuredFirst(
  rules: DemandRules,
  installation: Installation,
  supply: Adequacy,
  toldUpTo?: number,
): { readonly results: readonly CheckResult[]; readonly measure: readonly MeasureFirst[] } {
  const { governing } = supply.demand;
  const asIs = { results: supply.results, measure: [] };
  if (!isEstimated(rules, supply))
    return isAssumed(installation) ? { ...asIs, measure: roomToMeasure(rules, installation, supply, toldUpTo) } : asIs;
  const measure = new Map<Line, MeasureFirst>();
  const results = supply.results.map((result): CheckResult => {
    if (result.verdict !== 'fail' || !ofDemand(rules).includes(result.check) || !result.limit) return result;
    const found = governing.lines.find((l) => governing.lines.length === 1 || l.line === result.because);
    if (!found || isMissing(found.existing)) return result;
    const { line, existing } = found;
    const most = down(result.limit.value - unseenOn(installation, line));
    if (!(most > 0)) return result;
    const mostRead = down(most / (1 + CUSTOMARY_MARGIN));
    const before = measure.get(line);
    if (!before || most < before.most) measure.set(line, { line, estimated: existing, most, mostRead });
    const { verdict: _, margin: _margin, ...rest } = result;
    const gap = {
      kind: 'fact' as const,
      fact: `measured demand of the premises${governing.lines.length > 1 ? ` on ${line}` : ''}`,
      obtain: `${HOW}: at most ${mostRead} A read (${most} A with ${CUSTOMARY_MARGIN * 100} % on top, customary) leaves room; the estimate says ${down(existing)} A`,
    };
    return { ...rest, verdict: 'not-determined', gaps: [gap] };
  });
  return { results, measure: [...measure.values()] };
}

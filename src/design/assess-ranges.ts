import { type Aspect, type AssessmentOptions, aspects, type WiringCode } from '../codes/wiring-code.js';
import type { CheckResult, Sheet, Worse } from '../core/index.js';
import type { Installation } from '../installation/index.js';
import {
  type AspectResults,
  type Assessment,
  assessmentOf,
  judgeAspects,
  type PermittedInterval,
  type RangedCheck,
  type RangeReport,
} from './assess-at.js';
import { digits, findingsOver } from './ranged-findings.js';
import { aspectOf, type RangedPoint, RangedPoints, resultAt } from './ranged-points.js';
import { pinned, type Range } from './ranges.js';
import { intervalsOf, type Seen, scan } from './scan.js';

/** Most points at which one check is judged. */
const MOST_POINTS = 350;

const rank: Readonly<Record<CheckResult['verdict'], number>> = {
  fail: 0,
  'not-determined': 1,
  pass: 2,
  'not-required': 3,
};

/** What is left of a result; of alternatives, of the best of them. */
const marginOf = (r: CheckResult): number => r.margin ?? Math.max(...(r.alternatives ?? []).map(marginOf), -1);

const worseThan = (a: CheckResult, b: CheckResult) => rank[a.verdict] - rank[b.verdict] || marginOf(a) - marginOf(b);

/** Values of a range at equal distances, whole ones where only such make sense. */
function spread({ least, most, whole }: Range, count: number): readonly number[] {
  const steps = whole ? Math.min(count - 1, most - least) : count - 1;
  const values = Array.from({ length: steps + 1 }, (_, i) => least + ((most - least) * i) / steps);
  return whole ? [...new Set(values.map(Math.round))] : values;
}

/** Every combination of the values of each range. */
function combinations(lists: readonly (readonly number[])[]): readonly (readonly number[])[] {
  return lists.reduce<readonly (readonly number[])[]>(
    (all, list) => all.flatMap((head) => list.map((value) => [...head, value])),
    [[]],
  );
}

/** One check over the ranges. */
interface Over {
  readonly aspect: Aspect;
  readonly key: string;
  readonly worst: RangedPoint;
  readonly result: CheckResult;
  readonly report: RangedCheck;
}

/** For each range, the values at which a check has to be judged; towards its worst or its best point. */
function lists(
  ranges: readonly Range[],
  reads: ReadonlySet<number>,
  directions: Worse,
  towards: 'worst' | 'best',
): { readonly lists: readonly (readonly number[])[]; readonly subdivided: boolean } {
  const directionOf = (range: Range) => (range.role === undefined ? undefined : directions[range.role as keyof Worse]);
  const open = ranges.filter((r, i) => reads.has(i) && directionOf(r) === undefined).length;
  const each = Math.max(2, Math.min(17, Math.floor(MOST_POINTS ** (1 / Math.max(1, open)))));
  return {
    lists: ranges.map((range, i) => {
      if (!reads.has(i)) return [range.least];
      const direction = directionOf(range);
      if (direction === undefined) return spread(range, each);
      return [(direction === 'up') === (towards === 'worst') ? range.most : range.least];
    }),
    subdivided: open > 0,
  };
}

/** Whether a check would have to be judged at more points than there is time for: each open range doubles them. */
const tooMany = (at: readonly (readonly number[])[]): boolean =>
  at.reduce((n, list) => n * list.length, 1) > MOST_POINTS;

/** A check over more open ranges than can be looked through: nothing is said of it. */
function unexamined(
  points: RangedPoints,
  ranges: readonly Range[],
  reads: ReadonlySet<number>,
  aspect: Aspect,
  key: string,
): Over | undefined {
  const worst = points.all().find((p) => resultAt(p, key));
  const result = worst && resultAt(worst, key);
  if (!worst || !result) return undefined;
  const { value: _v, limit: _l, most: _m, margin: _margin, because: _b, alternatives: _a, ...rest } = result;
  const gaps = [...reads].map((i) => {
    const { name, least, most } = ranges[i] as Range;
    const obtain = `known only from ${digits(least)} to ${digits(most)}: too many facts are ranges to look through them all`;
    return { kind: 'fact' as const, fact: name, obtain };
  });
  return {
    aspect,
    key,
    worst,
    result: { ...rest, verdict: 'not-determined', gaps },
    report: {
      aspect,
      check: result.check,
      verdict: 'not-determined',
      worstAt: {},
      grounds: 'subdivided',
      points: 0,
    },
  };
}

function worstOf(points: RangedPoints, key: string, at: readonly (readonly number[])[]) {
  let worst: { readonly at: RangedPoint; readonly result: CheckResult } | undefined;
  let allFail = true;
  for (const values of at) {
    const here = points.at(values);
    const result = resultAt(here, key);
    if (result?.verdict !== 'fail') allFail = false;
    if (result && (!worst || worseThan(result, worst.result) < 0)) worst = { at: here, result };
  }
  return { worst, allFail };
}

function overRanges(points: RangedPoints, ranges: readonly Range[], aspect: Aspect, key: string): Over | undefined {
  // judging at more points may show that more is read; then it is judged again
  for (let round = 0; round < 4; round++) {
    const reads = new Set(points.of(aspect));
    const directions = points.directions(key);
    const at = lists(ranges, reads, directions, 'worst');
    if (tooMany(at.lists)) return unexamined(points, ranges, reads, aspect, key);
    const grid = combinations(at.lists);
    const { worst, allFail } = worstOf(points, key, grid);
    if (!worst) return undefined;
    const fails = worst.result.verdict === 'fail';
    const everywhere =
      fails && allFail && worstOf(points, key, combinations(lists(ranges, reads, directions, 'best').lists)).allFail;
    if (points.of(aspect).size > reads.size && round < 3) continue;
    const depends = fails && !everywhere;
    const places = [...reads].sort((a, b) => a - b);
    return {
      aspect,
      key,
      worst: worst.at,
      result: worst.result,
      report: {
        aspect,
        check: worst.result.check,
        verdict: depends ? 'depends' : worst.result.verdict,
        worstAt: Object.fromEntries(places.map((i) => [(ranges[i] as Range).name, worst.at.values[i] as number])),
        grounds: reads.size === 0 ? 'independent' : at.subdivided ? 'subdivided' : 'worst-point',
        points: grid.length,
        ...(depends ? { holds: places.map((i) => holding(points, ranges, key, at.lists, i)) } : {}),
      },
    };
  }
  return undefined;
}

/** The values of one range for which a check passes wherever the others are. */
function holding(
  points: RangedPoints,
  ranges: readonly Range[],
  key: string,
  at: readonly (readonly number[])[],
  place: number,
): { readonly fact: string; readonly intervals: readonly PermittedInterval[] } {
  const range = ranges[place] as Range;
  const look = (value: number): Seen => {
    const { worst } = worstOf(points, key, combinations(at.map((list, i) => (i === place ? [value] : list))));
    const result = worst?.result;
    const open = result?.verdict === 'fail' || result?.verdict === 'not-determined';
    return { value, verdict: open ? (result.verdict as 'fail') : 'pass', check: open ? result : undefined };
  };
  const others = at.reduce((n, list, i) => (i === place ? n : n * list.length), 1);
  const values = spread(range, others > 50 ? 5 : 17);
  const close = range.whole ? undefined : (range.most - range.least) * (others > 50 ? 1e-2 : 1e-4);
  return { fact: range.name, intervals: intervalsOf(scan(look, values, close)) };
}

/** The result of a check over the ranges: what holds only for a part of them is not determined. */
function resultOver({ result, report }: Over, ranges: readonly Range[]): CheckResult {
  if (report.verdict !== 'depends') return result;
  const { margin: _margin, ...rest } = result;
  return {
    ...rest,
    verdict: 'not-determined',
    gaps: (report.holds ?? []).map(({ fact, intervals }) => {
      const { least, most, unit } = ranges.find((r) => r.name === fact) as Range;
      const in_ = (value: number) => `${digits(value)}${unit === undefined || unit === '1' ? '' : ` ${unit}`}`;
      const held = intervals
        .filter((i) => i.verdict === 'pass')
        .map(({ from, to }) =>
          from.value === least
            ? `up to ${in_(to.value)}`
            : to.value === most
              ? `from ${in_(from.value)} up`
              : `from ${in_(from.value)} to ${in_(to.value)}`,
        );
      const text =
        held.length > 0 ? `holds ${held.join(', ')} wherever the others lie` : 'no value of it alone is enough';
      return {
        kind: 'fact' as const,
        fact,
        obtain: `known only from ${in_(least)} to ${in_(most)}; ${result.check} ${text}`,
      };
    }),
  };
}

/** Writes the calculation at every point where some check is worst, as a part of its own. */
function writePoints(
  code: WiringCode,
  installation: Installation,
  runId: string,
  options: AssessmentOptions,
  sheet: Sheet,
  ranges: readonly Range[],
  worst: readonly RangedPoint[],
) {
  sheet.note('Facts are known only within a range: each check counts at the point where it is worst.');
  for (const { values } of new Set(worst)) {
    const at = ranges.map((r, i) => `${r.name} ${digits(values[i] as number)}${r.unit ? ` ${r.unit}` : ''}`);
    const fixed = pinned(installation, values, () => undefined);
    judgeAspects(code, fixed, runId, options, sheet.part(`At ${at.join('; ')}`), {});
  }
}

/**
 * Assesses a circuit whose facts are known within ranges, each check at its own worst point.
 * @param ranges the ranges of the installation, in the order of the tree
 */
export function assessRanges(
  code: WiringCode,
  installation: Installation,
  runId: string,
  options: AssessmentOptions,
  sheet: Sheet,
  ranges: readonly Range[],
): Assessment {
  const points = new RangedPoints(code, installation, runId, options);
  points.at(ranges.map((r) => r.least));
  points.at(ranges.map((r) => r.most));
  const over: Over[] = [];
  // points judged for one check may bring further checks to light
  for (let known = -1; known < over.length; ) {
    known = over.length;
    const done = new Set(over.map((o) => o.key));
    for (const key of points.keys()) {
      if (done.has(key)) continue;
      const found = overRanges(points, ranges, aspectOf(key), key);
      if (found) over.push(found);
    }
  }
  const judged = aspects.map((aspect): AspectResults => {
    const own = over.filter((o) => o.aspect === aspect);
    return { aspect, results: own.map((o) => resultOver(o, ranges)) };
  });
  writePoints(
    code,
    installation,
    runId,
    options,
    sheet,
    ranges,
    over.map((o) => o.worst),
  );
  const assessment = assessmentOf(code, runId, judged, findingsOver(points.all()));
  return { ...assessment, ranges: reportOf(assessment, over, ranges) };
}

function reportOf(assessment: Assessment, over: readonly Over[], ranges: readonly Range[]): RangeReport {
  const { verdict } = assessment.overall;
  const rules = over.filter((o) => o.result.weight === 'rule');
  const depends = rules.some((o) => o.report.verdict === 'depends');
  return {
    facts: ranges.map(({ whole: _whole, ...fact }) => fact),
    verdict: verdict === 'not-determined' && depends ? 'depends' : verdict,
    checks: over.map((o) => o.report),
  };
}

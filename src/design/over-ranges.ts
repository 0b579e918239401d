import { isBlindResult, isBounded, isWide } from '../calculation/index.js';
import type { Aspect, AssessmentOptions, WiringCode } from '../codes/wiring-code.js';
import type { CheckResult, Sheet } from '../core/index.js';
import { type Installation, narrowed } from '../installation/index.js';
import { writeAt } from './assessment.js';
import type { RangedCheck, RangeReport } from './range-report.js';
import type { Range } from './ranges.js';
import { each, intervalsOf, type PermittedInterval, regions, type Seen } from './regions.js';
import { type AspectResults, Working } from './working.js';

/** For each range the ends of a part of it. */
type Part = readonly (readonly [least: number, most: number])[];

/**
 * Most parts that are looked at for one check: of figures that are bounded, where a bound is lacking, and where nothing
 * takes the range, so that narrower ones help only by chance.
 */
const MOST_PARTS = 120;
const MOST_LACKING = 8;
const MOST_BLIND = 1;
const mostParts = (r: CheckResult) => (isBounded(r) ? MOST_PARTS : isBlindResult(r) ? MOST_BLIND : MOST_LACKING);

const rank: Readonly<Record<CheckResult['verdict'], number>> = {
  fail: 0,
  'not-determined': 1,
  conditional: 2,
  pass: 3,
  'not-required': 4,
};
/** What is left of a result; of alternatives, of the best of them. */
const marginOf = (r: CheckResult): number => r.margin ?? Math.max(...(r.alternatives ?? []).map(marginOf), -1);
/** Below zero where the first of two results is the worse. */
export const worse = (a: CheckResult, b: CheckResult): number =>
  rank[a.verdict] - rank[b.verdict] || marginOf(a) - marginOf(b);
/** Whether a check passes, fails or is open; one that is not asked does not stand in the way. */
const stand = (r: CheckResult | undefined): Seen['verdict'] =>
  r?.verdict === 'fail' || r?.verdict === 'not-determined' ? r.verdict : 'pass';

/** An end of a range as it is printed. */
const digits = (value: number): string => String(Number(value.toPrecision(4)));

const put = <T>(list: readonly T[], place: number, item: T): readonly T[] =>
  list.map((own, i) => (i === place ? item : own));

/** Results by aspect, check and how often that check stood before. */
function byKey(judged: readonly AspectResults[]): ReadonlyMap<string, CheckResult> {
  const found = new Map<string, CheckResult>();
  for (const { aspect, results } of judged) {
    const count = new Map<string, number>();
    for (const r of results) {
      const nth = count.get(r.check) ?? 0;
      count.set(r.check, nth + 1);
      found.set(`${aspect} ${r.check} ${nth}`, r);
    }
  }
  return found;
}
const aspectOf = (key: string): Aspect => key.slice(0, key.indexOf(' ')) as Aspect;

/** A circuit whose facts are known within ranges. */
export interface Ranged {
  readonly code: WiringCode;
  readonly installation: Installation;
  readonly run: string;
  readonly options: AssessmentOptions;
  /** Its ranges, in the order of the tree. */
  readonly ranges: readonly Range[];
}

/** Judges a circuit over parts of its ranges, each part once. */
class Judged {
  private working?: Working;
  private readonly seen = new Map<string, ReadonlyMap<string, CheckResult>>();

  constructor(
    readonly circuit: Ranged,
    private readonly aspects: ReadonlySet<Aspect>,
  ) {}

  over(part: Part): ReadonlyMap<string, CheckResult> {
    const name = part.join(';');
    let found = this.seen.get(name);
    if (!found) {
      const { code, installation, run, options } = this.circuit;
      const at = narrowed(installation, part);
      if (this.working) this.working.change(at, options);
      else this.working = new Working(code, at, run, options);
      found = byKey(this.working.judged(this.aspects));
      this.seen.set(name, found);
    }
    return found;
  }

  at(values: readonly number[]): ReadonlyMap<string, CheckResult> {
    return this.over(values.map((v) => [v, v]));
  }
}

/** Where a check is worst and best as far as the ends of the ranges tell, and which of the ranges tell. */
interface Ends {
  readonly worst: readonly number[];
  readonly best: readonly number[];
  readonly tells: readonly number[];
}
function endsOf(judged: Judged, key: string): Ends {
  const { ranges } = judged.circuit;
  const corners = (['least', 'most'] as const).map((end) => ranges.map((r) => r[end]));
  const tells: number[] = [];
  const [worst, best] = [[...(corners[0] as number[])], [...(corners[0] as number[])]];
  ranges.forEach(({ least, most }, i) => {
    for (const corner of corners) {
      const [low, high] = [least, most].map((v) => judged.at(put(corner, i, v)).get(key));
      if (!low || !high) {
        if (low === high) continue;
      } else if (worse(low, high) === 0) continue;
      const highIsWorse = high !== undefined && (low === undefined || worse(high, low) < 0);
      worst[i] = highIsWorse ? most : least;
      best[i] = highIsWorse ? least : most;
      tells.push(i);
      return;
    }
  });
  return { worst, best, tells };
}

/** A part in two, along the range of which most is left; undefined where nothing is left to divide. */
function halves(part: Part, ranges: readonly Range[], along: readonly number[]): readonly [Part, Part] | undefined {
  const left = (i: number) => {
    const [[least, most], whole] = [part[i] as Part[number], ranges[i] as Range];
    return (most - least) / (whole.most - whole.least);
  };
  const i = along.reduce((a, b) => (left(b) > left(a) ? b : a), along[0] as number);
  const [least, most] = part[i] as Part[number];
  if (least === most) return undefined;
  const middle = (least + most) / 2;
  const [low, high] = ranges[i]?.whole ? [Math.floor(middle), Math.floor(middle) + 1] : [middle, middle];
  return [put(part, i, [least, low]), put(part, i, [high, most])];
}

/** A check that turns somewhere within the ranges, or might, looked into. */
function settled(judged: Judged, key: string): Settled {
  const { ranges } = judged.circuit;
  const ends = endsOf(judged, key);
  const seen = new Set<Seen['verdict']>();
  let result: CheckResult | undefined;
  let open: CheckResult | undefined;
  const take = (r: CheckResult | undefined) => {
    seen.add(stand(r));
    if (r?.verdict === 'not-determined') open ??= r;
    if (r && (!result || worse(r, result) < 0)) result = r;
  };
  for (const values of [ends.worst, ends.best]) take(judged.at(values).get(key));
  const along = ends.tells.length > 0 ? ends.tells : ranges.map((_, i) => i);
  const parts: Part[] = [ranges.map(({ least, most }) => [least, most] as const)];
  let unsettled: CheckResult | undefined;
  for (let looked = 0; parts.length > 0 && !(seen.has('pass') && seen.has('fail')); looked++) {
    const part = parts.pop() as Part;
    const r = judged.over(part).get(key);
    if (!r || !isWide(r)) {
      take(r);
      continue;
    }
    unsettled ??= r;
    const two = looked < mostParts(r) ? halves(part, ranges, along) : undefined;
    if (two) parts.push(...two);
    else break;
  }
  if (parts.length === 0) unsettled = undefined;
  const aspect = aspectOf(key);
  const check = (result ?? unsettled)?.check as string;
  const depends = seen.has('pass') && seen.has('fail');
  const worst = judged.at(ends.worst).get(key) ?? (result as CheckResult);
  if (depends) {
    const holds = along.map((i) => holding(judged, key, ends, i));
    const at = Object.fromEntries(along.map((i) => [(ranges[i] as Range).name, ends.worst[i] as number]));
    return {
      result: turning(worst, holds, ranges),
      report: { aspect, check, verdict: 'depends', grounds: 'divided', worstAt: at, holds },
    };
  }
  // what fails for a part of the ranges, and is open for the rest, fails for no more than that part
  const partly =
    open && seen.has('fail')
      ? failingPartly(
          open,
          along.map((i) => ranges[i] as Range),
        )
      : undefined;
  const found = unsettled ? unsettledResult(unsettled) : (partly ?? (result as CheckResult));
  return { result: found, report: { aspect, check, verdict: found.verdict, grounds: 'divided' } };
}

/** A check that is open for a part of the ranges, by other facts, and fails for the rest: open, the ranges named as well. */
function failingPartly(open: CheckResult, ranges: readonly Range[]): CheckResult {
  const gaps = ranges.map(({ name, least, most, unit }) => {
    const in_ = (value: number) => `${digits(value)}${unit === undefined || unit === '1' ? '' : ` ${unit}`}`;
    return {
      kind: 'fact' as const,
      fact: name,
      obtain: `known only from ${in_(least)} to ${in_(most)}; for a part of it ${open.check} fails`,
    };
  });
  return { ...open, gaps: [...(open.gaps ?? []), ...gaps] };
}

/** A check of which it could not be found out whether it turns. */
function unsettledResult({
  depends: _depends,
  alternatives,
  ...rest
}: CheckResult & { depends?: unknown }): CheckResult {
  return alternatives ? { ...rest, alternatives: alternatives.map(unsettledResult) } : rest;
}

type Holding = { readonly fact: string; readonly intervals: readonly PermittedInterval[] };

/** The values of one range for which a check passes wherever the others are. */
function holding(judged: Judged, key: string, { worst }: Ends, place: number): Holding {
  const { ranges } = judged.circuit;
  const range = ranges[place] as Range;
  const within = (least: number, most: number) =>
    judged.over(ranges.map((r, i) => (i === place ? [least, most] : [r.least, r.most]))).get(key);
  const corner = (value: number) => judged.at(put(worst, place, value)).get(key);
  const look = {
    at: (value: number): Seen => {
      const verdict = stand(within(value, value));
      if (verdict === 'pass') return { verdict };
      const found = corner(value);
      return stand(found) === 'fail' ? { verdict: 'fail', check: found } : { verdict: 'not-determined', check: found };
    },
    over: (least: number, most: number) => {
      const found = within(least, most);
      return found && isWide(found) ? undefined : stand(found);
    },
    marginAt: (_check: string, value: number) => corner(value)?.margin,
  };
  const { least, most, whole } = range;
  const seen = whole
    ? each(
        look,
        Array.from({ length: most - least + 1 }, (_, i) => least + i),
      )
    : regions(look, least, most, (most - least) * 1e-4);
  return { fact: range.name, intervals: intervalsOf(seen) };
}

/** What holds only for a part of the ranges is not determined. */
function turning(worst: CheckResult, holds: readonly Holding[], ranges: readonly Range[]): CheckResult {
  const { margin: _margin, because: _because, alternatives: _alternatives, ...rest } = worst;
  return {
    ...rest,
    verdict: 'not-determined',
    gaps: holds.map(({ fact, intervals }) => {
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
        obtain: `known only from ${in_(least)} to ${in_(most)}; ${worst.check} ${text}`,
      };
    }),
  };
}

/** What a check comes to over the ranges. */
interface Settled {
  readonly result: CheckResult;
  readonly report: RangedCheck;
}

/** What a circuit comes to over its ranges. */
export interface OverRanges {
  readonly judged: readonly AspectResults[];
  readonly checks: readonly RangedCheck[];
  /** What each result came to. */
  readonly settled: ReadonlyMap<CheckResult, Settled>;
}

/**
 * What a circuit comes to over its ranges: what was bounded as a whole stands, what may turn within them is looked into.
 * @param circuit the circuit
 * @param whole its results with every figure bounded over the ranges
 * @param before what results came to with other facts; one that is still the same does not depend on those
 */
export function overRanges(
  circuit: Ranged,
  whole: readonly AspectResults[],
  before?: ReadonlyMap<CheckResult, Settled>,
): OverRanges {
  const all = byKey(whole);
  const turns = new Set([...all].filter(([, r]) => isWide(r) && !before?.has(r)).map(([key]) => aspectOf(key)));
  const parts = new Judged(circuit, turns);
  const over = [...all].map(
    ([key, r]): Settled =>
      before?.get(r) ??
      (isWide(r)
        ? settled(parts, key)
        : {
            result: r,
            report: { aspect: aspectOf(key), check: r.check, verdict: r.verdict, grounds: 'bounds' as const },
          }),
  );
  return {
    judged: whole.map(({ aspect }) => ({
      aspect,
      results: over.filter((o) => o.report.aspect === aspect).map((o) => o.result),
    })),
    checks: over.map((o) => o.report),
    settled: new Map([...all.values()].map((r, i) => [r, over[i] as Settled])),
  };
}

/**
 * The results of a circuit over its ranges where it is only asked whether its rules hold: advice that may turn within them
 * is not looked into.
 * @param circuit the circuit
 * @param whole its results with every figure bounded over the ranges
 */
export function rulesOverRanges(circuit: Ranged, whole: readonly AspectResults[]): readonly CheckResult[] {
  const turns = (r: CheckResult) => r.weight === 'rule' && isWide(r);
  const all = byKey(whole);
  const parts = new Judged(circuit, new Set([...all].filter(([, r]) => turns(r)).map(([key]) => aspectOf(key))));
  return [...all].map(([key, r]) => (turns(r) ? settled(parts, key).result : r));
}

/** What the whole of it rests on. */
export function rangeReport(
  { ranges }: Ranged,
  checks: readonly RangedCheck[],
  verdict: RangeReport['verdict'],
  judged: readonly AspectResults[],
): RangeReport {
  const weights = judged.flatMap((j) => j.results.map((r) => r.weight));
  const depends = checks.some((c, i) => c.verdict === 'depends' && weights[i] === 'rule');
  return {
    facts: ranges.map(({ whole: _whole, ...fact }) => fact),
    verdict: verdict === 'not-determined' && depends ? 'depends' : verdict,
    checks,
  };
}

/** Writes the calculation at every corner of the ranges where some check is worst, as a part of its own. */
export function writeCorners(
  circuit: Ranged,
  whole: readonly AspectResults[],
  sheet: Sheet,
  assumed: readonly string[],
): void {
  const { code, installation, run, options, ranges } = circuit;
  const parts = new Judged(circuit, new Set(whole.map((j) => j.aspect)));
  const worst = [...byKey(whole).keys()].map((key) => endsOf(parts, key).worst);
  sheet.note('Facts are known only within a range: each check counts at the point where it is worst.');
  for (const values of new Map(worst.map((w) => [w.join(), w])).values()) {
    const at = ranges.map((r, i) => `${r.name} ${digits(values[i] as number)}${r.unit ? ` ${r.unit}` : ''}`);
    const fixed = narrowed(
      installation,
      values.map((v) => [v, v] as const),
    );
    writeAt(code, fixed, run, options, sheet.part(`At ${at.join('; ')}`), assumed);
  }
}

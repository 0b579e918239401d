import {
  type CheckResult,
  factValue,
  isMissing,
  type Known,
  known,
  type Sheet,
  silent,
  stated,
  whenKnown,
} from '../core/index.js';
import { asOneWay } from '../installation/beside.js';
import type { Board, Installation, Run } from '../installation/index.js';
import {
  conditionally,
  dwellingsBelow,
  foundNoFuseAhead,
  outletsBelow,
  pathTo,
  refuseUnsound,
} from '../installation/index.js';
import { stillSound } from '../installation/problems.js';
import { type Amperes, amperes, CalculationError, type Metres } from '../units/index.js';
import { type Demand, demandOfCase, demandProblems, governingOn, type LineDemand, methodsOf } from './demand.js';
import { demandCase } from './loads.js';
import type { DemandOptions } from './method.js';
import { aroundSwitch, boardOverload, mainSwitchOf, switchOverload } from './overload.js';
import type { DemandRules } from './rules.js';

/** What a feeder has to carry, and whether the boards that it feeds are made for it. @inline */
export interface FeederDemand {
  readonly run: string;
  /** Dwellings below it. */
  readonly dwellings: number;
  /** Charge points below it. */
  readonly points: number;
  /** Demand of what is below it, by every method that knows a part of an installation. */
  readonly demand: Demand;
  /** Demand on its most loaded line, A. */
  readonly worst: Known<Amperes>;
  /**
   * Of a feeder with boards or dwellings tapped along it: the demand of what is tapped at each place and beyond, A, on its most
   * loaded line, in order of the places; each piece ahead of a place carries it.
   */
  readonly beyond?: readonly {
    /** Distance from the start of the feeder, m; at its end when absent. */
    readonly at?: Metres;
    readonly demand: Known<Amperes>;
  }[];
  /**
   * Of a ring with boards along it: what each of its two legs carries at its start at most, A on the most loaded line. Each
   * board counts at its own demand, by its distance from the other end.
   */
  readonly legs?: readonly [first: Known<Amperes>, second: Known<Amperes>];
  /** Demand on that line without the charge points, A. */
  readonly existing: Known<Amperes>;
  /** The rating of its device, or of the main switch of the one board that it feeds where that is smaller, A. */
  readonly limit: Known<Amperes>;
  /** Demand against the main switch of each board that it feeds, and what protects that and the board against overload, line by line. */
  readonly results: readonly CheckResult[];
}

/** The named method only where it knows a part of an installation: a meter at the origin does not. */
function forPart(
  rules: DemandRules,
  { premises, governing, assembly, factors, dwellings }: DemandOptions,
): DemandOptions {
  const divisible = methodsOf(rules).some((m) => m.id === governing && m.divisible);
  return { premises, ...stated({ assembly, factors, dwellings, governing: divisible ? governing : undefined }) };
}

/**
 * The demand as the meter of the supply bounds it: a part takes no more than the whole. Not where something feeds in, or
 * may, which the meter does not see.
 */
function byMeterOfSupply(
  rules: DemandRules,
  installation: Installation,
  ahead: Board,
  options: DemandOptions,
): ((sheet: Sheet) => Demand) | undefined {
  const whole = demandCase(installation);
  if (whole.unlisted.length > 0 || whole.sources.length > 0 || whole.points.some((p) => p.bidirectional !== false))
    return undefined;
  const { method, verdict } = demandOfCase(rules, whole, options, silent()).governing;
  if (verdict !== 'applicable' || methodsOf(rules).find((m) => m.id === method)?.metered !== true) return undefined;
  const { premises, readings, meteredMargin } = options;
  const part = demandCase({ supply: installation.supply, board: ahead });
  return (sheet) => ({
    ...demandOfCase(rules, part, { premises, governing: method, ...stated({ readings, meteredMargin }) }, sheet),
    governedBy: 'the meter of the supply: a part takes no more than the whole',
  });
}

const worstOf = (demand: Demand, run: Run): Known<Amperes> =>
  largest(run.lines.map((line) => governingOn(demand, line).demand));

/** Of two demands that both bound a feeder the smaller; one that is not known bounds nothing. */
function smaller(ofPart: Demand, metered: ((sheet: Sheet) => Demand) | undefined, run: Run, sheet: Sheet): Demand {
  if (!metered) return ofPart;
  const [one, other] = [worstOf(ofPart, run), worstOf(metered(silent()), run)];
  if (isMissing(other) || (!isMissing(one) && one <= other)) return ofPart;
  return metered(sheet.part('By the meter of the supply'));
}

const largest = (values: readonly Known<Amperes>[]): Known<Amperes> =>
  whenKnown(values, (...all) => amperes(Math.max(0, ...(all as readonly number[]))));

const switchRatings = (board: Board): Readonly<Record<'own' | 'least', Known<Amperes>>> => {
  const { own, least } = mainSwitchOf(board);
  const name = `main switch of ${board.id}`;
  return { own: factValue(name, own), least: isMissing(least) ? least : factValue(name, least) };
};

/**
 * The demand on a feeder, of what is below it alone, at most what the meter of the supply has seen: load controls count
 * that act on boards below it, not one at the origin, which does not see where the current goes.
 */
export function feederDemandOf(
  rules: DemandRules,
  installation: Installation,
  runId: string,
  options: DemandOptions,
  sheet: Sheet = silent(),
): FeederDemand {
  const said = feederDemandAsSaid(rules, installation, runId, options, sheet);
  const results = conditionally(
    installation,
    said.results,
    (bare) => feederDemandAsSaid(rules, bare, runId, options, sheet.silent()).results,
  );
  return { ...said, results };
}

/** The same by the facts as they are said, assumed ones like known ones. */
export function feederDemandAsSaid(
  rules: DemandRules,
  installation: Installation,
  runId: string,
  options: DemandOptions,
  sheet: Sheet,
): FeederDemand {
  refuseUnsound(installation, demandProblems(rules, options));
  const found = pathTo(installation, runId)?.run;
  const run = found && asOneWay(found);
  if (!run)
    throw new CalculationError('unknown-definition', `the installation has no run ${JSON.stringify(runId)}`, {
      kind: 'run',
      id: runId,
      known: [],
    });
  const { meteredDemand: _, ...supply } = installation.supply;
  const demandAt = (part: Run, on: Sheet): Demand => {
    const ahead: Board = { kind: 'board', id: `ahead of ${run.id}`, complete: known(true), runs: [part] };
    // a part of what is in order
    const of = stillSound(installation, { supply, board: ahead });
    const ofPart = demandOfCase(rules, demandCase(of), forPart(rules, options), on);
    return smaller(ofPart, byMeterOfSupply(rules, installation, ahead, options), run, on);
  };
  const demand = demandAt(run, sheet);
  const lines = run.lines.map((line) => governingOn(demand, line));
  const boards = run.feeds.filter((o): o is Board => o.kind === 'board');
  // of several boards along a riser each carries what is below itself
  const alone = run.feeds.length === 1;
  const results = boards.flatMap((board) => {
    const own = alone ? demand : demandAt({ ...run, feeds: [board] }, sheet.part(`Demand of ${board.id}`));
    return run.lines.flatMap((line) => judgeSwitch(rules, run, board, governingOn(own, line), sheet));
  });
  const tapOf = (o: Run['feeds'][number]): Metres | undefined => (o.kind === 'charge-point' ? undefined : o.at);
  const places = [...new Set(run.feeds.map(tapOf))].sort((a, b) => (a ?? Infinity) - (b ?? Infinity));
  const beyond =
    places.length < 2
      ? undefined
      : places.map((at) => {
          const feeds = run.feeds.filter((o) => (tapOf(o) ?? Infinity) >= (at ?? Infinity));
          const all = feeds.length === run.feeds.length;
          return {
            ...stated({ at }),
            demand: worstOf(all ? demand : demandAt({ ...run, feeds }, sheet.silent()), run),
          };
        });
  const aloneOf = (o: Run['feeds'][number]) => worstOf(demandAt({ ...run, feeds: [o] }, sheet.silent()), run);
  const rating = run.device.rating.state === 'between' ? run.device.rating.least : ratingOf(run);
  const below = outletsBelow(run);
  return {
    run: run.id,
    dwellings: dwellingsBelow(run),
    points: below.filter((o) => o.kind === 'charge-point' || o.purpose === 'charge-point').length,
    demand,
    ...stated({ beyond, legs: run.ring ? legsOf(run, worstOf(demand, run), aloneOf) : undefined }),
    worst: worstOf(demand, run),
    existing: largest(lines.map((l) => l.existing)),
    limit: whenKnown([rating, ...(alone ? boards.map((b) => switchRatings(b).least) : [])], (...all) =>
      amperes(Math.min(...(all as readonly number[]))),
    ),
    results,
  };
}

/** Currents of the legs of a ring by the distances of its boards; undefined where nothing says where they are. */
function legsOf(
  run: Run,
  whole: Known<Amperes>,
  aloneOf: (o: Run['feeds'][number]) => Known<Amperes>,
): FeederDemand['legs'] {
  const lengths = run.stretches.map((s) => factValue(`length of ${s.name}`, s.length));
  const length = whenKnown(lengths, (...all) => all.reduce<number>((a, b) => a + b, 0));
  const places = run.feeds.map((o) => (o.kind === 'charge-point' ? undefined : o.at));
  if (places.includes(undefined) || isMissing(length) || length <= 0) return undefined;
  const leg = (shareOf: (x: number) => number) =>
    whenKnown([whole, ...run.feeds.map(aloneOf)], (all, ...each) =>
      amperes(
        Math.min(
          all,
          each.reduce<number>((sum, i, k) => sum + i * shareOf(Math.min(1, (places[k] as number) / length)), 0),
        ),
      ),
    );
  return [leg((x) => 1 - x), leg((x) => x)];
}

const ratingOf = (run: Run): Known<Amperes> => factValue(`rating of the device of ${run.id}`, run.device.rating);

function judgeSwitch(
  rules: DemandRules,
  run: Run,
  board: Board,
  found: LineDemand,
  sheet: Sheet,
): readonly CheckResult[] {
  const part = sheet.part(`Main switch of ${board.id}, ${found.line}`);
  const demand = part.given('demand', found.demand, 'governing method');
  const { own, least } = switchRatings(board);
  const mainSwitchRating = part.given('mainSwitchRating', least);
  const { mainSwitch, mainSwitchOverload } = rules.supply;
  const ahead = run.device.rating;
  const around = aroundSwitch({ line: found.line, ahead, aheadName: `device of ${run.id}`, board });
  const ofSwitch = part.part('Overload');
  return [
    part.check(mainSwitch, { demand, mainSwitchRating }),
    switchOverload(
      mainSwitchOverload,
      {
        mainSwitchRating: foundNoFuseAhead(board.mainSwitch)
          ? mainSwitchRating
          : ofSwitch.given('mainSwitchRating', own),
      },
      board.mainSwitch?.overloadDeclared,
      around,
      ofSwitch,
    ),
    ...boardOverload(rules.supply.boardOverload, around, part),
  ];
}

/** Whether charge points below a feeder ask more of it than it carries, and whether holding them back would cure that. */
export function feederAdvice({
  worst,
  existing,
  limit,
}: FeederDemand): 'carries' | 'limiter-helps' | 'too-small' | 'not-determined' {
  const found = whenKnown([worst, existing, limit], (w, e, l) =>
    w <= l ? ('carries' as const) : e <= l ? ('limiter-helps' as const) : ('too-small' as const),
  );
  return isMissing(found) ? 'not-determined' : found;
}

import {
  endsOf,
  type Fact,
  factValue,
  type Gap,
  isMissing,
  type Known,
  known,
  missing,
  whenKnown,
} from '../core/index.js';
import { type Amperes, amperes } from '../units/index.js';
import type { ChargePoint, Dwellings, Line, Load } from './load.js';
import { type Board, everythingBelow, type Outlet, outletsBelow, type Run } from './tree.js';

/** Whether an outlet feeds in rather than draws. */
export const isSource = (o: Load | ChargePoint) => o.kind === 'load' && o.purpose === 'generation';

/**
 * Current of like dwellings that all take their most at once, on the line that has most of them.
 * @param dwellings how many, and what one takes at most
 * @param lines number of line conductors that they are spread over, 1 to 3
 * @returns A per line
 * @example
 * ```ts
 * import { amperes, known } from 'ohmwright';
 * import { dwellingsAtOnce } from 'ohmwright/demand';
 *
 * const flats = { count: 20, each: known(amperes(40)), heating: known('not-electric' as const) };
 * dwellingsAtOnce(flats, 3); // => { state: 'known', value: 280, by: '7 dwellings of 40 A on a line at once' }
 * ```
 */
export function dwellingsAtOnce(dwellings: Dwellings, lines: 1 | 2 | 3): Fact<Amperes> {
  const { each, count, phases } = dwellings;
  const onOne = phases?.state === 'known' && phases.value === 3 ? count : Math.ceil(count / lines);
  if (each.state === 'unknown') return each;
  const most = each.state === 'known' ? each.value : each.most;
  return known(amperes(onOne * most), `${onOne} dwellings of ${most} A on a line at once`);
}

/** Dwellings below a run or a board, loads that stand for several counted out. */
export const dwellingsBelow = (from: Run | Board): number =>
  outletsBelow(from).reduce((sum, o) => sum + (o.kind === 'load' ? (o.dwellings?.count ?? 0) : 0), 0);

/** Why nothing can be said of a run that nothing is said of. */
export const feedsNothing = ({ id }: Run): Gap => ({
  kind: 'fact',
  fact: `what ${id} feeds`,
  obtain: 'follow it to its end: boards, socket-outlets, fixed equipment or charge points',
});

/** Whether it is said of a board that not all is listed that leaves it, or that nobody knows. */
const notAll = ({ complete }: Board): boolean => !(complete?.state === 'known' && complete.value);
const notListed = ({ id }: { readonly id: string }): Gap => ({
  kind: 'fact',
  fact: `circuits of ${id}`,
  obtain: 'list every circuit that leaves it, and say that the list is complete',
});

/** Current of a load, or setting of a charge point, per line that it is on. */
export const currentOfOutlet = (o: Load | ChargePoint): Known<number> =>
  o.kind === 'load' ? factValue(`current of ${o.id}`, o.current) : factValue(`setting of ${o.id}`, o.setting);

const sumOf = (outlets: readonly (Load | ChargePoint)[], line: Line): Known<number> =>
  whenKnown(outlets.filter((o) => o.lines.includes(line)).map(currentOfOutlet), (...all) =>
    all.reduce<number>((a, b) => a + b, 0),
  );

/** Consumers that are counted together, and what they draw on a line. */
interface Counted {
  readonly of: readonly (Load | ChargePoint)[];
  readonly drawn: Known<number>;
  /** Set where a load control holds them already. */
  readonly held?: true;
}
const drawnBy = (all: readonly Counted[]): Known<number> =>
  whenKnown(
    all.map((c) => c.drawn),
    (...each) => each.reduce<number>((a, b) => a + b, 0),
  );

/** What consumers draw where a control makes room below its board: it can pause what it holds, and nothing else. */
function withControl(
  counted: readonly Counted[],
  board: Board,
  { name, limit, controls }: NonNullable<Board['control']>,
): readonly Counted[] {
  const below = new Set(outletsBelow(board));
  const inside = counted.filter((c) => c.of.every((o) => below.has(o)));
  const held = inside.filter((c) => c.held !== true && c.of.every(({ id }) => controls.includes(id)));
  if (held.length === 0) return counted;
  const drawn = whenKnown(
    [drawnBy(held), drawnBy(inside.filter((c) => !held.includes(c))), factValue(`limit of ${name}`, limit)],
    (ofHeld, others, most) => Math.min(ofHeld, Math.max(0, most - others)),
  );
  return [...counted.filter((c) => !held.includes(c)), { of: held.flatMap((c) => c.of), drawn, held: true }];
}

/**
 * Current of each of several line conductors of a run by what it feeds, without diversity: consumers as far as load
 * controls hold them, or generation where that is the larger; none flows in one that the run does not have.
 */
export function lineCurrentsOf(run: Run, of: readonly Line[]): readonly Known<number>[] {
  const below = everythingBelow(run);
  return of.map((line) => (run.lines.includes(line) ? currentOver(run, below, line) : 0));
}

/** What of all that is below a run is a board, draws, or feeds in: gone through once for a list. */
interface Parts {
  readonly boards: readonly Board[];
  /** The first board of which not all is listed. */
  readonly open: Board | undefined;
  readonly controlled: boolean;
  readonly consumers: readonly (Load | ChargePoint)[];
  readonly feedingIn: readonly (Load | ChargePoint)[];
}
const partsFound = /* @__PURE__ */ new WeakMap<readonly Outlet[], Parts>();
function partsOf(below: readonly Outlet[]): Parts {
  const before = partsFound.get(below);
  if (before) return before;
  const boards = below.flatMap((o) => (o.kind === 'board' ? [o] : []));
  const outlets = below.flatMap((o) => (o.kind === 'board' ? [] : [o]));
  const found = {
    boards,
    open: boards.find(notAll),
    controlled: boards.some((b) => b.control),
    consumers: outlets.filter((o) => !isSource(o)),
    feedingIn: outlets.filter(isSource),
  };
  partsFound.set(below, found);
  return found;
}

function currentOver(run: Run, below: readonly Outlet[], line: Line): Known<number> {
  if (run.feeds.length === 0) return missing(feedsNothing(run));
  const { boards, open, controlled, consumers, feedingIn } = partsOf(below);
  if (open) return missing(notListed(open));
  const sources = sumOf(feedingIn, line);
  if (!controlled) return whenKnown([sumOf(consumers, line), sources], (d, s) => Math.max(d, s));
  let counted: readonly Counted[] = consumers.map((o) => ({
    of: [o],
    drawn: o.lines.includes(line) ? currentOfOutlet(o) : 0,
  }));
  // a board comes before those behind it
  for (const board of [...boards].reverse()) if (board.control) counted = withControl(counted, board, board.control);
  // what feeds in and what draws may each stand alone
  return whenKnown([drawnBy(counted), sources], (d, s) => Math.max(d, s));
}

/**
 * What a run carries on a line at least, whatever demand is declared of it: charge points together, to which no diversity
 * is applied, as far as load controls let them, or the largest of all else that it feeds; of what is known.
 */
export function leastCurrentOf(run: Run, line: Line): number {
  const below = everythingBelow(run);
  const knownOf = (o: Load | ChargePoint): number => {
    const current = o.lines.includes(line) ? currentOfOutlet(o) : 0;
    return isMissing(current) ? 0 : current;
  };
  // one that several hold counts behind the first of them, seen from the origin
  const held = new Set<string>();
  const together = below.flatMap((board) => {
    if (board.kind !== 'board' || !board.control) return [];
    const { controls, limit } = board.control;
    const own = outletsBelow(board).filter((o) => controls.includes(o.id) && !held.has(o.id));
    for (const { id } of own) held.add(id);
    const most = endsOf(limit)?.[1] ?? Number.POSITIVE_INFINITY;
    return [
      Math.min(
        most,
        own.reduce((sum, o) => sum + knownOf(o), 0),
      ),
    ];
  });
  const others: number[] = [0];
  for (const o of below) {
    // of many dwellings on one entry no one is the whole of it
    if (o.kind === 'board' || held.has(o.id) || (o.kind === 'load' && o.dwellings)) continue;
    (o.kind === 'charge-point' ? together : others).push(knownOf(o));
  }
  return Math.max(
    together.reduce((a, b) => a + b, 0),
    ...others,
  );
}

/**
 * Current of a run by what it feeds: the sum of loads and charge-point settings on the line most loaded, without
 * diversity; a load control holds back what it can pause; generation counts where it is the larger.
 */
export function connectedCurrentOf(run: Run): Known<Amperes> {
  const lines = lineCurrentsOf(run, run.lines);
  const worst = whenKnown(lines, (...all) => Math.max(0, ...(all as readonly number[])));
  return isMissing(worst) ? worst : amperes(worst);
}

import { type Fact, factValue, type Gap, isMissing, type Known, known, missing, whenKnown } from '../core/index.js';
import { type Amperes, amperes } from '../units/index.js';
import type { ChargePoint, Dwellings, Line, Load } from './load.js';
import { type Board, everythingBelow, outletsBelow, type Run } from './tree.js';

/** Whether an outlet feeds in rather than draws. */
export const isSource = (o: Load | ChargePoint) => o.kind === 'load' && o.purpose === 'generation';

/**
 * Current of like dwellings that all take their most at once, on the line that has most of them.
 * @param dwellings how many, and what one takes at most
 * @param lines number of line conductors that they are spread over, 1 to 3
 * @returns A per line
 * @example
 * ```ts
 * import { amperes, dwellingsAtOnce, known } from 'ohmwright';
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

/** Current of a load, or setting of a charge point, per line that it is on. */
export const currentOfOutlet = (o: Load | ChargePoint): Known<number> =>
  o.kind === 'load' ? factValue(`current of ${o.id}`, o.current) : factValue(`setting of ${o.id}`, o.setting);

const sumOf = (outlets: readonly (Load | ChargePoint)[], line: Line): Known<number> =>
  whenKnown(outlets.filter((o) => o.lines.includes(line)).map(currentOfOutlet), (...all) =>
    all.reduce<number>((a, b) => a + b, 0),
  );

/** Boards that a run feeds, whose load control acts on what is below them. */
const controlsBelow = (run: Run): readonly NonNullable<Board['control']>[] =>
  everythingBelow(run).flatMap((o) => (o.kind === 'board' && o.control ? [o.control] : []));

/**
 * Current of one line conductor of a run by what it feeds, without diversity: consumers with load controls at their
 * limits, or generation where that is the larger.
 */
export const lineCurrentOf = (run: Run, line: Line): Known<number> => currentOver(run, outletsBelow(run), line);

/** The same of each of several line conductors; none flows in one that the run does not have. */
export function lineCurrentsOf(run: Run, of: readonly Line[]): readonly Known<number>[] {
  const outlets = outletsBelow(run);
  return of.map((line) => (run.lines.includes(line) ? currentOver(run, outlets, line) : 0));
}

function currentOver(run: Run, outlets: readonly (Load | ChargePoint)[], line: Line): Known<number> {
  if (run.feeds.length === 0) return missing(feedsNothing(run));
  const consumers = outlets.filter((o) => !isSource(o));
  const controls = controlsBelow(run);
  const controlled = new Set(controls.flatMap((c) => c.controls));
  const free = sumOf(
    consumers.filter((o) => !controlled.has(o.id)),
    line,
  );
  const held = controls.map((c) =>
    whenKnown(
      [
        sumOf(
          consumers.filter((o) => c.controls.includes(o.id)),
          line,
        ),
        factValue(`limit of ${c.name}`, c.limit),
      ],
      (load, limit) => Math.min(load, limit),
    ),
  );
  const drawn = whenKnown([free, ...held], (...all) => all.reduce<number>((a, b) => a + b, 0));
  // what feeds in and what draws may each stand alone
  return whenKnown([drawn, sumOf(outlets.filter(isSource), line)], (d, s) => Math.max(d, s));
}

/**
 * Current of a run by what it feeds: the sum of loads and charge-point settings on the line most loaded, without
 * diversity; charge points under a load control count with its limit; generation counts where it is the larger.
 */
export function connectedCurrentOf(run: Run): Known<Amperes> {
  const lines = lineCurrentsOf(run, run.lines);
  const worst = whenKnown(lines, (...all) => Math.max(0, ...(all as readonly number[])));
  return isMissing(worst) ? worst : amperes(worst);
}

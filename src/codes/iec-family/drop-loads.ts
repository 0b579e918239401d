import { widened } from '../../calculation/index.js';
import { factValue, isMissing, type Known, type Missing, whenKnown } from '../../core/index.js';
import { own } from '../../core/own.js';
import {
  type ChargePoint,
  currentOfOutlet,
  isFeeder,
  isSource,
  type Line,
  type Load,
  leastCurrentOf,
  lineCurrentsOf,
  type Outlet,
  outletsBelow,
  type Run,
  rangesIn,
  rising,
} from '../../installation/index.js';
import { amperes } from '../../units/index.js';
import type { AssessmentOptions, CircuitCase } from '../wiring-code.js';
import { lengthOf } from './loop-impedance.js';

/** Currents of L1, L2 and L3, A. */
export type LineCurrents = readonly [number, number, number];

/** A piece of a run between two taps, and what flows in it. */
export interface DropSection {
  /** Length, m. */
  readonly length: number;
  /** Current of each line conductor, A. */
  readonly currents: LineCurrents;
}

/** What a run of a path carries. */
export interface RunLoad {
  readonly run: Run;
  readonly options: AssessmentOptions;
  /** Whether it is the circuit itself. */
  readonly itself: boolean;
  /** The line that is followed. */
  readonly followed: Line;
  /** Whether loads are tapped along it. */
  readonly tapped: boolean;
  /** Where its current comes from, in words. */
  readonly by: string;
  /** Current of each line conductor at its origin, A. */
  readonly currents: Known<LineCurrents>;
  /** Pieces between its taps, from the origin; a single one when nothing is tapped on the way. */
  readonly sections: Known<readonly DropSection[]>;
}

const lines: readonly Line[] = ['L1', 'L2', 'L3'];

/** Place of a line conductor: 0 for L1. */
export const placeOf = (line: Line): 0 | 1 | 2 => (line === 'L1' ? 0 : line === 'L2' ? 1 : 2);

const each = (make: (line: Line) => number): LineCurrents => [make('L1'), make('L2'), make('L3')];

/** Currents of a run by line, and where they come from; they only rise with the load below it and its device. */
function currentsOf(
  options: AssessmentOptions,
  run: Run,
  itself: boolean,
  followed: Line,
): Pick<RunLoad, 'by' | 'currents'> {
  const declared = own(options.feederDemand, run.id);
  if (declared !== undefined && isFeeder(run))
    return {
      by: 'declared demand of the feeder, on each of its lines, and no less than its charge points or its largest load',
      currents: each((l) => (run.lines.includes(l) ? Math.max(declared, leastCurrentOf(run, l)) : 0)),
    };
  const loads = whenKnown(lineCurrentsOf(run, lines), (...all) => all as unknown as LineCurrents);
  if (itself) return { by: 'load of the circuit', currents: loads };
  const rating = factValue(`rating of the device of ${run.id}`, run.device.rating);
  if (isMissing(loads))
    return {
      by:
        run.lines.length === 3
          ? `rating of its device, on ${followed} alone: a load below it is not known`
          : 'rating of its device: a load below it is not known',
      currents: whenKnown([rating], (r) => each((l) => (l === followed ? r : 0))),
    };
  return {
    by: 'load below it, at most the rating of its device',
    currents: whenKnown([loads, rating], (all, r) => each((l) => Math.min(all[placeOf(l)], r))),
  };
}

/**
 * Current of a run on the line that is followed, or on all the others together.
 * @param load what the run carries
 * @param which the line itself, or the others
 */
export const currentOn = ({ options, run, itself, followed }: RunLoad, which: 'own' | 'others') =>
  rising(run, (r) => {
    const { currents } = currentsOf(options, r, itself, followed);
    return whenKnown([currents], (all) => {
      const one = all[placeOf(followed)];
      return amperes(which === 'own' ? one : all[0] + all[1] + all[2] - one);
    });
  });

/** Distance of an outlet from the start of its run, m; at its end when nothing else is said. */
const distanceOf = (o: Load | ChargePoint, end: number): number =>
  o.kind === 'load' && o.at !== undefined ? Math.min(o.at, end) : end;

/** An outlet with its place and current. */
export interface Tap {
  readonly outlet: Load | ChargePoint;
  /** Distance from the start of the run, m. */
  readonly at: number;
  /** Current per line used, A. */
  readonly current: number;
}

/** The outlets of a final circuit with their places and currents. */
export function tapsOf(run: Run): Known<readonly Tap[]> {
  const outlets = outletsBelow(run);
  return whenKnown([lengthOf(run), ...outlets.map(currentOfOutlet)], (length, ...currents) =>
    outlets.map((outlet, i) => ({ outlet, at: distanceOf(outlet, length), current: currents[i] as number })),
  );
}

/** Pieces of a final circuit between its taps; nothing but the end is tapped on a ring, where the worst place counts. */
function piecesOf(run: Run, taps: readonly Tap[], length: number): readonly DropSection[] {
  const ends = [...new Set([...taps.map((t) => t.at), length])].sort((a, b) => a - b).filter((end) => end > 0);
  return ends.map((end, i) => {
    const behind = taps.filter((t) => t.at >= end);
    const sum = (of: readonly Tap[], line: Line) =>
      of.filter((t) => t.outlet.lines.includes(line)).reduce((s, t) => s + t.current, 0);
    const drawn = behind.filter((t) => !isSource(t.outlet));
    const fed = behind.filter((t) => isSource(t.outlet));
    return {
      length: end - (ends[i - 1] ?? 0),
      currents: each((l) => (run.lines.includes(l) ? Math.max(sum(drawn, l), sum(fed, l)) : 0)),
    };
  });
}

/** Where something is tapped along a feeder, m. */
const tapOf = (o: Outlet): number | undefined => (o.kind === 'charge-point' ? undefined : o.at);

/**
 * Pieces of a feeder between the boards that are tapped along it: each carries the declared demand of what is tapped beyond,
 * or what is connected there, and no more than the feeder at its origin. Undefined where that is not known to a figure: then
 * it carries all of it to its end.
 */
function piecesOfFeeder(
  run: Run,
  atOrigin: Known<LineCurrents>,
  { demandBeyond }: AssessmentOptions,
): readonly DropSection[] | undefined {
  const length = lengthOf(run);
  if (run.ring || run.feeds.every((o) => tapOf(o) === undefined)) return undefined;
  if (isMissing(length) || isMissing(atOrigin)) return undefined;
  const places = run.feeds.map((o) => Math.min(tapOf(o) ?? length, length));
  const ends = [...new Set([...places, length as number])].sort((a, b) => a - b).filter((end) => end > 0);
  const declared = own(demandBeyond, run.id) ?? [];
  const declaredAt = (end: number): number | undefined =>
    declared.find(({ at }) => Math.abs(Math.min(at ?? length, length) - end) < 1e-9)?.demand;
  const pieces = ends.map((end, i) => {
    const beyond = { ...run, feeds: run.feeds.filter((_, k) => (places[k] as number) >= end) };
    const loads = whenKnown(lineCurrentsOf(beyond, lines), (...all) => all as unknown as LineCurrents);
    const connected = isMissing(loads) ? atOrigin : loads;
    const demand = declaredAt(end);
    // no less than its charge points, to which no diversity is applied, or its largest load
    const bound = each((l) =>
      Math.min(
        connected[placeOf(l)],
        demand === undefined ? Number.POSITIVE_INFINITY : Math.max(demand, leastCurrentOf(beyond, l)),
      ),
    );
    return {
      length: end - (ends[i - 1] ?? 0),
      currents: each((l) => Math.min(atOrigin[placeOf(l)], bound[placeOf(l)])),
    };
  });
  return pieces;
}

/** What a run of the path carries: by line, and piece by piece where loads are tapped along it. */
function loadOf(options: AssessmentOptions, run: Run, itself: boolean, followed: Line): RunLoad {
  const { by, currents } = currentsOf(options, run, itself, followed);
  const length = lengthOf(run);
  const along = isFeeder(run) ? piecesOfFeeder(run, currents, options) : undefined;
  if (along) return { run, options, itself, followed, tapped: true, by, currents, sections: along };
  const tapped = !isFeeder(run) && !run.ring && run.feeds.some((o) => o.kind === 'load' && o.at !== undefined);
  const sections: Known<readonly DropSection[]> = tapped
    ? whenKnown([tapsOf(run), length], (taps, l) => piecesOf(run, taps, l))
    : whenKnown([currents, length], (c, l) => [{ length: l, currents: c }]);
  return { run, options, itself, followed, tapped, by, currents, sections };
}

/** The line conductors of a circuit on which something is connected: a drop is one up to the terminals of a load. */
function linesServed(run: Run): readonly Line[] {
  if (isFeeder(run)) return run.lines;
  const served = run.lines.filter((line) => outletsBelow(run).some((o) => o.lines.includes(line)));
  return served.length > 0 ? served : run.lines;
}

/** All that the drop of a line rests on in its own line conductor: the same text for lines that are loaded alike. */
function loadingOf(run: Run, loads: readonly RunLoad[], line: Line): string {
  const own = (currents: LineCurrents) => currents[placeOf(line)];
  const taps = whenKnown([isFeeder(run) ? [] : tapsOf(run)], (all) =>
    all
      .filter(({ outlet }) => outlet.lines.includes(line))
      .map(({ outlet: o, at, current }) =>
        JSON.stringify([at, current, isSource(o), o.kind === 'load' ? [o.powerFactor ?? 1, o.holds] : []]),
      )
      .sort(),
  );
  const carried = loads.map(({ currents, sections, run: r, options, itself, followed }) => [
    whenKnown([currents], own),
    whenKnown([sections], (all) => all.map((s) => own(s.currents))),
    // what is known only within a range is alike where it is the same fact and alike at both of its ends
    rising(r, (at) => whenKnown([currentsOf(options, at, itself, followed).currents], own)),
  ]);
  return JSON.stringify([carried, taps]);
}

/** A line conductor that is followed from the origin to the end of a circuit. */
export interface FollowedLine {
  readonly line: Line;
  /** Its name, with those of the lines that are loaded exactly as it is. */
  readonly name: string;
  /** What each run of the path carries, the circuit last; a rating that stands in for a load is put on this line. */
  readonly loads: readonly RunLoad[];
  /** Whether the two other lines are loaded alike, so that the phase sequence is of no account. */
  readonly othersAlike: boolean;
  /** Whether they are loaded as this one is. */
  readonly balanced: boolean;
}

/**
 * The line conductors whose drop has to be worked out: every one that serves something, those that are loaded alike
 * once. A line that the circuit itself loads little may still be the worst, by what the feeders ahead of it carry.
 */
export function linesFollowed(circuit: CircuitCase): readonly FollowedLine[] {
  const { run } = circuit;
  const runs = [...circuit.path.feeders, run];
  const { options } = circuit;
  const polyphase = runs.some((r) => r.lines.length > 1);
  const found = new Map<string, FollowedLine>();
  for (const line of linesServed(run)) {
    const loads = runs.map((r) => loadOf(options, r, r === run, line));
    const loading = (of: Line) => (polyphase ? loadingOf(run, loads, of) : '');
    const own = loading(line);
    const alike = found.get(own);
    if (alike) found.set(own, { ...alike, name: `${alike.name}, ${line}` });
    else {
      const [one, other] = lines.filter((l) => l !== line).map(loading);
      found.set(own, { line, name: line, loads, othersAlike: one === other, balanced: one === other && one === own });
    }
  }
  return [...found.values()];
}

/**
 * Cosine and sine of the phase angle of all that a run feeds, where every outlet's power factor is stated; charge
 * points and others whose power factor is not stated leave it open.
 * @param run the run
 * @returns undefined where a power factor or a current is not known; what is missing where it turns with currents that are known within ranges
 */
export function powerFactorOf(run: Run): { readonly cos: number; readonly sin: number } | Missing | undefined {
  const outlets = outletsBelow(run);
  const factors = outlets.map((o) => (o.kind === 'load' ? o.powerFactor : undefined));
  if (factors.includes(undefined)) return undefined;
  const [first] = factors;
  const sine = (cos: number) => Math.sqrt(Math.max(0, 1 - cos ** 2));
  const ranged = rangesIn(run.feeds).length > 0;
  if (ranged && first !== undefined && factors.every((f) => f === first)) return { cos: first, sin: sine(first) };
  let [active, reactive] = [0, 0];
  for (const [i, o] of outlets.entries()) {
    const current = currentOfOutlet(o);
    if (isMissing(current)) return ranged ? widened(current) : undefined;
    active += current * (factors[i] as number);
    reactive += current * sine(factors[i] as number);
  }
  const apparent = Math.hypot(active, reactive);
  return apparent > 0 ? { cos: active / apparent, sin: reactive / apparent } : undefined;
}

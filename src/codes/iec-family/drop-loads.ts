import { factValue, isMissing, type Known, whenKnown } from '../../core/index.js';
import { own } from '../../core/own.js';
import {
  type ChargePoint,
  isSource,
  type Line,
  type Load,
  lineCurrentOf,
  outletsBelow,
  type Run,
} from '../../installation/index.js';
import type { CircuitCase } from '../wiring-code.js';
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

const isFeeder = (run: Run) => run.feeds.some((o) => o.kind === 'board');

/** Currents of a run by line, and where they come from. */
function currentsOf(circuit: CircuitCase, run: Run, followed: Line): Pick<RunLoad, 'by' | 'currents'> {
  const onAll = (current: Known<number>) => whenKnown([current], (c) => each((l) => (run.lines.includes(l) ? c : 0)));
  const declared = own(circuit.options.feederDemand, run.id);
  if (declared !== undefined && isFeeder(run))
    return { by: 'declared demand of the feeder, on each of its lines', currents: onAll(declared) };
  const loads = whenKnown(
    lines.map((line) => (run.lines.includes(line) ? lineCurrentOf(run, line) : 0)),
    (...all) => all as unknown as LineCurrents,
  );
  if (run === circuit.run) return { by: 'load of the circuit', currents: loads };
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

const currentOfOutlet = (o: Load | ChargePoint): Known<number> =>
  o.kind === 'load' ? factValue(`current of ${o.id}`, o.current) : factValue(`setting of ${o.id}`, o.setting);

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

/** What a run of the path carries: by line, and piece by piece where loads are tapped along it. */
function loadOf(circuit: CircuitCase, run: Run, followed: Line): RunLoad {
  const { by, currents } = currentsOf(circuit, run, followed);
  const length = lengthOf(run);
  const tapped = !isFeeder(run) && !run.ring && run.feeds.some((o) => o.kind === 'load' && o.at !== undefined);
  const sections: Known<readonly DropSection[]> = tapped
    ? whenKnown([tapsOf(run), length], (taps, l) => piecesOf(run, taps, l))
    : whenKnown([currents, length], (c, l) => [{ length: l, currents: c }]);
  return { run, by, currents, sections };
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
  const carried = loads.map(({ currents, sections }) => [
    whenKnown([currents], own),
    whenKnown([sections], (all) => all.map((s) => own(s.currents))),
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
}

/**
 * The line conductors whose drop has to be worked out: every one that serves something, those that are loaded alike
 * once. A line that the circuit itself loads little may still be the worst, by what the feeders ahead of it carry.
 */
export function linesFollowed(circuit: CircuitCase): readonly FollowedLine[] {
  const { run } = circuit;
  const runs = [...circuit.path.feeders, run];
  const polyphase = runs.some((r) => r.lines.length > 1);
  const found = new Map<string, FollowedLine>();
  for (const line of linesServed(run)) {
    const loads = runs.map((r) => loadOf(circuit, r, line));
    const loading = (of: Line) => (polyphase ? loadingOf(run, loads, of) : '');
    const alike = found.get(loading(line));
    if (alike) found.set(loading(line), { ...alike, name: `${alike.name}, ${line}` });
    else {
      const [one, other] = lines.filter((l) => l !== line).map(loading);
      found.set(loading(line), { line, name: line, loads, othersAlike: one === other });
    }
  }
  return [...found.values()];
}

/**
 * Cosine and sine of the phase angle of all that a run feeds, where every outlet's power factor is stated; charge
 * points and others whose power factor is not stated leave it open.
 */
export function powerFactorOf(run: Run): { readonly cos: number; readonly sin: number } | undefined {
  const outlets = outletsBelow(run);
  let [active, reactive] = [0, 0];
  for (const o of outlets) {
    const current = currentOfOutlet(o);
    if (o.kind !== 'load' || o.powerFactor === undefined || isMissing(current)) return undefined;
    active += current * o.powerFactor;
    reactive += current * Math.sqrt(Math.max(0, 1 - o.powerFactor ** 2));
  }
  const apparent = Math.hypot(active, reactive);
  return apparent > 0 ? { cos: active / apparent, sin: reactive / apparent } : undefined;
}

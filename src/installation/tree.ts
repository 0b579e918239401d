import type { Fact } from '../core/index.js';
import type { Amperes, Celsius, Metres, Ratio, Seconds, SquareMillimetres } from '../units/index.js';
import type { Cable, Stretch } from './cable.js';
import type { OvercurrentDevice, ResidualDevice, Switch } from './device.js';
import type { ChargePoint, Line, Load } from './load.js';
import type { Supply } from './supply.js';

/** A distribution board or consumer unit, and what leaves it. */
export interface Board {
  readonly kind: 'board';
  /** Unique name within the installation. */
  readonly id: string;
  /** Distance from the start of the feeder at which it is tapped, m; at the end when absent. */
  readonly at?: Metres;
  readonly mainSwitch?: Switch;
  /** Conditional short-circuit rating of the assembly, A. */
  readonly conditionalRating?: Fact<Amperes>;
  /** Rated current of the assembly, A; when absent a plan takes that of its main switch on condition, and nothing else judges it as a whole. */
  readonly rating?: Fact<Amperes>;
  /** Residual current device that serves the whole board, or a part of it that includes every run named. */
  readonly residual?: readonly (ResidualDevice & { readonly serves?: readonly string[] })[];
  /** Whether somebody looked for such devices and found none; not known when absent and none is listed. */
  readonly noResidual?: Fact<boolean>;
  /**
   * Load control that acts on this board. Its limit, A per line, is that of all that the board takes, and of what leaves the
   * tails ahead of it, other loads included: it pauses the points that it names as far as that makes room.
   */
  readonly control?: {
    readonly name: string;
    readonly limit: Fact<Amperes>;
    readonly controls: readonly string[];
    /** Longest time from a rise of other load until points and vehicles have made room, s; not known when absent. */
    readonly reaction?: Fact<Seconds>;
    /** Whether its maker states that at this limit it keeps the device ahead from operating; not known when absent. */
    readonly keepsFuse?: Fact<boolean>;
    /** Current that each point still draws on a line when the control has lost its sensor, A; a plan takes 0 A on condition when absent. */
    readonly fallback?: Fact<Amperes>;
  };
  readonly spareWays?: Fact<number>;
  readonly surgeProtection?: Fact<boolean>;
  /** Of a board behind a feeder: whether it stands in another building than the origin; not known when absent. */
  readonly detached?: Fact<boolean>;
  /** Whether that building has extraneous-conductive-parts; not known when absent. */
  readonly extraneousParts?: Fact<boolean>;
  /** Conductor that bonds them to the earth of the supply, mm²: the smallest on its way; not known when absent. */
  readonly bonding?: Fact<SquareMillimetres>;
  /** Whether every circuit that leaves it is listed; not known when absent, so that its demand, the load of its cable and its spare ways stay open. */
  readonly complete?: Fact<boolean>;
  /** What leaves it: feeders to other boards, circuits to loads and charge points. */
  readonly runs: readonly Run[];
}

/** What a run feeds. */
export type Outlet = Board | Load | ChargePoint;

/** Another way from the same board to the same board, in like cable, with a device of its own. @inline */
export interface WayBeside {
  /** Unique name among the runs of the installation. */
  readonly id: string;
  readonly device: OvercurrentDevice;
  /** Its route, from its origin. */
  readonly stretches: readonly Stretch[];
}

/** A run: device, cable, stretches, and what it feeds. A feeder feeds a board, a circuit feeds loads or charge points. */
export interface Run {
  /** Unique name within the installation. */
  readonly id: string;
  readonly lines: readonly Line[];
  /** Overcurrent device at its origin. */
  readonly device: OvercurrentDevice;
  /** Residual current devices of this run, by position. */
  readonly residual?: readonly ResidualDevice[];
  /** Of an existing run: whether somebody looked for such devices and found none; not known when absent and none is listed. */
  readonly noResidual?: Fact<boolean>;
  readonly ring?: boolean;
  /** Of a feeder to one board: further ways to it in parallel, each with a device of its own; none when absent. */
  readonly beside?: readonly WayBeside[];
  /** Whether it was there before; part of the work when absent. */
  readonly existing?: boolean;
  /** Whether it is out of use and may be disconnected for good, so that its way is free; it is in use when absent. */
  readonly outOfUse?: Fact<boolean>;
  /**
   * Whether it leaves the tails behind a switch-fuse in an enclosure of its own, ahead of the board that lists it; when absent
   * not known of an existing run, and a new one is on a way of that board.
   */
  readonly fromTails?: Fact<boolean>;
  /** Whether somebody followed what is there of it and found no joint out of reach; not known when absent. */
  readonly jointsAccessible?: Fact<boolean>;
  /** Whether it serves a room with a bath or a shower, or passes through zone 1 or 2 of one; not known when absent. */
  readonly bathOrShower?: Fact<boolean>;
  readonly cable: Cable;
  /** The route, from its origin. */
  readonly stretches: readonly Stretch[];
  /** Third-harmonic current as a ratio of the line current; of three-phase runs with a neutral not known when absent. */
  readonly thirdHarmonic?: Fact<Ratio>;
  /** Largest conductor temperature that the terminals at both ends allow, °C; not known when absent. */
  readonly terminalTemperature?: Fact<Celsius>;
  /** What is declared of several charge points that share the circuit, and by whom. */
  readonly pointsShare?: string;
  /** What it feeds; not known when there is nothing in it. */
  readonly feeds: readonly Outlet[];
}

/** Whether a run leaves the tails ahead of the board that lists it: what stands on that board, or is declared of it, is none of its. */
export const leavesTails = ({ fromTails }: Run): boolean => fromTails?.state === 'known' && fromTails.value;
/** Whether nobody knows if a run leaves the tails ahead of that board: what stands on it, or is declared of it, may be none of its. */
export const mayLeaveTails = ({ fromTails, existing }: Run): boolean =>
  fromTails ? fromTails.state === 'unknown' : existing === true;

/** One installation: everything that is rated, drawn, counted or controlled is a projection of this tree. */
export interface Installation {
  readonly supply: Supply;
  /** The board at the origin. */
  readonly board: Board;
}

/** The way from the origin to one run: the boards passed and the feeders between them, then the run itself. */
export interface Path {
  /** Boards from the origin to the one that the run leaves. */
  readonly boards: readonly Board[];
  /** Feeders between those boards. */
  readonly feeders: readonly Run[];
  readonly run: Run;
}

/** A run in the tree, with the board that it leaves and the run that feeds that board. */
interface Node {
  readonly run: Run;
  readonly from: From;
}
/** A board with its way from the origin; runs that leave it share the lists. */
interface From {
  readonly board: Board;
  readonly above?: Node;
  way?: Pick<Path, 'boards' | 'feeders'>;
}

const nodes = /* @__PURE__ */ new WeakMap<Installation, readonly Node[]>();
const byName = /* @__PURE__ */ new WeakMap<Installation, ReadonlyMap<string, Node>>();

/** Every run in the order of the tree, found once for an installation; boards nest as deep as they may. */
function nodesOf(installation: Installation): readonly Node[] {
  const before = nodes.get(installation);
  if (before) return before;
  const found: Node[] = [];
  const leaving = (from: From) => from.board.runs.map((run): Node => ({ run, from })).reverse();
  const open = leaving({ board: installation.board });
  for (let node = open.pop(); node; node = open.pop()) {
    found.push(node);
    for (const outlet of [...node.run.feeds].reverse())
      if (outlet.kind === 'board') open.push(...leaving({ board: outlet, above: node }));
  }
  nodes.set(installation, found);
  return found;
}

function wayTo(from: From): Pick<Path, 'boards' | 'feeders'> {
  if (from.way) return from.way;
  const boards: Board[] = [];
  const feeders: Run[] = [];
  for (let at: From | undefined = from; at; at = at.above?.from) {
    boards.push(at.board);
    if (at.above) feeders.push(at.above.run);
  }
  from.way = { boards: boards.reverse(), feeders: feeders.reverse() };
  return from.way;
}

/** The run of a name, the first of them. */
function nodeNamed(installation: Installation, id: string): Node | undefined {
  let named = byName.get(installation);
  if (!named) {
    named = new Map([...nodesOf(installation)].reverse().map((node) => [node.run.id, node]));
    byName.set(installation, named);
  }
  return named.get(id);
}

const pathTaken = ({ run, from }: Node): Path => ({ ...wayTo(from), run });

/**
 * Every run of an installation with its way from the origin, in the order of the tree.
 * @param installation the installation
 * @returns one path for each run; the runs ahead of it from the origin, and the run itself
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { pathsOf } from 'ohmwright';
 * import { readSurvey } from 'ohmwright/io';
 *
 * pathsOf(readSurvey(survey).installation).map((path) => path.run.id); // => ['lights', 'ring downstairs', 'ring upstairs', 'cooker']
 * ```
 */
export function pathsOf(installation: Installation): readonly Path[] {
  return nodesOf(installation).map(pathTaken);
}

/**
 * The way to the run of this name, or undefined.
 * @param installation the installation
 * @param id name of the run
 * @returns boards and feeders from the origin, and the run; undefined where there is no such run
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { pathTo } from 'ohmwright';
 * import { readSurvey } from 'ohmwright/io';
 *
 * pathTo(readSurvey(survey).installation, 'cooker')?.run.id; // => 'cooker'
 * pathTo(readSurvey(survey).installation, 'sauna'); // => undefined
 * ```
 */
export function pathTo(installation: Installation, id: string): Path | undefined {
  const node = nodeNamed(installation, id);
  return node && pathTaken(node);
}

/** Whether a run feeds boards, or dwellings behind cut-outs of their own: its demand is less than the sum of what is below. */
export const isFeeder = ({ feeds }: Run): boolean =>
  feeds.some((o) => o.kind === 'board' || (o.kind === 'load' && o.dwellings !== undefined));

/** Names of the runs of an installation, in the order of the tree. */
export const runNames = (installation: Installation): readonly string[] =>
  nodesOf(installation).map(({ run }) => run.id);

const belowBoards = /* @__PURE__ */ new WeakMap<Board, readonly Outlet[]>();

/** All that is behind a board; every board below it is gone through once, however often and from where it is asked. */
function belowBoard(board: Board): readonly Outlet[] {
  const before = belowBoards.get(board);
  if (before) return before;
  const order = [board];
  for (const at of order)
    for (const run of at.runs) for (const o of run.feeds) if (o.kind === 'board' && !belowBoards.has(o)) order.push(o);
  for (const at of order.reverse()) belowBoards.set(at, at.runs.flatMap(belowRun));
  return belowBoards.get(board) ?? [];
}
const belowRuns = /* @__PURE__ */ new WeakMap<Run, readonly Outlet[]>();
function belowRun(run: Run): readonly Outlet[] {
  const found = belowRuns.get(run) ?? run.feeds.flatMap((o) => (o.kind === 'board' ? [o, ...belowBoard(o)] : [o]));
  belowRuns.set(run, found);
  return found;
}

/** What boards, loads and charge points are fed through a run or a board, those behind boards among them. */
export const everythingBelow = (from: Run | Board): readonly Outlet[] =>
  'runs' in from ? belowBoard(from) : belowRun(from);

/** Loads and charge points fed through a run or a board, in the order of the tree. */
export const outletsBelow = (from: Run | Board): readonly (Load | ChargePoint)[] =>
  everythingBelow(from).flatMap((o) => (o.kind === 'board' ? [] : [o]));

/** The installation with one run replaced, everything else as it was. */
export function withRun(installation: Installation, id: string, change: (run: Run) => Run): Installation {
  let node = nodeNamed(installation, id);
  if (!node) return installation;
  let changed = change(node.run);
  for (;;) {
    const { run, from }: Node = node;
    const board: Board = { ...from.board, runs: from.board.runs.map((r) => (r === run ? changed : r)) };
    if (!from.above) return { ...installation, board };
    node = from.above;
    changed = { ...node.run, feeds: node.run.feeds.map((o) => (o === from.board ? board : o)) };
  }
}

import type { Fact } from '../core/index.js';
import type { Amperes, Celsius, Ratio, SquareMillimetres } from '../units/index.js';
import type { Cable, Stretch } from './cable.js';
import type { OvercurrentDevice, ResidualDevice, Switch } from './device.js';
import type { ChargePoint, Line, Load } from './load.js';
import type { Supply } from './supply.js';

/** A distribution board or consumer unit, and what leaves it. */
export interface Board {
  readonly kind: 'board';
  /** Unique name within the installation. */
  readonly id: string;
  readonly mainSwitch?: Switch;
  /** Conditional short-circuit rating of the assembly, A. */
  readonly conditionalRating?: Fact<Amperes>;
  /** Rated current of the assembly, A. */
  readonly rating?: Fact<Amperes>;
  /** Residual current device that serves the whole board, or a part of it that includes every run named. */
  readonly residual?: readonly (ResidualDevice & { readonly serves?: readonly string[] })[];
  /** Limit of a load control that acts on this board, by name, A per line. */
  readonly control?: { readonly name: string; readonly limit: Fact<Amperes>; readonly controls: readonly string[] };
  readonly spareWays?: Fact<number>;
  readonly surgeProtection?: Fact<boolean>;
  /** Of a board behind a feeder: whether it stands in another building than the origin; not known when absent. */
  readonly detached?: Fact<boolean>;
  /** Whether that building has extraneous-conductive-parts; not known when absent. */
  readonly extraneousParts?: Fact<boolean>;
  /** Conductor that bonds them to the earth of the supply, mm²: the smallest on its way; not known when absent. */
  readonly bonding?: Fact<SquareMillimetres>;
  /** Whether every circuit that leaves it is listed; not known when absent, so that its demand and its spare ways stay open. */
  readonly complete?: Fact<boolean>;
  /** What leaves it: feeders to other boards, circuits to loads and charge points. */
  readonly runs: readonly Run[];
}

/** What a run feeds. */
export type Outlet = Board | Load | ChargePoint;

/** A run: device, cable, stretches, and what it feeds. A feeder feeds a board, a circuit feeds loads or charge points. */
export interface Run {
  /** Unique name within the installation. */
  readonly id: string;
  readonly lines: readonly Line[];
  /** Overcurrent device at its origin. */
  readonly device: OvercurrentDevice;
  /** Residual current devices of this run, by position. */
  readonly residual?: readonly ResidualDevice[];
  readonly ring?: boolean;
  readonly existing?: boolean;
  /** Whether it serves a room with a bath or a shower, or passes through zone 1 or 2 of one; not known when absent. */
  readonly bathOrShower?: Fact<boolean>;
  readonly cable: Cable;
  /** The route, from its origin. */
  readonly stretches: readonly Stretch[];
  /** Third-harmonic current as a ratio of the line current, for three-phase runs with a neutral. */
  readonly thirdHarmonic?: Fact<Ratio>;
  /** Largest conductor temperature that the terminals at both ends allow, °C; not known when absent. */
  readonly terminalTemperature?: Fact<Celsius>;
  /** What is declared of several charge points that share the circuit, and by whom. */
  readonly pointsShare?: string;
  /** What it feeds; not known when there is nothing in it. */
  readonly feeds: readonly Outlet[];
}

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
  const walk = (board: Board, boards: readonly Board[], feeders: readonly Run[]): Path[] =>
    board.runs.flatMap((run) => {
      const here = [...boards, board];
      const below = run.feeds.flatMap((o) => (o.kind === 'board' ? walk(o, here, [...feeders, run]) : []));
      return [{ boards: here, feeders, run }, ...below];
    });
  return walk(installation.board, [], []);
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
  return pathsOf(installation).find((p) => p.run.id === id);
}

/** Loads and charge points fed through a run or a board, in the order of the tree. */
export function outletsBelow(from: Run | Board): readonly (Load | ChargePoint)[] {
  if ('runs' in from) return from.runs.flatMap(outletsBelow);
  return from.feeds.flatMap((o) => (o.kind === 'board' ? outletsBelow(o) : [o]));
}

/** The installation with one run replaced, everything else as it was. */
export function withRun(installation: Installation, id: string, change: (run: Run) => Run): Installation {
  const inBoard = (board: Board): Board => ({
    ...board,
    runs: board.runs.map((run) => {
      const below: Run = { ...run, feeds: run.feeds.map((o) => (o.kind === 'board' ? inBoard(o) : o)) };
      return run.id === id ? change(below) : below;
    }),
  });
  return { ...installation, board: inBoard(installation.board) };
}

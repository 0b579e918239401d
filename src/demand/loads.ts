import { type Fact, type Gap, known } from '../core/index.js';
import {
  type Board,
  type ChargePoint,
  type Dwellings,
  everythingBelow,
  type Installation,
  type Line,
  type Load,
  lineConductors,
  linesOfSupply,
  type Purpose,
  pathsOf,
  type Run,
  refuseUnsound,
} from '../installation/index.js';
import { type Amperes, amperes, type Problem } from '../units/index.js';

/** A load as the demand methods see it. @inline */
export interface DemandLoad {
  readonly id: string;
  readonly purpose: Purpose;
  /** Connected load, A per line used; of a range the upper end. */
  readonly current: Fact<Amperes>;
  readonly lines: readonly Line[];
  /** Name of the run that feeds it. */
  readonly circuit: string;
  /** Names of the boards on the way, from the origin. */
  readonly boards: readonly string[];
  /** Whether a cooker unit has a socket-outlet, or nobody says that it has none. */
  readonly withSocket: boolean;
  /** Whether its circuit is a standard final circuit, where the survey says so. */
  readonly standardCircuit: boolean | undefined;
  /** Whether it is yet to be connected, or nobody says that it was there: no meter has seen it. */
  readonly isNew: boolean;
  /** Whether it is said to be yet to be connected: what is not may have hidden something from a meter. */
  readonly hidNothing: boolean;
  /** Where it stands for dwellings: how many, and of what kind. */
  readonly dwellings?: Dwellings;
}

/** A charge point as the demand methods see it. @inline */
export interface DemandPoint {
  readonly id: string;
  /** Largest current that it is set to, A per line. */
  readonly setting: Fact<Amperes>;
  readonly lines: readonly Line[];
  /** Names of the boards on the way, from the origin. */
  readonly boards: readonly string[];
  /** Smallest current that it offers, A. */
  readonly minimum?: Amperes;
  /** Whether it can feed back; not known when undefined. */
  readonly bidirectional: boolean | undefined;
  readonly isNew: boolean;
  readonly hidNothing: boolean;
}

/** A load control that acts on a board. @inline */
export interface DemandControl {
  readonly name: string;
  readonly board: string;
  /** Limit, A per line. */
  readonly limit: Fact<Amperes>;
  /** Names of the charge points that it can hold back. */
  readonly controls: readonly string[];
}

/** The loads of an installation as the demand methods see them: one projection of the tree. @inline */
export interface DemandCase {
  readonly installation: Installation;
  /** Line conductors of the supply; those in use where their number is not known. */
  readonly lines: readonly Line[];
  /** Loads, stores included; generation is not among them. */
  readonly loads: readonly DemandLoad[];
  readonly points: readonly DemandPoint[];
  /** Sources of electricity, stores included. */
  readonly sources: readonly DemandLoad[];
  readonly controls: readonly DemandControl[];
  /** What keeps the list of loads from being the whole: boards of which nobody says so, and runs that feed nothing. */
  readonly unlisted: readonly Gap[];
}

/** Of a range the upper end: a demand is never taken lower than it may be. */
const upper = (fact: Fact<Amperes>): Fact<Amperes> =>
  fact.state === 'between' ? known(fact.most, `${fact.by ?? 'survey'}, upper end of the range`) : fact;

interface Walk {
  readonly voltage: number;
  readonly loads: DemandLoad[];
  readonly points: DemandPoint[];
  readonly sources: DemandLoad[];
  readonly controls: DemandControl[];
  readonly unlisted: Gap[];
}

/** What nobody says was there is part of the work; what nobody says is part of it may have been there. */
const standing = ({ existing }: Run) => ({ isNew: existing !== true, hidNothing: existing === false });

function addLoad(walk: Walk, load: Load, run: Run, boards: readonly string[]): void {
  const current = upper(load.current);
  const { id, purpose, lines } = load;
  if (purpose === 'charge-point') {
    walk.points.push({ id, setting: current, lines, boards, bidirectional: undefined, ...standing(run) });
    return;
  }
  const found: DemandLoad = {
    id,
    purpose,
    current,
    lines,
    circuit: run.id,
    boards,
    withSocket: purpose === 'cooking' ? load.withSocket !== false : load.withSocket === true,
    standardCircuit: load.standardCircuit,
    ...standing(run),
    ...(load.dwellings ? { dwellings: load.dwellings } : {}),
  };
  if (purpose !== 'generation') walk.loads.push(found);
  if (purpose === 'generation' || purpose === 'storage') walk.sources.push(found);
}

function addPoint(walk: Walk, point: ChargePoint, run: Run, boards: readonly string[]): void {
  const setting =
    point.setting.state === 'unknown' && point.power !== undefined
      ? known(
          amperes(point.power / (walk.voltage * point.lines.length)),
          `rated power ${point.power} W at ${walk.voltage} V`,
        )
      : upper(point.setting);
  walk.points.push({
    id: point.id,
    setting,
    lines: point.lines,
    boards,
    bidirectional: point.bidirectional,
    ...standing(run),
    ...(point.minimum === undefined ? {} : { minimum: point.minimum }),
  });
}

const everyCircuit = 'list every circuit that leaves it with what it feeds, and say that the list is complete';

/** What nobody says of the circuits of a board. */
const unlistedOf = (board: Board): readonly Gap[] => [
  ...(board.complete?.state === 'known' && board.complete.value
    ? []
    : [
        {
          kind: 'fact' as const,
          fact: `circuits of ${board.id}`,
          obtain: (board.complete?.state === 'unknown' ? board.complete.obtain : undefined) ?? everyCircuit,
        },
      ]),
  ...board.runs.flatMap((run): readonly Gap[] =>
    run.feeds.length > 0
      ? []
      : [{ kind: 'fact', fact: `what ${run.id} feeds`, obtain: 'follow the circuit to its loads' }],
  ),
];

/** The loads, charge points, sources and load controls of an installation, as the demand methods see them. */
export function demandCase(installation: Installation, besides: readonly Problem[] = []): DemandCase {
  refuseUnsound(installation, besides);
  const { supply, board } = installation;
  const walk: Walk = { voltage: supply.nominalVoltage, loads: [], points: [], sources: [], controls: [], unlisted: [] };
  for (const { boards, run } of pathsOf(installation)) {
    const way = boards.map((b) => b.id);
    for (const outlet of run.feeds) {
      if (outlet.kind === 'load') addLoad(walk, outlet, run, way);
      if (outlet.kind === 'charge-point') addPoint(walk, outlet, run, way);
    }
  }
  for (const at of [board, ...everythingBelow(board)])
    if (at.kind === 'board') {
      walk.unlisted.push(...unlistedOf(at));
      if (at.control) walk.controls.push({ ...at.control, board: at.id, limit: upper(at.control.limit) });
    }
  const { loads, points, sources, controls, unlisted } = walk;
  const { phases } = supply;
  const used = (line: Line) => loads.some((l) => l.lines.includes(line)) || points.some((p) => p.lines.includes(line));
  const lines = phases.state === 'known' ? linesOfSupply(installation) : lineConductors.filter(used);
  return { installation, lines, loads, points, sources, controls, unlisted };
}

import { type Fact, type Gap, known } from '../core/index.js';
import {
  type Board,
  type ChargePoint,
  type Installation,
  type Line,
  type Load,
  lineConductors,
  type Purpose,
  purposes,
  type Run,
} from '../installation/index.js';
import { type Amperes, amperes, invalidInput, type Problem } from '../units/index.js';

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
  /** Whether a cooker unit has a socket-outlet. */
  readonly withSocket: boolean;
  /** Whether its circuit is a standard final circuit, where the survey says so. */
  readonly standardCircuit: boolean | undefined;
  /** Whether it is yet to be connected, so that no meter has seen it. */
  readonly isNew: boolean;
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
  readonly bidirectional: boolean;
  readonly isNew: boolean;
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

type Where = readonly (string | number)[];

interface Walk {
  readonly lines: readonly Line[];
  readonly voltage: number;
  readonly loads: DemandLoad[];
  readonly points: DemandPoint[];
  readonly sources: DemandLoad[];
  readonly controls: DemandControl[];
  readonly unlisted: Gap[];
  readonly problems: Problem[];
  readonly ids: Set<string>;
}

function checkCurrent(walk: Walk, fact: Fact<Amperes> | undefined, path: () => Where, above = false): void {
  const wrong = (value: unknown, key: string) => {
    if (typeof value === 'number' && Number.isFinite(value) && value >= 0 && !(above && value === 0)) return;
    const range = above ? 'above 0 A' : '0 A and up';
    walk.problems.push({
      path: [...path(), key],
      message: `is ${String(value)} A; a current is a finite number, ${range}`,
    });
  };
  if (fact?.state === 'known') wrong(fact.value, 'value');
  else if (fact?.state === 'between') {
    wrong(fact.least, 'least');
    wrong(fact.most, 'most');
    if (fact.least > fact.most)
      walk.problems.push({ path: path(), message: 'is a range whose ends are the wrong way round' });
  } else if (fact?.state !== 'unknown')
    walk.problems.push({ path: path(), message: 'is neither known, nor a range, nor unknown' });
}

function checkLines(walk: Walk, lines: readonly Line[], within: readonly Line[] | undefined, path: () => Where): void {
  if (!Array.isArray(lines) || lines.length === 0) {
    walk.problems.push({ path: [...path(), 'lines'], message: 'names no line conductor' });
    return;
  }
  for (let i = 0; i < lines.length; i++) {
    const line = lines[i] as Line;
    const say = (message: string) => walk.problems.push({ path: [...path(), 'lines', i], message });
    if (!walk.lines.includes(line)) say(`is ${line}; the supply has ${walk.lines.join(', ')}`);
    else if (within && !within.includes(line)) say(`is ${line}, which its circuit does not have`);
    if (lines.indexOf(line) !== i) say(`names ${line} twice`);
  }
}

/** Names are unique by kind: a circuit may be called what its load is called. */
function checkId(walk: Walk, kind: 'board' | 'run' | 'outlet', id: string, path: () => Where): void {
  const name = `${kind} ${id}`;
  if (typeof id !== 'string' || id === '') walk.problems.push({ path: [...path(), 'id'], message: 'is empty' });
  else if (walk.ids.has(name)) walk.problems.push({ path: [...path(), 'id'], message: `${id} is used twice` });
  walk.ids.add(name);
}

function addLoad(walk: Walk, load: Load, run: Run, boards: readonly string[], path: () => Where): void {
  if (!purposes.includes(load.purpose as Purpose))
    walk.problems.push({
      path: [...path(), 'purpose'],
      message: `${String(load.purpose)} is not known; known are ${purposes.join(', ')}`,
    });
  checkCurrent(walk, load.current, () => [...path(), 'current']);
  checkLines(walk, load.lines, run.lines, path);
  if (walk.problems.length > 0) return;
  const current = upper(load.current);
  const { id, purpose, lines } = load;
  if (purpose === 'charge-point') {
    walk.points.push({ id, setting: current, lines, boards, bidirectional: false, isNew: run.existing !== true });
    return;
  }
  const found: DemandLoad = {
    id,
    purpose,
    current,
    lines,
    circuit: run.id,
    boards,
    withSocket: load.withSocket === true,
    standardCircuit: load.standardCircuit,
    isNew: run.existing === false,
  };
  if (purpose !== 'generation') walk.loads.push(found);
  if (purpose === 'generation' || purpose === 'storage') walk.sources.push(found);
}

function addPoint(walk: Walk, point: ChargePoint, run: Run, boards: readonly string[], path: () => Where): void {
  checkCurrent(walk, point.setting, () => [...path(), 'setting'], true);
  checkLines(walk, point.lines, run.lines, path);
  if (point.power !== undefined && !(point.power > 0 && Number.isFinite(point.power)))
    walk.problems.push({ path: [...path(), 'power'], message: `is ${point.power} W; a rating is above 0 W` });
  if (walk.problems.length > 0) return;
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
    bidirectional: point.bidirectional === true,
    isNew: run.existing !== true,
    ...(point.minimum === undefined ? {} : { minimum: point.minimum }),
  });
}

const everyCircuit = 'list every circuit that leaves it with what it feeds, and say that the list is complete';

function addBoard(walk: Walk, board: Board, above: readonly string[], path: () => Where): void {
  checkId(walk, 'board', board.id, path);
  const boards = [...above, board.id];
  const seen = walk.points.length;
  if (board.complete?.state !== 'known' || !board.complete.value)
    walk.unlisted.push({
      kind: 'fact',
      fact: `circuits of ${board.id}`,
      obtain:
        board.complete?.state === 'unknown' && board.complete.obtain !== undefined
          ? board.complete.obtain
          : everyCircuit,
    });
  board.runs.forEach((run, i) => {
    const at = () => [...path(), 'runs', i];
    checkId(walk, 'run', run.id, at);
    checkLines(walk, run.lines, undefined, at);
    checkCurrent(walk, run.device?.rating, () => [...at(), 'device', 'rating'], true);
    if (run.feeds.length === 0)
      walk.unlisted.push({ kind: 'fact', fact: `what ${run.id} feeds`, obtain: 'follow the circuit to its loads' });
    run.feeds.forEach((outlet, j) => {
      const here = () => [...at(), 'feeds', j];
      if (outlet.kind === 'board') addBoard(walk, outlet, boards, here);
      else checkId(walk, 'outlet', outlet.id, here);
      if (outlet.kind === 'load') addLoad(walk, outlet, run, boards, here);
      if (outlet.kind === 'charge-point') addPoint(walk, outlet, run, boards, here);
    });
  });
  if (board.control) addControl(walk, board, board.control, seen, () => [...path(), 'control']);
}

function addControl(
  walk: Walk,
  board: Board,
  control: NonNullable<Board['control']>,
  seen: number,
  path: () => Where,
): void {
  if (typeof control.name !== 'string' || control.name.trim() === '')
    walk.problems.push({ path: [...path(), 'name'], message: 'is empty: a load control counts only by its name' });
  checkCurrent(walk, control.limit, () => [...path(), 'limit'], true);
  if (walk.problems.length > 0) return;
  const below = new Set(walk.points.slice(seen).map((p) => p.id));
  control.controls.forEach((id, i) => {
    if (!below.has(id))
      walk.problems.push({ path: [...path(), 'controls', i], message: `${id} is no charge point below this board` });
  });
  walk.controls.push({ name: control.name, board: board.id, limit: upper(control.limit), controls: control.controls });
}

/** The loads, charge points, sources and load controls of an installation, as the demand methods see them. */
export function demandCase(installation: Installation): DemandCase {
  const { supply, board } = installation;
  const phases = supply.phases.state === 'known' ? supply.phases.value : undefined;
  const walk: Walk = {
    lines: phases === 1 ? [lineConductors[0]] : lineConductors,
    voltage: supply.nominalVoltage,
    loads: [],
    points: [],
    sources: [],
    controls: [],
    unlisted: [],
    problems: [],
    ids: new Set(),
  };
  if (phases !== undefined && phases !== 1 && phases !== 3)
    walk.problems.push({ path: ['supply', 'phases', 'value'], message: `is ${String(phases)}; a supply has 1 or 3` });
  if (!(supply.nominalVoltage > 0 && Number.isFinite(supply.nominalVoltage)))
    walk.problems.push({ path: ['supply', 'nominalVoltage'], message: 'is not above 0 V' });
  checkCurrent(walk, supply.cutOut?.rating, () => ['supply', 'cutOut', 'rating'], true);
  if (supply.meteredDemand)
    checkCurrent(walk, supply.meteredDemand.current, () => ['supply', 'meteredDemand', 'current']);
  if (board.mainSwitch) checkCurrent(walk, board.mainSwitch.rating, () => ['board', 'mainSwitch', 'rating'], true);
  addBoard(walk, board, [], () => ['board']);
  if (walk.problems.length > 0) throw invalidInput('the installation', walk.problems);
  const { loads, points, sources, controls, unlisted } = walk;
  const used = (line: Line) => loads.some((l) => l.lines.includes(line)) || points.some((p) => p.lines.includes(line));
  const lines = phases === undefined ? lineConductors.filter(used) : walk.lines;
  return { installation, lines, loads, points, sources, controls, unlisted };
}

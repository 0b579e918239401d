/** The facts of a circuit, read once from the installation for the judgement by hand: every one is known. */
import type {
  Board,
  ChargePoint,
  Fact,
  Installation,
  Load,
  OvercurrentDevice,
  ResidualDevice,
  Run,
} from '../../src/index.js';
import { type BySize, flatProtective, insulations, resistances, type Steps, tripBands } from './by-hand-tables.js';

export function known<T>(fact: Fact<T> | undefined): T {
  if (fact?.state !== 'known') throw new Error('by hand, every fact is known');
  return fact.value;
}

/** The cell for a cross-section. */
export const cell = (cells: BySize | undefined, size: number): number => cells?.get(size) ?? Number.NaN;

/** The cell of the first step that is not below a key. */
export function step({ upTo, cells }: Steps, key: number): number {
  for (let i = 0; i < upTo.length; i++) if (key <= (upTo[i] as number)) return cells[i] as number;
  return Number.NaN;
}

type Outlet = Load | ChargePoint;

export const isPoint = (o: Outlet): o is ChargePoint => o.kind === 'charge-point';

export const isSocket = (o: Outlet | Board): boolean =>
  o.kind === 'load' && (o.purpose === 'socket-outlets' || o.withSocket === true);

export const isLighting = (o: Outlet | Board): boolean => o.kind === 'load' && o.purpose === 'lighting';

/** Loads and charge points behind a run. */
export function outletsBelow(run: Run): Outlet[] {
  const outlets: Outlet[] = [];
  for (const o of run.feeds)
    if (o.kind === 'board') for (const below of o.runs) outlets.push(...outletsBelow(below));
    else outlets.push(o);
  return outlets;
}

/** Current of a run by what is behind it, A. */
export function loadOf(run: Run): number {
  let sum = 0;
  for (const o of outletsBelow(run)) sum += known(o.kind === 'load' ? o.current : o.setting);
  return sum;
}

/** The conductors of a run at 20 °C. */
export interface Conductors {
  readonly length: number;
  readonly area: number;
  readonly protectiveArea: number;
  /** Resistance of the line conductor, Ω; the neutral has the same. */
  readonly line: number;
  /** Resistance of the protective conductor, Ω. */
  readonly protective: number;
  /** Reactance of both together, Ω; neglected up to 16 mm². */
  readonly reactance: number;
  /** Temperature in operation, °C. */
  readonly operating: number;
  /** Factor k of the adiabatic equation. */
  readonly k: number;
}

function conductorsOf({ cable, stretches }: Run): Conductors {
  if (cable.insulation === 'thermosetting-60') throw new Error('by hand, two insulations only');
  const { operating, k } = insulations[cable.insulation];
  const area = known(cable.area);
  const protectiveArea = cable.protective === 'bare-core' ? cell(flatProtective, area) : area;
  let length = 0;
  for (const s of stretches) length += known(s.length);
  return {
    length,
    area,
    protectiveArea,
    line: (cell(resistances, area) / 1000) * length,
    protective: (cell(resistances, protectiveArea) / 1000) * length,
    reactance: area > 16 ? 0.16e-3 * length : 0,
    operating,
    k,
  };
}

/** A resistance at 20 °C, Ω, at another temperature, °C. */
export const at = (temperature: number, cold: number) => cold * (1 + 0.004 * (temperature - 20));

/** Impedance of resistance and reactance in series, Ω. */
export const impedance = (r: number, x: number) => Math.sqrt(r * r + x * x);

/** The instantaneous trip of a circuit-breaker, A: the lower edge of its band, and the upper one. */
export function tripOf(device: OvercurrentDevice): readonly [holds: number, trips: number] {
  const kind = known(device.kind);
  if (kind.standard !== 'EN 60898' && kind.standard !== 'EN 61009') throw new Error('by hand, circuit-breakers only');
  const [lower, upper] = tripBands[kind.type];
  const rating = known(device.rating);
  return [lower * rating, upper * rating];
}

/** A residual current device ahead of the circuit, with the charge points whose current passes it. */
export interface Upstream {
  readonly device: ResidualDevice;
  readonly points: readonly ChargePoint[];
  /** Whether it serves one outlet alone. */
  readonly alone: boolean;
}

const behind = (device: ResidualDevice, outlets: readonly Outlet[]): Upstream => ({
  device,
  points: outlets.filter(isPoint),
  alone: outlets.length <= 1,
});
const opens = (r: ResidualDevice) => r.position === 'origin-of-circuit' || r.position === 'origin-of-installation';

function residualUpstream(boards: readonly Board[], runs: readonly Run[]): Upstream[] {
  const found: Upstream[] = [];
  boards.forEach((board, i) => {
    const leaving = runs[i] as Run;
    for (const device of board.residual ?? []) {
      const { serves } = device;
      if (serves && !serves.includes(leaving.id)) continue;
      const served = serves ? board.runs.filter((r) => serves.includes(r.id)) : board.runs;
      found.push(behind(device, served.flatMap(outletsBelow)));
    }
    for (const device of leaving.residual ?? []) if (opens(device)) found.push(behind(device, outletsBelow(leaving)));
  });
  return found;
}

/** The boards and runs from the origin to a circuit, the circuit last. */
interface Way {
  readonly boards: readonly Board[];
  readonly runs: readonly Run[];
}

function wayTo(board: Board, id: string, above: Way): Way | undefined {
  const boards = [...above.boards, board];
  for (const run of board.runs) {
    const here = { boards, runs: [...above.runs, run] };
    if (run.id === id) return here;
    for (const outlet of run.feeds)
      if (outlet.kind === 'board') {
        const found = wayTo(outlet, id, here);
        if (found) return found;
      }
  }
  return undefined;
}

/** A circuit with everything that is read of it more than once. */
export interface Circuit extends Way {
  readonly installation: Installation;
  readonly run: Run;
  readonly board: Board;
  readonly feeders: readonly Run[];
  /** Conductors of every run of the way. */
  readonly conductors: readonly Conductors[];
  /** Conductors of the circuit itself. */
  readonly own: Conductors;
  readonly points: readonly ChargePoint[];
  readonly upstream: readonly Upstream[];
  readonly nominal: number;
  readonly externalImpedance: number;
  readonly designCurrent: number;
  readonly rating: number;
}

export function circuitOf(installation: Installation, id: string): Circuit {
  const way = wayTo(installation.board, id, { boards: [], runs: [] });
  if (!way) throw new Error(`there is no circuit ${id}`);
  const { boards, runs } = way;
  const run = runs.at(-1) as Run;
  const conductors = runs.map(conductorsOf);
  return {
    installation,
    boards,
    runs,
    run,
    board: boards.at(-1) as Board,
    feeders: runs.slice(0, -1),
    conductors,
    own: conductors.at(-1) as Conductors,
    points: outletsBelow(run).filter(isPoint),
    upstream: residualUpstream(boards, runs),
    nominal: installation.supply.nominalVoltage,
    externalImpedance: known(installation.supply.externalImpedance),
    designCurrent: loadOf(run),
    rating: known(run.device.rating),
  };
}

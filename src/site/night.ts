import {
  type ChargingNetwork,
  type ChargingSession,
  type NetworkNode,
  type PerLine,
  type Simulation,
  type SimulationSeries,
  simulate,
} from '../charging/index.js';
import { type Fact, factValue, type Gap, isMissing, type Known, whenKnown } from '../core/index.js';
import type { Adequacy, Demand, FeederDemand } from '../demand/index.js';
import { type Board, type ChargePoint, type Installation, type Line, pathTo } from '../installation/index.js';
import { type Amperes, amperes, type Seconds, seconds, type WattHours, wattHours } from '../units/index.js';
import { stayOf } from './stay.js';
import type { Survey, VehicleNeed } from './survey.js';

/** How charging a vehicle goes in a night. */
export interface Charged {
  /** Time from plugging in until the battery has what it needs, s; absent where it never has. */
  readonly after?: Seconds;
  /** What the battery lacks when the vehicle leaves, Wh. */
  readonly missing: WattHours;
  /** Time in which the vehicle waits without current, s. */
  readonly waited: Seconds;
}

/** The night of one vehicle. */
export interface VehicleNight {
  /** Name of the point. */
  readonly point: string;
  /** Time between plugging in and leaving, s. */
  readonly window: Seconds;
  /** With everything but the vehicles at rest. */
  readonly quiet: Charged;
  /** While everything else draws its maximum demand throughout; absent where that is not known. */
  readonly busy?: Charged;
}

/** Load of a night at one place, stacked by vehicle: what a picture of it shows. */
export interface NightLoad {
  /** Where, and on which line. */
  readonly place: string;
  /** Begin of each step, minutes since midnight of the first day. */
  readonly minutes: readonly number[];
  /** From the bottom up: everything else, then each vehicle by its point; A in each step. */
  readonly bands: readonly { readonly name: string; readonly current: readonly number[] }[];
  /** The limit there, A. */
  readonly limit: number;
  /** The load control that holds it, or the cut-out, which holds nothing back. */
  readonly limitBy: string;
}

/** A night in which all vehicles charge: plain data. */
export interface Night {
  /** The vehicles, in the order of their points. */
  readonly vehicles: readonly VehicleNight[];
  /** What it takes for granted. */
  readonly about: readonly string[];
  /** Load where it comes nearest to its limit, while everything else draws its maximum demand. */
  readonly load?: NightLoad;
  /** Why vehicles are left out, or the demand of everything else. */
  readonly gaps: readonly Gap[];
}

/** Length of a step, s. */
const STEP = seconds(300);
/** Smallest current of charging by IEC 61851-1, A. */
const LEAST = 6;
const LINES: readonly Line[] = ['L1', 'L2', 'L3'];

const perLine = (of: (line: Line) => number): PerLine => [amperes(of('L1')), amperes(of('L2')), amperes(of('L3'))];

/** A vehicle at its point, everything about it known. */
interface Vehicle {
  readonly point: ChargePoint;
  readonly boards: readonly Board[];
  /** Boards whose load control holds the point. */
  readonly held: readonly Board[];
  /** Current that point and vehicle share, A. */
  readonly current: Amperes;
  readonly lines: 1 | 2 | 3;
  /** Energy at the point, Wh. */
  readonly energy: WattHours;
  readonly efficiency: number;
  readonly arrives: Seconds;
  readonly window: Seconds;
}

/** The careful end of a range. */
const least = <T extends number>(name: string, fact: Fact<T>): Known<T> =>
  fact.state === 'between' ? fact.least : factValue(name, fact);
const most = <T extends number>(name: string, fact: Fact<T>): Known<T> =>
  fact.state === 'between' ? fact.most : factValue(name, fact);

function vehicleOf(installation: Installation, runId: string, point: ChargePoint, need: VehicleNeed): Known<Vehicle> {
  const of = (what: string) => `${what} of the vehicle at ${point.id}`;
  const boards = pathTo(installation, runId)?.boards ?? [];
  return whenKnown(
    [
      least(`setting of ${point.id}`, point.setting),
      least(of('on-board current'), need.onBoardCurrent),
      least(of('on-board line conductors'), need.onBoardPhases),
      most(of('energy needed'), need.energy),
      least(of('efficiency'), need.efficiency),
    ],
    (setting, onBoard, lines, energy, efficiency): Vehicle => ({
      point,
      boards,
      held: boards.filter((b) => b.control?.controls.includes(point.id)),
      current: amperes(Math.min(setting, onBoard)),
      lines: Math.min(lines, point.lines.length) as 1 | 2 | 3,
      energy: wattHours(energy / efficiency),
      efficiency,
      ...stayOf(need),
    }),
  );
}

/** Lines that a vehicle uses. */
const used = ({ point, lines }: Vehicle): readonly Line[] => point.lines.slice(0, lines);

const limitOf = (board: Board): Known<Amperes> | undefined =>
  board.control && least(`limit of ${board.control.name}`, board.control.limit);

/** Vehicles that charge, and why others are left out: a facts open, or shared with one whose facts are. */
function vehiclesOf(survey: Survey, installation: Installation): { vehicles: readonly Vehicle[]; gaps: Gap[] } {
  const gaps: Gap[] = [];
  const open = new Set<string>();
  const known: Vehicle[] = [];
  for (const { run, vehicle } of survey.wanted)
    for (const point of run.feeds) {
      if (point.kind !== 'charge-point' || !vehicle) continue;
      const found = vehicleOf(installation, run.id, point, vehicle);
      const limits = isMissing(found) ? [found] : found.held.map(limitOf);
      const missing = limits.filter(isMissing);
      gaps.push(...missing.flatMap((m) => m.missing));
      if (missing.length === 0 && !isMissing(found)) known.push(found);
      else for (const b of pathTo(installation, run.id)?.boards ?? []) open.add(b.id);
    }
  return { vehicles: known.filter((v) => !v.held.some((b) => open.has(b.id))), gaps };
}

/** What everything else draws on a line at a board and all behind it, A. */
type Existing = (board: Board, line: Line) => Known<Amperes>;

function existingOf(installation: Installation, supply: Adequacy, feeders: readonly FeederDemand[]): Existing {
  const on = ({ governing }: Demand, line: Line): Known<Amperes> =>
    governing.lines.find((l) => l.line === line)?.existing ??
    (governing.lines.length > 0 ? amperes(0) : { missing: governing.gaps ?? [] });
  const feederOf = (board: Board) =>
    feeders.find((f) => pathTo(installation, f.run)?.run.feeds.some((o) => o.kind === 'board' && o.id === board.id));
  return (board, line) =>
    board.id === installation.board.id ? on(supply.demand, line) : on(feederOf(board)?.demand ?? supply.demand, line);
}

/** Vehicles that no load control holds charge as they like. */
const free = (v: Vehicle): boolean => v.held.length === 0;

const sessionOf = (v: Vehicle): ChargingSession => ({
  id: v.point.id,
  point: v.point.id,
  arrives: v.arrives,
  leaves: seconds(v.arrives + v.window),
  energy: v.energy,
  most: v.current,
  vehicleLines: v.lines,
});

/** The boards that hold vehicles, in the order of the tree, with their limits and with what else they carry. */
function networkOf(vehicles: readonly Vehicle[], existing: (board: Board, line: Line) => number): ChargingNetwork {
  const held = vehicles.filter((v) => !free(v));
  const boards = new Map(held.flatMap((v) => v.held.map((b) => [b.id, b] as const)));
  const behind = (b: Board) => held.find((v) => v.boards.some((x) => x.id === b.id))?.boards ?? [];
  const parentOf = (b: Board): Board | undefined => {
    let parent: Board | undefined;
    for (const x of behind(b)) {
      if (x.id === b.id) return parent;
      if (boards.has(x.id)) parent = x;
    }
    return undefined;
  };
  const others = (b: Board, line: Line): number =>
    existing(b, line) +
    vehicles
      .filter((v) => free(v) && used(v).includes(line) && v.boards.some((x) => x.id === b.id))
      .reduce((sum, v) => sum + v.current, 0);
  const nodes = [...boards.values()].map((b): NetworkNode => {
    const parent = parentOf(b);
    const children = [...boards.values()].filter((x) => parentOf(x)?.id === b.id);
    const limit = limitOf(b) as Amperes;
    return {
      id: b.id,
      ...(parent ? { parent: parent.id } : {}),
      limit: perLine(() => limit),
      load: perLine((line) => Math.max(0, others(b, line) - children.reduce((sum, c) => sum + others(c, line), 0))),
    };
  });
  // one root, as a network has
  const roots = nodes.filter((n) => n.parent === undefined);
  const all = roots.length > 1 ? [{ id: ROOT }, ...nodes.map((n) => (n.parent ? n : { ...n, parent: ROOT }))] : nodes;
  return { nodes: all, points: held.map((v) => pointAt(v, v.held.at(-1)?.id ?? ROOT)) };
}

const ROOT = 'supply';

const pointAt = (v: Vehicle, node: string) => ({
  id: v.point.id,
  node,
  lines: v.point.lines,
  most: v.current,
  ...(v.point.minimum === undefined ? {} : { least: v.point.minimum }),
});

const charges = (v: Vehicle): boolean => v.current >= (v.point.minimum ?? LEAST);

/** One night of all vehicles beside what everything else draws; series by point where they are asked for. */
function nightBeside(
  installation: Installation,
  vehicles: readonly Vehicle[],
  existing: (board: Board, line: Line) => number,
) {
  const able = vehicles.filter(charges);
  const from = seconds(Math.min(...vehicles.map((v) => v.arrives)));
  const to = seconds(Math.max(...vehicles.map((v) => v.arrives + v.window)));
  const run = (network: ChargingNetwork, who: readonly Vehicle[]): Simulation | undefined =>
    who.length === 0
      ? undefined
      : simulate({
          network,
          sessions: who.map(sessionOf),
          from,
          to,
          step: STEP,
          voltage: installation.supply.nominalVoltage,
          control: { policy: { rule: 'max-min-amperes', stage: 'zero-or-least' } },
          keepSeries: true,
        });
  const alone = able.filter(free);
  const runs = [
    run(
      networkOf(able, existing),
      able.filter((v) => !free(v)),
    ),
    run({ nodes: [{ id: ROOT }], points: alone.map((v) => pointAt(v, ROOT)) }, alone),
  ].filter((r) => r !== undefined);
  const outcomes = new Map(runs.flatMap((r) => r.sessions.map((s) => [s.point, s] as const)));
  const series = runs.flatMap((r) => (r.series ? [r.series] : []));
  const charged = (v: Vehicle): Charged => {
    const found = outcomes.get(v.point.id);
    if (!found) return { missing: wattHours(v.energy * v.efficiency), waited: v.window };
    return {
      ...(found.fullAt === undefined ? {} : { after: seconds(found.fullAt - v.arrives) }),
      missing: wattHours(found.missing * v.efficiency),
      waited: found.waited,
    };
  };
  return { charged, series };
}

/** The load where it comes nearest to its limit. */
function loadOf(
  installation: Installation,
  vehicles: readonly Vehicle[],
  series: readonly SimulationSeries[],
  existing: (board: Board, line: Line) => number,
): NightLoad | undefined {
  const minutes = series[0]?.minutes;
  if (!minutes) return undefined;
  const currents = new Map(series.flatMap((s) => s.points.map((p) => [p.id, p.current] as const)));
  const controlled = [...new Map(vehicles.flatMap((v) => v.held.map((b) => [b.id, b] as const))).values()];
  const fuse = installation.supply.cutOut.rating;
  const places: readonly (readonly [Board, Known<Amperes> | undefined, string])[] =
    controlled.length > 0
      ? controlled.map((b) => [b, limitOf(b), b.control?.name ?? b.id] as const)
      : [[installation.board, least('cutOutRating', fuse), 'rating of the cut-out'] as const];
  const loads = places.flatMap(([board, limit, name]) => {
    if (limit === undefined || isMissing(limit)) return [];
    return LINES.flatMap((line) => {
      const here = vehicles.flatMap((v) => {
        const current = v.boards.some((b) => b.id === board.id) ? currents.get(v.point.id)?.[line] : undefined;
        return current ? [{ name: v.point.id, current }] : [];
      });
      if (here.length === 0) return [];
      const rest = { name: 'everything else', current: minutes.map(() => existing(board, line)) };
      const bands = [rest, ...here];
      const peak = Math.max(...minutes.map((_, k) => bands.reduce((sum, b) => sum + (b.current[k] ?? 0), 0)));
      const share = limit > 0 ? peak / limit : Number.POSITIVE_INFINITY;
      return [{ share, load: { place: `${board.id}, ${line}`, limitBy: name, minutes, bands, limit } }];
    });
  });
  return loads.sort((a, b) => b.share - a.share)[0]?.load;
}

/**
 * A night in which all vehicles of a survey charge at once, on the limits that load controls hold: with everything else
 * at rest, and while everything else draws its maximum demand throughout.
 * @param survey what is wanted, and what the vehicles need
 * @param installation the installation of an option, its circuits decided
 * @param supply its maximum demand
 * @param feeders demand of the feeders on the way
 * @returns when each vehicle is ready or what it lacks, and the load where it comes nearest to its limit; undefined where
 * no vehicle is stated
 * @throws CalculationError `invalid-input`, as `simulate` does
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { readSurvey } from 'ohmwright/io';
 * import { planOf } from 'ohmwright/site';
 *
 * const [option] = planOf(readSurvey(survey)).options;
 * const [vehicle] = option?.night?.vehicles ?? [];
 * (vehicle?.quiet.after ?? 0) / 3600; // ≈ 4.5
 * vehicle?.busy?.after; // => undefined
 * (vehicle?.busy?.missing ?? 0) / 1000; // ≈ 4.5
 * ```
 */
export function nightOf(
  survey: Survey,
  installation: Installation,
  supply: Adequacy,
  feeders: readonly FeederDemand[],
): Night | undefined {
  if (!survey.wanted.some((w) => w.vehicle)) return undefined;
  const { vehicles, gaps } = vehiclesOf(survey, installation);
  const controls = [...new Set(vehicles.flatMap((v) => v.held.map((b) => b.control?.name ?? b.id)))];
  const about = [
    'all vehicles charge in the same night, at nominal voltage; charging slows near full',
    controls.length > 0
      ? `current is shared evenly, from ${LEAST} A up, on the limits of: ${controls.join(', ')}`
      : 'no load control holds the points: each charges at the full current that point and vehicle share',
    ...(survey.wanted.some((w) => !w.vehicle) ? ['points without a stated vehicle are idle'] : []),
  ];
  if (vehicles.length === 0) return { vehicles: [], about, gaps };
  const existing = existingOf(installation, supply, feeders);
  const boards = new Map(vehicles.flatMap((v) => v.boards.map((b) => [b.id, b] as const)));
  const open = [...boards.values()].flatMap((b) =>
    LINES.flatMap((line) => {
      const found = existing(b, line);
      return isMissing(found) ? found.missing : [];
    }),
  );
  const quiet = nightBeside(installation, vehicles, () => 0);
  const demand = (b: Board, line: Line) => existing(b, line) as number;
  const busy = open.length > 0 ? undefined : nightBeside(installation, vehicles, demand);
  const load = busy && loadOf(installation, vehicles, busy.series, demand);
  const once = new Map([...gaps, ...open].map((gap) => [JSON.stringify(gap), gap]));
  return {
    vehicles: vehicles.map((v) => ({
      point: v.point.id,
      window: v.window,
      quiet: quiet.charged(v),
      ...(busy ? { busy: busy.charged(v) } : {}),
    })),
    about,
    ...(load ? { load } : {}),
    gaps: [...once.values()],
  };
}

import { taperOf } from '../charging/index.js';
import type { FillingBattery } from '../charging/time/sessions.js';
import { endsOf, type Fact, factValue, type Gap, isMissing, type Known, known, whenKnown } from '../core/index.js';
import {
  type Board,
  type ChargePoint,
  type Installation,
  type Line,
  type Outlet,
  pathsOf,
} from '../installation/index.js';
import { type Amperes, amperes, ratio, type Seconds, seconds, type WattHours, wattHours } from '../units/index.js';
import { stayOf } from './stay.js';
import type { Survey, VehicleNeed } from './survey.js';

/** A vehicle at its point, everything about it known. */
export interface Vehicle {
  readonly point: Pick<ChargePoint, 'id' | 'lines' | 'setting' | 'minimum'>;
  readonly boards: readonly Board[];
  /** Boards whose load control holds the point. */
  readonly held: readonly Board[];
  /** Current that point and vehicle share, A. */
  readonly current: Amperes;
  readonly lines: 1 | 2 | 3;
  /** Energy at the point, Wh. */
  readonly energy: WattHours;
  readonly efficiency: number;
  /** Its battery, where it is stated how full it comes; it takes all that it is offered when absent. */
  readonly battery?: FillingBattery;
  readonly arrives: Seconds;
  readonly window: Seconds;
}

/** The careful end of a range. */
export const least = <T extends number>(name: string, fact: Fact<T>): Known<T> =>
  fact.state === 'between' ? fact.least : factValue(name, fact);
const most = <T extends number>(name: string, fact: Fact<T>): Known<T> =>
  fact.state === 'between' ? fact.most : factValue(name, fact);

const heldBy = (boards: readonly Board[], id: string) => boards.filter((b) => b.control?.controls.includes(id));

/** The battery of a vehicle: as large, and as empty when it comes, as it may be. */
function batteryOf({ battery }: VehicleNeed, peak: Amperes, efficiency: number): Pick<Vehicle, 'battery'> {
  const [holds, from] = [endsOf(battery?.holds)?.[1], endsOf(battery?.onArrival)?.[0]];
  if (holds === undefined || from === undefined || holds <= 0) return {};
  return {
    battery: {
      holds: wattHours(holds / efficiency),
      onArrival: ratio(from),
      peak,
      course: taperOf('alternating-current'),
    },
  };
}

function vehicleOf(point: Vehicle['point'], boards: readonly Board[], need: VehicleNeed): Known<Vehicle> {
  const of = (what: string) => `${what} of the vehicle at ${point.id}`;
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
      held: heldBy(boards, point.id),
      current: amperes(Math.min(setting, onBoard)),
      lines: Math.min(lines, point.lines.length) as 1 | 2 | 3,
      energy: wattHours(energy / efficiency),
      efficiency,
      ...batteryOf(need, onBoard, efficiency),
      ...stayOf(need),
    }),
  );
}

/** More than a day of charging takes: a point of whose vehicle nothing is stated charges throughout. */
const ENDLESS = /* @__PURE__ */ wattHours(1e9);

const standingAt = (point: Vehicle['point'], boards: readonly Board[]): Known<Vehicle> =>
  whenKnown(
    [most(`setting of ${point.id}`, point.setting)],
    (current): Vehicle => ({
      point,
      boards,
      held: heldBy(boards, point.id),
      current,
      lines: Math.min(3, point.lines.length) as 1 | 2 | 3,
      energy: ENDLESS,
      efficiency: 1,
      arrives: seconds(0),
      window: seconds(86400),
    }),
  );

/** An outlet as a charge point: also one that stands there as a load of that purpose. */
function pointOf(outlet: Outlet): Vehicle['point'] | undefined {
  if (outlet.kind === 'charge-point') return outlet;
  if (outlet.kind !== 'load' || outlet.purpose !== 'charge-point') return undefined;
  const { id, lines, current } = outlet;
  return { id, lines, setting: current.state === 'known' ? known(amperes(current.value), current.by) : current };
}

/** Lines that a vehicle uses. */
export const used = ({ point, lines }: Vehicle): readonly Line[] => point.lines.slice(0, lines);

/** Vehicles that no load control holds charge as they like. */
export const free = (v: Vehicle): boolean => v.held.length === 0;

/** Limit of the load control of a board, A; undefined where it has none. */
export const limitOf = (board: Board): Known<Amperes> | undefined =>
  board.control && least(`limit of ${board.control.name}`, board.control.limit);

/** Who charges in a night. */
export interface Vehicles {
  /** Vehicles of which the survey states what they need. */
  readonly stated: readonly Vehicle[];
  /** Points, existing ones too, of whose vehicle nothing is stated. */
  readonly standing: readonly Vehicle[];
  /** Why others are left out: facts of their own are open, or of one with which they share. */
  readonly gaps: readonly Gap[];
}

/** Vehicles that charge, and why others are left out. */
export function vehiclesOf(survey: Survey, installation: Installation): Vehicles {
  const gaps: Gap[] = [];
  const open = new Set<string>();
  const found: (readonly [Vehicle, stated: boolean])[] = [];
  for (const { boards, run } of pathsOf(installation)) {
    const need = survey.wanted.find((w) => w.run.id === run.id)?.vehicle;
    for (const point of run.feeds.flatMap((o) => pointOf(o) ?? [])) {
      const vehicle = need ? vehicleOf(point, boards, need) : standingAt(point, boards);
      const missing = [vehicle, ...heldBy(boards, point.id).map(limitOf)].filter(isMissing);
      gaps.push(...missing.flatMap((m) => m.missing));
      if (missing.length === 0 && !isMissing(vehicle)) found.push([vehicle, need !== undefined]);
      else for (const b of boards) open.add(b.id);
    }
  }
  const holding = new Set(found.flatMap(([v]) => v.held.map((b) => b.id)));
  for (const [v] of found)
    for (const b of v.boards) {
      // held in one place and not in another: whom the other would hold back is not said
      if (free(v) || v.held.includes(b) || !holding.has(b.id)) continue;
      gaps.push({
        kind: 'fact',
        fact: `whether ${b.control?.name ?? b.id} holds ${v.point.id}`,
        obtain: 'name the charge point there too, or with no load control',
      });
      for (const x of v.boards) open.add(x.id);
    }
  const left = found.filter(([v]) => !v.held.some((b) => open.has(b.id)));
  return {
    stated: left.flatMap(([v, stated]) => (stated ? [v] : [])),
    standing: left.flatMap(([v, stated]) => (stated ? [] : [v])),
    gaps,
  };
}

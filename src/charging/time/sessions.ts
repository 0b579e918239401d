import type { Amperes, Ratio, Seconds, WattHours } from '../../units/index.js';
import type { ChargingNetwork } from '../network/network.js';
import { type Inspection, inspectName, isObject } from '../network/refuse.js';
import { valueAlong } from './straight-lines.js';
import { courseProblem, type PowerCourse } from './taper.js';

/** A battery that takes less as it fills. @inline */
export interface FillingBattery {
  /** Energy from empty to full, measured at the point, Wh, above 0. */
  readonly holds: WattHours;
  /** State of charge on arrival, 1, 0 to 1. */
  readonly onArrival: Ratio;
  /** Largest current that the vehicle takes on each line while its power is not held back, A, above 0. */
  readonly peak: Amperes;
  /** Power over the largest by state of charge, such as `taperOf` gives. */
  readonly course: PowerCourse;
}

/** A vehicle's stay at a point. */
export interface ChargingSession {
  readonly id: string;
  readonly point: string;
  /** Arrival, s since midnight of the first day. */
  readonly arrives: Seconds;
  /** Departure, s since midnight of the first day, after the arrival. */
  readonly leaves: Seconds;
  /** Energy that it needs, measured at the point, Wh, 0 and up. */
  readonly energy: WattHours;
  /** Largest current of vehicle and cable, A; that of the point when absent. */
  readonly most?: Amperes;
  /** How many of the point's lines it uses; as the network says when absent. */
  readonly vehicleLines?: 1 | 2 | 3;
  /** Its battery, where the vehicle takes less as it fills; it takes all that it is offered when absent. */
  readonly battery?: FillingBattery;
}

/** Current that a battery takes on each line once it has received some energy at the point, A. */
export const acceptedBy = ({ holds, onArrival, peak, course }: FillingBattery, received: number): number =>
  peak * valueAlong(course, Math.min(1, onArrival + received / holds));

function inspectBattery(
  battery: FillingBattery,
  energy: number,
  path: readonly (string | number)[],
  found: Inspection,
) {
  if (!isObject(battery)) {
    found.when(true, path, 'must be a battery');
    return;
  }
  const { holds, onArrival, peak, course } = battery;
  const sound = [
    found.number(holds, [...path, 'holds'], { above: 0 }),
    found.number(onArrival, [...path, 'onArrival'], { least: 0 }),
  ].every(Boolean);
  found.number(peak, [...path, 'peak'], { above: 0 });
  found.when(sound && onArrival > 1, [...path, 'onArrival'], 'must be at most 1');
  found.when(
    sound && onArrival <= 1 && energy > holds * (1 - onArrival) * (1 + 1e-9),
    [...path, 'holds'],
    `has no room for the ${energy} Wh that are needed`,
  );
  const wrong = courseProblem(course);
  found.when(wrong !== undefined, [...path, 'course'], wrong as string);
}

/** Everything that is wrong with sessions at the points of a network. */
export function inspectSessions(
  network: ChargingNetwork,
  sessions: readonly ChargingSession[],
  found: Inspection,
): void {
  if (!found.list(sessions, ['sessions'])) return;
  const points = new Map(network.points.map((p) => [p.id, p]));
  const names = new Set<string>();
  sessions.forEach((s, k) => {
    const path = ['sessions', k];
    found.when(names.has(s.id), [...path, 'id'], `'${s.id}' is the name of another session too`);
    inspectName(s.id, [...path, 'id'], found);
    names.add(s.id);
    const point = points.get(s.point);
    found.when(!point, [...path, 'point'], `there is no point '${s.point}'`);
    const times = [found.number(s.arrives, [...path, 'arrives'], {}), found.number(s.leaves, [...path, 'leaves'], {})];
    found.when(
      times.every(Boolean) && s.leaves <= s.arrives,
      [...path, 'leaves'],
      `leaves at ${s.leaves} s, not after its arrival at ${s.arrives} s`,
    );
    found.number(s.energy, [...path, 'energy'], { least: 0 });
    found.number(s.most, [...path, 'most'], { least: 0, optional: true });
    const lines = point?.lines.length ?? 3;
    found.when(
      s.vehicleLines !== undefined && (![1, 2, 3].includes(s.vehicleLines) || s.vehicleLines > lines),
      [...path, 'vehicleLines'],
      `must be 1 to ${lines}, the lines of the point`,
    );
    if (s.battery !== undefined) inspectBattery(s.battery, s.energy, [...path, 'battery'], found);
  });
  inspectStays(sessions, found);
}

/** No two vehicles can stay at one point at the same time. */
function inspectStays(sessions: readonly ChargingSession[], found: Inspection): void {
  const byPoint = new Map<string, number[]>();
  sessions.forEach(({ point }, k) => {
    const there = byPoint.get(point);
    if (there) there.push(k);
    else byPoint.set(point, [k]);
  });
  const together: [number, number][] = [];
  for (const there of byPoint.values()) {
    there.sort((a, b) => sessions[a]!.arrives - sessions[b]!.arrives || a - b);
    let last = there[0]!;
    for (const k of there.slice(1)) {
      if (sessions[k]!.arrives < sessions[last]!.leaves) together.push([Math.max(k, last), Math.min(k, last)]);
      if (sessions[k]!.leaves > sessions[last]!.leaves) last = k;
    }
  }
  together.sort(([a], [b]) => a - b);
  for (const [k, other] of together)
    found.when(true, ['sessions', k], `stays at '${sessions[k]!.point}' together with '${sessions[other]!.id}'`);
}

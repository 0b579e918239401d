import { type Amperes, amperes, type Seconds, seconds, type WattHours, wattHours } from '../../units/index.js';
import type { PerLine } from '../network/network.js';
import { inspection, isObject } from '../network/refuse.js';
import { programme } from '../optimum/lexicographic-simplex.js';
import { type Course, courseOf } from './course.js';
import { inspectSchedule, type ScheduleInput } from './input.js';
import { type LinearForm, linearFormOf } from './linear.js';
import { leastShortfall, optimumOf } from './optimum.js';
import { type Schedule, schedule } from './schedule.js';

/** A change of one kind that lets every vehicle have what it needs. */
export type Relaxation =
  /** These vehicles need less; every other need stays. */
  | { readonly kind: 'less-energy'; readonly sessions: readonly { readonly id: string; readonly less: WattHours }[] }
  /** These vehicles leave later, all by the same time. */
  | { readonly kind: 'later-departure'; readonly sessions: readonly string[]; readonly later: Seconds }
  /** The limits of these nodes are higher at all times, on each line that has one above 0, all by the same current. */
  | { readonly kind: 'more-capacity'; readonly nodes: readonly string[]; readonly more: Amperes };

/** A relaxation, and what the schedule comes to with it. @inline */
export interface Cure {
  /** The change: the smallest of its kind to the resolution. */
  readonly relaxation: Relaxation;
  /**
   * In what steps it was looked for: a change one step smaller does not cure. Wh for each vehicle, s, or A; 0 for less
   * energy where lines must be in balance: there less for one may mean less for others, so it is not rounded.
   */
  readonly resolution: number;
  /** The schedule made again with the relaxation, by the policy and stage of the input. */
  readonly schedule: Schedule;
}

/** Steps in which relaxations are looked for. */
const RESOLUTION = { energy: 1, departure: 60, capacity: 0.1 } as const;
/** How much later than planned a vehicle may be asked to leave, s. */
const MOST_LATER = 86_400;
/** Energy below which nothing is lacking, as a share of what is needed. */
const NOTHING = 1e-9;

/**
 * An input with a relaxation in it. A departure later than the end of the schedule moves that end with it; the others
 * are then taken to leave at the former end.
 * @param input what is scheduled
 * @param relaxation the change
 * @returns the input to schedule again
 * @throws CalculationError `invalid-input` with everything that is wrong
 * @example
 * ```ts
 * import { amperes, hours, kilowattHours, volts } from 'ohmwright';
 * import { relaxed, type ScheduleInput } from 'ohmwright/charging';
 *
 * const input: ScheduleInput = {
 *   network: { nodes: [{ id: 'intake' }], points: [{ id: 'drive', node: 'intake', lines: ['L1'], most: amperes(32) }] },
 *   sessions: [{ id: 'car', point: 'drive', arrives: hours(22), leaves: hours(30), energy: kilowattHours(60) }],
 *   from: hours(22), to: hours(30), step: hours(0.5), voltage: volts(230),
 *   policy: 'least-laxity', stage: 'zero-or-least',
 * };
 * const again = relaxed(input, { kind: 'later-departure', sessions: ['car'], later: hours(1) });
 * again.sessions[0]?.leaves; // => 111600
 * again.to; // => 111600
 * ```
 */
export function relaxed(input: ScheduleInput, relaxation: Relaxation): ScheduleInput {
  inspectSchedule(input);
  const found = inspection();
  found.when(!isObject(relaxation), ['relaxation'], 'must be an object');
  found.refuse('the relaxation of a schedule');
  const { kind } = relaxation;
  if (found.label(kind, ['relaxation', 'kind'], ['less-energy', 'later-departure', 'more-capacity'])) {
    const list: unknown = relaxation.kind === 'more-capacity' ? relaxation.nodes : relaxation.sessions;
    found.when(!Array.isArray(list), ['relaxation'], 'must name what it changes');
  }
  found.refuse('the relaxation of a schedule');
  if (relaxation.kind === 'less-energy') {
    const less = new Map(relaxation.sessions.map((s) => [s.id, s.less as number]));
    return {
      ...input,
      sessions: input.sessions.map((s) => ({
        ...s,
        energy: wattHours(Math.max(0, s.energy - (less.get(s.id) ?? 0))),
      })),
    };
  }
  if (relaxation.kind === 'later-departure') {
    const { later } = relaxation;
    const ids = new Set(relaxation.sessions);
    const sessions = input.sessions.map((s) => (ids.has(s.id) ? { ...s, leaves: seconds(s.leaves + later) } : s));
    const end = Math.max(input.to, ...sessions.filter((s) => ids.has(s.id)).map((s) => s.leaves));
    return {
      ...input,
      to: seconds(end),
      sessions: sessions.map((s) =>
        ids.has(s.id) || s.arrives >= input.to ? s : { ...s, leaves: seconds(Math.min(s.leaves, input.to)) },
      ),
    };
  }
  const ids = new Set(relaxation.nodes);
  const raised = (limit: PerLine, able: readonly boolean[]): PerLine => {
    const on = (p: 0 | 1 | 2) => amperes(able[p] ? limit[p] + relaxation.more : limit[p]);
    return [on(0), on(1), on(2)];
  };
  const some = (values: readonly PerLine[]) => [0, 1, 2].map((p) => values.some((limit) => limit[p]! > 0));
  return {
    ...input,
    network: {
      ...input.network,
      nodes: input.network.nodes.map((n) =>
        ids.has(n.id) && n.limit ? { ...n, limit: raised(n.limit, some([n.limit])) } : n,
      ),
    },
    ...(input.limits
      ? {
          limits: input.limits.map((profile) => {
            if (!ids.has(profile.node)) return profile;
            const able = some(profile.values);
            return { ...profile, values: profile.values.map((limit) => raised(limit, able)) };
          }),
        }
      : {}),
  };
}

/**
 * What would let every vehicle have what it needs, where a schedule leaves some short although it is the best there is:
 * less energy, a later departure, more capacity. Each is the smallest of its kind: less energy for all that lack it
 * together (the least in all) and for one of them alone; a later departure of each that lacks energy alone and of all of
 * them together, up to 24 h later or to the next stay at the point (one that stays beyond the end of the schedule is not
 * asked to); more capacity of each node alone or, where no single
 * one helps, of all. Judged with any current (`continuous`), where a smallest relaxation is defined; each is then
 * scheduled again by the policy and stage of the input, and what that leaves short is in its `schedule`: nothing for
 * `minimum-cost` and `valley-filling` at the `continuous` stage.
 *
 * @param input what is scheduled
 * @returns relaxations, each cured and run again; none where all needs can be met as it is
 * @throws CalculationError `invalid-input` with everything that is wrong
 * @example
 * ```ts
 * import { amperes, hours, kilowattHours, volts } from 'ohmwright';
 * import { relaxationsOf } from 'ohmwright/charging';
 *
 * const line = (a: number) => [amperes(a), amperes(0), amperes(0)] as const;
 * const cures = relaxationsOf({
 *   network: {
 *     nodes: [{ id: 'intake', limit: line(20) }],
 *     points: [{ id: 'drive', node: 'intake', lines: ['L1'], most: amperes(32) }],
 *   },
 *   sessions: [{ id: 'car', point: 'drive', arrives: hours(22), leaves: hours(30), energy: kilowattHours(46) }],
 *   from: hours(22), to: hours(30), step: hours(0.5), voltage: volts(230),
 *   policy: 'valley-filling', stage: 'continuous',
 * });
 * cures[0]?.relaxation; // => { kind: 'less-energy', sessions: [{ id: 'car', less: 9200 }] }
 * cures[1]?.relaxation; // => { kind: 'later-departure', sessions: ['car'], later: 7200 }
 * cures[2]?.relaxation; // => { kind: 'more-capacity', nodes: ['intake'], more: 5 }
 * cures[2]?.schedule.shortfall; // => 0
 * ```
 */
export function relaxationsOf(input: ScheduleInput): readonly Cure[] {
  inspectSchedule(input);
  const course = courseOf(input, false);
  const form = linearFormOf(course);
  const { x, shortfall } = optimumOf(course, form, 'energy');
  if (shortfall === 0) return [];
  const delivered = course.vehicles.map(() => 0);
  form.cells.forEach(({ vehicle, energy }, k) => {
    delivered[vehicle] = delivered[vehicle]! + energy * x[k]!;
  });
  const lacking = course.vehicles.flatMap(({ need }, j) => (need - delivered[j]! > NOTHING * need ? [j] : []));
  const ids = lacking.map((j) => course.vehicles[j]!.session.id);
  const found: [Relaxation, number][] = [
    ...lessEnergy(course, form, delivered, lacking).map((r): [Relaxation, number] => [r, energyStep(course)]),
    ...later(input, ids).map((r): [Relaxation, number] => [r, RESOLUTION.departure]),
    ...moreCapacity(input).map((r): [Relaxation, number] => [r, RESOLUTION.capacity]),
  ];
  return found.map(([relaxation, resolution]) => ({
    relaxation,
    resolution,
    schedule: schedule(relaxed(input, relaxation)),
  }));
}

/** Whether all needs can be met, with any current. */
const allMet = (input: ScheduleInput): boolean => leastShortfall(linearFormOf(courseOf(input, false))) === 0;

/** The smallest whole number up to a largest at which something that stays true once it is true becomes true. */
function smallest(largest: number, holds: (k: number) => boolean): number | undefined {
  if (largest < 1 || !holds(largest)) return undefined;
  let [no, yes] = [0, largest];
  while (yes - no > 1) {
    const middle = Math.floor((no + yes) / 2);
    if (holds(middle)) yes = middle;
    else no = middle;
  }
  return yes;
}

/** In what steps energy is given up, Wh. */
const energyStep = ({ order }: Course): number => (order.allBalances.length > 0 ? 0 : RESOLUTION.energy);

const roundedUp = (value: number, step: number): number => (step > 0 ? Math.ceil(value / step - 1e-6) * step : value);

function lessEnergy(course: Course, form: LinearForm, delivered: readonly number[], lacking: readonly number[]) {
  const of = (j: number, less: number) => ({
    id: course.vehicles[j]!.session.id,
    less: wattHours(roundedUp(1000 * less, energyStep(course))),
  });
  const relaxations: Relaxation[] = [
    { kind: 'less-energy', sessions: lacking.map((j) => of(j, course.vehicles[j]!.need - delivered[j]!)) },
  ];
  for (const j of lacking.length > 1 ? lacking : []) {
    const less = lessOfOne(course, form, j);
    if (less !== undefined) relaxations.push({ kind: 'less-energy', sessions: [of(j, less)] });
  }
  return relaxations;
}

/** How much less a vehicle alone must need for all to be met, kWh: the others come first, it gets what they leave. */
function lessOfOne({ vehicles }: Course, { cells, needs, limits }: LinearForm, j: number): number | undefined {
  const energy = (own: boolean) => cells.map((cell) => ((cell.vehicle === j) === own ? cell.energy : 0));
  const lp = programme(
    cells.map((cell) => cell.most),
    [...needs, ...limits],
  );
  const needed = vehicles.reduce((sum, { need }, i) => (i === j ? sum : sum + need), 0);
  if (lp.maximise(energy(false)) < needed * (1 - NOTHING)) return undefined;
  return Math.max(0, vehicles[j]!.need - lp.maximise(energy(true)));
}

function later(input: ScheduleInput, lacking: readonly string[]): Relaxation[] {
  const ids = lacking.filter((id) => input.sessions.find((s) => s.id === id)!.leaves <= input.to);
  if (ids.length === 0) return [];
  const room = (id: string): number => {
    const session = input.sessions.find((s) => s.id === id)!;
    const next = input.sessions.filter((s) => s.point === session.point && s.arrives >= session.leaves);
    return Math.min(MOST_LATER, ...next.map((s) => s.arrives - session.leaves));
  };
  const groups = ids.length > 1 ? [ids, ...ids.map((id) => [id])] : [ids];
  return groups.flatMap((sessions): Relaxation[] => {
    const relaxation = (k: number): Relaxation => ({
      kind: 'later-departure',
      sessions,
      later: seconds(k * RESOLUTION.departure),
    });
    const most = Math.floor(Math.min(...sessions.map(room)) / RESOLUTION.departure);
    const least = smallest(most, (k) => allMet(relaxed(input, relaxation(k))));
    return least === undefined ? [] : [relaxation(least)];
  });
}

function moreCapacity(input: ScheduleInput): Relaxation[] {
  const limited = new Set([
    ...input.network.nodes.filter((n) => n.limit).map((n) => n.id),
    ...(input.limits ?? []).map((p) => p.node),
  ]);
  const names = [...limited].sort();
  // with all that points can take beside all other load no limit is in the way
  const loads = [...input.network.nodes.map((n) => n.load ?? []), ...(input.load ?? []).flatMap((p) => p.values)];
  const enough =
    input.network.points.reduce((sum, p) => sum + p.most, 0) +
    loads.reduce((sum, load) => sum + Math.max(0, ...load), 0);
  const most = Math.ceil(enough / RESOLUTION.capacity);
  const raise = (nodes: readonly string[]): Relaxation[] => {
    const relaxation = (k: number): Relaxation => ({
      kind: 'more-capacity',
      nodes,
      more: amperes(Math.round(k * RESOLUTION.capacity * 1e6) / 1e6),
    });
    const least = smallest(most, (k) => allMet(relaxed(input, relaxation(k))));
    return least === undefined ? [] : [relaxation(least)];
  };
  const alone = names.flatMap((name) => raise([name]));
  return alone.length > 0 || names.length < 2 ? alone : raise(names);
}

import { type Amperes, CalculationError, invalidInput, type Problem, type Volts } from '../../units/index.js';
import type { ChargingNetwork } from '../network/network.js';
import { inspection, inspectNetwork, isObject } from '../network/refuse.js';
import { chargingByNode, momentOf, orderOf } from '../network/tree-order.js';
import type { Schedule } from '../schedule/schedule.js';

/** What a limit of a profile is for, by the names of the Open Charge Point Protocol 1.6. @inline */
export type ProfilePurpose = 'ChargePointMaxProfile' | 'TxDefaultProfile' | 'TxProfile';

/** A limit that holds from a second of a schedule until the next one. @inline */
export interface SchedulePeriod {
  /** Seconds from the start of the schedule, whole. */
  readonly startPeriod: number;
  /** Limit in the unit of the schedule, tenths at most: A on each line, or W of all lines together. */
  readonly limit: number;
  readonly numberPhases?: number;
}

/** A charging profile with the fields of the Open Charge Point Protocol 1.6, edition 2, 7.8 to 7.14: plain data. */
export interface ChargingProfile {
  readonly chargingProfileId: number;
  readonly stackLevel: number;
  readonly chargingProfilePurpose: ProfilePurpose;
  readonly chargingProfileKind: 'Absolute' | 'Relative';
  /** Instants in ISO 8601, UTC. */
  readonly validFrom?: string;
  readonly validTo?: string;
  readonly chargingSchedule: {
    /** Seconds; without it the last limit goes on. */
    readonly duration?: number;
    readonly startSchedule?: string;
    readonly chargingRateUnit: 'A' | 'W';
    readonly chargingSchedulePeriod: readonly SchedulePeriod[];
  };
}

/** The profiles of one charge point, for its first connector but for the cap. */
export interface PointProfiles {
  readonly point: string;
  /** What it may take where nothing else is valid: without a link, and after the plan. It is sent before the plan. */
  readonly fallback: ChargingProfile;
  /** What the whole point never exceeds, for connector 0: its largest current, whatever else it holds. */
  readonly cap: ChargingProfile;
  /** What it may take by the plan. */
  readonly planned: readonly ChargingProfile[];
}

/** How a schedule is expressed in profiles. */
export interface ProfileQuestion {
  /** The network that was scheduled, for the line conductors of each point. */
  readonly network: ChargingNetwork;
  /** Instant at which the clock of the schedule stands at 0, ISO 8601 with its offset. */
  readonly midnight: string;
  /** Whether limits are stated in A on each line or in W. */
  readonly unit: 'A' | 'W';
  /** Nominal voltage line to neutral, V. */
  readonly voltage: Volts;
  /** Current that every point may take at any time without a plan, A: of all points together within every limit. */
  readonly fallback: Amperes;
  /** Most periods that a point takes in one schedule, by its `ChargingScheduleMaxPeriods`. */
  readonly mostPeriods: number;
}

interface Step {
  readonly from: number;
  readonly to: number;
  readonly current: number;
}

/** Whole seconds, each with the least that the schedule gives within it: a limit is never above the schedule. */
function wholeSeconds(stretches: readonly Step[]): readonly Step[] {
  const ends = new Set<number>();
  for (const { from, to } of stretches)
    for (const end of [from, to]) {
      ends.add(Math.floor(end));
      ends.add(Math.ceil(end));
    }
  const cuts = [...ends].sort((a, b) => a - b);
  const steps: Step[] = [];
  let k = 0;
  for (const [i, from] of cuts.entries()) {
    const to = cuts[i + 1];
    if (to === undefined) break;
    while (k < stretches.length && (stretches[k] as Step).to <= from) k++;
    let covered = 0;
    let least = Number.POSITIVE_INFINITY;
    for (let j = k; j < stretches.length && (stretches[j] as Step).from < to; j++) {
      const s = stretches[j] as Step;
      covered += Math.min(s.to, to) - Math.max(s.from, from);
      least = Math.min(least, s.current);
    }
    const current = covered >= to - from - 1e-9 && Number.isFinite(least) ? least : 0;
    const last = steps.at(-1);
    if (last && last.current === current) steps[steps.length - 1] = { ...last, to };
    else steps.push({ from, to, current });
  }
  // pauses at either end are no part of the plan
  const charging = steps.flatMap((s, i) => (s.current > 0 ? [i] : []));
  return charging.length === 0 ? [] : steps.slice(charging[0], (charging.at(-1) as number) + 1);
}

const tenthsDown = (value: number): number => Math.floor(value * 10 + 1e-6) / 10;

function refuse(question: ProfileQuestion): number {
  const found = inspection();
  found.when(!isObject(question), [], 'must say how a schedule is expressed');
  found.refuse('The profiles');
  const { network, midnight, unit, voltage, fallback, mostPeriods } = question;
  inspectNetwork(network, found, ['network']);
  const begin = Date.parse(midnight);
  const dated = typeof midnight === 'string' && /(Z|[+-]\d\d:\d\d)$/.test(midnight) && Number.isFinite(begin);
  found.when(!dated, ['midnight'], 'must be an instant with its offset, as 2026-11-30T00:00:00Z');
  found.when(unit !== 'A' && unit !== 'W', ['unit'], 'must be A or W');
  found.number(voltage, ['voltage'], { above: 0 });
  found.number(fallback, ['fallback'], { least: 0 });
  const whole = Number.isSafeInteger(mostPeriods) && mostPeriods >= 1;
  found.when(!whole, ['mostPeriods'], 'must be a whole number from 1');
  found.refuse('The profiles');
  // without a link nobody shares: what every point may then take together has to fit
  const order = orderOf(network);
  const { room } = momentOf(order);
  const together = chargingByNode(order, new Float64Array(order.points.length).fill(fallback));
  for (const [v, { id }] of order.nodes.entries())
    for (const p of [0, 1, 2])
      if (together[3 * v + p]! > room[3 * v + p]! + 1e-9) {
        found.when(
          true,
          ['fallback'],
          `of all points together is ${+together[3 * v + p]!.toPrecision(6)} A at '${id}', where ${+room[3 * v + p]!.toPrecision(6)} A are left`,
        );
        break;
      }
  found.refuse('The profiles');
  return begin;
}

/**
 * A schedule as charging profiles of the Open Charge Point Protocol 1.6, which 2.0.1 takes as well: plain data, no server.
 * Each point gets a default profile at the lowest level, which holds without a link and after the plan (without any, a
 * point charges as if there were no limit; those of all points together fit every limit), above it one for each of its
 * sessions, and a cap at its largest current. Limits are rounded down
 * to tenths and to whole seconds: they are nowhere above the schedule.
 * @param schedule who charges when
 * @param question network, clock, unit, voltage in V, fall-back current in A, 0 and up
 * @returns profiles of every point of the network, in its order
 * @throws CalculationError `invalid-input` with everything that is wrong, `out-of-range` where a session needs more
 * periods than the points take
 * @example
 * ```ts
 * import { amperes, hours, kilowattHours, volts } from 'ohmwright';
 * import { asChargingProfile, schedule } from 'ohmwright/charging';
 *
 * const line = (a: number) => [amperes(a), amperes(0), amperes(0)] as const;
 * const network = {
 *   nodes: [{ id: 'intake', limit: line(40) }],
 *   points: [{ id: 'left', node: 'intake', lines: ['L1'], most: amperes(32) }],
 * } as const;
 * const plan = schedule({
 *   network, policy: 'earliest-deadline', stage: 'continuous', voltage: volts(230),
 *   sessions: [{ id: 'van', point: 'left', arrives: hours(18), leaves: hours(30), energy: kilowattHours(7.36) }],
 *   from: hours(18), to: hours(30), step: hours(0.5),
 * });
 * const [left] = asChargingProfile(plan, {
 *   network, midnight: '2026-11-30T00:00:00Z', unit: 'A', voltage: volts(230), fallback: amperes(6), mostPeriods: 24,
 * });
 * left?.fallback.chargingSchedule.chargingSchedulePeriod; // => [{ startPeriod: 0, limit: 6, numberPhases: 1 }]
 * left?.planned[0]?.chargingSchedule.chargingSchedulePeriod[0]; // => { startPeriod: 0, limit: 32, numberPhases: 1 }
 * left?.planned[0]?.validFrom; // => '2026-11-30T18:00:00.000Z'
 * ```
 */
export function asChargingProfile(schedule: Schedule, question: ProfileQuestion): readonly PointProfiles[] {
  const begin = refuse(question);
  const { network, unit, voltage, fallback, mostPeriods } = question;
  let id = 0;
  return network.points.map(({ id: point, lines, most }): PointProfiles => {
    const numberPhases = lines.length;
    const limitOf = (current: number) => tenthsDown(unit === 'A' ? current : current * voltage * numberPhases);
    const instant = (second: number) => new Date(begin + second * 1000).toISOString();
    const sessions = schedule.sessions.filter((s) => s.point === point && s.stretches.length > 0);
    const planned = sessions.flatMap(({ id: session, stretches }): readonly ChargingProfile[] => {
      const steps = wholeSeconds(stretches);
      if (steps.length === 0) return [];
      const [first, last] = [steps[0] as Step, steps.at(-1) as Step];
      if (steps.length > mostPeriods)
        throw new CalculationError(
          'out-of-range',
          `session ${session} needs ${steps.length} periods, more than the ${mostPeriods} that the points take`,
          {
            quantity: 'periods of a schedule',
            value: steps.length,
            unit: '1',
            bounds: { least: 1, most: mostPeriods },
            source: 'the charge points',
          },
        );
      return [
        {
          chargingProfileId: ++id,
          stackLevel: 1,
          chargingProfilePurpose: 'TxDefaultProfile',
          chargingProfileKind: 'Absolute',
          validFrom: instant(first.from),
          validTo: instant(last.to),
          chargingSchedule: {
            duration: last.to - first.from,
            startSchedule: instant(first.from),
            chargingRateUnit: unit,
            chargingSchedulePeriod: steps.map((s) => ({
              startPeriod: s.from - first.from,
              limit: limitOf(s.current),
              numberPhases,
            })),
          },
        },
      ];
    });
    return {
      point,
      fallback: {
        chargingProfileId: ++id,
        stackLevel: 0,
        chargingProfilePurpose: 'TxDefaultProfile',
        chargingProfileKind: 'Relative',
        chargingSchedule: {
          chargingRateUnit: unit,
          chargingSchedulePeriod: [{ startPeriod: 0, limit: limitOf(fallback), numberPhases }],
        },
      },
      cap: {
        chargingProfileId: ++id,
        stackLevel: 0,
        chargingProfilePurpose: 'ChargePointMaxProfile',
        chargingProfileKind: 'Relative',
        chargingSchedule: {
          chargingRateUnit: unit,
          chargingSchedulePeriod: [{ startPeriod: 0, limit: limitOf(most), numberPhases }],
        },
      },
      planned,
    };
  });
}

/** What is wrong with profiles and instants, whoever made them. */
function profileProblems(profiles: unknown, [at, transaction]: readonly unknown[]): readonly Problem[] {
  const instant = (v: unknown) => typeof v === 'string' && Number.isFinite(Date.parse(v));
  if (!Array.isArray(profiles)) return [{ path: [], message: 'a list is due' }];
  const sound = (p: Partial<ChargingProfile> | undefined) => {
    const periods: unknown = isObject(p) && isObject(p.chargingSchedule) && p.chargingSchedule.chargingSchedulePeriod;
    return (
      Array.isArray(periods) &&
      periods.every((q: Partial<SchedulePeriod> | undefined) => isObject(q) && Number.isFinite(q.limit))
    );
  };
  return [
    ...profiles.flatMap((p, i) => (sound(p) ? [] : [{ path: [i], message: 'is no profile' }])),
    ...(instant(at) ? [] : [{ path: ['at'], message: 'must be an instant, ISO 8601 with its offset' }]),
    ...(transaction === undefined || instant(transaction)
      ? []
      : [{ path: ['transaction'], message: 'must be an instant, ISO 8601 with its offset' }]),
  ];
}

/** The limit of one profile at an instant; undefined where it is not valid then. */
function limitOfProfile({ validFrom, validTo, chargingSchedule: s }: ChargingProfile, at: number, started: number) {
  if (validFrom !== undefined && at < Date.parse(validFrom)) return undefined;
  if (validTo !== undefined && at >= Date.parse(validTo)) return undefined;
  const second = (at - (s.startSchedule === undefined ? started : Date.parse(s.startSchedule))) / 1000;
  if (second < 0 || (s.duration !== undefined && second >= s.duration)) return undefined;
  return s.chargingSchedulePeriod.filter((p) => p.startPeriod <= second).at(-1)?.limit;
}

/**
 * The limit that holds at an instant by several profiles of one point: within a purpose the valid one of the highest
 * level, a profile of the transaction before the default, and never above that of the whole charge point. By the Open Charge
 * Point Protocol 1.6, edition 2, 3.13.
 * @param profiles what the point holds
 * @param at the instant, ISO 8601 with its offset
 * @param transaction instant at which a transaction began that still runs; none when absent
 * @returns the limit in the unit of the profiles; undefined where none is valid: the point then charges without a limit
 * @throws CalculationError `invalid-input` where one is no profile, an instant is none, or they are in different units
 * @example
 * ```ts
 * import { profileLimitAt } from 'ohmwright/charging';
 *
 * profileLimitAt([], '2026-11-30T00:00:00Z'); // => undefined
 * ```
 */
export function profileLimitAt(
  profiles: readonly ChargingProfile[],
  at: string,
  transaction?: string,
): number | undefined {
  const wrong = profileProblems(profiles, [at, transaction]);
  if (wrong.length > 0) throw invalidInput('the profiles', wrong);
  if (new Set(profiles.map((p) => p.chargingSchedule.chargingRateUnit)).size > 1)
    throw invalidInput('the profiles', [{ path: [], message: 'are in different units' }]);
  const instant = Date.parse(at);
  const started = transaction === undefined ? instant : Date.parse(transaction);
  const leading = (purpose: ProfilePurpose): number | undefined =>
    profiles
      .filter((p) => p.chargingProfilePurpose === purpose)
      .flatMap((p) => {
        const limit = limitOfProfile(p, instant, started);
        return limit === undefined ? [] : [{ level: p.stackLevel, limit }];
      })
      .sort((a, b) => b.level - a.level)[0]?.limit;
  const own = (transaction === undefined ? undefined : leading('TxProfile')) ?? leading('TxDefaultProfile');
  const cap = leading('ChargePointMaxProfile');
  const both = [own, cap].filter((limit) => limit !== undefined);
  return both.length > 0 ? Math.min(...both) : undefined;
}

import { type Seconds, seconds, type WattHours } from '../../units/index.js';
import { inspection, isObject } from '../network/refuse.js';
import {
  atIntake,
  type IntakeQuestion,
  inspectQuestion,
  type PointAtIntake,
  renameIntake,
  type StayAtIntake,
} from './intake.js';
import { simulate } from './simulate.js';

/** What is asked: how many such points, each with a vehicle, can share an intake. @inline */
export interface SharingQuestion extends IntakeQuestion {
  /** The points, in turn: three of them on L1, L2 and L3 spread single-phase points over three lines. */
  readonly points: readonly PointAtIntake[];
  /** Stays of the vehicles, in turn. */
  readonly stays: readonly StayAtIntake[];
  /** Largest number of points that is looked at, 1 to 1000. */
  readonly upTo: number;
}

/** How it goes with a number of points. @inline */
export interface SharingAnswer {
  readonly points: number;
  /** Whether every vehicle has what it needs when it leaves. */
  readonly allFull: boolean;
  /** Vehicles that lack energy when they leave. */
  readonly short: number;
  /** Energy missing in all, Wh. */
  readonly missing: WattHours;
  /** When the last vehicle was full, s; absent when not all were. */
  readonly lastFullAt?: Seconds;
}

/**
 * How many points can share an intake. Every number from 1 up is simulated: what holds for a number need not hold for a
 * smaller one.
 * @param question intake, points and stays of vehicles in turn, how current is shared, time
 * @returns `most`, the largest number up to which all vehicles are full when they leave, and an answer for each number
 * @throws CalculationError `invalid-input` with everything that is wrong
 * @example
 * ```ts
 * import { amperes, hours, kilowattHours, minutes, volts } from 'ohmwright';
 * import { pointsSharing } from 'ohmwright/charging';
 *
 * const { most, answers } = pointsSharing({
 *   intake: { id: 'intake', limit: [amperes(60), amperes(0), amperes(0)], load: [amperes(20), amperes(0), amperes(0)] },
 *   points: [{ lines: ['L1'], most: amperes(32) }],
 *   stays: [{ arrives: hours(18), leaves: hours(31), energy: kilowattHours(20) }],
 *   upTo: 8,
 *   from: hours(18), to: hours(31), step: minutes(5), voltage: volts(230),
 *   control: { policy: { rule: 'max-min-amperes' } },
 * });
 * most; // => 5
 * answers[5]?.short; // => 2
 * ```
 */
export function pointsSharing(question: SharingQuestion): {
  readonly most: number;
  readonly answers: readonly SharingAnswer[];
} {
  const what = 'The question how many points can share an intake';
  const found = inspection();
  found.when(!isObject(question), [], 'must be an object');
  found.refuse(what);
  const { points, stays, upTo } = question;
  found.list(points, ['points']);
  found.list(stays, ['stays']);
  found.refuse(what);
  if (found.number(upTo, ['upTo'], { least: 1 }))
    found.when(!Number.isInteger(upTo) || upTo > 1000, ['upTo'], 'must be a whole number up to 1000');
  found.when(points.length === 0, ['points'], 'must describe at least one point');
  found.when(stays.length === 0, ['stays'], 'must describe at least one stay');
  found.refuse(what);
  // so many that each point and each stay is among them; their paths are those of the question
  inspectQuestion(what, atIntake(question, Math.max(points.length, stays.length), points, stays), (path) =>
    path[0] === 'sessions' ? ['stays', ...path.slice(1)] : renameIntake(path),
  );
  const answers = Array.from({ length: upTo }, (_, k): SharingAnswer => {
    const { sessions, missing } = simulate(atIntake(question, k + 1, points, stays));
    const ends = sessions.flatMap((s) => (s.fullAt === undefined ? [] : [s.fullAt]));
    const short = sessions.length - ends.length;
    return {
      points: k + 1,
      allFull: short === 0,
      short,
      missing,
      ...(short === 0 ? { lastFullAt: seconds(Math.max(...ends)) } : {}),
    };
  });
  const firstShort = answers.findIndex((a) => !a.allFull);
  return { most: firstShort < 0 ? upTo : firstShort, answers };
}

import { inspection, isObject } from '../network/refuse.js';
import {
  atIntake,
  type IntakeQuestion,
  inspectQuestion,
  type PointAtIntake,
  renameIntake,
  type StayAtIntake,
} from './intake.js';
import type { NodeOutcome, SessionOutcome } from './outcome.js';
import { simulate } from './simulate.js';

/** What is asked: whether a vehicle at an intake is full when it leaves. @inline */
export interface FullQuestion extends IntakeQuestion {
  /** The point: its lines and its largest current. */
  readonly point: PointAtIntake;
  /** The stay of the vehicle and the energy that it needs. */
  readonly stay: StayAtIntake;
}

/** Whether it is full, and what the night was like. @inline */
export interface FullAnswer extends Omit<SessionOutcome, 'id' | 'point'> {
  /** Whether it has all that it needs when it leaves. */
  readonly full: boolean;
  /** What the intake saw: peak, time at the limit, time in which other load alone exceeded it. */
  readonly intake: NodeOutcome;
}

/**
 * Whether a car will be full by the time it leaves, on this fuse, beside this house.
 * @param question limit and other load of the intake, A; point and stay; how current is shared; time, s
 * @returns whether it is full, when, or what is missing, Wh; how often and how long it waited; what the intake saw
 * @throws CalculationError `invalid-input` with everything that is wrong
 * @example
 * ```ts
 * import { amperes, hours, kilowattHours, minutes, volts } from 'ohmwright';
 * import { fullInTime } from 'ohmwright/charging';
 *
 * const line = (a: number) => [amperes(a), amperes(0), amperes(0)] as const;
 * const evening = (load: number) => ({
 *   intake: { id: 'main fuse', limit: line(60) },
 *   load: { values: [line(load), line(load), line(load), line(load), line(8), line(8), line(8), line(8), line(8), line(8), line(8), line(8), line(8)], every: hours(1) },
 *   point: { lines: ['L1'], most: amperes(32) },
 *   stay: { arrives: hours(18), leaves: hours(31), energy: kilowattHours(80) },
 *   from: hours(18), to: hours(31), step: minutes(1), voltage: volts(230),
 *   control: { policy: { rule: 'max-min-amperes' } },
 * }) as const;
 * fullInTime(evening(35)).full; // => true
 * const busy = fullInTime(evening(56));
 * busy.full; // => false
 * busy.missing; // => 13760
 * busy.waited; // => 14400
 * ```
 */
export function fullInTime(question: FullQuestion): FullAnswer {
  const found = inspection();
  found.when(!isObject(question), [], 'must be an object');
  found.refuse('The question whether a vehicle will be full');
  for (const key of ['intake', 'point', 'stay'] as const)
    found.when(!isObject(question[key]), [key], 'must be an object');
  found.refuse('The question whether a vehicle will be full');
  const input = atIntake(question, 1, [question.point], [question.stay]);
  inspectQuestion('The question whether a vehicle will be full', input, (path) =>
    path[0] === 'points'
      ? ['point', ...path.slice(2)]
      : path[0] === 'sessions'
        ? ['stay', ...path.slice(2)]
        : renameIntake(path),
  );
  const { sessions, nodes } = simulate(input);
  const { id: _, point: __, ...outcome } = sessions[0]!;
  return { full: outcome.fullAt !== undefined, ...outcome, intake: nodes[0]! };
}

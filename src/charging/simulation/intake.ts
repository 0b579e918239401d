import { stated } from '../../core/index.js';
import { hasCode, invalidInput } from '../../units/index.js';
import type { NetworkNode, NetworkPoint, PerLine } from '../network/network.js';
import type { RepeatingProfile } from '../time/profiles.js';
import type { ChargingSession } from '../time/sessions.js';
import { inspectSimulation, type SimulationInput } from './input.js';

/** What questions about one intake have in common. */
export interface IntakeQuestion
  extends Omit<SimulationInput, 'network' | 'sessions' | 'keepSeries' | 'load' | 'limits'> {
  /** The intake: its limits, and its other load unless that changes with time. */
  readonly intake: NetworkNode;
  /** Other load of the intake over time, A. */
  readonly load?: RepeatingProfile<PerLine>;
  /** Limits of the intake over time, A. */
  readonly limits?: RepeatingProfile<PerLine>;
}

/** A point without its name and place. @inline */
export type PointAtIntake = Omit<NetworkPoint, 'id' | 'node' | 'connected' | 'waitingSince' | 'received'>;

/** A stay without the name of its point. @inline */
export type StayAtIntake = Omit<ChargingSession, 'id' | 'point'>;

/** The simulation of as many points at an intake as are asked for; points and stays are taken in turn. */
export function atIntake(
  question: IntakeQuestion,
  count: number,
  points: readonly PointAtIntake[],
  stays: readonly StayAtIntake[],
): SimulationInput {
  const { intake, load, limits, from, to, step, voltage, control, hours, sources } = question;
  const each = Array.from({ length: count }, (_, i) => i);
  // names of equal length: the order of names is the order of numbers
  const name = (i: number) => `point ${String(i + 1).padStart(4, '0')}`;
  return {
    network: {
      nodes: [intake],
      points: each.map((i) => ({ ...points[i % points.length]!, id: name(i), node: intake.id })),
    },
    sessions: each.map((i) => ({ ...stays[i % stays.length]!, id: `vehicle ${i + 1}`, point: name(i) })),
    from,
    to,
    step,
    voltage,
    control,
    ...stated({
      load: load && [{ ...load, node: intake.id }],
      limits: limits && [{ ...limits, node: intake.id }],
      hours,
      sources,
    }),
  };
}

type Path = readonly (string | number)[];

/**
 * Throws `invalid-input` with everything that is wrong with the simulation of a question.
 * @param rename gives the path in the question for one in the simulation
 */
export function inspectQuestion(what: string, input: SimulationInput, rename: (path: Path) => Path): void {
  try {
    inspectSimulation(input);
  } catch (error) {
    if (!hasCode(error, 'invalid-input')) throw error;
    throw invalidInput(
      what,
      error.detail.problems.map((p) => ({ ...p, path: rename(p.path) })),
    );
  }
}

/** Paths of the one node and its profiles. */
export const renameIntake = (path: Path): Path =>
  path[0] === 'nodes'
    ? ['intake', ...path.slice(2)]
    : path[0] === 'load' || path[0] === 'limits'
      ? [path[0], ...path.slice(2)]
      : path;

import type { Line } from '../../installation/index.js';
import { type Amperes, amperes } from '../../units/index.js';
import type { NeutralExcess, Unbalance } from '../allocation/unbalance.js';
import type { Stamps } from './stamps.js';

/** What a controller remembers of a point: plain, JSON-ready. Times are in s of its running time, currents in A. @inline */
export interface PointMemory {
  /** The command that stands: 0 or at least the smallest current. */
  readonly command: number;
  /** What the vehicle may still draw after a reduction, and until when. */
  readonly lingers?: { readonly current: number; readonly until: number };
  /** Since when more is available without a break, and the least that was available in that time. */
  readonly rises?: { readonly since: number; readonly to: number };
  /** Why it was paused, while it is. */
  readonly paused?: 'want' | 'turn';
  /** Since when it waits: since a vehicle wants energy, or since the end of the last turn in which it had current. */
  readonly wantsSince?: number;
  /** When it last said anything; nothing yet when absent. */
  readonly heard?: number;
  /** Energy received when the order was last looked at, Wh. */
  readonly received: number;
}

/** What a controller remembers from step to step: plain, JSON-ready. */
export interface ControlState {
  /** Clock value of the last step, s. */
  readonly clock?: number;
  /** Running time, s: what the clock has gone on, no step counting for more than its period. A clock that jumps shortens no hold. */
  readonly running: number;
  /** Clock value of the last good measurement, s. */
  readonly measuredAt?: number;
  /** Clock value before which no measurement counts, s: when the clock last went back. */
  readonly notBefore?: number;
  /** Steps since the last good measurement. */
  readonly missed: number;
  /** How the stamps of measurements stand to the clock. */
  readonly stamps: Stamps;
  /** Turn of the running time in which the order of service was looked at. */
  readonly turn?: number;
  readonly points: Readonly<Record<string, PointMemory>>;
}

/** Why a measurement is not used. @inline */
export type MeasurementFault =
  | 'none' // there is no measurement
  | 'not-a-number' // a current or a time is no finite number, or a current of a vehicle is negative
  | 'incomplete' // a metered node or one of its lines is missing
  | 'not-new' // it is as old as the last one, or older
  | 'from-the-future' // its stamp is ahead of the clock
  | 'stale' // it is too old
  | 'clock' // the clock value is no number, or the clock has just gone back
  | 'no-solution'; // the sharing itself failed

/** What a step of a controller decides. */
export interface ControlStep {
  /** What to remember. */
  readonly state: ControlState;
  /** Current for each point by name, A: 0 or at least its smallest current. */
  readonly commands: Readonly<Record<string, Amperes>>;
  /**
   * `sharing`: a new measurement was used. `holding`: there was none that could be used; nothing rises. `safe`: the last
   * good one is too old; every point is at its safe current or below.
   */
  readonly mode: 'sharing' | 'holding' | 'safe';
  /** Why the measurement was not used. */
  readonly fault?: MeasurementFault;
  /** Limits that other load alone exceeds. */
  readonly overloaded: readonly { readonly node: string; readonly line: Line }[];
  /** Limits on unbalance that other load alone exceeds. */
  readonly unbalanced: readonly Unbalance[];
  /** Limits of neutrals that other load alone exceeds. */
  readonly neutrals: readonly NeutralExcess[];
  /** Points whose vehicle draws more than it was told: it counts as other load, and the others make room for it. */
  readonly ignoring: readonly string[];
  /** Points that do not say what they draw, metered with the rest: they get their safe current and no more. */
  readonly unread: readonly string[];
  /** Points with a vehicle that cannot run now, because what is allowed there is below their smallest current. */
  readonly unable: readonly string[];
}

/** What a vehicle may still draw at a time after a reduction, A. */
export const lingersAt = ({ lingers }: PointMemory, time: number): number =>
  lingers && lingers.until > time ? lingers.current : 0;

/** What lingers after a change of the command, for as long as point and vehicle may take. */
export function lingering(
  memory: PointMemory,
  command: number,
  time: number,
  reaction: number,
): PointMemory['lingers'] | undefined {
  const before = lingersAt(memory, time);
  if (command >= memory.command) return before > command ? memory.lingers : undefined;
  if (reaction === 0) return undefined;
  return { current: Math.max(memory.command, before), until: time + reaction };
}

/** A copy without some of its members. */
export const without = <T extends object, K extends keyof T>(value: T, ...keys: K[]): Omit<T, K> => {
  const rest = { ...value };
  for (const key of keys) delete rest[key];
  return rest;
};

/** The commands of all points. */
export const commandsOf = (points: ControlState['points']): Record<string, Amperes> => {
  const commands: Record<string, Amperes> = {};
  for (const id of Object.keys(points)) commands[id] = amperes(points[id]!.command);
  return commands;
};

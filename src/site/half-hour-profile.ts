import { type Board, type Line, lineConductors } from '../installation/index.js';
import { type VoltAmperes, type Volts, voltAmperes } from '../units/index.js';
import type { Through } from './night-neutral.js';

/** What a site takes half hour by half hour on a day on which all vehicles charge: for the network operator. @inline */
export interface HalfHourProfile {
  /** Mean of each half hour from midnight on, VA, all lines together: 48 values. */
  readonly mean: readonly VoltAmperes[];
  /** The largest of them, rounded up to whole kVA: a capacity to ask for, VA. */
  readonly capacity: VoltAmperes;
}

const IN_A_DAY = 48;
const KVA = 1000;

/**
 * The day of a site at its origin, while everything else draws its maximum demand throughout: what is more than any real day
 * takes, as far as the demand is right.
 * @param board the board at the origin
 * @param through what flows there on a line in each step of the night, A
 * @param existing what everything else draws there on a line, A
 * @param minutes begin of each step, minutes since midnight of the first day, steps of a minute
 * @param voltage of a line to neutral, V
 */
export function halfHourProfile(
  board: Board,
  through: Through,
  existing: (board: Board, line: Line) => number,
  minutes: readonly number[],
  voltage: Volts,
): HalfHourProfile {
  const rest = lineConductors.reduce((sum, line) => sum + existing(board, line), 0) * voltage;
  const sums = Array.from({ length: IN_A_DAY }, () => 0);
  const counted = Array.from({ length: IN_A_DAY }, () => 0);
  const lines = lineConductors.map((line) => through(board, line));
  for (const [k, minute] of minutes.entries()) {
    const at = Math.floor((((minute % 1440) + 1440) % 1440) / 30);
    sums[at] = (sums[at] ?? 0) + lines.reduce((sum, course) => sum + (course[k] ?? 0), 0) * voltage;
    counted[at] = (counted[at] ?? 0) + 1;
  }
  // a half hour has thirty steps; outside the night there is the rest alone
  const mean = sums.map((sum, i) => voltAmperes((sum + rest * Math.max(0, 30 - (counted[i] ?? 0))) / 30));
  return { mean, capacity: voltAmperes(Math.ceil(Math.max(...mean) / KVA - 1e-9) * KVA) };
}

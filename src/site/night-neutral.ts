import { neutralOf } from '../charging/network/balance.js';
import { endsOf, isMissing } from '../core/index.js';
import { asOneWay } from '../installation/beside.js';
import { type Board, type Installation, type Line, lineConductors, pathsOf, type Run } from '../installation/index.js';
import { type Amperes, amperes, type Seconds, seconds } from '../units/index.js';
import { least } from './night-vehicles.js';

/** What the neutral ahead of a board carries in a night. @inline */
export interface NightNeutral {
  /** Name of the board, and of what feeds it. */
  readonly place: string;
  readonly feeder: string;
  /** Highest current at unity power factor, A, third harmonics of the feeder included where they are stated. */
  readonly peak: Amperes;
  /** Third harmonic that was counted, over the line current; absent where nobody states one, and none was counted. */
  readonly thirdHarmonic?: number;
  /** What protects the feeder, A: its neutral carries no more for long; absent where it is not known. */
  readonly limit?: Amperes;
  /** For how long it is above that, s. */
  readonly over: Seconds;
}

/** What everything draws on a line at a board and behind it, step by step, A. */
export type Through = (board: Board, line: Line) => readonly number[];

const statedOf = ({ thirdHarmonic }: Run): number | undefined => endsOf(thirdHarmonic)?.[1];

/**
 * The neutrals ahead of boards in a night. A load control that sees lines holds no neutral back: what is above the rating of
 * the device is told. Without third harmonics a neutral never carries more than the most loaded line.
 */
export function neutralsOf(
  installation: Installation,
  boards: readonly Board[],
  through: Through,
  step: number,
): readonly NightNeutral[] {
  const behind = new Map(boards.map((b) => [b.id, b]));
  return pathsOf(installation).flatMap(({ run }) =>
    run.feeds.flatMap((o): readonly NightNeutral[] => {
      const board = o.kind === 'board' ? behind.get(o.id) : undefined;
      if (!board || run.lines.length !== 3) return [];
      const thirdHarmonic = statedOf(run);
      const [one = [], two = [], three = []] = lineConductors.map((line) => through(board, line));
      const rating = least(`rating of the device of ${run.id}`, asOneWay(run).device.rating);
      const limit = isMissing(rating) ? undefined : rating;
      let [peak, over] = [0, 0];
      for (const [k, a] of one.entries()) {
        const current = neutralOf(a, two[k] ?? 0, three[k] ?? 0, thirdHarmonic);
        peak = Math.max(peak, current);
        if (limit !== undefined && current > limit + 1e-6) over += step;
      }
      return [
        {
          place: board.id,
          feeder: run.id,
          peak: amperes(peak),
          ...(thirdHarmonic === undefined ? {} : { thirdHarmonic }),
          ...(limit === undefined ? {} : { limit }),
          over: seconds(over),
        },
      ];
    }),
  );
}

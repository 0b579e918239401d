import { unknown } from '../core/index.js';
import type { ResidualDevice } from './device.js';
import type { Board, Path, Run } from './tree.js';

const opens = (r: ResidualDevice) => r.position === 'origin-of-circuit' || r.position === 'origin-of-installation';

/**
 * Residual current devices that stand upstream of the whole cable of a run: at its origin, on a feeder ahead of it, or
 * on a board that it leaves or that is passed on the way. One along the circuit or inside the equipment protects no
 * cable ahead of it and is left out.
 */
export function residualUpstream(path: Path): readonly ResidualDevice[] {
  const way: readonly Run[] = [...path.feeders, path.run];
  return path.boards.flatMap((board, i) => {
    const leaving = way[i];
    const onBoard = (board.residual ?? []).filter(
      (r) => r.serves === undefined || (leaving !== undefined && r.serves.includes(leaving.id)),
    );
    return [...onBoard, ...(leaving?.residual ?? []).filter(opens)];
  });
}

/** Where nobody says whether a residual current device stands: one that may be there, and the runs that it would serve. */
export interface Unlisted {
  /** Name of the board, or of the run at whose origin it would stand. */
  readonly at: string;
  readonly behind: readonly Run[];
  readonly device: ResidualDevice;
}

const saidNone = ({ residual, noResidual: none }: Pick<Board | Run, 'residual' | 'noResidual'>): boolean =>
  (residual ?? []).length > 0 || (none?.state === 'known' && none.value);

function unlisted(at: string, behind: readonly Run[]): Unlisted {
  const open = unknown(`look at ${at}: describe those that stand there, or say who found that there is none`);
  const marking = {
    type: open,
    rating: open,
    ratedCurrent: open,
    delay: open,
    opensAllLive: open,
    bidirectional: open,
  };
  return { at, behind, device: { position: 'origin-of-circuit', ...marking } };
}

/**
 * Places on the way to a run where nothing is said of residual current devices: boards, and existing runs. What is
 * installed with a new run is what is described.
 */
export function residualUnlisted({ boards, feeders, run }: Path): readonly Unlisted[] {
  const way = [...feeders, run];
  return boards.flatMap((board, i) => {
    const leaving = way[i];
    return [
      ...(saidNone(board) ? [] : [unlisted(board.id, board.runs)]),
      ...(leaving?.existing && !saidNone(leaving) ? [unlisted(leaving.id, [leaving])] : []),
    ];
  });
}

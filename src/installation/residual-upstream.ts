import type { ResidualDevice } from './device.js';
import type { Path, Run } from './tree.js';

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

import type { ResidualDevice } from './device.js';
import type { Path, Run } from './tree.js';

const opens = (r: ResidualDevice) => r.position === 'origin-of-circuit' || r.position === 'origin-of-installation';

/**
 * Residual current devices that stand upstream of the whole cable of a run: at its origin, on a feeder ahead of it, or
 * on a board that it leaves or that is passed on the way. One along the circuit or inside the equipment protects no
 * cable ahead of it and is left out.
 * @param path the way from the origin to the run
 * @returns the devices, from the origin towards the run
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { pathTo, residualUpstream } from 'ohmwright';
 * import { readSurvey } from 'ohmwright/io';
 * import { withAllWanted } from 'ohmwright/site';
 *
 * const path = pathTo(withAllWanted(readSurvey(survey)), 'drive circuit');
 * path && residualUpstream(path).length; // => 1
 * ```
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

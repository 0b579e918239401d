import { type Fact, known } from '../../core/index.js';
import type { Path, ResidualDevice, Run } from '../../installation/index.js';

/** Largest rated residual current of which no selective device exists, A: EN 61008-1, from memory. */
const neverSelective = 0.03;

/**
 * Delay that a residual current device is judged by: as marked, else the slower one that it may have.
 * @param device the device
 * @returns the delay and what it rests on; a fact that is stated as unknown stays unknown
 * @example
 * ```ts
 * import { known, milliamperes } from 'ohmwright';
 * import { delayOf } from 'ohmwright/bs7671';
 *
 * delayOf({ position: 'origin-of-circuit', type: known('A'), rating: known(milliamperes(100)) }).delay; // => { state: 'known', value: 'selective' }
 * ```
 */
export function delayOf(device: ResidualDevice): {
  readonly delay: Fact<'general' | 'selective'>;
  readonly by?: string;
} {
  if (device.delay !== undefined) return { delay: device.delay };
  return device.rating.state === 'known' && device.rating.value <= neverSelective
    ? { delay: known('general'), by: 'no delay stated; up to 30 mA there is no selective device' }
    : { delay: known('selective'), by: 'no delay stated: the slower kind is taken' };
}

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
 * import { pathTo } from 'ohmwright';
 * import { residualUpstream } from 'ohmwright/bs7671';
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

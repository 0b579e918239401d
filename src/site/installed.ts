import { known } from '../core/index.js';
import type { Board, Cable, Installation, Run } from '../installation/index.js';
import type { Amperes, SquareMillimetres } from '../units/index.js';
import type { Survey, WantedPoint } from './survey.js';

/**
 * The installation with a run added to the board of this name.
 * @param installation the installation
 * @param boardId name of the board
 * @param run the run to add
 */
export function withAddedRun(installation: Installation, boardId: string, run: Run): Installation {
  const at = (board: Board): Board => ({
    ...board,
    runs: [
      ...board.runs.map((r) => ({ ...r, feeds: r.feeds.map((o) => (o.kind === 'board' ? at(o) : o)) })),
      ...(board.id === boardId ? [run] : []),
    ],
  });
  return { ...installation, board: at(installation.board) };
}

/**
 * The installation of a survey with all that is wanted in its place, sizes and ratings still open.
 * @param survey the survey
 */
export const withAllWanted = (survey: Survey): Installation =>
  survey.wanted.reduce((i, w) => withAddedRun(i, w.from, w.run), survey.installation);

/**
 * A wanted run with its cable, size and device rating decided.
 * @param wanted what is wanted
 * @param cable the cable chosen
 * @param area size of its line conductors, mm²
 * @param rating rated current of its device, A
 */
export const decidedRun = (wanted: WantedPoint, cable: Cable, area: SquareMillimetres, rating: Amperes): Run => ({
  ...wanted.run,
  cable: { ...cable, area: known(area, 'design') },
  device: { ...wanted.run.device, rating: known(rating, 'design') },
});

import { type Fact, type Missing, missing, unknown } from '../core/index.js';
import type { ResidualDevice } from './device.js';
import type { ChargePoint } from './load.js';
import { hasResidual } from './marking.js';
import { type Board, leavesTails, mayLeaveTails, type Path, type Run } from './tree.js';

/** Whether somebody looked and found no residual current device. */
const foundNone = ({ noResidual: none }: { readonly noResidual?: Fact<boolean> }): boolean =>
  none?.state === 'known' && none.value === true;

/** Whether nobody says whether there is one inside a charge point. */
export const insideOpen = (point: ChargePoint): boolean => point.residual === undefined && !foundNone(point);

const opens = (r: ResidualDevice) => r.position === 'origin-of-circuit' || r.position === 'origin-of-installation';

/** A device of a board, with the circuits that it serves where they are named. */
type OnBoard = ResidualDevice & { readonly serves?: readonly string[] };

/** Whether a device of a board serves the run that leaves it on the way: one that leaves the tails ahead of it only where it is named. */
export const onWayTo = ({ serves }: OnBoard, leaving: Run | undefined): boolean =>
  serves === undefined
    ? leaving === undefined || !(leavesTails(leaving) || mayLeaveTails(leaving))
    : leaving !== undefined && serves.includes(leaving.id);

/** Whether a device of a board may serve a run that leaves it: what may leave the tails may as well be behind the device. */
export const mayServe = (device: OnBoard, leaving: Run): boolean =>
  onWayTo(device, leaving) || (device.serves === undefined && mayLeaveTails(leaving));

/**
 * Residual current devices that stand upstream of the whole cable of a run: at its origin, on a feeder ahead of it, or
 * on a board that it leaves or that is passed on the way. One along the circuit or inside the equipment protects no
 * cable ahead of it and is left out.
 */
export function residualUpstream({ boards, feeders, run }: Path): readonly ResidualDevice[] {
  const way: readonly Run[] = [...feeders, run];
  return boards.flatMap((board, i) => {
    const leaving = way[i];
    // one that is said to be inside equipment, or along a circuit, is not on the board
    const onBoard = (board.residual ?? []).filter((r) => opens(r) && onWayTo(r, leaving));
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

const described = (at: Board | Run): boolean => (at.residual ?? []).some((r) => !('runs' in at) || opens(r));

/** How a place is settled of which nobody says what stands there; undefined where somebody does. */
function unsaid(at: Board | Run): string | undefined {
  return described(at) || foundNone(at)
    ? undefined
    : `look at ${at.id}: describe those that stand there, or say who found that there is none`;
}

/**
 * The same of an RCBO of which the residual current part is not described, which may be of any type and rating, and of a device that
 * may be an RCBO, since nobody says what it is.
 */
function undescribedBreaker({ id, device: { kind }, residual = [] }: Run): string | undefined {
  if (residual.some((r) => r.position === 'origin-of-circuit')) return undefined;
  if (kind.state !== 'known')
    return `look at the device of ${id}: if it is an RCBO, describe its residual current part`;
  return hasResidual(kind.value) ? `the device of ${id} is an RCBO: describe its residual current part` : undefined;
}

function unlisted(at: string, behind: readonly Run[], obtain: string): Unlisted {
  const open = unknown(obtain);
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

/** What is missing of a board of which nobody says what residual current devices it has; nothing where somebody does. */
export function residualUnsaid(board: Board): Missing | undefined {
  const obtain = unsaid(board);
  return obtain === undefined
    ? undefined
    : missing({ kind: 'fact', fact: `residual current devices of ${board.id}`, obtain });
}

/**
 * Places on the way to a run where nothing is said of residual current devices: boards, and
 * existing runs. What is installed with a new run is what is described, unless it is said that there are devices and
 * none is described.
 */
export function residualUnlisted({ boards, feeders, run }: Path): readonly Unlisted[] {
  const way = [...feeders, run];
  return boards.flatMap((board, i) => {
    const leaving = way[i];
    const apart =
      leaving !== undefined &&
      (leavesTails(leaving) || (described(board) && !(board.residual ?? []).some((r) => onWayTo(r, leaving))));
    const either = leaving && mayLeaveTails(leaving) && (board.residual ?? []).some((r) => opens(r) && !r.serves);
    const [ofBoard, ofRun] = [
      either ? `see whether ${leaving.id} leaves the tails ahead of ${board.id}` : apart ? undefined : unsaid(board),
      leaving && unsaid(leaving),
    ];
    const asked = leaving && (leaving.existing || leaving.noResidual !== undefined);
    const ofBreaker = leaving && (asked && ofRun !== undefined ? ofRun : undescribedBreaker(leaving));
    return [
      ...(ofBoard === undefined ? [] : [unlisted(board.id, board.runs, ofBoard)]),
      ...(leaving && ofBreaker !== undefined ? [unlisted(leaving.id, [leaving], ofBreaker)] : []),
    ];
  });
}

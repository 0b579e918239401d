import { endsOf, type Fact } from '../core/index.js';
import type { ChargePoint, Load } from './load.js';
import { type Board, leavesTails, outletsBelow, type Run } from './tree.js';

/** Whether an outlet can feed back. */
export const feedsBack = (o: Load | ChargePoint): boolean =>
  o.kind === 'charge-point' ? o.bidirectional === true : o.purpose === 'generation' || o.purpose === 'storage';

/** Whether an outlet may feed back: it does, or of a charge point nobody says that it does not. */
export const mayFeedBack = (o: Load | ChargePoint): boolean =>
  feedsBack(o) || (o.kind === 'charge-point' && o.bidirectional === undefined);

const largest = (fact: Fact<number>): number => endsOf(fact)?.[1] ?? Number.POSITIVE_INFINITY;

/**
 * Whether a run leaves the tails ahead of the board that lists it, and feeds boards which carry its device and all their
 * sources together: what feeds in behind it does not pass that board.
 */
function feedsPast(run: Run): boolean {
  const { device, feeds } = run;
  if (!leavesTails(run) || feeds.length === 0) return false;
  return feeds.every((o) => {
    if (o.kind !== 'board') return false;
    const sources = o.runs.filter((r) => outletsBelow(r).some(mayFeedBack));
    const infeed = sources.reduce((sum, r) => sum + largest(r.device.rating), largest(device.rating));
    return infeed <= (endsOf(o.rating)?.[0] ?? 0);
  });
}

/** The runs of a board that can feed into it. */
export const feedingInto = ({ runs }: Board): readonly Run[] =>
  runs.filter((r) => !feedsPast(r) && outletsBelow(r).some(mayFeedBack));

import { between, endsOf, known } from '../core/index.js';
import { asOneWay } from '../installation/beside.js';
import { type Board, isJoined, type Path, type Run } from '../installation/index.js';
import { metres } from '../units/index.js';

/** What a length is at most, m; a length that is not known has no end. */
const mostOf = ({ length }: Run['stretches'][number]): number => endsOf(length)?.[1] ?? Number.POSITIVE_INFINITY;
const leastOf = ({ length }: Run['stretches'][number]): number => endsOf(length)?.[0] ?? 0;

/**
 * A ring as the way to a board along it: both legs in parallel. Of a ring a quarter of its length counts, as at its farthest
 * point; a ring whose quarter is the two legs in parallel has their impedance, at(L - at)/L.
 */
function ringUpTo(feeder: Run, at: number, id: string): Run {
  const over = (lengthOf: typeof mostOf) => feeder.stretches.reduce((sum, s) => sum + lengthOf(s), 0);
  const share = (length: number) => {
    const x = length > 0 ? Math.min(1, at / length) : 0;
    return 4 * x * (1 - x);
  };
  const [least, most] = [over(leastOf), over(mostOf)];
  if (most === Number.POSITIVE_INFINITY) return feeder;
  // the legs in parallel only rise with the length of the ring
  const [low, high] = [share(least), share(most)];
  const by = `of the ring as seen from ${id}`;
  return {
    ...feeder,
    stretches: feeder.stretches.map((s) => {
      const [a, b] = [leastOf(s) * low, mostOf(s) * high];
      return { ...s, length: a === b ? known(metres(a), by) : between(metres(a), metres(b), by) };
    }),
  };
}

/** Of a feeder whose cable changes along the way each section counts as far as it may lie before the tap. */
function joinedUpTo(feeder: Run, at: number, id: string): Run {
  let [least, most] = [0, 0];
  const stretches = feeder.stretches.flatMap((stretch, i) => {
    const [short, long] = [leastOf(stretch), mostOf(stretch)];
    const ends = [Math.max(0, Math.min(short, at - most)), Math.max(0, Math.min(long, at - least))] as const;
    [least, most] = [least + short, most + long];
    if (ends[1] <= 0 && i > 0) return [];
    if (ends[0] === short && ends[1] === long) return [stretch];
    const by = `to where ${id} is tapped`;
    const length = ends[0] === ends[1] ? known(metres(ends[0]), by) : between(metres(ends[0]), metres(ends[1]), by);
    return [{ ...stretch, length }];
  });
  return { ...feeder, stretches };
}

/** A riser or busbar as the way to one of the boards that are tapped along it: no longer than to that board. */
function upTo(feeder: Run, { at, id }: Board): Run {
  // of several boards nobody knows which is near: the longest way drops most, the shortest carries the largest fault current
  if (at === undefined) {
    if (feeder.feeds.length === 1) return feeder;
    const stretches = feeder.stretches.map((stretch) => {
      const most = mostOf(stretch);
      const open = between(metres(0), metres(most), `${id} is tapped somewhere along it`);
      return most === Number.POSITIVE_INFINITY ? stretch : { ...stretch, length: open };
    });
    return { ...feeder, stretches };
  }
  if (feeder.ring) return ringUpTo(feeder, at, id);
  if (isJoined(feeder)) return joinedUpTo(feeder, at, id);
  // one cable all the way: what counts below the tap is how far it is, not on which stretch it lies, so that a length that
  // is not known may be any
  let left: number = at;
  const stretches = feeder.stretches.flatMap((stretch, i) => {
    const whole = mostOf(stretch);
    if (left <= 0 && i > 0) return [];
    const part = Math.min(whole, left);
    left -= part;
    return part === whole ? [stretch] : [{ ...stretch, length: known(metres(part), `to where ${id} is tapped`) }];
  });
  return { ...feeder, stretches };
}

/** The way to a run: each feeder no longer than to the board on the way that is tapped along it, ways side by side as one. */
export function upToTaps(path: Path): Path {
  const boards = path.boards.slice(1);
  return {
    ...path,
    run: asOneWay(path.run),
    feeders: path.feeders.map((f, i) => upTo(asOneWay(f), boards[i] as Board)),
  };
}

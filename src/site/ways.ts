import {
  type CheckResult,
  endsOf,
  type Known,
  known,
  knownOf,
  missing,
  type Sheet,
  type Statement,
} from '../core/index.js';
import type { Board, Installation } from '../installation/index.js';
import type { Built } from './installed.js';
import { boardsOf } from './option-survey.js';
import type { Survey, WorkFacts } from './survey.js';

/** Circuits that are yet to be connected to a board: those that are wanted, and runs that are listed as new. */
const newOn = (wanted: readonly string[], { runs }: Board): number =>
  runs.filter((r) => r.existing === false || wanted.includes(r.id)).length;

/** Whether a board has a way for each of so many new circuits. */
function waysSuffice({ id, spareWays }: Board, needed: number): Known<boolean> {
  const [least, most] = endsOf(spareWays) ?? [0, Number.POSITIVE_INFINITY];
  if (least >= needed) return true;
  if (most < needed) return false;
  const obtain = (spareWays?.state === 'unknown' ? spareWays.obtain : undefined) ?? 'photograph of the board';
  return missing({ kind: 'fact', fact: `spare ways of ${id}`, obtain });
}

/** Whether devices for the board are no longer made, so that its ways serve for nothing new. */
const devicesGone = ({ devicesToBeHad }: WorkFacts): boolean => knownOf(devicesToBeHad) === false;

/** The facts about the work, with what its boards settle: where there is a way for each new circuit, no enclosure is needed. */
export function settledWork({ work, wanted }: Survey, installation: Installation): WorkFacts {
  const ids = wanted.map((w) => w.run.id);
  const free = boardsOf(installation.board).every((board) => waysSuffice(board, newOn(ids, board)) === true);
  return work.newEnclosure || devicesGone(work) || !free
    ? work
    : { ...work, newEnclosure: known(false, 'there is a way for each new circuit') };
}

/** Whether every board that new circuits leave has a way for each of them, or a new enclosure gives it. */
export function waysResults(
  check: Statement,
  { installation, work, wanted }: Built,
  sheet: Sheet,
): readonly CheckResult[] {
  const { newEnclosure } = work;
  const gone = devicesGone(work);
  return boardsOf(installation.board).flatMap((board) => {
    const needed = newOn(wanted, board);
    if (needed === 0) return [];
    const enclosed = newEnclosure?.state === 'known' && newEnclosure.value;
    const free = !gone && waysSuffice(board, needed);
    const open = free === false && newEnclosure?.state === 'unknown';
    const enclosure = missing({
      kind: 'fact',
      fact: 'whether a new enclosure is planned',
      obtain: `${board.id} has no way for it: decide on an enclosure of its own for the new circuit`,
    });
    const circuits = `${needed} new circuit${needed === 1 ? '' : 's'} on ${board.id}`;
    return [
      sheet.check(check, {
        holds: enclosed || (open ? enclosure : free),
        because: enclosed
          ? `${circuits}: a new enclosure is planned`
          : `${circuits}: ${free === true ? 'there is a way for each' : `${gone ? 'the device can no longer be had for the board' : 'too few spare ways'}, and no new enclosure is planned`}`,
      }),
    ];
  });
}

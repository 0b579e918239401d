import { factValue, isMissing, type Known, missing } from '../core/index.js';
import type { Installation, OvercurrentDevice, Path } from '../installation/index.js';
import { isFuse } from '../installation/marking.js';

/**
 * Largest fuse behind which the conditional rating of an assembly for households is given, where its maker declares
 * nothing else, A. IEC 61439-3 and what is declared by it, from memory: 16 kA behind a service fuse of 100 A.
 */
const LARGEST_FUSE = 100;

/** Whether a device ahead is such a fuse. */
function fuseOf(name: string, { kind, rating }: OvercurrentDevice, cutOut: boolean): Known<boolean> {
  if (kind.state === 'known' && !isFuse(kind.value)) return false;
  // the cut-out of a service is a fuse, whichever
  if (kind.state !== 'known' && !cutOut) return missing({ kind: 'fact', fact: 'kind of the device ahead' });
  if (rating.state === 'unknown') return factValue(name, rating);
  const [least, most] = rating.state === 'known' ? [rating.value, rating.value] : [rating.least, rating.most];
  if (most <= LARGEST_FUSE) return true;
  return least > LARGEST_FUSE ? false : missing({ kind: 'fact', fact: name });
}

/**
 * Whether the conditional rating of an assembly on the way counts: a fuse stands ahead that is no larger than the one for
 * which such ratings are given. A larger one, or a circuit-breaker, is for the maker to declare.
 */
export function assemblyRatingCounts({ supply }: Installation, { feeders }: Pick<Path, 'feeders'>): Known<true> {
  const ahead = [
    fuseOf('cutOutRating', supply.cutOut, true),
    ...feeders.map((f) => fuseOf(`rating of the device of ${f.id}`, f.device, false)),
  ];
  if (ahead.includes(true)) return true;
  return (
    ahead.find(isMissing) ??
    missing({
      kind: 'fact',
      fact: 'conditional short-circuit rating',
      obtain: `such ratings are given behind a fuse of at most ${LARGEST_FUSE} A: ask the maker of the assembly what holds behind the device that stands ahead, and state it with the device of the circuit`,
    })
  );
}

import { endsOf, factValue, type Known, whenKnown } from '../../core/index.js';
import type { Run } from '../../installation/index.js';
import { type Metres, metres } from '../../units/index.js';

/** Length of a run one way. */
export function lengthOf(run: Run): Known<Metres> {
  const lengths = run.stretches.map((s) => factValue(`length of ${s.name}`, s.length));
  return whenKnown(lengths, (...all) => metres(all.reduce<number>((a, b) => a + b, 0)));
}

/** Length of a run one way at most, m; without end where it is not known. */
export const mostLengthOf = ({ stretches }: Run): number =>
  stretches.reduce((sum, { length }) => sum + (endsOf(length)?.[1] ?? Number.POSITIVE_INFINITY), 0);

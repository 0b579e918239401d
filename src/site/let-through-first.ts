import type { CheckResult, Gap } from '../core/index.js';
import type { Design } from '../design/index.js';

/** A smaller cable that only a figure of the maker stands in the way of: to be asked for before the larger one is bought. @inline */
export interface LetThroughFirst {
  /** Size of the line conductors that would do, mm². */
  readonly area: number;
  /** Rating of the device, A. */
  readonly rating: number;
  /** What to ask for, and of whom. */
  readonly obtain: string;
}

const gapsOf = (r: CheckResult): readonly Gap[] => [...(r.gaps ?? []), ...(r.alternatives ?? []).flatMap(gapsOf)];

const LET_THROUGH = 'let-through energy of the device';

/** Of the candidates before the chosen one the first of the same cable, of a smaller size, that is open for its let-through energy. */
export function letThroughFirst({ chosen, passedOver }: Design): LetThroughFirst | undefined {
  if (!chosen) return undefined;
  for (const { candidate, verdict, check } of passedOver) {
    if (verdict !== 'not-determined' || candidate.choice !== chosen.choice || candidate.area >= chosen.area) continue;
    const gap = gapsOf(check).find((g) => g.kind === 'fact' && g.fact === LET_THROUGH);
    if (gap?.kind === 'fact')
      return { area: candidate.area, rating: candidate.rating, obtain: gap.obtain ?? 'the maker of the device' };
  }
  return undefined;
}

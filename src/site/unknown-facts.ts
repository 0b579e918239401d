import type { CheckResult, Gap } from '../core/index.js';

/** A fact that is not known, how to obtain it, and what it blocks. */
export interface UnknownItem {
  /** Name of the fact. */
  readonly fact: string;
  /** How to obtain it: a photograph, a label, a letter, a measurement. */
  readonly obtain?: string;
  /** The decisions that wait for it, as the requirements that could not be judged. */
  readonly blocks: readonly string[];
  /** Whether one of them is a rule rather than advice. */
  readonly decides: boolean;
}

const gapsOf = (r: CheckResult): readonly Gap[] => [...(r.gaps ?? []), ...(r.alternatives ?? []).flatMap(gapsOf)];

/**
 * The facts behind results that could not be judged, each once, with what it blocks; those that a rule waits for first.
 * @param results results of checks
 * @returns facts with how to obtain each and what it blocks
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { assess } from 'ohmwright';
 * import { bs7671 } from 'ohmwright/bs7671';
 * import { readSurvey } from 'ohmwright/io';
 * import { unknownFacts } from 'ohmwright/site';
 *
 * const { installation } = readSurvey(survey);
 * const { results } = assess(bs7671('2018+A2:2022'), installation, 'cooker');
 * unknownFacts(results)[0]?.fact; // => 'kind of premises'
 * ```
 */
export function unknownFacts(results: readonly CheckResult[]): readonly UnknownItem[] {
  const found = new Map<string, { obtain?: string; blocks: Set<string>; decides: boolean }>();
  for (const result of results) {
    if (result.verdict !== 'not-determined') continue;
    for (const gap of gapsOf(result)) {
      const name = gap.kind === 'fact' ? gap.fact : gap.kind === 'edition' ? gap.edition : gap.explain;
      const item = found.get(name) ?? { blocks: new Set<string>(), decides: false };
      const obtain = gap.kind === 'fact' ? gap.obtain : gap.kind === 'edition' ? gap.explain : undefined;
      if (obtain !== undefined) item.obtain ??= obtain;
      item.blocks.add(result.title);
      item.decides ||= result.weight === 'rule';
      found.set(name, item);
    }
  }
  return [...found]
    .map(
      ([fact, { obtain, blocks, decides }]): UnknownItem => ({
        fact,
        ...(obtain === undefined ? {} : { obtain }),
        blocks: [...blocks],
        decides,
      }),
    )
    .sort((a, b) => Number(b.decides) - Number(a.decides) || (a.fact < b.fact ? -1 : a.fact > b.fact ? 1 : 0));
}

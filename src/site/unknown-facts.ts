import { type CheckResult, factWords, type Gap, stated, termOf } from '../core/index.js';
import { factIdOf, questionOf } from '../installation/index.js';
import { TO_BE_DESIGNED } from './survey.js';

/** A fact that is not known, how to obtain it, and what it blocks. @inline */
export interface UnknownItem {
  readonly fact: string;
  /** Its place in the register of facts, for `questionOf` and for a translation; absent where it is none that a survey holds. */
  readonly id?: string;
  /** Name of the thing that it is a fact of, where it is one of several. */
  readonly of?: string;
  /** Its role in the vocabulary, where it has one. */
  readonly role?: string;
  /** How to obtain it: a photograph, a label, a letter, a measurement. */
  readonly obtain?: string;
  /** Set where things are said of it that cannot be true together. */
  readonly disagree?: true;
  /** The decisions that wait for it, as the requirements that could not be judged. */
  readonly blocks: readonly string[];
  /** Whether one of them is a rule rather than advice. */
  readonly decides: boolean;
}

interface Found extends Pick<UnknownItem, 'id' | 'of' | 'role'> {
  obtain?: string;
  disagree?: true;
  blocks: Set<string>;
  decides: boolean;
}

const gapsOf = (r: CheckResult): readonly Gap[] => [...(r.gaps ?? []), ...(r.alternatives ?? []).flatMap(gapsOf)];

/** The facts behind results that could not be judged, each once, with what it blocks; those that a rule waits for first. */
export function unknownFacts(results: readonly CheckResult[]): readonly UnknownItem[] {
  const found = new Map<string, Found>();
  for (const result of results) {
    if (result.verdict !== 'not-determined') continue;
    for (const gap of gapsOf(result)) {
      const { fact, id, of, role, obtain, disagree } = named(gap);
      const item: Found = found.get(fact) ?? { ...stated({ id, of, role }), blocks: new Set<string>(), decides: false };
      if (obtain !== undefined) item.obtain ??= obtain;
      if (disagree) item.disagree = true;
      item.blocks.add(result.title);
      item.decides ||= result.weight === 'rule';
      found.set(fact, item);
    }
  }
  const items = [...found].map(([fact, { blocks, ...item }]): UnknownItem => ({ fact, ...item, blocks: [...blocks] }));
  // sizes follow once the rest is known: nobody is asked for them
  const asked = items.filter((item) => item.obtain !== TO_BE_DESIGNED);
  return (asked.some((item) => item.decides) ? asked : items).sort(
    (a, b) => Number(b.decides) - Number(a.decides) || (a.fact < b.fact ? -1 : a.fact > b.fact ? 1 : 0),
  );
}

/** A gap as a fact in words. */
function named(gap: Gap): Pick<UnknownItem, 'fact' | 'id' | 'of' | 'role' | 'obtain' | 'disagree'> {
  if (gap.kind === 'edition') return { fact: gap.edition, obtain: gap.explain };
  if (gap.kind !== 'fact') return { fact: gap.explain };
  const { fact, obtain, disagree } = gap;
  const own = factIdOf(fact) ?? (questionOf(fact) ? { id: fact } : {});
  return {
    fact: factWords(fact),
    ...own,
    ...(termOf(fact) ? { role: fact } : {}),
    ...(obtain === undefined ? {} : { obtain }),
    ...(disagree ? { disagree } : {}),
  };
}

import { basisOf, citation, type SheetDocument } from '../core/index.js';

/**
 * What the judged results of a sheet rest on that was recalled, as a caution; nothing where there is none.
 * @param sheet the written sheet of an option
 */
export function recalledCaution(sheet: SheetDocument): readonly string[] {
  const places = new Map<string, Set<string>>();
  for (const { source, title } of basisOf(sheet, 'memory')) {
    const { clause: _, ...publication } = source;
    const document = citation(publication);
    places.set(document, (places.get(document) ?? new Set()).add(source.clause ?? title));
  }
  if (places.size === 0) return [];
  const named = [...places].map(([document, clauses]) => `${document} (${[...clauses].join('; ')})`);
  return [
    `Rests on figures and rules from memory, not seen in print; compare them with the publication before relying on them: ${named.join(', ')}.`,
  ];
}

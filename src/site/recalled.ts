import { type Basis, basisOf, citation, type SheetDocument } from '../core/index.js';

/** Clauses of some definitions by the publication that they stand in. */
function places(basis: readonly Basis[]): string {
  const found = new Map<string, Set<string>>();
  for (const { source, title } of basis) {
    const { clause: _, ...publication } = source;
    const document = citation(publication);
    found.set(document, (found.get(document) ?? new Set()).add(source.clause ?? title));
  }
  return [...found].map(([document, clauses]) => `${document} (${[...clauses].join('; ')})`).join(', ');
}

/**
 * What the judged results of a sheet rest on that was recalled, as a caution; nothing where there is none.
 * @param sheet the written sheet of an option
 */
export function recalledCaution(sheet: SheetDocument): readonly string[] {
  const basis = basisOf(sheet, 'memory');
  if (basis.length === 0) return [];
  return [
    `Rests on figures and rules from memory, not seen in print; compare them with the publication before relying on them: ${places(basis)}.`,
  ];
}

/**
 * What the judged results of a sheet rest on that somebody compared with the print, by name and day.
 * @param sheet the written sheet of an option
 */
export function attestedNotice(sheet: SheetDocument): readonly string[] {
  const basis = basisOf(sheet, 'attested');
  if (basis.length === 0) return [];
  const who = [...new Set(basis.flatMap((b) => b.attested ?? []))];
  return [`Figures that were compared with the print, ${places(basis)}: attested by ${who.join('; ')}.`];
}

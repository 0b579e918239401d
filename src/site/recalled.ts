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
 * What the judged results of a sheet rest on that was recalled, as a caution, and that somebody compared with the print, by
 * name and day; nothing where there is none.
 * @param sheet the written sheet of an option
 */
export function basisCautions(sheet: SheetDocument): readonly string[] {
  const basis = basisOf(sheet, 'memory', 'attested');
  const [recalled, attested] = (['memory', 'attested'] as const).map((p) => basis.filter((b) => b.provenance === p));
  const who = [...new Set((attested ?? []).flatMap((b) => b.attested ?? []))];
  return [
    ...(recalled?.length
      ? [
          `Rests on figures and rules from memory, not seen in print; compare them with the publication before relying on them: ${places(recalled)}.`,
        ]
      : []),
    ...(attested?.length
      ? [`Figures that were compared with the print, ${places(attested)}: attested by ${who.join('; ')}.`]
      : []),
  ];
}

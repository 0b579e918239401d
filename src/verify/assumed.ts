import type { CheckResult, SheetDocument, SheetLine } from '../core/index.js';

/** Identifiers of the lines that a line uses. */
function usedBy(line: SheetLine): readonly string[] {
  const ids = Object.values(line.ids ?? {});
  return line.kind === 'gather' ? [...ids, ...line.parts] : line.kind === 'same' ? [...ids, line.from] : ids;
}

/** The lines of a sheet and its parts. */
function linesOf(document: SheetDocument): readonly SheetLine[] {
  return document.lines.flatMap((line) => (line.kind === 'part' ? linesOf(line.part) : [line]));
}

/**
 * Assumptions that figures of a sheet were taken from on which a rule rests that passes, by what its lines name. Of a check
 * that any of several passes, those of the one that rests on fewest.
 */
export function assumedBehindRules(document: SheetDocument): ReadonlySet<string> {
  const lines = linesOf(document);
  const byId = new Map(lines.flatMap((l) => (l.id === undefined ? [] : [[l.id, l] as const])));
  const checks = lines.filter((l) => l.kind === 'check');
  const textOf = (r: CheckResult): string => JSON.stringify(r);
  const byResult = new Map(checks.map((l) => [textOf(l.result), l]));
  const behind = (from: SheetLine): ReadonlySet<string> => {
    const found = new Set<string>();
    const met = new Set([from]);
    for (const line of met) {
      if ((line.kind === 'given' || line.kind === 'label') && line.assumed !== undefined) found.add(line.assumed);
      for (const id of usedBy(line)) {
        const used = byId.get(id);
        if (used) met.add(used);
      }
    }
    return found;
  };
  const restsOn = (result: CheckResult): ReadonlySet<string> => {
    const line = byResult.get(textOf(result));
    const own = line ? behind(line) : new Set<string>();
    const ways = (result.alternatives ?? []).filter((a) => a.verdict === 'pass').map(restsOn);
    const [least = new Set<string>()] = ways.sort((a, b) => a.size - b.size);
    return new Set([...own, ...least]);
  };
  const quoted = new Set(checks.flatMap((l) => (l.result.alternatives ?? []).map(textOf)));
  const rules = checks.filter(
    ({ result }) => result.weight === 'rule' && result.verdict === 'pass' && !quoted.has(textOf(result)),
  );
  return new Set(rules.flatMap(({ result }) => [...restsOn(result)]));
}

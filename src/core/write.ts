import { isMissing, type Known } from './fact.js';
import { cellAttestors, cellProvenance } from './provenance.js';
import type { Entry, Recorder } from './sheet.js';
import type { Outcome, SheetDocument, SheetLine, Written } from './sheet-lines.js';
import { stated } from './stated.js';
import { termOf } from './vocabulary/index.js';

export const written = (name: string, value: number): Written => {
  const term = termOf(name);
  return { name, symbol: term?.symbol ?? name, value, unit: term?.unit ?? '' };
};
export const outcome = (name: string, value: Known<number>): Outcome =>
  isMissing(value) ? { blocked: value.missing } : { gives: written(name, value) };
const plainKeys = (keys: Readonly<Record<string, unknown>>, axes: readonly { readonly name: string }[]) =>
  Object.fromEntries(axes.map((a) => [a.name, keys[a.name]] as const).filter(([, v]) => !isMissing(v))) as Record<
    string,
    string | number
  >;

/**
 * Writes a recorder's lines out as plain data.
 * @param sheet the recorder
 * @param place place in the whole; empty for the sheet itself
 * @returns the sheet with its parts, plain data
 * @example
 * ```ts
 * import { amperes, recorder, writeSheet } from 'ohmwright';
 *
 * const sheet = recorder('A load');
 * sheet.given('designCurrent', amperes(32), 'setting of the point');
 * writeSheet(sheet).title; // => 'A load'
 * ```
 */
export function writeSheet(sheet: Recorder, place = ''): SheetDocument {
  return writePart(sheet, place, new Map());
}

function writePart(sheet: Recorder, place: string, places: Map<unknown, string>): SheetDocument {
  places.set(sheet, place);
  let parts = 0;
  const next = () => {
    parts++;
    return place ? `${place}.${parts}` : `${parts}`;
  };
  const lines = sheet.entries.flatMap((entry): readonly SheetLine[] => {
    if (entry.kind === 'part') return [{ kind: 'part', part: writePart(entry.part, next(), places) }];
    if (entry.kind === 'listed') return entry.lines(next, place);
    return [writeLine(entry, places)];
  });
  return { format: 'sheet/1', place, title: sheet.title, lines };
}

export function writeLine(
  entry: Exclude<Entry, { kind: 'part' | 'listed' }>,
  places: ReadonlyMap<unknown, string>,
): SheetLine {
  switch (entry.kind) {
    case 'given':
      return {
        kind: 'given',
        name: entry.name,
        words: termOf(entry.name)?.words ?? '',
        ...stated({ by: entry.by, assumed: entry.assumed }),
        ...outcome(entry.name, entry.value),
      };
    case 'label':
      return {
        kind: 'label',
        name: entry.name,
        ...(isMissing(entry.value) ? { blocked: entry.value.missing } : { value: entry.value }),
        ...stated({ by: entry.by, assumed: entry.assumed }),
      };
    case 'look': {
      const { id, title, source, axes, cell } = entry.table;
      const keys = plainKeys(entry.keys, axes);
      const provenance = isMissing(entry.value) ? undefined : cellProvenance(entry.table, keys);
      return {
        kind: 'look',
        table: id,
        title,
        keys,
        source,
        ...stated({ provenance, attested: provenance && cellAttestors(entry.table, keys) }),
        ...outcome(cell, entry.value),
      };
    }
    case 'step': {
      const f = entry.formula;
      return {
        kind: 'step',
        formula: f.id,
        title: f.title,
        expression: f.kind === 'relation' ? `${f.terms.join(' + ')} = 0` : f.expression,
        uses: f.inputs.flatMap((n) =>
          typeof entry.values[n] === 'number' ? [written(n, entry.values[n] as number)] : [],
        ),
        ...stated({ constants: f.constants }),
        source: f.source,
        ...outcome(f.output, entry.value),
      };
    }
    case 'run': {
      const { id, title, method, source, output } = entry.procedure;
      return {
        kind: 'run',
        procedure: id,
        title,
        method,
        input: isMissing(entry.input) ? null : entry.input,
        source,
        ...outcome(output, entry.value),
      };
    }
    case 'gather':
      return {
        kind: 'gather',
        how: entry.how,
        from: entry.from,
        to: entry.to,
        parts: entry.parts.map((p) => places.get(p) ?? '?'),
        ...outcome(entry.to, entry.value),
      };
    case 'check': {
      // labels and alternatives stand in the result
      const { holds } = entry.evidence;
      const uses = Object.entries(entry.evidence).flatMap(([n, v]) => (typeof v === 'number' ? [written(n, v)] : []));
      return { kind: 'check', uses, ...(typeof holds === 'boolean' ? { holds } : {}), result: entry.result };
    }
    case 'result':
      return { kind: 'result', result: entry.result };
    case 'overall':
      return entry;
    case 'note':
      return { kind: 'note', text: entry.text };
    default: {
      const never: never = entry;
      return never;
    }
  }
}

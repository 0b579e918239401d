import type { CheckResult } from './check.js';
import { type Gap, isMissing, type Known } from './fact.js';
import type { Constants } from './formula.js';
import { cellProvenance } from './provenance.js';
import type { Entry, Gathering, Recorder } from './sheet.js';
import type { Provenance, Source } from './source.js';
import { termOf } from './vocabulary/index.js';

/** A number with its role and unit, as a written line holds it. */
export interface Written {
  /** Role from the vocabulary, or name of a constant. */
  readonly name: string;
  readonly symbol: string;
  readonly value: number;
  readonly unit: string;
}

/** What a line gives, or the reasons why it gives nothing. */
export type Outcome = { readonly gives: Written } | { readonly blocked: readonly Gap[] };

/** A line of a written sheet: plain data. */
export type SheetLine =
  | ({ readonly kind: 'given'; readonly name: string; readonly words: string; readonly by?: string } & Outcome)
  | {
      readonly kind: 'label';
      readonly name: string;
      readonly value?: string;
      readonly blocked?: readonly Gap[];
      readonly by?: string;
    }
  | ({
      readonly kind: 'look';
      readonly table: string;
      readonly title: string;
      readonly keys: Readonly<Record<string, string | number>>;
      readonly source: Source;
      /** How well the cells are known that were read. */
      readonly provenance?: Provenance;
    } & Outcome)
  | ({
      readonly kind: 'step';
      readonly formula: string;
      readonly title: string;
      readonly expression: string;
      readonly uses: readonly Written[];
      readonly constants?: Constants;
      readonly source: Source;
    } & Outcome)
  | ({
      readonly kind: 'run';
      readonly procedure: string;
      readonly title: string;
      readonly method: string;
      readonly input: unknown;
      readonly source: Source;
    } & Outcome)
  | ({
      readonly kind: 'gather';
      readonly how: Gathering;
      readonly from: string;
      readonly to: string;
      readonly parts: readonly string[];
    } & Outcome)
  | {
      readonly kind: 'check';
      readonly uses: readonly Written[];
      readonly holds?: boolean;
      readonly result: CheckResult;
    }
  | { readonly kind: 'result'; readonly result: CheckResult }
  | { readonly kind: 'note'; readonly text: string }
  | { readonly kind: 'part'; readonly part: SheetDocument };

/** A calculation sheet as plain data: it can be stored, sent, printed, and verified by somebody else. */
export interface SheetDocument {
  readonly format: 'sheet/1';
  /** Place in the whole: empty for the sheet itself, `2.1` for the first part of its second part. */
  readonly place: string;
  readonly title: string;
  readonly lines: readonly SheetLine[];
}

const written = (name: string, value: number): Written => {
  const term = termOf(name);
  return { name, symbol: term?.symbol ?? name, value, unit: term?.unit ?? '' };
};
const outcome = (name: string, value: Known<number>): Outcome =>
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
  const lines = sheet.entries.map((entry): SheetLine => {
    if (entry.kind === 'part') {
      parts++;
      const at = place ? `${place}.${parts}` : `${parts}`;
      return { kind: 'part', part: writePart(entry.part, at, places) };
    }
    return writeLine(entry, places);
  });
  return { format: 'sheet/1', place, title: sheet.title, lines };
}

function writeLine(entry: Exclude<Entry, { kind: 'part' }>, places: ReadonlyMap<unknown, string>): SheetLine {
  switch (entry.kind) {
    case 'given':
      return {
        kind: 'given',
        name: entry.name,
        words: termOf(entry.name)?.words ?? '',
        ...(entry.by === undefined ? {} : { by: entry.by }),
        ...outcome(entry.name, entry.value),
      };
    case 'label':
      return {
        kind: 'label',
        name: entry.name,
        ...(isMissing(entry.value) ? { blocked: entry.value.missing } : { value: entry.value }),
        ...(entry.by === undefined ? {} : { by: entry.by }),
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
        ...(provenance ? { provenance } : {}),
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
        ...(f.constants ? { constants: f.constants } : {}),
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
    case 'note':
      return { kind: 'note', text: entry.text };
    default: {
      const never: never = entry;
      return never;
    }
  }
}

import type { SheetDocument } from '../../src/index.js';

/** A sheet in which one thing was changed, and what. */
export interface Tampered {
  /** Where and what, such as `1.2 line 3 uses.0.value 32 -> 32.032`. */
  readonly what: string;
  /** The sheet with the change. */
  readonly sheet: SheetDocument;
}

/** Words for the reader, which no calculation can confirm; everything else on a line is tampered with. */
const words: readonly string[] = ['by', 'because', 'text', 'obtain', 'explain', 'fact', 'note', 'edition'];

/** What a value is changed into: as near to the truth as a forger would stay. */
function changed(value: unknown): readonly unknown[] {
  if (typeof value === 'number') return value === 0 ? [0.01] : [value * 1.000001, -value];
  if (typeof value === 'boolean') return [!value];
  if (value === 'pass') return ['fail', 'not-determined'];
  if (value === 'fail') return ['pass', 'not-required'];
  if (value === 'not-determined' || value === 'not-required') return ['pass', 'fail'];
  return typeof value === 'string' ? [`${value}x`] : [];
}

type Path = readonly (string | number)[];

/** Paths of all numbers, booleans and strings of a line, words apart. */
function leaves(value: unknown, path: Path = []): readonly Path[] {
  if (typeof value !== 'object' || value === null) return value === undefined || value === null ? [] : [path];
  return Object.entries(value).flatMap(([key, inner]) =>
    words.includes(key) ? [] : leaves(inner, [...path, Array.isArray(value) ? Number(key) : key]),
  );
}

/** A copy that differs in one place and shares the rest: gaps and sources may stand on several lines at once. */
function put(root: unknown, path: Path, value: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return value;
  const copy = (Array.isArray(root) ? [...root] : { ...(root as object) }) as Record<string | number, unknown>;
  copy[key] = put(copy[key], rest, value);
  return copy;
}

/** Paths of all lines of a sheet and of its parts, a part counting as a line. */
function linesOf(sheet: SheetDocument, path: Path = []): readonly { readonly place: string; readonly path: Path }[] {
  return sheet.lines.flatMap((line, i) => {
    const here = [...path, 'lines', i];
    if (line.kind === 'part') return linesOf(line.part, [...here, 'part']);
    return [{ place: `${sheet.place} line ${i + 1} (${line.kind})`, path: here }];
  });
}

/**
 * Every sheet that differs from this one in one number, label, key, identifier, unit, symbol, expression or verdict.
 * @param sheet an honest sheet
 * @param most how many changes of one value, 1 and up; all of them when absent
 */
export function* tampered(sheet: SheetDocument, most = 9): Generator<Tampered> {
  for (const { place, path } of linesOf(sheet)) {
    const line = path.reduce<unknown>((at, key) => (at as Record<string | number, unknown>)[key], sheet);
    for (const leaf of leaves(line)) {
      const old = leaf.reduce<unknown>((at, key) => (at as Record<string | number, unknown>)[key], line);
      for (const value of changed(old).slice(0, most)) {
        const what = `${place} ${leaf.join('.')}: ${String(old)} -> ${String(value)}`;
        yield { what, sheet: put(sheet, [...path, ...leaf], value) as SheetDocument };
      }
    }
  }
}

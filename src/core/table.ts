import { CalculationError, formatIn, invalidInput, type Problem, type Quantity, type UnitOf } from '../units/index.js';
import { type Axis, isLabels, placeOn } from './axis.js';
import { everyColumn, readPrint } from './printed.js';
import { citation, type Provenance, type Source } from './source.js';
import type { Name, Vocabulary } from './vocabulary/index.js';

export type { Axis, LabelAxis, NumberAxis } from './axis.js';

/** What a table is. */
export interface TableDefinition<A extends readonly Axis[] = readonly Axis[], O extends Name = Name> {
  /** Stable identifier: publication, then table number, such as `bs7671/4d5`. */
  readonly id: string;
  readonly title: string;
  /** The axes: those of the columns first, that of the rows last. */
  readonly axes: A;
  /** For each printed column, its key on every axis but the last. */
  readonly columns: readonly (readonly (string | number)[])[];
  /** Each printed row: its key on the last axis, then a cell per column; `null` where the print has none. */
  readonly rows: readonly (readonly (string | number | null)[])[];
  /** The role that a cell plays. */
  readonly cell: O;
  /** Canonical unit of a cell. */
  readonly unit: UnitOf<Vocabulary[O]>;
  /** The print is in this many of the canonical unit's parts: 1000 where it prints mV/A/m and the unit is V/(A·m). */
  readonly per?: number;
  /** The unit of the print, where it is not the canonical one. */
  readonly printed?: string;
  readonly source: Source;
  /**
   * Where the provenance differs: key of a row, a column (its keys with spaces between) or one of its keys, or
   * `column, row`; rows by numbers also as `25 to 95` or `column, 25 to 95`. The last that fits counts.
   */
  readonly provenanceOf?: Readonly<Record<string, Provenance>>;
  readonly notes?: readonly string[];
  /** Cells that somebody compared with the print, by `column, row`: who, when, and with which edition of it. */
  readonly attested?: ReadonlyMap<string, { readonly by: string; readonly on: string; readonly edition: string }>;
}

/** A table as it is written down: as its definition, with shorter forms of columns and rows. @inline */
export interface PrintedTable<A extends readonly Axis[] = readonly Axis[], O extends Name = Name>
  extends Omit<TableDefinition<A, O>, 'columns' | 'rows'> {
  /** As in the definition; absent where every combination of labels has a column, or the rows have head lines. */
  readonly columns?: TableDefinition['columns'];
  /**
   * As in the definition; or as text: a line for each axis of the columns, with its name and its key over every column,
   * then a line for each row, with its key and a cell for every column, `-` where the print has none.
   */
  readonly rows: TableDefinition['rows'] | string;
}

/** What tables of one form have in common. @inline */
export interface TableForm<A extends readonly Axis[] = readonly Axis[], O extends Name = Name>
  extends Pick<PrintedTable<A, O>, 'axes' | 'columns' | 'cell' | 'unit' | 'per' | 'printed' | 'notes'> {
  /** The publication that prints them, where it is one. */
  readonly source?: Pick<Source, 'document' | 'edition'>;
}

/** A table of a form: what is its own. @inline */
export interface TableOfForm
  extends Pick<PrintedTable, 'id' | 'title' | 'columns' | 'rows' | 'provenanceOf' | 'notes'> {
  /** Where it stands; what the form does not say of it. */
  readonly source: Omit<Source, 'document'> & Partial<Source>;
}

/** The key that an axis takes: one of its labels, or a quantity of its role. */
export type KeyOf<X> = X extends { readonly labels: readonly (infer L)[] }
  ? L
  : X extends { readonly name: infer N extends Name }
    ? Vocabulary[N]
    : never;

/** The keys of a look-up: one for each axis, by its name. @inline */
export type Keys<A extends readonly Axis[]> = { readonly [X in A[number] as X['name']]: KeyOf<X> };

/** A table, with its typed look-ups. */
export interface Table<A extends readonly Axis[] = readonly Axis[], O extends Name = Name>
  extends TableDefinition<A, O> {
  readonly kind: 'table';
  /** The cell for these keys, or undefined where there is none. */
  find(keys: Keys<A>): Vocabulary[O] | undefined;
  /** The cell for these keys; throws a CalculationError `no-cell` where there is none. */
  get(keys: Keys<A>): Vocabulary[O];
  /** Why there is no cell for these keys and what there is. */
  explain(keys: Keys<A>): CalculationError<'no-cell'>;
  /** The keys that an axis offers, in the order of the print; labels or numbers in the canonical unit. */
  offers(axis: A[number]['name']): readonly (string | number)[];
}

interface Grid {
  readonly keys: readonly (readonly (string | number)[])[];
  readonly places: readonly ReadonlyMap<string | number, number>[];
  readonly strides: readonly number[];
  readonly cells: Float64Array;
}

/** A definition that is no table: cells would be lost or read wrongly. */
function problemsOf(d: TableDefinition): readonly Problem[] {
  const problems: Problem[] = [];
  const wrong = (path: Problem['path'], message: string) => problems.push({ path, message });
  const last = d.axes.length - 1;
  const fits = (axis: Axis, key: unknown) =>
    isLabels(axis) ? axis.labels.includes(key as string) : typeof key === 'number' && Number.isFinite(key);
  const once = (what: 'columns' | 'rows' | 'axes', keys: readonly unknown[]) =>
    keys.forEach((key, i) => {
      if (keys.indexOf(key) < i) wrong([what, i], `repeats ${key}`);
    });
  if (last < 0) wrong(['axes'], 'has none');
  if (d.axes.filter((a) => !isLabels(a) && a.between === 'linear').length > 1)
    wrong(['axes'], 'a straight line runs along one axis only');
  once(
    'axes',
    d.axes.map((a) => a.name),
  );
  once(
    'columns',
    d.columns.map((c) => c.join(' | ')),
  );
  once(
    'rows',
    d.rows.map((r) => r[0]),
  );
  for (const [i, axis] of d.axes.entries()) {
    if (isLabels(axis) && new Set(axis.labels).size < axis.labels.length) wrong(['axes', i], 'repeats a label');
  }
  for (const [i, column] of d.columns.entries()) {
    if (column.length !== last) wrong(['columns', i], `has ${column.length} keys, not ${last}`);
    for (const [k, key] of column.entries()) {
      const axis = d.axes[k];
      if (axis && !fits(axis, key)) wrong(['columns', i], `${axis.name} has no ${key}`);
    }
  }
  for (const [i, row] of d.rows.entries()) {
    if (row.length !== d.columns.length + 1) wrong(['rows', i], `has ${row.length - 1} cells, not ${d.columns.length}`);
    const axis = d.axes[last];
    if (axis && !fits(axis, row[0])) wrong(['rows', i], `${axis.name} has no ${row[0]}`);
    for (const [c, cell] of row.slice(1).entries())
      if (cell !== null && !Number.isFinite(cell)) wrong(['rows', i], `cell ${c} is no number`);
  }
  return problems;
}

function gridOf(d: TableDefinition): Grid {
  const problems = problemsOf(d);
  if (problems.length > 0) throw invalidInput(`table ${d.id}`, problems);
  const last = d.axes.length - 1;
  const keys = d.axes.map((axis, i) => {
    if (isLabels(axis)) return axis.labels;
    const seen = i === last ? d.rows.map((r) => r[0] as number) : d.columns.map((c) => c[i] as number);
    return [...new Set(seen)].sort((a, b) => a - b);
  });
  const places = keys.map((list) => new Map(list.map((key, i) => [key, i] as const)));
  const strides: number[] = [];
  let size = 1;
  for (let i = last; i >= 0; i--) {
    strides[i] = size;
    size *= keys[i]?.length ?? 0;
  }
  const cells = new Float64Array(size).fill(Number.NaN);
  const per = d.per ?? 1;
  for (const [rowKey, ...values] of d.rows) {
    values.forEach((value, c) => {
      if (typeof value !== 'number') return;
      const at = [...(d.columns[c] ?? []), rowKey as string | number];
      const index = at.reduce<number>(
        (sum, key, i) => sum + (places[i]?.get(key) ?? Number.NaN) * (strides[i] ?? 0),
        0,
      );
      cells[index] = value / per;
    });
  }
  return { keys, places, strides, cells };
}

/**
 * Defines a table. Write `/* @__PURE__ *\/` before the call.
 * @param print axes, columns and rows as printed, unit, source
 * @returns the table with its typed look-ups
 * @throws CalculationError `invalid-input` at the first look-up when the definition is no table: a cell would be
 * lost or read wrongly
 * @example
 * ```ts
 * import { squareMillimetres } from 'ohmwright';
 * import { bs7671Tables } from 'ohmwright/bs7671';
 *
 * bs7671Tables['4D5'].get({ method: 'C', conductorArea: squareMillimetres(6) }); // => 47
 * bs7671Tables['4D5'].find({ method: 'C', conductorArea: squareMillimetres(7) }); // => undefined
 * ```
 */
export function table<const A extends readonly Axis[], O extends Name>(print: PrintedTable<A, O>): Table<A, O>;
/**
 * Defines a table that has its form in common with others.
 * @param form axes, unit, publication, and whatever else they share
 * @param print what is its own
 * @returns the table with its typed look-ups
 */
export function table<const A extends readonly Axis[], O extends Name>(
  form: TableForm<A, O>,
  print: TableOfForm,
): Table<A, O>;
export function table<const A extends readonly Axis[], O extends Name>(
  form: TableForm<A, O> | PrintedTable<A, O>,
  print?: TableOfForm,
): Table<A, O> {
  const written = { ...form, ...print, source: { ...form.source, ...print?.source } } as PrintedTable<A, O>;
  const { axes } = written;
  const last = axes.length - 1;
  let parsed: Pick<TableDefinition, 'columns' | 'rows'> | undefined;
  const cells = () => {
    parsed ??= readPrint(written.rows, axes, written.columns ?? everyColumn(axes.slice(0, last)));
    return parsed;
  };
  const definition = {
    ...written,
    // a text is read when its table is first used, not when its module is loaded
    get columns() {
      return cells().columns;
    },
    get rows() {
      return cells().rows;
    },
  };
  let grid: Grid | undefined;

  // a straight line runs along at most one axis: two cells and a weight
  const read = (keys: Readonly<Record<string, string | number>>): number => {
    grid ??= gridOf(definition);
    let low = 0;
    let high = 0;
    let weight = 0;
    for (let i = 0; i <= last; i++) {
      const axis = axes[i] as Axis;
      const key = keys[axis.name] as string | number;
      const stride = grid.strides[i] as number;
      const place = (grid.places[i] as ReadonlyMap<string | number, number>).get(key);
      if (place !== undefined) {
        low += place * stride;
        high += place * stride;
        continue;
      }
      const spot = placeOn(axis, key, grid.keys[i] ?? [], grid.places[i] ?? new Map());
      if (!spot) return Number.NaN;
      low += spot.low * stride;
      high += spot.high * stride;
      if (spot.weight > 0) weight = spot.weight;
    }
    const a = grid.cells[low] as number;
    return weight === 0 ? a : a + ((grid.cells[high] as number) - a) * weight;
  };
  const offers = (name: string): readonly (string | number)[] => {
    grid ??= gridOf(definition);
    return grid.keys[axes.findIndex((a) => a.name === name)] ?? [];
  };
  const find = (keys: Keys<A>) => {
    const value = read(keys as Readonly<Record<string, string | number>>);
    return Number.isNaN(value) ? undefined : (value as Vocabulary[O]);
  };
  const explain = (keys: Keys<A>) => explainMiss(definition, keys as Readonly<Record<string, string | number>>, offers);
  const get = (keys: Keys<A>) => {
    const value = find(keys);
    if (value === undefined) throw explain(keys);
    return value;
  };
  return Object.assign(definition, { kind: 'table', find, get, explain, offers } as const);
}

function explainMiss(
  d: TableDefinition,
  keys: Readonly<Record<string, string | number>>,
  offers: (axis: string) => readonly (string | number)[],
): CalculationError<'no-cell'> {
  const write = (axis: Axis, key: string | number | undefined) =>
    isLabels(axis) || typeof key !== 'number' ? String(key) : formatIn(key as Quantity<string>, axis.unit);
  const asked = d.axes.map((a) => `${a.name} ${write(a, keys[a.name])}`).join(', ');
  const has = d.axes
    .map(
      (a) =>
        `${a.name} ${offers(a.name)
          .map((k) => write(a, k))
          .join(' | ')}`,
    )
    .join('; ');
  return new CalculationError('no-cell', `${citation(d.source)} has no cell for ${asked}; it offers ${has}`, {
    table: d.id,
    keys,
    offers: Object.fromEntries(d.axes.map((a) => [a.name, offers(a.name)])),
    source: citation(d.source),
  });
}

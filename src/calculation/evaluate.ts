import {
  citation,
  type Formula,
  type Gap,
  isMissing,
  missing,
  outOfRange,
  type Procedure,
  type Relation,
  rangeGap,
  type Table,
  termOf,
  thrownGap,
  within,
} from '../core/index.js';
import { type Bounds, CalculationError } from '../units/index.js';
import type { Directions, How } from './line.js';
import { type Node, type Placed, type Thing, valueAt } from './lists.js';
import { figureOfFact, joined, missingOf, onlyWithin, plain, Span, spanOf } from './value.js';

export type Evaluate = (thing: Thing) => unknown;

/** Reads an entry for a thing. */
export interface Source {
  readonly name: string;
  readonly placed: Placed;
  /** How many things above the one that reads it the entry stands. */
  readonly up: number;
  readonly get: Evaluate;
}

/** What a pure function sees of the figures: one object that is filled anew for each call. */
export function viewOf(names: readonly string[]): Record<string, unknown> {
  const view: Record<string, unknown> = {};
  for (const name of names) view[name] = undefined;
  return view;
}
function fill(view: Record<string, unknown>, names: readonly string[], values: readonly unknown[]): void {
  for (let i = 0; i < names.length; i++) view[names[i] as string] = values[i];
}

/** The value of an entry so many things above one. */
function valueAbove(t: Thing, up: number, placed: Placed): unknown {
  let at = t;
  for (let i = 0; i < up; i++) at = at.above as Thing;
  return at.values[placed.index] ?? valueAt(at, placed);
}

export const getter =
  (placed: Placed, up: number): Evaluate =>
  (t) =>
    valueAbove(t, up, placed);

export function factReader(
  name: string,
  how: Extract<How, { kind: 'fact' }>,
): Required<Pick<Node, 'evaluate' | 'figure'>> {
  const called = how.called ?? name;
  const term = termOf(name);
  const refuse = (end: number, bounds: Bounds & { readonly unit: string }): void => {
    if (within(end, bounds)) return;
    throw new CalculationError('out-of-range', outOfRange(name, end, bounds, 'its role'), {
      quantity: name,
      value: end,
      unit: bounds.unit,
      bounds,
      source: 'vocabulary',
    });
  };
  const figure = (fact: unknown, t: Thing): unknown => {
    if (typeof fact !== 'object' && typeof fact !== 'number') return fact;
    const v = figureOfFact(typeof called === 'string' ? called : called(t.place as never), fact);
    if (!term) return v;
    if (typeof v === 'number') refuse(v, term);
    else if (v instanceof Span) {
      refuse(v.least, term);
      refuse(v.most, term);
    }
    return v;
  };
  const { read } = how;
  return { figure, evaluate: (t) => figure(read(t.place as never), t) };
}

export const inputsOf = (d: Formula | Relation | Table): readonly string[] =>
  d.kind === 'table' ? d.axes.map((a) => a.name) : d.inputs;

/** A definition of figures: of plain numbers at the cost of the arithmetic, of spans by their ends. */
export function apply(d: Formula | Relation | Table, from: readonly Source[]): Evaluate {
  const n = from.length;
  const names = inputsOf(d);
  const values: unknown[] = new Array(n).fill(undefined);
  const point = d.kind === 'table' ? cellOf(d, names, values) : resultOf(d, names, values);
  const odd = lifted(d, names, values, point);
  const placed = from.map((s) => s.placed);
  const ups = from.map((s) => s.up);
  let runs = 0;
  return (t) => {
    const own = ++runs;
    let simple = true;
    for (let i = 0; i < n; i++) {
      const v = valueAbove(t, ups[i] as number, placed[i] as Placed);
      if (typeof v === 'object') simple = false;
      values[i] = v;
    }
    // a line above has run this one for another thing meanwhile: the figures are put in place again
    if (runs !== own) for (let i = 0; i < n; i++) values[i] = valueAbove(t, ups[i] as number, placed[i] as Placed);
    return simple ? point() : odd();
  };
}

function cellOf(table: Table, names: readonly string[], values: readonly unknown[]): () => unknown {
  const view = viewOf(names);
  return () => {
    fill(view, names, values);
    return (
      table.find(view as never) ??
      missing({
        kind: 'cell',
        table: table.id,
        explain: table.explain({ ...view } as never).message,
        source: table.source,
      })
    );
  };
}

/** Bounds as bare numbers: they are compared for every figure. */
const leastIn = (b: Bounds) => b.least ?? -Number.MAX_VALUE;
const mostIn = (b: Bounds) => b.most ?? Number.MAX_VALUE;
const aboveIn = (b: Bounds) => b.above ?? Number.NEGATIVE_INFINITY;

function resultOf(f: Formula | Relation, names: readonly string[], values: readonly unknown[]): () => unknown {
  const bounds: readonly Bounds[] = names.map((name) => ({
    ...termOf(name),
    ...(f.valid as Readonly<Record<string, Bounds>> | undefined)?.[name],
  }));
  const own: Bounds = termOf(f.output) ?? {};
  const least = bounds.map(leastIn);
  const most = bounds.map(mostIn);
  const above = bounds.map(aboveIn);
  const [ownLeast, ownMost, ownAbove] = [leastIn(own), mostIn(own), aboveIn(own)];
  const call = f as (v: object) => number;
  const view = viewOf(names);
  return () => {
    for (let i = 0; i < names.length; i++) {
      const v = values[i] as number;
      if (!(v >= (least[i] as number) && v <= (most[i] as number) && v > (above[i] as number)))
        return outside(f, names, values, bounds);
      view[names[i] as string] = v;
    }
    let y: number;
    try {
      y = call(view);
    } catch (error) {
      return missing(thrownGap(f, error));
    }
    return y >= ownLeast && y <= ownMost && y > ownAbove ? y : missing(rangeGap(f.id, f.output, y, own, f.id));
  };
}

function outside(
  f: Formula | Relation,
  names: readonly string[],
  values: readonly unknown[],
  bounds: readonly Bounds[],
) {
  const gaps: Gap[] = names.flatMap((name, i) =>
    within(values[i] as number, bounds[i] as Bounds)
      ? []
      : [rangeGap(f.id, name, values[i] as number, bounds[i] as Bounds, citation(f.source))],
  );
  return missing(...gaps);
}

/** Over spans: ends by the direction of each input; along the axis of a table every printed row between them as well. */
function lifted(
  d: Formula | Relation | Table,
  names: readonly string[],
  values: unknown[],
  point: () => unknown,
): () => unknown {
  const direction: Directions = d.kind === 'table' ? {} : ((d as { direction?: Directions }).direction ?? {});
  return () => {
    if (values.some(isMissing)) return missingOf(values);
    const spans = values.flatMap((v, i) => (v instanceof Span ? [{ i, name: names[i] as string, span: v }] : []));
    const blind = spans.find((s) => d.kind !== 'table' && !direction[s.name]);
    if (blind) return onlyWithin(blind.name, blind.span);
    const results: unknown[] = [];
    if (d.kind === 'table') {
      const walk = (k: number): void => {
        const s = spans[k];
        if (!s) return void results.push(point());
        const inside = d
          .offers(s.name as never)
          .filter((key) => (key as number) > s.span.least && (key as number) < s.span.most);
        for (const key of [s.span.least, ...inside, s.span.most]) {
          values[s.i] = key;
          walk(k + 1);
        }
      };
      walk(0);
    } else {
      // where the way depends on the other inputs, both ends are tried
      const either = spans.filter((s) => direction[s.name] === 'either');
      for (let ends = 0; ends < 2 ** either.length; ends++)
        for (const low of [true, false]) {
          for (const s of spans) {
            const least =
              direction[s.name] === 'either'
                ? (ends >> either.indexOf(s)) % 2 === 0
                : (direction[s.name] === 1) === low;
            values[s.i] = least ? s.span.least : s.span.most;
          }
          results.push(point());
        }
    }
    if (results.some(isMissing)) return missingOf(results);
    return spanOf(Math.min(...(results as number[])), Math.max(...(results as number[])));
  };
}

export function derived(name: string, how: Extract<How, { kind: 'derive' }>, from: readonly Source[]): Evaluate {
  const n = from.length;
  const give = how.give as (v: object) => unknown;
  const names = how.needs;
  const view = viewOf(names);
  const direction = how.direction ?? {};
  const range = (t: Thing): unknown => {
    const all = from.map((s) => s.get(t));
    if (how.sees === 'values' && all.some(isMissing)) return missingOf(all);
    const blind = all.findIndex((v, i) => v instanceof Span && !direction[names[i] as string]);
    if (blind >= 0) {
      if (how.sees === 'values') return onlyWithin(names[blind] as string, all[blind] as Span);
      all[blind] = onlyWithin(names[blind] as string, all[blind] as Span);
    }
    const [a, b] = [true, false].map((low) => {
      fill(
        view,
        names,
        all.map((v, i) => (v instanceof Span ? ((direction[names[i] as string] === 1) === low ? v.least : v.most) : v)),
      );
      return give(view);
    });
    return joined(name, [a, b]);
  };
  const placed = from.map((s) => s.placed);
  const ups = from.map((s) => s.up);
  const strict = how.sees === 'values';
  let runs = 0;
  return (t) => {
    const own = ++runs;
    for (let i = 0; i < n; i++) {
      const v = valueAbove(t, ups[i] as number, placed[i] as Placed);
      if (typeof v === 'object' && (v instanceof Span || (strict && isMissing(v)))) return range(t);
      view[names[i] as string] = v;
    }
    if (runs !== own)
      for (let i = 0; i < n; i++) view[names[i] as string] = valueAbove(t, ups[i] as number, placed[i] as Placed);
    return give(view);
  };
}

export function ran(how: Extract<How, { kind: 'run' }>, from: readonly Source[]): Evaluate {
  const view = viewOf(how.needs);
  return (t) => {
    const all = from.map((s) => plain(s.name, s.get(t)));
    if (all.some(isMissing)) return missingOf(all);
    fill(view, how.needs, all);
    const input = how.input(view as never);
    return isMissing(input) ? input : procedureResult(how.procedure, input);
  };
}
/** What a procedure gives, or why it gives nothing here. */
export function procedureResult(procedure: Procedure, input: unknown): unknown {
  const own: Bounds = termOf(procedure.output) ?? {};
  try {
    const y = procedure(input);
    return within(y, own) ? y : missing(rangeGap(procedure.id, procedure.output, y, own, procedure.id));
  } catch (error) {
    return missing(thrownGap(procedure, error));
  }
}

import {
  type CheckResult,
  type Source as Cited,
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
import type { Directions, How, Line, Part } from './line.js';
import {
  type Judge,
  type Lines,
  List,
  type Node,
  Placed,
  type Scopes,
  type Stale,
  type Thing,
  thingsOf,
  valueAt,
} from './lists.js';
import {
  figureOfFact,
  isEitherWay,
  isNumeric,
  isWideMissing,
  joined,
  leastOf,
  missingOf,
  mostOf,
  onlyWithin,
  plain,
  Span,
  spanOf,
} from './value.js';

type Evaluate = (thing: Thing) => unknown;

/** Reads an entry for a thing. */
export interface Source {
  readonly name: string;
  readonly placed: Placed;
  /** How many things above the one that reads it the entry stands. */
  readonly up: number;
  readonly get: Evaluate;
}

/** Where checks find what they draw on. */
export interface Sources {
  readonly lists: ReadonlyMap<string, List>;
  /** A check or result with the edition that is judged by, where it cites the code itself. */
  cited<T extends { readonly source: Cited }>(of: T): T;
  source(list: List, name: string): Source;
  part(list: List, part: Part, role: string, by?: string, within?: string): Source;
}
/** The document that a contents list is of, and its edition. */
export interface Edited {
  readonly document: string;
  readonly edition: string;
}
/** Makes checks of a list ready. */
export type Judging = (all: Sources, list: List, of: readonly { readonly how: unknown }[]) => Judge;

/** What a pure function sees of the figures: one object that is filled anew for each call. */
function viewOf(names: readonly string[]): Record<string, unknown> {
  const view: Record<string, unknown> = {};
  for (const name of names) view[name] = undefined;
  return view;
}
function fill(view: Record<string, unknown>, names: readonly string[], values: readonly unknown[]): void {
  for (let i = 0; i < names.length; i++) view[names[i] as string] = values[i];
}

/** The lists of a contents list with every line in its place. */
export class Compiled {
  readonly lists = new Map<string, List>();
  readonly root: List;
  /** The tables that its lines read, as they were entered. */
  readonly tables = new Set<Table>();
  private draws: Set<Placed> = new Set();
  private users?: ReadonlyMap<Placed, readonly Placed[]>;

  constructor(
    scopes: Scopes,
    figures: Readonly<Record<string, Lines | undefined>>,
    private readonly judging: Judging,
    private readonly code?: Edited,
    private readonly instead?: ReadonlyMap<string, Table>,
  ) {
    let root: List | undefined;
    for (const [name, scope] of Object.entries(scopes)) {
      const above = scope.within === undefined ? undefined : this.lists.get(scope.within);
      const list = new List(name, scope, above);
      if (!above) root = list;
      this.lists.set(name, list);
    }
    this.root = root as List;
    const settle: (() => void)[] = [];
    for (const [name, list] of this.lists)
      for (const [entry, line] of Object.entries(figures[name] ?? {})) {
        const placed = place(list, entry, line);
        list.byName.set(entry, placed);
        list.named.push(placed);
        settle.push(() => {
          placed.make(this.node(list, entry, line));
        });
      }
    for (const make of settle) make();
  }

  cited = <T extends { readonly source: Cited }>(of: T): T => {
    const { document, edition, ...rest } = of.source;
    return edition === undefined && document === this.code?.document
      ? { ...of, source: { document, edition: this.code.edition, ...rest } }
      : of;
  };

  /** Begins a new account of the entries that are asked for from outside the lines, by checks. */
  drawn(): ReadonlySet<Placed> {
    this.draws = new Set();
    return this.draws;
  }

  /** Everything that draws on some lines: what no longer holds when they change, they themselves or not. */
  affected(changed: ReadonlySet<Placed>, themselves: boolean): Stale {
    this.users ??= usersOf(this.lists.values());
    const entries = new Set(changed);
    for (const placed of entries) for (const user of this.users.get(placed) ?? []) entries.add(user);
    const places = new Map<List, number[]>();
    for (const placed of entries) {
      if (!themselves && changed.has(placed)) continue;
      const own = places.get(placed.list);
      if (own) own.push(placed.index);
      else places.set(placed.list, [placed.index]);
    }
    return { entries, places };
  }

  /** An entry as a list sees it: its own, or that of a list above. */
  source(list: List, name: string, by?: string): Source {
    let up = 0;
    for (let at: List | undefined = list; at; at = at.above, up++) {
      const placed = at.byName.get(name);
      if (!placed) continue;
      if (by === undefined) this.draws.add(placed);
      return { name, placed, up, get: getter(placed, up) };
    }
    throw new Error(`nothing gives ${name}, which ${by ?? 'a check'} of ${list.name} needs`);
  }

  /** An entry of the things of a list below. */
  below(of: string, by: string): Placed {
    const [scope, name] = of.split('/') as [string, string];
    const found = this.lists.get(scope)?.byName.get(name);
    if (!found) throw new Error(`nothing gives ${of}, which ${by} needs`);
    return found;
  }

  /** A part: an entry, or a line of its own that stands in the list without a name to others. */
  part(list: List, part: Part, role: string, by?: string, within = by ?? 'check'): Source {
    if (typeof part === 'string') return this.source(list, part, by);
    const taken = list.lines.filter((l) => l.name === role && l.within?.replace(/ \d+$/, '') === within).length;
    const placed = place(list, role, part, taken === 0 ? within : `${within} ${taken + 1}`);
    placed.make(this.node(list, role, part, `${placed.within}:${role}`));
    if (by === undefined) this.draws.add(placed);
    return { name: role, placed, up: 0, get: getter(placed, 0) };
  }

  /** The table that is read in the place of one, and that it is read. */
  private reading(t: Table): Table {
    this.tables.add(t);
    return this.instead?.get(t.id) ?? t;
  }

  /** A line made ready for a list; `path` tells parts of parts from one another. */
  private node(list: List, name: string, line: Line, path = name): Node {
    const { how } = line;
    const source = (n: string) => this.source(list, n, name);
    const ready = (from: readonly Placed[], evaluate: Evaluate): Node => ({ line, from, evaluate });
    const placedOf = (sources: readonly Source[]) => sources.map((s) => s.placed);
    switch (how.kind) {
      case 'set':
        return ready([], () => how.value);
      case 'open':
        return ready([], () => ({ missing: how.gaps }));
      case 'fact':
        return { line, from: [], ...factReader(name, how) };
      case 'same': {
        const s = source(how.as);
        return ready([s.placed], s.get);
      }
      case 'apply': {
        const by = how.by.kind === 'table' ? this.reading(how.by) : how.by;
        const parts = how.from.map((p, i) => this.part(list, p, inputsOf(by)[i] as string, path));
        return {
          line: by === how.by ? line : { ...line, how: { ...how, by } },
          from: placedOf(parts),
          evaluate: apply(by, parts),
        };
      }
      case 'derive': {
        const needs = how.needs.map(source);
        return ready(placedOf(needs), derived(name, how, needs));
      }
      case 'run': {
        const needs = how.needs.map(source);
        return ready(placedOf(needs), ran(how, needs));
      }
      case 'gather': {
        const entry = this.below(how.of, name);
        return ready([entry], gathering(how, entry));
      }
      case 'at': {
        const entry = this.below(how.of, name);
        const take = this.below(`${how.of.split('/')[0]}/${how.take}`, name);
        return ready([entry, take], atWhich(how, entry, take));
      }
      case 'choose': {
        const on = this.part(list, how.on, 'choice', path);
        const ways = new Map(
          Object.entries(how.of).map(([label, l]) => [label, this.node(list, name, l, path)] as const),
        );
        const taken = (t: Thing): Node | undefined => {
          const label = plain(on.name, on.get(t));
          const way = ways.get(String(label));
          if (!way && !isMissing(label)) throw new Error(`${name} has no way for ${on.name} ${String(label)}`);
          return way;
        };
        const from = [on.placed, ...[...ways.values()].flatMap((w) => w.from)];
        return {
          line,
          from,
          taken,
          evaluate: (t) => {
            const way = taken(t);
            if (way) return way.evaluate(t);
            const label = on.get(t);
            if (!isEitherWay(label)) return plain(on.name, label);
            const both = joined(
              name,
              [...ways.values()].map((w) => w.evaluate(t)),
            );
            return isMissing(both) ? label : both;
          },
        };
      }
      case 'or-else': {
        const first = this.part(list, how.first, name, path);
        const then = this.node(list, name, how.then, path);
        const given: Node = {
          line: { how: { kind: 'same', as: first.name } },
          from: [first.placed],
          evaluate: first.get,
        };
        const taken = (t: Thing) => {
          const v = first.get(t);
          return isMissing(v) && !isWideMissing(v) ? then : given;
        };
        return { line, from: [first.placed, ...then.from], taken, evaluate: (t) => taken(t).evaluate(t) };
      }
      case 'between-steps': {
        const along = source(how.along);
        const steps = how.steps.map(source);
        const of = this.node(list, name, how.of, path);
        return {
          line,
          from: [along.placed, ...placedOf(steps), ...of.from],
          taken: () => of,
          evaluate: (t) => {
            const span = along.get(t);
            if (!(span instanceof Span)) return of.evaluate(t);
            return joined(
              name,
              endsAndSteps(
                span,
                steps.map((s) => s.get(t)),
              ).map((x) => of.evaluate(t.where(along.placed, x))),
            );
          },
        };
      }
      case 'judged': {
        const from: Placed[] = [];
        const kept = (s: Source): Source => {
          from.push(s.placed);
          return s;
        };
        const all: Sources = {
          lists: this.lists,
          cited: this.cited,
          source: (at, n) => kept(this.source(at, n, name)),
          part: (at, part, role, _, within) => kept(this.part(at, part, role, name, `${path} ${within}`)),
        };
        const judges = Object.entries(how.of).map(([of, checks]) => [of, this.judging(all, list, checks)] as const);
        const evaluate = onDemand(judges, (t, judge): readonly CheckResult[] => {
          const results: CheckResult[] = [];
          judge(t, results);
          return results;
        });
        return { line, from, judges, evaluate };
      }
      default: {
        const never: never = how;
        return never;
      }
    }
  }
}

/** Makes records whose values are worked out when they are first asked for: of several ways one may be enough. */
function onDemand<J, R>(
  of: readonly (readonly [name: string, by: J])[],
  give: (thing: Thing, by: J) => R,
): (thing: Thing) => Readonly<Record<string, R>> {
  class Given {
    readonly #thing: Thing;
    readonly #kept: (R | undefined)[];
    constructor(thing: Thing) {
      this.#thing = thing;
      this.#kept = new Array(of.length).fill(undefined);
      Object.defineProperties(this, asked);
    }
    static at(given: Given, i: number, by: J): R {
      given.#kept[i] ??= give(given.#thing, by);
      return given.#kept[i] as R;
    }
  }
  // the same functions for every record, so that all of them have one shape
  const asked = Object.fromEntries(
    of.map(([name, by], i) => [
      name,
      {
        enumerable: true,
        get(this: Given) {
          return Given.at(this, i, by);
        },
      },
    ]),
  );
  return (thing) => new Given(thing) as unknown as Readonly<Record<string, R>>;
}

/** The ends of a span, and each step inside it with the nearest numbers on both sides. */
function endsAndSteps({ least, most }: Span, steps: readonly unknown[]): readonly number[] {
  const at = steps.filter(isNumeric).flatMap((s) => [leastOf(s), mostOf(s)]);
  const ulp = 2 ** -53;
  const both = at.flatMap((x) => [x - x * ulp, x, x + x * ulp > x ? x + x * ulp : x + 2 * x * ulp]);
  return [least, ...both.filter((x) => x > least && x < most), most];
}

/** For each line those that draw on it. */
function usersOf(lists: Iterable<List>): ReadonlyMap<Placed, readonly Placed[]> {
  const users = new Map<Placed, Placed[]>();
  for (const list of lists)
    for (const placed of list.lines)
      for (const from of placed.node.from) {
        const own = users.get(from);
        if (own) own.push(placed);
        else users.set(from, [placed]);
      }
  return users;
}

/** Whether a line reads a fact, itself or in one of its ways. */
const readsFact = ({ how }: Line): boolean =>
  how.kind === 'fact' ||
  (how.kind === 'choose' && Object.values(how.of).some(readsFact)) ||
  (how.kind === 'or-else' && readsFact(how.then)) ||
  (how.kind === 'between-steps' && readsFact(how.of));

function place(list: List, name: string, line: Line, within?: string): Placed {
  const placed = new Placed(name, list, list.lines.length, within);
  list.lines.push(placed);
  if (readsFact(line)) list.facts.push(placed);
  if (line.how.kind === 'judged') list.judging.push(placed.index);
  return placed;
}

/** The value of an entry so many things above one. */
function valueAbove(t: Thing, up: number, placed: Placed): unknown {
  let at = t;
  for (let i = 0; i < up; i++) at = at.above as Thing;
  return at.values[placed.index] ?? valueAt(at, placed);
}

const getter =
  (placed: Placed, up: number): Evaluate =>
  (t) =>
    valueAbove(t, up, placed);

function factReader(name: string, how: Extract<How, { kind: 'fact' }>): Required<Pick<Node, 'evaluate' | 'figure'>> {
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
  return { figure, evaluate: (t) => figure(how.read(t.place as never), t) };
}

export const inputsOf = (d: Formula | Relation | Table): readonly string[] =>
  d.kind === 'table' ? d.axes.map((a) => a.name) : d.inputs;

/** A definition of figures: of plain numbers at the cost of the arithmetic, of spans by their ends. */
function apply(d: Formula | Relation | Table, from: readonly Source[]): Evaluate {
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

function derived(name: string, how: Extract<How, { kind: 'derive' }>, from: readonly Source[]): Evaluate {
  const n = from.length;
  const values: unknown[] = new Array(n).fill(undefined);
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
      values[i] = v;
    }
    if (runs !== own) for (let i = 0; i < n; i++) values[i] = valueAbove(t, ups[i] as number, placed[i] as Placed);
    fill(view, names, values);
    return give(view);
  };
}

function ran(how: Extract<How, { kind: 'run' }>, from: readonly Source[]): Evaluate {
  return (t) => {
    const all = from.map((s) => plain(s.name, s.get(t)));
    if (all.some(isMissing)) return missingOf(all);
    const input = how.input(Object.fromEntries(from.map((s, i) => [s.name, all[i]])) as never);
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

const counted = (
  t: Thing,
  list: List,
  among: ((place: never, here: never) => boolean) | undefined,
): readonly Thing[] => {
  const things = thingsOf(t, list);
  return among ? things.filter((x) => among(x.place as never, t.place as never)) : things;
};
/** Words in the place of a figure say why there is none. */
const hasFigure = (entry: Placed) => (thing: Thing) => typeof valueAt(thing, entry) !== 'string';

function gathering(how: Extract<How, { kind: 'gather' }>, entry: Placed): Evaluate {
  if (how.how === 'any')
    return (t) => {
      const all = counted(t, entry.list, how.among).map((x) => valueAt(x, entry));
      return all.includes(true) || (all.some(isMissing) ? missingOf(all) : false);
    };
  if (how.how === 'list')
    return (t) => {
      const all = counted(t, entry.list, how.among).map((x) => plain(entry.name, valueAt(x, entry)));
      return all.some(isMissing) ? missingOf(all) : all;
    };
  const put = how.how === 'sum' ? (a: number, b: number) => a + b : how.how === 'smallest' ? Math.min : Math.max;
  const begin = how.how === 'sum' ? 0 : how.how === 'smallest' ? Infinity : -Infinity;
  return (t) => {
    const things = counted(t, entry.list, how.among);
    let least = begin;
    let most = begin;
    let count = 0;
    let gone = false;
    for (const x of things) {
      const v = valueAt(x, entry);
      if (typeof v === 'string') continue; // words in the place of a figure say why there is none
      count++;
      if (!isNumeric(v)) gone = true;
      else {
        least = put(least, leastOf(v));
        most = put(most, mostOf(v));
      }
    }
    if (count === 0)
      return (
        how.empty ??
        (how.how === 'sum'
          ? 0
          : missing({ kind: 'fact', fact: entry.name, obtain: 'there is no part to take it from' }))
      );
    return gone ? missingOf(things.map((x) => valueAt(x, entry))) : spanOf(least, most);
  };
}

function atWhich(how: Extract<How, { kind: 'at' }>, entry: Placed, take: Placed): Evaluate {
  const larger = how.how === 'largest';
  return (t) => {
    const all = counted(t, entry.list, how.among);
    const [only] = all;
    // of one there is nothing to choose
    if (only && all.length === 1 && isNumeric(valueAt(only, entry))) return valueAt(only, take);
    const things = all.filter(hasFigure(entry));
    const open = things.find((x) => isMissing(valueAt(x, entry)));
    if (open) return valueAt(open, take);
    const best = things.reduce(
      (end, x) =>
        larger
          ? Math.max(end, leastOf(valueAt(x, entry) as number))
          : Math.min(end, mostOf(valueAt(x, entry) as number)),
      larger ? -Infinity : Infinity,
    );
    // over spans several things may be the one
    const may = things.filter((x) => {
      const v = valueAt(x, entry) as number | Span;
      return larger ? mostOf(v) >= best : leastOf(v) <= best;
    });
    const first = may[0];
    if (!first) return missing({ kind: 'fact', fact: entry.name, obtain: 'there is no part to take it from' });
    const plainly = may.every((x) => typeof valueAt(x, entry) === 'number');
    return joined(
      take.name,
      (plainly ? [first] : may).map((x) => valueAt(x, take)),
    );
  };
}

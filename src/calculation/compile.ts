import { type CheckResult, type Source as Cited, isMissing, type Table } from '../core/index.js';
import { apply, derived, type Evaluate, factReader, getter, inputsOf, ran, type Source } from './evaluate.js';
import { atWhich, endsAndSteps, gathering, onDemand } from './gather.js';
import type { Line, Part } from './line.js';
import {
  type Judge,
  type Lines,
  List,
  labelled,
  type Node,
  Placed,
  type Scopes,
  type Stale,
  type Thing,
} from './lists.js';
import { isEitherWay, isWideMissing, joined, plain, Span } from './value.js';

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
    const { code } = this;
    if (of.source.edition !== undefined || of.source.document !== code?.document) return of;
    const { document, edition: _, ...rest } = of.source;
    return { ...of, source: { document, edition: code.edition, ...rest } };
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
        const ways = new Map<unknown, Node>(
          Object.entries(how.of).map(([label, l]) => [label, this.node(list, name, l, path)] as const),
        );
        const taken = (t: Thing): Node | undefined => {
          const label = on.get(t);
          const way = ways.get(labelled(label));
          if (!way && !isMissing(plain(on.name, label)))
            throw new Error(`${name} has no way for ${on.name} ${String(label)}`);
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

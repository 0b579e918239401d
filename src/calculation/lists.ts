import type { CheckResult } from '../core/index.js';
import type { Line } from './line.js';

/** Things of which a circuit has several, or the circuit itself: what a list of lines is written for. */
export interface Scope<P = never, T = unknown> {
  /** The scope whose things these belong to; the circuit itself belongs to none. */
  readonly within?: string;
  /** The things of one thing above, in order. */
  things(above: P): readonly T[];
  /** Of the circuit: what its lines are read from, made once of what is handed in. */
  place?(circuit: never): unknown;
  /** Set where the length of a route is among what their facts are read from; of no other things it is. */
  readonly alongRoute?: true;
  /** Heading of a thing on a sheet. */
  title?(thing: T): string;
  /** Whether a thing is all that there is of the thing above, so that its figures stand on a sheet as those of that one. */
  whole?(thing: T): boolean;
}
export type Scopes = Readonly<Record<string, Scope>>;
/** Lines by the entry that they give. */
export type Lines = Readonly<Record<string, Line>>;

/** A line made ready: what works it out, and the entries that it may draw on, in whichever list they stand. */
export interface Node {
  readonly line: Line;
  readonly from: readonly Placed[];
  evaluate(thing: Thing): unknown;
  /** Of a line that reads a fact: what it makes of one for a thing. */
  figure?(fact: unknown, thing: Thing): unknown;
  /** Of a line that is one of several: the one that is taken for a thing. */
  taken?(thing: Thing): Node | undefined;
  /** Of a line that judges: its checks by what they are of. */
  readonly judges?: readonly (readonly [of: string, judge: Judge])[];
}

/** Takes down a result with what it was judged by, for a sheet. */
export type Note = (
  result: CheckResult,
  evidence: readonly (readonly [role: string, entry: Placed, thing: Thing])[],
) => void;
/** Judges a thing and adds the results. */
export type Judge = (thing: Thing, into: CheckResult[], note?: Note) => void;

/** A line in its place: all of one shape, since they are read for every figure. */
export class Placed {
  /** What works it out; made once every entry has its place. */
  node: Node = unmade;
  evaluate: Node['evaluate'] = unmade.evaluate;
  /** Of a line that reads a fact and nothing else: what it reads, and what it makes of it. */
  read: ((place: never) => unknown) | undefined = undefined;
  figure: Node['figure'] | undefined = undefined;

  constructor(
    readonly name: string,
    readonly list: List,
    readonly index: number,
    /** For what it stands without a name to others: the entry whose part it plays. */
    readonly within: string | undefined,
  ) {}

  make(node: Node): void {
    this.node = node;
    this.evaluate = node.evaluate;
    const { how } = node.line;
    if (how.kind === 'fact') this.read = how.read;
    this.figure = node.figure;
  }
}
const unmade: Node = {
  line: { how: { kind: 'open', gaps: [] } },
  from: [],
  evaluate: () => {
    throw new Error('a line is asked for before it is made');
  },
};

/** The lines of one scope. */
export class List {
  readonly lines: Placed[] = [];
  readonly byName = new Map<string, Placed>();
  /** Lines that others find by name, in their order. */
  readonly named: Placed[] = [];
  readonly below: List[] = [];
  /** Lines that read facts, themselves or in one of their ways. */
  readonly facts: Placed[] = [];
  /** Places of the lines that give what several ways would come to. */
  readonly judging: number[] = [];
  readonly order: number;
  /** Whether these things, or some below them, have facts that a length of a route is among. */
  hasLengths = false;

  constructor(
    readonly name: string,
    readonly scope: Scope,
    readonly above?: List,
  ) {
    this.order = above ? above.below.push(this) - 1 : 0;
    if (scope.alongRoute) for (let at: List | undefined = this; at; at = at.above) at.hasLengths = true;
  }
}

/** One thing of a scope with its figures, worked out when first asked for. */
export class Thing {
  readonly values: unknown[];
  /** Facts as they were read last, by their lines, once they have been read a second time. */
  said: unknown[] | undefined;
  readonly below: (readonly Thing[] | undefined)[];
  /** Things further down, by list, once they have been asked for. */
  deep: Map<List, readonly Thing[]> | undefined;

  constructor(
    readonly list: List,
    public place: unknown,
    readonly above?: Thing,
    readonly number = 0,
  ) {
    // filled at once, so that it holds figures and all else alike from the start
    this.values = new Array(list.lines.length).fill(undefined);
    this.below = new Array(list.below.length).fill(undefined);
    this.said = undefined;
    this.deep = undefined;
  }

  /** The same thing with one figure given: what draws on it is worked out anew. */
  where(placed: Placed, value: unknown): Thing {
    const one = new Thing(this.list, this.place, this.above, this.number);
    one.values[placed.index] = value;
    return one;
  }

  /** Things of a list directly below. */
  children(list: List): readonly Thing[] {
    let found = this.below[list.order];
    if (!found) {
      const places = list.scope.things(this.place as never);
      const things = new Array<Thing>(places.length);
      for (let i = 0; i < places.length; i++) things[i] = new Thing(list, places[i], this, i);
      found = things;
      this.below[list.order] = found;
    }
    return found;
  }
}

/** How the lines and checks that a label chooses between are called by it. */
export const labelled = (label: unknown): unknown =>
  typeof label === 'boolean' || typeof label === 'number' ? String(label) : label;

/** The value of a line for a thing. */
export function valueAt(thing: Thing, placed: Placed): unknown {
  let value = thing.values[placed.index];
  if (value === undefined) {
    value = placed.evaluate(thing);
    thing.values[placed.index] = value;
  }
  return value;
}

/** The line that counts for a thing: of several, the one that was taken. */
export function effective(thing: Thing, node: Node): Node {
  const way = node.taken?.(thing);
  return way ? effective(thing, way) : node;
}

/** Things of a list anywhere below a thing, in order. */
export function thingsBelow(thing: Thing, list: List): readonly Thing[] {
  if (list.above === thing.list) return thing.children(list);
  const found = thing.deep?.get(list);
  if (found) return found;
  const above = thingsBelow(thing, list.above as List);
  const [only] = above;
  if (only && above.length === 1) return only.children(list);
  const all: Thing[] = [];
  for (const t of above) for (const x of t.children(list)) all.push(x);
  thing.deep ??= new Map();
  thing.deep.set(list, all);
  return all;
}

/** The thing that an entry of a list above belongs to. */
export function thingOf(thing: Thing, list: List): Thing {
  let at = thing;
  while (at.list !== list) at = at.above as Thing;
  return at;
}

const isBelow = (list: List, above: List): boolean =>
  list.above !== undefined && (list.above === above || isBelow(list.above, above));

/** The things whose entries a line of a thing draws on: itself or one above, or all of a list below it or beside it. */
export function thingsOf(thing: Thing, list: List): readonly Thing[] {
  for (let at: List | undefined = thing.list; at; at = at.above) if (at === list) return [thingOf(thing, list)];
  let at = thing;
  while (!isBelow(list, at.list)) at = at.above as Thing;
  return thingsBelow(at, list);
}

/** Lines that no longer hold, and their places by list. */
export interface Stale {
  readonly entries: ReadonlySet<Placed>;
  readonly places: ReadonlyMap<List, readonly number[]>;
}

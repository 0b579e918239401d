import { type CheckResult, isMissing, type Table } from '../core/index.js';
import { Compiled, type Edited, type Judging } from './compile.js';
import type { Contents, Group, Groups } from './contents.js';
import { compileJudgement, compileJudgements } from './judge.js';
import { type Judgement, unjudged } from './judgement.js';
import { none, open } from './line.js';
import {
  effective,
  type Judge,
  type Lines,
  type Note,
  type Placed,
  type Scopes,
  type Stale,
  Thing,
  thingsBelow,
  valueAt,
} from './lists.js';
import { Span } from './value.js';

/** A check made ready, and the entries that it draws on itself. */
interface Ready {
  /** Its place among the checks of the list. */
  readonly place: number;
  readonly judge: Judge;
  readonly draws: ReadonlySet<Placed>;
}

/** Checks that a line gives the results of. */
const judging: Judging = (all, list, of) => compileJudgements(all, list, of as readonly Judgement[]);

/** A figure of a thing by name. */
const figureOf = (thing: Thing, name: string): unknown => {
  const placed = thing.list.byName.get(name);
  return placed && valueAt(thing, placed);
};

/** The checks of a group; where there are none, one that says why. */
export function judgementsOf(group: string, of: Group, code?: Edited): readonly Judgement[] {
  if (!('noRule' in of || 'notEntered' in of)) return of;
  const words = group.replaceAll('-', ' ');
  const { document = '', edition = '' } = code ?? {};
  if ('noRule' in of) {
    const source = of.source ?? { document, edition, provenance: 'memory' as const };
    const title = words[0]?.toUpperCase() + words.slice(1);
    return [unjudged({ kind: 'holds', id: `${group}-rule`, title, weight: 'rule', source }, none(of.noRule))];
  }
  const title = `The circuit meets ${document} on ${words}`;
  const id = `${group}-by-edition`;
  return [unjudged({ kind: 'holds', id, title, weight: 'rule', source: of.source }, open(of.notEntered))];
}

/** How many sets of changed lines are kept in mind. */
const MOST_STALE = 200;

/** A contents list made ready to calculate with: laid out when first used, once for all circuits. */
export class Calculator<G extends Groups = Groups> {
  private laidOut?: Compiled;
  private readonly ready = new Map<string, readonly Ready[]>();
  private readonly stale = new Map<string, { readonly stale: Stale; readonly checks: readonly Ready[] }>();

  /**
   * @param contents the list
   * @param code document that it is of, and the edition that its results cite
   * @param tables tables that are read in the place of those of the same identifier, as somebody attested them
   */
  constructor(
    readonly contents: Contents<Scopes, { readonly [list: string]: Lines }, G>,
    readonly code?: Edited,
    private readonly tables?: ReadonlyMap<string, Table>,
  ) {}

  /** @internal */
  get lists(): Compiled {
    if (!this.laidOut) {
      const { scopes, figures, checks } = this.contents;
      const compiled = new Compiled(
        scopes,
        figures as Readonly<Record<string, Lines>>,
        judging,
        this.code,
        this.tables,
      );
      let place = 0;
      for (const [group, of] of Object.entries(checks)) {
        this.ready.set(
          group,
          judgementsOf(group, of, this.code).map((j) => {
            const draws = compiled.drawn();
            return { place: place++, judge: compileJudgement(compiled, compiled.root, j), draws };
          }),
        );
      }
      this.laidOut = compiled;
    }
    return this.laidOut;
  }

  /** The calculation of one circuit. */
  of(place: unknown): Calculation {
    return new Calculation(this, new Thing(this.lists.root, this.placeOf(place)));
  }

  /** @internal */
  placeOf = (circuit: unknown): unknown => this.lists.root.scope.place?.(circuit as never) ?? circuit;

  /** What no longer holds when some lines change, and the checks that draw on it: a search changes the same ones again and again.
   * @internal */
  staleBy(
    changed: ReadonlySet<Placed>,
    themselves: boolean,
  ): { readonly stale: Stale; readonly checks: readonly Ready[] } {
    const key =
      [...changed]
        .map((p) => `${p.list.name} ${p.index}`)
        .sort()
        .join() + (themselves ? ' too' : '');
    let found = this.stale.get(key);
    if (!found) {
      const stale = this.lists.affected(changed, themselves);
      const checks = [...this.ready.values()].flat().filter((check) => {
        for (const d of check.draws) if (stale.entries.has(d)) return true;
        return false;
      });
      found = { stale, checks };
      if (this.stale.size >= MOST_STALE) this.stale.clear();
      this.stale.set(key, found);
    }
    return found;
  }

  /** @internal */
  checksOf = (group: string): readonly Ready[] => this.ready.get(group) ?? [];
}

/** The figures and results of one circuit, worked out when asked for and kept. */
export class Calculation {
  /** Results by the places of the checks. */
  private readonly judged: (readonly CheckResult[] | undefined)[] = [];

  constructor(
    private readonly by: Calculator,
    public circuit: Thing,
  ) {}

  /** A figure of the circuit by name. */
  figure(name: string): unknown {
    return figureOf(this.circuit, name);
  }

  /** The things of a list below the circuit, each with its place and its figures by name; none of a list that is not there. */
  things(of: string): readonly { readonly place: unknown; figure(name: string): unknown }[] {
    const list = this.by.lists.lists.get(of);
    if (!list) return [];
    return thingsBelow(this.circuit, list).map((thing) => ({
      place: thing.place,
      figure: (name) => figureOf(thing, name),
    }));
  }

  /** Whether a fact that was asked for is known only within a range. */
  meetsSpans(): boolean {
    this.complete();
    return hasSpans(this.circuit);
  }

  /** Works out what several ways would come to, where only the one that is taken has been asked for. */
  complete(): void {
    completed(this.circuit);
  }

  /** The results of a group of checks. */
  results(group: string, note?: Note): readonly CheckResult[] {
    const results: CheckResult[] = [];
    for (const check of this.by.checksOf(group)) {
      const kept = note ? undefined : this.judged[check.place];
      if (kept) for (const r of kept) results.push(r);
      else {
        const begin = results.length;
        check.judge(this.circuit, results, note);
        this.judged[check.place] = results.slice(begin);
      }
    }
    return results;
  }

  /**
   * Goes on with another circuit, or with other facts of the same: what does not depend on a fact that differs is kept.
   * @param place the circuit
   * @param lengths whether lengths of routes alone differ: other things than those along the route are not looked at again
   */
  change(place: unknown, lengths = false): void {
    const changed = new Set<Placed>();
    const waysAmongFacts: [Thing, Placed][] = [];
    const own = this.by.placeOf(place);
    if (!refresh(this.circuit, own, changed, waysAmongFacts, lengths)) {
      this.circuit = new Thing(this.by.lists.root, own);
      this.judged.length = 0;
      return;
    }
    this.forget(changed, false);
    // a line that takes one of several ways still takes the same, or has been forgotten: what it reads may have changed
    const others = new Set<Placed>();
    for (const [thing, placed] of waysAmongFacts) {
      const before = thing.values[placed.index];
      if (before === undefined) continue;
      const { line, evaluate } = effective(thing, placed.node);
      // where it is not known which way is taken, both may count
      if ((line.how.kind === 'fact' || line.how.kind === 'choose') && !alike(before, evaluate(thing)))
        others.add(placed);
    }
    this.forget(others, true);
  }

  /** Forgets what draws on some lines, themselves too where they may draw on one another. */
  private forget(changed: ReadonlySet<Placed>, themselves: boolean): void {
    if (changed.size === 0) return;
    const { stale, checks } = this.by.staleBy(changed, themselves);
    forget(this.circuit, stale);
    for (const check of checks) this.judged[check.place] = undefined;
  }
}

function completed(thing: Thing): void {
  const { list, values, below } = thing;
  for (const index of list.judging) if (values[index] !== undefined) Object.values(values[index] as object);
  for (const things of below) for (const t of things ?? []) completed(t);
}

const hasSpans = (thing: Thing): boolean =>
  thing.list.facts.some(({ index }) => thing.values[index] instanceof Span) ||
  thing.below.some((things) => things?.some(hasSpans));

/** Reads the facts again; false where there are other things than before. */
function refresh(
  thing: Thing,
  place: unknown,
  changed: Set<Placed>,
  ways: [Thing, Placed][],
  lengths: boolean,
): boolean {
  if (thing.place === place) return true;
  const { list } = thing;
  thing.place = place;
  if (!lengths || list.scope.alongRoute) readAgain(thing, changed, ways);
  for (const below of list.below) {
    const things = thing.below[below.order];
    if (!things || (lengths && !below.hasLengths)) continue;
    const places = below.scope.things(place as never);
    if (places.length !== things.length) return false;
    for (let i = 0; i < things.length; i++)
      if (!refresh(things[i] as Thing, places[i], changed, ways, lengths)) return false;
  }
  return true;
}

function readAgain(thing: Thing, changed: Set<Placed>, ways: [Thing, Placed][]): void {
  const { list, values, place } = thing;
  thing.said ??= new Array(list.lines.length).fill(undefined);
  const { said } = thing;
  for (const placed of list.facts) {
    const { index, read, figure } = placed;
    if (values[index] === undefined) continue;
    if (!read || !figure) {
      ways.push([thing, placed]);
      continue;
    }
    let fact: unknown;
    try {
      fact = read(place as never);
    } catch (error) {
      if (!(error instanceof TypeError)) throw error;
      // what was asked for before does not stand here: whoever still needs it asks again
      values[index] = undefined;
      said[index] = undefined;
      changed.add(placed);
      continue;
    }
    // a fact that nobody knows is called by its place
    if (fact === said[index] && fact !== undefined && !isUnknown(fact)) continue;
    said[index] = fact;
    const now = figure(fact, thing);
    if (alike(values[index], now)) continue;
    values[index] = now;
    changed.add(placed);
  }
}

const isUnknown = (fact: unknown): boolean =>
  typeof fact === 'object' && fact !== null && (fact as { readonly state?: unknown }).state === 'unknown';

function forget(thing: Thing, stale: Stale): void {
  for (const index of stale.places.get(thing.list) ?? []) thing.values[index] = undefined;
  for (const below of thing.below) for (const t of below ?? []) forget(t, stale);
}

/** Whether two facts say the same. */
function alike(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (a instanceof Span || b instanceof Span)
    return a instanceof Span && b instanceof Span && a.least === b.least && a.most === b.most;
  if (isMissing(a) !== isMissing(b)) return false;
  const keys = Object.keys(a);
  return (
    keys.length === Object.keys(b).length &&
    keys.every((k) => alike((a as Record<string, unknown>)[k], (b as Record<string, unknown>)[k]))
  );
}

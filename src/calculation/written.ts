import {
  type CheckResult,
  type Fact,
  isMissing,
  type Known,
  type Missing,
  outcome,
  type SheetLine,
  stated,
  termOf,
  type Written,
  writeLine,
  written,
} from '../core/index.js';
import type { Calculation } from './calculation.js';
import { inputsOf } from './evaluate.js';
import { effective, type Node, type Note, type Placed, type Thing, thingsOf } from './lists.js';
import { onlyWithin, Span } from './value.js';

/** Identifier of a thing within its circuit: empty for the circuit, `sections[2].` for its second section. */
function idOf(thing: Thing): string {
  if (!thing.above) return '';
  return idOf(thing.above) + (isWhole(thing) ? '' : `${thing.list.name}[${thing.number + 1}].`);
}
const isWhole = ({ list, place }: Thing): boolean => list.scope.whole?.(place as never) === true;
/** The thing under whose heading the figures of a thing stand. */
const standsWith = (thing: Thing): Thing => (thing.above && isWhole(thing) ? standsWith(thing.above) : thing);
/** Identifier of a figure: what the sheet calls its circuit, the thing, the entry. */
type Id = (thing: Thing, placed: Placed) => string;

/** Heading of the things from the circuit down to one. */
function titleOf(thing: Thing): string {
  const own = thing.list.scope.title?.(thing.place as never) ?? `${thing.list.name} ${thing.number + 1}`;
  const above = thing.above && standsWith(thing.above);
  return above?.above ? `${titleOf(above)}, ${own}` : own;
}

/** Of a line, that it stands on the sheet, or that it is a label that no table was read by so far. */
const ON_THE_SHEET = 1;
const A_LABEL = 2;
/** No line of a calculation names a part of a sheet by its place. */
const noPlaces: ReadonlyMap<unknown, string> = /* @__PURE__ */ new Map();

/** Writes what a calculation worked out, each figure once, group by group. */
export class Writer {
  /** For each thing what is known of its lines, by their places. */
  private readonly written = new Map<Thing, Uint8Array>();
  private readonly groups = new Set<string>();
  private readonly prefixes = new Map<Thing, string>();
  private circuit = '';
  private readonly id: Id = (thing, { within, name }) => {
    let prefix = this.prefixes.get(thing);
    if (prefix === undefined) {
      prefix = `${this.circuit}${idOf(thing)}`;
      this.prefixes.set(thing, prefix);
    }
    return within === undefined ? prefix + name : `${prefix}${within}:${name}`;
  };

  constructor(private readonly calculation: Calculation) {}

  private standing(thing: Thing): Uint8Array {
    let own = this.written.get(thing);
    if (!own) {
      own = new Uint8Array(thing.list.lines.length);
      this.written.set(thing, own);
    }
    return own;
  }

  /**
   * The lines of a group of checks: what was worked out for it and not for a group before, then its results.
   * @param group the group
   * @param next gives the place of the next part
   * @param place place of the part that the group stands on, itself a part of the sheet of the circuit
   */
  group(group: string, next: () => string, place: string): readonly SheetLine[] {
    const circuit = place.includes('.') ? `${place.slice(0, place.lastIndexOf('.'))}/` : '';
    if (circuit !== this.circuit) this.prefixes.clear();
    this.circuit = circuit;
    const { id } = this;
    // a sheet that is written out again begins anew
    if (this.groups.has(group)) for (const once of [this.groups, this.written]) once.clear();
    this.groups.add(group);
    const evidence: (readonly [role: string, entry: Placed, thing: Thing])[] = [];
    const checked = (judge: (note: Note) => unknown): readonly SheetLine[] => {
      const lines: SheetLine[] = [];
      judge((result, of) => {
        evidence.push(...of);
        lines.push(
          checkLine(
            result,
            of.map(([role, placed, thing]) => [role, id(thing, placed), thing.values[placed.index]]),
          ),
        );
      });
      return lines;
    };
    const checks = checked((note) => this.calculation.results(group, note));
    this.calculation.complete();
    const blocks: { readonly thing: Thing; readonly title?: string; readonly lines: SheetLine[] }[] = [];
    const givens = new Map<SheetLine, { readonly own: Uint8Array; readonly index: number }>();
    const used = new Set<string>();
    // the input of a procedure is put together from figures, by functions and lists that have no line of their own
    const draw = (thing: Thing, { from }: Node): void => {
      for (const f of from)
        for (const t of thingsOf(thing, f.list)) {
          used.add(id(t, f));
          const { how } = effective(t, f.node).line;
          const silent = how.kind === 'derive' || (how.kind === 'gather' && how.how === 'list');
          if (silent && termOf(f.name) === undefined) draw(t, f.node);
        }
    };
    const write = (thing: Thing, placed: Placed, asKey = false): void => {
      const { index } = placed;
      const value = thing.values[index];
      if (value === undefined) return;
      const own = this.standing(thing);
      if (own[index] === ON_THE_SHEET || (own[index] === A_LABEL && !asKey)) return;
      const node = effective(thing, placed.node);
      const { how } = node.line;
      // a label stands on the sheet where a table is read by it, words in the place of a figure stand as they are
      if (isLabel(placed, how, value) && !asKey) {
        own[index] = A_LABEL;
        return;
      }
      own[index] = ON_THE_SHEET;
      const read = how.kind === 'apply' && how.by.kind === 'table' ? node.from : [];
      for (const from of placed.node.from)
        for (const t of thingsOf(thing, from.list)) write(t, from, read.includes(from));
      for (const [of, judge] of node.judges ?? []) {
        const title = `${titleOf(thing)}, ${of.replaceAll('-', ' ')}`;
        blocks.push({ thing, title, lines: [...checked((note) => judge(thing, [], note))] });
      }
      const line = lineOf(id, thing, placed, node, value);
      if (!line) return;
      if (line.kind === 'given') givens.set(line, { own, index });
      const made = madeOf(thing, node);
      if (how.kind === 'run') draw(thing, node);
      const last = blocks.at(-1);
      if (last?.thing === thing && last.title === undefined) last.lines.push(...made, line);
      else blocks.push({ thing, lines: [...made, line] });
    };
    const walk = (thing: Thing): void => {
      const own = this.standing(thing);
      for (const placed of thing.list.named)
        if (own[placed.index] === 0 && thing.values[placed.index] !== undefined) write(thing, placed);
      for (const below of thing.below) for (const t of below ?? []) walk(t);
    };
    walk(this.calculation.circuit);
    // what a check draws on without a name to others
    for (const [, placed, thing] of evidence) write(thing, placed);
    // a figure is taken down where a line uses it, not where a condition alone looks at it
    for (const l of [...blocks.flatMap((b) => b.lines), ...checks]) for (const one of idsUsed(l)) used.add(one);
    const lines = blocks.flatMap(({ thing, title = titleOf(thing), lines: all }): readonly SheetLine[] => {
      const own = all.filter((l) => {
        if (l.kind !== 'given' || used.has(l.id as string)) return true;
        const given = givens.get(l);
        if (given) given.own[given.index] = 0;
        return given === undefined;
      });
      if (!standsWith(thing).above || own.length === 0) return own;
      return [{ kind: 'part', part: { format: 'sheet/1', place: next(), title, lines: own } }];
    });
    return [...lines, ...checks];
  }
}

/** Whether an entry is a label, or would be if it were not missing. */
const isLabel = ({ name }: Placed, { kind }: Node['line']['how'], value: unknown): boolean =>
  termOf(name) === undefined &&
  (typeof value === 'string' || (isMissing(value) && !['apply', 'run', 'gather', 'at'].includes(kind)));

/** Identifiers of the figures that a line uses. */
function idsUsed(line: SheetLine): readonly string[] {
  const named = Object.values(line.ids ?? {});
  return line.kind === 'gather' ? line.parts : line.kind === 'same' ? [line.from] : named;
}

/** A figure as a written line takes it. */
const knownOf = (name: string, value: unknown): Known<number> =>
  (value instanceof Span ? onlyWithin(name, value) : value) as Known<number>;

/** A line of a sheet, or nothing for what only says which way is taken. */
function lineOf(id: Id, thing: Thing, placed: Placed, { line, from }: Node, value: unknown): SheetLine | undefined {
  const { name } = placed;
  const { how, clause } = line;
  const own = { id: id(thing, placed), ...(clause ? { clause } : {}) };
  const idOfPart = (p: Placed) => id(thingsOf(thing, p.list)[0] as Thing, p);
  const role = termOf(name) !== undefined;
  const plain = knownOf(name, value);
  switch (how.kind) {
    case 'apply': {
      const values: Record<string, Known<number>> = {};
      const ids: Record<string, string> = {};
      for (const [i, input] of inputsOf(how.by).entries()) {
        const p = from[i] as Placed;
        const t = thingsOf(thing, p.list)[0] as Thing;
        values[input] = knownOf(input, t.values[p.index]);
        ids[input] = id(t, p);
      }
      if (how.by.kind === 'table') {
        const look = writeLine({ kind: 'look', table: how.by, keys: values, value: plain }, noPlaces);
        return { ...look, ...own, ids };
      }
      return { ...writeLine({ kind: 'step', formula: how.by, values, value: plain }, noPlaces), ...own, ids };
    }
    case 'run': {
      const input = inputOf(thing, { line, from }) ?? { missing: [] };
      return { ...writeLine({ kind: 'run', procedure: how.procedure, input, value: plain }, noPlaces), ...own };
    }
    case 'at': {
      const take = from[1] as Placed;
      const which = thingsOf(thing, take.list).find((t) => t.values[take.index] === value);
      if (!role || !which || typeof value === 'string') break;
      return { kind: 'same', name, from: id(which, take), ...own, ...outcome(name, plain) };
    }
    case 'gather': {
      if (!role || how.how === 'any' || how.how === 'list' || typeof value === 'string') break;
      const entry = from[0] as Placed;
      const parts = thingsOf(thing, entry.list).filter(
        (t) =>
          (!how.among || how.among(t.place as never, thing.place as never)) &&
          typeof t.values[entry.index] !== 'string' &&
          // what is missing rests on what is missing alone
          (!isMissing(plain) || isMissing(t.values[entry.index])),
      );
      if (parts.length === 0) break;
      return {
        kind: 'gather',
        how: how.how,
        from: entry.name,
        to: name,
        parts: parts.map((t) => id(t, entry)),
        ...own,
        ...outcome(name, plain),
      };
    }
    case 'same':
      if (!role) break;
      return { kind: 'same', name, from: idOfPart(from[0] as Placed), ...own, ...outcome(name, plain) };
    default:
  }
  if (role && (typeof plain === 'number' || isMissing(plain))) {
    const { by, assumed } = saidOf(thing, how);
    return {
      kind: 'given',
      name,
      words: termOf(name)?.words ?? '',
      ...own,
      ...(by ? { by } : {}),
      ...(assumed ? { assumed } : {}),
      ...outcome(name, plain),
    };
  }
  if (typeof value === 'string') {
    const { assumed } = saidOf(thing, how);
    return role
      ? { kind: 'note', text: value }
      : { kind: 'label', name, value, ...own, ...(assumed ? { assumed } : {}) };
  }
  if (isLabel(placed, how, value)) return { kind: 'label', name, blocked: (value as Missing).missing, ...own };
  return undefined;
}

/** What a procedure is given for a thing, or nothing where something is missing. */
function inputOf(thing: Thing, { line: { how }, from }: Pick<Node, 'line' | 'from'>): unknown {
  if (how.kind !== 'run') return undefined;
  const values = how.needs.map((n, i) => {
    const p = from[i] as Placed;
    return [n, (thingsOf(thing, p.list)[0] as Thing).values[p.index]] as const;
  });
  if (values.some(([, v]) => isMissing(v) || v instanceof Span)) return undefined;
  return how.input(Object.fromEntries(values) as never);
}

/** What a procedure makes of its needs, each under its role, so that no number of it stands nowhere. */
function madeOf(thing: Thing, node: Node): readonly SheetLine[] {
  const { how } = node.line;
  const input = how.kind === 'run' && how.writes ? inputOf(thing, node) : undefined;
  if (how.kind !== 'run' || input === undefined || isMissing(input)) return [];
  return (how.writes?.(input as never) ?? []).map(([name, value, by]) => ({
    kind: 'given' as const,
    name,
    words: termOf(name)?.words ?? '',
    by,
    ...outcome(name, value),
  }));
}

/** Who or what says a figure that is taken down, and whether it is assumed. */
function saidOf(thing: Thing, how: Node['line']['how']): { readonly by?: string; readonly assumed?: string } {
  if (how.kind !== 'fact') return 'by' in how && typeof how.by === 'string' ? { by: how.by } : {};
  const said = how.read(thing.place as never) as Fact<unknown> | undefined;
  const { by, assumed } = (typeof said === 'object' && said !== null ? said : {}) as { by?: string; assumed?: string };
  return stated({ by: how.by ?? by, assumed });
}

function checkLine(
  result: CheckResult,
  evidence: readonly (readonly [role: string, id: string, value: unknown])[],
): SheetLine {
  const bare = evidence.length === 0 && result.value === undefined;
  const open = result.verdict === 'not-required' || result.verdict === 'not-determined';
  if (bare && open && !result.alternatives?.length) return { kind: 'result', result };
  const statement = bare && result.alternatives === undefined;
  const uses = evidence.flatMap(([role, , value]): readonly Written[] =>
    typeof value === 'number' ? [written(role, value)] : [],
  );
  const ids = Object.fromEntries(evidence.map(([role, id]) => [role, id]));
  return { kind: 'check', uses, ...(statement ? { holds: result.verdict === 'pass' } : { ids }), result };
}

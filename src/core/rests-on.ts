import type { CheckResult } from './check.js';
import { weakestOf } from './provenance.js';
import type { SheetDocument, SheetLine } from './sheet-lines.js';
import type { Provenance, Source } from './source.js';

/** A definition that a result rests on. */
export interface Basis {
  /** What it is. */
  readonly kind: 'table' | 'formula' | 'procedure' | 'check';
  /** Its identifier. */
  readonly id: string;
  /** What it computes, lists or requires. */
  readonly title: string;
  /** Where it stands. */
  readonly source: Source;
  /** How well it is known: of a table, the weakest of the cells that were read. */
  readonly provenance: Provenance;
  /** Who compared the cells that were read with the print, and when. */
  readonly attested?: string;
}

/** A fact that a result rests on. */
export interface BasisFact {
  /** Its role, or the axis of a label. */
  readonly name: string;
  /** Number in the canonical unit, or label; absent where it is not known. */
  readonly value?: number | string;
  /** Who or what says so. */
  readonly by?: string;
}

/** What a result line of a sheet rests on. */
export interface RestsOn {
  /** Place of the part that the line stands in: empty for the sheet itself. */
  readonly place: string;
  /** Number of the line in its part, from 1. */
  readonly line: number;
  /** The result. */
  readonly result: CheckResult;
  /** Tables, formulas, procedures and checks, each once, in the order of the sheet. */
  readonly basis: readonly Basis[];
  /** Facts that were taken down, each once, in the order of the sheet. */
  readonly facts: readonly BasisFact[];
  /** The weakest provenance among the definitions. */
  readonly weakest: Provenance;
}

/** A line, what it says itself, and the lines that it draws on. */
interface Node {
  readonly order: number;
  readonly value?: unknown;
  readonly basis?: Basis;
  readonly fact?: BasisFact;
  /** What tells its definition or fact from others. */
  readonly key?: string;
  readonly from: readonly Node[];
}

const label = (axis: string): string => `label:${axis}`;
const givenBy = (line: object): unknown =>
  'gives' in line ? (line as { gives: { value: number } }).gives.value : undefined;

/** Every number and text in plain data. */
function leavesOf(data: unknown, into = new Set<unknown>()): ReadonlySet<unknown> {
  if (typeof data !== 'object' || data === null) into.add(data);
  else for (const value of Object.values(data)) leavesOf(value, into);
  return into;
}

/** One part of a sheet while it is read: the latest line of each role, here and above. */
class Part {
  private readonly own = new Map<string, Node>();
  private readonly all: Node[] = [];
  private readonly below = new Map<string, Part>();
  private readonly results: { readonly result: CheckResult; readonly node: Node; text?: string }[] = [];

  constructor(
    private readonly sheet: SheetDocument,
    private readonly order: { next: number; readonly byId: Map<string, Node> },
    private readonly above?: Part,
  ) {}

  /** Reads the lines and tells what each result draws on. */
  *read(): Generator<readonly [line: number, result: CheckResult, node: Node, place: string]> {
    for (const [i, line] of this.sheet.lines.entries()) {
      if (line.kind === 'part') {
        const part = new Part(line.part, this.order, this);
        this.below.set(line.part.place, part);
        yield* part.read();
      } else if (line.kind === 'check' || line.kind === 'result') {
        const node = this.node(line);
        this.results.push({ result: line.result, node });
        yield [i + 1, line.result, node, this.sheet.place];
      } else if (line.kind !== 'note' && line.kind !== 'overall') this.keep(line);
    }
  }

  private keep(line: Exclude<SheetLine, { kind: 'part' | 'note' | 'overall' | 'check' | 'result' }>): void {
    const node = this.node(line);
    const name = line.kind === 'label' ? label(line.name) : roleOf(line);
    if (name !== undefined) this.own.set(name, node);
    this.all.push(node);
    if (line.id !== undefined) this.order.byId.set(line.id, node);
  }

  private node(line: Exclude<SheetLine, { kind: 'part' | 'note' | 'overall' }>): Node {
    const order = this.order.next++;
    const value = line.kind === 'label' ? line.value : givenBy(line);
    return { order, value, from: this.drawnOn(line), ...ownOf(line, value) };
  }

  /** A part is read before anything comes after it in the one above: what stands there stands before it. */
  private latest(name: string): readonly Node[] {
    for (let part: Part | undefined = this; part; part = part.above) {
      const found = part.own.get(name);
      if (found) return [found];
    }
    return [];
  }

  /** The latest line of each role above this part. */
  private seen(): ReadonlyMap<string, Node> {
    return this.above ? new Map([...this.above.seen(), ...this.above.own]) : new Map();
  }

  private drawnOn(line: Exclude<SheetLine, { kind: 'part' | 'note' | 'overall' }>): readonly Node[] {
    const named = (ids: readonly string[]) => ids.flatMap((id) => this.order.byId.get(id) ?? []);
    if (line.kind === 'same') return named([line.from]);
    if (line.kind === 'gather' && line.id !== undefined) return named(line.parts);
    if (line.ids) {
      const { alternatives = [] } = line.kind === 'check' ? line.result : {};
      return [...named(Object.values(line.ids)), ...alternatives.flatMap((one) => this.standing(JSON.stringify(one)))];
    }
    switch (line.kind) {
      case 'look':
        return Object.entries(line.keys).flatMap(([axis, key]) =>
          this.latest(typeof key === 'string' ? label(axis) : axis),
        );
      case 'step':
        return line.uses.flatMap((use) => this.latest(use.name));
      case 'run':
        return this.holding(leavesOf(line.input));
      case 'gather':
        return line.parts.flatMap((place) => {
          const node = this.find(place)?.own.get(line.from);
          return node ? [node] : [];
        });
      case 'check': {
        const { alternatives = [] } = line.result;
        return [
          ...line.uses.flatMap((use) => this.latest(use.name)),
          ...alternatives.flatMap((one) => this.standing(JSON.stringify(one))),
        ];
      }
      default:
        return [];
    }
  }

  /** Lines in sight, or in a part below, whose value is one of these. */
  private holding(values: ReadonlySet<unknown>): readonly Node[] {
    const mine = [...this.seen().values(), ...this.all].filter((n) => n.value !== undefined && values.has(n.value));
    return [...mine, ...[...this.below.values()].flatMap((p) => p.inside(values))];
  }

  private inside(values: ReadonlySet<unknown>): readonly Node[] {
    const mine = this.all.filter((n) => n.value !== undefined && values.has(n.value));
    return [...mine, ...[...this.below.values()].flatMap((p) => p.inside(values))];
  }

  private find(place: string): Part | undefined {
    if (place === this.sheet.place) return this;
    for (const [at, part] of this.below) if (place === at || place.startsWith(`${at}.`)) return part.find(place);
    return undefined;
  }

  /** The lines of a result, in this part, below, or above. */
  private standing(text: string): readonly Node[] {
    for (let part: Part | undefined = this; part; part = part.above) {
      const found = part.inResults(text);
      if (found.length > 0) return found;
    }
    return [];
  }

  private inResults(text: string): readonly Node[] {
    const own: Node[] = [];
    for (const r of this.results) {
      r.text ??= JSON.stringify(r.result);
      if (r.text === text) own.push(r.node);
    }
    return [...own, ...[...this.below.values()].flatMap((p) => p.inResults(text))];
  }
}

/** The role under which later lines find what a line gives. */
function roleOf(
  line: Exclude<SheetLine, { kind: 'part' | 'note' | 'overall' | 'check' | 'result' | 'label' }>,
): string | undefined {
  if (line.kind === 'given') return line.name;
  if (line.kind === 'gather') return line.to;
  return 'gives' in line ? line.gives.name : undefined;
}

/** What a line says itself: the definition that it quotes, or the fact that it takes down. */
function ownOf(
  line: Exclude<SheetLine, { kind: 'part' | 'note' | 'overall' }>,
  value: unknown,
): Pick<Node, 'basis' | 'fact' | 'key'> {
  const quoted = (
    kind: Basis['kind'],
    id: string,
    { title, source }: { title: string; source: Source },
    p = source.provenance,
    attested?: string,
  ) => ({
    basis: { kind, id, title, source, provenance: p, ...(attested === undefined ? {} : { attested }) },
    key: `${kind} ${id}`,
  });
  switch (line.kind) {
    case 'look':
      return quoted('table', line.table, line, line.provenance, line.attested);
    case 'step':
      return quoted('formula', line.formula, line);
    case 'run':
      return quoted('procedure', line.procedure, line);
    case 'check':
    case 'result':
      return quoted('check', line.result.check, line.result);
    case 'given':
    case 'label': {
      const known = typeof value === 'number' || typeof value === 'string' ? { value } : {};
      const fact = { name: line.name, ...known, ...(line.by === undefined ? {} : { by: line.by }) };
      return { fact, key: JSON.stringify(fact) };
    }
    default:
      return {};
  }
}

/** A node and everything below it that was not found before, in the order of the sheet. */
function reached(node: Node, found = new Set<Node>()): readonly Node[] {
  const own: Node[] = [];
  const open = [node];
  for (let at = open.pop(); at; at = open.pop()) {
    if (found.has(at)) continue;
    found.add(at);
    own.push(at);
    for (const from of at.from) open.push(from);
  }
  return own.sort((a, b) => a.order - b.order);
}

/** Each definition once, with the weakest provenance that it was used with. */
function once(all: readonly Node[]): readonly Basis[] {
  const found = new Map<string, Basis>();
  for (const { basis: b, key = '' } of all) {
    if (!b) continue;
    const before = found.get(key);
    if (!before || before === b) {
      found.set(key, b);
      continue;
    }
    const provenance = weakestOf([before.provenance, b.provenance]) ?? b.provenance;
    const attested = [...new Set([before.attested, b.attested].flatMap((a) => a?.split('; ') ?? []))].join('; ');
    found.set(key, { ...b, provenance, ...(attested === '' ? {} : { attested }) });
  }
  return [...found.values()];
}

/** Each fact once. */
const factsOf = (all: readonly Node[]): readonly BasisFact[] => [
  ...new Map(all.flatMap(({ fact, key }) => (fact ? [[key, fact] as const] : []))).values(),
];

const linesOf = (sheet: SheetDocument) => new Part(sheet, { next: 0, byId: new Map() }).read();

/**
 * What every result line of a sheet rests on: the definitions and facts that its values were worked out from, followed
 * back from line to line, and the weakest provenance among the definitions. A statement whose truth was decided outside
 * the sheet rests on its check alone; where a value is missing, what is above the gap is not followed.
 * @param sheet a written sheet
 * @returns one entry for each line that holds a result, in the order of the sheet
 * @example
 * ```ts
 * import { amperes, metres, ratio, recorder, restsOn, squareMillimetres, volts, writeSheet } from 'ohmwright';
 * import { bs7671Checks, bs7671Formulas, bs7671Tables, voltageDropTabulated } from 'ohmwright/bs7671';
 *
 * const sheet = recorder('Drop');
 * const run = sheet.part('Run');
 * const system = run.label('system', 'single-phase');
 * const component = run.label('component', 'z');
 * const conductorArea = run.given('conductorArea', squareMillimetres(6));
 * const dropRate = run.look(bs7671Tables['4D5Drop'], { system, component, conductorArea });
 * const designCurrent = run.given('designCurrent', amperes(32), 'label of the charge point');
 * const length = run.given('length', metres(25), 'measured');
 * run.step(voltageDropTabulated, { dropRate, designCurrent, length });
 * const totalDrop = sheet.gather('sum', 'voltageDrop', 'totalDrop', [run]);
 * const nominalVoltage = sheet.given('nominalVoltage', volts(230));
 * const dropRatio = sheet.step(bs7671Formulas.dropRatioOf, { totalDrop, nominalVoltage });
 * const dropLimit = sheet.given('dropLimit', ratio(0.05), 'Table 4Ab');
 * sheet.check(bs7671Checks.dropWithinLimit, { dropRatio, dropLimit });
 *
 * const [result] = restsOn(writeSheet(sheet));
 * result?.weakest; // => 'memory'
 * result?.basis.map((b) => b.id); // => ['bs7671/4d5-drop', 'voltage-drop-tabulated', 'drop-ratio', 'voltage-drop']
 * ```
 */
export function restsOn(sheet: SheetDocument): readonly RestsOn[] {
  const found: RestsOn[] = [];
  for (const [line, result, node, place] of linesOf(sheet)) {
    const nodes = reached(node);
    const basis = once(nodes);
    const weakest = weakestOf(basis.map((b) => b.provenance)) ?? result.source.provenance;
    found.push({ place, line, result, basis, facts: factsOf(nodes), weakest });
  }
  return found;
}

/** The definitions that the judged results of a sheet rest on, each once: those of some provenances. */
export function basisOf(sheet: SheetDocument, ...of: readonly Provenance[]): readonly Basis[] {
  const found = new Set<Node>();
  const nodes: Node[] = [];
  for (const [, { verdict }, node] of linesOf(sheet))
    if (verdict === 'pass' || verdict === 'fail') nodes.push(...reached(node, found));
  return once(nodes).filter((b) => of.includes(b.provenance));
}

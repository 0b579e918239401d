import type { Calculator } from '../calculation/index.js';
import { calculatorOf } from '../codes/bs7671/calculators.js';
import { editions } from '../codes/bs7671/editions.js';
import { calculator as iec60364 } from '../codes/iec60364/contents.js';
import { aspects } from '../codes/wiring-code.js';
import {
  type Check,
  type CheckResult,
  cellProvenance,
  type Formula,
  type Gap,
  isMissing,
  judge,
  type Known,
  missing,
  type Overall,
  overall,
  type Procedure,
  type Relation,
  type SheetDocument,
  type SheetLine,
  silent,
  type Table,
  termOf,
  type Written,
} from '../core/index.js';
import { within } from '../core/vocabulary/index.js';
import { assumedBehindRules } from './assumed.js';
import { type Definition, type Definitions, definitions, sortDefinitions } from './definitions.js';
import { evaluateWithUnits, residualOf } from './expression.js';
import { type Addresses, alternativesOf, type Listed, listedIn, listsOf, notListed } from './listed.js';
import { close, same, sameGaps } from './same.js';
import { type Cell, labelName, Scope } from './scope.js';

/** Something on a sheet that is not as it should be. @inline */
export interface SheetProblem {
  /** Place of the part: empty for the sheet itself. */
  readonly place: string;
  /** Number of the line in its part, from 1; 0 for the part as a whole. */
  readonly line: number;
  readonly message: string;
}

/** What a sheet says that a whole amounts to. @inline */
export interface Conclusion {
  /** Place of the part. */
  readonly place: string;
  readonly verdict: Overall['verdict'];
  /** How many checks were due. */
  readonly checks: number;
  /** The code, where all that it always asks for was due. */
  readonly code?: { readonly document: string; readonly edition: string };
}

/** What the verification of a sheet came to. */
export interface Verification {
  /** Whether what stands on the sheet is right; what it amounts to is in `conclusions`, and a sheet without any says nothing. */
  readonly ok: boolean;
  /** What the sheet and its parts amount to; of a sheet from which that was cut away there is none. */
  readonly conclusions: readonly Conclusion[];
  /**
   * What no second calculation can confirm, each with its place: remarks, statements that somebody makes, limits that are
   * stated and stand in no contents list or table, that no further check was due of those that some circuits need.
   */
  readonly takenAsStated: readonly SheetProblem[];
  /** Everything that was found, in the order of the sheet. */
  readonly problems: readonly SheetProblem[];
}

type Line<K extends SheetLine['kind']> = Extract<SheetLine, { readonly kind: K }>;
type Outcome = { readonly gives: Written } | { readonly blocked: readonly Gap[] };

/** Definitions by identifier. */
interface ById {
  readonly formulas: ReadonlyMap<string, Formula | Relation>;
  readonly procedures: ReadonlyMap<string, Procedure>;
  readonly tables: ReadonlyMap<string, Table>;
  readonly checks: ReadonlyMap<string, Check>;
}

const byId = <T extends { readonly id: string }>(own: readonly T[], extra: readonly T[]) =>
  new Map([...own, ...extra].map((d) => [d.id, d] as const));
const allById = (extra: Definitions): ById => ({
  formulas: byId(definitions.formulas, extra.formulas),
  procedures: byId(definitions.procedures, extra.procedures),
  tables: byId(definitions.tables, extra.tables),
  checks: byId(definitions.checks, extra.checks),
});

/** Aspects for which a code has no rule, or an edition no text, answer without a check that could be looked up. */
const openAspect = /* @__PURE__ */ (() => new RegExp(`^(${aspects.join('|')})-(rule|by-edition)$`))();

const gapKinds: readonly string[] = ['fact', 'cell', 'range', 'edition'] satisfies Gap['kind'][];
const reasons: readonly string[] = ['no-rule', 'not-applicable'] satisfies CheckResult['reason'][];

/** One part of a sheet while it is read. */
class Reader {
  readonly scope: Scope;
  /** What lines with identifiers gave, anywhere on the sheet. */
  private readonly byId: Map<string, Cell & { readonly name: string }>;
  /** Identifier of the line that is read. */
  private id: string | undefined;
  readonly results: CheckResult[] = [];
  /** Edition by document that results cite. */
  private readonly judgedBy: Map<string, string>;
  /** Every number that the sheet has given so far. */
  private readonly written: Set<unknown>;
  private readonly parts = new Map<string, Reader>();
  private at = 0;

  /** What is said of the whole, and what is taken as stated; shared by all parts. */
  readonly told: { readonly conclusions: Conclusion[]; readonly stated: SheetProblem[] };
  /** Results here and below when something was said of the whole. */
  private closedAt: number | undefined;

  constructor(
    private readonly document: SheetDocument,
    private readonly defined: ById,
    private readonly problems: SheetProblem[],
    private readonly listed: Listed,
    private readonly listOf: (id: string) => Addresses,
    above?: Reader,
  ) {
    this.scope = new Scope(above?.scope.view());
    this.told = above?.told ?? { conclusions: [], stated: [] };
    this.written = above?.written ?? new Set();
    this.byId = above?.byId ?? new Map();
    this.judgedBy = above?.judgedBy ?? new Map();
    if (above) this.above = above;
    this.parts.set(document.place, this);
  }

  private readonly above: Reader | undefined;

  private wrong(message: string, line = this.at): undefined {
    this.problems.push({ place: this.document.place, line, message });
  }

  read(): undefined {
    for (const line of this.document.lines) {
      this.at++;
      this.id = line.id;
      try {
        this.kinds(line.kind === 'check' || line.kind === 'result' ? line.result : line);
        const other = line.id === undefined ? undefined : notListed(line, this.listOf(line.id));
        if (other) this.wrong(other);
        this.line(line);
      } catch (error) {
        this.wrong(`the line cannot be read: ${error instanceof Error ? error.message : String(error)}`);
      }
    }
    this.at = 0;
    if (this.closedAt !== undefined && this.below().length > this.closedAt)
      this.wrong('results stand after what they amount to');
  }

  /** Results of this part and of those below it. */
  private below(): readonly CheckResult[] {
    return [...this.parts.values()].flatMap((p) => (p === this ? this.results : p.below()));
  }

  /** What the results here and below amount to: each check that is due has one, and no other counts. */
  private overall(line: Line<'overall'>): undefined {
    const all = this.below();
    const quoted = all.flatMap((r) => r.alternatives ?? []);
    const [own, other] = [false, true].map((is) => all.filter((r) => quoted.some((q) => same(q, r)) === is));
    const left = [...(own ?? []), ...(other ?? [])];
    const counted = line.due.flatMap(({ check, verdict }) => {
      const at = left.findIndex((r) => r.check === check && r.verdict === verdict);
      if (at < 0) this.wrong(`the check ${check} is due as ${verdict} and stands nowhere above`);
      return at < 0 ? [] : left.splice(at, 1);
    });
    const among = (which: 'aside' | 'repeated', id: string) => this.listed.asked.some((a) => a.asked[which].has(id));
    for (const r of left) {
      if (quoted.some((q) => same(q, r))) continue;
      const counts = counted.some((c) => c.check === r.check);
      if (among('aside', r.check) || (counts && among('repeated', r.check)))
        this.stated(`that the result of ${r.check}, ${r.verdict}, stands aside`);
      else this.wrong(`the result of ${r.check} is none of those that are due`);
    }
    const assumed = line.assumed ?? [];
    for (const one of assumedBehindRules(this.document))
      if (!assumed.includes(one)) this.wrong(`a rule rests on ${one}, which is assumed and not among the conditions`);
    const whole = overall(counted).verdict;
    const due = whole === 'pass' && assumed.length > 0 ? 'conditional' : whole;
    if (line.verdict !== due) this.wrong(`the whole is ${due}, not ${line.verdict}`);
    const { code } = line;
    if (code) {
      const found = this.listed.asked.find(({ of }) => of?.document === code.document && of.edition === code.edition);
      if (!found) this.wrong(`no contents list is of ${code.document}:${code.edition}`);
      for (const id of found?.asked.always ?? [])
        if (!line.due.some((d) => d.check === id)) this.wrong(`${code.document} asks for ${id}, which is not due here`);
      // what applies follows from facts of the circuit, which a sheet has only as far as it draws on them
      if (found) this.stated(`that of the checks that ${code.document} asks for in some circuits no others are due`);
    }
    if (this.closedAt !== undefined) this.wrong('the whole is concluded twice');
    this.closedAt = all.length;
    const { verdict } = line;
    this.told.conclusions.push({
      place: this.document.place,
      verdict,
      checks: line.due.length,
      ...(code ? { code } : {}),
    });
  }

  /** Takes down what no second calculation can confirm. */
  private stated(message: string): void {
    this.told.stated.push({ place: this.document.place, line: this.at, message });
  }

  /** Values that nothing used, here and below; asked when the whole sheet has been read. */
  idle(): undefined {
    for (const cell of this.scope.idle()) this.wrong('no later line uses this value', cell.line);
    for (const part of this.parts.values()) if (part !== this) part.idle();
  }

  private line(line: SheetLine): undefined {
    switch (line.kind) {
      case 'given':
        return this.given(line);
      case 'label':
        return this.label(line);
      case 'look':
        return this.look(line);
      case 'step':
        return this.step(line);
      case 'run':
        return this.run(line);
      case 'gather':
        return this.gather(line);
      case 'same':
        return this.same(line);
      case 'check':
        return this.check(line);
      case 'result':
        return this.result(line);
      case 'overall':
        return this.overall(line);
      case 'note':
        return void this.stated(`a remark: ${line.text}`);
      case 'part':
        return this.part(line);
      default:
        throw new Error(`there is no kind of line ${String((line as { kind: unknown }).kind)}`);
    }
  }

  /** What blocks a line, and why nothing is required, are of closed kinds. */
  private kinds(of: object): undefined {
    const {
      blocked = [],
      gaps = [],
      reason,
    } = of as {
      blocked?: readonly Gap[];
      gaps?: readonly Gap[];
      reason?: string;
    };
    for (const gap of [...blocked, ...gaps]) {
      if (!gapKinds.includes(gap.kind)) this.wrong(`there is no gap of kind ${gap.kind}`);
      const { disagree } = gap as { disagree?: unknown };
      if (disagree !== undefined && disagree !== true) this.wrong('readings that do not agree are said to');
      if (gap.kind === 'cell' && !same(gap.source, this.defined.tables.get(gap.table)?.source))
        this.wrong(`the table ${gap.table} is cited from elsewhere`);
    }
    if (reason !== undefined && !reasons.includes(reason)) this.wrong(`there is no reason ${reason}`);
  }

  private take(name: string, value: Cell['value'], mustServe = false): undefined {
    const cell: Cell = { value, line: this.at, mustServe: mustServe && this.id === undefined, used: false };
    this.written.add(value);
    if (this.id === undefined) return void this.scope.set(name, cell);
    if (this.byId.has(this.id)) this.wrong(`${this.id} is given twice`);
    this.byId.set(this.id, { ...cell, name });
  }

  /** A number on a line: its role, symbol and unit as the vocabulary has them. */
  private amount(w: Written, name = w.name): undefined {
    const term = termOf(name);
    if (!term) return this.wrong(`there is no role ${name}`);
    if (w.name !== name) this.wrong(`${w.name} stands where ${name} is due`);
    if (w.symbol !== term.symbol || w.unit !== term.unit)
      this.wrong(`${name} is written ${term.symbol} in ${term.unit || '1'}, not ${w.symbol} in ${w.unit || '1'}`);
    if (!within(w.value, term)) this.wrong(`${name} is ${w.value}, which its role forbids`);
  }

  /** What a line gives against what it has to give. */
  private outcome(name: string, line: Outcome, due: Known<number>, scale = 0): undefined {
    if ('gives' in line) {
      this.amount(line.gives, name);
      if (isMissing(due)) this.wrong(`${name} is ${line.gives.value}, but it cannot be had`);
      else if (!close(line.gives.value, due, scale)) this.wrong(`${name} is ${line.gives.value}; it should be ${due}`);
      this.take(name, line.gives.value);
    } else {
      if (!isMissing(due)) this.wrong(`${name} can be had: it is ${due}`);
      else if (!sameGaps(line.blocked, due.missing)) this.wrong(`${name} is blocked by other reasons than those given`);
      this.take(name, line.blocked);
    }
  }

  /** A value that a line uses: it must be the latest of its role. */
  private tied(name: string, value: number | string | undefined, role = name, from?: string): Known<number | string> {
    const cell = from === undefined ? this.scope.latest(role) : this.byId.get(from);
    if (!cell) {
      this.wrong(`nothing above gives ${from ?? name}`);
      return value ?? missing();
    }
    cell.used = true;
    if (typeof cell.value === 'object') {
      if (value !== undefined) this.wrong(`${name} is ${value} here, but it could not be had above`);
      return { missing: cell.value };
    }
    if (value === undefined) this.wrong(`${name} is left out here; it was ${cell.value} above`);
    else if (value !== cell.value) this.wrong(`${name} is ${value} here; it was ${cell.value} above`);
    return cell.value;
  }

  private quoted(line: { readonly [key: string]: unknown }, due: Readonly<Record<string, unknown>>): undefined {
    for (const [key, value] of Object.entries(due))
      if (!same(line[key], value)) this.wrong(`its ${key} is not the one of the definition`);
  }

  private given(line: Line<'given'>): undefined {
    if (line.words !== (termOf(line.name)?.words ?? '')) this.wrong(`${line.name} is described in other words`);
    if ('gives' in line) {
      this.amount(line.gives, line.name);
      this.take(line.name, line.gives.value, true);
    } else {
      if (!termOf(line.name)) this.wrong(`there is no role ${line.name}`);
      this.take(line.name, line.blocked, true);
    }
  }

  private label(line: Line<'label'>): undefined {
    if ((line.value === undefined) === (line.blocked === undefined))
      this.wrong(`${line.name} has to be a label or the reasons why there is none`);
    this.take(labelName(line.name), line.value ?? line.blocked ?? [], true);
  }

  private look(line: Line<'look'>): undefined {
    const table = this.defined.tables.get(line.table);
    if (!table) return this.wrong(`there is no table ${line.table}`);
    this.quoted(line, { title: table.title, source: table.source });
    const due: Record<string, Known<number | string>> = {};
    for (const axis of table.axes) {
      const role = 'labels' in axis ? labelName(axis.name) : axis.name;
      due[axis.name] = this.tied(axis.name, line.keys[axis.name], role, line.ids?.[axis.name]);
    }
    for (const key of Object.keys(line.keys)) if (!(key in due)) this.wrong(`the table has no axis ${key}`);
    const cell = silent().look(table, due as never);
    const known = isMissing(cell) ? undefined : cellProvenance(table, due as Readonly<Record<string, string | number>>);
    if (line.provenance !== known) this.wrong(`its cells are known as ${known}, not as ${line.provenance}`);
    this.outcome(table.cell, line, cell);
  }

  private step(line: Line<'step'>): undefined {
    const formula = this.defined.formulas.get(line.formula);
    if (!formula) return this.wrong(`there is no formula ${line.formula}`);
    const { kind, title, source, constants, inputs, output } = formula;
    const expression = kind === 'relation' ? `${formula.terms.join(' + ')} = 0` : formula.expression;
    this.quoted(line, { title, source, constants, expression });
    const uses = this.used(line, inputs);
    const due = silent().step(formula, uses.due as never);
    const numbers = inputs.map((n) => uses.due[n]).filter((v) => typeof v === 'number');
    const unit = termOf(output)?.unit;
    const scale = Math.max(
      0,
      ...inputs.flatMap((n) => (termOf(n)?.unit === unit ? [Math.abs(uses.due[n] as number) || 0] : [])),
    );
    this.outcome(output, line, due, scale);
    if (!('gives' in line) || numbers.length < inputs.length) return;
    const values = uses.due as Readonly<Record<string, number>>;
    if (kind === 'formula') {
      const again = evaluateWithUnits(formula, values);
      if (!close(again, line.gives.value, scale)) this.wrong(`${output} is ${again} by the expression`);
    } else {
      const residual = residualOf(formula, { ...values, [output]: line.gives.value });
      if (!(residual <= formula.tolerance)) this.wrong(`the terms leave ${residual} of the largest`);
    }
  }

  /** Numbers that a line uses against the roles that it has to use. */
  private used({ uses, ids }: Line<'step' | 'check'>, roles: readonly string[]) {
    const due: Record<string, Known<number>> = {};
    for (const use of uses) {
      this.amount(use);
      if (!roles.includes(use.name)) this.wrong(`${use.name} has no place here`);
    }
    if (new Set(uses.map((u) => u.name)).size < uses.length) this.wrong('a value stands twice');
    for (const name of roles) {
      const use = uses.find((u) => u.name === name);
      due[name] = this.tied(name, use?.value, name, ids?.[name]) as Known<number>;
    }
    return { due };
  }

  private run(line: Line<'run'>): undefined {
    const procedure = this.defined.procedures.get(line.procedure);
    if (!procedure) return this.wrong(`there is no procedure ${line.procedure}`);
    const { title, source, method, output } = procedure;
    this.quoted(line, { title, source, method });
    // a number of the input is one that a line above gave, or a small count; what it uses has served
    const leaves = new Set<unknown>();
    JSON.stringify(line.input, (_, v: unknown) => {
      if (typeof v !== 'object') leaves.add(v);
      return v;
    });
    for (const leaf of leaves)
      if (typeof leaf === 'number' && !this.written.has(leaf) && !(Number.isInteger(leaf) && Math.abs(leaf) < 10))
        this.wrong(`nothing above gives ${leaf}, which the procedure ${procedure.id} uses`);
    this.serve(leaves);
    if (line.input === null && 'blocked' in line) return this.take(output, line.blocked);
    this.outcome(output, line, silent().run(procedure, line.input));
  }

  /** Marks what a procedure draws on, here, above and below. */
  private serve(leaves: ReadonlySet<unknown>): undefined {
    for (const cell of this.scope.all()) if (leaves.has(cell.value)) cell.used = true;
    for (const part of this.parts.values()) if (part !== this) part.serve(leaves);
  }

  /** Another figure under this name: of the same unit, with the same value. */
  private same(line: Line<'same'>): undefined {
    const value = 'gives' in line ? line.gives.value : undefined;
    const given = this.byId.get(line.from);
    if (termOf(given?.name ?? '')?.unit !== termOf(line.name)?.unit)
      this.wrong(`${line.name} and ${line.from} differ in unit`);
    this.outcome(line.name, line, this.tied(line.name, value, line.name, line.from) as Known<number>);
  }

  private gather(line: Line<'gather'>): undefined {
    if (termOf(line.from)?.unit !== termOf(line.to)?.unit) this.wrong(`${line.from} and ${line.to} differ in unit`);
    if (new Set(line.parts).size < line.parts.length) this.wrong('a part is gathered twice');
    const sheet = silent();
    const parts = line.parts.map((place) => {
      const part = sheet.part(place);
      const byId = line.id === undefined ? undefined : this.byId.get(place);
      const reader = this.find(place);
      const cell = byId ?? reader?.scope.ownLatest(line.from);
      if (!reader && !byId) this.wrong(`there is no part ${place} above`);
      if (!cell) return part;
      cell.used = true;
      part.given(line.from as never, (typeof cell.value === 'object' ? { missing: cell.value } : cell.value) as never);
      return part;
    });
    if (!['sum', 'largest', 'smallest'].includes(line.how)) this.wrong(`there is no way to gather ${line.how}`);
    this.outcome(line.to, line, sheet.gather(line.how, line.from as never, line.to as never, parts));
  }

  /** This part or one below it that has been read. */
  private find(place: string): Reader | undefined {
    const own = this.parts.get(place);
    if (own) return own;
    for (const [at, part] of this.parts) if (part !== this && place.startsWith(`${at}.`)) return part.find(place);
    return undefined;
  }

  private check(line: Line<'check'>): undefined {
    const { result } = line;
    const check = this.asCited(result);
    if (!check) return this.wrong(`there is no check ${result.check}`);
    this.results.push(result);
    const due = judge(check, this.evidence(check, line) as never, result.because);
    const { gaps, ...rest } = result;
    const { gaps: dueGaps, ...dueRest } = due;
    if (!same(rest, dueRest)) this.wrong(`the check ${check.id} comes to another result: ${due.verdict}`);
    if (!sameGaps(gaps ?? [], dueGaps ?? [])) this.wrong(`the check ${check.id} is blocked by other reasons`);
  }

  /** The check of a result as one of the codes cites it, by the edition that the sheet was worked out by. */
  private asCited(result: CheckResult): Check | undefined {
    const check = this.defined.checks.get(result.check);
    const cited = this.listed.asked.flatMap((a) => a.asked.cited.get(result.check) ?? []);
    const source = cited.find((s) => same(s, result.source));
    return this.edited(check && source ? { ...check, source } : check, result);
  }

  /** A check as it is cited by the edition that the sheet was worked out by: one throughout. */
  private edited(check: Check | undefined, { source: { document, edition } }: CheckResult): Check | undefined {
    if (check?.source.document !== document || check.source.edition !== undefined || edition === undefined)
      return check;
    const known = this.listed.editions.some((e) => e.document === document && e.edition === edition);
    const before = this.judgedBy.get(document) ?? edition;
    if (!known || before !== edition) this.wrong(`the sheet is judged by ${document}:${edition}, and by ${before}`);
    this.judgedBy.set(document, before);
    return { ...check, source: { ...check.source, edition } };
  }

  private evidence(check: Check, line: Line<'check'>): Readonly<Record<string, unknown>> {
    const { result } = line;
    const open = { missing: result.gaps ?? [] };
    if (open.missing.length === 0 && result.verdict === 'not-determined' && check.kind !== 'any-of')
      this.wrong('what is not determined has to say why');
    const plain = () => line.uses.length > 0 && this.wrong(`the check ${check.id} uses no numbers`);
    switch (check.kind) {
      case 'at-most':
      case 'at-least':
        this.statedLimits(line, [check.limit]);
        return this.used(line, [check.value, check.limit]).due;
      case 'within':
        this.statedLimits(line, [check.least, check.most]);
        return this.used(line, [check.value, check.least, check.most]).due;
      case 'holds':
        plain();
        this.stated(`that ${check.id} ${line.holds === true ? 'holds' : 'does not hold, or is open'}`);
        return { holds: line.holds ?? open, because: result.because ?? '' };
      case 'any-of':
        plain();
        for (const one of result.alternatives ?? []) {
          if (!this.knows(one)) this.wrong(`the alternative ${one.check} stands nowhere above`);
          const permitted = check.of ? new Set(check.of) : alternativesOf(check.id, this.listed);
          if (permitted && !permitted.has(one.check)) this.wrong(`${one.check} is no alternative of ${check.id}`);
        }
        return { results: result.alternatives ?? [] };
      default: {
        const never: never = check;
        return never;
      }
    }
  }

  /** Limits that were taken down: by a line of a contents list they are those of the code, else as stated. */
  private statedLimits(line: Line<'check'>, limits: readonly string[]): undefined {
    for (const name of limits) {
      const from = line.ids?.[name];
      const cell = from === undefined ? this.scope.latest(name) : undefined;
      if (cell?.mustServe) this.stated(`the limit ${name}`);
    }
  }

  /** Whether a result stands on a line of this part, of one below it, or of one above it. */
  private knows(result: CheckResult): boolean {
    for (let reader: Reader | undefined = this; reader; reader = reader.above) if (reader.holds(result)) return true;
    return false;
  }

  private holds(result: CheckResult): boolean {
    if (this.results.some((r) => same(r, result))) return true;
    return [...this.parts.values()].some((p) => p !== this && p.holds(result));
  }

  private result(line: Line<'result'>): undefined {
    const { result } = line;
    const open = result.verdict === 'not-required' ? 'reason' : 'gaps';
    if (result.verdict !== 'not-required' && result.verdict !== 'not-determined')
      this.wrong(`${result.verdict} can only be the result of a check`);
    else if (result[open] === undefined || result[open]?.length === 0) this.wrong(`${result.verdict} has to say why`);
    for (const key of ['value', 'limit', 'most', 'margin'] as const)
      if (result[key] !== undefined) this.wrong(`a result that was not judged has no ${key}`);
    this.results.push(result);
    const check = this.asCited(result);
    if (check) {
      const { title, weight, source, caution } = check;
      const words = result.verdict === 'not-required' && result.caution === undefined ? undefined : caution;
      this.quoted({ ...result }, { title, weight, source, caution: words });
    } else if (!openAspect.test(result.check)) this.wrong(`there is no check ${result.check}`);
  }

  private part(line: Line<'part'>): undefined {
    const { place, format } = line.part;
    const number = [...this.parts.keys()].length;
    const due = this.document.place ? `${this.document.place}.${number}` : `${number}`;
    if (place !== due || this.parts.has(place)) this.wrong(`the part stands at ${due}, not at ${place}`);
    if (format !== 'sheet/1') this.wrong(`the format ${String(format)} is not known`);
    const part = new Reader(line.part, this.defined, this.problems, this.listed, this.listOf, this);
    this.parts.set(due, part);
    part.read();
  }
}

let own: Listed | undefined;
/** The contents lists of this library, laid out when first asked for, and others, which go before those of the same edition. */
function listedWith(codes: readonly Calculator[]): Listed {
  const ofEditions = () => [...editions.flatMap(({ edition }) => calculatorOf(edition) ?? []), iec60364()];
  own ??= listedIn(ofEditions());
  return codes.length === 0 ? own : listedIn([...codes, ...ofEditions()]);
}

/**
 * Verifies a whole sheet by a second, independent calculation: every value that a line uses is the latest of its role,
 * tables are read again, expressions are evaluated with units by a general calculator, relations are checked by what
 * their terms leave, procedures are run again, and checks are judged again. A line with an identifier has to be the one
 * that a contents list has in its place.
 * @param document a written sheet; it may come from anybody
 * @param extra definitions of the reader's own that the sheet quotes
 * @param codes contents lists of the reader's own by which it was worked out, beside those of this library
 * @returns everything that is wrong with it, what it amounts to, and what is taken as stated; it throws nothing
 * @example
 * ```ts
 * import { amperes, metres, millivoltsPerAmpereMetre, recorder, writeSheet } from 'ohmwright';
 * import { voltageDropTabulated } from 'ohmwright/bs7671';
 * import { verifySheet } from 'ohmwright/verify';
 *
 * const sheet = recorder('Drop');
 * const dropRate = sheet.given('dropRate', millivoltsPerAmpereMetre(7.3));
 * const designCurrent = sheet.given('designCurrent', amperes(32));
 * const length = sheet.given('length', metres(25));
 * sheet.step(voltageDropTabulated, { dropRate, designCurrent, length });
 *
 * verifySheet(writeSheet(sheet)).ok; // => true
 * ```
 */
export function verifySheet(
  document: SheetDocument,
  extra: readonly Definition[] = [],
  codes: readonly Calculator[] = [],
): Verification {
  const problems: SheetProblem[] = [];
  let told: Reader['told'] = { conclusions: [], stated: [] };
  try {
    const listed = listedWith(codes);
    const defined = allById(sortDefinitions(extra));
    const reader = new Reader(document, defined, problems, listed, listsOf(document, listed));
    if (document.format !== 'sheet/1')
      problems.push({ place: '', line: 0, message: `the format ${String(document.format)} is not known` });
    if (document.place !== '') problems.push({ place: '', line: 0, message: 'a sheet begins at its own place' });
    told = reader.told;
    reader.read();
    reader.idle();
  } catch (error) {
    const message = `the sheet cannot be read: ${error instanceof Error ? error.message : String(error)}`;
    problems.push({ place: '', line: 0, message });
  }
  return { ok: problems.length === 0, conclusions: told.conclusions, takenAsStated: told.stated, problems };
}

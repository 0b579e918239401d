import {
  type Check,
  type CheckResult,
  cellProvenance,
  type Formula,
  type Gap,
  isMissing,
  type Known,
  missing,
  type Overall,
  type Procedure,
  type Relation,
  type SheetDocument,
  type SheetLine,
  silent,
  type Table,
  termOf,
  type Written,
} from '../core/index.js';
import { same } from '../core/same.js';
import { within } from '../core/vocabulary/index.js';
import { evaluateWithUnits, residualOf } from './expression.js';
import { close, sameGaps } from './same.js';
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

export type Line<K extends SheetLine['kind']> = Extract<SheetLine, { readonly kind: K }>;
type Outcome = { readonly gives: Written } | { readonly blocked: readonly Gap[] };

/** Definitions by identifier. */
export interface ById {
  readonly formulas: ReadonlyMap<string, Formula | Relation>;
  readonly procedures: ReadonlyMap<string, Procedure>;
  readonly tables: ReadonlyMap<string, Table>;
  readonly checks: ReadonlyMap<string, Check>;
}

const gapKinds: readonly string[] = ['fact', 'cell', 'range', 'edition'] satisfies Gap['kind'][];
const reasons: readonly string[] = ['no-rule', 'not-applicable'] satisfies CheckResult['reason'][];

/** The figures of one part of a sheet while it is read: each line worked out a second time. */
export class FigureReader {
  readonly scope: Scope;
  /** What lines with identifiers gave, anywhere on the sheet. */
  private readonly byId: Map<string, Cell & { readonly name: string }>;
  /** Identifier of the line that is read. */
  protected id: string | undefined;
  /** Every number that the sheet has given so far. */
  private readonly written: Set<unknown>;
  protected readonly parts = new Map<string, FigureReader>();
  protected at = 0;

  /** What is said of the whole, and what is taken as stated; shared by all parts. */
  readonly told: { readonly conclusions: Conclusion[]; readonly stated: SheetProblem[] };

  constructor(
    protected readonly document: SheetDocument,
    protected readonly defined: ById,
    protected readonly problems: SheetProblem[],
    above?: FigureReader,
  ) {
    this.scope = new Scope(above?.scope.view());
    this.told = above?.told ?? { conclusions: [], stated: [] };
    this.written = above?.written ?? new Set();
    this.byId = above?.byId ?? new Map();
    this.parts.set(document.place, this);
  }

  protected wrong(message: string, line = this.at): undefined {
    this.problems.push({ place: this.document.place, line, message });
  }

  /** Takes down what no second calculation can confirm. */
  protected stated(message: string): void {
    this.told.stated.push({ place: this.document.place, line: this.at, message });
  }

  /** Values that nothing used, here and below; asked when the whole sheet has been read. */
  idle(): undefined {
    for (const cell of this.scope.idle()) this.wrong('no later line uses this value', cell.line);
    for (const part of this.parts.values()) if (part !== this) part.idle();
  }

  /** What blocks a line, and why nothing is required, are of closed kinds. */
  protected kinds(of: object): undefined {
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

  protected quoted(line: { readonly [key: string]: unknown }, due: Readonly<Record<string, unknown>>): undefined {
    for (const [key, value] of Object.entries(due))
      if (!same(line[key], value)) this.wrong(`its ${key} is not the one of the definition`);
  }

  protected given(line: Line<'given'>): undefined {
    if (line.words !== (termOf(line.name)?.words ?? '')) this.wrong(`${line.name} is described in other words`);
    if ('gives' in line) {
      this.amount(line.gives, line.name);
      this.take(line.name, line.gives.value, true);
    } else {
      if (!termOf(line.name)) this.wrong(`there is no role ${line.name}`);
      this.take(line.name, line.blocked, true);
    }
  }

  protected label(line: Line<'label'>): undefined {
    if ((line.value === undefined) === (line.blocked === undefined))
      this.wrong(`${line.name} has to be a label or the reasons why there is none`);
    this.take(labelName(line.name), line.value ?? line.blocked ?? [], true);
  }

  protected look(line: Line<'look'>): undefined {
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

  protected step(line: Line<'step'>): undefined {
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
  protected used({ uses, ids }: Line<'step' | 'check'>, roles: readonly string[]) {
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

  protected run(line: Line<'run'>): undefined {
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
  protected same(line: Line<'same'>): undefined {
    const value = 'gives' in line ? line.gives.value : undefined;
    const given = this.byId.get(line.from);
    if (termOf(given?.name ?? '')?.unit !== termOf(line.name)?.unit)
      this.wrong(`${line.name} and ${line.from} differ in unit`);
    this.outcome(line.name, line, this.tied(line.name, value, line.name, line.from) as Known<number>);
  }

  protected gather(line: Line<'gather'>): undefined {
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
  private find(place: string): FigureReader | undefined {
    const own = this.parts.get(place);
    if (own) return own;
    for (const [at, part] of this.parts) if (part !== this && place.startsWith(`${at}.`)) return part.find(place);
    return undefined;
  }
}

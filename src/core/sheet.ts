import { CalculationError, type UnitOf } from '../units/index.js';
import { type Check, type CheckResult, type Evidence, judge, type Overall, overall } from './check.js';
import { type AnyFormula, evaluateStep, gatherValues, guardRun, readTable } from './evaluate.js';
import { type Fact, factValue, isMissing, type Known, type Missing } from './fact.js';
import type { Formula, Procedure, Relation } from './formula.js';
import { outOfRange } from './range.js';
import type { Due, Gathering, SheetLine } from './sheet-lines.js';
import type { Axis, Keys, Table } from './table.js';
import { type Name, termOf, type Vocabulary, within } from './vocabulary/index.js';

/** Inputs of a step: each a value or the reasons why there is none. */
export type StepValues<I extends Name> = { readonly [N in I]: Known<Vocabulary[N]> };
/** Keys of a look-up: each a value or the reasons why there is none. */
export type KnownKeys<A extends readonly Axis[]> = { readonly [X in keyof Keys<A>]: Known<Keys<A>[X]> };

/**
 * What a calculation of several steps writes on. The silent sheet runs the same lines and keeps nothing, so a bulk run
 * and a printed sheet cannot differ. Unknown facts flow through; they never turn into numbers.
 */
export interface Sheet {
  /** A part of the sheet with a heading: a stretch, a circuit, a phase. It sees what its parent had before the part was opened. */
  part(title: string): Sheet;
  /** A sheet that keeps nothing and reads the same tables. */
  silent(): Sheet;
  /** Takes down a surveyed or chosen value. Throws a CalculationError `out-of-range` when its role forbids it. */
  given<N extends Name>(
    name: N,
    fact: Vocabulary[N] | Fact<Vocabulary[N]> | Missing,
    by?: string,
  ): Known<Vocabulary[N]>;
  /** Takes down a label that later look-ups use as a key. */
  label<L extends string>(name: string, fact: L | Fact<L> | Missing, by?: string): Known<L>;
  /** Reads a table; no cell is a reason, not an error. */
  look<A extends readonly Axis[], O extends Name>(table: Table<A, O>, keys: KnownKeys<A>): Known<Vocabulary[O]>;
  /** Evaluates a formula or a relation. Out of its range there is a reason, not a number. */
  step<I extends Name, O extends Name>(
    formula: Formula<I, O> | Relation<I, O>,
    values: StepValues<I>,
  ): Known<Vocabulary[O]>;
  /** Runs a procedure over plain data. */
  run<In, O extends Name>(procedure: Procedure<In, O>, input: Known<In>): Known<Vocabulary[O]>;
  /** Brings the values of one role in several parts together under a role of this sheet. */
  gather<N extends Name, O extends Name>(
    how: Gathering,
    from: N,
    to: UnitOf<Vocabulary[O]> extends UnitOf<Vocabulary[N]> ? O : never,
    parts: readonly Sheet[],
  ): Known<Vocabulary[O]>;
  /** Judges a check; `because` says what the values rest on, where a person has to know it with the verdict. */
  check<C extends Check>(check: C, evidence: Evidence<C>, because?: string): CheckResult;
  /** Takes down a result that was decided without a comparison: not required, or not determined. */
  result(result: CheckResult): CheckResult;
  /**
   * Takes down what the results on this sheet and its parts amount to, with the checks that were due; the last line of the
   * sheet, or the last with a result. A code is named where all that it asks of a circuit is among them; assumptions where
   * facts were taken from them, by which nothing passes but on condition.
   */
  overall(
    results: readonly CheckResult[],
    code?: { readonly document: string; readonly edition: string },
    assumed?: readonly string[],
  ): Overall;
  /** A remark for the reader. */
  note(text: string): void;
  /** Takes down lines that are made only when the sheet is written out; `next` gives the place of a new part, `place` that of this one. */
  listed(lines: (next: () => string, place: string) => readonly SheetLine[]): void;
  /** The latest value of a role on this sheet or, failing that, on its parents. */
  latest<N extends Name>(name: N): Known<Vocabulary[N]> | undefined;
}

/** A line as a recorder keeps it: references and inputs; text is made only when the sheet is written out. */
export type Entry =
  | {
      readonly kind: 'given';
      readonly name: Name;
      readonly value: Known<number>;
      readonly by?: string;
      readonly assumed?: string;
    }
  | {
      readonly kind: 'label';
      readonly name: string;
      readonly value: Known<string>;
      readonly by?: string;
      readonly assumed?: string;
    }
  | {
      readonly kind: 'look';
      readonly table: Table;
      readonly keys: Readonly<Record<string, unknown>>;
      readonly value: Known<number>;
    }
  | {
      readonly kind: 'step';
      readonly formula: Formula | Relation;
      readonly values: Readonly<Record<string, unknown>>;
      readonly value: Known<number>;
    }
  | { readonly kind: 'run'; readonly procedure: Procedure; readonly input: unknown; readonly value: Known<number> }
  | {
      readonly kind: 'gather';
      readonly how: Gathering;
      readonly from: Name;
      readonly to: Name;
      readonly parts: readonly Sheet[];
      readonly value: Known<number>;
    }
  | {
      readonly kind: 'check';
      readonly check: Check;
      readonly evidence: Readonly<Record<string, unknown>>;
      readonly result: CheckResult;
    }
  | { readonly kind: 'result'; readonly result: CheckResult }
  | {
      readonly kind: 'overall';
      readonly verdict: Overall['verdict'];
      readonly due: readonly Due[];
      readonly code?: { readonly document: string; readonly edition: string };
      readonly assumed?: readonly string[];
    }
  | { readonly kind: 'note'; readonly text: string }
  | { readonly kind: 'listed'; lines(next: () => string, place: string): readonly SheetLine[] }
  | { readonly kind: 'part'; readonly part: Recorder };

type Values = Record<string, Known<number> | undefined>;
/** The values that a part sees above it. */
interface View {
  readonly values: Readonly<Values>;
  readonly above?: View;
}

/** The assumption that a fact was taken from. */
const assumedOf = (fact: unknown): { readonly assumed?: string } => {
  const assumed = typeof fact === 'object' && fact !== null ? (fact as { assumed?: string }).assumed : undefined;
  return assumed === undefined ? {} : { assumed };
};
/** Tables by the identifiers of those in whose place they are read. @inline */
type Instead = ReadonlyMap<string, Table>;

/** The sheet that keeps only the latest value of each role, for look-back; every result is the same as a recorder's. */
export class SilentSheet implements Sheet {
  /** @internal */
  private values: Values = {};
  /** @internal */
  private shared = false;
  /** @internal */
  private readonly above: View | undefined;

  /** @internal */
  constructor(
    above?: View,
    protected readonly tables?: Instead,
  ) {
    this.above = above;
  }

  /** @internal What a part that is opened now may see: values taken down later are written to a copy. */
  protected view(): View {
    this.shared = true;
    return { values: this.values, ...(this.above ? { above: this.above } : {}) };
  }

  /** @internal */
  private set(name: string, value: Known<number>): void {
    if (this.shared) {
      this.values = { ...this.values };
      this.shared = false;
    }
    this.values[name] = value;
  }

  /** @internal */
  protected keep(_make: () => Entry): void {}

  part(_title: string): Sheet {
    return new SilentSheet(this.view(), this.tables);
  }

  silent(): Sheet {
    return new SilentSheet(undefined, this.tables);
  }

  given<N extends Name>(
    name: N,
    fact: Vocabulary[N] | Fact<Vocabulary[N]> | Missing,
    by?: string,
  ): Known<Vocabulary[N]> {
    const value = typeof fact === 'number' || isMissing(fact) ? fact : factValue(name, fact as Fact<Vocabulary[N]>);
    if (typeof value === 'number') {
      const bounds = termOf(name) ?? {};
      if (!within(value, bounds)) {
        const unit = termOf(name)?.unit ?? '';
        const message = outOfRange(name, value, bounds, 'its role');
        throw new CalculationError('out-of-range', message, {
          quantity: name,
          value,
          unit,
          bounds,
          source: 'vocabulary',
        });
      }
    }
    const who = by ?? (typeof fact === 'object' && 'by' in fact ? fact.by : undefined);
    this.set(name, value as Known<number>);
    this.keep(() => ({
      kind: 'given',
      name,
      value: value as Known<number>,
      ...(who === undefined ? {} : { by: who }),
      ...assumedOf(fact),
    }));
    return value as Known<Vocabulary[N]>;
  }

  label<L extends string>(name: string, fact: L | Fact<L> | Missing, by?: string): Known<L> {
    const value = typeof fact === 'string' || isMissing(fact) ? fact : factValue(name, fact as Fact<L>);
    const who = by ?? (typeof fact === 'object' && 'by' in fact ? fact.by : undefined);
    this.keep(() => ({
      kind: 'label',
      name,
      value: value as Known<string>,
      ...(who === undefined ? {} : { by: who }),
      ...assumedOf(fact),
    }));
    return value as Known<L>;
  }

  look<A extends readonly Axis[], O extends Name>(of: Table<A, O>, keys: KnownKeys<A>): Known<Vocabulary[O]> {
    const table = (this.tables?.get(of.id) ?? of) as Table<A, O>;
    const value = readTable(table as unknown as Table, keys as Readonly<Record<string, unknown>>);
    this.set(table.cell, value);
    this.keep(() => ({
      kind: 'look',
      table: table as unknown as Table,
      keys: keys as Readonly<Record<string, unknown>>,
      value,
    }));
    return value as Known<Vocabulary[O]>;
  }

  step<I extends Name, O extends Name>(
    formula: Formula<I, O> | Relation<I, O>,
    values: StepValues<I>,
  ): Known<Vocabulary[O]> {
    const value = evaluateStep(formula as unknown as AnyFormula, values as Readonly<Record<string, unknown>>);
    this.set(formula.output, value);
    this.keep(() => ({
      kind: 'step',
      formula: formula as unknown as Formula,
      values: values as Readonly<Record<string, unknown>>,
      value,
    }));
    return value as Known<Vocabulary[O]>;
  }

  run<In, O extends Name>(procedure: Procedure<In, O>, input: Known<In>): Known<Vocabulary[O]> {
    const value: Known<number> = isMissing(input) ? input : guardRun(procedure as unknown as Procedure, input);
    this.set(procedure.output, value);
    this.keep(() => ({ kind: 'run', procedure: procedure as unknown as Procedure, input, value }));
    return value as Known<Vocabulary[O]>;
  }

  gather<N extends Name, O extends Name>(
    how: Gathering,
    from: N,
    to: UnitOf<Vocabulary[O]> extends UnitOf<Vocabulary[N]> ? O : never,
    parts: readonly Sheet[],
  ): Known<Vocabulary[O]> {
    const value = gatherValues(
      how,
      parts.map((p) => (p as SilentSheet).values[from]),
      from,
    );
    this.set(to as string, value);
    this.keep(() => ({ kind: 'gather', how, from, to, parts, value }));
    return value as Known<Vocabulary[O]>;
  }

  check<C extends Check>(check: C, evidence: Evidence<C>, because?: string): CheckResult {
    const result = judge(check, evidence, because);
    this.keep(() => ({ kind: 'check', check, evidence: evidence as Readonly<Record<string, unknown>>, result }));
    return result;
  }

  result(result: CheckResult): CheckResult {
    this.keep(() => ({ kind: 'result', result }));
    return result;
  }

  overall(
    results: readonly CheckResult[],
    code?: { readonly document: string; readonly edition: string },
    assumed: readonly string[] = [],
  ): Overall {
    const whole = overall(results);
    this.keep(() => ({
      kind: 'overall',
      verdict: whole.verdict === 'pass' && assumed.length > 0 ? 'conditional' : whole.verdict,
      ...(assumed.length > 0 ? { assumed } : {}),
      due: results.map(({ check, verdict }) => ({ check, verdict })),
      ...(code === undefined ? {} : { code }),
    }));
    return whole;
  }

  note(text: string): void {
    this.keep(() => ({ kind: 'note', text }));
  }

  listed(lines: (next: () => string, place: string) => readonly SheetLine[]): void {
    this.keep(() => ({ kind: 'listed', lines }));
  }

  latest<N extends Name>(name: N): Known<Vocabulary[N]> | undefined {
    let found = this.values[name];
    for (let view = this.above; view && found === undefined; view = view.above) found = view.values[name];
    return found as Known<Vocabulary[N]> | undefined;
  }
}

/** The sheet that remembers every line, as references; `writeSheet` turns it into plain data. */
export class Recorder extends SilentSheet {
  /** Heading of this sheet or part. */
  readonly title: string;
  /** The lines in the order in which they came about. */
  readonly entries: Entry[] = [];

  /** @internal */
  constructor(title: string, above?: View, tables?: Instead) {
    super(above, tables);
    this.title = title;
  }

  /** @internal */
  protected override keep(make: () => Entry): void {
    this.entries.push(make());
  }

  override part(title: string): Sheet {
    const part = new Recorder(title, this.view(), this.tables);
    this.entries.push({ kind: 'part', part });
    return part;
  }
}

/**
 * A sheet that keeps nothing, for bulk runs.
 * @param tables tables that are read in the place of those of the same identifier, as somebody attested them
 * @returns a sheet on which rules run exactly as on a recorder
 * @example
 * ```ts
 * import { amperes, silent } from 'ohmwright';
 *
 * silent().given('designCurrent', amperes(32)); // => 32
 * ```
 */
export const silent = (tables?: Instead): Sheet => new SilentSheet(undefined, tables);
/**
 * A sheet that remembers every line.
 * @param title heading of the sheet
 * @param tables tables that are read in the place of those of the same identifier, as somebody attested them
 * @returns a sheet whose lines `writeSheet` writes out
 * @example
 * ```ts
 * import { amperes, recorder } from 'ohmwright';
 *
 * const sheet = recorder('A load');
 * sheet.given('designCurrent', amperes(32), 'setting of the point');
 * sheet.entries.length; // => 1
 * ```
 */
export const recorder = (title: string, tables?: Instead): Recorder => new Recorder(title, undefined, tables);

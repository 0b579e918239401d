import type { CanonicalUnit } from '../units/index.js';
import { formatIn } from '../units/index.js';
import { evaluate } from './evaluate.js';
import type { Formula, Relation } from './formula.js';
import { type Recorder, recorder } from './sheet.js';
import type { SheetDocument } from './sheet-lines.js';
import { citation, type Source } from './source.js';
import type { Axis, Keys, Table } from './table.js';
import { type Name, termOf, type Vocabulary } from './vocabulary/index.js';
import { writeSheet } from './write.js';

/** A figure that was asked for in one call, with all that it rests on: plain data. @inline */
export interface Figure<N extends Name = Name> {
  /** In the canonical unit of its role, which `unit` names. */
  readonly value: Vocabulary[N];
  readonly unit: string;
  /** As the trade writes it: `42.3 A`. */
  readonly text: string;
  /** Documents that it rests on, each once, as the trade cites them. */
  readonly sources: readonly string[];
  /** Every table read and every step, to be printed or verified. */
  readonly sheet: SheetDocument;
}

/** Takes a calculation down in which everything is known: what is outside a table or a range is a typed error. */
export class FigureSheet {
  private readonly sheet: Recorder;
  private readonly sources = new Set<string>();
  private readonly taken = new Set<string>();

  constructor(title: string) {
    this.sheet = recorder(title);
  }

  private cite(source: Source): void {
    this.sources.add(citation(source));
  }

  private once(name: string, take: () => void): void {
    if (!this.taken.has(name)) take();
    this.taken.add(name);
  }

  given<N extends Name>(name: N, value: Vocabulary[N], by?: string): Vocabulary[N] {
    this.once(name, () => void this.sheet.given(name, value, by));
    return value;
  }

  look<A extends readonly Axis[], O extends Name>(table: Table<A, O>, keys: Keys<A>): Vocabulary[O] {
    const value = table.get(keys);
    // what a table is asked by stands on the sheet as well, each once
    for (const [name, key] of Object.entries(keys as Readonly<Record<string, string | number>>)) {
      if (typeof key === 'string') this.once(name, () => void this.sheet.label(name, key));
      else this.once(name, () => void this.sheet.given(name as Name, key as never));
    }
    this.sheet.look(table, keys as never);
    this.cite(table.source);
    return value;
  }

  step<I extends Name, O extends Name>(
    formula: Formula<I, O> | Relation<I, O>,
    values: Pick<Vocabulary, I>,
  ): Vocabulary[O] {
    const value = evaluate(formula, values);
    this.sheet.step(formula, values as never);
    this.cite(formula.source);
    return value;
  }

  /** The figure that the calculation came to. */
  figure<N extends Name>(name: N, value: Vocabulary[N], source?: Source): Figure<N> {
    if (source) this.cite(source);
    const unit = termOf(name)?.unit as CanonicalUnit;
    return {
      value,
      unit,
      text: formatIn(value, unit),
      sources: [...this.sources],
      sheet: writeSheet(this.sheet),
    };
  }
}

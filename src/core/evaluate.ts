import { type Bounds, CalculationError, hasCode } from '../units/index.js';
import { eachOnce } from './each-once.js';
import { type Gap, isMissing, type Known, missing } from './fact.js';
import type { Formula, Procedure, Relation } from './formula.js';
import { outOfRange, thrownGap } from './range.js';
import type { Gathering } from './sheet-lines.js';
import { citation } from './source.js';
import type { Table } from './table.js';
import { type Name, termOf, type Vocabulary, within } from './vocabulary/index.js';

export type AnyFormula = Formula | Relation;
/** What an input of a formula may be by its role and by the formula itself; the ends as bare numbers, to compare with at once. */
interface Guard {
  readonly name: string;
  readonly bounds: Bounds;
  readonly least: number;
  readonly most: number;
  readonly above: number;
}
const guardOf = (name: string, bounds: Bounds): Guard => ({
  name,
  bounds,
  least: bounds.least ?? -Number.MAX_VALUE,
  most: bounds.most ?? Number.MAX_VALUE,
  above: bounds.above ?? Number.NEGATIVE_INFINITY,
});
const holds = ({ least, most, above }: Guard, value: number): boolean =>
  typeof value === 'number' && value >= least && value <= most && value > above;

interface Guards {
  readonly inputs: readonly Guard[];
  readonly output: Guard;
}
// Found once for each formula.
const guards = /* @__PURE__ */ new WeakMap<AnyFormula, Guards>();

function guardsOf(f: AnyFormula): Guards {
  let found = guards.get(f);
  if (!found) {
    const valid = f.valid as Readonly<Record<string, Bounds>> | undefined;
    found = {
      inputs: f.inputs.map((name) => guardOf(name, { ...termOf(name), ...valid?.[name] })),
      output: guardOf(f.output, termOf(f.output) ?? {}),
    };
    guards.set(f, found);
  }
  return found;
}

/** Refuses a value of a formula that is out of its range. */
function refuse({ id, source: cited }: AnyFormula, { name, bounds }: Guard, value: number): never {
  const source = `${id} (${citation(cited)})`;
  const unit = termOf(name)?.unit ?? '';
  throw new CalculationError('out-of-range', outOfRange(name, value, bounds, source), {
    quantity: name,
    value,
    unit,
    bounds,
    source,
  });
}

/**
 * Evaluates a formula or relation and guards its ranges.
 * @param formula a formula or relation
 * @param values its inputs by name
 * @returns the result, in the canonical unit of the output's role
 * @throws CalculationError `out-of-range` naming quantity, value, permitted range and source
 * @example
 * ```ts
 * import { amperes, evaluate, metres, millivoltsPerAmpereMetre } from 'ohmwright';
 * import { voltageDropTabulated } from 'ohmwright/bs7671';
 *
 * evaluate(voltageDropTabulated, { dropRate: millivoltsPerAmpereMetre(7.3), designCurrent: amperes(32), length: metres(25) }); // => 5.84
 * ```
 */
export function evaluate<I extends Name, O extends Name>(
  formula: Formula<I, O> | Relation<I, O>,
  values: Pick<Vocabulary, I>,
): Vocabulary[O] {
  const f = formula as unknown as AnyFormula;
  const { inputs, output } = guardsOf(f);
  for (let i = 0; i < inputs.length; i++) {
    const guard = inputs[i] as Guard;
    const value = values[guard.name as I] as number;
    if (!holds(guard, value)) refuse(f, guard, value);
  }
  let result: number;
  try {
    result = formula(values);
  } catch (error) {
    // the formula itself knows neither unit nor range of its result
    if (
      hasCode(error, 'out-of-range') &&
      error.detail.quantity === formula.output &&
      !holds(output, error.detail.value)
    )
      refuse(f, output, error.detail.value);
    throw error;
  }
  if (!holds(output, result)) refuse(f, output, result);
  return result as Vocabulary[O];
}

export function evaluateStep(f: AnyFormula, values: Readonly<Record<string, unknown>>): Known<number> {
  let gaps: Gap[] | undefined;
  const { inputs, output } = guardsOf(f);
  for (const guard of inputs) {
    const { name, bounds } = guard;
    const v = values[name];
    if (typeof v !== 'number') {
      gaps ??= [];
      if (isMissing(v)) gaps.push(...v.missing);
      else gaps.push({ kind: 'range', formula: f.id, explain: `${name} was not handed over` });
    } else if (!holds(guard, v)) {
      gaps ??= [];
      gaps.push({ kind: 'range', formula: f.id, explain: outOfRange(name, v, bounds, citation(f.source)) });
    }
  }
  if (gaps) return { missing: eachOnce(gaps) };
  let result: number;
  try {
    result = f(values as never);
  } catch (error) {
    return missing(thrownGap(f, error));
  }
  return holds(output, result)
    ? result
    : missing({ kind: 'range', formula: f.id, explain: outOfRange(f.output, result, output.bounds, f.id) });
}

export function readTable(table: Table, keys: Readonly<Record<string, unknown>>): Known<number> {
  const gaps: Gap[] = [];
  for (const axis of table.axes) {
    const key = keys[axis.name];
    if (isMissing(key)) gaps.push(...key.missing);
  }
  if (gaps.length > 0) return { missing: eachOnce(gaps) };
  const found = table.find(keys as never);
  return (
    found ??
    missing({ kind: 'cell', table: table.id, explain: table.explain(keys as never).message, source: table.source })
  );
}

export function gatherValues(
  how: Gathering,
  values: readonly (Known<number> | undefined)[],
  from: Name,
): Known<number> {
  const gaps: Gap[] = values.flatMap((v) =>
    v === undefined
      ? [{ kind: 'fact', fact: from, obtain: 'a part has no such value' } as const]
      : isMissing(v)
        ? v.missing
        : [],
  );
  if (gaps.length > 0) return { missing: eachOnce(gaps) };
  const numbers = values as readonly number[];
  if (how === 'sum') return numbers.reduce((a, b) => a + b, 0);
  if (numbers.length === 0) return missing({ kind: 'fact', fact: from, obtain: 'there is no part to take it from' });
  return how === 'largest' ? Math.max(...numbers) : Math.min(...numbers);
}

export function guardRun(procedure: Procedure, input: unknown): Known<number> {
  const bounds = termOf(procedure.output) ?? {};
  try {
    const value = procedure(input);
    if (within(value, bounds)) return value;
    return missing({
      kind: 'range',
      formula: procedure.id,
      explain: outOfRange(procedure.output, value, bounds, procedure.id),
    });
  } catch (error) {
    return missing(thrownGap(procedure, error));
  }
}

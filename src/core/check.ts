import { invalidInput, shown, type UnitOf } from '../units/index.js';
import { type Gap, isMissing, type Known } from './fact.js';
import type { Source } from './source.js';
import { type Name, termOf, type Vocabulary } from './vocabulary/index.js';

/** What a check can end in; `conditional` where it passes by facts that are assumed, and would be open without them. */
export type Verdict = 'pass' | 'conditional' | 'fail' | 'not-determined' | 'not-required';

/** What all checks have. */
export interface CheckBasis {
  /** Stable identifier, kebab-case; it is the machine code of the result. */
  readonly id: string;
  /** What is required, as a sentence that is true when the check passes. */
  readonly title: string;
  /** A rule decides the verdict of the whole; advice is reported beside it. */
  readonly weight: 'rule' | 'advice';
  readonly source: Source;
  /** What a person has to be told with the verdict. */
  readonly caution?: string;
}

/** Roles of one unit. */
export type SameUnit<N extends Name> = {
  [M in Name]: UnitOf<Vocabulary[M]> extends UnitOf<Vocabulary[N]> ? M : never;
}[Name];

/** A check that compares a value with a limit. */
export interface Comparison<V extends Name = Name, L extends Name = Name> extends CheckBasis {
  /** Whether the value has to be at most or at least the limit. */
  readonly kind: 'at-most' | 'at-least';
  readonly value: V;
  readonly limit: L;
}

/** A check that a value lies between two limits. @inline */
export interface Span<V extends Name = Name, L extends Name = Name, M extends Name = Name> extends CheckBasis {
  readonly kind: 'within';
  /** Role of the value. */
  readonly value: V;
  /** Role of the lower limit. */
  readonly least: L;
  /** Role of the upper limit. */
  readonly most: M;
}

/** A check of a plain statement. @inline */
export interface Statement extends CheckBasis {
  readonly kind: 'holds';
}

/** A check that passes when any of several results does. @inline */
export interface Alternatives extends CheckBasis {
  readonly kind: 'any-of';
  /** Checks that may pass it, by identifier, where no contents list says which. */
  readonly of?: readonly string[];
}

/** A check of any kind. */
export type Check = Comparison | Span | Statement | Alternatives;

/** A value of a result, with its role and unit. @inline */
export interface Amount {
  /** Role from the vocabulary. */
  readonly name: string;
  readonly value: number;
  readonly unit: string;
}

/** The result of a check: plain, JSON-ready. */
export interface CheckResult {
  readonly check: string;
  readonly title: string;
  readonly verdict: Verdict;
  /** Whether it decides the whole. */
  readonly weight: 'rule' | 'advice';
  readonly source: Source;
  readonly value?: Amount;
  /** The limit, or the lower one of two. */
  readonly limit?: Amount;
  /** The upper limit of two. */
  readonly most?: Amount;
  /** What is left, relative to the limit: positive when the check passes. */
  readonly margin?: number;
  readonly gaps?: readonly Gap[];
  /** Assumed facts that it rests on, by set and entry. */
  readonly conditions?: readonly string[];
  /** Why nothing is required. */
  readonly reason?: 'no-rule' | 'not-applicable';
  /** What else a person has to know: why it is not required, what a value rests on. */
  readonly because?: string;
  readonly caution?: string;
  readonly alternatives?: readonly CheckResult[];
}

/**
 * Defines a check that a value is at most, or at least, a limit of the same unit.
 * @param definition identifier, title, kind, the roles of value and limit, weight, source, caution
 * @returns the check, to be judged by `judge` or on a sheet
 * @example
 * ```ts
 * import { comparison, judge, amperes } from 'ohmwright';
 *
 * const carries = comparison({
 *   id: 'device-carries-load',
 *   title: 'The device carries the load',
 *   kind: 'at-least',
 *   value: 'deviceRating',
 *   limit: 'designCurrent',
 *   weight: 'rule',
 *   source: { document: 'BS 7671', clause: '433.1.1 (i)', provenance: 'two-sources' },
 * });
 * judge(carries, { deviceRating: amperes(32), designCurrent: amperes(30) }).verdict; // => 'pass'
 * ```
 */
export function comparison<V extends Name, L extends SameUnit<V>>(
  definition: Omit<Comparison<V, L>, 'kind'> & { readonly kind: 'at-most' | 'at-least' },
): Comparison<V, L> {
  return definition;
}

/**
 * Defines a check that a value lies between two limits of the same unit.
 * @param definition identifier, title, roles of value, lower and upper limit, weight, source, caution
 * @returns the check, to be judged by `judge` or on a sheet
 * @example
 * ```ts
 * import { judge, millimetres, span } from 'ohmwright';
 *
 * const reachable = span({
 *   id: 'within-reach',
 *   title: 'The point is within reach',
 *   value: 'mountingHeight',
 *   least: 'leastHeight',
 *   most: 'greatestHeight',
 *   weight: 'rule',
 *   source: { document: 'house rule', provenance: 'definition' },
 * });
 * const heights = { leastHeight: millimetres(750), greatestHeight: millimetres(1200) };
 * judge(reachable, { mountingHeight: millimetres(1000), ...heights }).verdict; // => 'pass'
 * ```
 */
export function span<V extends Name, L extends SameUnit<V>, M extends SameUnit<V>>(
  definition: Omit<Span<V, L, M>, 'kind'>,
): Span<V, L, M> {
  return { ...definition, kind: 'within' };
}

/**
 * Defines a check of a plain statement.
 * @param definition identifier, title, weight, source, caution
 * @returns the check, to be judged by `judge` or on a sheet
 * @example
 * ```ts
 * import { judge, statement } from 'ohmwright';
 *
 * const labelled = statement({
 *   id: 'point-is-labelled',
 *   title: 'The point bears its label',
 *   weight: 'advice',
 *   source: { document: 'house rule', provenance: 'definition' },
 * });
 * judge(labelled, { holds: true, because: 'photograph 7' }).verdict; // => 'pass'
 * ```
 */
export function statement(definition: Omit<Statement, 'kind'>): Statement {
  return { ...definition, kind: 'holds' };
}

/**
 * Defines a check that passes when any of several results does.
 * @param definition identifier, title, weight, source, caution
 * @returns the check, to be judged by `judge` or on a sheet
 * @example
 * ```ts
 * import { alternatives, judge } from 'ohmwright';
 *
 * const either = alternatives({
 *   id: 'either-way',
 *   title: 'One of two ways is open',
 *   weight: 'rule',
 *   source: { document: 'house rule', provenance: 'definition' },
 * });
 * judge(either, { results: [] }).verdict; // => 'fail'
 * ```
 */
export function alternatives(definition: Omit<Alternatives, 'kind'>): Alternatives {
  return { ...definition, kind: 'any-of' };
}

/** What a check needs in order to be judged. @inline */
export type Evidence<C extends Check> =
  C extends Comparison<infer V, infer L>
    ? { readonly [N in V | L]: Known<Vocabulary[N]> }
    : C extends Span<infer V, infer L, infer M>
      ? { readonly [N in V | L | M]: Known<Vocabulary[N]> }
      : C extends Statement
        ? { readonly holds: Known<boolean>; readonly because: string }
        : C extends Alternatives
          ? { readonly results: readonly CheckResult[] }
          : never;

/** The first part of every result of a check; written out, since bulk runs judge by the million. */
function head({ id, title, weight, source, caution }: Check): Writable<CheckResult> {
  return (
    caution === undefined ? { check: id, title, weight, source } : { check: id, title, weight, source, caution }
  ) as Writable<CheckResult>;
}

const amount = (name: Name, value: number): Amount => ({ name, value, unit: termOf(name)?.unit ?? '' });

/**
 * Judges a check. A value that could not be had, or is no finite number, gives `not-determined` with its reasons; one that
 * misses its limit by no more than the rounding of binary numbers meets it.
 * @param c the check
 * @param evidence the values by role, or statement or results, by the kind of check
 * @param because what the values rest on, where a person has to know it with the verdict
 * @returns verdict, figures, margin, source and caution; plain, JSON-ready
 * @throws CalculationError `invalid-input` for evidence that is neither of the type that is due nor missing
 * @example
 * ```ts
 * import { comparison, judge, amperes } from 'ohmwright';
 *
 * const carries = comparison({
 *   id: 'device-carries-load',
 *   title: 'The device carries the load',
 *   kind: 'at-least',
 *   value: 'deviceRating',
 *   limit: 'designCurrent',
 *   weight: 'rule',
 *   source: { document: 'BS 7671', clause: '433.1.1 (i)', provenance: 'two-sources' },
 * });
 * judge(carries, { deviceRating: amperes(32), designCurrent: amperes(40) }).margin; // ≈ -0.2
 * ```
 */
export function judge<C extends Check>(c: C, evidence: Evidence<C>, because?: string): CheckResult {
  if (typeof c !== 'object' || c === null) throw refused('the check', [], `is ${shown(c)}; a check is due`);
  const result: Writable<CheckResult> = verdictOn(c, evidence as Record<string, unknown>);
  if (because !== undefined) result.because ??= because;
  return result;
}

/**
 * Whether a value is at least a limit, or misses it by no more than the rounding of binary numbers.
 * @param value any finite number
 * @param limit any finite number, in the same unit
 * @returns whether the value is not below the limit
 */
export const reaches = (value: number, limit: number): boolean =>
  value >= limit || limit - value <= 1e-12 * Math.abs(limit);

/**
 * The result of a comparison of two finite numbers.
 * @param value the value, in the unit of its role
 * @param limit the limit, in the same unit
 */
export function compared(c: Comparison, value: number, limit: number, because?: string): CheckResult {
  const most = c.kind === 'at-most';
  const fits = most ? reaches(limit, value) : reaches(value, limit);
  const slack = most ? limit - value : value - limit;
  const margin = (fits ? Math.max(0, slack) : slack) / Math.abs(limit);
  const result: Writable<CheckResult> = head(c);
  result.verdict = fits ? 'pass' : 'fail';
  result.value = amount(c.value, value);
  result.limit = amount(c.limit, limit);
  if (Number.isFinite(margin)) result.margin = margin;
  if (because !== undefined) result.because = because;
  return result;
}

/** The result of a statement that is known to hold or not, and why. */
export function stands(c: Statement, holds: boolean, because: string): CheckResult {
  const result: Writable<CheckResult> = head(c);
  result.verdict = holds ? 'pass' : 'fail';
  result.because = because;
  return result;
}

const refused = (what: string, path: readonly (string | number)[], message: string) =>
  invalidInput(what, [{ path, message }]);

/** Refuses what is neither of the type that is due nor missing: it would compare as something else than it is. */
function due(c: Check, evidence: Record<string, unknown>, type: 'number' | 'boolean', names: readonly string[]): void {
  for (const name of names) {
    const v = evidence[name];
    const gone = isMissing(v) && Array.isArray(v.missing);
    if (typeof v !== type && !gone)
      throw refused(`the evidence for ${c.id}`, [name], `is ${shown(v)}; a ${type} is due`);
  }
}

/** The verdicts and weights that a result may have. */
const verdicts: readonly unknown[] = [
  'pass',
  'conditional',
  'fail',
  'not-determined',
  'not-required',
] satisfies Verdict[];
const weights: readonly unknown[] = ['rule', 'advice'] satisfies CheckResult['weight'][];

const isVerdict = (v: unknown): boolean =>
  v === 'pass' || v === 'fail' || v === 'not-required' || v === 'not-determined' || v === 'conditional';

/** Refuses what is no list of results of checks: a verdict in other words would stand in nobody's way. */
function dueResults(what: string, results: readonly CheckResult[]): void {
  if (!Array.isArray(results)) throw refused(what, [], `is ${shown(results)}; a list of results is due`);
  results.forEach((r: Partial<CheckResult> | null | undefined, i) => {
    if (r && isVerdict(r.verdict) && (r.weight === 'rule' || r.weight === 'advice')) return;
    if (!verdicts.includes(r?.verdict))
      throw refused(what, [i, 'verdict'], `is ${shown(r?.verdict)}; known are ${verdicts.join(', ')}`);
    if (!weights.includes(r?.weight))
      throw refused(what, [i, 'weight'], `is ${shown(r?.weight)}; known are ${weights.join(', ')}`);
  });
}

/** Roles of the numbers that a check compares. */
const rolesOf = (c: Comparison | Span): readonly string[] =>
  c.kind === 'within' ? [c.value, c.least, c.most] : [c.value, c.limit];

function verdictOn(c: Check, evidence: Record<string, unknown>): CheckResult {
  if (typeof evidence !== 'object' || evidence === null)
    throw refused(`the evidence for ${c.id}`, [], `is ${shown(evidence)}; an object is due`);
  if (c.kind === 'holds') due(c, evidence, 'boolean', ['holds']);
  else if (c.kind === 'any-of') dueResults(`the evidence for ${c.id}`, evidence.results as readonly CheckResult[]);
  else due(c, evidence, 'number', rolesOf(c));
  for (const name in evidence) {
    const v = evidence[name];
    if (typeof v === 'number' ? !Number.isFinite(v) : isMissing(v)) return notDetermined(c, ...gapsIn(c, evidence));
  }
  switch (c.kind) {
    case 'at-most':
    case 'at-least':
      return compared(c, evidence[c.value] as number, evidence[c.limit] as number);
    case 'within': {
      const [value, least, most] = rolesOf(c).map((name) => evidence[name]) as [number, number, number];
      const result = head(c);
      result.verdict = reaches(value, least) && reaches(most, value) ? 'pass' : 'fail';
      result.value = amount(c.value, value);
      result.limit = amount(c.least, least);
      result.most = amount(c.most, most);
      return result;
    }
    case 'holds': {
      const { holds, because } = evidence as { holds: boolean; because: string };
      return stands(c, holds, because);
    }
    case 'any-of': {
      const { results } = evidence as { results: readonly CheckResult[] };
      const result = head(c);
      result.verdict = anyOf(results);
      result.alternatives = results;
      return result;
    }
    default: {
      const never: never = c;
      return never;
    }
  }
}

type Writable<T> = { -readonly [K in keyof T]: T[K] };

const gapsIn = (c: Check, evidence: Record<string, unknown>): readonly Gap[] =>
  Object.entries(evidence).flatMap(([name, v]) => (isMissing(v) ? v.missing : notFinite(c, name, v)));

/** A number that is none is a gap: it is neither judged nor handed on. */
const notFinite = (c: Check, name: string, value: unknown): readonly Gap[] =>
  typeof value === 'number' && !Number.isFinite(value)
    ? [{ kind: 'range', formula: c.id, explain: `${name} is not a finite number; ${c.id} holds for finite values` }]
    : [];

function anyOf(results: readonly CheckResult[]): Verdict {
  const verdicts = results.map((r) => r.verdict);
  if (verdicts.includes('pass')) return 'pass';
  if (verdicts.includes('conditional')) return 'conditional';
  if (verdicts.includes('not-determined')) return 'not-determined';
  return 'fail';
}

/** The result of a check that nothing requires here. */
export function notRequired(c: Check, reason: 'no-rule' | 'not-applicable', because: string): CheckResult {
  const { id, title, weight, source } = c;
  return { check: id, title, weight, source, verdict: 'not-required', reason, because };
}

/** The result of a check that cannot be judged. */
export function notDetermined(c: Check, ...gaps: Gap[]): CheckResult {
  const result = head(c);
  result.verdict = 'not-determined';
  result.gaps = gaps;
  return result;
}

/** What several results amount to. */
export interface Overall {
  /**
   * `fail` when any rule fails, else `not-determined` when any rule could not be judged, else `conditional` when any
   * passes by assumed facts alone, else `pass`: rules that are not required stand in nobody's way, also when there are no
   * others.
   */
  readonly verdict: 'pass' | 'conditional' | 'fail' | 'not-determined';
  readonly failed: readonly CheckResult[];
  readonly undetermined: readonly CheckResult[];
  /** Rules that are met by assumed facts alone. */
  readonly conditional: readonly CheckResult[];
  /** Advice that is not met or could not be judged. */
  readonly advice: readonly CheckResult[];
}

/**
 * Combines results: the only place where verdicts are combined. An empty list is `not-determined`: nothing was judged.
 * @param results results of checks
 * @returns the verdict of the whole, what failed, what could not be determined, and the advice that was not followed
 * @throws CalculationError `invalid-input` for a verdict or a weight that is none
 * @example
 * ```ts
 * import { amperes, comparison, judge, overall } from 'ohmwright';
 *
 * const carries = comparison({
 *   id: 'device-carries-load',
 *   title: 'The device carries the load',
 *   kind: 'at-least',
 *   value: 'deviceRating',
 *   limit: 'designCurrent',
 *   weight: 'rule',
 *   source: { document: 'BS 7671', clause: '433.1.1 (i)', provenance: 'two-sources' },
 * });
 *
 * const result = judge(carries, { deviceRating: amperes(32), designCurrent: amperes(30) });
 * overall([result]).verdict; // => 'pass'
 * overall([]).verdict; // => 'not-determined'
 * ```
 */
export function overall(results: readonly CheckResult[]): Overall {
  dueResults('the list of results', results);
  const failed: CheckResult[] = [];
  const undetermined: CheckResult[] = [];
  const conditional: CheckResult[] = [];
  const advice: CheckResult[] = [];
  let rules = 0;
  for (const r of results) {
    if (r.weight === 'rule') {
      rules++;
      if (r.verdict === 'fail') failed.push(r);
      else if (r.verdict === 'not-determined') undetermined.push(r);
      else if (r.verdict === 'conditional') conditional.push(r);
    } else if (r.verdict === 'fail' || r.verdict === 'not-determined') advice.push(r);
  }
  const verdict =
    failed.length > 0
      ? 'fail'
      : undetermined.length > 0 || rules === 0
        ? 'not-determined'
        : conditional.length > 0
          ? 'conditional'
          : 'pass';
  return { verdict, failed, undetermined, conditional, advice };
}

import { termOf } from '../core/index.js';
import { own } from '../core/own.js';
import { within } from '../core/vocabulary/index.js';
import { type Bounds, formatIn, type ProblemId, shown } from '../units/index.js';
import { counts, labels, overcurrentTypes } from './labels.js';

/** A size, in canonical units, beyond which a figure is a slip of the pen and no survey: it would overflow on the way. */
const LARGEST = 1e9;

/** Whether it is an object with keys. */
export const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Whether something is a fact that is known to have a value. */
export const isKnownAs = (fact: unknown, value: unknown): boolean =>
  isRecord(fact) && fact.state === 'known' && fact.value === value;

const oneOf = (all: readonly (string | number)[], value: unknown): string | undefined =>
  all.includes(value as never) ? undefined : `is ${shown(value)}; known are ${all.join(', ')}`;

/** What is wrong with a figure of a role of the vocabulary, in its canonical unit. */
export function roleProblem(name: string, value: unknown): string | undefined {
  const term = termOf(name);
  const words = term?.words ?? name;
  if (typeof value !== 'number') return `is ${shown(value)}; ${words} is a number, in ${term?.unit || '1'}`;
  if (Number.isFinite(value) && Math.abs(value) > LARGEST)
    return `${words} cannot be ${value} ${term?.unit ?? ''}: no survey finds such a figure`;
  if (!term || within(value, term)) return undefined;
  const limits = [
    term.least === undefined ? '' : `at least ${formatIn(term.least, term.unit)}`,
    term.above === undefined ? '' : `above ${formatIn(term.above, term.unit)}`,
    term.most === undefined ? '' : `at most ${formatIn(term.most, term.unit)}`,
  ].filter(Boolean);
  const written = Number.isFinite(value) ? formatIn(value, term.unit) : value;
  return `${words} must be ${limits.join(' and ') || 'a finite number'}; it is ${written}`;
}

function countProblem(
  bounds: Bounds & { readonly broken?: true },
  value: unknown,
  mustBeWhole: boolean,
): string | undefined {
  const { least, above, most } = bounds;
  const broken = bounds.broken || !mustBeWhole;
  const whole = broken ? 'a number' : 'a whole number';
  if (typeof value === 'number' && (broken || Number.isInteger(value)) && within(value, bounds)) return undefined;
  return `is ${shown(value)}; it must be ${whole} ${above === undefined ? `from ${least}` : `above ${above}`} to ${most}`;
}

/** Standard and type of an overcurrent device. */
function kindProblem(value: unknown): string | undefined {
  if (!isRecord(value)) return `is ${shown(value)}; it must name a product standard`;
  const types: readonly string[] | undefined =
    typeof value.standard === 'string' ? own(overcurrentTypes, value.standard) : undefined;
  if (!types) return `has the standard ${shown(value.standard)}; known are ${Object.keys(overcurrentTypes).join(', ')}`;
  if (types.length === 0)
    return value.type === undefined ? undefined : `has the type ${shown(value.type)}; ${value.standard} has no types`;
  return types.includes(value.type as string)
    ? undefined
    : `has the type ${shown(value.type)}; ${value.standard} has ${types.join(', ')}`;
}

/** Stable name of what is wrong with such a value. */
export function valueProblemId(what: string, value: unknown): ProblemId {
  if (own(labels, what)) return 'not-allowed';
  if (what === 'text' && typeof value === 'string') return 'empty';
  if (what === 'overcurrentKind' && isRecord(value)) return 'not-allowed';
  return typeof value === 'number' && what !== 'yes' && what !== 'text' ? 'out-of-range' : 'wrong-kind';
}

/** What is wrong with a value that is no record: a figure, a label, a count, yes or no, or text. */
export function valueProblem(what: string, value: unknown, whole = true): string | undefined {
  const list = own<readonly (string | number)[]>(labels, what);
  if (list) return oneOf(list, value);
  const bounds = own<Bounds & { readonly broken?: true }>(counts, what);
  if (bounds) return countProblem(bounds, value, whole);
  if (what === 'yes') return typeof value === 'boolean' ? undefined : `is ${shown(value)}; it is true or false`;
  if (what === 'text')
    return typeof value === 'string' && value.trim() !== ''
      ? undefined
      : `is ${value === '' ? 'empty' : shown(value)}; it is text`;
  return what === 'overcurrentKind' ? kindProblem(value) : roleProblem(what, value);
}

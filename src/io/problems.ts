import * as z from 'zod';
import { own } from '../core/own.js';
import { type Problem, type ProblemId, shown } from '../units/index.js';
import { nearChoice, quantityWords } from './near-miss.js';

type Path = readonly (string | number)[];
type Words = Omit<Problem, 'path'>;

/** What a schema attaches to an issue of its own, to be put into words here. */
export interface IssueWords {
  readonly id: ProblemId;
  readonly [more: string]: unknown;
}

/** What stands in a document at a path. */
export function valueAt(document: unknown, path: Path): unknown {
  let at = document;
  for (const key of path) {
    if (typeof at !== 'object' || at === null) return undefined;
    at = own(at as Readonly<Record<string, unknown>>, String(key));
  }
  return at;
}

const UNKNOWN_KEYS = 'has keys that are not known';
const listed = (values: readonly unknown[]): string => values.map(String).join(', ');

/** One of a list: what else it may be, and which of these is probably meant. */
function choiceWords(allowed: readonly (string | number | boolean)[], input: unknown): Words {
  if (input === undefined) return { id: 'missing', message: `is missing; it is one of ${listed(allowed)}`, allowed };
  const near = nearChoice(allowed, input);
  const text = near === undefined ? '' : typeof near === 'string' ? `'${near}'` : String(near);
  const quotes =
    near !== undefined && typeof near !== 'string' && String(near) === input ? ', without quotation marks' : '';
  return {
    id: 'not-allowed',
    message:
      near === undefined
        ? `is ${shown(input)}; it is one of ${listed(allowed)}`
        : `is ${shown(input)}; write ${text}${quotes}. It is one of ${listed(allowed)}`,
    allowed,
    ...(near === undefined ? {} : { write: near }),
  };
}

const kinds: Readonly<Record<string, string>> = {
  string: 'text in quotation marks',
  number: 'a number, without quotation marks',
  int: 'a whole number, without quotation marks',
  boolean: 'true or false, without quotation marks',
  array: 'a list in square brackets',
  tuple: 'a list of two values: least and most',
  object: 'an object in braces',
  record: 'an object in braces',
};

function typeWords(expected: string, input: unknown): Words {
  const due = kinds[expected] ?? expected;
  if (input === undefined) return { id: 'missing', message: `is missing; ${due} is due` };
  // an estimator who wrote "yes" in quotes needs the word to write, not the name of a type
  if (expected === 'boolean') {
    const near = nearChoice([true, false], input);
    return {
      id: 'wrong-kind',
      message: `has to be ${due}`,
      allowed: [true, false],
      ...(near === undefined ? {} : { write: near }),
    };
  }
  return { id: 'wrong-kind', message: `is ${shown(input)}; ${due} is due` };
}

const things: Readonly<Record<string, readonly [one: string, several: string]>> = {
  string: ['character', 'characters'],
  array: ['entry', 'entries'],
};

function sizeWords(issue: z.core.$ZodIssueTooBig | z.core.$ZodIssueTooSmall, input: unknown): Words {
  const small = issue.code === 'too_small';
  const bound = small ? issue.minimum : issue.maximum;
  const thing = things[issue.origin];
  const of = thing ? ` ${thing[Number(bound) === 1 ? 0 : 1]}` : '';
  const than = issue.inclusive === false ? (small ? 'more than' : 'less than') : small ? 'at least' : 'at most';
  if (thing && small && Number(bound) === 1 && issue.inclusive !== false)
    return { id: 'empty', message: `is empty; at least one${of} is due` };
  return {
    id: 'out-of-range',
    message: thing ? `has to have ${than} ${bound}${of}` : `is ${shown(input)}; it has to be ${than} ${bound}`,
  };
}

/** Standard and type of an overcurrent device are two choices of their own. */
function unionWords(issue: z.core.$ZodIssueInvalidUnion, input: unknown): Words {
  const branches = issue.errors.map((errors) => errors.map((e) => ({ ...e })));
  const standards = branches.flatMap((errors) =>
    errors.flatMap((e) => (e.path[0] === 'standard' && e.code === 'invalid_value' ? e.values : [])),
  ) as string[];
  if (standards.length > 0 || branches.some((errors) => errors.some((e) => e.path[0] === 'type')))
    return kindWords(input, [...new Set(standards)]);
  return { id: 'wrong-kind', message: `is ${shown(input)}, which is not due here` };
}

function kindWords(input: unknown, standards: readonly string[]): Words {
  const form = '{ "standard": "EN 60898", "type": "B" }';
  const said = typeof input === 'object' && input !== null ? own(input as Record<string, unknown>, 'standard') : input;
  const near = nearChoice(standards, said);
  const meant = near === undefined || near === said ? '' : `; write the standard '${near}'`;
  return {
    id: 'not-allowed',
    message: `must name a product standard, and a type for a circuit-breaker: ${form}${meant}. Standards are ${listed(standards)}`,
    allowed: standards,
    ...(near === undefined ? {} : { write: near }),
  };
}

function wordsOf(issue: z.core.$ZodIssue, input: unknown): Words {
  if (issue.code === 'custom') {
    const { id = 'does-not-fit', ...more } = (issue.params ?? {}) as Partial<IssueWords>;
    return { id, message: issue.message, ...more };
  }
  if (issue.code === 'unrecognized_keys') {
    // an object that knows what else it may have has said so
    const said = issue.message.startsWith(UNKNOWN_KEYS);
    return {
      id: 'unknown-key',
      message: said ? issue.message : `${UNKNOWN_KEYS}: ${issue.keys.map(shown).join(', ')}`,
    };
  }
  if (issue.code === 'invalid_value') return choiceWords(issue.values as (string | number | boolean)[], input);
  if (issue.code === 'invalid_type') return typeWords(issue.expected, input);
  if (issue.code === 'too_small' || issue.code === 'too_big') return sizeWords(issue, input);
  if (issue.code === 'invalid_union') return unionWords(issue, input);
  if (issue.code === 'invalid_format') return { id: 'wrong-form', message: issue.message };
  return { id: 'does-not-fit', message: `is ${shown(input)}, which is not due here` };
}

/** The problems that a schema found in a document, each with its path, a stable name and words. */
export function problemsOf(error: z.ZodError, document: unknown): Problem[] {
  return error.issues.map((issue) => {
    const path = issue.path.map((p) => (typeof p === 'number' ? p : String(p)));
    return { path, ...wordsOf(issue, valueAt(document, path)) };
  });
}

/** What is said of keys that an object must not have: which of those that it may have is probably meant. */
export function keyWords(keys: readonly string[], allowed: readonly string[]): string {
  const plain = allowed.filter((k) => !k.includes('_'));
  const each = keys.map((key) => {
    const near = nearChoice(allowed, key);
    return near === undefined ? `'${key.slice(0, 60)}'` : `'${key.slice(0, 60)}' (write '${near}')`;
  });
  return `${UNKNOWN_KEYS}: ${each.join(', ')}. It may have ${listed(plain)}`;
}

/** Notes that a text is no quantity of a role. */
export function noteQuantity(ctx: z.RefinementCtx, name: string, input: unknown): never {
  const { slip, message, write } = quantityWords(name, input);
  ctx.addIssue({ code: 'custom', message, params: { id: slip, ...(write === undefined ? {} : { write }) } });
  return z.NEVER;
}

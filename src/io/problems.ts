import type * as z from 'zod';
import type { Problem } from '../units/index.js';

/** The problems that a schema found, each with its path and in words. */
export function problemsOf(error: z.ZodError): Problem[] {
  return error.issues.map((issue) => ({
    path: issue.path.map((p) => (typeof p === 'number' ? p : String(p))),
    message: messageOf(issue),
  }));
}

const ABSENT = /^Invalid (?:input: expected |option: expected )(.*?)(?:, received undefined)$/;
function messageOf(issue: z.core.$ZodIssue): string {
  if (issue.code === 'unrecognized_keys') return `has keys that are not known: ${issue.keys.join(', ')}`;
  const absent = ABSENT.exec(issue.message)?.[1];
  if (absent !== undefined) return `is missing; expected ${absent}`;
  // an estimator who wrote "yes" in quotes needs the word to write, not the name of a type
  return issue.code === 'invalid_type' && issue.expected === 'boolean'
    ? 'has to be true or false, without quotation marks'
    : issue.message;
}

import type * as z from 'zod';
import { invalidInput } from '../units/index.js';
import { problemsOf } from './problems.js';
import { scan } from './scan.js';

/** A document as its schema has it; every problem of one that is not is told with its path. */
export function readBy<T>(what: string, schema: z.ZodType, document: unknown): T {
  const found = scan(document);
  if (found.length > 0) throw invalidInput(what, found);
  const result = schema.safeParse(document);
  if (!result.success) throw invalidInput(what, problemsOf(result.error, document));
  return result.data as T;
}

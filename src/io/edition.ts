import * as z from 'zod';
import type { EditionDifferences } from '../codes/edition-differences.js';
import { aspects } from '../codes/wiring-code.js';
import { termOf } from '../core/index.js';
import { readBy } from './read-by.js';

const text = (most: number) => z.string().min(1).max(most);
const day = z.iso.date('must be a day as yyyy-mm-dd');
const clause = text(100);
const check = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'must be small letters, digits and hyphens');
const role = text(100).refine((name) => termOf(name) !== undefined, 'is no role of the vocabulary');
const weight = z.enum(['rule', 'advice']);

const change = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('figure'),
    clause,
    table: text(100),
    column: z.string().max(300),
    row: z.union([z.number(), z.string().max(200)]),
    printed: z.number().nullable(),
    despite: text(500).optional(),
  }),
  z.strictObject({ kind: z.literal('limit'), clause, entry: text(100), was: z.number(), is: z.number() }),
  z.strictObject({ kind: z.literal('falls-away'), clause, check }),
  z.strictObject({
    kind: z.enum(['at-most', 'at-least']),
    clause,
    check,
    title: text(300),
    value: role,
    limit: role,
    is: z.number(),
    weight,
  }),
  z.strictObject({ kind: z.literal('to-confirm'), clause, check, title: text(300), confirm: text(500), weight }),
]);

const edition = z.strictObject({
  format: z.literal('edition/1'),
  document: text(100),
  edition: text(100),
  base: text(100),
  notice: text(500),
  aspects: z.partialRecord(
    z.enum(aspects),
    z.strictObject({ read: text(500), by: text(200), on: day, changes: z.array(change).max(2000) }),
  ),
});

/**
 * Reads the differences of an edition, as somebody who holds its text wrote them down.
 * @param document a parsed JSON document of format `edition/1`
 * @returns the differences, for a wiring code
 * @throws CalculationError `invalid-input` with every problem and its path
 * @example
 * ```ts
 * import { readEdition } from 'ohmwright/io';
 *
 * readEdition({ format: 'edition/1' }); // throws invalid-input
 * ```
 */
export const readEdition = (document: unknown): EditionDifferences =>
  readBy('the differences of an edition', edition, document);

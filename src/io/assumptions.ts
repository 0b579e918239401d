import * as z from 'zod';
import { type AssumptionSet, refuseAssumptions } from '../installation/index.js';
import { readBy } from './read-by.js';

const text = (most: number) => z.string().min(1).max(most);
const name = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'must be lower-case words with hyphens');
const plain = z.union([z.string().max(100), z.number(), z.boolean()]);

const assumptions = z.strictObject({
  format: z.literal('assumptions/1'),
  id: name,
  title: text(200),
  by: text(200),
  entries: z
    .array(
      z.strictObject({
        id: name,
        fact: z.string().regex(/^[a-zA-Z]+\.[a-zA-Z]+$/, 'must be record and field, as supply.looped'),
        when: z.record(z.string(), z.union([plain, z.array(plain).min(1)])).optional(),
        value: z.unknown().optional(),
        least: z.number().optional(),
        most: z.number().optional(),
        source: z.strictObject({
          document: text(200),
          edition: text(50).optional(),
          clause: text(200).optional(),
          provenance: z.enum(['one-source', 'memory', 'common-practice']),
          note: text(500).optional(),
        }),
        confirm: text(500),
      }),
    )
    .min(1)
    .max(500),
});

/**
 * Reads a firm's own set of assumptions, for plans of surveys with gaps.
 * @param document a parsed JSON document of format `assumptions/1`; values in canonical units
 * @returns the set, for the options of a plan
 * @throws CalculationError `invalid-input` with every problem and its path
 * @example
 * ```ts
 * import { readAssumptions } from 'ohmwright/io';
 *
 * const source = { document: 'house rule (invented)', provenance: 'common-practice' };
 * const entry = { id: 'not-looped', fact: 'supply.looped', value: false, source, confirm: 'Ask the distributor.' };
 * readAssumptions({ format: 'assumptions/1', id: 'ours', title: 'Ours', by: 'a firm (invented)', entries: [entry] }).entries.length; // => 1
 * ```
 */
export function readAssumptions(document: unknown): AssumptionSet {
  const set = readBy<AssumptionSet>('the set of assumptions', assumptions, document);
  refuseAssumptions(set);
  return set;
}

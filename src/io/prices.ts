import * as z from 'zod';
import type { PriceBook } from '../site/price.js';
import { commonPractice, type WorkRules } from '../site/work-rules.js';
import { invalidInput } from '../units/index.js';
import { readBy as read } from './read-by.js';

const coins = z.number().int('must be whole units of the smallest coin').min(0).max(1e12);

const priceBook = z.strictObject({
  format: z.literal('prices/1'),
  currency: z.string().regex(/^[A-Z]{3}$/, 'must be a currency code of three capitals'),
  items: z.record(z.string().min(1).max(200), coins),
  hour: coins,
  taxBasisPoints: z.number().int().min(0).max(100_000),
});

const estimate = z
  .strictObject({ low: z.number().min(0), typical: z.number().min(0), high: z.number().min(0) })
  .refine(({ low, typical, high }) => low <= typical && typical <= high, 'has to rise from low to typical to high');
const metresMap = z.record(z.string(), z.number().gt(0));
const workRules = z.strictObject({
  source: z.string().min(1).max(300),
  wasteShare: z.number().min(0).max(1),
  terminationLength: z.number().min(0).max(100),
  fixingSpacing: metresMap,
  glandsPerArmouredCable: z.number().int().min(0).max(10),
  sandPerMetre: z.number().min(0).max(10),
  smallestSizes: z
    .array(z.strictObject({ upTo: z.number().gt(0), area: z.number().gt(0) }))
    .default([...commonPractice.smallestSizes]),
  smallestRating: z.number().min(0).default(commonPractice.smallestRating),
  hours: z.record(z.string(), estimate),
  containmentFactor: metresMap.refine(
    (factors) => !Object.hasOwn(factors, 'buried'),
    'has no buried any more: set the hours of the tasks of a trench',
  ),
});

/**
 * Reads a firm's price book.
 * @param document a parsed JSON document of format `prices/1`; money in whole units of the smallest coin
 * @returns the price book, for `quotationOf`
 * @throws CalculationError `invalid-input` with every problem and its path
 * @example
 * ```ts
 * import { readPriceBook } from 'ohmwright/io';
 *
 * readPriceBook({ format: 'prices/1' }); // throws invalid-input
 * ```
 */
export const readPriceBook = (document: unknown): PriceBook => read('the price book', priceBook, document);

/**
 * The JSON Schema (draft 2020-12) of a price book.
 * @returns the schema, plain JSON
 * @example
 * ```ts
 * import { priceBookJsonSchema } from 'ohmwright/io';
 *
 * priceBookJsonSchema().$schema; // => 'https://json-schema.org/draft/2020-12/schema'
 * ```
 */
export const priceBookJsonSchema = (): Readonly<Record<string, unknown>> => ({
  title: 'ohmwright prices/1',
  ...z.toJSONSchema(priceBook, { io: 'input' }),
});

/**
 * The JSON Schema (draft 2020-12) of a firm's work rules.
 * @returns the schema, plain JSON
 * @example
 * ```ts
 * import { workRulesJsonSchema } from 'ohmwright/io';
 *
 * workRulesJsonSchema().$schema; // => 'https://json-schema.org/draft/2020-12/schema'
 * ```
 */
export const workRulesJsonSchema = (): Readonly<Record<string, unknown>> => ({
  title: 'ohmwright work rules',
  ...z.toJSONSchema(workRules, { io: 'input' }),
});

/**
 * Reads a firm's own rules for quantities and hours.
 * @param document a parsed JSON document with the fields of `WorkRules`
 * @param tasks the tasks that must have hours, as the built-in rules have them
 * @returns the rules, for `planOf`
 * @throws CalculationError `invalid-input` with every problem and its path
 * @example
 * ```ts
 * import { readWorkRules } from 'ohmwright/io';
 *
 * readWorkRules({}, ['travel']); // throws invalid-input
 * ```
 */
export function readWorkRules(document: unknown, tasks: readonly string[]): WorkRules {
  const rules: WorkRules = read('the work rules', workRules, document);
  const lacking = tasks.filter((t) => !Object.hasOwn(rules.hours, t));
  if (lacking.length > 0)
    throw invalidInput(
      'the work rules',
      lacking.map((t) => ({ path: ['hours', t], id: 'missing', message: 'is missing' })),
    );
  return rules;
}

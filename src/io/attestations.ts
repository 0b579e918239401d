import * as z from 'zod';
import type { Attestations } from '../core/index.js';
import { invalidInput, type Problem } from '../units/index.js';
import { readBy } from './read-by.js';

const text = (most: number) => z.string().min(1).max(most);
const day = z.iso.date('must be a day as yyyy-mm-dd');
const key = z.union([z.number(), z.string().max(200)]);
const column = z.string().max(300);
const correction = z.strictObject({
  column,
  row: key,
  printed: z.number().nullable(),
  despite: text(500).optional(),
});
const fingerprint = z.string().regex(/^[0-9a-f]{8}$/, 'must be the eight digits on the proof sheet');

const attestations = z.strictObject({
  format: z.literal('attestations/1'),
  attestations: z.array(
    z.strictObject({
      table: text(100),
      figures: fingerprint,
      edition: text(100),
      on: day,
      by: text(200),
      cells: z.array(z.strictObject({ column, rows: z.array(key).min(1).optional() })).optional(),
      corrections: z.array(correction).optional(),
    }),
  ),
});

const ticks = z.strictObject({
  format: z.literal('ticks/1'),
  by: z.string().max(200),
  on: z.union([z.literal(''), day]),
  copies: z.record(z.string(), z.string().max(100)),
  tables: z.array(
    z.strictObject({
      table: text(100),
      title: z.string(),
      document: text(200),
      page: z.number().int(),
      figures: fingerprint,
      cells: z.number().int(),
      recalled: z.number().int(),
      compared: z.boolean(),
      corrections: z.array(correction),
    }),
  ),
});

/**
 * Reads a document of attestations.
 * @param document a parsed JSON document of format `attestations/1`
 * @returns the attestations, for a wiring code
 * @throws CalculationError `invalid-input` with every problem and its path
 * @example
 * ```ts
 * import { readAttestations } from 'ohmwright/io';
 *
 * readAttestations({ format: 'attestations/1', attestations: [] }).attestations.length; // => 0
 * readAttestations({ format: 'attestations/1' }); // throws invalid-input
 * ```
 */
export const readAttestations = (document: unknown): Attestations => readBy('the attestations', attestations, document);

/**
 * Makes attestations of a tick document: one for each table that was compared.
 * @param document a parsed JSON document of format `ticks/1`, as `ticksFor` writes it and a person fills it in
 * @returns the attestations, for a wiring code and to be kept
 * @throws CalculationError `invalid-input` with every problem and its path: who, when and the edition of the copy have to be
 * stated where anything was compared, and corrections belong to tables that were
 * @example
 * ```ts
 * import { bs7671Tables } from 'ohmwright/bs7671';
 * import { readTicks } from 'ohmwright/io';
 * import { ticksFor } from 'ohmwright/report';
 *
 * const ticks = ticksFor([bs7671Tables['4D5']]);
 * const filled = {
 *   ...ticks,
 *   by: 'J. Example',
 *   on: '2026-11-30',
 *   copies: { 'BS 7671': '2018+A2:2022' },
 *   tables: ticks.tables.map((t) => ({ ...t, compared: true })),
 * };
 * readTicks(filled).attestations[0]?.by; // => 'J. Example'
 * ```
 */
export function readTicks(document: unknown): Attestations {
  const { by, on, copies, tables } = readBy<z.infer<typeof ticks>>('the tick document', ticks, document);
  const problems: Problem[] = [];
  const compared = tables.filter((t) => t.compared);
  for (const [name, value] of [
    ['by', by],
    ['on', on],
  ] as const)
    if (compared.length > 0 && value === '')
      problems.push({ path: [name], id: 'missing', message: 'has to be stated' });
  for (const document of new Set(compared.map((t) => t.document)))
    if (!copies[document])
      problems.push({
        path: ['copies', document],
        id: 'missing',
        message: 'has to be stated: the edition of the copy',
      });
  for (const [i, t] of tables.entries())
    if (!t.compared && t.corrections.length > 0)
      problems.push({
        path: ['tables', i, 'corrections'],
        id: 'does-not-fit',
        message: `belong to ${t.table}, which was not compared`,
      });
  if (problems.length > 0) throw invalidInput('the tick document', problems);
  return readAttestations({
    format: 'attestations/1',
    attestations: compared.map(({ table, figures, document, corrections }) => ({
      table,
      figures,
      edition: copies[document],
      on,
      by,
      ...(corrections.length > 0 ? { corrections } : {}),
    })),
  });
}

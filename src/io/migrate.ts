import { own } from '../core/own.js';
import { CalculationError } from '../units/index.js';

/** Pure steps from one format of the survey to the next; a format without a step is the current one. */
const steps: Readonly<Record<string, (document: Record<string, unknown>) => Record<string, unknown>>> = {};

/** The format that this version reads and writes. */
export const currentFormat = 'survey/1';

/**
 * Brings an older survey document to the current format.
 * @param document a document, of any format that was ever written
 * @returns the document in the current format; checked by `readSurvey`, not here
 * @throws CalculationError `unknown-definition` for a format that never was
 * @example
 * ```ts
 * import { migrate } from 'ohmwright/io';
 *
 * migrate({ format: 'survey/1' }); // => { format: 'survey/1' }
 * migrate({ format: 'survey/0' }); // throws unknown-definition
 * ```
 */
export function migrate(document: unknown): unknown {
  let current = document;
  for (;;) {
    const format = (current as { format?: unknown } | null)?.format;
    if (typeof current !== 'object' || current === null || typeof format !== 'string' || format === currentFormat)
      return current;
    const step = own(steps, format);
    if (!step) {
      const known = [...Object.keys(steps), currentFormat];
      throw new CalculationError(
        'unknown-definition',
        `there is no survey format '${format.slice(0, 40)}'; there is ${known.join(', ')}`,
        { kind: 'format', id: format.slice(0, 40), known },
      );
    }
    current = step(current as Record<string, unknown>);
  }
}

/**
 * How well a figure is known. `two-sources`: stood in two independent texts; `one-source`: seen in one text; `memory`:
 * recalled, not seen; `derived`: computed from others; `common-practice`: a fact of the trade without a source;
 * `definition`: true by definition or by the laws of physics; `attested`: compared with the print by a user of this
 * library, who is named.
 */
export type Provenance =
  | 'attested'
  | 'two-sources'
  | 'one-source'
  | 'memory'
  | 'derived'
  | 'common-practice'
  | 'definition';

/** Where a formula, a table, a check or a figure comes from. */
export interface Source {
  /** The publication, such as `BS 7671`. */
  readonly document: string;
  /** Edition, where the figure belongs to one. */
  readonly edition?: string;
  /** Clause, table or annex; absent for plain physics. */
  readonly clause?: string;
  readonly provenance: Provenance;
  readonly note?: string;
}

/**
 * A source as one line of text.
 * @param source the source
 * @returns document with edition, and clause where there is one
 * @example
 * ```ts
 * import { citation } from 'ohmwright';
 *
 * citation({ document: 'BS 7671', edition: '2018+A2:2022', clause: '433.1.1', provenance: 'two-sources' }); // => 'BS 7671:2018+A2:2022, 433.1.1'
 * ```
 */
export function citation(source: Source): string {
  const where = source.edition ? `${source.document}:${source.edition}` : source.document;
  return [where, source.clause].filter(Boolean).join(', ');
}

/**
 * A figure printed outside this project, and how we arrive at ours. Files named `*.cases.ts` beside the tests export
 * `cases: readonly PublishedCase[]`; the accuracy report and the tests read the same list.
 */
export interface PublishedCase {
  /** Unique, kebab-case. */
  readonly id: string;
  /** What is computed, in a few words. */
  readonly about: string;
  /** The document and the place in it. */
  readonly source: { readonly document: string; readonly where: string };
  /** How well the printed figure is known. */
  readonly provenance: 'two-sources' | 'one-source' | 'memory' | 'derived';
  /** Identifiers of the formulas, tables or procedures that the case exercises. */
  readonly exercises: readonly string[];
  /** Our figure, in the printed unit. */
  readonly ours: () => number;
  /** The printed figure. */
  readonly published: number;
  /** The printed unit, as text. */
  readonly unit: string;
  /** Largest difference that counts as agreement, in the printed unit: half or one of the last printed place. */
  readonly tolerance: number;
  /** Set where the print is known to be wrong or to rest on other inputs: the test then expects a difference. */
  readonly differs?: string;
}

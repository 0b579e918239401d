import type { Provenance } from '../core/index.js';

/** A figure that is outside what is customary: a question, no refusal. @inline */
export interface SanityQuestion {
  /** Where it stands in the survey. */
  readonly of: string;
  /** The question, in words. */
  readonly question: string;
  readonly provenance: Provenance;
}

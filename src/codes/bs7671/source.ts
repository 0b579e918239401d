import type { Provenance, Source } from '../../core/index.js';
import type { Edition } from './editions.js';

/** The edition whose text is entered: the others differ from it line by line. */
export const entered = '2018+A2:2022' satisfies Edition;

/**
 * A clause of BS 7671 as it stands in the edition that is entered.
 * @param clause number of the clause, table or annex
 * @param provenance how well it is known
 * @param note what a reader has to know of it
 */
export const bs = (clause: string, provenance: Provenance = 'two-sources', note?: string): Source =>
  note === undefined
    ? { document: 'BS 7671', edition: entered, clause, provenance }
    : { document: 'BS 7671', edition: entered, clause, provenance, note };

import type { UnknownFact } from './fact.js';

/** A fact of which things are said that cannot be true together, and what has to be looked at again. */
export const contradicted = (obtain: string): UnknownFact => ({ state: 'unknown', obtain, disagree: true });

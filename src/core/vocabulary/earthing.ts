import type { Terms } from './term.js';

/** Roles of earthing. */
// biome-ignore lint/suspicious/noEmptyInterface: filled by topic
export interface EarthingTerms {}

/** Symbols, units and ranges of the roles of earthing. */
export const earthingTerms: Terms<EarthingTerms> = {};

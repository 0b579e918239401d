import type { Terms } from './term.js';

/** Roles of charging. */
// biome-ignore lint/suspicious/noEmptyInterface: filled by topic
export interface ChargingTerms {}

/** Symbols, units and ranges of the roles of charging. */
export const chargingTerms: Terms<ChargingTerms> = {};

import type { Terms } from './term.js';

/** Roles of heat. */
// biome-ignore lint/suspicious/noEmptyInterface: filled by topic
export interface HeatTerms {}

/** Symbols, units and ranges of the roles of heat. */
export const heatTerms: Terms<HeatTerms> = {};

import type { Terms } from './term.js';

/** Roles of site. */
// biome-ignore lint/suspicious/noEmptyInterface: filled by topic
export interface SiteTerms {}

/** Symbols, units and ranges of the roles of site. */
export const siteTerms: Terms<SiteTerms> = {};

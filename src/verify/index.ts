/**
 * An independent second calculation of whole sheets, with units.
 *
 * @module ohmwright/verify
 */
export type { Definition } from './definitions.js';
export { type Verification, verifySheet } from './verify-sheet.js';

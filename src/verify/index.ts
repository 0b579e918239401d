/**
 * An independent second calculation of whole sheets, with units.
 *
 * @module
 */
export type { Definition } from './definitions.js';
export { type SheetProblem, type Verification, verifySheet } from './verify-sheet.js';

/**
 * An independent second calculation of whole sheets, with units.
 *
 * @module
 */
export {};

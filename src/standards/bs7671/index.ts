/**
 * BS 7671, requirements for electrical installations, by edition.
 *
 * @module
 */
export {};

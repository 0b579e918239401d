/**
 * Maximum demand and diversity, by method.
 *
 * @module
 */
export {};

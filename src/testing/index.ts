/**
 * Arbitraries for property tests of code that uses this package.
 *
 * @module
 */
export * from './installations.js';
export * from './quantities.js';

/**
 * Arbitraries for property tests of code that uses this package.
 *
 * @module ohmwright/testing
 */
export * from './installations.js';
export * from './quantities.js';

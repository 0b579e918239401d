/**
 * Arbitraries for property tests of code that uses this package.
 *
 * @module ohmwright/testing
 */
export { arbitraryInstallation, arbitraryRun, arbitrarySupply } from './installations.js';
export { arbitraryQuantity } from './quantities.js';

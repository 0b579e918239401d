/**
 * BS 7671: tables, rules and editions.
 * @module bs7671
 */
export * from '../iec-family/index.js';
export * from './tables/index.js';

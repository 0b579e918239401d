/**
 * Electrical installation calculations with typed units.
 * @module ohmwright
 */
export * from './core/index.js';
export * from './units/index.js';

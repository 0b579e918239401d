/**
 * Electrical installation calculations with typed units.
 * @module ohmwright
 */
export * from './core/index.js';
export * from './design/index.js';
export * from './installation/index.js';
export * from './units/index.js';

/**
 * Cables and devices as their product standards have them: tables, time-current envelopes, builds of cables.
 *
 * @module ohmwright/products
 */
export * from './bs88/gg-envelope.js';
export * from './bs5467/build.js';
export * from './collections.js';
export * from './en60898/envelope.js';
export { unarmouredBuild } from './iec60502/build.js';

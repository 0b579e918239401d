/**
 * IEC 60364, low-voltage electrical installations, by edition.
 *
 * @module
 */
export * from '../iec-family/index.js';
export * from '../wiring-code.js';
export * from './tables/index.js';

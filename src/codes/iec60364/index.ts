/**
 * IEC 60364, low-voltage electrical installations, by edition.
 *
 * @module ohmwright/iec60364
 */

export { annexDCapacity } from './annex-d.js';
export * from './code.js';
export * from './collections.js';

/**
 * IEC 60364, low-voltage electrical installations, by edition.
 *
 * @module ohmwright/iec60364
 */

export { type CableChoice, unarmouredBuild } from '../../products/iec60502/build.js';
export * from '../iec-family/index.js';
export * from '../wiring-code.js';
export { type AnnexDCapacity, type AnnexDColumn, annexDCapacity } from './annex-d.js';
export { annexGDropRate } from './annex-g.js';
export * from './code.js';
export * from './definitions.js';
export { iecRatingTables } from './rating-tables.js';

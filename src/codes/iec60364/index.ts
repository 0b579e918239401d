/**
 * IEC 60364, low-voltage electrical installations, by edition.
 *
 * @module ohmwright/iec60364
 */

export * from '../../products/iec60228/conductor-diameter.js';
export * from '../../products/iec60228/conductor-resistance.js';
export * from '../../products/iec60502/bedding-thickness.js';
export { type CableChoice, unarmouredBuild } from '../../products/iec60502/build.js';
export * from '../../products/iec60502/insulation-thickness.js';
export * from '../iec-family/index.js';
export * from '../wiring-code.js';
export { type AnnexDCapacity, type AnnexDColumn, annexDCapacity, powerLawCapacity } from './annex-d.js';
export * from './annex-g.js';
export * from './code.js';
export { iecRatingTables } from './rating-tables.js';
export * from './tables/index.js';

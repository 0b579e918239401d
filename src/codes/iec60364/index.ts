/**
 * IEC 60364, low-voltage electrical installations, by edition.
 *
 * @module ohmwright/iec60364
 */

export { unarmouredBuild } from '../../products/iec60502/build.js';
export type { Aspect, AssessmentOptions, CircuitCase, CircuitFigures, WiringCode } from '../wiring-code.js';
export { annexDCapacity } from './annex-d.js';
export * from './code.js';
export * from './definitions.js';

/**
 * BS 7671: tables, rules and editions.
 * @module ohmwright/bs7671
 */

export type { Figure } from '../../core/figure.js';
export * from '../../products/bs88/gg-envelope.js';
export * from '../../products/bs5467/build.js';
export * from '../../products/en60898/envelope.js';
export { unarmouredBuild } from '../../products/iec60502/build.js';
export type { EditionChange, EditionDifferences, EnteredAspect } from '../edition-differences.js';
export { compareMeasured } from '../iec-family/measured-loop.js';
export { type DisconnectionFailure, disconnectionRemedies } from '../iec-family/remedies.js';
export type { Remedy } from '../remedy.js';
export type {
  Aspect,
  AssessmentOptions,
  CircuitCase,
  CircuitFigures,
  EarthingOption,
  WiringCode,
} from '../wiring-code.js';
export * from './code.js';
export * from './definitions.js';
export { bs7671Demand } from './demand.js';
export { type DwellingLoads, dwellingDemand } from './dwelling-demand.js';
export { datesOf, type Edition, editionInForce, editions, standingOf } from './editions.js';
export {
  adiabaticSize,
  cableCapacity,
  circuitVoltageDrop,
  disconnectionTime,
  longestDisconnectionTime,
  maxZs,
} from './everyday.js';
export * from './named-tables.js';

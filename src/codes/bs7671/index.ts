/**
 * BS 7671: tables, rules and editions.
 * @module ohmwright/bs7671
 */

export type { EditionDifferences } from '../edition-differences.js';
export { capacityAsInstalled } from '../iec-family/capacity.js';
export { type DisconnectionFailure, disconnectionRemedies } from '../iec-family/remedies.js';
export { voltageDropTabulated } from '../iec-family/voltage-drop.js';
export * from './code.js';
export * from './collections.js';
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
export { compareMeasured } from './measured-loop.js';
export * from './named-tables.js';

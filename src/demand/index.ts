/**
 * Maximum demand and diversity, adequacy of the supply, notification, and the demand of many.
 *
 * @module ohmwright/demand
 */
export type { Dwellings } from '../installation/load.js';
export { dwellingsAtOnce } from '../installation/load-current.js';
export type { SupplyTransformer } from '../installation/supply.js';
export { type Adequacy, adequacyOf } from './adequacy.js';
export * from './collections.js';
export type { ConnectionDecision, ConnectionFacts, Route } from './connection.js';
export { type Demand, demandOf, existingOnLines } from './demand.js';
export {
  type ChargingQuestion,
  type CoincidentCharging,
  coincidenceByRoot,
  coincidentCharging,
  type DwellingGroup,
  demandOfDwellings,
  dwellingsByStage,
  type GroupMethod,
  type GroupResult,
  powerDistribution,
  sumOfDwellings,
} from './many/index.js';
export type { DemandMethod, DemandOptions, MeterReadings } from './method.js';
export { generalMethods } from './methods/index.js';
export { type HeightRules, type Mounting, mountingResults } from './mounting.js';
export type { NetworkRules } from './network-rules.js';
export { type Notification, notificationOf } from './notification.js';
export type { NotificationOptions } from './notification-options.js';
export type { DemandRules, SupplyRules } from './rules.js';

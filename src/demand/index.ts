/**
 * Maximum demand and diversity, adequacy of the supply, notification, and the demand of many.
 *
 * @module ohmwright/demand
 */
export * from './adequacy.js';
export type { SupplyChange } from './changes.js';
export * from './connection.js';
export * from './definitions.js';
export { type Demand, demandOf, type LineDemand, type MethodResult } from './demand.js';
export { type FeederDemand, feederAdvice, feederDemandOf } from './feeder.js';
export { type FormCase, type FormEntry, type FormField, formEntries } from './form.js';
export type { SettingSearch } from './formulas.js';
export { type DemandCase, type DemandControl, type DemandLoad, type DemandPoint, demandCase } from './loads.js';
export * from './many/index.js';
export type {
  Applicability,
  DemandMethod,
  DemandOptions,
  HalfHourReading,
  MeterReadings,
  Premises,
} from './method.js';
export { generalMethods } from './methods/index.js';
export { checkReadings, daysCovered } from './methods/readings.js';
export { type HeightRules, type Mounting, type MountingPart, mountingResults } from './mounting.js';
export type { NetworkRules } from './network-rules.js';
export { type Notification, notificationOf } from './notification.js';
export type { NotificationOptions } from './notification-options.js';
export type { DemandRules, SupplyRules } from './rules.js';

/**
 * Maximum demand and diversity, adequacy of the supply, notification, and the demand of many.
 *
 * @module ohmwright/demand
 */
export { germany } from '../networks/de-network/connection-rules.js';
export * from '../networks/due-dates.js';
export { connectionProcess } from '../networks/gb-network/connection-checks.js';
export { greatBritain } from '../networks/gb-network/connection-rules.js';
export * from '../networks/gb-network/distributors.js';
export { type MeterPoint, meterPointCheckDigit, readMeterPoint } from '../networks/gb-network/meter-point.js';
export * from '../networks/network-rules.js';
export * from './adequacy.js';
export type { SupplyChange } from './changes.js';
export * from './definitions.js';
export { type Demand, demandOf, governingRule, type LineDemand, type MethodResult } from './demand.js';
export { type FeederDemand, feederAdvice, feederDemandOf } from './feeder.js';
export type { FormField } from './form.js';
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
export { demandMethods } from './methods/index.js';
export { checkReadings, daysCovered } from './methods/readings.js';
export { type Mounting, type MountingUse, mountingResults } from './mounting.js';
export { type Notification, networkRules, notificationOf } from './notification.js';
export type { NotificationOptions } from './notification-options.js';

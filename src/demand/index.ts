/**
 * Maximum demand and diversity, adequacy of the supply, notification, and the demand of many.
 *
 * @module ohmwright/demand
 */
export * from '../guidance/approved-document-m/heights.js';
export * from '../guidance/charging-code-of-practice/heights.js';
export * from '../guidance/din18015/building-load.js';
export * from '../guidance/fr-accessibility/heights.js';
export * from '../guidance/on-site-guide/a2.js';
export * from '../guidance/pas1899/heights.js';
export * from '../networks/de-network/connection-checks.js';
export { germany } from '../networks/de-network/connection-rules.js';
export * from '../networks/de-network/unbalance.js';
export * from '../networks/due-dates.js';
export * from '../networks/gb-network/connection-checks.js';
export { greatBritain } from '../networks/gb-network/connection-rules.js';
export * from '../networks/gb-network/distributors.js';
export * from '../networks/gb-network/meter-point.js';
export * from '../networks/gb-network/meter-tails.js';
export * from '../networks/gb-network/service-fuses.js';
export * from '../networks/network-rules.js';
export * from '../networks/nfc14100/riser-simultaneity.js';
export * from '../products/iec61439/rated-diversity.js';
export * from './adequacy.js';
export * from './adequacy-checks.js';
export type { SupplyChange } from './changes.js';
export { type Demand, demandOf, governingRule, type LineDemand, type MethodResult } from './demand.js';
export { type FeederDemand, feederAdvice, feederDemandOf } from './feeder.js';
export type { FormField } from './form.js';
export * from './formulas.js';
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
export * from './mounting.js';
export { type Notification, networkRules, notificationOf } from './notification.js';
export type { NotificationOptions } from './notification-options.js';

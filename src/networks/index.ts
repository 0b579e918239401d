/**
 * Network operators by country: connection rules and their notices, what services and transformers are met with, hours
 * of smart charging.
 *
 * @module ohmwright/networks
 */

export * from './collections.js';
export { germany } from './de-network/connection-rules.js';
export { afterDiversity } from './gb-network/after-diversity.js';
export { greatBritain } from './gb-network/connection-rules.js';
export { customaryAfterDiversity } from './gb-network/dwelling-demand.js';
export { readMeterPoint } from './gb-network/meter-point.js';
export { servicesOf } from './gb-network/service-fuses.js';
export { smartChargingPeak } from './gb-smart-charging/peak-hours.js';
export { riserMethod } from './nfc14100/riser-simultaneity.js';
export { peakFromEnergy } from './nordic-network/energy-to-peak.js';
export { europeanSummerTime } from './summer-time.js';

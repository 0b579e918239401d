/** Formulas, tables and checks of network operators. */
export * from './de-network/connection-checks.js';
export * from './de-network/unbalance.js';
export { afterDiversityGroup } from './gb-network/after-diversity.js';
export {
  cutOutForNotice,
  cutOutIsSound,
  demandForNotice,
  powerForNotice,
  serviceNotLooped,
  singleInstallation,
  sourcesForNotice,
  sourcesForOneForm,
  supplyIsMetered,
  supplyStays,
} from './gb-network/connection-checks.js';
export { customaryDwellingDemand } from './gb-network/dwelling-demand.js';
export * from './gb-network/external-impedance.js';
export { meterPointPlausible } from './gb-network/meter-point.js';
export * from './gb-network/meter-tails.js';
export * from './gb-network/prospective-currents.js';
export { serviceFuses } from './gb-network/service-fuses.js';
export * from './gb-network/supply-checks.js';
export * from './gb-network/transformers.js';
export { peakHours } from './gb-smart-charging/peak-hours.js';
export * from './gb-smart-charging/start-delay.js';
export { riserSimultaneity } from './nfc14100/riser-simultaneity.js';
export { energyToPeak } from './nordic-network/energy-to-peak.js';

/** Formulas, tables and checks of the demand, the adequacy of the supply, the notification and the mounting. */
export * from '../guidance/approved-document-m/heights.js';
export * from '../guidance/charging-code-of-practice/heights.js';
export * from '../guidance/din18015/building-load.js';
export * from '../guidance/fr-accessibility/heights.js';
export * from '../guidance/on-site-guide/a2.js';
export * from '../guidance/pas1899/heights.js';
export * from '../networks/de-network/connection-checks.js';
export * from '../networks/de-network/unbalance.js';
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
} from '../networks/gb-network/connection-checks.js';
export { meterPointPlausible } from '../networks/gb-network/meter-point.js';
export * from '../networks/gb-network/meter-tails.js';
export * from '../networks/gb-network/service-fuses.js';
export * from '../networks/nfc14100/riser-simultaneity.js';
export * from '../products/iec61439/rated-diversity.js';
export * from './adequacy-checks.js';
export * from './formulas.js';
export { coincidentCount, coincidentPowerOf } from './many/coincidence.js';
export * from './many/formulas.js';
export { accessibleHeight, buildingHeight, clearOfGasMeter, frenchHeight, generalHeight } from './mounting.js';

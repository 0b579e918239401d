/** Formulas, tables and checks that the codes share. */
export * from './capacity.js';
export { areaNotBelowMinimum, terminalsCoolEnough } from './conductor-size.js';
export * from './conductor-temperature.js';
export {
  automaticDisconnection,
  electrodeStable,
  overcurrentDisconnects,
  overcurrentPreferred,
  residualDisconnects,
  residualTouchLimit,
} from './disconnection-checks.js';
export * from './e52-1.js';
export {
  designFromMeasured,
  divisionRule,
  eightTenthsRule,
  measuredDivision,
  measuredEightTenths,
  measuredExact,
  measuredLimitByRatio,
  measuredLimitExact,
} from './measured-loop.js';
export { ratedCurrents } from './rated-currents.js';
export * from './voltage-drop.js';

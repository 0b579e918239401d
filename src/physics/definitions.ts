/** Formulas, relations and procedures without national content. */
export * from './adiabatic.js';
export {
  gridResistance,
  gridResistanceAtDepth,
  mutualResistanceOf,
  parallelRods,
  plateResistance,
  ringResistance,
  rodResistance,
  rodSpacingRatio,
  stripResistance,
  twoElectrodes,
  wireResistance,
} from './electrodes.js';
export * from './fault-current.js';
export { voltageInNetwork } from './four-wire-network.js';
export * from './loop.js';
export * from './meshed-peak.js';
export * from './open-pen.js';
export { openPenSolved } from './open-pen-network.js';
export {
  currentFromPower,
  currentFromThreePhasePower,
  resistanceOfConductor,
  transformerFaultCurrent,
} from './plain.js';
export * from './ring.js';
export {
  gridImpedanceOf,
  lineEarthFault,
  lineLineFault,
  lineNeutralFault,
  peakCurrentOf,
  peakFactorOf,
  threePhaseFault,
  transformerFactorOf,
  transformerImpedanceOf,
  transformerResistanceOf,
} from './short-circuit.js';
export { currentOnCurve, inverseTime, thermalTimeConstantOf, thermalTripTime, timeOnCurve } from './time-current.js';
export * from './voltage-drop.js';

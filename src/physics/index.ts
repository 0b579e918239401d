/**
 * Formulas and networks without national content: fault loops, short circuits, thermal withstand, voltage drop, electrodes.
 *
 * @module ohmwright/physics
 */
export { adiabaticArea, adiabaticFactorOf, faultEnergy, longestFaultTime } from './adiabatic.js';
export * from './collections.js';
export { lineOfRodsFactor, parallelRods, plateResistance, rodResistance, stripResistance } from './electrodes.js';
export { earthFaultCurrentOf, loopImpedanceLimitOf } from './fault-current.js';
export { type FourWireNetwork, solveRadial } from './four-wire-network.js';
export { loopImpedanceOf, originImpedanceOf, resistanceAtTemperature, sumOfLineAndProtective } from './loop.js';
export { openPenFloating, openPenTouchVoltage } from './open-pen.js';
export { type OpenPenCase, openPen, windowSight } from './open-pen-network.js';
export * from './plain.js';
export { ringLineNeutral, ringLineProtective } from './ring.js';
export {
  gridImpedanceOf,
  type Impedance,
  lineEarthFault,
  lineEarthPath,
  lineLineFault,
  lineNeutralFault,
  lineNeutralPath,
  peakCurrentOf,
  type RadialNetwork,
  splitImpedance,
  threePhaseFault,
  threePhasePath,
  transformerImpedanceOf,
  transformerResistanceOf,
  warmed,
} from './short-circuit.js';
export { currentAt, type Envelope, gateBounds, inverseTime, smoothTimeAt, timeAt } from './time-current.js';
export { dropBetween, dropOnRing } from './voltage-drop.js';

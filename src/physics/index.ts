/**
 * Formulas and networks without national content: fault loops, short circuits, thermal withstand, voltage drop, electrodes.
 *
 * @module ohmwright/physics
 */
export * from './adiabatic.js';
export * from './electrodes.js';
export * from './fault-current.js';
export {
  type FourWireNetwork,
  type FourWireSection,
  solveRadial,
  voltageInNetwork,
} from './four-wire-network.js';
export * from './loop.js';
export * from './meshed-peak.js';
export * from './open-pen.js';
export { type OpenPenCase, openPen, openPenSolved, windowSight } from './open-pen-network.js';
export * from './plain.js';
export * from './ring.js';
export * from './short-circuit.js';
export * from './time-current.js';
export * from './voltage-drop.js';

export * from './adiabatic.js';
export * from './earthing-conductor.js';
export * from './electrodes.js';
export * from './fault-current.js';
export * from './loop.js';
export * from './lost-pen-network.js';
export * from './open-pen.js';
export * from './ring.js';
export {
  type NetworkPlace,
  type NetworkSolution,
  type NodeLoad,
  type RadialNetwork,
  type Section,
  solveRadial,
  voltageInNetwork,
} from './network.js';
export * from './short-circuit.js';
export * from './time-current.js';
export * from './voltage-drop.js';

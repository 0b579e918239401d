export * from './adiabatic.js';
export * from './earthing-conductor.js';
export * from './fault-current.js';
export * from './loop.js';
export * from './ring.js';
export * from './short-circuit.js';
export * from './time-current.js';

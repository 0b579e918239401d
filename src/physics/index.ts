export * from './adiabatic.js';
export * from './earthing-conductor.js';
export * from './fault-current.js';
export * from './loop.js';
export * from './time-current.js';

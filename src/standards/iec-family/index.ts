export * from './disconnection.js';
export * from './loop-impedance.js';
export * from './operating-current.js';
export * from './residual-position.js';
export * from './voltage-drop.js';

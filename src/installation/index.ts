export * from './cable.js';
export * from './device.js';
export * from './load.js';
export * from './load-current.js';
export * from './ranges.js';
export * from './residual-upstream.js';
export * from './supply.js';
export * from './tree.js';

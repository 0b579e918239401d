/**
 * Supplies of sites: transformers, networks of any shape, motors and their starts, welders, capacitors, harmonics and
 * unbalance.
 *
 * @module ohmwright/power
 */
export * from './ageing.js';
export * from './busbar.js';
export * from './capacitors.js';
export * from './fault-network.js';
export * from './harmonics.js';
export * from './load-network.js';
export * from './motors.js';
export * from './parallel.js';
export * from './transformer-supply.js';
export * from './transformers.js';
export * from './unbalance.js';

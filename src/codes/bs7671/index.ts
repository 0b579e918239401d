/**
 * BS 7671: tables, rules and editions.
 * @module ohmwright/bs7671
 */

export * from '../../products/bs88/gg-envelope.js';
export * from '../../products/bs5467/build.js';
export * from '../../products/en60898/envelope.js';
export { type CableChoice, unarmouredBuild } from '../../products/iec60502/build.js';
export * from '../iec-family/index.js';
export * from '../wiring-code.js';
export * from './cable-tables.js';
export * from './code.js';
export * from './definitions.js';
export { bs7671Demand } from './demand.js';
export * from './earthing-options.js';
export * from './editions.js';
export * from './rules/arc-detection.js';
export * from './rules/breaking-capacity.js';
export * from './rules/charge-point-earthing.js';
export * from './rules/coordination.js';
export * from './rules/disconnection.js';
export * from './rules/earthing-and-bonding.js';
export * from './rules/line-withstand.js';
export * from './rules/protective-conductor.js';
export * from './rules/residual-current.js';
export * from './rules/surge-protection.js';
export * from './rules/terminal-temperature.js';
export * from './rules/voltage-drop.js';
export * from './test-plan.js';

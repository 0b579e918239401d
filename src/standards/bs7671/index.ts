/**
 * BS 7671: tables, rules and editions.
 * @module bs7671
 */

export * from '../bs88/conventional-currents.js';
export * from '../bs88/gg-envelope.js';
export * from '../bs88/gg-gates.js';
export * from '../bs88/gg-loop-testing.js';
export * from '../bs88/gg-pre-arcing.js';
export * from '../bs1361/conventional-currents.js';
export * from '../bs1362/operating-windows.js';
export * from '../bs3871/instantaneous-bands.js';
export * from '../bs5467/armour.js';
export * from '../bs6004/protective-conductors.js';
export * from '../bs7430/soil-resistivity.js';
export * from '../en60898/energy-limiting-classes.js';
export * from '../en60898/envelope.js';
export * from '../en60898/instantaneous-bands.js';
export * from '../en60898/service-capacities.js';
export * from '../en60898/test-currents.js';
export * from '../en61008/break-times.js';
export * from '../en61008/non-actuating-times.js';
export * from '../en61008/operating-bands.js';
export * from '../en61008/smooth-current.js';
export * from '../gb-network/external-impedance.js';
export * from '../gb-network/prospective-currents.js';
export * from '../gb-network/transformers.js';
export * from '../iec-family/index.js';
export * from '../iec60228/conductor-resistance.js';
export * from '../iec60909/voltage-factors.js';
export * from '../iec60949/material-constants.js';
export * from '../iec62955/break-times.js';
export * from '../on-site-guide/7-2-7.js';
export * from '../on-site-guide/b7.js';
export * from '../on-site-guide/i1.js';
export * from '../on-site-guide/i2.js';
export * from '../on-site-guide/i3.js';
export * from '../vde0298/tables/index.js';
export * from '../wiring-code.js';
export * from './earthing-checks.js';
export * from './earthing-options.js';
export * from './editions.js';
export * from './residual-checks.js';
export * from './rules/arc-detection.js';
export * from './rules/breaking-capacity.js';
export * from './rules/charge-point-earthing.js';
export * from './rules/disconnection.js';
export * from './rules/earthing-and-bonding.js';
export * from './rules/line-withstand.js';
export * from './rules/protective-conductor.js';
export * from './rules/residual-current.js';
export * from './rules/surge-protection.js';
export * from './tables/index.js';
export * from './test-plan.js';

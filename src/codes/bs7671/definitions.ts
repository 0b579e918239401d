/** What is offered with BS 7671: its tables, formulas and checks, and those of the documents that it leans on. */
export * from '../../products/bs88/conventional-currents.js';
export * from '../../products/bs88/gg-gates.js';
export * from '../../products/bs88/gg-loop-testing.js';
export * from '../../products/bs88/gg-pre-arcing.js';
export * from '../../products/bs1361/conventional-currents.js';
export * from '../../products/bs1362/operating-windows.js';
export * from '../../products/bs3871/instantaneous-bands.js';
export * from '../../products/bs5467/armour.js';
export * from '../../products/bs5467/dimensions.js';
export * from '../../products/bs6004/protective-conductors.js';
export * from '../../products/en60898/energy-limiting-classes.js';
export * from '../../products/en60898/instantaneous-bands.js';
export * from '../../products/en60898/service-capacities.js';
export * from '../../products/en60898/test-currents.js';
export * from '../../products/en61008/break-times.js';
export * from '../../products/en61008/non-actuating-times.js';
export * from '../../products/en61008/operating-bands.js';
export * from '../../products/en61008/smooth-current.js';
export * from '../../products/iec60228/conductor-diameter.js';
export * from '../../products/iec60228/conductor-resistance.js';
export * from '../../products/iec60502/bedding-thickness.js';
export * from '../../products/iec60502/insulation-thickness.js';
export * from '../../products/iec60909/voltage-factors.js';
export * from '../../products/iec60949/material-constants.js';
export * from '../../products/iec62955/break-times.js';
export * from '../../products/vde0298/tables/4-many-cores.js';
export * from '../iec-family/definitions.js';
export * from './breaking-checks.js';
export { cableForRoute } from './cable-for-route.js';
export { controlledDemand, demandWithinCutOut, demandWithinMainSwitch, demandWithPoints } from './demand.js';
export * from './earthing-checks.js';
export * from './earthing-conductor.js';
export { arcDetectionAdvised, arcDetectionRequired } from './groups/arc-detection.js';
export { earthingConductorLarge, mainBondingLarge } from './groups/earthing-and-bonding.js';
export { socketForHours } from './groups/mode-two.js';
export { externalImpedanceCustomary, originReadingsAgree } from './groups/origin-facts.js';
export { outbuildingBonded } from './groups/outbuildings.js';
export { cableForGround, cableForSun, depthInGround } from './groups/placement.js';
export {
  infeedFixed,
  infeedOpensAllLive,
  infeedWithinCapacity,
  ownCircuitOfPoint,
  requiredWithInfeed,
} from './groups/shared-circuit.js';
export { surgeProtected } from './groups/surge-protection.js';
export {
  mainSwitchAboveDevices,
  mainSwitchBehindDevice,
  mainSwitchDeclared,
  mainSwitchProtected,
  originResidualAboveDevices,
  originResidualBehindDevice,
  originResidualDeclared,
  originResidualProtected,
  tailsAboveDevices,
  tailsBehindFuse,
  tailsFaultProtected,
  tailsProtected,
} from './overload-checks.js';
export * from './own-way.js';
export * from './residual-checks.js';
export * from './tables/index.js';
export * from './withstand-checks.js';

/** What is offered with BS 7671: its tables, formulas and checks, and those of the documents that it leans on. */
export * from '../iec-family/definitions.js';
export * from './breaking-checks.js';
export { cableForRoute } from './cable-for-route.js';
export * from './capacity.js';
export * from './clauses.js';
export { controlledDemand, demandWithinCutOut, demandWithinMainSwitch, demandWithPoints } from './demand.js';
export {
  automaticDisconnection,
  electrodeStable,
  overcurrentDisconnects,
  overcurrentPreferred,
  residualDisconnects,
  residualTouchLimit,
} from './disconnection-checks.js';
export * from './earthing-checks.js';
export * from './earthing-conductor.js';
export { arcDetectionAdvised, arcDetectionRequired } from './groups/arc-detection.js';
export { earthingConductorLarge, mainBondingLarge } from './groups/earthing-and-bonding.js';
export { areaNotBelowMinimum } from './groups/minimum-size.js';
export { directCurrentWithinSetting } from './groups/mode-four.js';
export { socketBehindDevice, socketForHours } from './groups/mode-two.js';
export { externalImpedanceCustomary, originReadingsAgree, suppliedLines } from './groups/origin-facts.js';
export { outbuildingBonded } from './groups/outbuildings.js';
export { cableForGround, cableForSun, depthInGround, jointAccessible } from './groups/placement.js';
export {
  infeedFixed,
  infeedOpensAllLive,
  infeedWithinCapacity,
  ownCircuitOfPoint,
  requiredWithInfeed,
} from './groups/shared-circuit.js';
export { specialPlaceMet } from './groups/special-place.js';
export { surgeProtected } from './groups/surge-protection.js';
export {
  designFromMeasured,
  divisionRule,
  eightTenthsRule,
  measuredDivision,
  measuredEightTenths,
  measuredExact,
  measuredLimitByRatio,
  measuredLimitExact,
} from './measured-loop.js';
export * from './open-pen.js';
export {
  boardAboveDevices,
  boardBehindDevice,
  boardDeclared,
  boardProtected,
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
export * from './protective-sizes.js';
export * from './residual-checks.js';
export * from './tables/index.js';
export * from './withstand-checks.js';

import { excessTimeOf, mainFuseCarriesExcess, safeCurrentOf } from '../charging/control/reaction.js';
import { offeredCurrentOf } from '../charging/pilot/offered-current.js';
import {
  balancedKeepsLimit,
  chargePointEarthed,
  combinedEarthAllowed,
  electrodeForHeldCurrent,
  electrodeForHeldPower,
  electrodeKeepsLimit,
  equalDevice,
  islandElectrodeStable,
  islandElectrodesApart,
  islandFeedSeparated,
  islandOutOfReach,
  islandTouchLimit,
  loadStatesDeclared,
  oneVehicleSeparated,
  singlePhaseInstallation,
  threePhaseInstallation,
  touchVoltageDevice,
  windowDevice,
  windowLeavesDrop,
} from '../codes/bs7671/earthing-checks.js';
import {
  additionalProtection,
  boardCarriesInfeed,
  oneDevicePerPoint,
  residualAtOrigin,
  residualBothWays,
  residualNotOverloaded,
  residualOpensAllLive,
  residualSelective,
  residualTypeSuits,
  smoothCurrentBorne,
  standingCurrentBorne,
} from '../codes/bs7671/residual-checks.js';
import { arcDetectionAdvised, arcDetectionRequired } from '../codes/bs7671/rules/arc-detection.js';
import { earthingConductorLarge, mainBondingLarge } from '../codes/bs7671/rules/earthing-and-bonding.js';
import { surgeProtected } from '../codes/bs7671/rules/surge-protection.js';
import { table4B1 } from '../codes/bs7671/tables/4b1.js';
import { table4B2 } from '../codes/bs7671/tables/4b2.js';
import { table4B3 } from '../codes/bs7671/tables/4b3.js';
import { table4C1 } from '../codes/bs7671/tables/4c1.js';
import { table4C2 } from '../codes/bs7671/tables/4c2.js';
import { table4C3Multicore, table4C3SingleCore } from '../codes/bs7671/tables/4c3.js';
import { table4C4 } from '../codes/bs7671/tables/4c4.js';
import { table4C5 } from '../codes/bs7671/tables/4c5.js';
import { table4D1A } from '../codes/bs7671/tables/4d1a.js';
import { table4D1B } from '../codes/bs7671/tables/4d1b.js';
import { table4D2A } from '../codes/bs7671/tables/4d2a.js';
import { table4D2B } from '../codes/bs7671/tables/4d2b.js';
import { table4D4A } from '../codes/bs7671/tables/4d4a.js';
import { table4D4B } from '../codes/bs7671/tables/4d4b.js';
import { table4D5, table4D5Drop } from '../codes/bs7671/tables/4d5.js';
import { table4E1A } from '../codes/bs7671/tables/4e1a.js';
import { table4E1B } from '../codes/bs7671/tables/4e1b.js';
import { table4E2A } from '../codes/bs7671/tables/4e2a.js';
import { table4E2B } from '../codes/bs7671/tables/4e2b.js';
import { table4E4A } from '../codes/bs7671/tables/4e4a.js';
import { table4E4B } from '../codes/bs7671/tables/4e4b.js';
import { table4FAmbient } from '../codes/bs7671/tables/4f-ambient.js';
import { table4FDrum } from '../codes/bs7671/tables/4f-drum.js';
import { table4F1A } from '../codes/bs7671/tables/4f1a.js';
import { table4F2A } from '../codes/bs7671/tables/4f2a.js';
import { table4F2B } from '../codes/bs7671/tables/4f2b.js';
import { table4F3A } from '../codes/bs7671/tables/4f3a.js';
import { table4F3B } from '../codes/bs7671/tables/4f3b.js';
import { table4J4A } from '../codes/bs7671/tables/4j4a.js';
import { table4J4B } from '../codes/bs7671/tables/4j4b.js';
import { table411 } from '../codes/bs7671/tables/41-1.js';
import { table412 } from '../codes/bs7671/tables/41-2.js';
import { table413 } from '../codes/bs7671/tables/41-3.js';
import { table414 } from '../codes/bs7671/tables/41-4.js';
import { table416 } from '../codes/bs7671/tables/41-6.js';
import { table431, table431Final, table431Initial } from '../codes/bs7671/tables/43-1.js';
import { table52_2 } from '../codes/bs7671/tables/52-2.js';
import { table541 } from '../codes/bs7671/tables/54-1.js';
import { table542, table542Final, table542Initial } from '../codes/bs7671/tables/54-2.js';
import { table543, table543Final, table543Initial } from '../codes/bs7671/tables/54-3.js';
import { table544, table544Final, table544Initial } from '../codes/bs7671/tables/54-4.js';
import { table545, table545Final, table545Initial } from '../codes/bs7671/tables/54-5.js';
import { table546, table546Final, table546Initial } from '../codes/bs7671/tables/54-6.js';
import { table548 } from '../codes/bs7671/tables/54-8.js';
import { insulationResistanceLimits, insulationTestVoltages } from '../codes/bs7671/tables/64.js';
import { distributionTimes } from '../codes/bs7671/tables/411-3-2.js';
import { earthSeparations } from '../codes/bs7671/tables/722-separation.js';
import { lostPenLimits } from '../codes/bs7671/tables/722-touch-voltage.js';
import { lineNeutralWindow } from '../codes/bs7671/tables/722-window.js';
import { fuseOperatingCurrents } from '../codes/bs7671/tables/fuse-operating-currents.js';
import {
  breakingCapacityCheck,
  conditionalBreakingCapacity,
  discriminationCheck,
  discriminationWithFeeder,
  ownBreakingCapacity,
} from '../codes/iec-family/breaking-capacity.js';
import {
  capacityAsInstalled,
  capacityInParallel,
  capacitySuffices,
  conventionalCurrentOf,
  conventionalOverload,
  deviceCarriesLoad,
  deviceLimitOf,
  deviceShareOf,
  groupedDevice,
  groupWithCores,
  groupWithDrum,
  harmonicCurrentOfLine,
  harmonicCurrentOfNeutral,
  harmonicsStated,
  insulationOnce,
  loadWithinCapacity,
  neutralOfThirdHarmonics,
  overloadLimitOf,
  requiredForLoad,
  requiredForOverload,
  requiredNotTogether,
  ringCarriesEnough,
  unequalGroupFactor,
} from '../codes/iec-family/capacity.js';
import { areaNotBelowMinimum, terminalsCoolEnough } from '../codes/iec-family/conductor-size.js';
import {
  dropCorrectionAtTemperature,
  dropCorrectionGroupFull,
  temperatureAtPartialLoad,
  temperatureAtPartialLoadExact,
  temperatureAtShareOfCapacity,
} from '../codes/iec-family/conductor-temperature.js';
import {
  automaticDisconnection,
  electrodeStable,
  overcurrentDisconnects,
  overcurrentPreferred,
  residualDisconnects,
  residualTouchLimit,
} from '../codes/iec-family/disconnection-checks.js';
import { tableE521 } from '../codes/iec-family/e52-1.js';
import {
  lineNeutralClears,
  lineProtectedByOverload,
  lineWithstandCheck,
  lineWithstands,
} from '../codes/iec-family/line-withstand.js';
import {
  designFromMeasured,
  divisionRule,
  eightTenthsRule,
  measuredDivision,
  measuredEightTenths,
  measuredExact,
  measuredLimitByRatio,
  measuredLimitExact,
} from '../codes/iec-family/measured-loop.js';
import { parallelConductorsWithstand } from '../codes/iec-family/parallel-conductors.js';
import {
  protectiveByTable,
  protectiveConductorCheck,
  protectiveWithstands,
  separateProtectiveLarge,
} from '../codes/iec-family/protective-conductor.js';
import { ratedCurrents } from '../codes/iec-family/rated-currents.js';
import {
  balancedEquivalent,
  dropRateAtPowerFactor,
  dropRateAtWorstAngle,
  dropRateCorrected,
  dropRateInParallel,
  dropRatioOf,
  dropToNeutral,
  dropWithinLimit,
  insideWindow,
  voltageDropTabulated,
} from '../codes/iec-family/voltage-drop.js';
import { powerLawCapacity } from '../codes/iec60364/annex-d.js';
import { dropRateOfReactance, dropRateOfResistivity } from '../codes/iec60364/annex-g.js';
import { tableB522 } from '../codes/iec60364/tables/b52-2.js';
import { tableB523 } from '../codes/iec60364/tables/b52-3.js';
import { tableB524 } from '../codes/iec60364/tables/b52-4.js';
import { tableB525 } from '../codes/iec60364/tables/b52-5.js';
import { tableB5210 } from '../codes/iec60364/tables/b52-10.js';
import { tableB5211 } from '../codes/iec60364/tables/b52-11.js';
import { tableB5212 } from '../codes/iec60364/tables/b52-12.js';
import { tableB5213 } from '../codes/iec60364/tables/b52-13.js';
import { tableB5214 } from '../codes/iec60364/tables/b52-14.js';
import { tableB5215 } from '../codes/iec60364/tables/b52-15.js';
import { tableB5216 } from '../codes/iec60364/tables/b52-16.js';
import { tableB5217 } from '../codes/iec60364/tables/b52-17.js';
import { tableB5218 } from '../codes/iec60364/tables/b52-18.js';
import { tableB5219Multicore, tableB5219SingleCore } from '../codes/iec60364/tables/b52-19.js';
import { tableB5220 } from '../codes/iec60364/tables/b52-20.js';
import { tableB5221 } from '../codes/iec60364/tables/b52-21.js';
import { tableD521 } from '../codes/iec60364/tables/d52-1.js';
import {
  demandWithinCutOut,
  demandWithinMainSwitch,
  demandWithinTails,
  serviceOfItsOwn,
} from '../demand/adequacy-checks.js';
import {
  controlledDemand,
  demandPowerOfLine,
  demandWithPoints,
  factorChain,
  firstAndShare,
  headroomForPoint,
  headroomOfLine,
  largestAndShare,
  largestFittingSetting,
  meteredCurrentOfLine,
  meteredDemandWithMargin,
  meteredPowerOfInterval,
  shareOfCurrent,
} from '../demand/formulas.js';
import { coincidentCount, coincidentPowerOf } from '../demand/many/coincidence.js';
import {
  afterDiversityGroup,
  chargingProbability,
  energyToPeak,
  riserDemand,
  rootCoincidence,
} from '../demand/many/formulas.js';
import { accessibleHeight, buildingHeight, clearOfGasMeter, frenchHeight, generalHeight } from '../demand/mounting.js';
import { buildingHeights } from '../guidance/approved-document-m/heights.js';
import { soilResistivities } from '../guidance/bs7430/soil-resistivity.js';
import { codeOfPracticeHeights } from '../guidance/charging-code-of-practice/heights.js';
import { buildingLoad, buildingLoadSecondReading } from '../guidance/din18015/building-load.js';
import { frenchHeights } from '../guidance/fr-accessibility/heights.js';
import { ratedBreakingCapacities } from '../guidance/on-site-guide/7-2-7.js';
import { tableA2, tableA2Conflicts, tableA2First } from '../guidance/on-site-guide/a2.js';
import { tableB7 } from '../guidance/on-site-guide/b7.js';
import { tableI1 } from '../guidance/on-site-guide/i1.js';
import { tableI2 } from '../guidance/on-site-guide/i2.js';
import { tableI3 } from '../guidance/on-site-guide/i3.js';
import { accessibleHeights } from '../guidance/pas1899/heights.js';
import {
  belowConsent,
  belowControllable,
  belowNotice,
  unbalanceWithinCap,
} from '../networks/de-network/connection-checks.js';
import { unbalanceCaps } from '../networks/de-network/unbalance.js';
import {
  cutOutForNotice,
  cutOutIsSound,
  demandForNotice,
  powerForNotice,
  serviceNotLooped,
  singleInstallation,
  sourcesForNotice,
  sourcesForOneForm,
  supplyIsMetered,
} from '../networks/gb-network/connection-checks.js';
import { customaryImpedances } from '../networks/gb-network/external-impedance.js';
import { meterPointPlausible } from '../networks/gb-network/meter-point.js';
import { meterTails } from '../networks/gb-network/meter-tails.js';
import { declaredProspectiveCurrents } from '../networks/gb-network/prospective-currents.js';
import { serviceFuses } from '../networks/gb-network/service-fuses.js';
import { transformerImpedances } from '../networks/gb-network/transformers.js';
import { peakHours } from '../networks/gb-smart-charging/peak-hours.js';
import { startDelays } from '../networks/gb-smart-charging/start-delay.js';
import { riserSimultaneity } from '../networks/nfc14100/riser-simultaneity.js';
import {
  adiabaticArea,
  adiabaticAreaOfShare,
  adiabaticFactorOf,
  armourShare,
  boundedFaultEnergy,
  directComponentFactor,
  faultEnergy,
  longestFaultTime,
  materialFactorOf,
  separateShare,
  tabulatedProtective,
  tabulatedProtectiveOther,
  withstandEnergyOf,
} from '../physics/adiabatic.js';
import { halfOfEarthingConductor, tabulatedEarthing } from '../physics/earthing-conductor.js';
import {
  gridResistance,
  gridResistanceAtDepth,
  mutualResistanceOf,
  parallelRods,
  plateResistance,
  ringResistance,
  rodResistance,
  rodSpacingRatio,
  stripResistance,
  twoElectrodes,
  wireResistance,
} from '../physics/electrodes.js';
import {
  doubledReading,
  earthFaultCurrentOf,
  electrodeAndProtective,
  externalImpedanceOfElectrode,
  largestEarthFault,
  leastOriginImpedance,
  lineNeutralLoop,
  loopImpedanceLimitOf,
  operatingCurrentFromMultiple,
  prospectiveBehindFeeders,
  residualLoopVoltage,
  residualTouchVoltage,
  smallestLineNeutralFault,
  sourceImpedanceOf,
  sumOfLineAndNeutral,
} from '../physics/fault-current.js';
import { voltageInNetwork } from '../physics/four-wire-network.js';
import {
  acResistance,
  proximityOfThree,
  proximityOfTwo,
  skinArgument,
  skinFactor,
} from '../physics/heat/ac-resistance.js';
import { dissipationOf, freeAirResistance, surfaceRiseOf, surfaceShareOf } from '../physics/heat/air.js';
import {
  armourLayerArea,
  armourLayerResistance,
  armourLossOfRound,
  armourLossOfSectors,
  armourLossOfTwo,
} from '../physics/heat/armour.js';
import { ductedResistance, ductGapResistance, ductResistance, mediumTemperatureOf } from '../physics/heat/duct.js';
import {
  armourMeanDiameterOf,
  coreAxisRadiusOf,
  coreSpacing,
  insulationRatioOf,
  laidUpDiameterOfRound,
  laidUpDiameterOfSectors,
  sectorRadiusOf,
} from '../physics/heat/geometry.js';
import { buriedResistance, groundResistance, neighbourResistance } from '../physics/heat/ground.js';
import {
  ambientFactorOfRises,
  armourTemperatureOf,
  balancedCapacity,
  riseAboveAir,
  riseAboveGround,
  surfaceTemperatureOf,
} from '../physics/heat/rating.js';
import { airDissipation } from '../physics/heat/tables/air-dissipation.js';
import { ductGap } from '../physics/heat/tables/duct-gap.js';
import { temperatureCoefficients } from '../physics/heat/tables/temperature-coefficients.js';
import { thermalResistivities } from '../physics/heat/tables/thermal-resistivities.js';
import {
  innerResistance,
  sectorCoresResistance,
  shellResistance,
  touchingCoresFactor,
  touchingCoresResistance,
} from '../physics/heat/thermal-resistance.js';
import {
  loopImpedanceOf,
  originImpedanceOf,
  parallelProtectivePaths,
  resistanceAtTemperature,
  runReactance,
  runResistance,
  segmentImpedanceOf,
  sumOfLineAndProtective,
  temperatureFactorOfResistance,
} from '../physics/loop.js';
import { lostPenSolved } from '../physics/lost-pen-network.js';
import { equivalentFrequencyPeakFactorOf, meshedPeakFactorOf } from '../physics/meshed-peak.js';
import {
  arithmeticSum,
  heldCurrentElectrodeLimit,
  heldPowerCollapse,
  heldPowerElectrodeLimit,
  heldPowerTouchVoltage,
  lostPenElectrodeLimit,
  lostPenFloating,
  lostPenSourceVoltage,
  lostPenTouchVoltage,
  publishedElectrodeLimit,
  undetectedVoltageOf,
  vectorSum,
  vectorSumPrinted,
  windowMarginOf,
} from '../physics/open-pen.js';
import { ringLineNeutral, ringLineProtective, ringProtectiveByArea } from '../physics/ring.js';
import {
  gridImpedanceOf,
  lineEarthFault,
  lineLineFault,
  lineNeutralFault,
  peakCurrentOf,
  peakFactorOf,
  threePhaseFault,
  transformerFactorOf,
  transformerImpedanceOf,
  transformerResistanceOf,
} from '../physics/short-circuit.js';
import {
  currentOnCurve,
  inverseTime,
  thermalTimeConstantOf,
  thermalTripTime,
  timeOnCurve,
} from '../physics/time-current.js';
import {
  dropBetween,
  dropOfEqualTaps,
  dropOnRing,
  voltageAtConstantCurrent,
  voltageAtConstantPower,
  voltageAtSourceCurrent,
} from '../physics/voltage-drop.js';
import { ggConventional, ggConventionalTimes } from '../products/bs88/conventional-currents.js';
import { ggGates } from '../products/bs88/gg-gates.js';
import { ggLoopTesting } from '../products/bs88/gg-loop-testing.js';
import { ggPreArcing } from '../products/bs88/gg-pre-arcing.js';
import { householdFuseConventional } from '../products/bs1361/conventional-currents.js';
import { plugFuseWindows } from '../products/bs1362/operating-windows.js';
import { oldInstantaneousBands } from '../products/bs3871/instantaneous-bands.js';
import { armourAreas, armourResistances } from '../products/bs5467/armour.js';
import { armouredOverallDiameters, armourWireDiameters } from '../products/bs5467/dimensions.js';
import { flatCableProtective } from '../products/bs6004/protective-conductors.js';
import { energyLimits } from '../products/en60898/energy-limiting-classes.js';
import { instantaneousBands } from '../products/en60898/instantaneous-bands.js';
import { serviceCapacities } from '../products/en60898/service-capacities.js';
import { testMultiples, testTimes } from '../products/en60898/test-currents.js';
import { residualBreakTimes } from '../products/en61008/break-times.js';
import { residualNonActuatingTimes } from '../products/en61008/non-actuating-times.js';
import { residualOperatingBands } from '../products/en61008/operating-bands.js';
import { smoothCurrentWithstand } from '../products/en61008/smooth-current.js';
import { conductorDiameters } from '../products/iec60228/conductor-diameter.js';
import { coatedConductorResistance, conductorResistance } from '../products/iec60228/conductor-resistance.js';
import { beddingThicknesses } from '../products/iec60502/bedding-thickness.js';
import { insulationThicknesses } from '../products/iec60502/insulation-thickness.js';
import { voltageFactors } from '../products/iec60909/voltage-factors.js';
import {
  conductorResistivities,
  heatCapacities,
  materialFactors,
  reciprocalCoefficients,
} from '../products/iec60949/material-constants.js';
import { ratedDiversity } from '../products/iec61439/rated-diversity.js';
import { dutyCycleOf, pilotCurrentOf } from '../products/iec61851/pilot-duty-cycle.js';
import { pilotStates } from '../products/iec61851/pilot-states.js';
import { pilotTimes } from '../products/iec61851/timing.js';
import { cableCoding } from '../products/iec62196/cable-coding.js';
import { smoothCurrentBreakTimes } from '../products/iec62955/break-times.js';
import { tableManyCores } from '../products/vde0298/tables/4-many-cores.js';
import { cableToOrder, chargePowerFromCurrent, chargeTimeAtPower, fixingsAlong } from '../site/formulas.js';
import { labourTable } from '../site/tables/labour.js';

/** Every definition of the library; written by `npm run definitions`. */
export const everyDefinition: readonly unknown[] = [
  excessTimeOf,
  safeCurrentOf,
  mainFuseCarriesExcess,
  offeredCurrentOf,
  chargePointEarthed,
  combinedEarthAllowed,
  balancedKeepsLimit,
  threePhaseInstallation,
  loadStatesDeclared,
  electrodeKeepsLimit,
  electrodeForHeldCurrent,
  electrodeForHeldPower,
  touchVoltageDevice,
  windowDevice,
  singlePhaseInstallation,
  windowLeavesDrop,
  equalDevice,
  islandFeedSeparated,
  islandOutOfReach,
  islandElectrodesApart,
  islandTouchLimit,
  islandElectrodeStable,
  oneVehicleSeparated,
  additionalProtection,
  residualTypeSuits,
  residualOpensAllLive,
  residualAtOrigin,
  oneDevicePerPoint,
  smoothCurrentBorne,
  residualSelective,
  standingCurrentBorne,
  residualNotOverloaded,
  residualBothWays,
  boardCarriesInfeed,
  arcDetectionRequired,
  arcDetectionAdvised,
  earthingConductorLarge,
  mainBondingLarge,
  surgeProtected,
  table411,
  table412,
  table413,
  table414,
  table416,
  distributionTimes,
  table431,
  table431Initial,
  table431Final,
  table4B1,
  table4B2,
  table4B3,
  table4C1,
  table4C2,
  table4C3Multicore,
  table4C3SingleCore,
  table4C4,
  table4C5,
  table4D1A,
  table4D1B,
  table4D2A,
  table4D2B,
  table4D4A,
  table4D4B,
  table4D5,
  table4D5Drop,
  table4E1A,
  table4E1B,
  table4E2A,
  table4E2B,
  table4E4A,
  table4E4B,
  table4FAmbient,
  table4FDrum,
  table4F1A,
  table4F2A,
  table4F2B,
  table4F3A,
  table4F3B,
  table4J4A,
  table4J4B,
  table52_2,
  table541,
  table542,
  table542Initial,
  table542Final,
  table543,
  table543Initial,
  table543Final,
  table544,
  table544Initial,
  table544Final,
  table545,
  table545Initial,
  table545Final,
  table546,
  table546Initial,
  table546Final,
  table548,
  insulationTestVoltages,
  insulationResistanceLimits,
  earthSeparations,
  lostPenLimits,
  lineNeutralWindow,
  fuseOperatingCurrents,
  ownBreakingCapacity,
  conditionalBreakingCapacity,
  breakingCapacityCheck,
  discriminationCheck,
  discriminationWithFeeder,
  capacityAsInstalled,
  capacityInParallel,
  requiredForOverload,
  requiredForLoad,
  requiredNotTogether,
  deviceLimitOf,
  conventionalCurrentOf,
  overloadLimitOf,
  deviceShareOf,
  unequalGroupFactor,
  groupWithCores,
  groupWithDrum,
  neutralOfThirdHarmonics,
  harmonicCurrentOfLine,
  harmonicCurrentOfNeutral,
  deviceCarriesLoad,
  capacitySuffices,
  loadWithinCapacity,
  ringCarriesEnough,
  conventionalOverload,
  groupedDevice,
  insulationOnce,
  harmonicsStated,
  areaNotBelowMinimum,
  terminalsCoolEnough,
  temperatureAtPartialLoad,
  temperatureAtShareOfCapacity,
  temperatureAtPartialLoadExact,
  dropCorrectionGroupFull,
  dropCorrectionAtTemperature,
  overcurrentDisconnects,
  residualDisconnects,
  residualTouchLimit,
  automaticDisconnection,
  overcurrentPreferred,
  electrodeStable,
  tableE521,
  lineWithstands,
  lineProtectedByOverload,
  lineWithstandCheck,
  lineNeutralClears,
  measuredLimitExact,
  eightTenthsRule,
  divisionRule,
  designFromMeasured,
  measuredExact,
  measuredEightTenths,
  measuredDivision,
  measuredLimitByRatio,
  parallelConductorsWithstand,
  protectiveWithstands,
  protectiveByTable,
  protectiveConductorCheck,
  separateProtectiveLarge,
  ratedCurrents,
  voltageDropTabulated,
  dropRateAtPowerFactor,
  dropRateCorrected,
  dropRateAtWorstAngle,
  dropRateInParallel,
  balancedEquivalent,
  dropToNeutral,
  dropRatioOf,
  dropWithinLimit,
  insideWindow,
  powerLawCapacity,
  dropRateOfResistivity,
  dropRateOfReactance,
  tableB5210,
  tableB5211,
  tableB5212,
  tableB5213,
  tableB5214,
  tableB5215,
  tableB5216,
  tableB5217,
  tableB5218,
  tableB5219Multicore,
  tableB5219SingleCore,
  tableB522,
  tableB5220,
  tableB5221,
  tableB523,
  tableB524,
  tableB525,
  tableD521,
  demandWithinCutOut,
  demandWithinMainSwitch,
  demandWithinTails,
  serviceOfItsOwn,
  shareOfCurrent,
  firstAndShare,
  largestAndShare,
  demandWithPoints,
  controlledDemand,
  demandPowerOfLine,
  meteredPowerOfInterval,
  meteredCurrentOfLine,
  meteredDemandWithMargin,
  factorChain,
  headroomOfLine,
  headroomForPoint,
  largestFittingSetting,
  coincidentCount,
  coincidentPowerOf,
  riserDemand,
  afterDiversityGroup,
  rootCoincidence,
  energyToPeak,
  chargingProbability,
  generalHeight,
  accessibleHeight,
  buildingHeight,
  frenchHeight,
  clearOfGasMeter,
  buildingHeights,
  soilResistivities,
  codeOfPracticeHeights,
  buildingLoad,
  buildingLoadSecondReading,
  frenchHeights,
  ratedBreakingCapacities,
  tableA2,
  tableA2First,
  tableA2Conflicts,
  tableB7,
  tableI1,
  tableI2,
  tableI3,
  accessibleHeights,
  belowNotice,
  belowConsent,
  unbalanceWithinCap,
  belowControllable,
  unbalanceCaps,
  demandForNotice,
  powerForNotice,
  cutOutForNotice,
  cutOutIsSound,
  serviceNotLooped,
  supplyIsMetered,
  singleInstallation,
  sourcesForNotice,
  sourcesForOneForm,
  customaryImpedances,
  meterPointPlausible,
  meterTails,
  declaredProspectiveCurrents,
  serviceFuses,
  transformerImpedances,
  peakHours,
  startDelays,
  riserSimultaneity,
  materialFactorOf,
  adiabaticFactorOf,
  faultEnergy,
  withstandEnergyOf,
  adiabaticArea,
  longestFaultTime,
  directComponentFactor,
  boundedFaultEnergy,
  armourShare,
  separateShare,
  adiabaticAreaOfShare,
  tabulatedProtective,
  tabulatedProtectiveOther,
  tabulatedEarthing,
  halfOfEarthingConductor,
  rodResistance,
  rodSpacingRatio,
  parallelRods,
  plateResistance,
  wireResistance,
  stripResistance,
  ringResistance,
  gridResistance,
  gridResistanceAtDepth,
  mutualResistanceOf,
  twoElectrodes,
  loopImpedanceLimitOf,
  earthFaultCurrentOf,
  largestEarthFault,
  externalImpedanceOfElectrode,
  electrodeAndProtective,
  residualTouchVoltage,
  residualLoopVoltage,
  operatingCurrentFromMultiple,
  leastOriginImpedance,
  prospectiveBehindFeeders,
  sourceImpedanceOf,
  lineNeutralLoop,
  sumOfLineAndNeutral,
  smallestLineNeutralFault,
  doubledReading,
  voltageInNetwork,
  skinArgument,
  skinFactor,
  proximityOfTwo,
  proximityOfThree,
  acResistance,
  dissipationOf,
  freeAirResistance,
  surfaceShareOf,
  surfaceRiseOf,
  armourLayerArea,
  armourLayerResistance,
  armourLossOfRound,
  armourLossOfSectors,
  armourLossOfTwo,
  ductGapResistance,
  ductResistance,
  mediumTemperatureOf,
  ductedResistance,
  coreSpacing,
  insulationRatioOf,
  sectorRadiusOf,
  coreAxisRadiusOf,
  armourMeanDiameterOf,
  laidUpDiameterOfRound,
  laidUpDiameterOfSectors,
  buriedResistance,
  neighbourResistance,
  groundResistance,
  riseAboveAir,
  riseAboveGround,
  ambientFactorOfRises,
  balancedCapacity,
  surfaceTemperatureOf,
  armourTemperatureOf,
  airDissipation,
  ductGap,
  temperatureCoefficients,
  thermalResistivities,
  shellResistance,
  touchingCoresFactor,
  touchingCoresResistance,
  sectorCoresResistance,
  innerResistance,
  resistanceAtTemperature,
  temperatureFactorOfResistance,
  runResistance,
  runReactance,
  parallelProtectivePaths,
  sumOfLineAndProtective,
  segmentImpedanceOf,
  loopImpedanceOf,
  originImpedanceOf,
  lostPenSolved,
  meshedPeakFactorOf,
  equivalentFrequencyPeakFactorOf,
  vectorSum,
  vectorSumPrinted,
  arithmeticSum,
  lostPenFloating,
  lostPenTouchVoltage,
  lostPenSourceVoltage,
  lostPenElectrodeLimit,
  publishedElectrodeLimit,
  heldCurrentElectrodeLimit,
  heldPowerElectrodeLimit,
  heldPowerCollapse,
  heldPowerTouchVoltage,
  undetectedVoltageOf,
  windowMarginOf,
  ringLineNeutral,
  ringLineProtective,
  ringProtectiveByArea,
  transformerImpedanceOf,
  transformerResistanceOf,
  transformerFactorOf,
  gridImpedanceOf,
  peakFactorOf,
  peakCurrentOf,
  threePhaseFault,
  lineNeutralFault,
  lineEarthFault,
  lineLineFault,
  timeOnCurve,
  currentOnCurve,
  thermalTripTime,
  thermalTimeConstantOf,
  inverseTime,
  voltageAtConstantCurrent,
  voltageAtSourceCurrent,
  voltageAtConstantPower,
  dropBetween,
  dropOfEqualTaps,
  dropOnRing,
  householdFuseConventional,
  plugFuseWindows,
  oldInstantaneousBands,
  armourAreas,
  armourResistances,
  armouredOverallDiameters,
  armourWireDiameters,
  flatCableProtective,
  ggConventional,
  ggConventionalTimes,
  ggGates,
  ggLoopTesting,
  ggPreArcing,
  energyLimits,
  instantaneousBands,
  serviceCapacities,
  testMultiples,
  testTimes,
  residualBreakTimes,
  residualNonActuatingTimes,
  residualOperatingBands,
  smoothCurrentWithstand,
  conductorDiameters,
  conductorResistance,
  coatedConductorResistance,
  beddingThicknesses,
  insulationThicknesses,
  voltageFactors,
  reciprocalCoefficients,
  heatCapacities,
  conductorResistivities,
  materialFactors,
  ratedDiversity,
  dutyCycleOf,
  pilotCurrentOf,
  pilotStates,
  pilotTimes,
  cableCoding,
  smoothCurrentBreakTimes,
  tableManyCores,
  chargePowerFromCurrent,
  chargeTimeAtPower,
  cableToOrder,
  fixingsAlong,
  labourTable,
];

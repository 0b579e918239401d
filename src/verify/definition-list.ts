import { excessTimeOf, mainFuseCarriesExcess, safeCurrentOf } from '../charging/control/reaction.js';
import { offeredCurrentOf } from '../charging/pilot/offered-current.js';
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
import { cableToOrder, chargePowerFromCurrent, chargeTimeAtPower, fixingsAlong } from '../site/formulas.js';
import { labourTable } from '../site/tables/labour.js';
import { buildingHeights } from '../standards/approved-document-m/heights.js';
import { ggConventional, ggConventionalTimes } from '../standards/bs88/conventional-currents.js';
import { ggGates } from '../standards/bs88/gg-gates.js';
import { ggLoopTesting } from '../standards/bs88/gg-loop-testing.js';
import { ggPreArcing } from '../standards/bs88/gg-pre-arcing.js';
import { householdFuseConventional } from '../standards/bs1361/conventional-currents.js';
import { plugFuseWindows } from '../standards/bs1362/operating-windows.js';
import { oldInstantaneousBands } from '../standards/bs3871/instantaneous-bands.js';
import { armourAreas, armourResistances } from '../standards/bs5467/armour.js';
import { armouredOverallDiameters, armourWireDiameters } from '../standards/bs5467/dimensions.js';
import { flatCableProtective } from '../standards/bs6004/protective-conductors.js';
import { soilResistivities } from '../standards/bs7430/soil-resistivity.js';
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
} from '../standards/bs7671/earthing-checks.js';
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
} from '../standards/bs7671/residual-checks.js';
import { arcDetectionAdvised, arcDetectionRequired } from '../standards/bs7671/rules/arc-detection.js';
import { earthingConductorLarge, mainBondingLarge } from '../standards/bs7671/rules/earthing-and-bonding.js';
import { surgeProtected } from '../standards/bs7671/rules/surge-protection.js';
import { table4B1 } from '../standards/bs7671/tables/4b1.js';
import { table4B2 } from '../standards/bs7671/tables/4b2.js';
import { table4B3 } from '../standards/bs7671/tables/4b3.js';
import { table4C1 } from '../standards/bs7671/tables/4c1.js';
import { table4C2 } from '../standards/bs7671/tables/4c2.js';
import { table4C3Multicore, table4C3SingleCore } from '../standards/bs7671/tables/4c3.js';
import { table4C4 } from '../standards/bs7671/tables/4c4.js';
import { table4C5 } from '../standards/bs7671/tables/4c5.js';
import { table4D1A } from '../standards/bs7671/tables/4d1a.js';
import { table4D1B } from '../standards/bs7671/tables/4d1b.js';
import { table4D2A } from '../standards/bs7671/tables/4d2a.js';
import { table4D2B } from '../standards/bs7671/tables/4d2b.js';
import { table4D4A } from '../standards/bs7671/tables/4d4a.js';
import { table4D4B } from '../standards/bs7671/tables/4d4b.js';
import { table4D5, table4D5Drop } from '../standards/bs7671/tables/4d5.js';
import { table4E1A } from '../standards/bs7671/tables/4e1a.js';
import { table4E1B } from '../standards/bs7671/tables/4e1b.js';
import { table4E2A } from '../standards/bs7671/tables/4e2a.js';
import { table4E2B } from '../standards/bs7671/tables/4e2b.js';
import { table4E4A } from '../standards/bs7671/tables/4e4a.js';
import { table4E4B } from '../standards/bs7671/tables/4e4b.js';
import { table4FAmbient } from '../standards/bs7671/tables/4f-ambient.js';
import { table4FDrum } from '../standards/bs7671/tables/4f-drum.js';
import { table4F1A } from '../standards/bs7671/tables/4f1a.js';
import { table4F2A } from '../standards/bs7671/tables/4f2a.js';
import { table4F2B } from '../standards/bs7671/tables/4f2b.js';
import { table4F3A } from '../standards/bs7671/tables/4f3a.js';
import { table4F3B } from '../standards/bs7671/tables/4f3b.js';
import { table4J4A } from '../standards/bs7671/tables/4j4a.js';
import { table4J4B } from '../standards/bs7671/tables/4j4b.js';
import { table411 } from '../standards/bs7671/tables/41-1.js';
import { table412 } from '../standards/bs7671/tables/41-2.js';
import { table413 } from '../standards/bs7671/tables/41-3.js';
import { table414 } from '../standards/bs7671/tables/41-4.js';
import { table416 } from '../standards/bs7671/tables/41-6.js';
import { table431, table431Final, table431Initial } from '../standards/bs7671/tables/43-1.js';
import { table52_2 } from '../standards/bs7671/tables/52-2.js';
import { table541 } from '../standards/bs7671/tables/54-1.js';
import { table542, table542Final, table542Initial } from '../standards/bs7671/tables/54-2.js';
import { table543, table543Final, table543Initial } from '../standards/bs7671/tables/54-3.js';
import { table544, table544Final, table544Initial } from '../standards/bs7671/tables/54-4.js';
import { table545, table545Final, table545Initial } from '../standards/bs7671/tables/54-5.js';
import { table546, table546Final, table546Initial } from '../standards/bs7671/tables/54-6.js';
import { table548 } from '../standards/bs7671/tables/54-8.js';
import { insulationResistanceLimits, insulationTestVoltages } from '../standards/bs7671/tables/64.js';
import { distributionTimes } from '../standards/bs7671/tables/411-3-2.js';
import { earthSeparations } from '../standards/bs7671/tables/722-separation.js';
import { lostPenLimits } from '../standards/bs7671/tables/722-touch-voltage.js';
import { lineNeutralWindow } from '../standards/bs7671/tables/722-window.js';
import { fuseOperatingCurrents } from '../standards/bs7671/tables/fuse-operating-currents.js';
import { codeOfPracticeHeights } from '../standards/charging-code-of-practice/heights.js';
import {
  belowConsent,
  belowControllable,
  belowNotice,
  unbalanceWithinCap,
} from '../standards/de-network/connection-checks.js';
import { unbalanceCaps } from '../standards/de-network/unbalance.js';
import { buildingLoad, buildingLoadSecondReading } from '../standards/din18015/building-load.js';
import { energyLimits } from '../standards/en60898/energy-limiting-classes.js';
import { instantaneousBands } from '../standards/en60898/instantaneous-bands.js';
import { serviceCapacities } from '../standards/en60898/service-capacities.js';
import { testMultiples, testTimes } from '../standards/en60898/test-currents.js';
import { residualBreakTimes } from '../standards/en61008/break-times.js';
import { residualNonActuatingTimes } from '../standards/en61008/non-actuating-times.js';
import { residualOperatingBands } from '../standards/en61008/operating-bands.js';
import { smoothCurrentWithstand } from '../standards/en61008/smooth-current.js';
import { frenchHeights } from '../standards/fr-accessibility/heights.js';
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
} from '../standards/gb-network/connection-checks.js';
import { customaryImpedances } from '../standards/gb-network/external-impedance.js';
import { meterPointPlausible } from '../standards/gb-network/meter-point.js';
import { meterTails } from '../standards/gb-network/meter-tails.js';
import { declaredProspectiveCurrents } from '../standards/gb-network/prospective-currents.js';
import { serviceFuses } from '../standards/gb-network/service-fuses.js';
import { transformerImpedances } from '../standards/gb-network/transformers.js';
import { peakHours } from '../standards/gb-smart-charging/peak-hours.js';
import { startDelays } from '../standards/gb-smart-charging/start-delay.js';
import {
  breakingCapacityCheck,
  conditionalBreakingCapacity,
  discriminationCheck,
  discriminationWithFeeder,
  ownBreakingCapacity,
} from '../standards/iec-family/breaking-capacity.js';
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
} from '../standards/iec-family/capacity.js';
import { areaNotBelowMinimum, terminalsCoolEnough } from '../standards/iec-family/conductor-size.js';
import {
  dropCorrectionAtTemperature,
  dropCorrectionGroupFull,
  temperatureAtPartialLoad,
  temperatureAtPartialLoadExact,
  temperatureAtShareOfCapacity,
} from '../standards/iec-family/conductor-temperature.js';
import {
  automaticDisconnection,
  electrodeStable,
  overcurrentDisconnects,
  overcurrentPreferred,
  residualDisconnects,
  residualTouchLimit,
} from '../standards/iec-family/disconnection-checks.js';
import { tableE521 } from '../standards/iec-family/e52-1.js';
import {
  lineNeutralClears,
  lineProtectedByOverload,
  lineWithstandCheck,
  lineWithstands,
} from '../standards/iec-family/line-withstand.js';
import {
  designFromMeasured,
  divisionRule,
  eightTenthsRule,
  measuredDivision,
  measuredEightTenths,
  measuredExact,
  measuredLimitByRatio,
  measuredLimitExact,
} from '../standards/iec-family/measured-loop.js';
import { parallelConductorsWithstand } from '../standards/iec-family/parallel-conductors.js';
import {
  protectiveByTable,
  protectiveConductorCheck,
  protectiveWithstands,
  separateProtectiveLarge,
} from '../standards/iec-family/protective-conductor.js';
import { ratedCurrents } from '../standards/iec-family/rated-currents.js';
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
} from '../standards/iec-family/voltage-drop.js';
import { conductorDiameters } from '../standards/iec60228/conductor-diameter.js';
import { coatedConductorResistance, conductorResistance } from '../standards/iec60228/conductor-resistance.js';
import { powerLawCapacity } from '../standards/iec60364/annex-d.js';
import { dropRateOfReactance, dropRateOfResistivity } from '../standards/iec60364/annex-g.js';
import { tableB522 } from '../standards/iec60364/tables/b52-2.js';
import { tableB523 } from '../standards/iec60364/tables/b52-3.js';
import { tableB524 } from '../standards/iec60364/tables/b52-4.js';
import { tableB525 } from '../standards/iec60364/tables/b52-5.js';
import { tableB5210 } from '../standards/iec60364/tables/b52-10.js';
import { tableB5211 } from '../standards/iec60364/tables/b52-11.js';
import { tableB5212 } from '../standards/iec60364/tables/b52-12.js';
import { tableB5213 } from '../standards/iec60364/tables/b52-13.js';
import { tableB5214 } from '../standards/iec60364/tables/b52-14.js';
import { tableB5215 } from '../standards/iec60364/tables/b52-15.js';
import { tableB5216 } from '../standards/iec60364/tables/b52-16.js';
import { tableB5217 } from '../standards/iec60364/tables/b52-17.js';
import { tableB5218 } from '../standards/iec60364/tables/b52-18.js';
import { tableB5219Multicore, tableB5219SingleCore } from '../standards/iec60364/tables/b52-19.js';
import { tableB5220 } from '../standards/iec60364/tables/b52-20.js';
import { tableB5221 } from '../standards/iec60364/tables/b52-21.js';
import { tableD521 } from '../standards/iec60364/tables/d52-1.js';
import { beddingThicknesses } from '../standards/iec60502/bedding-thickness.js';
import { insulationThicknesses } from '../standards/iec60502/insulation-thickness.js';
import { voltageFactors } from '../standards/iec60909/voltage-factors.js';
import {
  conductorResistivities,
  heatCapacities,
  materialFactors,
  reciprocalCoefficients,
} from '../standards/iec60949/material-constants.js';
import { ratedDiversity } from '../standards/iec61439/rated-diversity.js';
import { dutyCycleOf, pilotCurrentOf } from '../standards/iec61851/pilot-duty-cycle.js';
import { pilotStates } from '../standards/iec61851/pilot-states.js';
import { pilotTimes } from '../standards/iec61851/timing.js';
import { cableCoding } from '../standards/iec62196/cable-coding.js';
import { smoothCurrentBreakTimes } from '../standards/iec62955/break-times.js';
import { riserSimultaneity } from '../standards/nfc14100/riser-simultaneity.js';
import { ratedBreakingCapacities } from '../standards/on-site-guide/7-2-7.js';
import { tableA2, tableA2Conflicts, tableA2First } from '../standards/on-site-guide/a2.js';
import { tableB7 } from '../standards/on-site-guide/b7.js';
import { tableI1 } from '../standards/on-site-guide/i1.js';
import { tableI2 } from '../standards/on-site-guide/i2.js';
import { tableI3 } from '../standards/on-site-guide/i3.js';
import { accessibleHeights } from '../standards/pas1899/heights.js';
import { tableManyCores } from '../standards/vde0298/tables/4-many-cores.js';

/** Every definition of the library; written by `npm run definitions`. */
export const everyDefinition: readonly unknown[] = [
  excessTimeOf,
  safeCurrentOf,
  mainFuseCarriesExcess,
  offeredCurrentOf,
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
  chargePowerFromCurrent,
  chargeTimeAtPower,
  cableToOrder,
  fixingsAlong,
  labourTable,
  buildingHeights,
  householdFuseConventional,
  plugFuseWindows,
  oldInstantaneousBands,
  armourAreas,
  armourResistances,
  armouredOverallDiameters,
  armourWireDiameters,
  flatCableProtective,
  soilResistivities,
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
  ggConventional,
  ggConventionalTimes,
  ggGates,
  ggLoopTesting,
  ggPreArcing,
  codeOfPracticeHeights,
  belowNotice,
  belowConsent,
  unbalanceWithinCap,
  belowControllable,
  unbalanceCaps,
  buildingLoad,
  buildingLoadSecondReading,
  energyLimits,
  instantaneousBands,
  serviceCapacities,
  testMultiples,
  testTimes,
  residualBreakTimes,
  residualNonActuatingTimes,
  residualOperatingBands,
  smoothCurrentWithstand,
  frenchHeights,
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
  conductorDiameters,
  conductorResistance,
  coatedConductorResistance,
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
  riserSimultaneity,
  ratedBreakingCapacities,
  tableA2,
  tableA2First,
  tableA2Conflicts,
  tableB7,
  tableI1,
  tableI2,
  tableI3,
  accessibleHeights,
  tableManyCores,
];

/** Formulas and procedures of the supplies of sites. */
export {
  ageingOfDay,
  ageingRateOfPlainPaper,
  ageingRateOfUpgradedPaper,
  hotSpotGradientOf,
  hotSpotTemperatureOf,
  hottestSpot,
  oilRiseOf,
} from './ageing.js';
export { dropAtLastTap, dropOfSpreadLoad } from './busbar.js';
export * from './capacitors.js';
export {
  meshedLineEarthFault,
  meshedLineLineFault,
  meshedPeakCurrent,
  meshedThreePhaseFault,
} from './fault-network.js';
export { distortionOf, harmonicDeratingOf, harmonicLoadFactorOf, kRatingOf, neutralOfLoads } from './harmonics.js';
export { voltageAtNode } from './load-network.js';
export * from './motors.js';
export { largestParallelLoad } from './parallel.js';
export * from './rectifier.js';
export * from './transformers.js';
export { unbalanceByMean, unbalanceOfLineVoltages, unbalanceOfPhasors, unbalanceOfSingleLoad } from './unbalance.js';

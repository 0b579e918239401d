export {
  type ChargingGroup,
  type ChargingQuestion,
  type CoincidentCharging,
  coincidentCharging,
} from './charging.js';
export {
  binomialProbabilities,
  type CountQuestion,
  type PointGroup,
  type PowerProbability,
  powerDistribution,
} from './coincidence.js';
export {
  type DwellingGroup,
  demandOfDwellings,
  type GroupMethod,
  type GroupResult,
  groupMethods,
} from './dwellings.js';

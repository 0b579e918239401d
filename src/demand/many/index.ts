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
  coincidenceByRoot,
  demandOfDwellings,
  type GroupMethod,
  type GroupResult,
  sumOfDwellings,
} from './dwellings.js';
export type { DwellingGroup } from './group.js';
export { dwellingsByStage } from './staged.js';

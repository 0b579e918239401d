/** Formulas, tables and checks of the charging of vehicles. */
export {
  carriedHeatOf,
  controlFailsSafe,
  excessHeatOf,
  excessTimeOf,
  mainFuseCarriesExcess,
  mainFuseExcessKnown,
  safeCurrentOf,
} from './control/reaction.js';
export { offeredCurrentOf } from './pilot/offered-current.js';
export { alternatingCurrentTaper, directCurrentTaper, taperedChargeTime } from './time/taper.js';

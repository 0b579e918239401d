/** Formulas, tables and checks of the charging of vehicles. */
export { classALimits, largerEquipmentLimits } from '../products/iec61000/harmonic-limits.js';
export * from '../products/iec61851/pilot-duty-cycle.js';
export { pilotStates } from '../products/iec61851/pilot-states.js';
export * from '../products/iec61851/timing.js';
export { cableCoding } from '../products/iec62196/cable-coding.js';
export {
  carriedHeatOf,
  excessHeatOf,
  excessTimeOf,
  mainFuseCarriesExcess,
  mainFuseExcessKnown,
  safeCurrentOf,
} from './control/reaction.js';
export { offeredCurrentOf } from './pilot/offered-current.js';
export { directCurrentTaper, taperedChargeTime } from './time/taper.js';

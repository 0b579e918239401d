/**
 * Charging of electric vehicles: pilot signal, allocation, control, schedules and simulation.
 *
 * @module ohmwright/charging
 */

export * from '../products/iec61851/pilot-duty-bands.js';
export { type PilotState, pilotStateAt } from '../products/iec61851/pilot-states.js';
export { type CableReading, readCable } from '../products/iec62196/cable-coding.js';
export {
  type Allocation,
  allocate,
  type Binding,
  type NodeAllocation,
  type Overload,
  type PointAllocation,
} from './allocation/allocate.js';
export {
  type AllocationPolicy,
  type NotPromised,
  notPromisedWords,
  type SharingRule,
  type WaitingRule,
} from './allocation/policy.js';
export {
  type Controller,
  type ControlState,
  type ControlStep,
  controllerOf,
  type PointMemory,
} from './control/controller.js';
export type { MeasurementFault } from './control/measurement.js';
export { judgeMainFuse } from './control/reaction.js';
export { type SafeCurrents, safeCurrents } from './control/safe-currents.js';
export type { ControlMeasurement, ControlMeter, ControlSettings } from './control/settings.js';
export * from './definitions.js';
export {
  type ChargingNetwork,
  LEAST_CURRENT,
  type NetworkNode,
  type NetworkPoint,
  type PerLine,
} from './network/network.js';
export { INTAKE, type NetworkOptions, networkOf } from './network/network-of.js';
export { type PilotOffer, pilotOffer } from './pilot/offer.js';
export type { PriceProfile, ScheduleInput, SchedulePolicy } from './schedule/input.js';
export type { ChargingStretch, ScheduledNode, ScheduledSession } from './schedule/pieces.js';
export { type Cure, type Relaxation, relaxationsOf, relaxed } from './schedule/relaxations.js';
export {
  type Schedule,
  type ScheduleBound,
  type ScheduleNotPromised,
  schedule,
  scheduleNotPromisedWords,
} from './schedule/schedule.js';
export { type FullAnswer, type FullQuestion, fullInTime } from './simulation/full-in-time.js';
export type { SharingAtOnce, SimulationInput } from './simulation/input.js';
export type { IntakeQuestion, PointAtIntake, StayAtIntake } from './simulation/intake.js';
export {
  type NodeOutcome,
  type SessionOutcome,
  type Simulation,
  type SimulationNotPromised,
  type SimulationSeries,
  simulationNotPromisedWords,
  type TimePerLine,
} from './simulation/outcome.js';
export { pointsSharing, type SharingAnswer, type SharingQuestion } from './simulation/points-sharing.js';
export { simulate } from './simulation/simulate.js';
export { type StackedLoad, stackedLoad } from './simulation/stacked-load.js';
export type { ChargingPeriod } from './time/period.js';
export type { CurrentProfile, RepeatingProfile } from './time/profiles.js';
export type { ChargingSession } from './time/sessions.js';
export { type RandomDelay, startDelayOf } from './time/start-delay.js';
export {
  type ChargingHours,
  isPeak,
  offPeakWindows,
  type PeakHours,
  type TimeWindow,
  type Weekday,
  windowsOf,
} from './time/windows.js';

/**
 * Charging of electric vehicles: pilot signal, allocation, control, schedules and simulation.
 *
 * @module ohmwright/charging
 */

export { type PilotReading, readPilot } from '../products/iec61851/pilot-duty-bands.js';
export { dutyCycleOf, pilotCurrentOf } from '../products/iec61851/pilot-duty-cycle.js';
export { type PilotState, pilotStateAt } from '../products/iec61851/pilot-states.js';
export { type CableReading, readCable } from '../products/iec62196/cable-coding.js';
export { type Allocation, allocate } from './allocation/allocate.js';
export type { AllocationPolicy } from './allocation/policy.js';
export * from './collections.js';
export { type Controller, controllerOf } from './control/controller.js';
export type { ControlState, ControlStep } from './control/memory.js';
export { judgeMainFuse } from './control/reaction.js';
export type { ControlMeasurement, ControlSettings } from './control/settings.js';
export type { ChargingNetwork, NetworkNode, NetworkPoint, PerLine } from './network/network.js';
export { INTAKE, type NetworkOptions, networkOf } from './network/network-of.js';
export { notPromisedWords } from './not-promised.js';
export { pilotOffer } from './pilot/offer.js';
export {
  asChargingProfile,
  type ChargingProfile,
  type PointProfiles,
  type ProfileQuestion,
  profileLimitAt,
} from './profile/charging-profile.js';
export type { ScheduleInput } from './schedule/input.js';
export { type Relaxation, relaxationsOf, relaxed } from './schedule/relaxations.js';
export { type Schedule, schedule } from './schedule/schedule.js';
export { drawnNights } from './simulation/drawn-nights.js';
export { fullInTime } from './simulation/full-in-time.js';
export type { SimulationInput } from './simulation/input.js';
export type { Simulation } from './simulation/outcome.js';
export { pointsSharing } from './simulation/points-sharing.js';
export { simulate } from './simulation/simulate.js';
export { stackedLoad } from './simulation/stacked-load.js';
export { agreedCapacityOf } from './time/agreed-capacity.js';
export { elapsedAt, inLocalTime } from './time/calendar.js';
export type { LongWork } from './time/long-work.js';
export type { CurrentProfile, RepeatingProfile } from './time/profiles.js';
export type { ChargingSession } from './time/sessions.js';
export { startDelayOf } from './time/start-delay.js';
export { type TaperedCharge, taperOf } from './time/taper.js';
export { type ChargingHours, isPeak, offPeakWindows, type PeakHours, windowsOf } from './time/windows.js';

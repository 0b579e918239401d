/**
 * Charging of electric vehicles: pilot signal, allocation, control, schedules and simulation.
 *
 * @module
 */
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
export type { ChargingNetwork, NetworkNode, NetworkPoint, PerLine } from './network/network.js';

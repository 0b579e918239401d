import { aboveZero, anyNumber, fromZero, type Roles, share } from './term.js';

/** Roles of charging. */
export const chargingTerms = {
  /** Duty cycle of the pilot signal D, 1, 0 to 1. */
  dutyCycle: ['D', '1', share, 'duty cycle of the pilot signal'],
  /** Current that the pilot signal offers I_cp, A, 0 and up. */
  pilotCurrent: ['I_cp', 'A', fromZero, 'current that the pilot signal offers'],
  /** Voltage of the pilot signal against protective conductor U_cp, V, any. */
  pilotVoltage: ['U_cp', 'V', anyNumber, 'voltage of the pilot signal against protective conductor'],
  /** Deviation of the pilot voltage ΔU_cp, V, 0 and up. */
  pilotVoltageDeviation: ['ΔU_cp', 'V', fromZero, 'deviation of the pilot voltage'],
  /** Resistance that codes the current of a cable R_c, Ω, 0 and up. */
  codingResistance: ['R_c', 'Ω', fromZero, 'resistance that codes the current of a cable'],
  /** Current that a cable is coded for I_cc, A, 0 and up. */
  cableCurrent: ['I_cc', 'A', fromZero, 'current that a cable is coded for'],
  /** Current that a charge point is set to I_set, A, 0 and up. */
  setCurrent: ['I_set', 'A', fromZero, 'current that a charge point is set to'],
  /** Current that the allocation gives a charge point I_al, A, 0 and up. */
  allocatedCurrent: ['I_al', 'A', fromZero, 'current that the allocation gives a charge point'],
  /** Current that a charge point offers I_off, A, 0 and up. */
  offeredCurrent: ['I_off', 'A', fromZero, 'current that a charge point offers'],
  /** Time of an event of the pilot function t_cp, s, 0 and up. */
  pilotTime: ['t_cp', 's', fromZero, 'time of an event of the pilot function'],
  /** Capacity that charge points share I_cap, A, 0 and up. */
  sharedCapacity: ['I_cap', 'A', fromZero, 'capacity that charge points share'],
  /** Largest other load behind the same limit I_o, A, 0 and up. */
  worstOtherLoad: ['I_o', 'A', fromZero, 'largest other load behind the same limit'],
  /** Charge points that share a limit n_cp, 1, 1 and up. */
  pointsSharing: ['n_cp', '1', { least: 1 }, 'charge points that share a limit'],
  /** Current to which each point falls without word from its controller I_safe, A, 0 and up. */
  safeCurrent: ['I_safe', 'A', fromZero, 'current to which each point falls without word from its controller'],
  /** Time between two measurements t_m, s, 0 and up. */
  meterPeriod: ['t_m', 's', fromZero, 'time between two measurements'],
  /** Time between two decisions of the controller t_ctl, s, 0 and up. */
  controllerPeriod: ['t_ctl', 's', fromZero, 'time between two decisions of the controller'],
  /** Time in which a charge point passes a new command on t_cpr, s, 0 and up. */
  pointReaction: ['t_cpr', 's', fromZero, 'time in which a charge point passes a new command on'],
  /** Time in which a vehicle follows a changed offer t_veh, s, 0 and up. */
  vehicleReaction: ['t_veh', 's', fromZero, 'time in which a vehicle follows a changed offer'],
  /** Time after which a rise of the other load no longer shows t_ex, s, 0 and up. */
  excessTime: ['t_ex', 's', fromZero, 'time after which a rise of the other load no longer shows'],
  /** Rise of the other load behind a limit ΔI_o, A, 0 and up. */
  loadRise: ['ΔI_o', 'A', fromZero, 'rise of the other load behind a limit'],
  /** Time of a gate of a fuse t_g, s, above 0. */
  gateTime: ['t_g', 's', aboveZero, 'time of a gate of a fuse'],
  /** Current that a fuse carries for the time of a gate I_g, A, above 0. */
  gateCurrent: ['I_g', 'A', aboveZero, 'current that a fuse carries for the time of a gate'],
  /** Conventional non-fusing current I_nf, A, above 0. */
  nonFusingCurrent: ['I_nf', 'A', aboveZero, 'conventional non-fusing current'],
  /** Heat of an excess above the limit, as current squared times time Q_ex, A²s, 0 and up. */
  excessHeat: ['Q_ex', 'A²s', fromZero, 'heat of an excess above the limit, as current squared times time'],
  /** Heat that a fuse carries beside the limit, as current squared times time Q_f, A²s, 0 and up. */
  carriedHeat: ['Q_f', 'A²s', fromZero, 'heat that a fuse carries beside the limit, as current squared times time'],
  /** Delay of the start of a charge t_rd, s, 0 and up. */
  startDelay: ['t_rd', 's', fromZero, 'delay of the start of a charge'],
  /** Time of day since midnight t_day, s, 0 to 86400. */
  timeOfDay: ['t_day', 's', { least: 0, most: 86400 }, 'time of day since midnight'],
  /** Energy that is missing at departure W_short, Wh, 0 and up. */
  energyShortfall: ['W_short', 'Wh', fromZero, 'energy that is missing at departure'],
  /** Energy in a battery over what it holds s_B, 1, 0 to 1. */
  stateOfCharge: ['s_B', '1', share, 'energy in a battery over what it holds'],
  /** Power that a vehicle takes over its own peak p_B, 1, 0 to 1. */
  taperShare: ['p_B', '1', share, 'power that a vehicle takes over its own peak'],
} satisfies Roles;

import type { Roles } from './term.js';

/** Roles of charging. */
export const chargingTerms = {
  /** Duty cycle of the pilot signal D, 1, 0 to 1. */
  dutyCycle: { symbol: 'D', unit: '1', least: 0, most: 1, words: 'duty cycle of the pilot signal' },
  /** Current that the pilot signal offers I_cp, A, 0 and up. */
  pilotCurrent: { symbol: 'I_cp', unit: 'A', least: 0, words: 'current that the pilot signal offers' },
  /** Voltage of the pilot signal against protective conductor U_cp, V, any. */
  pilotVoltage: { symbol: 'U_cp', unit: 'V', words: 'voltage of the pilot signal against protective conductor' },
  /** Deviation of the pilot voltage ΔU_cp, V, 0 and up. */
  pilotVoltageDeviation: { symbol: 'ΔU_cp', unit: 'V', least: 0, words: 'deviation of the pilot voltage' },
  /** Resistance that codes the current of a cable R_c, Ω, 0 and up. */
  codingResistance: { symbol: 'R_c', unit: 'Ω', least: 0, words: 'resistance that codes the current of a cable' },
  /** Current that a cable is coded for I_cc, A, 0 and up. */
  cableCurrent: { symbol: 'I_cc', unit: 'A', least: 0, words: 'current that a cable is coded for' },
  /** Current that a charge point is set to I_set, A, 0 and up. */
  setCurrent: { symbol: 'I_set', unit: 'A', least: 0, words: 'current that a charge point is set to' },
  /** Current that the allocation gives a charge point I_al, A, 0 and up. */
  allocatedCurrent: { symbol: 'I_al', unit: 'A', least: 0, words: 'current that the allocation gives a charge point' },
  /** Current that a charge point offers I_off, A, 0 and up. */
  offeredCurrent: { symbol: 'I_off', unit: 'A', least: 0, words: 'current that a charge point offers' },
  /** Time of an event of the pilot function t_cp, s, 0 and up. */
  pilotTime: { symbol: 't_cp', unit: 's', least: 0, words: 'time of an event of the pilot function' },
  /** Capacity that charge points share I_cap, A, 0 and up. */
  sharedCapacity: { symbol: 'I_cap', unit: 'A', least: 0, words: 'capacity that charge points share' },
  /** Largest other load behind the same limit I_o, A, 0 and up. */
  worstOtherLoad: { symbol: 'I_o', unit: 'A', least: 0, words: 'largest other load behind the same limit' },
  /** Charge points that share a limit n_cp, 1, 1 and up. */
  pointsSharing: { symbol: 'n_cp', unit: '1', least: 1, words: 'charge points that share a limit' },
  /** Current to which each point falls without word from its controller I_safe, A, 0 and up. */
  safeCurrent: {
    symbol: 'I_safe',
    unit: 'A',
    least: 0,
    words: 'current to which each point falls without word from its controller',
  },
  /** Time between two measurements t_m, s, 0 and up. */
  meterPeriod: { symbol: 't_m', unit: 's', least: 0, words: 'time between two measurements' },
  /** Time between two decisions of the controller t_ctl, s, 0 and up. */
  controllerPeriod: { symbol: 't_ctl', unit: 's', least: 0, words: 'time between two decisions of the controller' },
  /** Time in which a charge point passes a new command on t_cpr, s, 0 and up. */
  pointReaction: {
    symbol: 't_cpr',
    unit: 's',
    least: 0,
    words: 'time in which a charge point passes a new command on',
  },
  /** Time in which a vehicle follows a changed offer t_veh, s, 0 and up. */
  vehicleReaction: { symbol: 't_veh', unit: 's', least: 0, words: 'time in which a vehicle follows a changed offer' },
  /** Time after which a rise of the other load no longer shows t_ex, s, 0 and up. */
  excessTime: {
    symbol: 't_ex',
    unit: 's',
    least: 0,
    words: 'time after which a rise of the other load no longer shows',
  },
  /** Rise of the other load behind a limit ΔI_o, A, 0 and up. */
  loadRise: { symbol: 'ΔI_o', unit: 'A', least: 0, words: 'rise of the other load behind a limit' },
  /** Time of a gate of a fuse t_g, s, above 0. */
  gateTime: { symbol: 't_g', unit: 's', above: 0, words: 'time of a gate of a fuse' },
  /** Current that a fuse carries for the time of a gate I_g, A, above 0. */
  gateCurrent: { symbol: 'I_g', unit: 'A', above: 0, words: 'current that a fuse carries for the time of a gate' },
  /** Conventional non-fusing current I_nf, A, above 0. */
  nonFusingCurrent: { symbol: 'I_nf', unit: 'A', above: 0, words: 'conventional non-fusing current' },
  /** Heat of an excess above the limit, as current squared times time Q_ex, A²s, 0 and up. */
  excessHeat: {
    symbol: 'Q_ex',
    unit: 'A²s',
    least: 0,
    words: 'heat of an excess above the limit, as current squared times time',
  },
  /** Heat that a fuse carries beside the limit, as current squared times time Q_f, A²s, 0 and up. */
  carriedHeat: {
    symbol: 'Q_f',
    unit: 'A²s',
    least: 0,
    words: 'heat that a fuse carries beside the limit, as current squared times time',
  },
  /** Delay of the start of a charge t_rd, s, 0 and up. */
  startDelay: { symbol: 't_rd', unit: 's', least: 0, words: 'delay of the start of a charge' },
  /** Time of day since midnight t_day, s, 0 to 86400. */
  timeOfDay: { symbol: 't_day', unit: 's', least: 0, most: 86400, words: 'time of day since midnight' },
  /** Energy that is missing at departure W_short, Wh, 0 and up. */
  energyShortfall: { symbol: 'W_short', unit: 'Wh', least: 0, words: 'energy that is missing at departure' },
  /** Energy in a battery over what it holds s_B, 1, 0 to 1. */
  stateOfCharge: { symbol: 's_B', unit: '1', least: 0, most: 1, words: 'energy in a battery over what it holds' },
  /** Power that a vehicle takes over its own peak p_B, 1, 0 to 1. */
  taperShare: { symbol: 'p_B', unit: '1', least: 0, most: 1, words: 'power that a vehicle takes over its own peak' },
} satisfies Roles;

import type { Seconds, Volts } from '../../units/index.js';
import type { ChargingNetwork } from '../network/network.js';
import type { Inspection } from '../network/refuse.js';
import type { CurrentProfile } from './profiles.js';
import type { ChargingSession } from './sessions.js';
import type { ChargingHours } from './windows.js';

/** A network and its vehicles over time. Clock values are s since midnight of the first day. */
export interface ChargingPeriod {
  /** Limits and points; whether a vehicle is there is said by the sessions. */
  readonly network: ChargingNetwork;
  readonly sessions: readonly ChargingSession[];
  /** Begin, s. */
  readonly from: Seconds;
  /** End, s, after the begin. */
  readonly to: Seconds;
  /** Length of a step, s, above 0. */
  readonly step: Seconds;
  /** Voltage of a line to neutral, V, above 0. */
  readonly voltage: Volts;
  /** Other load of nodes over time, A; it takes the place of the load that the network states there. */
  readonly load?: readonly CurrentProfile[];
  /** Limits of nodes over time, A, 0 and up. */
  readonly limits?: readonly CurrentProfile[];
  /** When vehicles may charge; at any time when absent. Random delays act here. */
  readonly hours?: ChargingHours;
}

/** What is wrong with the span of time, its steps and the voltage; `notAfter` says that the end is not after the begin. */
export function inspectPeriod(
  { from, to, step, voltage }: ChargingPeriod,
  mostSteps: number,
  notAfter: string,
  found: Inspection,
): void {
  const span = [found.number(from, ['from'], {}), found.number(to, ['to'], {})].every(Boolean);
  found.when(span && to <= from, ['to'], notAfter);
  if (found.number(step, ['step'], { above: 0 }) && span)
    found.when((to - from) / step > mostSteps, ['step'], `makes more than ${mostSteps} steps`);
  found.number(voltage, ['voltage'], { above: 0 });
}

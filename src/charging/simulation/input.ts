import type { Seconds } from '../../units/index.js';
import type { AllocationPolicy } from '../allocation/policy.js';
import type { ControlSettings } from '../control/settings.js';
import { type Inspection, inspection } from '../network/refuse.js';
import { type ChargingPeriod, inspectPeriod } from '../time/period.js';
import { inspectProfiles } from '../time/profiles.js';
import { inspectSessions } from '../time/sessions.js';
import { inspectHours } from '../time/windows.js';

/** Current is shared anew at the begin of every step; vehicles follow at once. @inline */
export interface SharingAtOnce {
  /** How current is shared; the clock of a rotation is that of the simulation. */
  readonly policy: AllocationPolicy;
  /** For how long its smallest current must be available before a paused point runs again, s; 0 when absent. */
  readonly resumeAfter?: Seconds;
}

/** What is simulated. Clock values are s since midnight of the first day. */
export interface SimulationInput extends ChargingPeriod {
  /**
   * How current is shared: anew at every step, or by a load control with its meters, periods and holds, all of them
   * whole numbers of steps. A load control is taken to know limits and the lines that each vehicle uses; what it does
   * not meter it takes from the network.
   */
  readonly control: SharingAtOnce | ControlSettings;
  /** Whether currents are kept step by step, for pictures; no when absent. */
  readonly keepSeries?: boolean;
}

/** Most steps of one simulation: a year in steps of six seconds. */
const MOST_STEPS = 5.5e6;

/** Throws `invalid-input` with everything that is wrong with a simulation but its network and its policy. */
export function inspectSimulation(input: SimulationInput): void {
  const found = inspection();
  const { from, to, step, control } = input;
  inspectPeriod(input, MOST_STEPS, `ends at ${to} s, not after its begin at ${from} s`, found);
  if ('meters' in control) inspectPeriods(control, step, found);
  else found.number(control.resumeAfter, ['control', 'resumeAfter'], { least: 0, optional: true });
  inspectSessions(input.network, input.sessions, found);
  inspectProfiles(input.network, input.load ?? [], input, found, 'load');
  inspectProfiles(input.network, input.limits ?? [], input, found, 'limits');
  inspectHours(input.hours, found);
  found.refuse('The simulation');
}

function inspectPeriods(control: ControlSettings, step: number, found: Inspection): void {
  for (const name of ['meterPeriod', 'controllerPeriod', 'vehicleReaction'] as const) {
    const steps = control[name] / step;
    // what is no number or too small is named by the load control itself
    found.when(
      Math.abs(steps - Math.round(steps)) > 1e-6,
      ['control', name],
      `must be a whole number of steps of ${step} s`,
    );
  }
}
